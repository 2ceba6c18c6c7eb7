// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "core/match/fold.h"

namespace setfolio {

/// The state in which an entry was, or would be, folded in at that place of the timeline; all of it for a number that
/// is not there. O(n).
[[nodiscard]] MatchState stateBefore(std::span<const Recorded> entries, EntryNumber number);

} // namespace setfolio
