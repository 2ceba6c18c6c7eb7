// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A plain list of entries, typed by hand or made elsewhere, as FORMAT.md describes it.
#pragma once

#include "core/ledger/recordmembers.h"

#include <vector>

namespace setfolio {

/// What is wrong with a list, and in which line, counted from 1, empty ones too.
struct EntryListError {
    int line = 0;
    EntryJsonError what;
    bool operator==(const EntryListError&) const = default;
};

/// Reads a whole list, or says where it is wrong first; pure. Whether the entries follow each other is the judge's
/// affair.
[[nodiscard]] tl::expected<std::vector<RecordMembers>, EntryListError> readEntryList(const QByteArray& bytes);

} // namespace setfolio
