// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/commands/enterlist.h"

#include "app/terminal.h"
#include "core/ledger/entrylist.h"
#include "core/ledger/newledger.h"
#include "core/ledger/wholefile.h"
#include "ui/wording/errorwords.h"
#include "ui/wording/findingwords.h"

#include <QFile>

#include <cstdio>

namespace setfolio {

namespace {

/// A list as it was read, and the line of each of its entries.
struct List {
    QString path; ///< as it is called in a sentence
    std::vector<RecordMembers> entries;
    std::vector<int> lines;
};

/// What stopped the reading or the judging of a list.
struct Stopped {
    ExitCode code = ExitCode::Damaged;
    QString why;
};

tl::unexpected<Stopped> stopped(ExitCode code, const QString& path, int line, const QString& why) {
    return tl::unexpected(Stopped{code, listFault(path, line, why)});
}

tl::expected<QByteArray, Stopped> bytesOf(const QString& path) {
    QFile file(path);
    const bool isOpen = path == u"-" ? file.open(stdin, QIODevice::ReadOnly) : file.open(QIODevice::ReadOnly);
    const QByteArray bytes = isOpen ? file.readAll() : QByteArray();
    if (file.error() == QFile::NoError)
        return bytes;
    const FileError error{FileError::Code::CannotOpen, path, file.errorString()};
    return tl::unexpected(Stopped{ExitCode::NoInput, sentence(error)});
}

std::vector<int> linesWithEntries(const QByteArray& bytes) {
    std::vector<int> lines;
    int number = 0;
    for (const QByteArray& line : bytes.split('\n')) {
        ++number;
        if (!line.trimmed().isEmpty())
            lines.push_back(number);
    }
    return lines;
}

tl::expected<List, Stopped> readList(const QString& path) {
    const QString shown = path == u"-" ? standardInput() : path;
    const auto bytes = bytesOf(path);
    if (!bytes)
        return tl::unexpected(bytes.error());
    const auto entries = readEntryList(*bytes);
    if (!entries)
        return stopped(ExitCode::Damaged, shown, entries.error().line, sentence(entries.error().what));
    return List{shown, *entries, linesWithEntries(*bytes)};
}

/// The judge at the table: takes entries in order, and knows what they add up to.
class Table {
public:
    [[nodiscard]] Findings judged(const RecordMembers& members, const QDateTime& time) const {
        return judgeNext(m_entries, m_state, members.entry, members.placed, time);
    }
    void take(Recorded recorded) {
        const bool looksBack = recorded.placed || std::holds_alternative<Strike>(recorded.entry);
        m_entries.push_back(std::move(recorded));
        m_state = looksBack ? fold(m_entries) : apply(std::move(m_state), m_entries.back());
    }
    [[nodiscard]] const std::vector<Recorded>& entries() const { return m_entries; }
    [[nodiscard]] const MatchState& state() const { return m_state; }

private:
    std::vector<Recorded> m_entries;
    MatchState m_state;
};

tl::expected<Table, Stopped> recordAll(const List& list, const QDateTime& now) {
    Table table;
    for (std::size_t index = 0; index < list.entries.size(); ++index) {
        const RecordMembers& members = list.entries[index];
        const QDateTime time = members.time.value_or(now);
        for (const Finding& finding : table.judged(members, time)) {
            if (finding.gravity == Gravity::Refused)
                return stopped(ExitCode::Damaged, list.path, list.lines[index], sentence(finding, table.state()));
        }
        const EntryNumber number(static_cast<std::uint32_t>(index + 1));
        table.take({number, time, members.entry, members.overruled, members.placed});
    }
    return table;
}

tl::expected<QByteArray, Stopped> bytesFor(const List& list, const std::vector<Recorded>& entries) {
    auto bytes = ledgerOf(entries);
    if (bytes)
        return std::move(*bytes);
    const int number = bytes.error().line;
    const int line = number == 0 ? 0 : list.lines[static_cast<std::size_t>(number - 1)];
    return stopped(ExitCode::Damaged, list.path, line, sentence(bytes.error()));
}

ExitCode sayWhatWasWritten(const List& list, const Table& table, const QString& to) {
    const std::vector<EntryFinding> findings = review(table.entries());
    for (const EntryFinding& finding : findings)
        sayResult(findingLine(list.path, list.lines[finding.entry.value - 1], finding, table.state()));
    sayResult(written(to, static_cast<int>(table.entries().size()), static_cast<int>(findings.size())));
    return findings.empty() ? ExitCode::Done : ExitCode::WithFindings;
}

tl::expected<ExitCode, Stopped> enter(const EnterList& command, const QDateTime& now) {
    const auto list = readList(command.list);
    if (!list)
        return tl::unexpected(list.error());
    if (list->entries.empty())
        return stopped(ExitCode::Damaged, list->path, 0, sentence(Finding{}, MatchState{}));
    const auto table = recordAll(*list, now);
    if (!table)
        return tl::unexpected(table.error());
    const auto bytes = bytesFor(*list, table->entries());
    if (!bytes)
        return tl::unexpected(bytes.error());
    if (const auto done = writeNewFile(command.to, *bytes); !done)
        return tl::unexpected(Stopped{exitCodeOf(done.error().code), sentence(done.error())});
    return sayWhatWasWritten(*list, *table, command.to);
}

} // namespace

ExitCode run(const EnterList& command, const QDateTime& now) {
    const auto code = enter(command, now);
    if (!code)
        sayMessage(code.error().why);
    return code ? *code : code.error().code;
}

} // namespace setfolio
