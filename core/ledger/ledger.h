// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The document on disk: one file a match, one JSON object a line, each chained to the one before (see FORMAT.md).
#pragma once

#include "core/ledger/chain.h"
#include "core/ledger/filecalls.h"

#include <memory>
#include <span>

namespace setfolio {

class Ledger {
public:
    enum class Access { ReadWrite, ReadOnly };

    Ledger(Ledger&&) noexcept;
    Ledger& operator=(Ledger&&) noexcept;
    ~Ledger();

    /// Opens a file that is there. With ReadWrite it takes the lock; if another window holds it, the ledger is opened
    /// read-only and heldBy() says who; if the file may not be written, it is opened read-only and heldBy() is empty.
    /// A torn tail is moved to a file beside it, and torn() tells; if it cannot be moved, that is an error. Damage is
    /// an error, and the file is left as it is: readLedgerFile() has the entries before it.
    [[nodiscard]] static tl::expected<Ledger, LedgerError> open(const QString& path, Access access,
                                                                const FileCalls& calls = systemCalls());
    /// Starts a new one; fails if the file is there.
    [[nodiscard]] static tl::expected<Ledger, LedgerError> create(const QString& path,
                                                                  const FileCalls& calls = systemCalls());

    /// Appends, flushes and syncs; when it returns a number the entry is on disk. On an error the file ends where it
    /// ended before; if it could not be cut back at once, that is done before the next entry. A seal of this file gets
    /// its digest here.
    [[nodiscard]] tl::expected<EntryNumber, LedgerError> append(const Entry& entry, const QDateTime& time,
                                                                std::optional<QString> overruled = std::nullopt,
                                                                std::optional<Placed> placed = std::nullopt);

    /// The entries as the file has them: times to the millisecond, times of day to the minute.
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

/// Reads a file without opening it as the match at the table: its entries, and its damage if it has any. The error is
/// that of a file that cannot be read at all.
[[nodiscard]] tl::expected<LedgerContent, LedgerError> readLedgerFile(const QString& path);

/// The bytes of such a file.
[[nodiscard]] tl::expected<QByteArray, LedgerError> readLedgerBytes(const QString& path);

/// Copies the part of a damaged or torn ledger that is whole, byte for byte, to a new file, durably. `path` is only
/// read. An error if `to` is there already or cannot be written. Returns the number of entries in the copy.
[[nodiscard]] tl::expected<int, LedgerError> saveGoodPart(const QString& path, const QString& to);

} // namespace setfolio
