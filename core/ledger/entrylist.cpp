// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/entrylist.h"

#include "core/ledger/jsonline.h"
#include "core/ledger/limits.h"

namespace setfolio {

namespace {

tl::expected<RecordMembers, EntryJsonError> readLine(const QByteArray& line) {
    if (line.size() >= limits::lineBytes)
        return tl::unexpected(EntryJsonError{EntryJsonError::Code::OutOfRange, {}});
    auto members = membersOfLine(line);
    if (!members)
        return tl::unexpected(EntryJsonError{EntryJsonError::Code::NotJson, {}});
    return recordMembersFrom(*members);
}

} // namespace

tl::expected<std::vector<RecordMembers>, EntryListError> readEntryList(const QByteArray& bytes) {
    std::vector<RecordMembers> list;
    int number = 0;
    const QByteArray byteOrderMark = QByteArrayLiteral("\xEF\xBB\xBF");
    const QByteArray text = bytes.startsWith(byteOrderMark) ? bytes.sliced(byteOrderMark.size()) : bytes;
    for (const QByteArray& line : text.split('\n')) {
        ++number;
        if (line.trimmed().isEmpty())
            continue;
        const auto members = readLine(line);
        if (!members)
            return tl::unexpected(EntryListError{number, members.error()});
        list.push_back(*members);
    }
    return list;
}

} // namespace setfolio
