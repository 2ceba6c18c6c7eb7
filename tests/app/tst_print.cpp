// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/app/program.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QRegularExpression>

using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

class TestPrint : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theSheetsOfAllSetsOfAllFilesArePrinted();
    void thePaperIsTheOneNamed_data();
    void thePaperIsTheOneNamed();
    void theFormIsTheOneNamed();
    void theInksAreTheOnesNamed();
    void everyNumberOfTheRecordIsFoundOnItsPage();
    void everyNameOfTheRecordIsFound();
    void whatIsPrintedCanBeFoundAndRead();
    void theSameMatchGivesTheSamePdf();
    void aMatchInWhichNoSetHasBegunGivesAnEmptySheet();
    void ifOneFileCannotBeReadNothingIsPrinted_data();
    void ifOneFileCannotBeReadNothingIsPrinted();
    void aTornTailIsSaidAndLeftOut();
    void onAFullDiskTheOldPdfStands();
    void whereNoFileCanBeMadeItSaysSo();
    void namesArePrintedAsTheyStand();
    void theDocumentSaysItsNamesPlainly();
    void withoutNamesNobodyStandsOnASheet();

private:
    /// The words of a text, and how often each stands in it.
    static QMap<QString, int> countedWords(const QString& text);
    /// The numbers and marks that stand on the sheet of an exported set, and those that every sheet has.
    static QString wordsOf(const QJsonObject& set);
    /// What a tool of poppler says of a PDF.
    static QString saidOf(const QString& pdf, const QString& tool, const QStringList& options = {});
};

QString TestPrint::saidOf(const QString& pdf, const QString& tool, const QStringList& options) {
    QProcess process;
    process.start(tool, options + QStringList{pdf} + (tool == u"pdftotext" ? QStringList{u"-"_s} : QStringList()));
    process.waitForFinished();
    return process.exitCode() == 0 ? QString::fromUtf8(process.readAllStandardOutput()) : u"failed"_s;
}

QMap<QString, int> TestPrint::countedWords(const QString& text) {
    static const QRegularExpression word(u"\\w+"_s);
    QMap<QString, int> counted;
    for (auto found = word.globalMatch(text); found.hasNext();)
        ++counted[found.next().captured()];
    return counted;
}

QString TestPrint::wordsOf(const QJsonObject& set) {
    QStringList words;
    const auto add = [&](const QJsonValue& value) { words += value.toVariant().toString(); };
    for (const QString& name : {u"home"_s, u"visitors"_s}) {
        const QJsonObject team = set[u"teams"_s][name].toObject();
        for (const QJsonValue& slot : team[u"slots"_s].toArray())
            for (const QJsonValue& stood : slot[u"numbers"_s].toArray())
                add(stood[u"number"_s]);
        for (const QJsonValue& term : team[u"terms"_s].toArray())
            for (const QJsonValue& mark : term[u"marks"_s].toArray())
                add(mark[u"text"_s]);
        for (const QJsonValue& libero : team[u"liberos"_s].toArray())
            add(libero);
        for (const QJsonValue& timeOut : team[u"time-outs"_s].toArray()) {
            add(timeOut[u"own"_s]);
            add(timeOut[u"opponents"_s]);
        }
        for (int rung = 1; rung <= 36; ++rung) // the running score's own numbers
            add(rung);
        for (int cell = 1; cell <= 18; ++cell) // the substitution counter's
            add(cell);
    }
    for (const QJsonValue& point : set[u"running"_s].toArray())
        add(point[u"opponents"_s]);
    return words.join(u' ');
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
    QTest::addColumn<QByteArray>("locale");
    QTest::addColumn<QString>("points");
    const QString letter = u"792 x 612 pts (letter)"_s, a4 = u"841.89 x 595.276 pts (A4)"_s;
    QTest::newRow("none named, no country") << QStringList() << "C.UTF-8"_ba << letter;
    QTest::newRow("none named, United States") << QStringList() << "en_US.UTF-8"_ba << letter;
    QTest::newRow("none named, Germany") << QStringList() << "de_DE.UTF-8"_ba << a4;
    QTest::newRow("letter in Germany") << QStringList{u"--paper"_s, u"letter"_s} << "de_DE.UTF-8"_ba << letter;
    QTest::newRow("a4 in the United States") << QStringList{u"--paper"_s, u"a4"_s} << "en_US.UTF-8"_ba << a4;
}

void TestPrint::thePaperIsTheOneNamed() {
    QFETCH(QStringList, words);
    QFETCH(QByteArray, locale);
    QFETCH(QString, points);
    const QByteArray before = qgetenv("LC_ALL");
    qputenv("LC_ALL", locale);
    const Folder folder;
    const int code = folder.run(QStringList{u"print"_s, demoMatch(), u"--to"_s, u"a.pdf"_s} + words).code;
    qputenv("LC_ALL", before);
    QCOMPARE(code, 0);
    const QString told = saidOf(folder.path(u"a.pdf"_s), u"pdfinfo"_s);
    QVERIFY2(told.contains(u"Page size:       %1\n"_s.arg(points)), qPrintable(told));
}

void TestPrint::theFormIsTheOneNamed() {
    const Folder folder;
    QCOMPARE(folder.run({u"print"_s, demoMatch(), u"--to"_s, u"a.pdf"_s}).code, 0);
    QCOMPARE(folder.run({u"print"_s, demoMatch(), u"--to"_s, u"b.pdf"_s, u"--as"_s, u"plain"_s}).code, 0);
    const QString archive = saidOf(folder.path(u"a.pdf"_s), u"pdfinfo"_s, {u"-meta"_s});
    QVERIFY2(archive.contains(u"pdfaid:part=\"1\" pdfaid:conformance=\"B\""_s), qPrintable(archive));
    QVERIFY(!saidOf(folder.path(u"b.pdf"_s), u"pdfinfo"_s, {u"-meta"_s}).contains(u"pdfaid"_s));
    const QString told = saidOf(folder.path(u"a.pdf"_s), u"pdfinfo"_s);
    QVERIFY2(told.contains(u"Author:          Estuary and Uplands Schools League\n"_s), qPrintable(told));
}

void TestPrint::theInksAreTheOnesNamed() {
    const Folder folder;
    // Of all pages, drawn small: how many points have a colour.
    const auto coloured = [&](const QStringList& words) {
        const QString pdf = u"a.pdf"_s;
        if (folder.run(QStringList{u"print"_s, demoMatch(), u"--to"_s, pdf} + words).code != 0)
            return -1;
        QProcess process;
        process.start(u"pdftoppm"_s, {u"-r"_s, u"30"_s, u"-singlefile"_s, folder.path(pdf)});
        process.waitForFinished();
        const QByteArray points = process.readAllStandardOutput(); // ends with three bytes a point
        int count = 0;
        for (qsizetype i = points.size() - 3; i > 100; i -= 3)
            count += points.at(i) != points.at(i + 1) || points.at(i) != points.at(i + 2) ? 1 : 0;
        return points.size() > 10000 ? count : -2;
    };
    QVERIFY(coloured({}) > 1000);
    QVERIFY(coloured({u"--inks"_s, u"heather-and-gorse"_s}) > 1000);
    QCOMPARE(coloured({u"--inks"_s, u"greys"_s}), 0);
}

void TestPrint::everyNumberOfTheRecordIsFoundOnItsPage() {
    const Folder folder;
    QCOMPARE(folder.run({u"print"_s, demoMatch(), u"--to"_s, u"a.pdf"_s}).code, 0);
    const Ran exported = folder.run({u"export"_s, demoMatch(), u"--as"_s, u"json"_s});
    const QJsonArray sets = QJsonDocument::fromJson(exported.out.toUtf8())[u"sets"_s].toArray();
    QCOMPARE(sets.size(), 3);
    for (int page = 1; page <= sets.size(); ++page) {
        const QString number = QString::number(page);
        const QString text =
            saidOf(folder.path(u"a.pdf"_s), u"pdftotext"_s, {u"-layout"_s, u"-f"_s, number, u"-l"_s, number});
        const QMap<QString, int> found = countedWords(text);
        const QMap<QString, int> recorded = countedWords(wordsOf(sets.at(page - 1).toObject()));
        QVERIFY(recorded.size() > 36);
        for (auto word = recorded.begin(); word != recorded.end(); ++word)
            QVERIFY2(found.value(word.key()) >= word.value(),
                     qPrintable(u"page %1: %2 is found %3 times, not %4"_s.arg(number, word.key())
                                    .arg(found.value(word.key()))
                                    .arg(word.value())));
    }
}

void TestPrint::everyNameOfTheRecordIsFound() {
    const Folder folder;
    QCOMPARE(folder.run({u"print"_s, demoMatch(), u"--to"_s, u"a.pdf"_s}).code, 0);
    const Ran exported = folder.run({u"export"_s, demoMatch(), u"--as"_s, u"json"_s});
    const QJsonObject match = QJsonDocument::fromJson(exported.out.toUtf8())[u"match"_s].toObject();
    const QString text = saidOf(folder.path(u"a.pdf"_s), u"pdftotext"_s, {u"-layout"_s});
    QStringList names{match[u"competition"_s].toString(), match[u"venue"_s].toString()};
    for (const QString& team : {u"home"_s, u"visitors"_s})
        names += match[u"teams"_s][team][u"name"_s].toString();
    for (const QJsonValue& official : match[u"officials"_s].toArray())
        names += official[u"name"_s].toString();
    QCOMPARE(names.size(), 4 + 7);
    for (const QString& name : names)
        QVERIFY2(!name.isEmpty() && text.contains(name), qPrintable(name));
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

void TestPrint::theDocumentSaysItsNamesPlainly() {
    const Folder folder;
    const QByteArray list = contentOf(demoList())
                                .replace("Saltmarsh Herons", "\u202E<b>Herons")
                                .replace("\"name\":\"Quarry Ridge Larks\",", "")
                                .replace("Estuary and Uplands Schools League", "\u2067Estuary");
    QCOMPARE(folder.run({u"enter"_s, u"-"_s, u"--to"_s, u"a"_s}, list).code, 0);
    QCOMPARE(folder.run({u"print"_s, u"a"_s, u"--to"_s, u"a.pdf"_s}).code, 0);
    const QString told = saidOf(folder.path(u"a.pdf"_s), u"pdfinfo"_s);
    QVERIFY2(told.contains(u"Title:           \u25A1<b>Herons – QRL\n"_s),
             qPrintable(told)); // the code for want of a name
    QVERIFY2(told.contains(u"Author:          \u25A1Estuary\n"_s), qPrintable(told));
}

void TestPrint::withoutNamesNobodyStandsOnASheet() {
    const Folder folder;
    const QString everySheet = u"--sheets=match,set,hand-over,libero,coach,entries,slips"_s;
    QCOMPARE(folder.run({u"print"_s, demoMatch(), u"--to"_s, u"a.pdf"_s, everySheet}).code, 0);
    QCOMPARE(folder.run({u"print"_s, demoMatch(), u"--to"_s, u"b.pdf"_s, everySheet, u"--numbers-only"_s}).code, 0);
    const QString with = saidOf(folder.path(u"a.pdf"_s), u"pdftotext"_s);
    const QString without = saidOf(folder.path(u"b.pdf"_s), u"pdftotext"_s);
    const QJsonObject match =
        QJsonDocument::fromJson(folder.run({u"export"_s, demoMatch(), u"--as"_s, u"json"_s}).out.toUtf8())
            .object()
            .value(u"match")
            .toObject();
    int named = 0;
    for (const QJsonValueConstRef official : match.value(u"officials").toArray())
        for (const QString& part : official.toObject().value(u"name").toString().split(u' ')) {
            QVERIFY2(with.contains(part), qPrintable(part));
            QVERIFY2(!without.contains(part), qPrintable(part));
            ++named;
        }
    QVERIFY(named > 6);
    QVERIFY(without.contains(u"names left out"_s));
    QVERIFY(!with.contains(u"names left out"_s));
    QVERIFY(saidOf(folder.path(u"b.pdf"_s), u"pdfinfo"_s).contains(u"Names of persons were left out"_s));
    QVERIFY(saidOf(folder.path(u"a.pdf"_s), u"pdfinfo"_s).contains(u"This document names persons"_s));
}

QTEST_GUILESS_MAIN(TestPrint)
#include "tst_print.moc"
