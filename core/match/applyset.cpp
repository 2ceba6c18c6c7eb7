// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/applier.h"
#include "core/match/consequences.h"

#include <utility>

namespace setfolio {
namespace {

SetState nextSet(const MatchState& state, const SetState& previous) {
    SetState set;
    set.number = previous.number + 1;
    if (isDecidingSet(state, set.number))
        return set;
    if (previous.servesFirst)
        set.servesFirst = set.serving = opponentsOf(*previous.servesFirst);
    if (previous.left)
        set.left = changesSidesAfter(state.rulebook(), previous.number) ? opponentsOf(*previous.left) : previous.left;
    return set;
}

} // namespace

void Applier::assignSlots(Team team) {
    TeamInSet& side = set().teams[team];
    if (!side.lineUp || !set().servesFirst)
        return;
    const bool serves = *set().servesFirst == team;
    const bool byFloor = m_state.rulebook().writtenOrder == WrittenOrder::Floor;
    const std::size_t first = serves || byFloor ? 0 : 1; // the receiving team's first server stands in position 2
    for (const Slot slot : allSlots)
        side.slots[slot.index()] = {{side.lineUp->positions[(slot.index() + first) % 6], m_number}};
    side.nextServer = Slot(!serves && byFloor ? 2 : 1);
    nameLiberos(team);
    side.libero.reset(); // she came in for a player of the line-up before
    side.liberoMoved.reset();
}

void Applier::nameLiberos(Team team) {
    const std::vector<ShirtNumber>& named = set().teams[team].lineUp->liberos;
    set().teams[team].liberos = named.empty() ? liberosOfMatch(m_state, team) : named;
}

void Applier::operator()(const Toss& toss) {
    if (phaseOf(m_state) != Phase::BeforeSet)
        return;
    set().servesFirst = set().serving = toss.servesFirst;
    set().left = toss.left;
    for (const Team team : bothTeams)
        assignSlots(team);
}

void Applier::operator()(const LineUp& lineUp) {
    if (phaseOf(m_state) != Phase::BeforeSet)
        return;
    TeamInSet& team = set().teams[lineUp.team];
    if (team.lineUp)
        team.liberosBefore.insert(team.liberosBefore.end(), team.lineUp->liberos.begin(), team.lineUp->liberos.end());
    team.lineUp = lineUp;
    nameLiberos(lineUp.team);
    assignSlots(lineUp.team);
}

void Applier::operator()(const SetStarted& started) {
    if (phaseOf(m_state) != Phase::BeforeSet || !set().servesFirst)
        return;
    set().started = true;
    set().startedAt = started.at;
    set().teams[set().serving].termsBegun = 1;
    for (const Team team : std::exchange(m_state.pointsDue, {}))
        award(team, PointBy::Penalty);
}

void Applier::operator()(const SetEnded& ended) {
    if (phaseOf(m_state) != Phase::SetWon)
        return;
    set().ended = true;
    set().endedAt = ended.at;
    set().endRecorded = m_time;
    const PerTeam<int> won = setsWon(m_state);
    const int needed = setsNeeded(*m_state.opened);
    if (won.home < needed && won.visitors < needed)
        beginSetAfter(set());
}

void Applier::beginSetAfter(const SetState& previous) {
    SetState next = nextSet(m_state, previous);
    m_state.sets.push_back(std::move(next));
}

void Applier::operator()(const SidesChanged&) {
    if (!inPlay())
        return;
    if (set().left)
        set().left = opponentsOf(*set().left);
    set().sidesChangedAt = {set().teams.home.points, set().teams.visitors.points};
}

} // namespace setfolio
