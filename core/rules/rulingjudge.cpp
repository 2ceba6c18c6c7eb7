// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/rulingjudge.h"

#include "core/rules/eligibility.h"
#include "core/rules/makefinding.h"
#include "core/rules/momentjudge.h"
#include "core/rules/taking.h"

#include <algorithm>

namespace setfolio {
namespace {

/// Who should have served when the team last had the serve.
ShirtNumber rightServer(const SetState& set, Team team) {
    return set.serving == team ? serverOf(set) : standsIn(set.teams[team], slotLastAtServe(set, team));
}

/// Points of more than the present term, where no others may be taken back.
std::optional<Finding> againstTooMuch(const MatchState& state, const TakenBackPoints& taken, const TakingRule& rule) {
    const TermPoints term = pointsOfTerm(state.set(), taken.team);
    if (rule.points != TakenBack::PresentTerm || pointsFrom(state.set(), taken.team, taken.first) <= term.count)
        return std::nullopt;
    Finding tooMuch = unlawful(FindingKind::TakenBackTooMuch, rule.pointsSetting, taken.team);
    tooMuch.count = static_cast<int>(term.first.value);
    return tooMuch;
}

Findings againstTakingBack(const MatchState& state, const TakenBackPoints& taken, const TakingRule& rule) {
    if (pointsFrom(state.set(), taken.team, taken.first) == 0) {
        Finding none = refused(FindingKind::NoSuchPoint, taken.team);
        none.count = static_cast<int>(taken.first.value);
        return {none};
    }
    Findings findings;
    if (rule.points == TakenBack::NoPoints)
        findings.push_back(unlawful(FindingKind::PointsStand, rule.pointsSetting, taken.team));
    append(findings, againstTooMuch(state, taken, rule));
    if (!mayStillTakeBack(state, taken.team, rule))
        findings.push_back(unlawful(FindingKind::TakenBackTooLate, rule.untilSetting, taken.team));
    return findings;
}

/// Time-outs and substitutions of the time that is taken back, where they are to go with it.
std::optional<Finding> againstRequests(const MatchState& state, const TakenBackPoints& taken) {
    if (!state.rulebook().wrongServerRequests)
        return std::nullopt;
    const std::optional<EntryNumber> first = firstRequestSince(state.set(), taken);
    if (!first)
        return std::nullopt;
    Finding finding = unlawful(FindingKind::RequestsGoToo, "wrong-server-requests", taken.team);
    finding.count = static_cast<int>(first->value);
    return finding;
}

/// A set that is won goes on only when points that won it are taken back; one that was forfeited does not.
bool changesDecidedSet(const SetState& set, Team team, const std::optional<TakenBackPoints>& taken) {
    return set.forfeit || (set.winner && !taken && set.serving == team);
}

Findings momentForRuling(const MatchState& state, Team team, const std::optional<TakenBackPoints>& taken) {
    Findings findings = phaseOf(state) == Phase::SetWon ? Findings{} : momentInPlay(state);
    if (findings.empty() && changesDecidedSet(state.set(), team, taken))
        findings.push_back(refused(FindingKind::SetAlreadyWon));
    return findings;
}

} // namespace

Findings judgeWrongServer(const MatchState& state, const WrongServer& ruling) {
    const std::optional<TakenBackPoints> taken = takenBackBy(ruling);
    Findings findings = momentForRuling(state, ruling.team, taken);
    if (!findings.empty())
        return findings;
    if (!ruling.served.isValid())
        return {refused(FindingKind::NumberImpossible, ruling.team, ruling.served)};
    const SetState& set = state.set();
    if (set.teams[ruling.team].termsBegun == 0)
        return {refused(FindingKind::NeverServed, ruling.team, ruling.served)};
    if (set.serving == ruling.team && set.termContacts == 0 && !taken)
        findings.push_back(unlawful(FindingKind::NotServedYet, "wrong-server-notice", ruling.team, ruling.served));
    if (!isOfTeam(state, ruling.team, ruling.served))
        findings.push_back(unlawful(FindingKind::ServerNotOnRoster, "line-up-numbers", ruling.team, ruling.served));
    if (ruling.served == rightServer(set, ruling.team))
        findings.push_back(unlawful(FindingKind::ServedRightly, "rotation-order", ruling.team, ruling.served));
    if (!taken)
        return findings;
    append(findings, againstTakingBack(state, *taken, takingRuleOf(state.rulebook(), ruling)));
    if (!isRefused(findings))
        append(findings, againstRequests(state, *taken));
    return findings;
}

/// Sources: FIVB Official Volleyball Rules 2025-2028, 15.9.2, 19.3.2.9; the rulebook's settings.
Findings judgeIllegalPlayer(const MatchState& state, const IllegalPlayer& ruling) {
    const std::optional<TakenBackPoints> taken = takenBackBy(ruling);
    Findings findings = momentForRuling(state, ruling.team, taken);
    if (!findings.empty())
        return findings;
    if (!ruling.number.isValid())
        return {refused(FindingKind::NumberImpossible, ruling.team, ruling.number)};
    const TakingRule rule = takingRuleOf(state.rulebook(), ruling);
    if (state.set().rallies == 0 && !state.set().contacted)
        findings.push_back(unlawful(FindingKind::PlayNotResumed, rule.pointsSetting, ruling.team, ruling.number));
    if (taken)
        append(findings, againstTakingBack(state, *taken, rule));
    return findings;
}

} // namespace setfolio
