// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/applier.h"
#include "core/match/consequences.h"

namespace setfolio {
namespace {

/// Takes from a team all points of a set but its first ones.
void keepFirst(SetState& set, Team team, int kept) {
    int met = 0;
    std::erase_if(set.points, [&](const Point& point) { return point.team == team && ++met > kept; });
    set.teams[team].points = kept;
}

/// Whether a set has a sheet.
bool isBegun(const SetState& set) {
    return set.started || set.teams.home.lineUp || set.teams.visitors.lineUp;
}

} // namespace

void Applier::operator()(const Forfeit& forfeit) {
    if (forfeit.earlier)
        return forfeitEarlier(forfeit);
    const Phase phase = phaseOf(m_state);
    if (phase == Phase::NotOpened || phase == Phase::MatchWon || phase == Phase::MatchClosed)
        return;
    const bool keepsItsPoints = forfeit.kind == ForfeitKind::Incomplete;
    if (keepsItsPoints && !set().winner && (set().started || forfeit.reach == Scope::Set)) {
        set().started = true;
        giveWhatIsNeeded(set(), opponentsOf(forfeit.by));
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

void Applier::giveWhatIsNeeded(SetState& set, Team winner) {
    while (winnerOf(set) != winner) { // margin and cap as in play
        ++set.teams[winner].points;
        set.points.push_back({winner, PointBy::Forfeit, m_number});
    }
    set.winner = winner;
}

void Applier::forfeitEarlier(const Forfeit& forfeit) {
    const bool allGiven = m_state.forfeit && m_state.forfeit->kind == ForfeitKind::Default;
    const auto place = placeOfEnded(m_state, forfeit.earlier->number);
    if (!place || allGiven || m_state.closed)
        return;
    SetState& lost = m_state.sets[*place];
    const int most = mostKept(m_state.rulebook(), lost, forfeit.by);
    const int kept = forfeit.earlier->keeps.value_or(most);
    if (kept < 0 || kept > most)
        return;
    keepFirst(lost, forfeit.by, kept);
    giveWhatIsNeeded(lost, opponentsOf(forfeit.by));
    lost.forfeit = forfeit;
    followNewWinner();
}

void Applier::followNewWinner() {
    const int needed = setsNeeded(*m_state.opened);
    PerTeam<int> won;
    const SetState* last = nullptr; // of those that count
    bool inVain = false;
    for (SetState& played : m_state.sets) {
        if (played.cancelled && !played.inVain)
            continue;
        played.inVain = played.cancelled = won.home == needed || won.visitors == needed;
        inVain = inVain || played.inVain;
        if (played.inVain || !played.ended || !played.winner)
            continue;
        ++won[*played.winner];
        last = &played;
    }
    if (!isBegun(set()) && set().inVain)
        m_state.sets.pop_back();
    if (inVain) { // nor does it count how play was broken off or given up there
        m_state.forfeit.reset();
        m_state.suspended = false;
        m_state.suspendedAt = {};
    } else if (set().ended && !m_state.forfeit && won.home < needed && won.visitors < needed) {
        beginSetAfter(*last);
    }
}

} // namespace setfolio
