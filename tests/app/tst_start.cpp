// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/app/program.h"

#include <QElapsedTimer>

using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

/// What setfolio does with no command, with a wrong one, and with no screen.
class TestStart : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void helpNamesTheCommands();
    void whatIsSaidBeforeAnyCommandIsSaidInTheLanguageOfTheSystem_data();
    void whatIsSaidBeforeAnyCommandIsSaidInTheLanguageOfTheSystem();
    void versionIsOneLine();
    void whatIsNotUnderstoodIsSaidWithTheWayToTheHelp_data();
    void whatIsNotUnderstoodIsSaidWithTheWayToTheHelp();
    void withoutAScreenTheWindowIsNotOpened_data();
    void withoutAScreenTheWindowIsNotOpened();
    void withAScreenTheWindowStaysOpen_data();
    void withAScreenTheWindowStaysOpen();
};

void TestStart::helpNamesTheCommands() {
    const Ran ran = Folder().run({u"--help"_s});
    for (const QString& command : {u"print"_s, u"check"_s, u"enter"_s, u"export"_s})
        QVERIFY2(ran.out.contains(u"\nsetfolio %1 "_s.arg(command)), qPrintable(command));
    QCOMPARE(ran.err, QString());
    QCOMPARE(ran.code, 0);
    for (const QString& line : ran.out.split(u'\n'))
        QVERIFY2(line.size() <= 110, qPrintable(line));
}

void TestStart::whatIsSaidBeforeAnyCommandIsSaidInTheLanguageOfTheSystem_data() {
    QTest::addColumn<QString>("locale");
    QTest::addColumn<QStringList>("words");
    QTest::addColumn<QString>("said");
    const QString french = u"fr_FR.UTF-8"_s;
    const QString spanish = u"es_MX.UTF-8"_s;
    QTest::newRow("French, the help") << french << QStringList{u"--help"_s} << u"Setfolio tient la feuille de match"_s;
    QTest::newRow("French, what is not understood") << french << QStringList{u"--nonsense"_s} << u"donne la liste"_s;
    QTest::newRow("French, no screen") << french << QStringList() << u"pas d\u2019\u00e9cran"_s;
    QTest::newRow("Spanish, the help") << spanish << QStringList{u"--help"_s}
                                       << u"el \u00e1rbitro tiene la raz\u00f3n"_s;
    QTest::newRow("Spanish, what is not understood")
        << spanish << QStringList{u"--nonsense"_s} << u"muestra los comandos"_s;
}

void TestStart::whatIsSaidBeforeAnyCommandIsSaidInTheLanguageOfTheSystem() {
    QFETCH(QString, locale);
    QFETCH(QStringList, words);
    QFETCH(QString, said);
    const Ran ran = Folder().runIn(u"exec env LC_ALL=%1 \"$0\" \"$@\""_s.arg(locale), words);
    QVERIFY2((ran.out + ran.err).contains(said), qPrintable(ran.out + ran.err));
    for (const QString& line : ran.out.split(u'\n'))
        QVERIFY2(line.size() <= 110, qPrintable(line));
}

void TestStart::versionIsOneLine() {
    const Ran ran = Folder().run({u"--version"_s});
    static const QRegularExpression line(u"^Setfolio [0-9]+\\.[0-9]+\\.[0-9]+\n$"_s);
    QVERIFY2(line.match(ran.out).hasMatch(), qPrintable(ran.out));
    QCOMPARE(ran.code, 0);
}

void TestStart::whatIsNotUnderstoodIsSaidWithTheWayToTheHelp_data() {
    QTest::addColumn<QStringList>("words");
    QTest::newRow("an unknown option") << QStringList{u"--nonsense"_s};
    QTest::newRow("two files") << QStringList{u"a.setfolio"_s, u"b.setfolio"_s};
    QTest::newRow("nothing to print") << QStringList{u"print"_s, u"--to"_s, u"a.pdf"_s};
    QTest::newRow("nowhere to print to") << QStringList{u"print"_s, u"a.setfolio"_s};
    QTest::newRow("steering words") << QStringList{u"--\u001b[31m"_s};
}

void TestStart::whatIsNotUnderstoodIsSaidWithTheWayToTheHelp() {
    QFETCH(QStringList, words);
    const Ran ran = Folder().run(words);
    QCOMPARE(ran.out, QString());
    QCOMPARE(ran.err.count(u'\n'), 2);
    QVERIFY2(ran.err.endsWith(u"setfolio: setfolio --help lists the commands.\n"_s), qPrintable(ran.err));
    QVERIFY2(!ran.err.contains(u'\u001b'), qPrintable(ran.err));
    QCOMPARE(ran.code, 64);
}

void TestStart::withoutAScreenTheWindowIsNotOpened_data() {
    QTest::addColumn<QStringList>("words");
    QTest::newRow("the start page") << QStringList();
    QTest::newRow("a match") << QStringList{demoMatch()};
}

void TestStart::withoutAScreenTheWindowIsNotOpened() {
    QFETCH(QStringList, words);
    const Ran ran = Folder().run(words);
    QVERIFY2(ran.err.startsWith(u"setfolio: There is no screen"_s), qPrintable(ran.err));
    QCOMPARE(ran.err.count(u'\n'), 1);
    QCOMPARE(ran.code, 69);
}

void TestStart::withAScreenTheWindowStaysOpen_data() {
    QTest::addColumn<QStringList>("words");
    QTest::newRow("the start page") << QStringList();
    QTest::newRow("a match") << QStringList{u"a.setfolio"_s};
}

void TestStart::withAScreenTheWindowStaysOpen() {
    QFETCH(QStringList, words);
    const Folder folder;
    put(folder.path(u"a.setfolio"_s), contentOf(demoMatch()));
    // 124 is timeout's own code for a program that was still there.
    const Ran ran = folder.runIn(u"export QT_QPA_PLATFORM=offscreen; exec timeout 2 \"$0\" \"$@\""_s, words);
    QCOMPARE(ran.code, 124);
    QCOMPARE(contentOf(folder.path(u"a.setfolio"_s)), contentOf(demoMatch()));
}

QTEST_GUILESS_MAIN(TestStart)
#include "tst_start.moc"
