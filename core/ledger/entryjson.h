// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Entries as JSON objects, as FORMAT.md and resources/schema/entry.schema.json describe them.
#pragma once

#include "core/match/entry.h"

#include <QJsonObject>

#include <tl/expected.hpp>

namespace setfolio {

class Members;

/// Why an object is not an entry: the member, as a path ("teams.home.code"), and what is wrong with it.
struct EntryJsonError {
    enum class Code {
        NotJson,
        UnknownKind, ///< `member` is the kind
        UnknownMember,
        MissingMember,
        WrongType,
        OutOfRange,
        NewerVersion,
        BadRulebook
    };
    Code code = Code::NotJson;
    QString member;
    bool operator==(const EntryJsonError&) const = default;
};

/// The name of an entry's kind in the file: "rally-won".
[[nodiscard]] QString kindOf(const Entry& entry);

/// The entry alone: "kind" and its members; neither seq, time, overruled nor digest.
[[nodiscard]] QJsonObject toJson(const Entry& entry);
/// Strict: unknown members, fractions, lone surrogates and values out of range are refused. "rulebook" may be the id of
/// a published rulebook in place of the whole one, and "format" may be absent.
[[nodiscard]] tl::expected<Entry, EntryJsonError> entryFromJson(const QJsonObject& json);
/// The same of members, of which some may have been taken by others before.
[[nodiscard]] tl::expected<Entry, EntryJsonError> entryFrom(Members& members);

} // namespace setfolio
