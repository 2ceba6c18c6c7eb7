// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/setjudge.h"

#include "core/match/consequences.h"
#include "core/rules/eligibility.h"
#include "core/rules/lineupjudge.h"
#include "core/rules/makefinding.h"
#include "core/rules/momentjudge.h"
#include "core/rules/substitutionjudge.h"

#include <algorithm>

namespace setfolio {
namespace {

/// The set before the present one, played to its end; none before the first.
const SetState* setBefore(const MatchState& state) {
    const auto before = std::ranges::find_if(
        state.sets, [&](const SetState& set) { return set.number == state.set().number - 1 && !set.cancelled; });
    return before == state.sets.end() ? nullptr : &*before;
}

/// Who stands in the slots, or is a libero, is no longer what the line-up says.
bool isChangedSinceLineUp(const TeamInSet& team) {
    const bool substituted = std::ranges::any_of(team.slots, [](const auto& stood) { return stood.size() > 1; });
    return substituted || team.libero || team.liberoMoved || !team.liberosGivenUp.empty();
}

} // namespace

/// Between the first and the deciding set the rulebook says who serves first and who stands where.
Findings judgeToss(const MatchState& state, const Toss& toss) {
    Findings findings = momentBeforeSet(state);
    if (!findings.empty())
        return findings;
    for (const Team team : bothTeams) // it would put the six back where the line-up had them
        if (isChangedSinceLineUp(state.set().teams[team]))
            findings.push_back(refused(FindingKind::ChangedSinceLineUp, team));
    const SetState* before = setBefore(state);
    if (!before || isDecidingSet(state, state.set().number))
        return findings;
    if (before->servesFirst == toss.servesFirst)
        findings.push_back(unlawful(FindingKind::FirstServeAlternates, "alternate-first-serve", toss.servesFirst));
    if (!before->left)
        return findings;
    const bool changes = changesSidesAfter(state.rulebook(), before->number);
    const Team left = changes ? opponentsOf(*before->left) : *before->left;
    if (left != toss.left)
        findings.push_back(unlawful(FindingKind::SidesNotAsRuled, "change-sides", left));
    return findings;
}

Findings judgeLineUpNow(const MatchState& state, const LineUp& lineUp) {
    Findings findings = momentBeforeSet(state);
    if (!findings.empty())
        return findings;
    const TeamInSet& team = state.set().teams[lineUp.team];
    if (isChangedSinceLineUp(team) || team.captain)
        findings.push_back(refused(FindingKind::ChangedSinceLineUp, lineUp.team));
    append(findings, judgeLineUp(state, lineUp));
    return findings;
}

Findings judgeStart(const MatchState& state) {
    Findings findings = momentBeforeSet(state);
    if (!findings.empty())
        return findings;
    if (!state.set().servesFirst)
        findings.push_back(refused(FindingKind::TossMissing));
    for (const Team team : bothTeams)
        if (!state.set().teams[team].lineUp)
            findings.push_back(refused(FindingKind::LineUpMissing, team));
    return findings;
}

Findings judgeEnd(const MatchState& state) {
    if (phaseOf(state) == Phase::Suspended)
        return {refused(FindingKind::MatchIsSuspended)};
    if (phaseOf(state) == Phase::MatchWon)
        return {refused(FindingKind::MatchAlreadyWon)};
    return phaseOf(state) == Phase::SetWon ? Findings{} : Findings{refused(FindingKind::SetNotWon)};
}

/// Within the deciding set sides change once, when the leading team reaches the rulebook's score, or as soon as someone
/// sees that it has been missed (FIVB Official Volleyball Rules 2025-2028, 18.2.2). In another set there is no change;
/// that the teams stood on the wrong sides is the referees' word.
Findings judgeSidesChanged(const MatchState& state) {
    Findings findings = momentOfDeadBall(state);
    const SetState& set = state.set();
    if (!findings.empty())
        return findings;
    if (!isDecidingSet(state, set.number))
        return {unlawful(FindingKind::NoSidesChange, "change-sides")};
    const std::optional<int> due = state.rulebook().decidingSetSideChange;
    if (!due)
        return {unlawful(FindingKind::NoSidesChange, "deciding-set-side-change")};
    if (set.sidesChangedAt)
        return {unlawful(FindingKind::SidesChangedAlready, "deciding-set-side-change")};
    if (std::max(set.teams.home.points, set.teams.visitors.points) >= *due)
        return {};
    Finding early = unlawful(FindingKind::SidesChangeEarly, "deciding-set-side-change");
    early.count = *due;
    return {early};
}

Findings judgeTimeOut(const MatchState& state, const TimeOut& timeOut) {
    Findings findings = momentOfDeadBall(state);
    if (!findings.empty())
        return findings;
    append(findings, againstRequestBeforeRepeat(state, timeOut.team));
    const int count = static_cast<int>(state.set().teams[timeOut.team].timeOuts.size()) + 1;
    const int limit = state.rulebook().timeOuts;
    if (count > limit)
        findings.push_back(beyondLimit(FindingKind::TimeOutLimit, "time-outs", timeOut.team, count, limit));
    return findings;
}

namespace {

/// A table that keeps no record of replacements does not know whether a libero is on court.
bool mayBeOnCourt(const TeamInSet& team, ShirtNumber number) {
    if (const auto slot = slotOnCourt(team, number))
        return standsIn(team, *slot) == number;
    const bool kept = team.libero || team.liberoMoved;
    return isLibero(team, number) && (!kept || (team.libero && team.libero->libero == number));
}

} // namespace

Findings judgeCaptain(const MatchState& state, const CaptainNamed& named) {
    Findings findings = momentToChangeSix(state, named.team);
    if (!findings.empty())
        return findings;
    if (!named.captain.isValid())
        return {refused(FindingKind::NumberImpossible, named.team, named.captain)};
    const TeamInSet& team = state.set().teams[named.team];
    if (isLibero(team, named.captain) && !state.rulebook().liberoCaptain)
        findings.push_back(unlawful(FindingKind::CaptainIsLibero, "libero-captain", named.team, named.captain));
    else if (!isOfTeam(state, named.team, named.captain))
        findings.push_back(unlawful(FindingKind::CaptainNotInTeam, "line-up-numbers", named.team, named.captain));
    else if (!mayBeOnCourt(team, named.captain))
        findings.push_back(unlawful(FindingKind::CaptainNotOnCourt, "captain-on-court", named.team, named.captain));
    return findings;
}

} // namespace setfolio
