// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/matchjudge.h"

#include "core/match/consequences.h"
#include "core/rules/makefinding.h"

#include <algorithm>

namespace setfolio {

Findings judgeOpening(const MatchOpened& opened) {
    const bool possible = opened.bestOf > 0 && opened.bestOf % 2 == 1;
    const std::vector<int>& offered = opened.rulebook.bestOf;
    if (possible && std::ranges::find(offered, opened.bestOf) != offered.end())
        return {};
    Finding finding = unlawful(FindingKind::BestOfImpossible, "best-of");
    finding.gravity = possible ? Gravity::Unlawful : Gravity::Refused;
    finding.count = opened.bestOf;
    return {finding};
}

Findings judgeClosing(const MatchState& state) {
    return phaseOf(state) == Phase::MatchWon ? Findings{} : Findings{refused(FindingKind::MatchNotWon)};
}

namespace {

/// A team may lose a set that has been played: with a player who is not registered it loses all points and sets gained
/// while she was on court (FIVB Official Volleyball Rules 2025-2028, 7.3.5.4).
Findings judgeForfeitOfEarlier(const MatchState& state, const Forfeit& forfeit) {
    const bool allGiven = state.forfeit && state.forfeit->kind == ForfeitKind::Default;
    if (allGiven)
        return {refused(FindingKind::MatchAlreadyWon)};
    const auto place = placeOfEnded(state, forfeit.earlier->number);
    if (!place) {
        Finding finding = refused(FindingKind::SetNotEnded);
        finding.count = forfeit.earlier->number;
        return {finding};
    }
    const int most = mostKept(state.rulebook(), state.sets[*place], forfeit.by);
    if (forfeit.earlier->keeps.value_or(most) <= most)
        return {};
    Finding finding = refused(FindingKind::KeepsTooMuch, forfeit.by);
    finding.count = *forfeit.earlier->keeps;
    finding.limit = most;
    return {finding};
}

} // namespace

/// A team that does not appear or refuses to play loses by default; one that is left with too few in the course of the
/// match is incomplete and keeps what it has (FIVB Official Volleyball Rules 2025-2028, 6.4.1 to 6.4.3).
Findings judgeForfeit(const MatchState& state, const Forfeit& forfeit) {
    if (forfeit.earlier)
        return judgeForfeitOfEarlier(state, forfeit);
    const Phase phase = phaseOf(state);
    if (phase == Phase::MatchWon)
        return {refused(FindingKind::MatchAlreadyWon)};
    if (forfeit.kind == ForfeitKind::Default) {
        const bool ofOneSet = forfeit.reach == Scope::Set;
        return ofOneSet ? Findings{unlawful(FindingKind::DefaultIsOfMatch, "default-result", forfeit.by)} : Findings{};
    }
    if (forfeit.reach == Scope::Set && phase == Phase::SetWon)
        return {refused(FindingKind::SetAlreadyWon)};
    const bool hasBegun = std::ranges::any_of(state.sets, &SetState::started);
    if (!hasBegun && forfeit.reach == Scope::Match)
        return {unlawful(FindingKind::IncompleteBeforePlay, "incomplete-result", forfeit.by)};
    return {};
}

Findings judgeSuspension(const MatchState& state) {
    const Phase phase = phaseOf(state);
    if (phase == Phase::Suspended)
        return {refused(FindingKind::MatchIsSuspended)};
    return phase == Phase::MatchWon ? Findings{refused(FindingKind::MatchAlreadyWon)} : Findings{};
}

namespace {

/// Source: FIVB Official Volleyball Rules 2025-2028, 17.3; the rulebook's resume-within-hours.
std::optional<Finding> againstLength(const MatchState& state, const QDateTime& time) {
    const std::optional<int> limit = state.rulebook().resumeWithinHours;
    if (!limit || !time.isValid() || !state.suspendedAt.isValid())
        return std::nullopt;
    constexpr int hour = 3600;
    const qint64 seconds = state.suspendedAt.secsTo(time);
    if (seconds <= qint64(*limit) * hour)
        return std::nullopt;
    Finding late = unlawful(FindingKind::ResumedTooLate, "resume-within-hours");
    late.count = static_cast<int>(seconds / hour);
    late.limit = *limit;
    return late;
}

} // namespace

Findings judgeResumption(const MatchState& state, const Resumed& resumed, const QDateTime& time) {
    if (phaseOf(state) != Phase::Suspended)
        return {refused(FindingKind::NotSuspended)};
    if (auto late = againstLength(state, time))
        return {*std::move(late)};
    const bool again = resumed.goOn == GoOn::SetAgain && state.set().started;
    if (again && state.rulebook().resumedElsewhere == Resumption::GoesOn)
        return {unlawful(FindingKind::SetNotPlayedAgain, "resumed-elsewhere")};
    return {};
}

} // namespace setfolio
