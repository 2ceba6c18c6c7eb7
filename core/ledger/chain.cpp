// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/chain.h"

#include "core/ledger/jsonline.h"
#include "core/ledger/limits.h"
#include "core/ledger/recordmembers.h"
#include "core/ledger/textforms.h"

#include <QCryptographicHash>

#include <algorithm>
#include <array>
#include <charconv>

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
    std::array<char, 12> digits{};
    const auto end = std::to_chars(digits.begin(), digits.end(), number.value).ptr;
    QByteArray start;
    start.reserve(32);
    start.append("{\"seq\":").append(digits.data(), end - digits.data()).append(",\"time\":\"");
    return start;
}

/// The digest at the end of a line without its line feed; empty if there is none of the proper form.
QByteArrayView digestAtEndOf(QByteArrayView line) {
    if (line.size() < frameBytes())
        return {};
    const QByteArrayView frame = line.last(frameBytes());
    if (!frame.startsWith(digestMember) || !frame.endsWith(lineEnd))
        return {};
    const QByteArrayView digest = frame.sliced(digestMember.size(), digestDigits);
    const bool digitsOnly = std::all_of(digest.begin(), digest.end(),
                                        [](char c) { return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'f'); });
    return digitsOnly ? digest : QByteArrayView();
}

/// Makes the digests of one line after another.
class Chain {
public:
    [[nodiscard]] QByteArray digest(QByteArrayView previousDigest, QByteArrayView content) {
        m_hash.reset();
        m_hash.addData(previousDigest);
        m_hash.addData(content);
        return m_hash.result().toHex();
    }

private:
    QCryptographicHash m_hash{QCryptographicHash::Sha256};
};

// A higher format may have another frame or chain, so this is asked before either.
tl::expected<void, LedgerError> checkOpening(const Members& members, EntryNumber number) {
    const bool opens = members.value("kind"_L1).toString() == "match-opened"_L1;
    if (number.value != 1)
        return opens ? fault(Code::BrokenLine, number, u"kind"_s) : tl::expected<void, LedgerError>();
    if (!opens)
        return fault(Code::NotALedger, number);
    const qint64 format = members.value("format"_L1).toInteger();
    if (format > limits::format)
        return fault(Code::NewerVersion, number, QString::number(format));
    return {};
}

tl::expected<void, LedgerError> checkChain(const QByteArray& line, Members& members, EntryNumber number,
                                           const QByteArray& previousDigest, Chain& chain) {
    const MemberValue sequence = members.take("seq"_L1);
    std::ignore = members.take("digest"_L1);
    if (!sequence.isNumber())
        return fault(Code::BrokenLine, number, u"seq"_s);
    if (sequence.toInteger() != number.value)
        return fault(Code::WrongSequence, number, QString::number(sequence.toInteger()));
    const QByteArrayView digest = digestAtEndOf(line);
    if (digest.isEmpty())
        return fault(Code::BrokenLine, number, u"digest"_s);
    if (digest != chain.digest(previousDigest, QByteArrayView(line).chopped(frameBytes())))
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

/// Whether a seal of this file is over the lines before it; that of another one only needs a digest.
bool holds(const Sealed& sealed, const QByteArray& previousDigest) {
    return sealed.of == SealOf::Original ? !sealed.digest.isEmpty()
                                         : sealed.digest == QLatin1StringView(previousDigest);
}

/// What a ledger asks beyond a list: everything in it, and nothing that points ahead.
tl::expected<Recorded, LedgerError> checkedRecord(RecordMembers&& record, const Members& members, EntryNumber number,
                                                  const QByteArray& previousDigest) {
    if (!record.time)
        return fault(Code::BrokenLine, number, u"time"_s);
    if (const auto* strike = std::get_if<Strike>(&record.entry); strike && strike->target >= number)
        return fault(Code::BrokenLine, number, u"entry"_s);
    if (const auto taken = takenBackBy(record.entry); taken && taken->first >= number)
        return fault(Code::BrokenLine, number, u"taken-back-from"_s);
    if (record.placed && record.placed->target >= number)
        return fault(Code::BrokenLine, number, u"placed"_s);
    if (const auto* sealed = std::get_if<Sealed>(&record.entry); sealed && !holds(*sealed, previousDigest))
        return fault(Code::WrongSeal, number);
    if (std::holds_alternative<MatchOpened>(record.entry)) {
        if (!members.contains("format"_L1))
            return fault(Code::BrokenLine, number, u"format"_s);
        if (!members.value("rulebook"_L1).isObject())
            return fault(Code::BrokenLine, number, u"rulebook"_s);
    }
    return Recorded{number, *record.time, std::move(record.entry), std::move(record.overruled),
                    std::move(record.placed)};
}

tl::expected<Recorded, LedgerError> readLine(const QByteArray& line, EntryNumber number,
                                             const QByteArray& previousDigest, Chain& chain) {
    auto members = membersOfLine(line);
    if (!members)
        return fault(number.value == 1 ? Code::NotALedger : Code::BrokenLine, number);
    if (const auto good = checkOpening(*members, number).and_then([&] {
            return checkChain(line, *members, number, previousDigest, chain);
        });
        !good)
        return tl::unexpected(good.error());
    auto record = recordMembersFrom(*members);
    if (!record)
        return tl::unexpected(misunderstood(record.error(), number));
    return checkedRecord(std::move(*record), *members, number, previousDigest);
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

/// What another program may have put round a line when it saved the file: a byte-order mark, blanks, a carriage return.
QByteArray withoutWrapping(const QByteArray& line, EntryNumber number) {
    QByteArray bare = number.value == 1 && line.startsWith("\xEF\xBB\xBF") ? line.sliced(3) : line;
    while (bare.endsWith('\r') || bare.endsWith(' ') || bare.endsWith('\t'))
        bare.chop(1);
    return bare;
}

/// Why a line is no good: if only what stands round it, then that.
LedgerError whyNot(const LedgerError& fault, const QByteArray& line, const LedgerContent& content, Chain& chain) {
    const EntryNumber number(static_cast<std::uint32_t>(content.entries.size() + 1));
    const QByteArray bare = withoutWrapping(line, number);
    if (bare.size() == line.size() || !readLine(bare, number, content.lastDigest, chain))
        return fault;
    const QString detail = line.endsWith('\r')              ? u"CR LF"_s
                           : bare == line.last(bare.size()) ? u"U+FEFF"_s
                                                            : u"U+0020"_s;
    return {Code::SavedAnew, fault.line, {}, detail};
}

/// Whether a seal of another file stands where only its own may: a copy without names tells of the original's.
bool isForeignSeal(const Recorded& recorded, const LedgerContent& content) {
    const auto* sealed = std::get_if<Sealed>(&recorded.entry);
    const auto* opened = content.entries.empty() ? nullptr : std::get_if<MatchOpened>(&content.entries.front().entry);
    return sealed && sealed->of == SealOf::Original && !(opened && opened->namesLeftOut);
}

/// Takes the line that begins where the whole part ends; false when there is none or it is no good.
bool readNext(const QByteArray& bytes, LedgerContent& content, Chain& chain) {
    const EntryNumber number(static_cast<std::uint32_t>(content.entries.size() + 1));
    const qsizetype end = bytes.indexOf('\n', content.wholeBytes);
    if (end < 0)
        return false;
    const auto tooLong = end + 1 - content.wholeBytes > limits::lineBytes;
    const QByteArray line =
        tooLong ? QByteArray()
                : QByteArray::fromRawData(bytes.constData() + content.wholeBytes, end - content.wholeBytes);
    auto recorded = tooLong || number.value > limits::entries ? fault(Code::TooLong, number)
                                                              : readLine(line, number, content.lastDigest, chain);
    if (recorded && isForeignSeal(*recorded, content))
        recorded = fault(Code::WrongSeal, number, u"of"_s);
    if (!recorded) {
        content.damage = tooLong ? recorded.error() : whyNot(recorded.error(), line, content, chain);
        return false;
    }
    content.entries.push_back(std::move(*recorded));
    content.lastDigest = QByteArrayView(line).chopped(lineEnd.size()).last(digestDigits).toByteArray();
    content.wholeBytes = end + 1;
    return true;
}

/// So that the entries need not be moved while they become more; a file of line feeds alone asks for little.
std::size_t mostEntriesIn(const QByteArray& bytes) {
    constexpr qsizetype shortestLine = 128;
    const auto lines = std::count(bytes.begin(), bytes.end(), '\n');
    return static_cast<std::size_t>(std::min<qsizetype>(lines, bytes.size() / shortestLine));
}

} // namespace

QByteArray firstDigest() {
    return QByteArray(digestDigits, '0');
}

LedgerContent readLedger(const QByteArray& bytes) {
    LedgerContent content;
    content.lastDigest = firstDigest();
    content.entries.reserve(mostEntriesIn(bytes));
    Chain chain;
    while (readNext(bytes, content, chain)) {
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
    Chain chain;
    return readLine(line, number, previousDigest, chain);
}

Entry withSeal(Entry entry, const QByteArray& previousDigest) {
    auto* sealed = std::get_if<Sealed>(&entry);
    if (sealed && sealed->of == SealOf::ThisFile)
        sealed->digest = QString::fromLatin1(previousDigest);
    return entry;
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
    return line + digestMember + Chain().digest(previousDigest, line) + lineEnd + '\n';
}

QByteArray digestOfLine(const QByteArray& line) {
    return digestAtEndOf(line.endsWith('\n') ? QByteArrayView(line).chopped(1) : QByteArrayView(line)).toByteArray();
}

} // namespace setfolio
