// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/applier.h"

namespace setfolio {

void Applier::operator()(const MatchOpened& opened) {
    m_state.opened = opened;
    m_state.sets.assign(1, SetState());
}

void Applier::operator()(const Roster& roster) {
    m_state.rosters[roster.team] = roster;
}

void Applier::operator()(const Officials& officials) {
    m_state.officials = officials;
}

void Applier::operator()(const MatchClosed&) {
    m_state.closed = phaseOf(m_state) == Phase::MatchWon;
}

void Applier::operator()(const Forfeit& forfeit) {
    const Phase phase = phaseOf(m_state);
    if (phase == Phase::NotOpened || phase == Phase::MatchWon || phase == Phase::MatchClosed)
        return;
    const Team winner = opponentsOf(forfeit.by);
    const bool keepsItsPoints = forfeit.kind == ForfeitKind::Incomplete;
    if (keepsItsPoints && !set().winner && (set().started || forfeit.reach == Scope::Set)) {
        set().started = true;
        for (decide(); !set().winner; decide()) { // margin and cap as in play
            ++set().teams[winner].points;
            set().points.push_back({winner, PointBy::Forfeit, m_number});
        }
        set().contacted = false;
        set().forfeit = forfeit;
    }
    if (keepsItsPoints && forfeit.reach == Scope::Set)
        return;
    set().ended = keepsItsPoints && set().winner.has_value();
    m_state.forfeit = forfeit;
    m_state.suspended = false;
    m_state.suspendedAt = {};
}

void Applier::operator()(const Suspended&) {
    if (m_state.suspended)
        return;
    m_state.suspended = m_state.opened && phaseOf(m_state) != Phase::MatchWon;
    m_state.suspendedAt = m_state.suspended && !m_placed ? m_time : QDateTime();
}

void Applier::operator()(const Resumed& resumed) {
    if (!m_state.suspended)
        return;
    m_state.suspended = false;
    m_state.suspendedAt = {};
    set().contacted = false;
    if (resumed.goOn == GoOn::AsItStood || !set().started)
        return;
    SetState again;
    again.number = set().number;
    again.servesFirst = set().servesFirst;
    again.serving = set().servesFirst.value_or(Team::Home);
    again.left = set().left;
    for (const Team team : bothTeams)
        again.teams[team].lineUp = set().teams[team].lineUp;
    set().cancelled = true;
    m_state.sets.push_back(std::move(again));
    for (const Team team : bothTeams)
        assignSlots(team);
}

} // namespace setfolio
