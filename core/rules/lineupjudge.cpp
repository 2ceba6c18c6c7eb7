// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/lineupjudge.h"

#include <algorithm>

namespace setfolio {
namespace {

Finding unlawful(FindingKind kind, const QString& setting, Team team, ShirtNumber number) {
    return {.kind = kind, .gravity = Gravity::Unlawful, .setting = setting, .team = team, .number = number};
}

void judgeNumber(Findings& findings, const Rulebook& rulebook, Team team, ShirtNumber number) {
    if (!number.isValid())
        findings.push_back({.kind = FindingKind::NumberImpossible, .team = team, .number = number});
    else if (number.value < rulebook.lowestNumber)
        findings.push_back(unlawful(FindingKind::NumberNotAllowed, u"lowest-number"_qs, team, number));
    else if (number.value > rulebook.highestNumber)
        findings.push_back(unlawful(FindingKind::NumberNotAllowed, u"highest-number"_qs, team, number));
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

/// Whether a number may belong to the team: on its roster, or the team has none.
bool isKnown(const MatchState& state, Team team, ShirtNumber number) {
    return state.rosters[team].players.empty() || playerOf(state, team, number);
}

void judgeSix(Findings& findings, const MatchState& state, const LineUp& lineUp) {
    const QString rule = u"line-up-numbers"_qs;
    for (const ShirtNumber number : lineUp.positions)
        judgeNumber(findings, state.rulebook(), lineUp.team, number);
    for (const ShirtNumber number : doubled({lineUp.positions.begin(), lineUp.positions.end()}))
        findings.push_back(unlawful(FindingKind::DoubledInLineUp, rule, lineUp.team, number));
    for (const ShirtNumber number : lineUp.positions)
        if (number.isValid() && !isKnown(state, lineUp.team, number))
            findings.push_back(unlawful(FindingKind::StrangerInLineUp, rule, lineUp.team, number));
    if (lineUp.captain && !isKnown(state, lineUp.team, *lineUp.captain) && !contains(lineUp.positions, *lineUp.captain))
        findings.push_back(unlawful(FindingKind::CaptainNotInTeam, rule, lineUp.team, *lineUp.captain));
}

void judgeLiberos(Findings& findings, const MatchState& state, const LineUp& lineUp) {
    for (const ShirtNumber libero : lineUp.liberos) {
        judgeNumber(findings, state.rulebook(), lineUp.team, libero);
        if (contains(lineUp.positions, libero))
            findings.push_back(unlawful(FindingKind::LiberoInLineUp, u"line-up-libero"_qs, lineUp.team, libero));
        else if (libero.isValid() && !isKnown(state, lineUp.team, libero))
            findings.push_back(unlawful(FindingKind::LiberoNotOnRoster, u"line-up-numbers"_qs, lineUp.team, libero));
    }
    for (const ShirtNumber number : doubled(lineUp.liberos))
        findings.push_back(unlawful(FindingKind::DoubledInLineUp, u"line-up-numbers"_qs, lineUp.team, number));
    const int count = static_cast<int>(lineUp.liberos.size());
    if (count > state.rulebook().maximumLiberos) {
        Finding tooMany = unlawful(FindingKind::TooManyLiberos, u"maximum-liberos"_qs, lineUp.team, {});
        tooMany.count = count;
        tooMany.limit = state.rulebook().maximumLiberos;
        findings.push_back(tooMany);
    }
}

} // namespace

Findings judgeRoster(const Rulebook& rulebook, const Roster& roster) {
    Findings findings;
    std::vector<ShirtNumber> numbers;
    for (const RosterPlayer& player : roster.players) {
        judgeNumber(findings, rulebook, roster.team, player.number);
        numbers.push_back(player.number);
    }
    for (const ShirtNumber number : doubled(numbers))
        findings.push_back(unlawful(FindingKind::DoubledInRoster, u"roster-numbers"_qs, roster.team, number));
    return findings;
}

Findings judgeLineUp(const MatchState& state, const LineUp& lineUp) {
    Findings findings;
    judgeSix(findings, state, lineUp);
    judgeLiberos(findings, state, lineUp);
    return findings;
}

} // namespace setfolio
