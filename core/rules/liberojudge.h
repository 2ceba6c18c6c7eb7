// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What is to be said against a libero's replacement and a libero's redesignation.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

namespace setfolio {

[[nodiscard]] Findings judgeLiberoIn(const MatchState& state, const LiberoIn& in);
[[nodiscard]] Findings judgeLiberoOut(const MatchState& state, const LiberoOut& out);
[[nodiscard]] Findings judgeLiberoExchange(const MatchState& state, const LiberoExchange& exchange);
[[nodiscard]] Findings judgeRedesignation(const MatchState& state, const LiberoRedesignated& redesignated);

/// What is to be said against a libero who serves, or would, in the slot that has the serve: where the rulebook lets no
/// libero serve, or a libero has served in another slot of this set.
[[nodiscard]] Findings againstLiberoAtServe(const MatchState& state, ShirtNumber libero);

} // namespace setfolio
