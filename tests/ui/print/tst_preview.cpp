// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/dialogmatches.h"
#include "tests/ui/dialogs/hands.h"
#include "ui/look/colours.h"
#include "ui/print/pageview.h"
#include "ui/print/paperwork.h"
#include "ui/print/preview.h"
#include "ui/print/sheetpages.h"

#include <QComboBox>
#include <QLabel>
#include <QPrinter>
#include <QPushButton>
#include <QSettings>
#include <QTemporaryDir>

#include <cerrno>
#include <cmath>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

using namespace testing;

namespace {

const QLocale unitedStates(QLocale::English, QLocale::UnitedStates);
const QLocale germany(QLocale::German, QLocale::Germany);

/// Two sets, the first one won.
MatchBuilder twoSets() {
    MatchBuilder match = setWon();
    match.add(SetEnded{QTime(18, 59)})
        .lineUp(Team::Home, {1, 3, 4, 7, 8, 9})
        .lineUp(Team::Visitors, {2, 4, 5, 8, 9, 10})
        .start()
        .play("hvh");
    return match;
}

/// The contrast of two colours by WCAG 2.2, "relative luminance" and "contrast ratio".
double contrast(const QColor& one, const QColor& other) {
    const auto luminance = [](const QColor& colour) {
        const auto linear = [](double part) {
            return part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
        };
        return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
    };
    const auto [darker, lighter] = std::minmax({luminance(one), luminance(other)});
    return (lighter + 0.05) / (darker + 0.05);
}

class Shown {
public:
    explicit Shown(const QLocale& locale = unitedStates, const FileCalls& calls = systemCalls())
        : dialog({twoSets().record(), twoSets().entries()}, SheetFonts::load().value(), optionsFor(locale, calls)) {
        showActive(dialog);
    }
    [[nodiscard]] PageView& view() { return *dialog.findChild<PageView*>(); }
    [[nodiscard]] QString textOf(const char* label) { return childOf<QLabel>(dialog, label)->text(); }
    [[nodiscard]] QPushButton* button(const char* name) { return childOf<QPushButton>(dialog, name); }
    void click(const char* name) { QTest::mouseClick(button(name), Qt::LeftButton); }
    [[nodiscard]] QString said() { return childOf<QLabel>(dialog, "said")->accessibleName(); }
    [[nodiscard]] bool saidIsProblem() { return childOf<QLabel>(dialog, "said")->property("problem").toBool(); }

    QTemporaryDir folder;
    PrintChoices kept;
    Preview dialog;

private:
    [[nodiscard]] PreviewOptions optionsFor(const QLocale& locale, const FileCalls& calls) {
        PreviewOptions options;
        options.locale = locale;
        options.folder = folder.path();
        options.utcNow = [] { return QDateTime(QDate(2026, 10, 14), QTime(22, 0), Qt::UTC); };
        options.calls = calls;
        options.remember = [this](const PrintChoices& choices) { kept = choices; };
        return options;
    }
};

QByteArray bytesOf(const QString& path) {
    QFile file(path);
    return file.open(QIODevice::ReadOnly) ? file.readAll() : QByteArray();
}

} // namespace

class PreviewTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void thePagesAreCounted();
    void pagesAreTurnedByKeyMouseAndFinger();
    void aSetIsLeftOutAndTakenIn();
    void everyKindOfSheetMayBeChosen();
    void thereIsAlwaysAKindToPrint();
    void namesAreLeftOut();
    void theNameOfThePdfTellsWhatIsInIt_data();
    void theNameOfThePdfTellsWhatIsInIt();
    void thePaperIsTheUsualOneAndMayBeChosen_data();
    void thePaperIsTheUsualOneAndMayBeChosen();
    void theViewGrowsAndShrinksByKeys();
    void aPdfIsWrittenWhereItWasAskedFor();
    void theEndingIsAddedToAName();
    void aCancelledNameWritesNothing();
    void aFolderThatMayNotBeWrittenGivesASentence();
    void aFullDiskGivesASentenceAndLeavesTheOldPdf();
    void theSentenceGoesWhenAnotherPaperIsChosen();
    void aPdfIsForTheArchiveUnlessAPlainOneIsChosen();
    void theInksAreTheOnesChosen();
    void choicesAreKept();
    void choicesAreBegunWith();
    void edgesThatAPrinterLeavesWhiteAreMeasured_data();
    void edgesThatAPrinterLeavesWhiteAreMeasured();
    void aPaperIsKnownByItsSize();
    void theAmberButtonStaysAmberUnderTheFinger();
    void escapeCloses();
};

void PreviewTest::initTestCase() {
    QCoreApplication::setOrganizationName(u"Setfolio"_s); // whose settings are kept
    QCoreApplication::setApplicationName(u"tst_preview"_s);
}

void PreviewTest::thePagesAreCounted() {
    Shown shown;
    QCOMPARE(shown.view().pages().size(), 2U);
    QCOMPARE(shown.textOf("where"), u"1 of 2"_s);
    QVERIFY(!shown.button("back")->isEnabled());
    QVERIFY(shown.button("forward")->isEnabled());
}

void PreviewTest::pagesAreTurnedByKeyMouseAndFinger() {
    Shown shown;
    shown.click("forward");
    QCOMPARE(shown.textOf("where"), u"2 of 2"_s);
    QVERIFY(!shown.button("forward")->isEnabled());
    tap(*shown.button("back"));
    QTRY_COMPARE(shown.textOf("where"), u"1 of 2"_s);
    shown.view().setFocus();
    pressIn(shown.dialog, Qt::Key_PageDown);
    QCOMPARE(shown.view().current(), 1);
    pressIn(shown.dialog, Qt::Key_Home);
    QCOMPARE(shown.view().current(), 0);
    pressIn(shown.dialog, Qt::Key_End);
    QCOMPARE(shown.view().current(), 1);
}

void PreviewTest::aSetIsLeftOutAndTakenIn() {
    Shown shown;
    shown.click("set1");
    QCOMPARE(shown.textOf("where"), u"1 of 1"_s);
    shown.click("set2"); // the last one stays
    QVERIFY(shown.button("set2")->isChecked());
    QCOMPARE(shown.view().pages().size(), 1U);
    tap(*shown.button("set1"));
    QTRY_COMPARE(shown.textOf("where"), u"1 of 2"_s);
}

void PreviewTest::everyKindOfSheetMayBeChosen() {
    Shown shown;
    std::size_t pages = shown.view().pages().size(); // the sheets of the sets are chosen to begin with
    for (const SheetKind kind : allSheetKinds) {
        auto* button = shown.dialog.findChild<QPushButton*>(nameOf(kind) + u"Sheet"_s);
        QVERIFY2(button, qPrintable(nameOf(kind)));
        QCOMPARE(button->isChecked(), kind == SheetKind::Set);
        if (kind == SheetKind::Set)
            continue;
        QTest::mouseClick(button, Qt::LeftButton);
        QVERIFY2(shown.view().pages().size() > pages, qPrintable(nameOf(kind)));
        pages = shown.view().pages().size();
    }
}

void PreviewTest::thereIsAlwaysAKindToPrint() {
    Shown shown;
    shown.click("setSheet");
    QVERIFY(shown.button("setSheet")->isChecked());
    shown.click("slipsSheet");
    shown.click("setSheet");
    QVERIFY(!shown.button("setSheet")->isChecked());
    QVERIFY(!shown.button("set1")->isEnabled()); // a slip belongs to no set that has begun
    QVERIFY(!shown.view().pages().empty());
    tap(*shown.button("liberoSheet"));
    QTRY_VERIFY(shown.button("set1")->isEnabled());
}

void PreviewTest::namesAreLeftOut() {
    MatchBuilder match = twoSets();
    match.add(Officials{{{Role::Scorer, u"Pia Wendle"_s}}});
    PreviewOptions options;
    options.utcNow = [] { return QDateTime(QDate(2026, 10, 14), QTime(22, 0), Qt::UTC); };
    Preview dialog({match.record(), match.entries()}, SheetFonts::load().value(), options);
    showActive(dialog);
    const auto isNamed = [&] {
        const std::vector<Item>& items = dialog.findChild<PageView*>()->pages().front().items;
        return std::ranges::any_of(items, [](const Item& item) {
            const auto* text = std::get_if<TextShape>(&item.shape);
            return text && text->shaped->text == u"Pia Wendle"_s;
        });
    };
    QVERIFY(isNamed());
    QTest::mouseClick(childOf<QPushButton>(dialog, "numbersOnly"), Qt::LeftButton);
    QVERIFY(!isNamed());
    tap(*childOf<QPushButton>(dialog, "numbersOnly"));
    QTRY_VERIFY(isNamed());
}

// clang-format off
void PreviewTest::theNameOfThePdfTellsWhatIsInIt_data() {
    QTest::addColumn<SheetChoice>("choice");
    QTest::addColumn<QString>("ending");
    QTest::newRow("the sets")                  << SheetChoice{{SheetKind::Set}, {1, 2}}                   << u"-QRL.pdf"_s;
    QTest::newRow("one set")                   << SheetChoice{{SheetKind::Set}, {2}}                      << u"-QRL-set-2.pdf"_s;
    QTest::newRow("the page of the match")     << SheetChoice{{SheetKind::Match}, {1}}                    << u"-QRL-match.pdf"_s;
    QTest::newRow("the liberos of a set")      << SheetChoice{{SheetKind::Libero}, {1}}                   << u"-QRL-libero-set-1.pdf"_s;
    QTest::newRow("several kinds")             << SheetChoice{{SheetKind::Set, SheetKind::Match}, {1, 2}} << u"-QRL.pdf"_s;
}
// clang-format on

void PreviewTest::theNameOfThePdfTellsWhatIsInIt() {
    QFETCH(SheetChoice, choice);
    QFETCH(QString, ending);
    const QString name = pdfName(twoSets().record(), choice);
    QVERIFY2(name.endsWith(ending), qPrintable(name));
}

void PreviewTest::thePaperIsTheUsualOneAndMayBeChosen_data() {
    QTest::addColumn<QLocale>("locale");
    QTest::addColumn<QString>("usual");
    QTest::addColumn<QString>("other");
    QTest::newRow("United States") << unitedStates << u"letter"_s << u"a4"_s;
    QTest::newRow("Germany") << germany << u"a4"_s << u"letter"_s;
}

void PreviewTest::thePaperIsTheUsualOneAndMayBeChosen() {
    QFETCH(QLocale, locale);
    QFETCH(QString, usual);
    QFETCH(QString, other);
    Shown shown(locale);
    // ANSI X3.151 Letter, 11 inches; ISO 216 A4, 297 mm: the long side
    const auto longSide = [](const QString& paper) { return paper == u"letter"_s ? 279.4 : 297.0; };
    QCOMPARE(shown.view().pages().front().widthMm, longSide(usual));
    auto* choice = shown.dialog.findChild<QPushButton*>(other);
    QTest::mouseClick(choice, Qt::LeftButton);
    QVERIFY(choice->isChecked());
    QVERIFY(!shown.dialog.findChild<QPushButton*>(usual)->isChecked());
    QCOMPARE(shown.view().pages().front().widthMm, longSide(other));
}

void PreviewTest::theViewGrowsAndShrinksByKeys() {
    Shown shown;
    const double whole = shown.view().scale();
    QVERIFY(shown.button("wholePage")->isChecked());
    pressIn(shown.dialog, Qt::Key_Equal, Qt::ControlModifier);
    QVERIFY(shown.view().scale() > whole);
    QVERIFY(!shown.button("wholePage")->isChecked());
    pressIn(shown.dialog, Qt::Key_0, Qt::ControlModifier);
    QCOMPARE(shown.view().scale(), whole);
    shown.click("pageWidth");
    QVERIFY(shown.view().scale() > whole);
    shown.click("smaller");
    QVERIFY(shown.view().fit() == PageView::Fit::Scale);
}

void PreviewTest::aPdfIsWrittenWhereItWasAskedFor() {
    Shown shown;
    const QString path = shown.folder.filePath(u"sheets.pdf"_s);
    const ChoosingFile choosing(path);
    pressIn(shown.dialog, Qt::Key_S, Qt::ControlModifier);
    QVERIFY(choosing.hasChosen());
    QVERIFY(choosing.proposed().endsWith(u"SAL-QRL.pdf"_s));
    QVERIFY(bytesOf(path).startsWith("%PDF-"));
    QVERIFY(bytesOf(path).contains("%%EOF"));
    QCOMPARE(shown.said(), u"Saved: "_s + path);
    QVERIFY(!shown.saidIsProblem());
}

void PreviewTest::theEndingIsAddedToAName() {
    Shown shown;
    const ChoosingFile choosing(shown.folder.filePath(u"sheets"_s));
    shown.click("savePdf");
    QVERIFY(choosing.hasChosen());
    QVERIFY(bytesOf(shown.folder.filePath(u"sheets.pdf"_s)).startsWith("%PDF-"));
}

void PreviewTest::aCancelledNameWritesNothing() {
    Shown shown;
    const ChoosingFile choosing(QString{});
    shown.click("savePdf");
    QVERIFY(choosing.hasChosen());
    QVERIFY(QDir(shown.folder.path()).isEmpty());
    QVERIFY(!childOf<QLabel>(shown.dialog, "said")->isVisible());
}

void PreviewTest::aFolderThatMayNotBeWrittenGivesASentence() {
    Shown shown;
    const QString path = u"/proc/sheets.pdf"_s; // where nobody can make a file, not even root
    QVERIFY(!shown.dialog.saveTo(path));
    const auto* said = childOf<QLabel>(shown.dialog, "said");
    QVERIFY(said->isVisible());
    QVERIFY2(shown.said().startsWith(path + u" cannot be made"_s), qPrintable(shown.said()));
    QVERIFY(shown.said().endsWith(u'.'));
    QCOMPARE(said->textFormat(), Qt::PlainText);
    QVERIFY(shown.saidIsProblem());
    QTRY_VERIFY(said->heightForWidth(said->width()) <= said->height());
}

void PreviewTest::aFullDiskGivesASentenceAndLeavesTheOldPdf() {
    FileCalls full = systemCalls();
    full.write = [](int, const void*, size_t) -> ssize_t {
        errno = ENOSPC;
        return -1;
    };
    Shown shown(unitedStates, full);
    const QString path = shown.folder.filePath(u"sheets.pdf"_s);
    write(path, "the sheets of an earlier day");
    QVERIFY(!shown.dialog.saveTo(path));
    QVERIFY(shown.saidIsProblem());
    QVERIFY(shown.said().contains(path));
    QCOMPARE(bytesOf(path), QByteArray("the sheets of an earlier day"));
    QCOMPARE(QDir(shown.folder.path()).entryList(QDir::Files | QDir::Hidden), QStringList{u"sheets.pdf"_s});
}

void PreviewTest::theSentenceGoesWhenAnotherPaperIsChosen() {
    Shown shown;
    QVERIFY(shown.dialog.saveTo(shown.folder.filePath(u"sheets.pdf"_s)));
    QVERIFY(childOf<QLabel>(shown.dialog, "said")->isVisible());
    shown.click("a4"); // what was saved is no longer what is shown
    QVERIFY(!childOf<QLabel>(shown.dialog, "said")->isVisible());
}

void PreviewTest::aPdfIsForTheArchiveUnlessAPlainOneIsChosen() {
    Shown shown;
    QVERIFY(shown.button("archivePdf")->isChecked());
    const QString path = shown.folder.filePath(u"sheets.pdf"_s);
    QVERIFY(shown.dialog.saveTo(path));
    QVERIFY(bytesOf(path).contains("pdfaid:part"));
    tap(*shown.button("plainPdf"));
    QTRY_VERIFY(!childOf<QLabel>(shown.dialog, "said")->isVisible());
    QVERIFY(shown.dialog.saveTo(path));
    QVERIFY(!bytesOf(path).contains("pdfaid:part"));
}

void PreviewTest::theInksAreTheOnesChosen() {
    Shown shown;
    const auto colours = [&] {
        std::set<QRgb> found;
        for (const Item& item : shown.view().pages().front().items)
            if (const auto* ring = std::get_if<RingShape>(&item.shape))
                found.insert(ring->stroke.colour);
        return found.size();
    };
    const auto before = colours();
    QVERIFY(before > 1);
    auto* inks = childOf<QComboBox>(shown.dialog, "inks");
    inks->setFocus();
    QTest::keyClick(inks, Qt::Key_End);
    QCOMPARE(inks->currentText(), words(InkSet::BlackOnly));
    QCOMPARE(colours(), 1U);
}

void PreviewTest::choicesAreKept() {
    Shown shown;
    shown.click("a4");
    shown.click("plainPdf");
    auto* inks = childOf<QComboBox>(shown.dialog, "inks");
    inks->setFocus();
    QTest::keyClick(inks, Qt::Key_End);
    const PrintChoices chosen{PaperSize::A4, InkSet::BlackOnly, PdfForm::Plain};
    QVERIFY(shown.kept == chosen);
    remember(chosen);
    QVERIFY(rememberedChoices() == chosen);
    QSettings().setValue(u"print/inks"_s, u"gold"_s); // as another version may have it
    QVERIFY(rememberedChoices().inks == PrintChoices().inks);
    QSettings().remove(u"print"_s);
    QVERIFY(rememberedChoices() == PrintChoices());
}

void PreviewTest::choicesAreBegunWith() {
    PreviewOptions options;
    options.locale = unitedStates;
    options.choices = {PaperSize::A4, InkSet::BlackOnly, PdfForm::Plain};
    const MatchBuilder match = twoSets();
    Preview dialog({match.record(), match.entries()}, SheetFonts::load().value(), options);
    showActive(dialog);
    for (const char* name : {"a4", "plainPdf"})
        QVERIFY(childOf<QPushButton>(dialog, name)->isChecked());
    QCOMPARE(childOf<QComboBox>(dialog, "inks")->currentText(), words(InkSet::BlackOnly));
    QCOMPARE(dialog.findChild<PageView*>()->pages().front().paper, PaperSize::A4);
}

// clang-format off
void PreviewTest::edgesThatAPrinterLeavesWhiteAreMeasured_data() {
    QTest::addColumn<PaperSize>("paper");
    QTest::addColumn<QMarginsF>("edges"); // left, top, right, bottom
    QTest::addColumn<double>("cut");
    // The sheet is 264 mm by 195 mm in the middle: 7.7 and 10.45 mm are left on Letter, 16.5 and 7.5 mm on A4.
    QTest::newRow("none")                << PaperSize::Letter << QMarginsF()                      << 0.0;
    QTest::newRow("just enough, Letter") << PaperSize::Letter << QMarginsF(7.7, 10.45, 7.7, 10.45) << 0.0;
    QTest::newRow("just enough, A4")     << PaperSize::A4     << QMarginsF(16.5, 7.5, 16.5, 7.5)   << 0.0;
    QTest::newRow("one side")            << PaperSize::Letter << QMarginsF(4, 4, 12.7, 4)          << 5.0;
    QTest::newRow("foot")                << PaperSize::A4     << QMarginsF(4, 4, 4, 12.5)          << 5.0;
    QTest::newRow("the worst of two")    << PaperSize::A4     << QMarginsF(17.5, 9.5, 4, 4)        << 2.0;
}
// clang-format on

void PreviewTest::edgesThatAPrinterLeavesWhiteAreMeasured() {
    QFETCH(PaperSize, paper);
    QFETCH(QMarginsF, edges);
    QFETCH(double, cut);
    QVERIFY2(qAbs(cutBy(edges, paper) - cut) < 1e-9, qPrintable(QString::number(cutBy(edges, paper))));
}

void PreviewTest::aPaperIsKnownByItsSize() {
    QPrinter printer;
    printer.setOutputFormat(QPrinter::PdfFormat);
    for (const PaperSize paper : {PaperSize::A4, PaperSize::Letter}) {
        setUp(printer, paper);
        QCOMPARE(paperIn(printer), std::optional(paper));
        QCOMPARE(printer.pageLayout().orientation(), QPageLayout::Landscape);
        QCOMPARE(printer.pageLayout().fullRect(), printer.pageLayout().paintRect()); // nothing scaled, nothing left off
    }
    printer.setPageSize(QPageSize(QPageSize::AnsiA)); // Letter by another name
    QCOMPARE(paperIn(printer), std::optional(PaperSize::Letter));
    printer.setPageSize(QPageSize(QPageSize::A5));
    QCOMPARE(paperIn(printer), std::optional<PaperSize>());
}

void PreviewTest::theAmberButtonStaysAmberUnderTheFinger() {
    Shown shown;
    QPushButton* button = shown.button("print");
    const auto ground = [&] { return QColor(button->grab().toImage().pixel(button->width() / 2, 6)); };
    const QColor before = ground();
    QCOMPARE(before, amber());
    QTest::mousePress(button, Qt::LeftButton);
    const QColor pressed = ground();
    QTest::mouseMove(button, {-50, -50});
    QTest::mouseRelease(button, Qt::LeftButton, {}, {-50, -50}); // beside it: nothing is printed
    QVERIFY(pressed != before);
    QVERIFY2(qAbs(pressed.hue() - before.hue()) <= 3 && pressed.saturation() > 200, qPrintable(pressed.name()));
    QVERIFY(contrast(pressed, onAmber()) >= 4.5);
}

void PreviewTest::escapeCloses() {
    Shown shown;
    pressIn(shown.dialog, Qt::Key_Escape);
    QVERIFY(!shown.dialog.isVisible());
}

} // namespace setfolio

QTEST_MAIN(setfolio::PreviewTest)
#include "tst_preview.moc"
