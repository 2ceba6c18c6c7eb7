// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What lines of a ledger and lines of a plain list have in common: an entry, and "time", "overruled" and "placed"
/// beside it.
#pragma once

#include "core/ledger/entryjson.h"

#include <QDateTime>

#include <optional>

namespace setfolio {

struct RecordMembers {
    std::optional<QDateTime> time;
    std::optional<QString> overruled;
    std::optional<Placed> placed;
    Entry entry;
    bool operator==(const RecordMembers&) const = default;
};

/// The member "placed".
[[nodiscard]] QJsonObject placedJson(const Placed& placed);

/// Takes "time", "overruled" and "placed"; what nobody has taken yet must be an entry.
[[nodiscard]] tl::expected<RecordMembers, EntryJsonError> recordMembersFrom(Members& members);

} // namespace setfolio
