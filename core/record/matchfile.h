// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The match as it lies open at the table: its ledger, what the entries add up to, and the sheets written up from them.
#pragma once

#include "core/ledger/ledger.h"
#include "core/record/writeup.h"
#include "core/rules/judge.h"

#include <memory>

namespace setfolio {

/// Owns an open ledger and keeps state and record in step with it. Everything else only reads it.
class MatchFile {
public:
    /// Opens a match file, or starts an empty one. Errors and a torn tail as in Ledger::open.
    [[nodiscard]] static tl::expected<MatchFile, LedgerError> open(const QString& path, Ledger::Access access);
    [[nodiscard]] static tl::expected<MatchFile, LedgerError> create(const QString& path);

    [[nodiscard]] const Ledger& ledger() const { return m_ledger; }
    [[nodiscard]] const MatchState& state() const { return m_writer.state(); }
    [[nodiscard]] const MatchRecord& record() const { return m_writer.record(); }

    /// What the judge says of an entry now, or of one to be placed among those before.
    [[nodiscard]] Findings judge(const Entry& entry, const std::optional<Placed>& placed = std::nullopt,
                                 const QDateTime& time = {}) const;
    /// Appends an entry, durably, and folds it in. Does not judge: the caller has asked. On an error nothing has
    /// changed.
    [[nodiscard]] tl::expected<EntryNumber, LedgerError> record(const Entry& entry, const QDateTime& time,
                                                                std::optional<QString> overruled = std::nullopt,
                                                                std::optional<Placed> placed = std::nullopt);
    /// Strikes the newest standing entry; the number it struck, or 0 when there is nothing to undo.
    [[nodiscard]] tl::expected<EntryNumber, LedgerError> undo(const QDateTime& time);
    /// Strikes the newest undo; the number that stands again, or 0.
    [[nodiscard]] tl::expected<EntryNumber, LedgerError> redo(const QDateTime& time);

private:
    explicit MatchFile(Ledger ledger);
    void rewrite();

    Ledger m_ledger;
    RecordWriter m_writer;
};

} // namespace setfolio
