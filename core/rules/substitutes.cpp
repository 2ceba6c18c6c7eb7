// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/substitutes.h"

#include "core/match/consequences.h"
#include "core/rules/eligibility.h"
#include "core/rules/lineupjudge.h"
#include "core/rules/makefinding.h"

#include <algorithm>

namespace setfolio {
namespace {

const TeamInSet& teamOf(const MatchState& state, const Pair& pair) {
    return state.set().teams[pair.team];
}

/// Who has stood in a slot lawfully, in order, vacant times left out.
std::vector<ShirtNumber> stoodIn(const TeamInSet& team, Slot slot) {
    std::vector<ShirtNumber> numbers;
    for (const Standing& standing : team.slots[slot.index()])
        if (standing.number.isValid() && !isRuledIllegal(team, standing))
            numbers.push_back(standing.number);
    numbers.erase(std::unique(numbers.begin(), numbers.end()), numbers.end()); // who came back for an illegal player
    return numbers;
}

/// Against a number that comes in, wherever it does.
Findings againstComing(const MatchState& state, const Pair& pair) {
    Findings findings;
    if (!isOfTeam(state, pair.team, pair.in))
        findings.push_back(unlawful(FindingKind::SubstituteNotOnRoster, "substitution-roster", pair.team, pair.in));
    append(findings, againstNumber(state.rulebook(), pair.team, pair.in));
    append(findings, keptOut(state, pair.team, pair.in));
    const TeamInSet& team = teamOf(state, pair);
    const bool actsAsLibero = team.libero && team.libero->libero == pair.in;
    const std::optional<Slot> stands = actsAsLibero ? team.libero->slot : slotOnCourt(team, pair.in);
    if (!stands)
        return findings;
    const bool offForLibero = !actsAsLibero && team.libero && team.libero->slot == *stands;
    Finding finding = unlawful(offForLibero ? FindingKind::SubstituteOffForLibero : FindingKind::SubstituteOnCourt,
                               offForLibero ? "libero-replaced-by" : "line-up-numbers", pair.team, pair.in);
    finding.slot = *stands;
    finding.other = pair.slot;
    findings.push_back(finding);
    return findings;
}

/// A starter leaves and comes back once, for the same player (FIVB Official Volleyball Rules 2025-2028, 15.6).
std::optional<Finding> againstOnceOutOnceBack(const MatchState& state, const Pair& pair) {
    const std::vector<ShirtNumber> stood = stoodIn(teamOf(state, pair), pair.slot);
    if (stood.size() == 1 || (stood.size() == 2 && stood.front() == pair.in))
        return std::nullopt;
    const bool partnerMay = stood.size() == 2 && !keptOut(state, pair.team, stood.front());
    Finding finding = partnerMay ? unlawful(FindingKind::NotHerPartner, "substitution-rule", pair.team, pair.in)
                                 : unlawful(FindingKind::SlotUsedUp, "substitution-rule", pair.team, pair.out);
    finding.slot = pair.slot;
    if (partnerMay)
        finding.lawful = stood.front();
    return finding;
}

std::optional<Finding> againstPlayersPerSlot(const MatchState& state, const Pair& pair) {
    std::vector<ShirtNumber> stood = stoodIn(teamOf(state, pair), pair.slot);
    stood.push_back(pair.in);
    std::ranges::sort(stood);
    const auto count = static_cast<int>(std::unique(stood.begin(), stood.end()) - stood.begin());
    const std::optional<int> limit = state.rulebook().playersPerSlot;
    if (!limit || count <= *limit || slotOf(teamOf(state, pair), pair.in))
        return std::nullopt;
    Finding finding = beyondLimit(FindingKind::PlayersPerSlot, "players-per-slot", pair.team, count, *limit);
    finding.number = pair.in;
    finding.slot = pair.slot;
    return finding;
}

std::optional<Finding> againstSlot(const MatchState& state, const Pair& pair) {
    const std::optional<Slot> own = slotOf(teamOf(state, pair), pair.in);
    if (own && *own != pair.slot) {
        Finding finding = unlawful(FindingKind::WrongSlot, "substitution-slot", pair.team, pair.in);
        finding.slot = *own;
        finding.other = pair.slot;
        return finding;
    }
    switch (state.rulebook().substitutionRule) {
    case SubstitutionRule::OwnSlot:
        return againstPlayersPerSlot(state, pair);
    case SubstitutionRule::OnceOutOnceBack:
        return againstOnceOutOnceBack(state, pair);
    }
    Q_UNREACHABLE();
}

/// The bench without its liberos.
std::vector<ShirtNumber> playersWhoMayCome(const MatchState& state, Pair pair, bool liberos) {
    std::vector<ShirtNumber> numbers = offCourtOf(state, pair.team);
    std::erase_if(numbers, [&](ShirtNumber number) {
        pair.in = number;
        return isLibero(teamOf(state, pair), number) != liberos || !againstComing(state, pair).empty();
    });
    return numbers;
}

/// Whether the rulebook lets a libero come in for the one who goes out, when nobody else may.
bool mayLiberoComeFor(const MatchState& state, const Pair& pair) {
    switch (state.rulebook().exceptionalLibero) {
    case ExceptionalLibero::Last:
        return true;
    case ExceptionalLibero::LastForHurt:
        return !sentOffBy(state, pair.team, pair.out);
    case ExceptionalLibero::Never:
        return false;
    }
    Q_UNREACHABLE();
}

std::optional<Finding> againstExceptionalLibero(const MatchState& state, const Pair& pair) {
    if (!isLibero(teamOf(state, pair), pair.in))
        return std::nullopt;
    if (state.rulebook().exceptionalLibero == ExceptionalLibero::Never)
        return unlawful(FindingKind::SubstituteIsLibero, "exceptional-libero", pair.team, pair.in);
    if (!mayLiberoComeFor(state, pair)) {
        Finding finding = unlawful(FindingKind::LiberoForSentOff, "exceptional-libero", pair.team, pair.in);
        finding.lawful = pair.out;
        return finding;
    }
    const std::vector<ShirtNumber> others = playersWhoMayCome(state, pair, false);
    if (others.empty())
        return std::nullopt;
    Finding finding = unlawful(FindingKind::LiberoComesLast, "exceptional-libero", pair.team, pair.in);
    finding.lawful = others.front();
    return finding;
}

} // namespace

Findings againstRegular(const MatchState& state, const Pair& pair) {
    Findings findings = againstComing(state, pair);
    const TeamInSet& team = teamOf(state, pair);
    if (replacedUnlawfully(team, pair.slot) == pair.in)
        return findings;
    if (isLibero(team, pair.in))
        findings.push_back(unlawful(FindingKind::SubstituteIsLibero, "line-up-libero", pair.team, pair.in));
    if (!slotOnCourt(team, pair.in))
        append(findings, againstSlot(state, pair));
    const int count = substitutionsOf(team) + 1;
    const int limit = state.rulebook().substitutionLimit;
    if (count > limit)
        findings.push_back(beyondLimit(FindingKind::SubstitutionLimit, "substitution-limit", pair.team, count, limit));
    return findings;
}

Findings againstExceptional(const MatchState& state, const Pair& pair) {
    Findings findings = againstComing(state, pair);
    append(findings, againstExceptionalLibero(state, pair));
    if (const auto regular = regularSubstitutes(state, pair.team, pair.out); !regular.empty()) {
        Finding finding = unlawful(FindingKind::RegularSubstituteLeft, "exceptional-substitution", pair.team, pair.out);
        finding.lawful = regular.front();
        findings.push_back(finding);
    }
    return findings;
}

std::vector<ShirtNumber> regularSubstitutes(const MatchState& state, Team team, ShirtNumber out) {
    const std::optional<Slot> slot = slotToLeave(state.set().teams[team], out);
    if (!slot)
        return {};
    std::vector<ShirtNumber> numbers = offCourtOf(state, team);
    std::erase_if(numbers, [&](ShirtNumber in) { return !againstRegular(state, {team, in, out, *slot}).empty(); });
    return numbers;
}

std::vector<ShirtNumber> exceptionalSubstitutes(const MatchState& state, Team team, ShirtNumber out) {
    const std::optional<Slot> slot = slotToLeave(state.set().teams[team], out);
    if (!slot || !regularSubstitutes(state, team, out).empty())
        return {};
    const Pair pair{team, {}, out, *slot};
    std::vector<ShirtNumber> numbers = playersWhoMayCome(state, pair, false);
    if (numbers.empty() && mayLiberoComeFor(state, pair))
        numbers = playersWhoMayCome(state, pair, true);
    return numbers;
}

} // namespace setfolio
