// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What is to be said against entries that frame a set, and against what may happen in any dead ball.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

namespace setfolio {

[[nodiscard]] Findings judgeToss(const MatchState& state, const Toss& toss);
/// Whether it comes in time, and what it says.
[[nodiscard]] Findings judgeLineUpNow(const MatchState& state, const LineUp& lineUp);
[[nodiscard]] Findings judgeStart(const MatchState& state);
[[nodiscard]] Findings judgeEnd(const MatchState& state);
[[nodiscard]] Findings judgeSidesChanged(const MatchState& state);
[[nodiscard]] Findings judgeTimeOut(const MatchState& state, const TimeOut& timeOut);
[[nodiscard]] Findings judgeCaptain(const MatchState& state, const CaptainNamed& named);

} // namespace setfolio
