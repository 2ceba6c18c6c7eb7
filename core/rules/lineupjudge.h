// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The judge's part about rosters and line-ups.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

namespace setfolio {

/// Numbers the rulebook does not allow, numbers that stand twice, and other numbers than before once the match has
/// begun, where the rulebook says so (FIVB Official Volleyball Rules 2025-2028, 5.2.2); too many liberos where they are
/// named for the match.
[[nodiscard]] Findings judgeRoster(const MatchState& state, const Roster& roster);

/// A number outside those the rulebook allows; it must be one at all.
[[nodiscard]] std::optional<Finding> againstNumber(const Rulebook& rulebook, Team team, ShirtNumber number);

/// Six different numbers, all on the roster, no libero among them, the captain one of the team, not too many liberos. A
/// team without a roster is not held to one.
[[nodiscard]] Findings judgeLineUp(const MatchState& state, const LineUp& lineUp);

} // namespace setfolio
