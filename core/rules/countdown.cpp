// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/countdown.h"

#include <algorithm>

namespace setfolio {
namespace {

/// The set that ended last; nullptr while none has ended or another is played.
const SetState* endedLast(const MatchState& state) {
    if (!state.opened || phaseOf(state) != Phase::BeforeSet)
        return nullptr;
    for (auto set = state.sets.rbegin(); set != state.sets.rend(); ++set)
        if (set->ended)
            return &*set;
    return nullptr;
}

} // namespace

Deadlines warmUp(const Rulebook& rulebook, const QDateTime& began, std::chrono::seconds lasts) {
    const QDateTime ends = began.addSecs(lasts.count());
    const QDateTime due = ends.addSecs(-rulebook.firstLineUpSeconds);
    const QDateTime fixed = rulebook.firstLineUpFixedSeconds ? ends.addSecs(-*rulebook.firstLineUpFixedSeconds) : due;
    return {due, fixed, ends, ends};
}

std::optional<Deadlines> interval(const MatchState& state, IntervalLength length) {
    const SetState* before = endedLast(state);
    if (!before || !before->endRecorded.isValid())
        return std::nullopt;
    const Rulebook& rulebook = state.rulebook();
    const bool isLong = length == IntervalLength::Long && intervalMayBeLong(state);
    const QDateTime ends =
        before->endRecorded.addSecs(isLong ? *rulebook.longIntervalSeconds : rulebook.intervalSeconds);
    const QDateTime due = ends.addSecs(-rulebook.lineUpSeconds);
    return Deadlines{due, due, ends, ends.addSecs(rulebook.lineUpCheckSeconds)};
}

Countdown countdownAt(const MatchState& state, const Deadlines& deadlines, const QDateTime& now) {
    const auto left = [&now](const QDateTime& instant) {
        return static_cast<int>(std::max<qint64>(0, now.secsTo(instant)));
    };
    const PerTeam<TeamInSet>& teams = state.set().teams;
    if (teams.home.lineUp && teams.visitors.lineUp)
        return {endedLast(state) ? Countdown::To::EndOfInterval : Countdown::To::EndOfWarmUp, left(deadlines.ends),
                false};
    const int seconds = left(deadlines.lineUpsDue);
    return {Countdown::To::LineUps, seconds, seconds == 0};
}

bool intervalMayBeLong(const MatchState& state) {
    const SetState* before = endedLast(state);
    if (!before || !state.rulebook().longIntervalSeconds)
        return false;
    const std::optional<int> after = state.rulebook().longIntervalAfterSet;
    return !after || before->number == *after;
}

} // namespace setfolio
