// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Which rung of the rulebook's ladders is next, as far as the match remembers.
#pragma once

#include "core/match/state.h"

namespace setfolio {

/// The level proposed for misconduct of a member of a team: the next above what she has, or what her team has where the
/// rulebook warns a team but once.
[[nodiscard]] SanctionLevel nextConductLevel(const MatchState& state, Team team, const Member& who);
/// The level proposed for a delay.
[[nodiscard]] DelayLevel nextDelayLevel(const MatchState& state, Team team);
/// Whether a request that delays nothing is only written down.
[[nodiscard]] bool improperRequestIsFirst(const MatchState& state, Team team);

} // namespace setfolio
