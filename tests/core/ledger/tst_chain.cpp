// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/jsonline.h"
#include "tests/core/ledger/everykind.h"
#include "tests/core/ledger/ondisk.h"
#include "tests/support/arbitraryentries.h"
#include "tests/support/tryoften.h"

#include <QCryptographicHash>
#include <QFile>
#include <QTest>

#include <set>

using namespace setfolio;
using namespace setfolio::testing;

class TestChain : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { tryOften(200, 5'000); }
    void theDigestIsThatOfThePublishedStandard();
    void aDigestCoversTheDigestBeforeAndTheLineUpToItself();
    void theFileWithEveryKindHoldsEveryKind();
    void theFileWithEveryKindIsWrittenAsItLies();
    void membersStandInTheOrderOfTheFormat();
    void anyLedgerReadsBackAsItWasWritten();
    void noBytesAreAnEmptyLedger();
    void theDigestOfALineIsFoundOnlyInItsProperForm_data();
    void theDigestOfALineIsFoundOnlyInItsProperForm();
    void aLineOfAnotherPlaceIsNotTaken();
};

namespace {

const QString everyKindFile = QStringLiteral(SETFOLIO_SOURCE_DIR "/tests/data/ledger/every-kind.setfolio");

} // namespace

// FIPS 180-4; the example with the message "abc" is published beside it (NIST, SHA-256 examples).
void TestChain::theDigestIsThatOfThePublishedStandard() {
    QCOMPARE(QCryptographicHash::hash("abc", QCryptographicHash::Sha256).toHex(),
             QByteArray("ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"));
}

void TestChain::aDigestCoversTheDigestBeforeAndTheLineUpToItself() {
    QByteArray previous = firstDigest();
    QCOMPARE(previous, QByteArray(64, '0'));
    for (const QByteArray& line : linesOf(recorded(everyKind()))) {
        const QByteArray covered = previous + line.left(line.lastIndexOf(",\"digest\":"));
        const QByteArray digest = QCryptographicHash::hash(covered, QCryptographicHash::Sha256).toHex();
        QVERIFY(line.endsWith(",\"digest\":\"" + digest + "\"}\n"));
        previous = digest;
    }
}

void TestChain::theFileWithEveryKindHoldsEveryKind() {
    std::set<std::size_t> kinds;
    for (const Entry& entry : everyKind())
        kinds.insert(entry.index());
    QCOMPARE(kinds.size(), std::variant_size_v<Entry>);
}

// The file was written once; that it still reads the same is what keeps old matches readable.
void TestChain::theFileWithEveryKindIsWrittenAsItLies() {
    const QByteArray written = everyKindBytes();
    if (written != contentOf(everyKindFile)) {
        QFile actual(everyKindFile + QStringLiteral(".actual"));
        QVERIFY(actual.open(QIODevice::WriteOnly));
        actual.write(written);
        QFAIL("every-kind.setfolio differs from what is written now, see every-kind.setfolio.actual");
    }
    const LedgerContent content = readLedger(contentOf(everyKindFile));
    QVERIFY(!content.damage && !content.torn);
    QVERIFY(content.entries == recorded(everyKind()));
    QCOMPARE(content.wholeBytes, written.size());
    QCOMPARE(content.lastDigest, digestOfLine(written));
}

void TestChain::membersStandInTheOrderOfTheFormat() {
    const Recorded substitution{EntryNumber(12), noon(120), Substitution{Team::Home, ShirtNumber(7), ShirtNumber(11)},
                                u"\"go on\""_qs};
    QVERIFY(ledgerLine(substitution, firstDigest())
                .startsWith(R"({"seq":12,"time":"2026-10-10T12:00:00.120Z","overruled":"\"go on\"",)"
                            R"("kind":"substitution","in":7,"out":11,"team":"home","digest":")"));
    const Recorded closed{EntryNumber(3), noon(), MatchClosed{}, std::nullopt};
    QVERIFY(ledgerLine(closed, firstDigest())
                .startsWith(R"({"seq":3,"time":"2026-10-10T12:00:00.000Z","kind":"match-closed","digest":")"));
}

void TestChain::anyLedgerReadsBackAsItWasWritten() {
    QVERIFY(rc::check("any ledger reads back as it was written", [] {
        const auto entries = *arbitrary::ledger();
        const QByteArray bytes = bytesOf(entries);
        const LedgerContent content = readLedger(bytes);
        RC_ASSERT(!content.damage);
        RC_ASSERT(!content.torn);
        RC_ASSERT(content.entries == entries);
        RC_ASSERT(content.wholeBytes == bytes.size());
        RC_ASSERT(bytesOf(content.entries) == bytes);
    }));
}

void TestChain::noBytesAreAnEmptyLedger() {
    const LedgerContent content = readLedger({});
    QVERIFY(content.entries.empty());
    QVERIFY(!content.damage && !content.torn);
    QCOMPARE(content.lastDigest, firstDigest());
}

void TestChain::theDigestOfALineIsFoundOnlyInItsProperForm_data() {
    QTest::addColumn<QByteArray>("line");
    QTest::addColumn<bool>("found");
    const QByteArray digits(64, 'a');
    const auto row = [](const char* name, const QByteArray& line, bool found) { QTest::newRow(name) << line << found; };
    row("proper", "{\"seq\":1,\"digest\":\"" + digits + "\"}", true);
    row("with its line feed", "{\"seq\":1,\"digest\":\"" + digits + "\"}\n", true);
    row("nothing", "", false);
    row("a space at the end", "{\"seq\":1,\"digest\":\"" + digits + "\"} ", false);
    row("a carriage return", "{\"seq\":1,\"digest\":\"" + digits + "\"}\r\n", false);
    row("a space before", "{\"seq\":1,\"digest\": \"" + digits + "\"}", false);
    row("one digit short", "{\"seq\":1,\"digest\":\"" + digits.chopped(1) + "\"}", false);
    row("one digit more", "{\"seq\":1,\"digest\":\"" + digits + "a\"}", false);
    row("upper-case", "{\"seq\":1,\"digest\":\"" + digits.toUpper() + "\"}", false);
    row("not a digit", "{\"seq\":1,\"digest\":\"" + digits.chopped(1) + "g\"}", false);
    row("another member behind", "{\"seq\":1,\"digest\":\"" + digits + "\",\"a\":\"\"}", false);
}

void TestChain::theDigestOfALineIsFoundOnlyInItsProperForm() {
    QFETCH(QByteArray, line);
    QFETCH(bool, found);
    QCOMPARE(digestOfLine(line), found ? QByteArray(64, 'a') : QByteArray());
}

void TestChain::aLineOfAnotherPlaceIsNotTaken() {
    const auto lines = linesOf(recorded(everyKind()));
    const QByteArray second = lines[1].chopped(1);
    QVERIFY(readLedgerLine(second, EntryNumber(2), digestOfLine(lines[0])).has_value());
    QCOMPARE(readLedgerLine(second, EntryNumber(3), digestOfLine(lines[0])).error().code,
             LedgerError::Code::WrongSequence);
    QCOMPARE(readLedgerLine(second, EntryNumber(2), digestOfLine(lines[1])).error().code,
             LedgerError::Code::WrongDigest);
}

QTEST_GUILESS_MAIN(TestChain)
#include "tst_chain.moc"
