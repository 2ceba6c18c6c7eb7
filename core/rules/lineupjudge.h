// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The judge's part about rosters and line-ups.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

namespace setfolio {

/// Numbers the rulebook does not allow, and numbers that stand twice.
[[nodiscard]] Findings judgeRoster(const Rulebook& rulebook, const Roster& roster);

/// Six different numbers, all on the roster, no libero among them, the captain one of the team, not too many liberos. A
/// team without a roster is not held to one.
[[nodiscard]] Findings judgeLineUp(const MatchState& state, const LineUp& lineUp);

} // namespace setfolio
