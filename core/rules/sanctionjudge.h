// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What is to be said against a sanction, and what the next one would be.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

namespace setfolio {

[[nodiscard]] Findings judgeSanction(const MatchState& state, const Sanction& sanction);
[[nodiscard]] Findings judgeDelay(const MatchState& state, const DelaySanction& sanction);
[[nodiscard]] Findings judgeImproperRequest(const MatchState& state, const ImproperRequest& request);
[[nodiscard]] Findings judgeLateReplacement(const MatchState& state, const LateReplacement& late);

/// The lowest sanction that someone's next misconduct brings; none when nothing is left above what she has had.
/// Source: FIVB Official Volleyball Rules 2025-2028, diagram 9a; the rulebook's ladder.
[[nodiscard]] std::optional<CardStep> nextCardOf(const MatchState& state, Team team, const Member& who);
/// The sanction that a team's next delay brings.
/// Source: FIVB Official Volleyball Rules 2025-2028, diagram 9b; the rulebook's ladder.
[[nodiscard]] DelayLevel nextDelayOf(const MatchState& state, Team team);
/// Whether a request against the rules is let pass and only recorded, or a late replacement of a libero is.
[[nodiscard]] bool isRequestLetPass(const MatchState& state, Team team);
[[nodiscard]] bool isLateReplacementLetPass(const MatchState& state, Team team);
/// The sanction of a late replacement that is not.
[[nodiscard]] DelayLevel delayForLateReplacement(const MatchState& state, Team team);

} // namespace setfolio
