// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/matchfile.h"

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

Findings MatchFile::judge(const Entry& entry) const {
    if (const auto* strike = std::get_if<Strike>(&entry))
        return judgeStrike(m_ledger.entries(), *strike);
    return setfolio::judge(state(), entry);
}

tl::expected<EntryNumber, LedgerError> MatchFile::record(const Entry& entry, const QDateTime& time,
                                                         std::optional<QString> overruled) {
    const auto number = m_ledger.append(entry, time, std::move(overruled));
    if (!number)
        return number;
    if (std::holds_alternative<Strike>(entry))
        rewrite(); // what was struck may stand anywhere: everything after it is written up anew
    else
        m_writer.take({&m_ledger.entries().back(), nullptr});
    return number;
}

tl::expected<EntryNumber, LedgerError> MatchFile::undo(const QDateTime& time) {
    const std::optional<EntryNumber> newest = newestStanding(m_ledger.entries());
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
