// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/app/program.h"

using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

/// The demo match, with something done to the bytes of its line 7.
QByteArray withLine7(const std::function<QByteArray(QByteArray)>& change) {
    QList<QByteArray> lines = contentOf(demoMatch()).split('\n');
    lines[6] = change(lines[6]);
    return lines.join('\n');
}

/// Two lines that take the rulebook's limits, and one more that goes beyond, let stand by the referee.
const auto pastTheLimit =
    R"({"kind":"match-opened","best-of":5,"rulebook":"high-school","teams":{"home":{"code":"SAL"},"visitors":{"code":"QRL"}}}
{"kind":"toss","serves-first":"home","left":"home"}
{"kind":"line-up","team":"home","positions":[1,2,3,4,5,6]}
{"kind":"line-up","team":"visitors","positions":[1,2,3,4,5,6]}
{"kind":"set-started"}
{"kind":"time-out","team":"home"}
{"kind":"time-out","team":"home"}
{"kind":"time-out","team":"home","overruled":"the clock had failed"}
)"_ba;

} // namespace

class TestCheck : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theDemoIsWholeAndLawful();
    void findingsAreListedWithLineSentenceAndSource();
    void aDamagedFileIsNamedWithItsFirstBadLine_data();
    void aDamagedFileIsNamedWithItsFirstBadLine();
    void everyBitThatIsTurnedIsFound();
    void aTornLastLineIsToldApart();
    void anEmptyFileIsWhole();
    void aFileThatCannotBeOpenedIsSaidToBeSo_data();
    void aFileThatCannotBeOpenedIsSaidToBeSo();
    void ofSeveralFilesTheWorstCodeWins();
    void theFileIsOnlyRead();
    void namesCannotSteerTheTerminal();
    void aFullStandardOutputIsNoticed();
};

void TestCheck::theDemoIsWholeAndLawful() {
    const Ran ran = Folder().run({u"check"_s, demoMatch()});
    QCOMPARE(ran.err, QString());
    QCOMPARE(ran.out, demoMatch() + u": whole and lawful. Entries: 380.\n"_s);
    QCOMPARE(ran.code, 0);
}

void TestCheck::findingsAreListedWithLineSentenceAndSource() {
    const Folder folder;
    QCOMPARE(folder.run({u"enter"_s, u"-"_s, u"--to"_s, u"a.setfolio"_s}, pastTheLimit).code, 1);
    const Ran ran = folder.run({u"check"_s, u"a.setfolio"_s});
    QCOMPARE(ran.out, u"a.setfolio, line 8: This is time-out 3 of SAL, and the limit is 2: tell the second referee. "
                      "[Time-outs, a team in a set: 2; NFHS 2003 rule changes (two time-outs a set)] The referee let "
                      "it stand: the clock had failed\n"
                      "a.setfolio: whole. Entries: 8, findings: 1.\n"_s);
    QCOMPARE(ran.code, 1);
}

// clang-format off
void TestCheck::aDamagedFileIsNamedWithItsFirstBadLine_data() {
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QString>("said");
    QTest::newRow("a number altered")   << withLine7([](QByteArray line) { return line.replace("16", "17"); })  << u"Line 7 of a.setfolio was altered"_s;
    QTest::newRow("a line removed")     << withLine7([](const QByteArray&) { return QByteArray(); }).replace("\n\n", "\n") << u"Line 7 of a.setfolio is not the one that belongs there"_s;
    QTest::newRow("a line doubled")     << withLine7([](const QByteArray& line) { return line + '\n' + line; }) << u"Line 8 of a.setfolio is not the one that belongs there"_s;
    QTest::newRow("a line cut short")   << withLine7([](const QByteArray& line) { return line.left(40); })      << u"Line 7 of a.setfolio is damaged"_s;
    QTest::newRow("not UTF-8")          << withLine7([](const QByteArray& line) { return line + '\xff'; })      << u"Line 7 of a.setfolio is damaged"_s;
    QTest::newRow("a picture")          << "\x89PNG\r\n\x1a\n"_ba                                               << u"a.setfolio"_s;
    QTest::newRow("a text")             << "Home 25, visitors 21\n"_ba                                          << u"a.setfolio"_s;
    QTest::newRow("a list")             << contentOf(demoList())                                                << u"a.setfolio"_s;
}
// clang-format on

void TestCheck::aDamagedFileIsNamedWithItsFirstBadLine() {
    QFETCH(QByteArray, bytes);
    QFETCH(QString, said);
    const Folder folder;
    put(folder.path(u"a.setfolio"_s), bytes);
    const Ran ran = folder.run({u"check"_s, u"a.setfolio"_s});
    QVERIFY2(ran.out.startsWith(u"a.setfolio: damaged or altered. "_s), qPrintable(ran.out));
    QVERIFY2(ran.out.contains(said), qPrintable(ran.out));
    QCOMPARE(ran.out.count(u'\n'), 1);
    QCOMPARE(ran.err, QString());
    QCOMPARE(ran.code, 2);
}

// The ledger's own tests turn every bit; here a few show that the command says so.
void TestCheck::everyBitThatIsTurnedIsFound() {
    const QByteArray whole = contentOf(demoMatch());
    const Folder folder;
    for (qsizetype place = 11; place < whole.size() - 1; place += 6'133) {
        QByteArray bytes = whole;
        bytes[place] = static_cast<char>(bytes[place] ^ 1);
        put(folder.path(u"a.setfolio"_s), bytes);
        QCOMPARE(folder.run({u"check"_s, u"a.setfolio"_s}).code, 2);
    }
}

void TestCheck::aTornLastLineIsToldApart() {
    const Folder folder;
    const QByteArray torn = contentOf(demoMatch()).chopped(30);
    put(folder.path(u"a.setfolio"_s), torn);
    const Ran ran = folder.run({u"check"_s, u"a.setfolio"_s});
    QCOMPARE(ran.out, u"a.setfolio: whole and lawful. Entries: 379.\n"
                      "a.setfolio: cut short. Line 380 of a.setfolio was cut short while it was being written: it is "
                      "left out, and nothing that was recorded is lost.\n"_s);
    QCOMPARE(ran.code, 2);
    QCOMPARE(contentOf(folder.path(u"a.setfolio"_s)), torn);
}

void TestCheck::anEmptyFileIsWhole() {
    const Folder folder;
    put(folder.path(u"a.setfolio"_s), {});
    const Ran ran = folder.run({u"check"_s, u"a.setfolio"_s});
    QCOMPARE(ran.out, u"a.setfolio: whole and lawful. Entries: 0.\n"_s);
    QCOMPARE(ran.code, 0);
}

void TestCheck::aFileThatCannotBeOpenedIsSaidToBeSo_data() {
    QTest::addColumn<QString>("path");
    QTest::newRow("not there") << u"nowhere.setfolio"_s;
    QTest::newRow("a folder") << u"/"_s;
    QTest::newRow("a device") << u"/dev/null"_s;
    QTest::newRow("in a file") << demoMatch() + u"/a"_s;
    QTest::newRow("no name") << u""_s;
}

void TestCheck::aFileThatCannotBeOpenedIsSaidToBeSo() {
    QFETCH(QString, path);
    const Ran ran = Folder().run({u"check"_s, path});
    QCOMPARE(ran.out, QString());
    QVERIFY2(ran.err.startsWith(u"setfolio: "_s + path + u" cannot be opened"_s), qPrintable(ran.err));
    QCOMPARE(ran.code, 66);
}

void TestCheck::ofSeveralFilesTheWorstCodeWins() {
    const Folder folder;
    put(folder.path(u"torn"_s), contentOf(demoMatch()).chopped(1));
    QCOMPARE(folder.run({u"check"_s, demoMatch(), u"torn"_s, demoMatch()}).code, 2);
    const Ran ran = folder.run({u"check"_s, u"nowhere"_s, u"torn"_s, demoMatch()});
    QCOMPARE(ran.code, 66);
    QCOMPARE(ran.out.count(u'\n'), 3);
}

void TestCheck::theFileIsOnlyRead() {
    const Folder folder;
    const QString path = put(folder.path(u"a.setfolio"_s), contentOf(demoMatch()));
    QVERIFY(QFile::setPermissions(path, QFile::ReadOwner));
    QCOMPARE(folder.run({u"check"_s, path}).code, 0);
    QCOMPARE(contentOf(path), contentOf(demoMatch()));
    QCOMPARE(folder.names(), QStringList{u"a.setfolio"_s});
}

void TestCheck::namesCannotSteerTheTerminal() {
    const Folder folder;
    const QString name = u"<b>\u001b[31m\u202e%1\n.setfolio"_s;
    put(folder.path(name), contentOf(demoMatch()));
    const QString shown = u"<b>\\u001b[31m\u25a1%1\\u000a.setfolio"_s;
    QCOMPARE(folder.run({u"check"_s, name}).out, shown + u": whole and lawful. Entries: 380.\n"_s);
    QVERIFY(folder.run({u"check"_s, name + u'x'}).err.startsWith(u"setfolio: "_s + shown + u"x cannot be opened"_s));

    QByteArray list = pastTheLimit;
    list.replace(R"("code":"SAL")", "\"code\":\"<b>\u202e%1\"");
    QCOMPARE(folder.run({u"enter"_s, u"-"_s, u"--to"_s, u"b"_s}, list).code, 1);
    const QString said = folder.run({u"check"_s, u"b"_s}).out;
    QVERIFY2(said.contains(u"time-out 3 of <b>\u25a1%1, and the limit"_s), qPrintable(said));
}

void TestCheck::aFullStandardOutputIsNoticed() {
    const Ran ran = Folder().runIn(u"exec \"$0\" \"$@\" > /dev/full"_s, {u"check"_s, demoMatch()});
    QCOMPARE(ran.err, u"setfolio: Standard output cannot be written to its end: what was said there is not whole.\n"_s);
    QCOMPARE(ran.code, 74);
}

QTEST_GUILESS_MAIN(TestCheck)
#include "tst_check.moc"
