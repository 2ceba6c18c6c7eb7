// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The bytes of a ledger, without a file: a line, the digests that chain them, and what a whole of them holds.
#pragma once

#include "core/ledger/ledgererror.h"
#include "core/match/entry.h"

#include <QByteArray>

#include <tl/expected.hpp>

#include <optional>
#include <vector>

namespace setfolio {

/// A last line that was being written when the machine stopped. Never acknowledged, so nothing recorded is lost.
struct TornTail {
    int line = 0;
    QByteArray bytes;
    QString setAsideTo; ///< the file it was moved to; empty when the ledger was only read
    bool operator==(const TornTail&) const = default;
};

/// What the bytes of a ledger hold: the entries up to the first damage, the damage, or a torn tail.
struct LedgerContent {
    std::vector<Recorded> entries;
    QByteArray lastDigest;    ///< 64 lower-case hexadecimal digits; zeros for an empty ledger
    qsizetype wholeBytes = 0; ///< length of the part that is whole
    std::optional<TornTail> torn;
    std::optional<LedgerError> damage;
};

/// The digest before the first line: 64 zeros.
[[nodiscard]] QByteArray firstDigest();

/// Reads bytes; pure.
[[nodiscard]] LedgerContent readLedger(const QByteArray& bytes);
/// Reads one line, without its line feed, as the entry of that number after a ledger that ends in `previousDigest`.
[[nodiscard]] tl::expected<Recorded, LedgerError> readLedgerLine(const QByteArray& line, EntryNumber number,
                                                                 const QByteArray& previousDigest);
/// An entry as it is recorded after a ledger that ends in `previousDigest`: a seal of this file gets its digest.
[[nodiscard]] Entry withSeal(Entry entry, const QByteArray& previousDigest);
/// The line, newline included, that records an entry after a ledger that ends in `previousDigest`; pure.
[[nodiscard]] QByteArray ledgerLine(const Recorded& recorded, const QByteArray& previousDigest);
/// The digest at the end of such a line, with or without its newline; empty if there is none of the proper form.
[[nodiscard]] QByteArray digestOfLine(const QByteArray& line);

} // namespace setfolio
