// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/deckview.h"

#include "core/record/shown.h"
#include "ui/wording/names.h"

#include <algorithm>

namespace setfolio {

namespace {

AreaCall callFor(const MatchState& state, Team team) {
    const SetState& set = state.set();
    switch (phaseOf(state)) {
    case Phase::BeforeSet:
        return set.teams[team].lineUp ? AreaCall::LineUpStands : AreaCall::LineUpAwaited;
    case Phase::ReadyToServe:
    case Phase::Rally:
        return AreaCall::WinsTheRally;
    case Phase::SetWon:
        return set.winner == team ? AreaCall::WinsTheSet : AreaCall::None;
    case Phase::MatchWon:
    case Phase::MatchClosed: {
        const PerTeam<int> won = setsWon(state);
        return won[team] > won[opponentsOf(team)] ? AreaCall::WinsTheMatch : AreaCall::None;
    }
    case Phase::Suspended:
    case Phase::NotOpened:
        break;
    }
    return AreaCall::None;
}

TeamAreaView areaOf(const MatchState& state, Team team) {
    const SetState& set = state.set();
    const TeamInSet& own = set.teams[team];
    const Rulebook& rulebook = state.rulebook();
    TeamAreaView view;
    view.team = team;
    view.name = asShown(state.opened->teams[team].name);
    view.code = codeOf(state, team);
    view.points = own.points;
    view.serves = set.servesFirst && set.serving == team && !set.winner;
    view.call = callFor(state, team);
    view.substitutions = substitutionsOf(own);
    view.substitutionLimit = rulebook.substitutionLimit;
    view.timeOutsLeft = std::max(0, rulebook.timeOuts - static_cast<int>(own.timeOuts.size()));
    view.liberoState = liberoState(own, rulebook.liberoServe);
    view.hasLiberos = !liberosOf(own).empty();
    view.sanctions = static_cast<int>(std::ranges::count(state.sanctions, team, &SanctionGiven::team));
    return view;
}

bool standsOnCourt(const SetState& set, Team team) {
    return set.servesFirst && onCourt(set.teams[team], Slot(1)).isValid();
}

/// The libero in the place of a slot's player: on court, or to serve for her.
std::optional<ShirtNumber> liberoIn(const SetState& set, Team team, Slot slot) {
    const TeamInSet& own = set.teams[team];
    if (own.libero && own.libero->slot == slot)
        return own.libero->libero;
    const bool serves = set.serving == team && slot == own.nextServer && !set.winner;
    return serves ? liberoAtServe(set) : std::nullopt;
}

void addPlayers(std::vector<CourtPlayer>& players, const MatchState& state, Team team) {
    const SetState& set = state.set();
    const TeamInSet& own = set.teams[team];
    const std::optional<ShirtNumber> captain = captainOf(state, own, team);
    for (const Slot slot : allSlots) {
        CourtPlayer player{team, sideOf(state, team), positionOf(set, team, slot), onCourt(own, slot)};
        player.server = set.serving == team && slot == own.nextServer && !set.winner;
        if (const std::optional<ShirtNumber> libero = liberoIn(set, team, slot)) {
            player.number = *libero;
            player.libero = true;
        }
        player.captain = captain == player.number;
        players.push_back(player);
    }
}

ServingView servingOf(const MatchState& state) {
    const SetState& set = state.set();
    const Team team = set.serving;
    const Team others = opponentsOf(team);
    const TeamInSet& own = set.teams[team];
    ServingView view;
    view.team = team;
    view.code = codeOf(state, team);
    view.number = serverOf(set);
    view.slot = servingSlot(set, team);
    view.captain = captainOf(state, own, team) == view.number;
    if (liberoAtServe(set))
        view.replaced = onCourt(own, view.slot);
    view.rally = set.rallies + 1;
    view.contacted = set.contacted;
    view.otherCode = codeOf(state, others);
    view.nextSlot = servingSlot(set, others);
    view.nextNumber = onCourt(set.teams[others], view.nextSlot);
    view.thenNumber = onCourt(own, view.slot.next());
    return view;
}

} // namespace

DeckView deckViewOf(const MatchState& state) {
    DeckView view;
    for (const Side side : bothSides)
        view.areas[side] = areaOf(state, teamOn(state, side));
    const SetState& set = state.set();
    for (const Side side : bothSides)
        if (standsOnCourt(set, teamOn(state, side)))
            addPlayers(view.court, state, teamOn(state, side));
    if (standsOnCourt(set, Team::Home) && standsOnCourt(set, Team::Visitors))
        view.serving = servingOf(state);
    return view;
}

Team teamOn(const MatchState& state, Side side) {
    const Team left = state.set().left.value_or(Team::Home);
    return side == Side::Left ? left : opponentsOf(left);
}

Side sideOf(const MatchState& state, Team team) {
    return teamOn(state, Side::Left) == team ? Side::Left : Side::Right;
}

CourtPlace placeOf(CourtPosition position, Side side) {
    // Seen by the team itself, from its left to its right: 4 3 2 at the net, 5 6 1 behind (FIVB Official Volleyball
    // Rules 2025-2028, 7.4.1). The team on the left looks to the right: its right hand is the scorer's near side.
    static constexpr std::array<int, 6> fromItsLeft{2, 2, 1, 0, 0, 1};
    const int row = fromItsLeft.at(position.index());
    return {position.isFrontRow() ? 0 : 1, side == Side::Left ? row : 2 - row};
}

} // namespace setfolio
