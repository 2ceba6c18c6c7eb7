// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Signatures and seals: who may sign when, and what a seal keeps from being changed.
#pragma once

#include "core/match/fold.h"
#include "core/rules/finding.h"

#include <span>

namespace setfolio {

[[nodiscard]] Findings judgeSigned(const MatchState& state, const Signed& given);
[[nodiscard]] Findings judgeLeftUnsigned(const MatchState& state, const LeftUnsigned& left);
[[nodiscard]] Findings judgeSealed(const MatchState& state, const Sealed& sealed);
[[nodiscard]] Findings judgeReopened(const MatchState& state, const Reopened& reopened);

/// What seals have against an entry that comes after all that stands: it would be written on a sealed sheet.
[[nodiscard]] Findings againstSeals(const MatchState& state, const Entry& entry);
/// What the seals in force after `entries` have against a correction: it concerns what is sealed, or would change it.
[[nodiscard]] Findings againstSeals(std::span<const Recorded> entries, const Entry& entry,
                                    const std::optional<Placed>& placed);

} // namespace setfolio
