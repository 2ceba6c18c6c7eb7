// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Whether an entry has a meaning at this moment of the match: a refusal, or nothing.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

namespace setfolio {

/// Before a set: for tosses, line-ups and the start.
[[nodiscard]] Findings momentBeforeSet(const MatchState& state);
/// While a set is played.
[[nodiscard]] Findings momentInPlay(const MatchState& state);
/// While a set is played, and no rally.
[[nodiscard]] Findings momentOfDeadBall(const MatchState& state);
/// While a set is played and its next serve is awaited.
[[nodiscard]] Findings momentToServe(const MatchState& state);
/// For who comes and goes on court: a dead ball, or before the start once the line-up stands in its slots (NFHS release
/// of January 2010; FIVB Official Volleyball Rules 2025-2028, 15.3.2).
[[nodiscard]] Findings momentToChangeSix(const MatchState& state, Team team);
/// For a point without a rally: a dead ball, or between the sets, for the coming one.
[[nodiscard]] Findings momentForPenalty(const MatchState& state);

} // namespace setfolio
