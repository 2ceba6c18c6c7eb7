// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/dialogmatches.h"
#include "tests/ui/table/opentable.h"
#include "tests/ui/windowscenes.h"

namespace setfolio::testing {

namespace {

/// Both teams with two liberos, one of the home team's on court.
MatchBuilder withLiberos() {
    return withRosters()
        .toss(Team::Home)
        .lineUp(Team::Home, {1, 3, 4, 7, 8, 9}, {ShirtNumber(2), ShirtNumber(14)})
        .lineUp(Team::Visitors, {2, 4, 5, 8, 9, 10}, {ShirtNumber(3), ShirtNumber(15)})
        .start()
        .add(LiberoIn{Team::Home, ShirtNumber(2), ShirtNumber(8)});
}

MatchBuilder inPlay(const char* rallies = "") {
    return linedUp().start().play(rallies);
}

/// After so many sets won to nothing by the home team, before the next.
MatchBuilder afterSets(int sets) {
    MatchBuilder match = inPlay();
    for (int set = 0; set < sets; ++set) {
        if (set > 0)
            match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
        match.play("hhhhhhhhhhhhhhhhhhhhhhhhh").add(SetEnded{});
    }
    return match;
}

/// The table, after a command and keys.
WindowScene bar(const char* name, const MatchBuilder& match, TableCommand command, const std::vector<Qt::Key>& keys) {
    return {name, [match, command, keys] {
                auto opened = std::make_shared<OpenTable>(match, smallestRoom);
                opened->window().perform(command);
                for (const Qt::Key key : keys)
                    opened->press(key);
                return ShownWindow{opened, &opened->window()};
            }};
}

} // namespace

std::vector<WindowScene> barScenes() {
    using enum Qt::Key;
    using C = TableCommand;
    return {
        bar("bar: an exceptional substitution", inPlay(), C::LeftSubstitution, {Key_E, Key_2, Key_Tab}),
        bar("bar: a place that stays vacant", inPlay(), C::LeftSubstitution, {Key_V, Key_3}),
        bar("bar: a number that may not come in", inPlay(), C::LeftSubstitution, {Key_9, Key_9}),
        bar("bar: a libero on court", withLiberos(), C::GoToLive, {}),
        bar("bar: a libero to go out", withLiberos(), C::LeftLibero, {}),
        bar("bar: a libero to come in", withLiberos().play("v"), C::RightLibero, {}),
        bar("bar: someone at the line", inPlay("hh"), C::WhoServes, {Key_3}),
        bar("bar: a wrong server", inPlay("hhs"), C::WhoServes, {Key_3, Key_R}),
        bar("bar: the term before in question", inPlay("hhhhhhhv"), C::WhoServes, {Key_3, Key_R, Key_B}),
        bar("bar: a wrong server noted", inPlay("hh").add(ServerSeen{ShirtNumber(3)}), C::ServeContacted, {}),
        bar("bar: a card", inPlay(), C::LeftCard, {Key_7}),
        bar("bar: a delay", inPlay(), C::RightCard, {Key_D}),
        bar("bar: a request", inPlay(), C::RightCard, {Key_R}),
        bar("bar: a forfeit", inPlay(), C::Forfeit, {Key_F, Key_M}),
        bar("bar: a forfeit of an earlier set", afterSets(2), C::Forfeit, {Key_F, Key_E, Key_1, Key_Tab, Key_9}),
        bar("bar: a new libero", withLiberos(), C::RightRedesignation, {}),
        bar("bar: what a replay is for", inPlay("s"), C::ReplayBecause, {}),
        bar("bar: an illegal player", inPlay("hhhhhhh"), C::LeftIllegalPlayer, {Key_4}),
        bar("bar: a captain", inPlay(), C::LeftCaptain, {}),
        bar("bar: a strike", inPlay("hvhvh"), C::Correct, {Key_Down}),
        bar("bar: a strike with consequences",
            inPlay().substitute(Team::Home, 10, 3).play("h").substitute(Team::Home, 3, 10), C::Correct,
            {Key_Down, Key_Down}),
        bar("bar: a missed substitution", inPlay("hvhvh"), C::Correct, {Key_Down, Key_B, Key_S}),
        bar("bar: at the place of something missed", inPlay("hvhvh"), C::Correct, {Key_Down, Key_B, Key_E}),
        bar("bar: something missed, to be looked at", inPlay("hvhvh"), C::Correct, {Key_Down, Key_B, Key_E, Key_K}),
        bar("bar: something missed", inPlay("hvhvh"), C::Correct, {Key_Down, Key_B}),
        bar("bar: play is suspended", inPlay().add(Suspended{}), C::NextStep, {}),
        bar("bar: a difference from the scoreboard", inPlay(), C::ComparedDiffers, {}),
    };
}

} // namespace setfolio::testing
