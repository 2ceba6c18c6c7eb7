// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/substitutionjudge.h"

#include "core/match/consequences.h"
#include "core/rules/eligibility.h"
#include "core/rules/makefinding.h"
#include "core/rules/momentjudge.h"
#include "core/rules/substitutes.h"

#include <algorithm>
#include <ranges>

namespace setfolio {
namespace {

bool isTimeOut(const SetState& set, const RequestGranted& granted) {
    const std::vector<TimeOutTaken>& taken = set.teams[granted.team].timeOuts;
    return std::ranges::find(taken, granted.entry, &TimeOutTaken::entry) != taken.end();
}

/// Whether a rally was broken off for an injury, and is not played again yet: who is hurt may be replaced whatever the
/// team has had (FIVB Official Volleyball Rules 2025-2028, 15.2.3).
bool isForInjury(const SetState& set) {
    return isAgain(set, Again::Replay) && set.again->cause == ReplayCause::Injury;
}

bool isSecondRequest(const MatchState& state, Team team) {
    const SetState& set = state.set();
    return state.rulebook().secondRequest != SecondRequest::Allowed && set.teams[team].requested &&
           set.requesting != team && !isForInjury(set);
}

/// Whether who stands in the slot has come in by the request that is being granted, one after another: the same place
/// is not changed twice in one request.
bool isChangedAlready(const MatchState& state, Team team, Slot slot) {
    const SetState& set = state.set();
    const std::vector<Standing>& stood = set.teams[team].slots[slot.index()];
    if (state.rulebook().secondRequest == SecondRequest::Allowed || set.requesting != team || stood.empty())
        return false;
    const auto isOfRequest = [&](const RequestGranted& granted) {
        return granted.team == team && granted.completed == set.completed;
    };
    for (const RequestGranted& granted : set.requests | std::views::reverse) {
        if (!isOfRequest(granted) || isTimeOut(set, granted))
            return false;
        if (granted.entry == stood.back().since)
            return true;
    }
    return false;
}

/// Against the request that a substitution belongs to.
Findings againstRequest(const MatchState& state, Team team, Slot slot) {
    Findings findings = againstRequestBeforeRepeat(state, team);
    if (!state.set().started && !state.rulebook().substitutionBeforeStart)
        findings.push_back(unlawful(FindingKind::SubstitutionBeforeStart, "substitution-before-start", team));
    const bool barred = state.set().teams[team].barred && !isForInjury(state.set());
    if (barred && state.rulebook().substitutionBarredByDelay)
        findings.push_back(unlawful(FindingKind::SubstitutionBarred, "substitution-barred-by-delay", team));
    else if (isSecondRequest(state, team) || isChangedAlready(state, team, slot))
        findings.push_back(unlawful(FindingKind::SecondRequest, "second-request", team));
    return findings;
}

/// While a libero stands in her place the player is not on court to be substituted: she, and nobody else, comes in for
/// the libero.
std::optional<Finding> againstOffForLibero(const MatchState& state, const Pair& pair) {
    const std::optional<LiberoOnCourt>& libero = state.set().teams[pair.team].libero;
    if (!libero || libero->slot != pair.slot)
        return std::nullopt;
    Finding finding = unlawful(FindingKind::OutOffForLibero, "libero-replaced-by", pair.team, pair.out);
    finding.lawful = libero->libero;
    return finding;
}

Findings judgeRegular(const MatchState& state, const Pair& pair) {
    Findings findings;
    const bool forced = sentOffBy(state, pair.team, pair.out).has_value(); // and she cannot come back first
    if (!forced && replacedUnlawfully(state.set().teams[pair.team], pair.slot) != pair.in) {
        append(findings, againstRequest(state, pair.team, pair.slot));
        append(findings, againstOffForLibero(state, pair));
    }
    append(findings, againstRegular(state, pair));
    return findings;
}

} // namespace

Findings judgeSubstitution(const MatchState& state, const Substitution& substitution) {
    Findings findings = momentToChangeSix(state, substitution.team);
    if (!findings.empty())
        return findings;
    for (const ShirtNumber number : {substitution.in, substitution.out})
        if (!number.isValid())
            return {refused(FindingKind::NumberImpossible, substitution.team, number)};
    const std::optional<Slot> slot = slotToLeave(state.set().teams[substitution.team], substitution.out);
    if (!slot)
        return {refused(FindingKind::NotOnCourt, substitution.team, substitution.out)};
    const Pair pair{substitution.team, substitution.in, substitution.out, *slot};
    return substitution.kind == SubstitutionKind::Regular ? judgeRegular(state, pair) : againstExceptional(state, pair);
}

Findings judgePlaceVacated(const MatchState& state, const PlaceVacated& vacated) {
    Findings findings = momentToChangeSix(state, vacated.team);
    if (!findings.empty())
        return findings;
    if (!slotOnCourt(state.set().teams[vacated.team], vacated.out))
        return {refused(FindingKind::NotOnCourt, vacated.team, vacated.out)};
    if (state.rulebook().fewerThanSix == FewerThanSix::Incomplete)
        findings.push_back(unlawful(FindingKind::FewerThanSixNotAllowed, "fewer-than-six", vacated.team, vacated.out));
    std::vector<ShirtNumber> left = regularSubstitutes(state, vacated.team, vacated.out);
    if (left.empty())
        left = exceptionalSubstitutes(state, vacated.team, vacated.out);
    if (left.empty())
        return findings;
    Finding finding = unlawful(FindingKind::SubstituteLeft, "fewer-than-six", vacated.team, vacated.out);
    finding.lawful = left.front();
    findings.push_back(finding);
    return findings;
}

Findings againstRequestBeforeRepeat(const MatchState& state, Team team) {
    const SetState& set = state.set();
    if (isAgain(set, Again::Replay) && set.again->cause != ReplayCause::Injury && !state.rulebook().requestsInReplay)
        return {unlawful(FindingKind::RequestBeforeRepeat, "requests-in-replay", team)};
    if (isAgain(set, Again::ReServe) && !state.rulebook().requestsInReServe)
        return {unlawful(FindingKind::RequestBeforeRepeat, "requests-in-re-serve", team)};
    return {};
}

} // namespace setfolio
