// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/interval.h"

namespace setfolio {

namespace {

constexpr std::chrono::seconds longestWarmUp = std::chrono::hours(1);

/// The scheduled time is the hall's, so the hall's clock says how far it is.
std::optional<Deadlines> warmUpNow(const MatchState& state, const Clock& clock) {
    if (phaseOf(state) != Phase::BeforeSet || state.sets.size() > 1 || !state.opened->scheduled.isValid())
        return std::nullopt;
    const std::chrono::seconds left(clock.timeOfDay().secsTo(state.opened->scheduled));
    if (left < std::chrono::seconds(0) || left > longestWarmUp)
        return std::nullopt;
    return warmUp(state.rulebook(), clock.utc(), left);
}

} // namespace

std::optional<Countdown> countdownNow(const MatchState& state, const Clock& clock) {
    std::optional<Deadlines> deadlines = interval(state);
    if (!deadlines)
        deadlines = warmUpNow(state, clock);
    return deadlines ? std::optional(countdownAt(state, *deadlines, clock.utc())) : std::nullopt;
}

} // namespace setfolio
