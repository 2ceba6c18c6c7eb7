// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What is to be said against the entries of a rally.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

namespace setfolio {

[[nodiscard]] Findings judgeContact(const MatchState& state);
[[nodiscard]] Findings judgeNoServe(const MatchState& state);
[[nodiscard]] Findings judgeRally(const MatchState& state);
[[nodiscard]] Findings judgeReplay(const MatchState& state, const Replay& replay);
[[nodiscard]] Findings judgeServerSeen(const MatchState& state, const ServerSeen& seen);
[[nodiscard]] Findings judgeLiberoServe(const MatchState& state, const LiberoServe& serve);

} // namespace setfolio
