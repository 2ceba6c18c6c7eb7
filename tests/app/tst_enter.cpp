// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/ledger.h"
#include "tests/app/program.h"

#include <QDateTime>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

const auto opening =
    R"({"kind":"match-opened","best-of":5,"rulebook":"high-school","teams":{"home":{"code":"SAL"},"visitors":{"code":"QRL"}}}
)"_ba;
const auto start = opening + R"({"kind":"toss","serves-first":"home","left":"home"}
{"kind":"line-up","team":"home","positions":[1,2,3,4,5,6]}
{"kind":"line-up","team":"visitors","positions":[1,2,3,4,5,6]}
{"kind":"set-started"}
)"_ba;

const QStringList enterHere{u"enter"_s, u"-"_s, u"--to"_s, u"a.setfolio"_s};

} // namespace

class TestEnter : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theListOfTheDemoGivesTheDemo();
    void theScriptOfTheDemoGivesItsList();
    void entriesWithoutATimeGetThePresentOne();
    void findingsAreListedByTheLineOfTheList();
    void aLineThatCannotBeReadIsNamed_data();
    void aLineThatCannotBeReadIsNamed();
    void anEntryThatHasNoMeaningThereIsNamed_data();
    void anEntryThatHasNoMeaningThereIsNamed();
    void anExistingFileIsNeverOverwritten();
    void whereNoFileCanBeMadeItSaysSo_data();
    void whereNoFileCanBeMadeItSaysSo();
    void onAFullDiskNoHalfFileIsLeft();
    void killedWhileItWritesItLeavesTheNameFree();
    void aListThatIsNotThereIsSaidToBeSo();
};

void TestEnter::theListOfTheDemoGivesTheDemo() {
    const Folder folder;
    const Ran ran = folder.run({u"enter"_s, demoList(), u"--to"_s, u"a.setfolio"_s});
    QCOMPARE(ran.err, QString());
    QCOMPARE(ran.out, u"a.setfolio: written. Entries: 380.\n"_s);
    QCOMPARE(ran.code, 0);
    QCOMPARE(folder.names(), QStringList{u"a.setfolio"_s});
    const auto entered = readLedgerFile(folder.path(u"a.setfolio"_s));
    const auto kept = readLedgerFile(demoMatch());
    QVERIFY(entered && kept);
    QVERIFY(entered->entries == kept->entries);
    QCOMPARE(contentOf(folder.path(u"a.setfolio"_s)), contentOf(demoMatch()));
}

void TestEnter::theScriptOfTheDemoGivesItsList() {
    QProcess script;
    script.start(u"/usr/bin/python3"_s, {u"-B"_s, demo(u"herons-larks.py"_s)});
    QVERIFY(script.waitForFinished());
    QCOMPARE(script.exitCode(), 0);
    QCOMPARE(script.readAllStandardOutput(), contentOf(demoList()));
}

void TestEnter::entriesWithoutATimeGetThePresentOne() {
    const Folder folder;
    const QDateTime before = QDateTime::currentDateTimeUtc().addMSecs(-1);
    QCOMPARE(folder.run(enterHere, opening + R"({"kind":"remark","text":"a","time":"2001-02-03T04:05:06.007Z"})").code,
             0);
    const QDateTime after = QDateTime::currentDateTimeUtc();
    const auto content = readLedgerFile(folder.path(u"a.setfolio"_s));
    QVERIFY(content && content->entries.size() == 2);
    QVERIFY(before <= content->entries[0].time && content->entries[0].time <= after);
    QCOMPARE(content->entries[1].time, QDateTime(QDate(2001, 2, 3), QTime(4, 5, 6, 7), Qt::UTC));
}

void TestEnter::findingsAreListedByTheLineOfTheList() {
    const Folder folder;
    const QByteArray list = start + "\n\n"
                                    R"({"kind":"substitution","team":"home","in":2,"out":1})"
                                    "\n";
    const Ran ran = folder.run(enterHere, list);
    QCOMPARE(ran.err, QString());
    QVERIFY2(ran.out.startsWith(u"standard input, line 8: Number 2 of SAL is on court already, in slot II: check the "
                                "number that comes in. ["_s),
             qPrintable(ran.out));
    QVERIFY2(ran.out.endsWith(u"]\na.setfolio: written. Entries: 6, findings: 1.\n"_s), qPrintable(ran.out));
    QCOMPARE(ran.code, 1);
    QCOMPARE(folder.run({u"check"_s, u"a.setfolio"_s}).code, 1);
}

// clang-format off
void TestEnter::aLineThatCannotBeReadIsNamed_data() {
    QTest::addColumn<QByteArray>("line");
    QTest::addColumn<QString>("said");
    QTest::newRow("no JSON")             << "rally to home"_ba                                         << u"This is not a JSON object"_s;
    QTest::newRow("an array")            << "[1]"_ba                                                   << u"This is not a JSON object"_s;
    QTest::newRow("two objects")         << R"({"kind":"serve-contacted"} {})"_ba                      << u"This is not a JSON object"_s;
    QTest::newRow("a member twice")      << R"({"kind":"rally-won","by":"home","by":"visitors"})"_ba   << u"This is not a JSON object"_s;
    QTest::newRow("not UTF-8")           << "{\"kind\":\"remark\",\"text\":\"\xff\"}"_ba               << u"This is not a JSON object"_s;
    QTest::newRow("an unknown kind")     << R"({"kind":"goal"})"_ba                                    << u"\"goal\" names no kind of entry"_s;
    QTest::newRow("an unknown member")   << R"({"kind":"rally-won","by":"home","ace":true})"_ba        << u"\"ace\" does not belong"_s;
    QTest::newRow("a ledger's own line") << R"({"seq":6,"kind":"serve-contacted"})"_ba                 << u"\"seq\" does not belong"_s;
    QTest::newRow("a missing member")    << R"({"kind":"rally-won"})"_ba                               << u"\"by\" is missing"_s;
    QTest::newRow("a wrong type")        << R"({"kind":"rally-won","by":1})"_ba                        << u"\"by\" is not of the type"_s;
    QTest::newRow("out of range")        << R"({"kind":"rally-won","by":"left"})"_ba                   << u"\"by\" has a value that it cannot"_s;
    QTest::newRow("a number out of range") << R"({"kind":"substitution","team":"home","in":100,"out":1})"_ba << u"\"in\" has a value that it cannot"_s;
    QTest::newRow("a steering name")     << R"({"kind":"remark","text":"\u001b[31m"})"_ba              << u"\"text\" has a value that it cannot"_s;
    QTest::newRow("a steering kind")     << R"({"kind":"\u001b[31m"})"_ba                              << u"\"\u25a1[31m\" names no kind"_s;
    QTest::newRow("another time")        << R"({"kind":"serve-contacted","time":"18:40"})"_ba          << u"\"time\" has a value"_s;
    QTest::newRow("too long")            << QByteArray(70'000, ' ') + "{}"                             << u"longer than any entry"_s;
}
// clang-format on

void TestEnter::aLineThatCannotBeReadIsNamed() {
    QFETCH(QByteArray, line);
    QFETCH(QString, said);
    const Folder folder;
    const Ran ran = folder.run(enterHere, start + line + '\n');
    QVERIFY2(ran.err.startsWith(u"setfolio: standard input, line 6: "_s), qPrintable(ran.err));
    QVERIFY2(ran.err.contains(said), qPrintable(ran.err));
    QCOMPARE(ran.err.count(u'\n'), 1);
    QCOMPARE(ran.out, QString());
    QCOMPARE(ran.code, 2);
    QCOMPARE(folder.names(), QStringList());
}

// clang-format off
void TestEnter::anEntryThatHasNoMeaningThereIsNamed_data() {
    QTest::addColumn<QByteArray>("list");
    QTest::addColumn<int>("line");
    QTest::addColumn<QString>("said");
    QTest::newRow("nothing at all")      << ""_ba                                                         << 0 << u"No match is open"_s;
    QTest::newRow("empty lines")         << "\n\n \n"_ba                                                  << 0 << u"No match is open"_s;
    QTest::newRow("no opening")          << R"({"kind":"serve-contacted"})"_ba                            << 1 << u"No match is open"_s;
    QTest::newRow("a second opening")    << opening + opening                                             << 2 << u"The match is open already"_s;
    QTest::newRow("a rally before a set") << opening + R"({"kind":"rally-won","by":"home"})"_ba           << 2 << u"The set has not started"_s;
    QTest::newRow("a set that is not won") << start + R"({"kind":"set-ended"})"_ba                        << 6 << u"The set is not won yet"_s;
    QTest::newRow("nobody to go out")    << start + R"({"kind":"substitution","team":"home","in":9,"out":8})"_ba << 6 << u"Number 8 of SAL is not on court"_s;
    QTest::newRow("nothing to strike")   << start + R"({"kind":"strike","entry":9})"_ba                   << 6 << u"There is no entry 9"_s;
    QTest::newRow("the opening struck")  << start + R"({"kind":"strike","entry":1})"_ba                   << 6 << u"The opening of the match cannot be struck"_s;
    QTest::newRow("overruled, and yet")  << start + R"({"kind":"set-ended","overruled":"tired"})"_ba      << 6 << u"The set is not won yet"_s;
}
// clang-format on

void TestEnter::anEntryThatHasNoMeaningThereIsNamed() {
    QFETCH(QByteArray, list);
    QFETCH(int, line);
    QFETCH(QString, said);
    const Folder folder;
    const Ran ran = folder.run(enterHere, list);
    const QString where = line == 0 ? u"standard input: "_s : u"standard input, line %1: "_s.arg(line);
    QVERIFY2(ran.err.startsWith(u"setfolio: "_s + where + said), qPrintable(ran.err));
    QCOMPARE(ran.out, QString());
    QCOMPARE(ran.code, 2);
    QCOMPARE(folder.names(), QStringList());
}

void TestEnter::anExistingFileIsNeverOverwritten() {
    const Folder folder;
    put(folder.path(u"a.setfolio"_s), "mine");
    const Ran ran = folder.run(enterHere, opening);
    QVERIFY2(ran.err.startsWith(u"setfolio: a.setfolio cannot be made ("_s), qPrintable(ran.err));
    QCOMPARE(ran.out, QString());
    QCOMPARE(ran.code, 73);
    QCOMPARE(contentOf(folder.path(u"a.setfolio"_s)), "mine"_ba);
}

void TestEnter::whereNoFileCanBeMadeItSaysSo_data() {
    QTest::addColumn<QString>("to");
    QTest::newRow("read-only") << unwritable(u"a.setfolio"_s);
    QTest::newRow("no such folder") << u"nowhere/a.setfolio"_s;
    QTest::newRow("a folder") << u"/"_s;
}

void TestEnter::whereNoFileCanBeMadeItSaysSo() {
    QFETCH(QString, to);
    const Ran ran = Folder().run({u"enter"_s, u"-"_s, u"--to"_s, to}, opening);
    QVERIFY2(ran.err.startsWith(u"setfolio: "_s + to + u" cannot be made ("_s), qPrintable(ran.err));
    QCOMPARE(ran.code, 73);
}

void TestEnter::onAFullDiskNoHalfFileIsLeft() {
    const Folder folder;
    const Ran ran = folder.runIn(withRoomFor(16), {u"enter"_s, demoList(), u"--to"_s, u"a.setfolio"_s});
    QVERIFY2(ran.err.startsWith(u"setfolio: a.setfolio cannot be written ("_s), qPrintable(ran.err));
    QCOMPARE(ran.out, QString());
    QCOMPARE(ran.code, 74);
    QCOMPARE(folder.names(), QStringList());
}

// Without the shell's trap a limit on the size of files kills the program in the middle of writing.
void TestEnter::killedWhileItWritesItLeavesTheNameFree() {
    const Folder folder;
    const QStringList words{u"enter"_s, demoList(), u"--to"_s, u"a.setfolio"_s};
    const Ran ran = folder.runIn(u"ulimit -c 0; ulimit -f 16; exec \"$0\" \"$@\""_s, words);
    QCOMPARE(ran.code, -1);
    QVERIFY(!folder.names().contains(u"a.setfolio"_s));
    QCOMPARE(folder.names().size(), 1); // what was being written, under a hidden name
    QCOMPARE(folder.run(words).code, 0);
    QCOMPARE(contentOf(folder.path(u"a.setfolio"_s)), contentOf(demoMatch()));
}

void TestEnter::aListThatIsNotThereIsSaidToBeSo() {
    const Folder folder;
    for (const QString& list : {u"nowhere.jsonl"_s, u"/"_s}) {
        const Ran ran = folder.run({u"enter"_s, list, u"--to"_s, u"a.setfolio"_s});
        QVERIFY2(ran.err.startsWith(u"setfolio: "_s + list + u" cannot be opened ("_s), qPrintable(ran.err));
        QCOMPARE(ran.code, 66);
    }
    QCOMPARE(folder.names(), QStringList());
}

QTEST_GUILESS_MAIN(TestEnter)
#include "tst_enter.moc"
