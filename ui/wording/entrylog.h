// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The entries in words, in the order in which they were recorded: for the list beside the sheet, and for the printed
/// one.
#pragma once

#include "core/match/fold.h"
#include "ui/wording/entrywords.h"

#include <span>
#include <vector>

namespace setfolio {

/// A line of the list: what was recorded, and whether a correction has struck it.
struct LoggedEntry {
    EntryNumber number;
    EntryWords words;
    bool struck = false;
    bool operator==(const LoggedEntry&) const = default;
};

/// Follows a ledger that only grows. A line costs O(1), a correction O(n).
class EntryLog {
public:
    /// Brings the log up to all of `entries`.
    void follow(std::span<const Recorded> entries);
    [[nodiscard]] const std::vector<LoggedEntry>& lines() const { return m_lines; }

private:
    void append(const Recorded& recorded);
    void rebuild(std::span<const Recorded> entries);

    std::vector<LoggedEntry> m_lines;
    MatchState m_state;
};

} // namespace setfolio
