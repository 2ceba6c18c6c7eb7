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

/// A match that has got as far as its rosters and the toss: numbers 1 to 12, liberos 9 and 10. Line 5 is the next.
QByteArray tossedUnder(const QByteArray& rulebook) {
    QByteArray players;
    for (int number = 1; number <= 12; ++number)
        players += (number > 1 ? "," : "") + R"({"number":%1})"_ba.replace("%1", QByteArray::number(number));
    QByteArray list =
        R"({"kind":"match-opened","best-of":5,"rulebook":"%1","teams":{"home":{"code":"SAL"},"visitors":{"code":"QRL"}}}
{"kind":"roster","team":"home","players":[%2]}
{"kind":"roster","team":"visitors","players":[%2]}
{"kind":"toss","serves-first":"home","left":"home"}
)"_ba;
    return list.replace("%1", rulebook).replace("%2", players);
}

const auto slips = R"({"kind":"line-up","team":"home","positions":[1,2,3,4,5,6],"liberos":[9]}
{"kind":"line-up","team":"visitors","positions":[1,2,3,4,5,6]}
{"kind":"set-started"}
)"_ba; // the next line is 8

} // namespace

class TestCheck : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theDemoIsWholeAndLawful();
    void findingsAreListedWithLineSentenceAndSource();
    void eachNamesItsLineItsRuleAndItsSource_data();
    void eachNamesItsLineItsRuleAndItsSource();
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
void TestCheck::eachNamesItsLineItsRuleAndItsSource_data() {
    QTest::addColumn<QByteArray>("list");
    QTest::addColumn<QString>("said");
    QTest::newRow("no libero after a wrong number, an empty slip between")
        << tossedUnder("college-women") + R"({"kind":"line-up","team":"home","positions":[1,2,3,4,5,6],"liberos":[19]}
{"kind":"line-up","team":"home","positions":[1,2,3,4,5,6]}
{"kind":"line-up","team":"home","positions":[1,2,3,4,5,6],"liberos":[9]}
)"_ba   << u"line 7: The slip of SAL named a libero, 19, whom nobody wears: the team has no libero in this set. [A wrong libero's number on the line-up: means no libero that set; Referee magazine 09/2023"_s;
    QTest::newRow("a second late replacement")
        << tossedUnder("college-women") + slips + R"({"kind":"late-replacement","team":"home"}
{"kind":"late-replacement","team":"home"}
)"_ba   << u"line 9: A late replacement of SAL is not let pass now, and the sanction is the delay warning: tell the second referee. [A libero replacement after the signal: is warned in words once, then a delay; from memory"_s;
    QTest::newRow("a libero for a player sent off")
        << tossedUnder("high-school") + slips + R"({"kind":"sanction","team":"home","number":5,"level":"disqualification"}
{"kind":"libero-in","team":"home","libero":9,"replaced":5}
)"_ba   << u"line 9: Libero 9 of SAL may not come in for number 5, who was sent off: ask who else comes in. ["_s;
    QTest::newRow("an illegal player before play is resumed")
        << tossedUnder("high-school") + slips + R"({"kind":"illegal-player","team":"home","number":4}
)"_ba   << u"line 8: Play has not been resumed with number 4 of SAL on court: tell the referee, nothing is lost yet. [An illegal substitution costs: the points of the present term of service; from memory"_s;
    QTest::newRow("requests of the time that is taken back")
        << tossedUnder("high-school") + slips + R"({"kind":"rally-won","by":"home"}
{"kind":"time-out","team":"visitors"}
{"kind":"rally-won","by":"home"}
{"kind":"wrong-server","team":"home","served":4,"taken-back-from":8}
)"_ba   << u"line 11: Time-outs and substitutions since then go too: strike entry 9 and those after it, then rule. [Time-outs and substitutions meanwhile are taken back too: yes; from memory"_s;
    QTest::newRow("resumed too late")
        << tossedUnder("international") + slips + R"({"kind":"suspended","reason":"lights","time":"2026-10-10T18:30:00.000Z"}
{"kind":"resumed","go-on":"as-it-stood","time":"2026-10-10T23:30:00.000Z"}
)"_ba   << u"line 9: Play was broken off 5 hours ago, more than 4: the match is played anew, in a file of its own. [Hours within which a match goes on where it stood: 4; FIVB Official Volleyball Rules 2025-2028, 17.3]"_s;
}
// clang-format on

void TestCheck::eachNamesItsLineItsRuleAndItsSource() {
    QFETCH(QByteArray, list);
    QFETCH(QString, said);
    const Folder folder;
    QCOMPARE(folder.run({u"enter"_s, u"-"_s, u"--to"_s, u"a.setfolio"_s}, list).code, 1);
    const Ran ran = folder.run({u"check"_s, u"a.setfolio"_s});
    QVERIFY2(ran.out.contains(u"a.setfolio, "_s + said), qPrintable(ran.out));
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
    const QString shown = u"<b>\u25a1[31m\u25a1%1\\u000a.setfolio"_s;
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
