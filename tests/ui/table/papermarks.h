// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// How many marks an entry needs by pen, on the score sheet and on the libero tracking sheet that lies beside it.
#pragma once

#include "core/match/state.h"

namespace setfolio::testing {

/// A mark is what is written in one go and can be wrong by itself: a ring, a number, a letter, a stroke. A number is
/// one mark, however many digits it has; sentences are not counted. `before` is the state without the entry; for a
/// Strike, `struck` is what it strikes and `before` the state before that.
[[nodiscard]] int paperMarks(const MatchState& before, const Entry& entry, const Entry* struck = nullptr);

} // namespace setfolio::testing
