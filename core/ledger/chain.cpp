// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/chain.h"

#include "core/ledger/jsonline.h"
#include "core/ledger/limits.h"
#include "core/ledger/recordmembers.h"
#include "core/ledger/textforms.h"

#include <QCryptographicHash>

#include <algorithm>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

using Code = LedgerError::Code;

constexpr qsizetype digestDigits = 64;
const QByteArray digestMember = QByteArrayLiteral(",\"digest\":\"");
const QByteArray lineEnd = QByteArrayLiteral("\"}");

qsizetype frameBytes() {
    return digestMember.size() + digestDigits + lineEnd.size();
}

tl::unexpected<LedgerError> fault(Code code, EntryNumber number, const QString& detail = {}) {
    return tl::unexpected(LedgerError{code, static_cast<int>(number.value), {}, detail});
}

QByteArray startOfLine(EntryNumber number) {
    return "{\"seq\":" + QByteArray::number(number.value) + ",\"time\":\"";
}

QByteArray chained(const QByteArray& previousDigest, const QByteArray& content) {
    QCryptographicHash hash(QCryptographicHash::Sha256);
    hash.addData(previousDigest);
    hash.addData(content);
    return hash.result().toHex();
}

// A higher format may have another frame or chain, so this is asked before either.
bool isOfNewerFormat(const QJsonObject& json) {
    return json.value("format"_L1).toInteger() > limits::format;
}

tl::expected<void, LedgerError> checkOpening(const QJsonObject& json, EntryNumber number) {
    const bool opens = json.value("kind"_L1) == u"match-opened"_s;
    if (number.value != 1)
        return opens ? fault(Code::BrokenLine, number, u"kind"_s) : tl::expected<void, LedgerError>();
    if (!opens)
        return fault(Code::NotALedger, number);
    if (isOfNewerFormat(json))
        return fault(Code::NewerVersion, number, QString::number(json.value("format"_L1).toInteger()));
    return {};
}

tl::expected<void, LedgerError> checkChain(const QByteArray& line, const QJsonObject& json, EntryNumber number,
                                           const QByteArray& previousDigest) {
    const QJsonValue sequence = json.value("seq"_L1);
    if (!sequence.isDouble())
        return fault(Code::BrokenLine, number, u"seq"_s);
    if (sequence.toInteger() != number.value)
        return fault(Code::WrongSequence, number, QString::number(sequence.toInteger()));
    const QByteArray digest = digestOfLine(line);
    if (digest.isEmpty())
        return fault(Code::BrokenLine, number, u"digest"_s);
    if (digest != chained(previousDigest, line.chopped(frameBytes())))
        return fault(Code::WrongDigest, number);
    if (!line.startsWith(startOfLine(number)))
        return fault(Code::BrokenLine, number, u"seq"_s);
    return {};
}

/// The line is as it was written; if it is not understood, it is from a newer version, or it was never a proper one.
LedgerError misunderstood(const EntryJsonError& error, EntryNumber number) {
    using enum EntryJsonError::Code;
    const bool unknown = error.code == UnknownKind || error.code == UnknownMember;
    return {unknown ? Code::UnknownKind : Code::BrokenLine, static_cast<int>(number.value), {}, error.member};
}

/// What a ledger asks beyond a list: everything in it, and nothing that points ahead.
tl::expected<Recorded, LedgerError> checkedRecord(const RecordMembers& members, const QJsonObject& json,
                                                  EntryNumber number) {
    if (!members.time)
        return fault(Code::BrokenLine, number, u"time"_s);
    if (const auto* strike = std::get_if<Strike>(&members.entry); strike && strike->target >= number)
        return fault(Code::BrokenLine, number, u"entry"_s);
    if (const auto* ruling = std::get_if<WrongServer>(&members.entry);
        ruling && ruling->takenBackFrom.value_or(EntryNumber()) >= number)
        return fault(Code::BrokenLine, number, u"taken-back-from"_s);
    if (members.placed && members.placed->target >= number)
        return fault(Code::BrokenLine, number, u"placed"_s);
    if (std::holds_alternative<MatchOpened>(members.entry)) {
        if (!json.contains("format"_L1))
            return fault(Code::BrokenLine, number, u"format"_s);
        if (!json.value("rulebook"_L1).isObject())
            return fault(Code::BrokenLine, number, u"rulebook"_s);
    }
    return Recorded{number, *members.time, members.entry, members.overruled, members.placed};
}

/// Whether bytes without a line feed may be the beginning of the next line, as FORMAT.md says.
bool isTorn(const QByteArray& tail, EntryNumber number) {
    if (tail.size() >= limits::lineBytes)
        return false;
    QByteArray written = tail;
    while (written.endsWith('\0'))
        written.chop(1);
    const QByteArray start = startOfLine(number);
    return !written.contains('\0') && (written.startsWith(start) || start.startsWith(written));
}

/// Takes the line that begins where the whole part ends; false when there is none or it is no good.
bool readNext(const QByteArray& bytes, LedgerContent& content) {
    const EntryNumber number(static_cast<std::uint32_t>(content.entries.size() + 1));
    const qsizetype end = bytes.indexOf('\n', content.wholeBytes);
    if (end < 0)
        return false;
    const auto tooLong = end + 1 - content.wholeBytes > limits::lineBytes;
    const QByteArray line = tooLong ? QByteArray() : bytes.mid(content.wholeBytes, end - content.wholeBytes);
    auto recorded = tooLong || number.value > limits::entries ? fault(Code::TooLong, number)
                                                              : readLedgerLine(line, number, content.lastDigest);
    if (!recorded) {
        content.damage = recorded.error();
        return false;
    }
    content.entries.push_back(std::move(*recorded));
    content.lastDigest = digestOfLine(line);
    content.wholeBytes = end + 1;
    return true;
}

} // namespace

QByteArray firstDigest() {
    return QByteArray(digestDigits, '0');
}

LedgerContent readLedger(const QByteArray& bytes) {
    LedgerContent content;
    content.lastDigest = firstDigest();
    while (readNext(bytes, content)) {
    }
    if (content.damage || content.wholeBytes == bytes.size())
        return content;
    const EntryNumber number(static_cast<std::uint32_t>(content.entries.size() + 1));
    const QByteArray tail = bytes.mid(content.wholeBytes);
    if (isTorn(tail, number))
        content.torn = TornTail{static_cast<int>(number.value), tail, {}};
    else
        content.damage = fault(number.value == 1 ? Code::NotALedger : Code::BrokenLine, number).value();
    return content;
}

tl::expected<Recorded, LedgerError> readLedgerLine(const QByteArray& line, EntryNumber number,
                                                   const QByteArray& previousDigest) {
    const auto json = objectOfLine(line);
    if (!json)
        return fault(number.value == 1 ? Code::NotALedger : Code::BrokenLine, number);
    if (const auto good =
            checkOpening(*json, number).and_then([&] { return checkChain(line, *json, number, previousDigest); });
        !good)
        return tl::unexpected(good.error());
    QJsonObject members = *json;
    members.remove("seq"_L1);
    members.remove("digest"_L1);
    const auto read = recordMembersFromJson(members);
    if (!read)
        return tl::unexpected(misunderstood(read.error(), number));
    return checkedRecord(*read, *json, number);
}

QByteArray ledgerLine(const Recorded& recorded, const QByteArray& previousDigest) {
    QJsonObject members = toJson(recorded.entry);
    members.remove("kind"_L1);
    QByteArray line = startOfLine(recorded.number) + instantText(recorded.time).toUtf8() + '"';
    if (recorded.overruled)
        line += ",\"overruled\":" + compactJson(*recorded.overruled);
    if (recorded.placed)
        line += ",\"placed\":" + compactJson(placedJson(*recorded.placed));
    line += ",\"kind\":" + compactJson(kindOf(recorded.entry));
    if (!members.isEmpty())
        line += ',' + compactJson(members).mid(1).chopped(1);
    return line + digestMember + chained(previousDigest, line) + lineEnd + '\n';
}

QByteArray digestOfLine(const QByteArray& line) {
    const QByteArray whole = line.endsWith('\n') ? line.chopped(1) : line;
    const QByteArray frame = whole.right(frameBytes());
    if (!frame.startsWith(digestMember) || !frame.endsWith(lineEnd))
        return {};
    const QByteArray digest = frame.mid(digestMember.size(), digestDigits);
    const bool digitsOnly = std::all_of(digest.begin(), digest.end(),
                                        [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); });
    return digitsOnly ? digest : QByteArray();
}

} // namespace setfolio
