// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/sheetscenes.h"
#include "ui/sheet/compose.h"
#include "ui/sheet/pdf.h"

#include <QDir>
#include <QProcess>
#include <QRegularExpression>
#include <QTemporaryDir>
#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

/// The archive's form of the PDF, PDF/A-1b (ISO 19005-1), by the judgement of PDFBox's Preflight.
class TestArchive : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everySceneIsValid();
    void charactersThatNoFontHasAreBoxes();
    void wordsThatXmlHasNoPlaceForDoNoHarm();
    void aPlainPdfPromisesNothing();
    void whatItSaysOfItselfIsWhatItWasTold();
    void onlyDatesAndTheIdentifierTellTwoFilesApart();

private:
    std::vector<Page> pagesOf(const SheetScene& scene) const {
        return composeSet(scene.heading, scene.set,
                          SheetOptions{.fonts = m_fonts,
                                       .paper = scene.a4 ? PaperSize::A4 : PaperSize::Letter,
                                       .screen = scene.screen,
                                       .former = {}});
    }
    QByteArray demoAs(const PdfInfo& info) const { return pdfOf(pagesOf(sheetScene(u"demo"_s)), info).value(); }
    PdfInfo about(const QString& title, const QString& author, PdfForm form = PdfForm::Archive) const {
        return {title, author, QDateTime(QDate(2026, 10, 10), QTime(19, 20), Qt::UTC), form};
    }

    SheetFonts m_fonts = SheetFonts::load().value();
};

namespace {

/// A folder of PDFs, and what programs from outside the project say of them.
class Files {
public:
    void put(const QString& name, const QByteArray& pdf) const {
        QFile file(m_folder.filePath(name + u".pdf"_s));
        if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size())
            qFatal("%s cannot be written", qPrintable(name));
    }
    /// What is said of each file that is not valid, and how many were looked at: one Java for all, since its start
    /// takes longer than a file.
    [[nodiscard]] QString judged() const {
        QStringList jars;
        for (const char* jar :
             {"preflight", "pdfbox2", "xmpbox", "fontbox2", "commons-logging", "javax.activation", "jaxb-api"})
            jars += u"/usr/share/java/%1.jar"_s.arg(QLatin1String(jar));
        const QString said = run(u"java"_s, {u"-cp"_s, jars.join(u':'), u"org.apache.pdfbox.preflight.Validator_A1b"_s,
                                             u"batch"_s, m_folder.path()});
        static const QRegularExpression valid(u"The file \\S+ is a valid PDF/A-1b file\\s*"_s);
        return u"valid: %1. %2"_s.arg(said.count(valid)).arg(QString(said).remove(valid)).trimmed();
    }
    [[nodiscard]] QString said(const QString& program, const QStringList& before, const QString& name,
                               const QStringList& after = {}) const {
        return run(program, before + QStringList{m_folder.filePath(name + u".pdf"_s)} + after);
    }

private:
    static QString run(const QString& program, const QStringList& words) {
        QProcess process;
        process.start(program, words);
        if (!process.waitForFinished(120'000) || process.exitStatus() != QProcess::NormalExit)
            return u"%1 could not be run"_s.arg(program);
        return QString::fromUtf8(process.readAllStandardOutput());
    }

    QTemporaryDir m_folder;
};

QByteArray withoutDatesAndIdentifier(QByteArray pdf) {
    static const QRegularExpression dates(
        u"\\(D:\\d{14}Z\\)|(?<=Date=\")[0-9TZ:-]+(?=\")|/ID \\[[^\\]]*\\]"_s); // the dictionary's, the packet's
    return QString::fromLatin1(pdf).replace(dates, u"-"_s).toLatin1();
}

} // namespace

void TestArchive::everySceneIsValid() {
    const Files files;
    const QStringList names = sheetSceneNames();
    for (const QString& name : names)
        files.put(name, pdfOf(pagesOf(sheetScene(name)), about(name, u"League"_s)).value());
    QCOMPARE(files.judged(), u"valid: %1."_s.arg(names.size()));
}

void TestArchive::charactersThatNoFontHasAreBoxes() {
    SheetScene scene = sheetScene(u"demo"_s);
    // one of no plane in use, and half of a pair, which counts as U+FFFD
    scene.heading.opened.teams.home.name = u"Salt\U000EFFFDmarsh "_s + QChar(0xD83D) + u"Herons"_s;
    const Files files;
    files.put(u"boxes"_s, pdfOf(pagesOf(scene), about(u"Boxes"_s, u"League"_s)).value());
    QCOMPARE(files.judged(), u"valid: 1."_s);
    const QString text = files.said(u"pdftotext"_s, {}, u"boxes"_s, {u"-"_s});
    QVERIFY2(text.contains(u"Salt\u25A1marsh \uFFFDHerons"_s), qPrintable(text));
}

void TestArchive::wordsThatXmlHasNoPlaceForDoNoHarm() {
    const Files files;
    const QString words = u"<b>A & \"B\"</b> ]]> \uFFFF"_s + QChar(1) + QChar(0xDC00) + u"\n/Type /Catalog\nö 排"_s;
    files.put(u"words"_s, demoAs(about(words, words)));
    QCOMPARE(files.judged(), u"valid: 1."_s);
    const QString told = files.said(u"pdfinfo"_s, {}, u"words"_s);
    for (const QString& line : {u"Title:           "_s, u"Author:          "_s})
        QVERIFY2(told.contains(line + u"<b>A & \"B\"</b> ]]> \uFFFD/Type /Catalogö 排\n"_s), qPrintable(told));
}

void TestArchive::aPlainPdfPromisesNothing() {
    const Files files;
    files.put(u"plain"_s, demoAs(about(u"Set"_s, u"League"_s, PdfForm::Plain)));
    QVERIFY2(files.judged().startsWith(u"valid: 0."_s), qPrintable(files.judged())); // so it can say no
    QVERIFY(files.said(u"pdfinfo"_s, {u"-meta"_s}, u"plain"_s).contains(u"dc:title"_s));
    QVERIFY(!files.said(u"pdfinfo"_s, {u"-meta"_s}, u"plain"_s).contains(u"pdfaid"_s));
    QVERIFY(files.said(u"qpdf"_s, {u"--check"_s}, u"plain"_s).contains(u"No syntax or stream encoding errors"_s));
}

void TestArchive::whatItSaysOfItselfIsWhatItWasTold() {
    const Files files;
    files.put(u"a"_s, demoAs(about(u"Herons – Larks"_s, u"Estuary League"_s)));
    const QString told = files.said(u"pdfinfo"_s, {u"-isodates"_s}, u"a"_s);
    for (const char* line :
         {"Title:           Herons – Larks\n", "Author:          Estuary League\n", "Creator:         Setfolio ",
          "CreationDate:    2026-10-10T19:20:00Z\n", "ModDate:         2026-10-10T19:20:00Z\n"})
        QVERIFY2(told.contains(QString::fromUtf8(line)), qPrintable(told));
    QVERIFY(files.said(u"qpdf"_s, {u"--json"_s}, u"a"_s).contains(u"\"/Lang\": \"u:en\""_s));
}

void TestArchive::onlyDatesAndTheIdentifierTellTwoFilesApart() {
    PdfInfo info = about(u"Set"_s, u"League"_s);
    const QByteArray first = demoAs(info);
    QCOMPARE(demoAs(info), first);
    info.created = info.created.addYears(1).addSecs(4321);
    const QByteArray later = demoAs(info);
    QVERIFY(later != first);
    QVERIFY(withoutDatesAndIdentifier(later) == withoutDatesAndIdentifier(first));
}

QTEST_MAIN(TestArchive)
#include "tst_archive.moc"
