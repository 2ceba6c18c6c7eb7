// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplaymodel.h"

#include <algorithm>
#include <utility>

namespace setfolio::testing {

bool holds(const Numbers& numbers, ShirtNumber number) {
    return std::ranges::find(numbers, number) != numbers.end();
}

ShirtNumber ModelTeam::inSlot(std::size_t slot) const {
    return stood[slot].empty() ? ShirtNumber() : stood[slot].back();
}

std::optional<std::size_t> ModelTeam::boundTo(ShirtNumber number) const {
    for (std::size_t slot = 0; slot < 6; ++slot)
        if (holds(stood[slot], number))
            return slot;
    return std::nullopt;
}

std::optional<std::size_t> ModelTeam::standsIn(ShirtNumber number) const {
    for (std::size_t slot = 0; slot < 6; ++slot)
        if (number.isValid() && inSlot(slot) == number)
            return slot;
    return std::nullopt;
}

std::size_t ModelTeam::positionOf(std::size_t slot) const {
    return static_cast<std::size_t>(std::ranges::find(places, slot) - places.begin());
}

bool ModelTeam::isFrontRow(std::size_t slot) const {
    const std::size_t position = positionOf(slot);
    return position >= 1 && position <= 3;
}

bool ModelTeam::liberoIn(std::size_t slot) const {
    return libero && libero->slot.index() == slot;
}

bool ModelTeam::isOut(ShirtNumber number) const {
    return outOfMatch.contains(number) || outOfSet.contains(number);
}

ShirtNumber ModelTeam::atPosition(std::size_t position) const {
    const std::size_t slot = places[position];
    return liberoIn(slot) ? libero->libero : inSlot(slot);
}

std::optional<Team> Model::leader() const {
    for (const Team team : bothTeams) {
        const int own = teams[team].points;
        const int lead = own - teams[opponentsOf(team)].points;
        if ((own >= needed() && lead >= rules.margin) || (rules.cap && own >= *rules.cap && lead > 0))
            return team;
    }
    return std::nullopt;
}

ShirtNumber Model::server() const {
    const ModelTeam& team = teams[serving];
    return team.liberoServing.value_or(team.atPosition(0));
}

Expected Model::expected() const {
    Expected now;
    now.phase = phase;
    now.set = set;
    now.started = phase == Phase::ReadyToServe || phase == Phase::Rally;
    now.serving = serving;
    now.left = left;
    now.setsWon = setsWon;
    if (now.started)
        now.server = server();
    for (const Team team : bothTeams) {
        const ModelTeam& its = teams[team];
        for (std::size_t position = 0; position < 6 && now.started; ++position)
            now.court[team][position] = its.atPosition(position);
        now.points[team] = its.points;
        now.substitutions[team] = its.substitutions;
        now.timeOuts[team] = its.timeOuts;
        now.rotations[team] = its.rotations;
    }
    return now;
}

void Model::placePlayers() {
    serving = *servesFirst;
    for (const Team team : bothTeams)
        place(team);
}

void Model::place(Team team) {
    ModelTeam& its = teams[team];
    if (!its.lineUpGiven || !servesFirst)
        return;
    // Slot I is court position 2 where the list is written in the order of service and the team receives first.
    const bool shifted = team != *servesFirst && rules.writtenOrder == WrittenOrder::Serving;
    for (std::size_t position = 0; position < 6; ++position) {
        const std::size_t slot = shifted ? (position + 5) % 6 : position;
        its.places[position] = slot;
        its.stood[slot] = {its.lineUp.positions[position]};
    }
    its.liberos = its.lineUp.liberos;
}

void Model::start(std::uint32_t entry) {
    phase = Phase::ReadyToServe;
    for (const Team team : std::exchange(due, {}))
        award(team, false, entry);
}

void Model::award(Team team, bool rally, std::uint32_t entry) {
    phase = Phase::ReadyToServe;
    afterReplay = wrongSeen = false;
    ++completed;
    for (const Team each : bothTeams) {
        teams[each].requested = false;
        teams[each].barred = teams[each].barred && !rally;
    }
    ++teams[team].points;
    points.push_back({team, entry, team == serving && rally, term});
    if (team != serving) {
        std::ranges::rotate(teams[team].places, teams[team].places.begin() + 1);
        ++teams[team].rotations;
        teams[team].reServes = 0;
        teams[serving].liberoServing.reset();
        serving = team;
        ++term;
    }
    decide();
}

void Model::serveMade() {
    ModelTeam& team = teams[serving];
    const std::size_t slot = team.places[0];
    if (!team.liberoServes && (team.liberoServing || team.liberoIn(slot))) {
        team.liberoServes = slot;
        team.liberoServesSince = term;
    }
}

void Model::ruledWrong(Team team, int inTerm) {
    const bool lawful = std::ranges::any_of(
        points, [&](const ModelPoint& p) { return p.team == team && p.term == inTerm && p.ownServe; });
    if (!lawful && teams[team].liberoServesSince == inTerm)
        teams[team].liberoServes.reset();
}

void Model::takeBack(Team team, std::uint32_t from) {
    const auto first = std::ranges::find_if(points, [&](const ModelPoint& p) { return p.entry == from; });
    const auto end = std::remove_if(first, points.end(), [&](const ModelPoint& p) { return p.team == team; });
    teams[team].points -= static_cast<int>(points.end() - end);
    points.erase(end, points.end());
}

void Model::decide() {
    phase = leader() ? Phase::SetWon : Phase::ReadyToServe;
}

void Model::enter(Team team, std::size_t slot, ShirtNumber in, SubstitutionKind kind) {
    ModelTeam& its = teams[team];
    const bool regular = kind == SubstitutionKind::Regular;
    const bool counted = regular || (rules.exceptionalCount == ExceptionalCount::WhileAnyLeft &&
                                     its.substitutions < rules.substitutionLimit);
    if (!regular) {
        its.replacedForGood.insert(its.inSlot(slot));
        (rules.exceptionalOutFor == Scope::Set ? its.outOfSet : its.outOfMatch).insert(its.inSlot(slot));
        its.exceptional[slot] = true;
    }
    its.stood[slot].push_back(in);
    its.substitutions += counted ? 1 : 0;
    its.requested = true;
}

void Model::moveLibero(Team team, std::optional<LiberoOnCourt> libero) {
    teams[team].libero = libero;
    teams[team].liberoMovedAfter = completed;
}

void Model::penaltyFor(Team team, std::uint32_t entry) {
    if (phase == Phase::ReadyToServe)
        award(opponentsOf(team), false, entry);
    else
        due.push_back(opponentsOf(team));
}

void Model::endSet() {
    const Team winner = *leader();
    if (++setsWon[winner] > bestOf / 2)
        phase = Phase::MatchWon;
    else
        nextSet();
}

void Model::nextSet() {
    ++set;
    playedAgain = false;
    clearSet();
    for (const Team team : bothTeams) {
        teams[team].outOfSet.clear();
        if (rules.exceptionalOutFor == Scope::Set)
            teams[team].replacedForGood.clear();
        if (rules.liberoNamedFor == Scope::Set)
            teams[team].givenUp.clear();
        teams[team].lineUpGiven = false;
    }
    servesFirst = deciding() ? std::nullopt : std::optional(opponentsOf(*servesFirst));
    left = deciding() || !left ? std::nullopt : std::optional(opponentsOf(*left));
    serving = servesFirst.value_or(Team::Home);
}

void Model::playAgain() {
    clearSet();
    playedAgain = true;
    placePlayers();
}

void Model::forfeitSet(Team by) {
    const int enough = std::max(needed(), teams[by].points + rules.margin);
    teams[opponentsOf(by)].points = std::max(teams[opponentsOf(by)].points, enough);
    phase = Phase::SetWon;
    forfeited = true;
}

void Model::clearSet() {
    phase = Phase::BeforeSet;
    term = completed = 0;
    afterReplay = wrongSeen = sidesChanged = forfeited = false;
    points.clear();
    for (const Team team : bothTeams) {
        ModelTeam& its = teams[team];
        const ModelTeam fresh;
        its.stood = fresh.stood;
        its.exceptional = {};
        its.points = its.substitutions = its.timeOuts = its.rotations = its.reServes = 0;
        its.libero.reset();
        its.liberoMovedAfter = -1;
        its.liberoServes.reset();
        its.liberoServing.reset();
        its.redesignated = its.requested = false;
    }
}

} // namespace setfolio::testing
