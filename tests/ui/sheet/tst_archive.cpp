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

namespace {

/// A folder of PDFs, and what programs from outside the project say of them.
class Files {
public:
    void put(const QString& name, const QByteArray& pdf) const {
        QFile file(m_folder.filePath(name + u".pdf"_s));
        if (!file.open(QIODevice::WriteOnly) || file.write(pdf) != pdf.size())
            qFatal("%s cannot be written", qPrintable(name));
    }
    /// Has all files judged: by one Java, since its start takes longer than a file.
    void judge() {
        QStringList jars;
        for (const char* jar :
             {"preflight", "pdfbox2", "xmpbox", "fontbox2", "commons-logging", "javax.activation", "jaxb-api"})
            jars += u"/usr/share/java/%1.jar"_s.arg(QLatin1String(jar));
        m_judgement = run(u"java"_s, {u"-cp"_s, jars.join(u':'), u"org.apache.pdfbox.preflight.Validator_A1b"_s,
                                      u"batch"_s, m_folder.path()});
    }
    /// What was said of a file in that judgement: that it is valid, or why it is not.
    [[nodiscard]] QString judged(const QString& name) const {
        const QString begin = u"The file %1.pdf is "_s.arg(name);
        const qsizetype at = m_judgement.indexOf(begin);
        return at < 0 ? m_judgement : m_judgement.mid(at + begin.size()).section(u"\nThe file "_s, 0, 0).trimmed();
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
    QString m_judgement;
};

} // namespace

/// The archive's form of the PDF, PDF/A-1b (ISO 19005-1), by the judgement of PDFBox's Preflight.
class TestArchive : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
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
    Files m_files;
};

namespace {

const QString valid = u"a valid PDF/A-1b file"_s;

QByteArray withoutDatesAndIdentifier(QByteArray pdf) {
    static const QRegularExpression dates(
        u"\\(D:\\d{14}Z\\)|(?<=Date=\")[0-9TZ:-]+(?=\")|/ID \\[[^\\]]*\\]"_s); // the dictionary's, the packet's
    return QString::fromLatin1(pdf).replace(dates, u"-"_s).toLatin1();
}

} // namespace

void TestArchive::initTestCase() {
    for (const QString& name : sheetSceneNames())
        m_files.put(name, pdfOf(pagesOf(sheetScene(name)), about(name, u"League"_s)).value());
    SheetScene scene = sheetScene(u"demo"_s);
    // one of no plane in use, and half of a pair, which counts as U+FFFD
    scene.heading.opened.teams.home.name = u"Salt\U000EFFFDmarsh "_s + QChar(0xD83D) + u"Herons"_s;
    m_files.put(u"no-font"_s, pdfOf(pagesOf(scene), about(u"Boxes"_s, u"League"_s)).value());
    const QString words = u"<b>A & \"B\"</b> ]]> \uFFFF"_s + QChar(1) + QChar(0xDC00) + u"\n/Type /Catalog\nö 排"_s;
    m_files.put(u"no-xml"_s, demoAs(about(words, words)));
    m_files.put(u"plain"_s, demoAs(about(u"Set"_s, u"League"_s, PdfForm::Plain)));
    m_files.judge();
}

void TestArchive::everySceneIsValid() {
    QVERIFY(sheetSceneNames().size() > 10);
    for (const QString& name : sheetSceneNames())
        QCOMPARE(m_files.judged(name), valid);
}

void TestArchive::charactersThatNoFontHasAreBoxes() {
    QCOMPARE(m_files.judged(u"no-font"_s), valid);
    const QString text = m_files.said(u"pdftotext"_s, {}, u"no-font"_s, {u"-"_s});
    QVERIFY2(text.contains(u"Salt\u25A1marsh \uFFFDHerons"_s), qPrintable(text));
}

void TestArchive::wordsThatXmlHasNoPlaceForDoNoHarm() {
    QCOMPARE(m_files.judged(u"no-xml"_s), valid);
    const QString told = m_files.said(u"pdfinfo"_s, {}, u"no-xml"_s);
    for (const QString& line : {u"Title:           "_s, u"Author:          "_s})
        QVERIFY2(told.contains(line + u"<b>A & \"B\"</b> ]]> \uFFFD/Type /Catalogö 排\n"_s), qPrintable(told));
}

void TestArchive::aPlainPdfPromisesNothing() {
    const QString judged = m_files.judged(u"plain"_s); // so Preflight can say no
    QVERIFY2(judged.startsWith(u"not a valid PDF/A-1b file"_s), qPrintable(judged));
    const QString packet = m_files.said(u"pdfinfo"_s, {u"-meta"_s}, u"plain"_s);
    QVERIFY(packet.contains(u"dc:title"_s) && !packet.contains(u"pdfaid"_s));
    QVERIFY(m_files.said(u"qpdf"_s, {u"--check"_s}, u"plain"_s).contains(u"No syntax or stream encoding errors"_s));
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
