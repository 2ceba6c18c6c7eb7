// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/exportcsv.h"
#include "core/record/nameless.h"
#include "tests/support/matchbuilder.h"

#include <QtTest>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

/// The table for a spreadsheet, by RFC 4180, section 2; what a spreadsheet might run is from memory.
class TestExportCsv : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aCellIsQuotedOrMadeHarmless_data() {
        QTest::addColumn<QString>("text");
        QTest::addColumn<QString>("cell");
        // clang-format off
        QTest::newRow("plain words")                       << u"Ida Bream"_s     << u"Ida Bream"_s;
        QTest::newRow("nothing")                           << QString()          << QString();
        QTest::newRow("a comma; RFC 4180, 2.6")            << u"a, b"_s          << u"\"a, b\""_s;
        QTest::newRow("a quotation mark; RFC 4180, 2.7")   << u"the \"8\""_s     << u"\"the \"\"8\"\"\""_s;
        QTest::newRow("a line feed; RFC 4180, 2.6")        << u"a\nb"_s          << u"\"a\nb\""_s;
        QTest::newRow("equals sign: a formula")            << u"=1+1"_s          << u"'=1+1"_s;
        QTest::newRow("plus sign: a formula")              << u"+1"_s            << u"'+1"_s;
        QTest::newRow("minus sign: a formula")             << u"-1"_s            << u"'-1"_s;
        QTest::newRow("at sign: a formula")                << u"@SUM(A1)"_s      << u"'@SUM(A1)"_s;
        QTest::newRow("tab before a formula")              << u"\t=1"_s          << u"\"'\t'=1\""_s;
        QTest::newRow("carriage return before a formula")  << u"\r=1"_s          << u"\u25A1=1"_s;
        QTest::newRow("a formula with a quotation mark")   << u"=HYPERLINK(\"a\",\"b\")"_s << u"\"'=HYPERLINK(\"\"a\"\",\"\"b\"\")\""_s;
        QTest::newRow("a formula behind another separator") << u"a;=1;b"_s       << u"\"a;'=1;b\""_s;
        QTest::newRow("a formula on the next line")        << u"a\n+1"_s         << u"\"a\n'+1\""_s;
        QTest::newRow("a wide equals sign")                << u"\uFF1D1"_s       << u"'\uFF1D1"_s;
        QTest::newRow("what turns words round")            << u"a\u202Eb"_s      << u"a\u25A1b"_s;
        QTest::newRow("a sign in the middle")              << u"a=b"_s           << u"a=b"_s;
        // clang-format on
    }
    void aCellIsQuotedOrMadeHarmless() {
        QFETCH(QString, text);
        QTEST(csvCell(text), "cell");
    }

    void everyEntryHasALineWithTheScoreAfterIt() {
        MatchBuilder match;
        match.started().play("hv").undo().add(Remark{u"=cmd, \"x\""_s});
        const QStringList lines = QString::fromUtf8(csvOf(match.entries())).split(u"\r\n"_s);
        QCOMPARE(lines.front(), u"entry,time,stands,set,kind,team,home,visitors,details,sentence,overruled,names"_s);
        QCOMPARE(lines.size(), 1 + 8 + 1); // the strike has no line: what it struck says so
        QCOMPARE(lines.at(3), u"3,2026-10-10T18:00:03.000Z,yes,1,line-up,home,0,0,"
                              "\"{\"\"liberos\"\":[9],\"\"positions\"\":[1,2,3,4,5,6]}\",,,given"_s);
        QVERIFY(lines.at(6).startsWith(u"6,2026-10-10T18:00:06.000Z,yes,1,rally-won,,1,0,"_s));
        QVERIFY(lines.at(7).startsWith(u"7,2026-10-10T18:00:07.000Z,no,1,rally-won,,1,0,"_s));
        QVERIFY(lines.at(8).contains(u",\"'=cmd, \"\"x\"\"\",,given"_s));
        QVERIFY(lines.back().isEmpty());
    }

    void itSaysThatNamesAreLeftOut() {
        MatchBuilder match;
        match.started();
        const QStringList lines = QString::fromUtf8(csvOf(withoutNames(match.entries()))).split(u"\r\n"_s);
        for (const QString& line : lines.mid(1, 5))
            QVERIFY2(line.endsWith(u",left out"_s), qPrintable(line));
    }
};

QTEST_APPLESS_MAIN(TestExportCsv)
#include "tst_exportcsv.moc"
