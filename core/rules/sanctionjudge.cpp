// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/sanctionjudge.h"

#include "core/match/consequences.h"
#include "core/rules/eligibility.h"
#include "core/rules/makefinding.h"
#include "core/rules/momentjudge.h"

#include <algorithm>

namespace setfolio {
namespace {

bool isRemembered(const MatchState& state, const SanctionGiven& given, Scope scope) {
    return scope == Scope::Match || given.set == setThatCounts(state);
}

/// The highest sanction that someone has had, as far as it is remembered.
std::optional<SanctionLevel> lastOf(const MatchState& state, Team team, const Member& who) {
    std::optional<SanctionLevel> highest;
    for (const SanctionGiven& given : state.sanctions) {
        const auto* level = std::get_if<SanctionLevel>(&given.level);
        if (level && given.team == team && given.who == who &&
            isRemembered(state, given, state.rulebook().conductScope))
            highest = std::max(highest.value_or(*level), *level);
    }
    return highest;
}

bool isTeamWarned(const MatchState& state, Team team) {
    return state.rulebook().conductWarnedOnce == WarnedOnce::Team &&
           std::ranges::any_of(state.sanctions, [&](const SanctionGiven& given) {
               const auto* level = std::get_if<SanctionLevel>(&given.level);
               return level && given.team == team && *level == SanctionLevel::Warning &&
                      isRemembered(state, given, state.rulebook().conductScope);
           });
}

Finding about(FindingKind kind, const char* setting, const Sanction& sanction, std::optional<SanctionLevel> level) {
    Finding finding = unlawful(kind, setting, sanction.team);
    finding.who = sanction.who;
    if (const auto* number = std::get_if<ShirtNumber>(&sanction.who))
        finding.number = *number;
    if (level)
        finding.level = *level;
    return finding;
}

/// One that brings a point is given when the rally that is played has been decided, or is replayed.
Findings momentToSanction(const MatchState& state, bool bringsPoint) {
    if (phaseOf(state) == Phase::Suspended) // it would have to bring a point where nobody plays
        return {refused(FindingKind::MatchIsSuspended)};
    const bool undecided = bringsPoint && phaseOf(state) == Phase::Rally;
    return undecided ? Findings{refused(FindingKind::RallyUndecided)} : Findings{};
}

/// Against the rung, given what the person and the team have had.
std::optional<Finding> againstRung(const MatchState& state, const Sanction& sanction) {
    const std::optional<CardStep> next = nextCardOf(state, sanction.team, sanction.who);
    if (!next || sanction.level >= next->level)
        return std::nullopt;
    const std::optional<SanctionLevel> last = lastOf(state, sanction.team, sanction.who);
    if (state.rulebook().conductStepsUp && last && sanction.level <= *last)
        return about(FindingKind::SanctionNotHigher, "conduct-steps-up", sanction, next->level);
    return about(FindingKind::TeamWarnedAlready, "conduct-warned-once", sanction, next->level);
}

} // namespace

Findings judgeSanction(const MatchState& state, const Sanction& sanction) {
    Findings findings = momentToSanction(state, bringsPoint(state.rulebook(), sanction.level));
    if (!findings.empty())
        return findings;
    if (const auto* number = std::get_if<ShirtNumber>(&sanction.who)) {
        if (!number->isValid())
            return {refused(FindingKind::NumberImpossible, sanction.team, *number)};
        if (!isOfTeam(state, sanction.team, *number))
            findings.push_back(unlawful(FindingKind::SanctionedStranger, "line-up-numbers", sanction.team, *number));
    }
    const std::vector<CardStep>& ladder = state.rulebook().conductLadder;
    if (std::ranges::find(ladder, sanction.level, &CardStep::level) == ladder.end())
        findings.push_back(about(FindingKind::LevelNotOnLadder, "conduct-ladder", sanction, sanction.level));
    const std::optional<SanctionLevel> out = sentOffBy(state, sanction.team, sanction.who);
    if (out && sanction.level <= *out)
        findings.push_back(about(FindingKind::SentOffAlready, "conduct-ladder", sanction, *out));
    else
        append(findings, againstRung(state, sanction));
    return findings;
}

namespace {

bool hasHadLateReplacement(const MatchState& state, Team team) {
    return std::ranges::find(state.lateReplacements, team, &LateReplacementMade::team) != state.lateReplacements.end();
}

/// After one that was let pass a late replacement is a penalty, whether or not the team has been warned for delay
/// (FIVB Official Volleyball Rules 2025-2028, 19.3.2.6).
bool isForLateReplacement(const MatchState& state, const DelaySanction& sanction) {
    return sanction.level == DelayLevel::Penalty && hasHadLateReplacement(state, sanction.team) &&
           delayForLateReplacement(state, sanction.team) == DelayLevel::Penalty;
}

} // namespace

Findings judgeDelay(const MatchState& state, const DelaySanction& sanction) {
    if (Findings findings = momentToSanction(state, sanction.level == DelayLevel::Penalty); !findings.empty())
        return findings;
    const DelayLevel next = nextDelayOf(state, sanction.team);
    if (sanction.level == next || isForLateReplacement(state, sanction))
        return {};
    Finding finding = unlawful(FindingKind::DelayNotNext, "delay-ladder", sanction.team);
    finding.level = next;
    return {finding};
}

Findings judgeImproperRequest(const MatchState& state, const ImproperRequest& request) {
    if (isRequestLetPass(state, request.team))
        return {};
    Finding finding = unlawful(FindingKind::ImproperRequestIsDelay, "improper-request", request.team);
    finding.level = nextDelayOf(state, request.team);
    return {finding};
}

Findings judgeLateReplacement(const MatchState& state, const LateReplacement& late) {
    Findings findings = phaseOf(state) == Phase::SetWon ? Findings{} : momentInPlay(state);
    if (!findings.empty() || isLateReplacementLetPass(state, late.team))
        return findings;
    Finding finding = unlawful(FindingKind::LateReplacementIsDelay, "libero-late-replacement", late.team);
    finding.level = delayForLateReplacement(state, late.team);
    return {finding};
}

bool isRequestLetPass(const MatchState& state, Team team) {
    return state.rulebook().improperRequest == ImproperRequestRule::RecordedFirst &&
           std::ranges::find(state.improperRequests, team, &ImproperRequestMade::team) == state.improperRequests.end();
}

bool isLateReplacementLetPass(const MatchState& state, Team team) {
    return state.rulebook().liberoLateReplacement != LateReplacementRule::DelayOrFault &&
           !hasHadLateReplacement(state, team);
}

DelayLevel delayForLateReplacement(const MatchState& state, Team team) {
    const bool atOnce = state.rulebook().liberoLateReplacement == LateReplacementRule::ToleratedThenPenalty;
    return atOnce ? DelayLevel::Penalty : nextDelayOf(state, team);
}

std::optional<CardStep> nextCardOf(const MatchState& state, Team team, const Member& who) {
    const std::optional<SanctionLevel> last = state.rulebook().conductStepsUp ? lastOf(state, team, who) : std::nullopt;
    const bool teamWarned = isTeamWarned(state, team);
    for (const CardStep& step : state.rulebook().conductLadder) {
        const bool isHigher = !last || step.level > *last;
        const bool isSpent = teamWarned && step.level == SanctionLevel::Warning;
        if (isHigher && !isSpent)
            return step;
    }
    return std::nullopt;
}

DelayLevel nextDelayOf(const MatchState& state, Team team) {
    const auto given = std::ranges::count_if(state.sanctions, [&](const SanctionGiven& sanction) {
        return sanction.team == team && std::holds_alternative<DelayLevel>(sanction.level) &&
               isRemembered(state, sanction, state.rulebook().delayScope);
    });
    const std::vector<CardStep>& ladder = state.rulebook().delayLadder;
    if (ladder.empty())
        return DelayLevel::Warning;
    const auto rung = std::min(static_cast<std::size_t>(given), ladder.size() - 1);
    return ladder[rung].level == SanctionLevel::Warning ? DelayLevel::Warning : DelayLevel::Penalty;
}

} // namespace setfolio
