// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/print/preview.h"

#include "ui/dialogs/dropfields.h"
#include "ui/dialogs/pieces.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/print/pageview.h"
#include "ui/print/paperwork.h"
#include "ui/print/sheetchooser.h"
#include "ui/print/sheetpages.h"
#include "ui/print/viewbar.h"
#include "ui/wording/errorwords.h"

#include <QButtonGroup>
#include <QComboBox>
#include <QDir>
#include <QFileDialog>
#include <QHBoxLayout>
#include <QLabel>
#include <QMessageBox>
#include <QPrintDialog>
#include <QPrinter>
#include <QPushButton>
#include <QScrollArea>
#include <QShortcut>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr int sideWidth = 316;

SheetChoice firstChoice(const MatchRecord& record, SheetChoice choice) {
    if (choice.kinds.empty())
        choice.kinds = usualSheets(record);
    return choice;
}

QLabel* head(const QString& text) {
    auto* label = pieces::explanation(text);
    label->setContentsMargins(0, 6, 0, 0);
    return label;
}

} // namespace

Preview::Preview(const PrintedMatch& match, const SheetFonts& fonts, const PreviewOptions& options, QWidget* parent)
    : QDialog(parent),
      m_record(match.record),
      m_entries(match.entries.begin(), match.entries.end()),
      m_choices(options.choices),
      m_sheet{.fonts = fonts,
              .paper = options.choices.paper.value_or(usualPaper(options.locale)),
              .locale = options.locale,
              .former = {},
              .inks = options.choices.inks},
      m_options(options),
      m_sheets(new SheetChooser(m_record, firstChoice(m_record, options.sheets))),
      m_view(new PageView),
      m_paperButtons(new QButtonGroup(this)),
      m_formButtons(new QButtonGroup(this)) {
    setWindowTitle(tr("Print"));
    setWindowFlag(Qt::WindowMaximizeButtonHint);
    dress(*this);
    auto* row = new QHBoxLayout;
    row->setContentsMargins(16, 16, 16, 16);
    row->setSpacing(16);
    row->addWidget(makeSide());
    row->addLayout(makeShown(), 1);
    pieces::fillWith(*this, row);
    addKeys();
    giveRoom(*this, QSize(1300, 690));
    compose();
    m_view->setFocus();
}

bool Preview::saveTo(const QString& path) {
    return save(path, m_view->pages());
}

bool Preview::printOn(QPrinter& printer) {
    // another paper may have been chosen for the printer; the drawing is made for it, never scaled to it
    if (const auto paper = paperIn(printer); paper && *paper != m_sheet.paper)
        choosePaper(*paper);
    if (printer.outputFormat() == QPrinter::PdfFormat && !printer.outputFileName().isEmpty())
        return save(
            printer.outputFileName(),
            pagesInRange(printer, m_view->pages())); // our own writer tells of a full disk, the printer's does not
    setUp(printer, m_sheet.paper);
    const bool printed = printPages(printer, m_view->pages());
    if (printed)
        say(tr("Sent to %1.").arg(printer.printerName()), false);
    else
        say(tr("The printer %1 did not take the sheets: look whether it is ready, or save them as a PDF.")
                .arg(printer.printerName()),
            true);
    return printed;
}

QWidget* Preview::makeSide() {
    auto* side = new QScrollArea; // with large text there is more than fits
    side->setFixedWidth(scaled(sideWidth));
    side->setFrameShape(QFrame::NoFrame);
    side->setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    side->setWidgetResizable(true);
    side->setWidget(makeChoices());
    return side;
}

QWidget* Preview::makeChoices() {
    auto* choices = new QWidget;
    auto* column = new QVBoxLayout(choices);
    column->setContentsMargins(10, 6, 10, 10);
    column->setSpacing(6);
    column->addWidget(pieces::heading(tr("Print"), 22));
    column->addWidget(m_sheets);
    addPapers(*column);
    addInks(*column);
    addForms(*column);
    column->addStretch();
    connect(m_sheets, &SheetChooser::changed, this, &Preview::compose);
    return choices;
}

QBoxLayout* Preview::makeShown() {
    m_said = new QLabel;
    m_said->setObjectName(u"said"_s);
    m_said->setTextFormat(Qt::PlainText);
    m_said->setWordWrap(true);
    auto* column = new QVBoxLayout;
    column->setSpacing(8);
    column->addWidget(new ViewBar(*m_view));
    column->addWidget(m_view, 1);
    column->addWidget(m_said); // under the pages, where a long path has room
    column->addLayout(makeWaysOut());
    return column;
}

QBoxLayout* Preview::makeWaysOut() {
    auto* print = pieces::button(tr("Print…"), u"print"_s);
    makePrimary(*print);
    auto* save = pieces::button(tr("Save as PDF…"), u"savePdf"_s);
    auto* close = pieces::button(tr("Close"), u"close"_s);
    auto* numbersOnly = pieces::toggle(tr("Numbers only"), u"numbersOnly"_s);
    numbersOnly->setToolTip(tr("Leaves out all names of persons"));
    auto* row = new QHBoxLayout;
    row->addWidget(numbersOnly);
    row->addStretch();
    connect(numbersOnly, &QPushButton::toggled, m_sheets, &SheetChooser::leaveNamesOut);
    for (QPushButton* button : {close, save, print})
        row->addWidget(button);
    connect(print, &QPushButton::clicked, this, &Preview::askForPrinter);
    connect(save, &QPushButton::clicked, this, &Preview::askForPdf);
    connect(close, &QPushButton::clicked, this, &QDialog::reject);
    return row;
}

void Preview::addPapers(QBoxLayout& column) {
    column.addWidget(head(tr("Paper")));
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    auto* letter = pieces::toggle(tr("Letter"), u"letter"_s);
    auto* a4 = pieces::toggle(tr("A4"), u"a4"_s);
    m_paperButtons->addButton(letter, static_cast<int>(PaperSize::Letter));
    m_paperButtons->addButton(a4, static_cast<int>(PaperSize::A4));
    row->addWidget(letter);
    row->addWidget(a4);
    column.addLayout(row);
    m_paperButtons->button(static_cast<int>(m_sheet.paper))->setChecked(true);
    connect(m_paperButtons, &QButtonGroup::idClicked, this, [this](int id) {
        m_choices.paper = static_cast<PaperSize>(id);
        keepChoices();
        choosePaper(*m_choices.paper);
    });
}

void Preview::addInks(QBoxLayout& column) {
    column.addWidget(head(tr("Inks")));
    m_inks = new ChoiceField;
    m_inks->setObjectName(u"inks"_s);
    m_inks->setAccessibleName(tr("Inks"));
    for (const InkSet inks : allInkSets)
        m_inks->addItem(words(inks));
    m_inks->setCurrentIndex(static_cast<int>(m_sheet.inks));
    column.addWidget(m_inks);
    connect(m_inks, &QComboBox::activated, this, [this](int index) {
        m_sheet.inks = m_choices.inks = static_cast<InkSet>(index);
        keepChoices();
        compose();
    });
}

void Preview::addForms(QBoxLayout& column) {
    column.addWidget(head(tr("PDF")));
    auto* row = new QHBoxLayout;
    row->setSpacing(6);
    auto* archive = pieces::toggle(tr("Archive"), u"archivePdf"_s);
    archive->setToolTip(tr("PDF/A-1b: reads the same in many years"));
    auto* plain = pieces::toggle(tr("Plain"), u"plainPdf"_s);
    m_formButtons->addButton(archive, static_cast<int>(PdfForm::Archive));
    m_formButtons->addButton(plain, static_cast<int>(PdfForm::Plain));
    row->addWidget(archive);
    row->addWidget(plain);
    column.addLayout(row);
    m_formButtons->button(static_cast<int>(m_choices.form))->setChecked(true);
    connect(m_formButtons, &QButtonGroup::idClicked, this, [this](int id) {
        m_choices.form = static_cast<PdfForm>(id);
        keepChoices();
        say({}, false);
    });
}

void Preview::addKeys() {
    const auto key = [this](const QKeySequence& keys, auto act) {
        connect(new QShortcut(keys, this), &QShortcut::activated, this, act);
    };
    key(QKeySequence::Print, [this] { askForPrinter(); });
    key(QKeySequence::Save, [this] { askForPdf(); });
    key(QKeySequence::ZoomIn, [this] { m_view->zoom(1); });
    key(QKeySequence(Qt::CTRL | Qt::Key_Equal), [this] { m_view->zoom(1); });
    key(QKeySequence::ZoomOut, [this] { m_view->zoom(-1); });
    key(QKeySequence(Qt::CTRL | Qt::Key_0), [this] { m_view->setFit(PageView::Fit::WholePage); });
}

void Preview::choosePaper(PaperSize paper) {
    m_sheet.paper = paper;
    m_paperButtons->button(static_cast<int>(paper))->setChecked(true);
    compose();
}

void Preview::compose() {
    m_view->setPages(composeSheets({m_record, m_entries}, m_sheets->choice(), m_sheet));
    say({}, false);
}

void Preview::keepChoices() {
    if (m_options.remember)
        m_options.remember(m_choices);
}

void Preview::askForPdf() {
    const QString proposed = QDir(m_options.folder).filePath(pdfName(m_record, m_sheets->choice()));
    QString path = QFileDialog::getSaveFileName(this, tr("Save as PDF"), proposed, tr("PDF (*.pdf)"));
    if (path.isEmpty())
        return;
    if (!path.endsWith(u".pdf"_s, Qt::CaseInsensitive))
        path += u".pdf"_s;
    saveTo(path);
}

void Preview::askForPrinter() {
    QPrinter printer(QPrinter::HighResolution);
    setUp(printer, m_sheet.paper);
    printer.setDocName(pdfName(m_record, m_sheets->choice()).chopped(4));
    printer.setFromTo(1, static_cast<int>(m_view->pages().size()));
    QPrintDialog dialog(&printer, this);
    dialog.setWindowTitle(tr("Print"));
    dialog.setOption(QAbstractPrintDialog::PrintPageRange);
    dialog.setMinMax(1, static_cast<int>(m_view->pages().size()));
    if (dialog.exec() == QDialog::Accepted && settlePaper(printer) && mayBeCut(printer))
        printOn(printer);
}

bool Preview::settlePaper(QPrinter& printer) {
    const auto paper = paperIn(printer);
    if (!paper || *paper == m_sheet.paper)
        return true;
    const auto name = [](PaperSize size) { return size == PaperSize::Letter ? tr("Letter") : tr("A4"); };
    QMessageBox box(QMessageBox::Question, tr("Print"),
                    tr("%1 is set to %2, and the sheets are drawn for %3. Which paper is in it?")
                        .arg(printer.printerName(), name(*paper), name(m_sheet.paper)),
                    QMessageBox::Cancel, this);
    box.setTextFormat(Qt::PlainText);
    const auto* ours = box.addButton(name(m_sheet.paper), QMessageBox::AcceptRole);
    const auto* printers = box.addButton(name(*paper), QMessageBox::AcceptRole);
    box.exec();
    if (box.clickedButton() == ours)
        setUp(printer, m_sheet.paper);
    return box.clickedButton() == ours || box.clickedButton() == printers;
}

bool Preview::mayBeCut(const QPrinter& printer) {
    const PaperSize paper = paperIn(printer).value_or(m_sheet.paper);
    const double cut = cutBy(whiteEdges(printer.printerName(), paper), paper);
    if (cut <= 0)
        return true;
    QMessageBox box(
        QMessageBox::Warning, tr("Print"),
        tr("%1 cannot print near enough to the edge of this paper: up to %2 mm of the sheet would be missing "
           "there. Another paper or printer may have room for all of it.")
            .arg(printer.printerName(), m_options.locale.toString(cut, 'f', 1)),
        QMessageBox::Cancel, this);
    box.setTextFormat(Qt::PlainText);
    const auto* anyway = box.addButton(tr("Print all the same"), QMessageBox::AcceptRole);
    box.exec();
    return box.clickedButton() == anyway;
}

bool Preview::save(const QString& path, const std::vector<Page>& pages) {
    PdfInfo info = pdfInfoOf({m_record, m_entries}, m_sheets->choice().names, m_options.utcNow());
    info.form = m_choices.form;
    const auto saved = savePdf(path, pages, info, m_options.calls);
    if (saved) {
        say(tr("Saved: %1").arg(QDir::toNativeSeparators(path)), false);
        return true;
    }
    if (const auto* file = std::get_if<FileError>(&saved.error()))
        say(sentence(*file), true);
    else
        say(tr("The PDF could not be made: nothing was saved."), true);
    return false;
}

void Preview::say(const QString& sentence, bool problem) {
    showSentence(*m_said, sentence);
    m_said->setVisible(!sentence.isEmpty());
    setProblem(*m_said, problem);
    if (textScale() > 1) // the window scrolls: a long name of a folder need not be cut
        m_said->setMinimumWidth(m_said->minimumSizeHint().width());
}

} // namespace setfolio
