// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What undo takes back: the newest thing that was done, an entry or a correction that struck one.
#pragma once

#include "core/match/fold.h"

namespace setfolio {

/// Whether the entry at this index is a correction that struck another entry, and no undo or redo: it has a reason, or
/// what it struck was not the newest. O(n).
[[nodiscard]] bool isCorrectingStrike(std::span<const Recorded> entries, std::size_t index);

/// What undo would strike, the newest standing entry or correcting strike; none when there is nothing left to undo. The
/// opening of the match is never undone. What redo would strike is newestUndone.
[[nodiscard]] std::optional<EntryNumber> newestToUndo(std::span<const Recorded> entries);

} // namespace setfolio
