// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/lineupjudge.h"

#include "core/match/consequences.h"
#include "core/rules/eligibility.h"
#include "core/rules/makefinding.h"

#include <algorithm>

namespace setfolio {
namespace {

void judgeNumber(Findings& findings, const Rulebook& rulebook, Team team, ShirtNumber number) {
    if (number.isValid())
        append(findings, againstNumber(rulebook, team, number));
    else
        findings.push_back(refused(FindingKind::NumberImpossible, team, number));
}

/// Each number that stands more than once, named once.
std::vector<ShirtNumber> doubled(std::vector<ShirtNumber> numbers) {
    std::vector<ShirtNumber> twice;
    std::ranges::sort(numbers);
    for (std::size_t i = 1; i < numbers.size(); ++i)
        if (numbers[i] == numbers[i - 1] && (twice.empty() || twice.back() != numbers[i]))
            twice.push_back(numbers[i]);
    return twice;
}

bool contains(const auto& numbers, ShirtNumber number) {
    return std::ranges::find(numbers, number) != std::end(numbers);
}

void judgeSix(Findings& findings, const MatchState& state, const LineUp& lineUp) {
    const char* const rule = "line-up-numbers";
    for (const ShirtNumber number : lineUp.positions)
        judgeNumber(findings, state.rulebook(), lineUp.team, number);
    for (const ShirtNumber number : doubled({lineUp.positions.begin(), lineUp.positions.end()}))
        findings.push_back(unlawful(FindingKind::DoubledInLineUp, rule, lineUp.team, number));
    for (const ShirtNumber number : lineUp.positions)
        if (number.isValid() && !isOfTeam(state, lineUp.team, number))
            findings.push_back(unlawful(FindingKind::StrangerInLineUp, rule, lineUp.team, number));
    for (const ShirtNumber number : lineUp.positions)
        append(findings, keptOut(state, lineUp.team, number));
    if (lineUp.captain && !isOfTeam(state, lineUp.team, *lineUp.captain) &&
        !contains(lineUp.positions, *lineUp.captain))
        findings.push_back(unlawful(FindingKind::CaptainNotInTeam, rule, lineUp.team, *lineUp.captain));
    if (lineUp.captain && contains(lineUp.liberos, *lineUp.captain) && !state.rulebook().liberoCaptain)
        findings.push_back(unlawful(FindingKind::CaptainIsLibero, "libero-captain", lineUp.team, *lineUp.captain));
}

/// Against the liberos where they are named for the match: no others, none of them among the six, and none named late,
/// once a set has started.
void judgeLiberosOfMatch(Findings& findings, const MatchState& state, const LineUp& lineUp) {
    if (state.rulebook().liberoNamedFor == Scope::Set)
        return;
    const std::vector<ShirtNumber> named = liberosOfMatch(state, lineUp.team);
    const bool areNamed = !named.empty() || std::ranges::any_of(state.sets, &SetState::started);
    for (const ShirtNumber libero : lineUp.liberos)
        if (areNamed && !contains(named, libero))
            findings.push_back(unlawful(FindingKind::LiberoNotOfMatch, "libero-named-for", lineUp.team, libero));
    for (const ShirtNumber number : lineUp.positions)
        if (contains(named, number) && !contains(lineUp.liberos, number))
            findings.push_back(unlawful(FindingKind::LiberoInLineUp, "libero-named-for", lineUp.team, number));
}

std::optional<Finding> againstCount(const Rulebook& rulebook, Team team, std::size_t liberos) {
    const auto count = static_cast<int>(liberos);
    if (count <= rulebook.maximumLiberos)
        return std::nullopt;
    return beyondLimit(FindingKind::TooManyLiberos, "maximum-liberos", team, count, rulebook.maximumLiberos);
}

/// Where a libero's number that nobody wears costs the team its liberos for the set, the first slip that named it
/// counts, whatever later ones say.
std::optional<Finding> againstLiberosAfterWrong(const MatchState& state, const LineUp& lineUp) {
    if (state.rulebook().liberoNumberWrong != LiberoNumberWrong::NoLibero)
        return std::nullopt;
    const TeamInSet& team = state.set().teams[lineUp.team];
    std::vector<ShirtNumber> named = team.liberosBefore;
    if (team.lineUp)
        named.insert(named.end(), team.lineUp->liberos.begin(), team.lineUp->liberos.end());
    named.insert(named.end(), lineUp.liberos.begin(), lineUp.liberos.end());
    const auto wrong = std::ranges::find_if(
        named, [&](ShirtNumber libero) { return libero.isValid() && !isOfTeam(state, lineUp.team, libero); });
    if (wrong == named.end())
        return std::nullopt;
    return unlawful(FindingKind::NoLiberoThisSet, "libero-number-wrong", lineUp.team, *wrong);
}

void judgeLiberos(Findings& findings, const MatchState& state, const LineUp& lineUp) {
    for (const ShirtNumber libero : lineUp.liberos) {
        judgeNumber(findings, state.rulebook(), lineUp.team, libero);
        append(findings, keptOut(state, lineUp.team, libero));
        if (contains(lineUp.positions, libero))
            findings.push_back(unlawful(FindingKind::LiberoInLineUp, "line-up-libero", lineUp.team, libero));
        else if (libero.isValid() && !isOfTeam(state, lineUp.team, libero))
            findings.push_back(unlawful(FindingKind::LiberoNotOnRoster, "line-up-numbers", lineUp.team, libero));
    }
    if (!lineUp.liberos.empty())
        append(findings, againstLiberosAfterWrong(state, lineUp));
    for (const ShirtNumber number : doubled(lineUp.liberos))
        findings.push_back(unlawful(FindingKind::DoubledInLineUp, "line-up-numbers", lineUp.team, number));
    append(findings, againstCount(state.rulebook(), lineUp.team, lineUp.liberos.size()));
}

std::vector<ShirtNumber> numbersOf(const Roster& roster) {
    std::vector<ShirtNumber> numbers;
    for (const RosterPlayer& player : roster.players)
        numbers.push_back(player.number);
    std::ranges::sort(numbers);
    return numbers;
}

/// Once the match has begun the numbers stand, or cost a point, where the rulebook says so; names may be put right.
std::optional<Finding> againstChange(const MatchState& state, const Roster& roster) {
    const Roster& before = state.rosters[roster.team];
    const bool hasBegun = std::ranges::any_of(state.sets, &SetState::started);
    if (!hasBegun || before.players.empty() || numbersOf(before) == numbersOf(roster))
        return std::nullopt;
    switch (state.rulebook().rosterChange) {
    case RosterChange::Free:
        return std::nullopt;
    case RosterChange::PenaltyPoint:
        return unlawful(FindingKind::RosterChangeCosts, "roster-change", roster.team);
    case RosterChange::NotAllowed:
        return unlawful(FindingKind::RosterSettled, "roster-change", roster.team);
    }
    Q_UNREACHABLE();
}

/// A set that was broken off and is played again begins with the same six in the same places, but for who may not play.
/// Source: FIVB Official Volleyball Rules 2025-2028, 17.3.
std::optional<Finding> againstOtherSix(const MatchState& state, const LineUp& lineUp) {
    const auto brokenOff = std::find_if(state.sets.rbegin(), state.sets.rend(), [&](const SetState& set) {
        return set.cancelled && !set.inVain && set.number == state.set().number;
    });
    if (brokenOff == state.sets.rend())
        return std::nullopt;
    const std::optional<LineUp>& before = brokenOff->teams[lineUp.team].lineUp;
    if (!before)
        return std::nullopt;
    for (std::size_t place = 0; place < before->positions.size(); ++place)
        if (lineUp.positions[place] != before->positions[place] &&
            !keptOut(state, lineUp.team, before->positions[place]))
            return unlawful(FindingKind::SameLineUpDue, "resumed-elsewhere", lineUp.team);
    return std::nullopt;
}

} // namespace

Findings judgeRoster(const MatchState& state, const Roster& roster) {
    Findings findings;
    std::vector<ShirtNumber> numbers;
    for (const RosterPlayer& player : roster.players) {
        judgeNumber(findings, state.rulebook(), roster.team, player.number);
        numbers.push_back(player.number);
    }
    for (const ShirtNumber number : doubled(numbers))
        findings.push_back(unlawful(FindingKind::DoubledInRoster, "roster-numbers", roster.team, number));
    if (state.rulebook().liberoNamedFor == Scope::Match) {
        const auto liberos = std::ranges::count_if(roster.players, &RosterPlayer::libero);
        append(findings, againstCount(state.rulebook(), roster.team, static_cast<std::size_t>(liberos)));
    }
    append(findings, againstChange(state, roster));
    return findings;
}

std::optional<Finding> againstNumber(const Rulebook& rulebook, Team team, ShirtNumber number) {
    if (number.value < rulebook.lowestNumber)
        return unlawful(FindingKind::NumberNotAllowed, "lowest-number", team, number);
    if (number.value > rulebook.highestNumber)
        return unlawful(FindingKind::NumberNotAllowed, "highest-number", team, number);
    return std::nullopt;
}

Findings judgeLineUp(const MatchState& state, const LineUp& lineUp) {
    Findings findings;
    judgeSix(findings, state, lineUp);
    judgeLiberos(findings, state, lineUp);
    judgeLiberosOfMatch(findings, state, lineUp);
    append(findings, againstOtherSix(state, lineUp));
    return findings;
}

} // namespace setfolio
