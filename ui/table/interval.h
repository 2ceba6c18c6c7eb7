// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What counts down before a set, from the clock that the table is given.
#pragma once

#include "core/rules/countdown.h"
#include "ui/table/clock.h"

#include <optional>

namespace setfolio {

/// Before a later set the interval, before the first the warm-up that ends at the scheduled time, from an hour before
/// it on. None while a set is played, and where nothing says when it ends.
[[nodiscard]] std::optional<Countdown> countdownNow(const MatchState& state, const Clock& clock);

} // namespace setfolio
