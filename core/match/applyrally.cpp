// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/applier.h"
#include "core/match/consequences.h"

#include <algorithm>
#include <utility>

namespace setfolio {

bool Applier::inPlay() const {
    const Phase phase = phaseOf(m_state);
    return phase == Phase::ReadyToServe || phase == Phase::Rally;
}

void Applier::operator()(const ServeContacted&) {
    if (inPlay())
        serveMade();
}

void Applier::operator()(const RallyWon& rally) {
    if (!inPlay())
        return;
    serveMade();
    award(rally.by, rally.by == set().serving ? PointBy::OwnServe : PointBy::OpponentsServe);
}

void Applier::operator()(const Replay& replay) {
    if (!inPlay())
        return;
    const bool contacted = std::exchange(set().contacted, false);
    set().seen.reset();
    set().again = replay;
    if (replay.again == Again::ReServe) {
        ++set().teams[set().serving].reServes;
        if (contacted && --set().termContacts == 0) // a toss that is taken again was not contacted
            unserve(set().serving);
    } else if (contacted && contactIsLiberoRally(m_state.rulebook())) {
        for (const Team team : bothTeams)
            lieRallyBehind(set().teams[team]);
    }
}

void Applier::operator()(const NoServe&) {
    if (inPlay())
        award(opponentsOf(set().serving), PointBy::OpponentsServe);
}

void Applier::operator()(const ServerSeen& seen) {
    if (inPlay())
        set().seen = seen.number;
}

void Applier::operator()(const WrongServer& ruling) {
    if (!maySettle(ruling.takenBackFrom))
        return;
    settle(ruling.team, ruling.takenBackFrom);
    unserve(ruling.team);
    if (set().serving == ruling.team)
        award(opponentsOf(ruling.team), PointBy::OpponentsServe);
}

void Applier::operator()(const IllegalPlayer& ruling) {
    if (!maySettle(ruling.takenBackFrom))
        return;
    settle(ruling.team, ruling.takenBackFrom);
    if (ruling.by == IllegalBy::Substitution)
        ruleIllegal(set().teams[ruling.team], ruling.number);
    else if (set().serving == ruling.team && set().teams[ruling.team].liberoServed == ruling.number)
        unserve(ruling.team);
    if (set().serving == ruling.team)
        award(opponentsOf(ruling.team), PointBy::OpponentsServe);
    else if (set().contacted)
        award(opponentsOf(ruling.team), PointBy::OwnServe);
}

void Applier::unserve(Team team) {
    TeamInSet& own = set().teams[team];
    const bool servedLawfully = std::ranges::any_of(set().points, [&](const Point& point) {
        return point.team == team && point.by == PointBy::OwnServe && point.term == own.termsBegun;
    });
    if (servedLawfully || own.liberoSlotSince != own.termsBegun)
        return;
    own.liberoSlot.reset();
    own.liberoSlotSince = 0;
    own.liberoServed.reset();
}

void Applier::ruleIllegal(TeamInSet& team, ShirtNumber number) {
    const std::optional<Slot> slot = slotOnCourt(team, number);
    if (!slot || team.slots[slot->index()].size() < 2)
        return;
    const Standing& came = team.slots[slot->index()].back();
    team.ruledIllegal.push_back(came);
    std::erase_if(team.exceptionalOuts, [&](const ExceptionalOut& out) { return out.entry == came.since; });
    if (!m_state.rulebook().illegalSubstitutionCounts)
        std::erase(team.counted, came.since);
}

bool Applier::maySettle(std::optional<EntryNumber> takenBackFrom) const {
    const bool reopens = phaseOf(m_state) == Phase::SetWon && takenBackFrom && !m_state.set().forfeit;
    return inPlay() || reopens;
}

void Applier::settle(Team team, std::optional<EntryNumber> takenBackFrom) {
    if (takenBackFrom)
        takeBack(team, *takenBackFrom);
    decide();
}

void Applier::lieRallyBehind(TeamInSet& team) {
    if (team.liberoMoved)
        team.liberoMoved = set().completed - 1;
}

void Applier::serveMade() {
    set().termContacts += set().contacted ? 0 : 1;
    set().contacted = true;
    set().again.reset();
    set().requesting.reset(); // a replay may follow, but what is asked for then is another request
    TeamInSet& team = set().teams[set().serving];
    const std::optional<ShirtNumber> libero = liberoAtServe(set());
    if (!libero)
        return;
    if (!team.liberoSlot) {
        team.liberoSlot = team.nextServer;
        team.liberoSlotSince = team.termsBegun;
    }
    if (team.liberoSlot == team.nextServer)
        team.liberoServed = libero;
}

void Applier::endInterruption() {
    set().contacted = false;
    set().seen.reset();
    set().again.reset();
    set().requesting.reset();
    for (const Team team : bothTeams) {
        set().teams[team].requested = false;
        set().teams[team].barred = false;
    }
}

void Applier::award(Team team, PointBy by) {
    endInterruption();
    ++set().completed;
    if (by != PointBy::Penalty)
        ++set().rallies;
    ++set().teams[team].points;
    const Team serving = set().serving;
    set().points.push_back({team, by, m_number, serving, set().teams[serving].termsBegun, set().completed});
    if (team != set().serving)
        giveServeTo(team);
    decide();
}

std::optional<Team> Applier::winnerOf(const SetState& set) const {
    const PerTeam<int> points{set.teams.home.points, set.teams.visitors.points};
    return winnerAt(m_state.rulebook(), pointsToWin(m_state, set.number), points);
}

void Applier::decide() {
    set().winner = winnerOf(set());
}

void Applier::giveServeTo(Team team) {
    TeamInSet& losing = set().teams[opponentsOf(team)];
    losing.nextServer = losing.nextServer.next();
    losing.liberoServing.reset();
    TeamInSet& gaining = set().teams[team];
    ++gaining.termsBegun;
    gaining.reServes = 0;
    set().termContacts = 0;
    set().serving = team;
}

void Applier::takeBack(Team team, EntryNumber first) {
    std::vector<Point>& points = set().points;
    const auto fault =
        std::ranges::find_if(points, [&](const Point& point) { return point.team == team && point.entry == first; });
    const auto gone = std::remove_if(fault, points.end(), [team](const Point& point) { return point.team == team; });
    set().teams[team].points -= static_cast<int>(points.end() - gone);
    points.erase(gone, points.end());
}

} // namespace setfolio
