// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Writes up the sheet of each set from the entries, as a scorer would with three pens.
#pragma once

#include "core/match/fold.h"
#include "core/record/moment.h"
#include "core/record/record.h"

#include <span>

namespace setfolio {

/// The record of a whole match.
[[nodiscard]] MatchRecord writeUp(std::span<const Recorded> entries);

/// Writes on, entry by entry, so that the table need not begin anew at each key. Equal to writeUp of the same items.
class RecordWriter {
public:
    /// Takes the next item of the timeline, standing or struck. O(1) in what was written before.
    void take(const TimelineItem& item);

    [[nodiscard]] const MatchState& state() const { return m_state; }
    [[nodiscard]] const MatchRecord& record() const { return m_record; }

private:
    /// A standing entry, which has been folded in.
    void write(const Recorded& recorded, const Moment& before);

    MatchState m_state;
    MatchRecord m_record;
};

} // namespace setfolio
