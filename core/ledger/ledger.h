// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The document on disk: one file a match, one JSON object a line, each chained to the one before (see FORMAT.md).
#pragma once

#include "core/match/entry.h"

#include <QByteArray>
#include <QString>

#include <tl/expected.hpp>

#include <memory>
#include <span>
#include <vector>

namespace setfolio {

/// What is wrong with a ledger file, where, and what the system said.
struct LedgerError {
    enum class Code {
        CannotOpen,    ///< not there, or no right to read it
        CannotCreate,  ///< the folder is read-only, or a file of that name is there
        CannotWrite,   ///< the disk is full or gone: the entry was not recorded, everything before it was
        ReadOnly,      ///< opened read-only
        NotALedger,    ///< the first line is not the opening of a match
        NewerVersion,  ///< written by a newer version of the format
        BrokenLine,    ///< not JSON, not an entry of the schema, or bytes that are not UTF-8
        UnknownKind,   ///< an entry kind this version does not know
        WrongSequence, ///< a line is missing, doubled or moved
        WrongDigest,   ///< the line was altered after it was written
        TooLong,       ///< a line beyond the limit of FORMAT.md
    };
    Code code = Code::CannotOpen;
    int line = 0; ///< from 1; 0 when it is not about a line
    QString path;
    QString detail; ///< a member's name, or the system's own words; for people only in brackets
    bool operator==(const LedgerError&) const = default;
};

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

/// Reads bytes; pure.
[[nodiscard]] LedgerContent readLedger(const QByteArray& bytes);
/// The line, newline included, that records an entry after a ledger that ends in `previousDigest`; pure.
[[nodiscard]] QByteArray ledgerLine(const Recorded& recorded, const QByteArray& previousDigest);
/// The digest at the end of such a line.
[[nodiscard]] QByteArray digestOfLine(const QByteArray& line);

class Ledger {
public:
    enum class Access { ReadWrite, ReadOnly };

    Ledger(Ledger&&) noexcept;
    Ledger& operator=(Ledger&&) noexcept;
    ~Ledger();

    /// Opens a file that is there. With ReadWrite it takes the lock; if another window holds it, the ledger is opened
    /// read-only and heldBy() says who. A torn tail is moved to a file beside it, and torn() tells. Damage is an error,
    /// and the file is left as it is.
    [[nodiscard]] static tl::expected<Ledger, LedgerError> open(const QString& path, Access access);
    /// Starts a new one; fails if the file is there.
    [[nodiscard]] static tl::expected<Ledger, LedgerError> create(const QString& path);

    /// Appends, flushes and syncs; when it returns a number the entry is on disk. On an error the file ends where it
    /// ended before.
    [[nodiscard]] tl::expected<EntryNumber, LedgerError> append(const Entry& entry, const QDateTime& time,
                                                                std::optional<QString> overruled = std::nullopt);

    [[nodiscard]] std::span<const Recorded> entries() const;
    [[nodiscard]] QString path() const;
    [[nodiscard]] bool isReadOnly() const;
    [[nodiscard]] QString
    heldBy() const; ///< "host, process 4711" of the window that holds the lock; empty if none does
    [[nodiscard]] const std::optional<TornTail>& torn() const;
    [[nodiscard]] QByteArray lastDigest() const;

private:
    struct Private;
    explicit Ledger(std::unique_ptr<Private> d);
    std::unique_ptr<Private> d;
};

} // namespace setfolio
