// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The preview: the sheets as they will be printed, and the way to the printer or into a PDF.
#pragma once

#include "core/ledger/filecalls.h"
#include "core/record/record.h"
#include "ui/print/printchoices.h"
#include "ui/sheet/sheets.h"

#include <QDateTime>
#include <QDialog>
#include <QLocale>

#include <functional>
#include <vector>

class QBoxLayout;
class QButtonGroup;
class QComboBox;
class QLabel;
class QPrinter;

namespace setfolio {

class PageView;
class SheetChooser;

struct PreviewOptions {
    QLocale locale;                                    ///< of dates and times, and the paper to begin with
    QString folder;                                    ///< where a PDF is saved unless another place is chosen
    SheetChoice sheets;                                ///< to begin with; the usual ones when no kind is named
    std::function<QDateTime()> utcNow;                 ///< the time that is written into a PDF
    FileCalls calls = systemCalls();                   ///< a test lets the disk fill up
    PrintChoices choices;                              ///< to begin with
    std::function<void(const PrintChoices&)> remember; ///< keeps what the user chooses; nothing if there is none
};

class Preview : public QDialog {
    Q_OBJECT

public:
    Preview(const PrintedMatch& match, const SheetFonts& fonts, const PreviewOptions& options,
            QWidget* parent = nullptr);

    /// Saves what is shown; how it went is said in the window. False on an error.
    bool saveTo(const QString& path);
    /// Prints what is shown on a printer that has been chosen; how it went is said in the window. False on an error.
    bool printOn(QPrinter& printer);

private:
    [[nodiscard]] QWidget* makeSide();
    [[nodiscard]] QWidget* makeChoices();
    [[nodiscard]] QBoxLayout* makeShown();
    [[nodiscard]] QBoxLayout* makeWaysOut();
    void addPapers(QBoxLayout& column);
    void addInks(QBoxLayout& column);
    void addForms(QBoxLayout& column);
    void addKeys();
    void choosePaper(PaperSize paper);
    void compose();
    void keepChoices();
    void askForPdf();
    void askForPrinter();
    /// Asks which paper it is, where the printer is set to another than the sheets are drawn for; false to give up.
    [[nodiscard]] bool settlePaper(QPrinter& printer);
    /// Asks, where the printer leaves more of the paper white than the sheet does; true if all is well or let pass.
    [[nodiscard]] bool mayBeCut(const QPrinter& printer);
    bool save(const QString& path, const std::vector<Page>& pages);
    void say(const QString& sentence, bool problem);

    MatchRecord m_record;
    std::vector<Recorded> m_entries;
    PrintChoices m_choices;
    SheetOptions m_sheet;
    PreviewOptions m_options;
    SheetChooser* m_sheets;
    PageView* m_view;
    QButtonGroup* m_paperButtons;
    QButtonGroup* m_formButtons;
    QComboBox* m_inks = nullptr;
    QLabel* m_said = nullptr;
};

} // namespace setfolio
