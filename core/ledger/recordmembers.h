// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What lines of a ledger and lines of a plain list have in common: an entry, and "time" and "overruled" beside it.
#pragma once

#include "core/ledger/entryjson.h"

#include <QDateTime>

#include <optional>

namespace setfolio {

struct RecordMembers {
    std::optional<QDateTime> time;
    std::optional<QString> overruled;
    Entry entry;
    bool operator==(const RecordMembers&) const = default;
};

/// Takes "time" and "overruled"; what nobody has taken yet must be an entry.
[[nodiscard]] tl::expected<RecordMembers, EntryJsonError> recordMembersFrom(Members& members);

} // namespace setfolio
