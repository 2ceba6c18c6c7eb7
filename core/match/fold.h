// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// State is always the fold of the entries: there is no other way to change anything.
#pragma once

#include "core/match/entry.h"
#include "core/match/state.h"

#include <span>
#include <vector>

namespace setfolio {

/// An entry in the order of play, as corrected: whether it stands, and the correction that struck it if not.
struct TimelineItem {
    const Recorded* recorded = nullptr;
    const Recorded* struckBy = nullptr; ///< none: it stands
    [[nodiscard]] bool stands() const { return struckBy == nullptr; }
};

/// The entries as corrected, in the order of play, strikes themselves left out: one put in before another stands before
/// it, one set in another's place behind that struck one. A correction that is itself struck has no effect, unless it
/// is struck by what was set in its place: then what it struck stays struck. The pointers point into `entries`. O(n).
[[nodiscard]] std::vector<TimelineItem> timelineOf(std::span<const Recorded> entries);

/// Whether an entry of `entries`, a correction or any other, is struck by no correction in force. O(n).
[[nodiscard]] bool standsIn(std::span<const Recorded> entries, EntryNumber number);

/// One entry folded in: O(1) in the number of entries before it. Never refuses: what is not lawful, or makes no sense
/// in this phase, is the judge's to say; an entry that means nothing here leaves the state as it was. A Strike leaves
/// it too.
[[nodiscard]] MatchState apply(MatchState state, const Recorded& entry);

/// The state after all standing entries.
[[nodiscard]] MatchState fold(std::span<const Recorded> entries);

/// The standing entry recorded last, which undo would strike; none when there is nothing left to undo (the opening of
/// the match is never undone).
[[nodiscard]] std::optional<EntryNumber> newestStanding(std::span<const Recorded> entries);
/// The newest strike that stands and that redo would strike; none when an entry other than a Strike was recorded after
/// it.
[[nodiscard]] std::optional<EntryNumber> newestUndone(std::span<const Recorded> entries);

} // namespace setfolio
