// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/app/program.h"

using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

class TestPrint : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theSheetsOfAllSetsOfAllFilesArePrinted();
    void thePaperIsTheOneNamed_data();
    void thePaperIsTheOneNamed();
    void whatIsPrintedCanBeFoundAndRead();
    void theSameMatchGivesTheSamePdf();
    void aMatchInWhichNoSetHasBegunGivesAnEmptySheet();
    void ifOneFileCannotBeReadNothingIsPrinted_data();
    void ifOneFileCannotBeReadNothingIsPrinted();
    void aTornTailIsSaidAndLeftOut();
    void onAFullDiskTheOldPdfStands();
    void whereNoFileCanBeMadeItSaysSo();
    void namesArePrintedAsTheyStand();

private:
    /// What a tool of poppler says of a PDF.
    static QString saidOf(const QString& pdf, const QString& tool, const QStringList& options = {});
};

QString TestPrint::saidOf(const QString& pdf, const QString& tool, const QStringList& options) {
    QProcess process;
    process.start(tool, options + QStringList{pdf} + (tool == u"pdftotext" ? QStringList{u"-"_s} : QStringList()));
    process.waitForFinished();
    return process.exitCode() == 0 ? QString::fromUtf8(process.readAllStandardOutput()) : u"failed"_s;
}

void TestPrint::theSheetsOfAllSetsOfAllFilesArePrinted() {
    const Folder folder;
    const Ran ran = folder.run({u"print"_s, demoMatch(), demoMatch(), u"--to"_s, u"a.pdf"_s});
    QCOMPARE(ran.err, QString());
    QCOMPARE(ran.out, u"a.pdf: written. Pages: 6.\n"_s);
    QCOMPARE(ran.code, 0);
    QCOMPARE(folder.names(), QStringList{u"a.pdf"_s});
    QVERIFY(saidOf(folder.path(u"a.pdf"_s), u"pdfinfo"_s).contains(u"Pages:           6\n"_s));
    QCOMPARE(saidOf(folder.path(u"a.pdf"_s), u"qpdf"_s, {u"--check"_s}).contains(u"No syntax"_s), true);
}

void TestPrint::thePaperIsTheOneNamed_data() {
    QTest::addColumn<QStringList>("words");
    QTest::addColumn<QSize>("points");
    QTest::newRow("none named") << QStringList() << QSize(792, 612);
    QTest::newRow("letter") << QStringList{u"--paper"_s, u"letter"_s} << QSize(792, 612);
    QTest::newRow("a4") << QStringList{u"--paper"_s, u"a4"_s} << QSize(842, 595);
}

void TestPrint::thePaperIsTheOneNamed() {
    QFETCH(QStringList, words);
    QFETCH(QSize, points);
    const Folder folder;
    QCOMPARE(folder.run(QStringList{u"print"_s, demoMatch(), u"--to"_s, u"a.pdf"_s} + words).code, 0);
    static const QRegularExpression size(u"Page size: +([0-9.]+) x ([0-9.]+) pts"_s);
    const auto match = size.match(saidOf(folder.path(u"a.pdf"_s), u"pdfinfo"_s));
    QVERIFY(match.hasMatch());
    QVERIFY(qAbs(match.captured(1).toDouble() - points.width()) <= 1);
    QVERIFY(qAbs(match.captured(2).toDouble() - points.height()) <= 1);
}

void TestPrint::whatIsPrintedCanBeFoundAndRead() {
    const Folder folder;
    QCOMPARE(folder.run({u"print"_s, demoMatch(), u"--to"_s, u"a.pdf"_s}).code, 0);
    const QString text = saidOf(folder.path(u"a.pdf"_s), u"pdftotext"_s);
    for (const QString& words : {u"Saltmarsh Herons"_s, u"Quarry Ridge Larks"_s, u"Tidewater Hall, Court 2"_s,
                                 u"Estuary and Uplands Schools League"_s, u"Corin Asheby"_s, u"wrong side"_s})
        QVERIFY2(text.contains(words), qPrintable(words));
    const QString fonts = saidOf(folder.path(u"a.pdf"_s), u"pdffonts"_s);
    QVERIFY2(fonts.contains(u"Inter"_s), qPrintable(fonts));
    for (const QString& line : fonts.split(u'\n').mid(2))
        QVERIFY2(line.isEmpty() || line.contains(QStringLiteral("yes no  yes")),
                 qPrintable(line)); // embedded, with a map to text
}

void TestPrint::theSameMatchGivesTheSamePdf() {
    const Folder folder;
    for (const QString& to : {u"a.pdf"_s, u"b.pdf"_s})
        QCOMPARE(folder.run({u"print"_s, demoMatch(), u"--to"_s, to}).code, 0);
    QCOMPARE(contentOf(folder.path(u"a.pdf"_s)), contentOf(folder.path(u"b.pdf"_s)));
}

void TestPrint::aMatchInWhichNoSetHasBegunGivesAnEmptySheet() {
    const Folder folder;
    const QByteArray list = contentOf(demoList()).split('\n').mid(0, 4).join('\n');
    QCOMPARE(folder.run({u"enter"_s, u"-"_s, u"--to"_s, u"a.setfolio"_s}, list).code, 0);
    const Ran ran = folder.run({u"print"_s, u"a.setfolio"_s, u"--to"_s, u"a.pdf"_s});
    QCOMPARE(ran.out, u"a.pdf: written. Pages: 1.\n"_s);
    QVERIFY(saidOf(folder.path(u"a.pdf"_s), u"pdftotext"_s).contains(u"Saltmarsh Herons"_s));
}

void TestPrint::ifOneFileCannotBeReadNothingIsPrinted_data() {
    QTest::addColumn<QByteArray>("bytes");
    QTest::addColumn<QString>("path");
    QTest::addColumn<int>("code");
    QTest::newRow("not there") << QByteArray() << u"nowhere.setfolio"_s << 66;
    QTest::newRow("empty") << QByteArray() << u"a.setfolio"_s << 1;
    QTest::newRow("no match file") << "25-21\n"_ba << u"a.setfolio"_s << 2;
    QTest::newRow("altered") << contentOf(demoMatch()).replace("Tidewater Hall", "Tidewater Mall") << u"a.setfolio"_s
                             << 2;
}

void TestPrint::ifOneFileCannotBeReadNothingIsPrinted() {
    QFETCH(QByteArray, bytes);
    QFETCH(QString, path);
    QFETCH(int, code);
    const Folder folder;
    put(folder.path(u"a.setfolio"_s), bytes);
    const Ran ran = folder.run({u"print"_s, demoMatch(), path, u"--to"_s, u"a.pdf"_s});
    QVERIFY2(ran.err.contains(path), qPrintable(ran.err));
    QCOMPARE(ran.out, QString());
    QCOMPARE(ran.code, code);
    QCOMPARE(folder.names(), QStringList{u"a.setfolio"_s});
}

void TestPrint::aTornTailIsSaidAndLeftOut() {
    const Folder folder;
    put(folder.path(u"a.setfolio"_s), contentOf(demoMatch()) + R"({"seq":381,"ti)");
    const Ran ran = folder.run({u"print"_s, u"a.setfolio"_s, u"--to"_s, u"a.pdf"_s});
    QVERIFY2(ran.err.startsWith(u"setfolio: Line 381 of a.setfolio was cut short"_s), qPrintable(ran.err));
    QCOMPARE(ran.code, 0);
    QCOMPARE(folder.run({u"print"_s, demoMatch(), u"--to"_s, u"b.pdf"_s}).code, 0);
    QCOMPARE(contentOf(folder.path(u"a.pdf"_s)), contentOf(folder.path(u"b.pdf"_s)));
}

void TestPrint::onAFullDiskTheOldPdfStands() {
    const Folder folder;
    put(folder.path(u"a.pdf"_s), "old");
    const Ran ran = folder.runIn(withRoomFor(16), {u"print"_s, demoMatch(), u"--to"_s, u"a.pdf"_s});
    QVERIFY2(ran.err.contains(u"a.pdf cannot be written ("_s), qPrintable(ran.err));
    QCOMPARE(ran.out, QString());
    QCOMPARE(ran.code, 74);
    QCOMPARE(contentOf(folder.path(u"a.pdf"_s)), "old"_ba);
    QCOMPARE(folder.names(), QStringList{u"a.pdf"_s});
}

void TestPrint::whereNoFileCanBeMadeItSaysSo() {
    for (const QString& to : {unwritable(u"a.pdf"_s), u"nowhere/a.pdf"_s, u"/"_s}) {
        const Ran ran = Folder().run({u"print"_s, demoMatch(), u"--to"_s, to});
        QVERIFY2(ran.err.startsWith(u"setfolio: "_s + to + u" cannot be"_s), qPrintable(ran.err));
        QCOMPARE(ran.out, QString());
        QCOMPARE(ran.code, 73);
    }
}

void TestPrint::namesArePrintedAsTheyStand() {
    const Folder folder;
    const QByteArray list = contentOf(demoList()).replace("Saltmarsh Herons", "<b>%1 & Sons</b>");
    QCOMPARE(folder.run({u"enter"_s, u"-"_s, u"--to"_s, u"a"_s}, list).code, 0);
    QCOMPARE(folder.run({u"print"_s, u"a"_s, u"--to"_s, u"a.pdf"_s}).code, 0);
    const QString text = saidOf(folder.path(u"a.pdf"_s), u"pdftotext"_s);
    QVERIFY2(text.contains(u"<b>%1 & Sons</b>"_s), qPrintable(text));
}

QTEST_GUILESS_MAIN(TestPrint)
#include "tst_print.moc"
