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
