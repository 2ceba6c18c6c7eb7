// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/applier.h"

#include "core/match/consequences.h"

namespace setfolio {

void Applier::operator()(const Substitution& substitution) {
    if (m_state.sets.empty())
        return;
    TeamInSet& team = set().teams[substitution.team];
    const std::optional<Slot> slot = slotToLeave(team, substitution.out);
    if (!slot)
        return;
    const bool right = replacedUnlawfully(team, *slot) == substitution.in;
    team.slots[slot->index()].push_back({substitution.in, m_number});
    if (right)
        return;
    if (countsAsSubstitution(m_state.rulebook(), substitutionsOf(team), substitution.kind))
        team.counted.push_back(m_number);
    if (substitution.kind == SubstitutionKind::Exceptional)
        team.exceptionalOuts.push_back({substitution.out, m_number});
    noteRequest(substitution);
}

void Applier::noteRequest(const Substitution& substitution) {
    const bool forced = substitution.kind == SubstitutionKind::Exceptional ||
                        sentOffBy(m_state, substitution.team, substitution.out).has_value();
    if (forced)
        return;
    set().requests.push_back({substitution.team, m_number, set().completed});
    set().requesting = substitution.team;
    set().teams[substitution.team].requested = true;
}

void Applier::operator()(const PlaceVacated& vacated) {
    if (m_state.sets.empty())
        return;
    TeamInSet& team = set().teams[vacated.team];
    if (const auto slot = slotOnCourt(team, vacated.out))
        team.slots[slot->index()].push_back({ShirtNumber(), m_number});
}

void Applier::operator()(const TimeOut& timeOut) {
    if (!inPlay())
        return;
    const PerTeam<TeamInSet>& teams = set().teams;
    const TimeOutTaken taken{teams[timeOut.team].points, teams[opponentsOf(timeOut.team)].points, m_number};
    set().teams[timeOut.team].timeOuts.push_back(taken);
    set().requests.push_back({timeOut.team, m_number, set().completed});
    set().requesting.reset();
    if (timeOutRenewsRequests(m_state.rulebook()))
        for (const Team team : bothTeams)
            set().teams[team].requested = false;
}

void Applier::operator()(const CaptainNamed& named) {
    if (!m_state.sets.empty())
        set().teams[named.team].captain = named.captain;
}

void Applier::operator()(const Sanction& sanction) {
    if (m_state.opened)
        give({sanction.team, sanction.who, sanction.level, 0, {}, m_number},
             bringsPoint(m_state.rulebook(), sanction.level));
}

void Applier::operator()(const DelaySanction& sanction) {
    if (inPlay())
        set().teams[sanction.team].barred = true; // until a rally is completed, which a point for a penalty does
    give({sanction.team, std::nullopt, sanction.level, 0, {}, m_number}, sanction.level == DelayLevel::Penalty);
}

void Applier::operator()(const ImproperRequest& request) {
    if (!m_state.sets.empty())
        m_state.improperRequests.push_back({request.team, set().number, m_number});
}

void Applier::operator()(const PenaltyPoint& penalty) {
    givePenaltyPoint(penalty.to);
}

void Applier::give(SanctionGiven given, bool bringsPoint) {
    if (!m_state.opened)
        return;
    given.set = setThatCounts(m_state);
    if (given.set == set().number)
        given.score = {set().teams.home.points, set().teams.visitors.points};
    m_state.sanctions.push_back(given);
    if (bringsPoint)
        givePenaltyPoint(opponentsOf(given.team));
}

void Applier::givePenaltyPoint(Team team) {
    if (inPlay())
        award(team, PointBy::Penalty);
    else if (const Phase phase = phaseOf(m_state); phase == Phase::BeforeSet || phase == Phase::SetWon)
        m_state.pointsDue.push_back(team);
}

} // namespace setfolio
