// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/pdf.h"

#include "tests/support/sheetscenes.h"
#include "ui/sheet/compose.h"

#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

/// What programs from outside the project find in the PDF.
class TestPdf : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void pagesHaveTheExactSizeOfThePaper_data();
    void pagesHaveTheExactSizeOfThePaper();
    void namesAndNumbersAreFoundAsText();
    void theLongestNamesAreFoundAsText();
    void allFontsAreEmbedded();
    void theFileIsSound_data();
    void theFileIsSound();
    void theSamePagesGiveTheSameBytes();
    void theDateIsTheOneGiven_data();
    void theDateIsTheOneGiven();
    void nothingIsAPicture();
    void whatCannotBeWrittenIsRefused();

private:
    QByteArray pdfOf(const QString& name, PaperSize paper = PaperSize::Letter) const {
        const SheetScene scene = sheetScene(name);
        const std::vector<Page> pages = composeSet(
            scene.heading, scene.set,
            SheetOptions{.fonts = m_fonts, .paper = paper, .screen = false, .locale = QLocale::c(), .former = {}});
        return setfolio::pdfOf(pages, m_info).value();
    }
    /// What a program of poppler-utils or qpdf says of a PDF.
    QString said(const QByteArray& pdf, const QString& program, const QStringList& before,
                 const QStringList& after = {}) {
        QFile file(m_folder.filePath(QStringLiteral("sheet.pdf")));
        if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size())
            return QStringLiteral("no file");
        file.close();
        QProcess process;
        process.setProcessChannelMode(QProcess::MergedChannels);
        process.start(program, before + QStringList{file.fileName()} + after);
        if (!process.waitForFinished() || process.exitStatus() != QProcess::NormalExit)
            return QStringLiteral("%1 could not be run").arg(program);
        return QString::fromUtf8(process.readAll()) + QStringLiteral("exit %1\n").arg(process.exitCode());
    }

    SheetFonts m_fonts = SheetFonts::load().value();
    PdfInfo m_info{QStringLiteral("Set 2 · SAL–QRL"), QStringLiteral("Setfolio"),
                   QDateTime(QDate(2026, 10, 10), QTime(19, 20), Qt::UTC)};
    QTemporaryDir m_folder;
};

void TestPdf::pagesHaveTheExactSizeOfThePaper_data() {
    QTest::addColumn<PaperSize>("paper");
    QTest::addColumn<QString>("size");
    // Points of 1/72 inch. US Letter is 11 x 8.5 inches; A4 by ISO 216 is 297 x 210 mm, 841.89 x 595.28 points.
    QTest::newRow("US Letter") << PaperSize::Letter
                               << QStringLiteral("MediaBox:     0.00     0.00   792.00   612.00\n");
    QTest::newRow("A4") << PaperSize::A4 << QStringLiteral("MediaBox:     0.00     0.00   841.89   595.28\n");
}

void TestPdf::pagesHaveTheExactSizeOfThePaper() {
    QFETCH(PaperSize, paper);
    QFETCH(QString, size);
    const QString info = said(pdfOf(QStringLiteral("two-pages"), paper), QStringLiteral("pdfinfo"),
                              {QStringLiteral("-box"), QStringLiteral("-l"), QStringLiteral("-1")});
    QCOMPARE(info.count(QStringLiteral(" size: ")), 3); // two pages, and the file's own
    QCOMPARE(info.simplified().count(size.simplified()), 2);
    QVERIFY(info.contains(QStringLiteral("Set 2 · SAL–QRL")));
}

void TestPdf::namesAndNumbersAreFoundAsText() {
    const QString text = said(pdfOf(QStringLiteral("demo")), QStringLiteral("pdftotext"), {}, {QStringLiteral("-")});
    for (const char* words : {"Saltmarsh Herons", "Quarry Ridge Larks", "Estuary and Uplands Schools League",
                              "Orla Vantongeren", "Sat 10 Oct 2026", "18:30", "6–15", "22–21", "23/1",
                              "Rally 28: SAL 11 struck, replay.", "31 min", "Line judge 2"})
        QVERIFY2(text.contains(QString::fromUtf8(words)), words);
    const QString names = said(pdfOf(QStringLiteral("names")), QStringLiteral("pdftotext"), {}, {QStringLiteral("-")});
    QVERIFY(names.contains(QStringLiteral("\u05D8\u05D5\u05D1\u05D9\u05D4"))); // in the order it is read
}

void TestPdf::theLongestNamesAreFoundAsText() {
    // Letters that join stand there as the forms in which they are drawn, which Unicode makes the same as the letters.
    const auto packed = [](const QString& text) {
        static const QRegularExpression unseen(QStringLiteral("[\\s\\x{202A}-\\x{202E}]"));
        // Inter has one glyph for the iota of Greek and that of Latin, which the writer takes it for.
        return text.normalized(QString::NormalizationForm_KC).replace(QChar(0x0269), QChar(0x03B9)).remove(unseen);
    };
    const QString text = packed(said(pdfOf(QStringLiteral("longest-names")), QStringLiteral("pdftotext"),
                                     {QStringLiteral("-raw")}, {QStringLiteral("-")}));
    const MatchHeading heading = sheetScene(QStringLiteral("longest-names")).heading;
    QStringList names{heading.opened.competition, heading.opened.division, heading.opened.venue,
                      heading.opened.teams.home.name, heading.opened.teams.visitors.name};
    for (const Official& official : heading.officials)
        names += official.name;
    QCOMPARE(names.size(), 14);
    for (QString& name : names) {
        name.replace(QStringLiteral("\U00010380"), QStringLiteral("\u25A1")); // a letter that no font has
        // Words from right to left stand in the file as they do on the page.
        for (const QString& part : name.isRightToLeft() ? name.split(u' ') : QStringList{name})
            QVERIFY2(text.contains(packed(part)), qPrintable(part));
    }
}

void TestPdf::allFontsAreEmbedded() {
    for (const QString& name : {QStringLiteral("demo"), QStringLiteral("names"), QStringLiteral("longest-names")}) {
        const QStringList lines = said(pdfOf(name), QStringLiteral("pdffonts"), {}).split(u'\n', Qt::SkipEmptyParts);
        QVERIFY(lines.size() >= 2 + 4);
        QVERIFY(lines.at(2).startsWith(QStringLiteral("Inter-")));
        for (const QString& line : lines.mid(2, lines.size() - 3)) { // two lines of heads, one with the exit code
            const QStringList words = line.simplified().split(u' ');
            QCOMPARE(words.at(words.size() - 5), QStringLiteral("yes")); // emb
            QCOMPARE(words.at(words.size() - 3), QStringLiteral("yes")); // uni
        }
    }
}

void TestPdf::theFileIsSound_data() {
    QTest::addColumn<QString>("name");
    for (const QString& name : sheetSceneNames())
        QTest::newRow(qPrintable(name)) << name;
}

void TestPdf::theFileIsSound() {
    QFETCH(QString, name);
    const QString checked = said(pdfOf(name), QStringLiteral("qpdf"), {QStringLiteral("--check")});
    QVERIFY2(checked.endsWith(QStringLiteral("exit 0\n")), qPrintable(checked));
    QVERIFY(!checked.contains(QStringLiteral("WARNING")));
}

void TestPdf::theSamePagesGiveTheSameBytes() {
    const QByteArray first = pdfOf(QStringLiteral("demo"));
    QTest::qWait(1100); // another second on the clock
    QVERIFY(pdfOf(QStringLiteral("demo")) == first);
    QVERIFY(pdfOf(QStringLiteral("live")) != first);
}

void TestPdf::theDateIsTheOneGiven_data() {
    QTest::addColumn<QByteArray>("zone");
    for (const char* zone : {"UTC", "Europe/Berlin", "America/St_Johns"})
        QTest::newRow(zone) << QByteArray(zone);
}

void TestPdf::theDateIsTheOneGiven() {
    QFETCH(QByteArray, zone);
    qputenv("TZ", zone);
    tzset();
    const QByteArray pdf = pdfOf(QStringLiteral("demo"));
    qputenv("TZ", "UTC");
    tzset();
    QVERIFY(pdf.contains("/CreationDate (D:20261010192000"));
    const QString checked = said(pdf, QStringLiteral("qpdf"), {QStringLiteral("--check")});
    QVERIFY2(checked.endsWith(QStringLiteral("exit 0\n")), qPrintable(checked));
}

void TestPdf::nothingIsAPicture() {
    const QString images = said(pdfOf(QStringLiteral("demo")), QStringLiteral("pdfimages"), {QStringLiteral("-list")});
    QCOMPARE(images.split(u'\n', Qt::SkipEmptyParts).size(), 3); // two lines of heads and the exit code
}

void TestPdf::whatCannotBeWrittenIsRefused() {
    QCOMPARE(setfolio::pdfOf({}, m_info).error(), PdfError{PdfError::Code::NoPages});
    const SheetScene scene = sheetScene(QStringLiteral("demo"));
    const std::vector<Page> pages =
        composeSet(scene.heading, scene.set,
                   SheetOptions{.fonts = m_fonts, .paper = {}, .screen = false, .locale = QLocale::c(), .former = {}});
    QCOMPARE(setfolio::pdfOf(pages, {QString(), QString(), QDateTime()}).error(), PdfError{PdfError::Code::NoDate});
}

QTEST_MAIN(TestPdf)
#include "tst_pdf.moc"
