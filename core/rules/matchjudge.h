// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What is to be said against entries that frame the match: its opening, its end by play or otherwise, interruptions.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

namespace setfolio {

[[nodiscard]] Findings judgeOpening(const MatchOpened& opened);
[[nodiscard]] Findings judgeClosing(const MatchState& state);
[[nodiscard]] Findings judgeForfeit(const MatchState& state, const Forfeit& forfeit);
[[nodiscard]] Findings judgeSuspension(const MatchState& state);
[[nodiscard]] Findings judgeResumption(const MatchState& state, const Resumed& resumed, const QDateTime& time);

} // namespace setfolio
