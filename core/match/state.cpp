// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/state.h"

#include <algorithm>

namespace setfolio {

const Rulebook& MatchState::rulebook() const {
    Q_ASSERT(opened.has_value());
    return opened->rulebook;
}

const SetState& MatchState::set() const {
    Q_ASSERT(!sets.empty());
    return sets.back();
}

Phase phaseOf(const MatchState& state) {
    if (!state.opened)
        return Phase::NotOpened;
    if (state.closed)
        return Phase::MatchClosed;
    if (state.forfeit)
        return Phase::MatchWon;
    if (state.suspended)
        return Phase::Suspended;
    const SetState& set = state.set();
    if (set.ended || set.inVain) // another set would have been begun if one were due
        return Phase::MatchWon;
    if (!set.started)
        return Phase::BeforeSet;
    if (set.winner)
        return Phase::SetWon;
    return set.contacted ? Phase::Rally : Phase::ReadyToServe;
}

namespace {

/// The points of a set that `winner` wins against nobody.
PerTeam<int> pointsAgainstNobody(const MatchState& state, int number, Team winner) {
    PerTeam<int> points;
    points[winner] = pointsToWin(state, number);
    return points;
}

} // namespace

int setsNeeded(const MatchOpened& opened) {
    return opened.bestOf / 2 + 1;
}

PerTeam<int> setsWon(const MatchState& state) {
    PerTeam<int> won;
    for (const SetState& set : state.sets)
        if (set.ended && set.winner && !set.cancelled)
            ++won[*set.winner];
    if (!state.forfeit)
        return won;
    if (state.forfeit->kind == ForfeitKind::Default)
        won[state.forfeit->by] = 0;
    won[opponentsOf(state.forfeit->by)] = setsNeeded(*state.opened);
    return won;
}

std::vector<PerTeam<int>> setScores(const MatchState& state) {
    std::vector<PerTeam<int>> scores;
    const bool allGiven = state.forfeit && state.forfeit->kind == ForfeitKind::Default;
    PerTeam<int> won;
    for (const SetState& set : state.sets) {
        if (!set.ended || !set.winner || set.cancelled || allGiven)
            continue;
        scores.push_back({set.teams.home.points, set.teams.visitors.points});
        ++won[*set.winner];
    }
    if (!state.forfeit)
        return scores;
    const Team winner = opponentsOf(state.forfeit->by);
    for (int given = won[winner]; given < setsNeeded(*state.opened); ++given)
        scores.push_back(pointsAgainstNobody(state, static_cast<int>(scores.size()) + 1, winner));
    return scores;
}

bool isDecidingSet(const MatchOpened& opened, int number) {
    return opened.bestOf > 1 && number == opened.bestOf;
}

bool isDecidingSet(const MatchState& state, int number) {
    return isDecidingSet(*state.opened, number);
}

int pointsToWin(const MatchOpened& opened, int number) {
    return isDecidingSet(opened, number) ? opened.rulebook.decidingSetPoints : opened.rulebook.setPoints;
}

int pointsToWin(const MatchState& state, int number) {
    return pointsToWin(*state.opened, number);
}

std::optional<Team> winnerAt(const Rulebook& rulebook, int pointsToWin, const PerTeam<int>& points) {
    for (const Team team : bothTeams) {
        const int own = points[team];
        const int lead = own - points[opponentsOf(team)];
        if (own >= pointsToWin && lead >= rulebook.margin)
            return team;
        if (rulebook.cap && own >= *rulebook.cap && lead > 0)
            return team;
    }
    return std::nullopt;
}

ShirtNumber onCourt(const TeamInSet& team, Slot slot) {
    const std::vector<Standing>& stood = team.slots[slot.index()];
    return stood.empty() ? ShirtNumber() : stood.back().number;
}

bool isVacant(const TeamInSet& team, Slot slot) {
    const std::vector<Standing>& stood = team.slots[slot.index()];
    return !stood.empty() && !stood.back().number.isValid();
}

ShirtNumber vacatedBy(const TeamInSet& team, Slot slot) {
    const std::vector<Standing>& stood = team.slots[slot.index()];
    return isVacant(team, slot) && stood.size() > 1 ? stood[stood.size() - 2].number : ShirtNumber();
}

ShirtNumber toLeave(const TeamInSet& team, Slot slot) {
    return isVacant(team, slot) ? vacatedBy(team, slot) : onCourt(team, slot);
}

std::optional<Slot> slotOnCourt(const TeamInSet& team, ShirtNumber number) {
    const auto* slot =
        std::ranges::find_if(allSlots, [&](Slot each) { return number.isValid() && onCourt(team, each) == number; });
    return slot == allSlots.end() ? std::nullopt : std::optional(*slot);
}

std::optional<Slot> slotToLeave(const TeamInSet& team, ShirtNumber number) {
    if (const auto slot = slotOnCourt(team, number))
        return slot;
    const auto* slot =
        std::ranges::find_if(allSlots, [&](Slot each) { return number.isValid() && vacatedBy(team, each) == number; });
    return slot == allSlots.end() ? std::nullopt : std::optional(*slot);
}

int substitutionsOf(const TeamInSet& team) {
    return static_cast<int>(team.counted.size());
}

bool isRuledIllegal(const TeamInSet& team, const Standing& standing) {
    return std::ranges::find(team.ruledIllegal, standing) != team.ruledIllegal.end();
}

std::optional<Slot> slotOf(const TeamInSet& team, ShirtNumber number) {
    for (const Slot slot : allSlots)
        for (const Standing& standing : team.slots[slot.index()])
            if (standing.number == number &&
                (&standing == &team.slots[slot.index()].back() || !isRuledIllegal(team, standing)))
                return slot;
    return std::nullopt;
}

CourtPosition positionOf(const SetState& set, Team team, Slot slot) {
    // The server stands in position 1; the next server of a receiving team stands in 2 until she rotates.
    const int first = set.serving == team ? 0 : 1;
    return CourtPosition((slot.value - set.teams[team].nextServer.value + first + 6) % 6 + 1);
}

Slot slotAt(const SetState& set, Team team, CourtPosition position) {
    const int first = set.serving == team ? 0 : 1;
    return Slot((set.teams[team].nextServer.value - 1 + position.value - 1 - first + 6) % 6 + 1);
}

bool isAgain(const SetState& set, Again how) {
    return set.again && set.again->again == how;
}

ShirtNumber serverOf(const SetState& set) {
    const TeamInSet& team = set.teams[set.serving];
    return liberoAtServe(set).value_or(onCourt(team, team.nextServer));
}

std::optional<ShirtNumber> liberoAtServe(const SetState& set) {
    const TeamInSet& team = set.teams[set.serving];
    if (team.liberoServing)
        return team.liberoServing;
    return team.libero && team.libero->slot == team.nextServer ? std::optional(team.libero->libero) : std::nullopt;
}

Slot servingSlot(const SetState& set, Team team) {
    return set.teams[team].nextServer;
}

int roundOfTerm(const Rulebook& rulebook, bool servesFirst, int term) {
    const bool slotOnePassedOver = rulebook.writtenOrder == WrittenOrder::Floor && !servesFirst;
    return (slotOnePassedOver ? term : term - 1) / 6 + 1;
}

std::optional<ShirtNumber> captainOf(const MatchState& state, const TeamInSet& team, Team which) {
    if (team.captain)
        return team.captain;
    if (team.lineUp && team.lineUp->captain)
        return team.lineUp->captain;
    const std::vector<RosterPlayer>& players = state.rosters[which].players;
    const auto captain = std::ranges::find_if(players, &RosterPlayer::captain);
    return captain == players.end() ? std::nullopt : std::optional(captain->number);
}

const std::vector<ShirtNumber>& liberosOf(const TeamInSet& team) {
    return team.liberos;
}

const RosterPlayer* playerOf(const MatchState& state, Team team, ShirtNumber number) {
    const std::vector<RosterPlayer>& players = state.rosters[team].players;
    const auto player = std::ranges::find(players, number, &RosterPlayer::number);
    return player == players.end() ? nullptr : &*player;
}

} // namespace setfolio
