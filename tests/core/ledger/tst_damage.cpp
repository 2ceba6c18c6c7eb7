// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

// What a ledger can suffer, and how it is named.
#include "tests/core/ledger/everykind.h"

#include <QCryptographicHash>
#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

Q_DECLARE_METATYPE(setfolio::LedgerError::Code)

class TestDamage : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aLedgerCutAtAnyByteKeepsEveryWholeLine();
    void aBitFlippedInAnyByteIsFound();
    void aByteTakenOutAnywhereIsFound();
    void aByteDoubledAnywhereIsFound();
    void aLineRemovedIsFound();
    void aLineDoubledIsFound();
    void twoLinesSwappedAreFound();
    void aLineOfAnotherLedgerIsFound();
    void theEntriesBeforeTheDamageAreKept();
    void aProperlyChainedLineIsStillCheckedByItsContent_data();
    void aProperlyChainedLineIsStillCheckedByItsContent();
    void whatAnotherProgramPutsRoundALineIsNamed_data();
    void whatAnotherProgramPutsRoundALineIsNamed();
    void theFirstLineMustOpenAMatch_data();
    void theFirstLineMustOpenAMatch();
    void aLineBeyondTheLimitIsTooLong();
    void bytesWithoutALineFeedAreTornOnlyIfTheyBeginAsALine_data();
    void bytesWithoutALineFeedAreTornOnlyIfTheyBeginAsALine();
};

namespace {

using Code = LedgerError::Code;

/// A line of that content, as a forger would chain it.
QByteArray sealed(const QByteArray& content, const QByteArray& previousDigest) {
    const QByteArray digest = QCryptographicHash::hash(previousDigest + content, QCryptographicHash::Sha256).toHex();
    return content + ",\"digest\":\"" + digest + "\"}\n";
}

std::vector<QByteArray> lines() {
    static const std::vector<QByteArray> all = linesOf(recorded(everyKind()));
    return all;
}

/// How many line feeds stand before a byte.
int lineOfByte(const QByteArray& bytes, qsizetype at) {
    return static_cast<int>(bytes.first(at).count('\n')) + 1;
}

/// An altered ledger is damaged or, where its last line has lost its line feed, torn; in the line that was altered.
bool isFound(const QByteArray& altered, int line) {
    const LedgerContent content = readLedger(altered);
    const bool named = content.damage ? content.damage->line == line : content.torn && content.torn->line == line;
    return named && content.entries.size() == static_cast<std::size_t>(line - 1);
}

} // namespace

void TestDamage::aLedgerCutAtAnyByteKeepsEveryWholeLine() {
    const QByteArray whole = joined(lines());
    for (qsizetype length = 0; length <= whole.size(); ++length) {
        const QByteArray cut = whole.first(length);
        const LedgerContent content = readLedger(cut);
        QVERIFY(!content.damage);
        QCOMPARE(content.entries.size(), static_cast<std::size_t>(cut.count('\n')));
        QCOMPARE(content.wholeBytes, cut.lastIndexOf('\n') + 1);
        QCOMPARE(content.torn.has_value(), content.wholeBytes < length);
        if (content.torn)
            QCOMPARE(content.torn->bytes, cut.sliced(content.wholeBytes));
    }
}

void TestDamage::aBitFlippedInAnyByteIsFound() {
    const QByteArray whole = joined(lines());
    for (qsizetype at = 0; at < whole.size(); ++at) {
        for (const int bit : {0, 5, 7}) {
            QByteArray altered = whole;
            altered[at] = static_cast<char>(altered[at] ^ (1 << bit));
            QVERIFY2(isFound(altered, lineOfByte(whole, at)), qPrintable(u"byte %1, bit %2"_qs.arg(at).arg(bit)));
        }
    }
}

void TestDamage::aByteTakenOutAnywhereIsFound() {
    const QByteArray whole = joined(lines());
    for (qsizetype at = 0; at < whole.size(); ++at)
        QVERIFY2(isFound(whole.first(at) + whole.sliced(at + 1), lineOfByte(whole, at)),
                 qPrintable(QString::number(at)));
}

void TestDamage::aByteDoubledAnywhereIsFound() {
    const QByteArray whole = joined(lines());
    for (qsizetype at = 0; at < whole.size(); ++at) {
        // A line feed doubled is an empty line after it.
        const int line = lineOfByte(whole, at) + (whole[at] == '\n' ? 1 : 0);
        QVERIFY2(isFound(whole.first(at) + whole[at] + whole.sliced(at), line), qPrintable(QString::number(at)));
    }
}

// All but the last: a ledger cut at the end of a line is a proper one.
void TestDamage::aLineRemovedIsFound() {
    for (std::size_t at = 0; at + 1 < lines().size(); ++at) {
        auto altered = lines();
        altered.erase(altered.begin() + static_cast<std::ptrdiff_t>(at));
        const auto damage = readLedger(joined(altered)).damage;
        QVERIFY(damage.has_value());
        QCOMPARE(damage->line, static_cast<int>(at + 1));
        QCOMPARE(damage->code, at == 0 ? Code::NotALedger : Code::WrongSequence);
    }
}

void TestDamage::aLineDoubledIsFound() {
    for (std::size_t at = 0; at < lines().size(); ++at) {
        auto altered = lines();
        altered.insert(altered.begin() + static_cast<std::ptrdiff_t>(at), altered[at]);
        const auto damage = readLedger(joined(altered)).damage;
        QVERIFY(damage.has_value());
        QCOMPARE(damage->line, static_cast<int>(at + 2));
        QCOMPARE(damage->code, at == 0 ? Code::BrokenLine : Code::WrongSequence);
    }
}

void TestDamage::twoLinesSwappedAreFound() {
    for (std::size_t at = 1; at + 1 < lines().size(); ++at) {
        auto altered = lines();
        std::swap(altered[at], altered[at + 1]);
        const auto damage = readLedger(joined(altered)).damage;
        QVERIFY(damage.has_value());
        QCOMPARE(damage->line, static_cast<int>(at + 1));
        QCOMPARE(damage->code, Code::WrongSequence);
    }
}

void TestDamage::aLineOfAnotherLedgerIsFound() {
    auto other = recorded(everyKind());
    other[1].time = noon(1);
    for (std::size_t at = 1; at < lines().size(); ++at) {
        auto altered = lines();
        altered[at] = linesOf(other)[at];
        const auto damage = readLedger(joined(altered)).damage;
        QVERIFY(damage.has_value());
        // The second line of the other ledger follows the same first line, so the break is in the third.
        QCOMPARE(damage->line, static_cast<int>(at == 1 ? 3 : at + 1));
        QCOMPARE(damage->code, Code::WrongDigest);
    }
}

void TestDamage::theEntriesBeforeTheDamageAreKept() {
    QByteArray bytes = joined(lines());
    const qsizetype whole = lines()[0].size() + lines()[1].size();
    bytes[whole + 30] = '#';
    const LedgerContent content = readLedger(bytes);
    QCOMPARE(content.damage->line, 3);
    QCOMPARE(content.wholeBytes, whole);
    QCOMPARE(content.lastDigest, digestOfLine(lines()[1]));
    const auto all = recorded(everyKind());
    QVERIFY((content.entries == std::vector<Recorded>(all.begin(), all.begin() + 2)));
}

void TestDamage::aProperlyChainedLineIsStillCheckedByItsContent_data() {
    QTest::addColumn<QByteArray>("content"); // of the second line
    QTest::addColumn<Code>("code");
    QTest::addColumn<QString>("detail");
    using enum LedgerError::Code;
    const auto row = [](const QByteArray& content, Code code, const char* detail) {
        QTest::addRow("%s", content.constData()) << content << code << QString::fromLatin1(detail);
    };
    const QByteArray start = R"({"seq":2,"time":"2026-10-10T18:42:03.120Z",)";
    // clang-format off
    row(start + R"("kind":"coin-flipped")",                                                   UnknownKind,   "coin-flipped");
    row(start + R"("kind":"rally-won","by":"home","how":"ace")",                              UnknownKind,   "how");
    row(start + R"("kind":"rally-won")",                                                      BrokenLine,    "by");
    row(start + R"("kind":"rally-won","by":"them")",                                          BrokenLine,    "by");
    row(start + R"("kind":"rally-won","by":"home","by":"visitors")",                          BrokenLine,    "");
    row(start + R"("kind":"roster","team":"home","players":[{"number":1,"number":2}])",       BrokenLine,    "");
    row(start + R"("kind":"remark","text":"\ud800")",                                         BrokenLine,    "");
    row(start + "\"kind\":\"remark\",\"text\":\"\xFF\"",                                      BrokenLine,    "");
    row(start + R"("kind":"remark","text":"x","overruled":5)",                                BrokenLine,    "overruled");
    row(start + R"("kind":"strike","entry":2)",                                               BrokenLine,    "entry");
    row(start + R"("kind":"strike","entry":3)",                                               BrokenLine,    "entry");
    row(start + R"("kind":"match-opened","format":1,"best-of":5)",                            BrokenLine,    "kind");
    row(start + R"("seq":2,"kind":"match-closed")",                                           BrokenLine,    "");
    row(R"({"seq":2,"kind":"match-closed")",                                                  BrokenLine,    "seq");
    row(R"({"seq":2,"kind":"match-closed","time":"2026-10-10T18:42:03.120Z")",                BrokenLine,    "seq");
    row(R"({"time":"2026-10-10T18:42:03.120Z","seq":2,"kind":"match-closed")",                BrokenLine,    "seq");
    row(R"({"seq":2.0,"time":"2026-10-10T18:42:03.120Z","kind":"match-closed")",              BrokenLine,    "seq");
    row(R"({"seq":02,"time":"2026-10-10T18:42:03.120Z","kind":"match-closed")",               BrokenLine,    "");
    row(R"({"seq":3,"time":"2026-10-10T18:42:03.120Z","kind":"match-closed")",                WrongSequence, "3");
    row(R"({"seq":1,"time":"2026-10-10T18:42:03.120Z","kind":"match-closed")",                WrongSequence, "1");
    row(R"({"seq":"2","time":"2026-10-10T18:42:03.120Z","kind":"match-closed")",              BrokenLine,    "seq");
    row(R"({ "seq":2,"time":"2026-10-10T18:42:03.120Z","kind":"match-closed")",               BrokenLine,    "seq");
    row("\xEF\xBB\xBF{\"seq\":2,\"time\":\"2026-10-10T18:42:03.120Z\",\"kind\":\"match-closed\"", BrokenLine, "");
    row(R"({"seq":2,"time":"2026-10-10T18:42:03.12Z","kind":"match-closed")",                 BrokenLine,    "time");
    row(R"({"seq":2,"time":"2026-10-10T18:42:03.120","kind":"match-closed")",                 BrokenLine,    "time");
    row(R"({"seq":2,"time":"2026-10-10T18:42:03.120+02:00","kind":"match-closed")",           BrokenLine,    "time");
    row(R"({"seq":2,"time":"2026-10-10 18:42:03.120Z","kind":"match-closed")",                BrokenLine,    "time");
    row(R"({"seq":2,"time":"2026-02-30T18:42:03.120Z","kind":"match-closed")",                BrokenLine,    "time");
    row(R"({"seq":2,"time":"2026-10-10T24:00:00.000Z","kind":"match-closed")",                BrokenLine,    "time");
    row(R"({"seq":2,"time":"2026-10-10T18:42:60.000Z","kind":"match-closed")",                BrokenLine,    "time");
    // clang-format on
}

void TestDamage::aProperlyChainedLineIsStillCheckedByItsContent() {
    QFETCH(QByteArray, content);
    QFETCH(Code, code);
    QFETCH(QString, detail);
    const LedgerContent read = readLedger(lines()[0] + sealed(content, digestOfLine(lines()[0])));
    QVERIFY(read.damage.has_value());
    QCOMPARE(read.damage->detail, detail);
    QCOMPARE(read.damage->code, code);
    QCOMPARE(read.damage->line, 2);
    QCOMPARE(read.entries.size(), std::size_t{1});
}

void TestDamage::whatAnotherProgramPutsRoundALineIsNamed_data() {
    QTest::addColumn<QByteArray>("before");
    QTest::addColumn<QByteArray>("after");
    QTest::addColumn<QString>("detail");
    QTest::newRow("a carriage return") << QByteArray() << QByteArray("\r") << u"CR LF"_qs;
    QTest::newRow("blanks") << QByteArray() << QByteArray(" \t ") << u"U+0020"_qs;
    QTest::newRow("a byte-order mark") << QByteArray("\xEF\xBB\xBF") << QByteArray() << u"U+FEFF"_qs;
    QTest::newRow("both") << QByteArray("\xEF\xBB\xBF") << QByteArray("\r") << u"CR LF"_qs;
}

void TestDamage::whatAnotherProgramPutsRoundALineIsNamed() {
    QFETCH(QByteArray, before);
    QFETCH(QByteArray, after);
    for (std::size_t at = 0; at < lines().size(); ++at) {
        if (at > 0 && !before.isEmpty())
            break; // it is put before the first line only
        auto altered = lines();
        altered[at] = before + altered[at].chopped(1) + after + '\n';
        const LedgerContent content = readLedger(joined(altered));
        QVERIFY(content.damage.has_value());
        QCOMPARE(content.damage->code, Code::SavedAnew);
        QCOMPARE(content.damage->line, static_cast<int>(at) + 1);
        QTEST(content.damage->detail, "detail");
        QCOMPARE(content.entries.size(), at);
    }
}

void TestDamage::theFirstLineMustOpenAMatch_data() {
    QTest::addColumn<QByteArray>("content");
    QTest::addColumn<Code>("code");
    QTest::addColumn<QString>("detail");
    using enum LedgerError::Code;
    const QByteArray frame = ",\"digest\":";
    const QByteArray proper = lines()[0].left(lines()[0].lastIndexOf(frame));
    const QByteArray rulebook = proper.mid(proper.indexOf("\"rulebook\":"));
    const auto without = [&](const QByteArray& part, const QByteArray& instead) {
        Q_ASSERT(proper.contains(part));
        return QByteArray(proper).replace(part, instead);
    };
    const auto row = [](const char* name, const QByteArray& content, Code code, const char* detail) {
        QTest::newRow(name) << content << code << QString::fromLatin1(detail);
    };
    // clang-format off
    row("another kind",      R"({"seq":1,"time":"2026-10-10T18:42:03.120Z","kind":"match-closed")", NotALedger, "");
    row("another object",    R"({"seq":1)",                                        NotALedger,   "");
    row("a list",            R"([1)",                                              NotALedger,   "");
    row("prose",             "Dear scorer",                                        NotALedger,   "");
    row("nothing",           "",                                                   NotALedger,   "");
    row("a newer format",    without("\"format\":1", "\"format\":2"),              NewerVersion, "2");
    row("no format",         without("\"format\":1,", ""),                         BrokenLine,   "format");
    row("a format in words", without("\"format\":1", "\"format\":\"1\""),          BrokenLine,   "format");
    row("a named rulebook",  without(rulebook.left(rulebook.indexOf(",\"teams\":")), R"("rulebook":"high-school")"), BrokenLine, "rulebook");
    row("another number",    without("{\"seq\":1,", "{\"seq\":2,"),                WrongSequence, "2");
    // clang-format on
}

void TestDamage::theFirstLineMustOpenAMatch() {
    QFETCH(QByteArray, content);
    QFETCH(Code, code);
    QFETCH(QString, detail);
    const LedgerContent read = readLedger(sealed(content, firstDigest()));
    QVERIFY(read.damage.has_value());
    QCOMPARE(read.damage->detail, detail);
    QCOMPARE(read.damage->code, code);
    QCOMPARE(read.damage->line, 1);
}

void TestDamage::aLineBeyondTheLimitIsTooLong() {
    const QByteArray start = R"({"seq":2,"time":"2026-10-10T18:42:03.120Z",)";
    const auto read = [&](qsizetype length) {
        // JSON allows space between members; the frame is 77 bytes and the line feed one.
        const QByteArray content = (start + R"("kind":"match-closed")").leftJustified(length - 78, ' ');
        return readLedger(lines()[0] + sealed(content, digestOfLine(lines()[0])));
    };
    QCOMPARE(read(65'536).entries.size(), std::size_t{2});
    QCOMPARE(read(65'537).entries.size(), std::size_t{1});
    QCOMPARE(read(65'537).damage->code, Code::TooLong);
}

void TestDamage::bytesWithoutALineFeedAreTornOnlyIfTheyBeginAsALine_data() {
    QTest::addColumn<QByteArray>("whole");
    QTest::addColumn<QByteArray>("tail");
    QTest::addColumn<bool>("torn");
    const auto row = [](const char* name, const QByteArray& whole, const QByteArray& tail, bool torn) {
        QTest::newRow(name) << whole << tail << torn;
    };
    const QByteArray first = lines()[0];
    // clang-format off
    row("a brace",               first, "{",                                             true);
    row("a whole line",          first, lines()[1].chopped(1),                           true);
    row("NUL bytes",             first, QByteArray(200, '\0'),                           true);
    row("a line, then NUL",      first, lines()[1].first(40) + QByteArray(60, '\0'),     true);
    row("NUL, then a line",      first, QByteArray(60, '\0') + lines()[1].mid(60, 40),   false);
    row("a hole in a line",      first, lines()[1].first(40) + QByteArray(9, '\0') + "x", false);
    row("another number",        first, lines()[2].chopped(1),                           false);
    row("prose",                 first, "signed: the scorer",                            false);
    row("too long for a line",   first, lines()[1].chopped(1).leftJustified(65'536, 'x'), false);
    row("the first line",        {},    first.first(100),                                true);
    row("only NUL bytes",        {},    QByteArray(4096, '\0'),                          true);
    row("a file of another kind", {},   "\x89PNG",                                       false);
    row("another JSON file",     {},    "{\"name\":\"x\"}",                              false);
    // clang-format on
}

void TestDamage::bytesWithoutALineFeedAreTornOnlyIfTheyBeginAsALine() {
    QFETCH(QByteArray, whole);
    QFETCH(QByteArray, tail);
    QFETCH(bool, torn);
    const LedgerContent content = readLedger(whole + tail);
    const int line = whole.isEmpty() ? 1 : 2;
    QCOMPARE(content.torn.has_value(), torn);
    QCOMPARE(content.damage.has_value(), !torn);
    QCOMPARE(content.wholeBytes, whole.size());
    if (torn)
        QVERIFY((*content.torn == TornTail{line, tail, {}}));
    else
        QVERIFY((*content.damage == LedgerError{line == 1 ? Code::NotALedger : Code::BrokenLine, line, {}, {}}));
}

QTEST_GUILESS_MAIN(TestDamage)
#include "tst_damage.moc"
