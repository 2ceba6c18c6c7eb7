// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// When line-ups are due and when play goes on, from the instant a warm-up began or a set ended. No clock is read: who
/// shows a countdown takes the time now from these.
#pragma once

#include "core/match/state.h"

#include <QDateTime>

#include <chrono>

namespace setfolio {

/// The instants of a warm-up or of an interval between sets, UTC.
struct Deadlines {
    QDateTime lineUpsDue;
    QDateTime lineUpsFixed; ///< until then a line-up may be changed freely; as lineUpsDue where they stand once in
    QDateTime ends;         ///< the teams are called to the court
    QDateTime play;         ///< later than `ends` by the time for the check of the line-ups
    bool operator==(const Deadlines&) const = default;
};

/// A warm-up that lasts so long.
/// Source: the rulebook's first-line-up-seconds and first-line-up-fixed-seconds.
[[nodiscard]] Deadlines warmUp(const Rulebook& rulebook, const QDateTime& began, std::chrono::seconds lasts);

enum class IntervalLength {
    Usual,
    Long, ///< where the rulebook has a longer one after this set; else as Usual
};

/// The interval after the set that ended last; none when no set has ended or the match is won.
/// Source: the rulebook's interval-seconds, long-interval-seconds, line-up-seconds and line-up-check-seconds.
[[nodiscard]] std::optional<Deadlines> interval(const MatchState& state, IntervalLength length = IntervalLength::Usual);
/// What is counted down at an instant: until both line-ups are in, to when they are due; then to the end.
struct Countdown {
    enum class To : std::uint8_t { LineUps, EndOfInterval, EndOfWarmUp };
    To to = To::EndOfInterval;
    int seconds = 0;   ///< left; none once it is past
    bool late = false; ///< line-ups are missing after they were due
    bool operator==(const Countdown&) const = default;
};
[[nodiscard]] Countdown countdownAt(const MatchState& state, const Deadlines& deadlines, const QDateTime& now);

/// Whether the interval after the set that ended last may be a long one.
[[nodiscard]] bool intervalMayBeLong(const MatchState& state);

} // namespace setfolio
