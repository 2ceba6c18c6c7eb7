// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/matchfile.h"

#include "core/match/undo.h"

namespace setfolio {

MatchFile::MatchFile(Ledger ledger) : m_ledger(std::move(ledger)) {
    rewrite();
}

tl::expected<MatchFile, LedgerError> MatchFile::open(const QString& path, Ledger::Access access) {
    return Ledger::open(path, access).map([](Ledger&& ledger) { return MatchFile(std::move(ledger)); });
}

tl::expected<MatchFile, LedgerError> MatchFile::create(const QString& path) {
    return Ledger::create(path).map([](Ledger&& ledger) { return MatchFile(std::move(ledger)); });
}

Findings MatchFile::judge(const Entry& entry, const std::optional<Placed>& placed, const QDateTime& time) const {
    return judgeNext(m_ledger.entries(), state(), entry, placed, time);
}

tl::expected<EntryNumber, LedgerError> MatchFile::record(const Entry& entry, const QDateTime& time,
                                                         std::optional<QString> overruled,
                                                         std::optional<Placed> placed) {
    const bool looksBack = placed || std::holds_alternative<Strike>(entry);
    const auto number = m_ledger.append(entry, time, std::move(overruled), std::move(placed));
    if (!number)
        return number;
    if (looksBack)
        rewrite(); // what it corrects may stand anywhere: everything after it is written up anew
    else
        m_writer.take({&m_ledger.entries().back(), nullptr});
    return number;
}

tl::expected<EntryNumber, LedgerError> MatchFile::undo(const QDateTime& time) {
    const std::optional<EntryNumber> newest = newestToUndo(m_ledger.entries());
    if (!newest)
        return EntryNumber();
    return record(Strike{*newest, {}}, time).map([&](EntryNumber) { return *newest; });
}

tl::expected<EntryNumber, LedgerError> MatchFile::redo(const QDateTime& time) {
    const std::optional<EntryNumber> undone = newestUndone(m_ledger.entries());
    if (!undone)
        return EntryNumber();
    const EntryNumber restored = std::get<Strike>(m_ledger.entries()[undone->value - 1].entry).target;
    return record(Strike{*undone, {}}, time).map([&](EntryNumber) { return restored; });
}

void MatchFile::rewrite() {
    m_writer = RecordWriter();
    for (const TimelineItem& item : timelineOf(m_ledger.entries()))
        m_writer.take(item);
}

} // namespace setfolio
