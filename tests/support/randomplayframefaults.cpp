// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplayfaults.h"

namespace setfolio::testing {
namespace {

/// Between two sets of which the second is not the deciding one.
bool betweenSets(const Scene& scene) {
    return scene.beforeSet() && scene.model().set > 1 && !scene.model().deciding();
}

Entries firstServeAlternates(const Scene& scene) {
    if (!betweenSets(scene))
        return {};
    return {Toss{opponentsOf(*scene.model().servesFirst), *scene.model().left}};
}

Entries sidesNotAsRuled(const Scene& scene) {
    if (!betweenSets(scene))
        return {};
    return {Toss{*scene.model().servesFirst, opponentsOf(*scene.model().left)}};
}

Entries signedOutOfOrder(const Scene& scene) {
    if (!scene.beforeSet() || scene.model().set < 2)
        return {};
    return {Signed{scene.model().set - 1, {Signer::FirstReferee, {}}, {}, {}, {}}};
}

Entries timeOutLimit(const Scene& scene) {
    if (!scene.ready() || scene.model().afterReplay)
        return {};
    const int left = scene.model().rules.timeOuts - scene.own().timeOuts;
    return Entries(static_cast<std::size_t>(left) + 1, TimeOut{scene.team});
}

bool decidingIsPlayed(const Scene& scene) {
    return scene.ready() && scene.model().deciding();
}

Entries sidesChangeEarly(const Scene& scene) {
    const auto& teams = scene.model().teams;
    const int points = std::max(teams.home.points, teams.visitors.points);
    return decidingIsPlayed(scene) && !scene.model().sidesChanged && points < *scene.model().rules.decidingSetSideChange
               ? Entries{SidesChanged{}}
               : Entries{};
}

Entries sidesChangedAlready(const Scene& scene) {
    return decidingIsPlayed(scene) && scene.model().sidesChanged ? Entries{SidesChanged{}} : Entries{};
}

Entries noSidesChange(const Scene& scene) {
    return decidingIsPlayed(scene) ? Entries{SidesChanged{}} : Entries{};
}

Entries defaultIsOfMatch(const Scene& scene) {
    if (!scene.ready() && !scene.beforeSet())
        return {};
    return {Forfeit{scene.team, ForfeitKind::Default, Scope::Set, {}}};
}

Entries incompleteBeforePlay(const Scene& scene) {
    const bool begun = std::ranges::any_of(scene.play.entries(), [](const Recorded& recorded) {
        return std::holds_alternative<SetStarted>(recorded.entry);
    });
    if (!scene.beforeSet() || begun)
        return {};
    return {Forfeit{scene.team, ForfeitKind::Incomplete, Scope::Match, {}}};
}

Entries setNotPlayedAgain(const Scene& scene) {
    return scene.ready() ? Entries{Suspended{}, Resumed{GoOn::SetAgain}} : Entries{};
}

/// The set is played again, and two of a team have changed places.
Entries sameLineUpDue(const Scene& scene) {
    LineUp other = scene.own().lineUp;
    std::swap(other.positions[0], other.positions[1]);
    return scene.ready() ? Entries{Suspended{}, Resumed{GoOn::SetAgain}, other} : Entries{};
}

Entries resumedTooLate(const Scene& scene) {
    return scene.ready() ? Entries{Suspended{}, Resumed{}} : Entries{};
}

void changesAtEight(Rulebook& rules) {
    rules.decidingSetSideChange = 8;
}

} // namespace

std::vector<Fault> frameFaults() {
    return {
        {SETFOLIO_FAULT(FirstServeAlternates), firstServeAlternates},
        {SETFOLIO_FAULT(SidesNotAsRuled), sidesNotAsRuled},
        {SETFOLIO_FAULT(SignedOutOfOrder), signedOutOfOrder,
         [](Rulebook& rules) {
             rules.signingOrder = {Signer::Scorer, Signer::FirstReferee};
         }},
        {SETFOLIO_FAULT(TimeOutLimit), timeOutLimit},
        {SETFOLIO_FAULT(SidesChangeEarly), sidesChangeEarly, changesAtEight},
        {SETFOLIO_FAULT(SidesChangedAlready), sidesChangedAlready, changesAtEight},
        {SETFOLIO_FAULT(NoSidesChange), noSidesChange, [](Rulebook& rules) { rules.decidingSetSideChange.reset(); }},
        {SETFOLIO_FAULT(DefaultIsOfMatch), defaultIsOfMatch},
        {SETFOLIO_FAULT(IncompleteBeforePlay), incompleteBeforePlay},
        {SETFOLIO_FAULT(SetNotPlayedAgain), setNotPlayedAgain,
         [](Rulebook& rules) { rules.resumedElsewhere = Resumption::GoesOn; }},
        {SETFOLIO_FAULT(SameLineUpDue), sameLineUpDue,
         [](Rulebook& rules) { rules.resumedElsewhere = Resumption::SetReplayed; }},
        {SETFOLIO_FAULT(ResumedTooLate), resumedTooLate, [](Rulebook& rules) { rules.resumeWithinHours = 4; },
         std::chrono::hours(5)},
    };
}

} // namespace setfolio::testing
