// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/commands/printsheets.h"

#include "app/commands/readmatch.h"
#include "app/terminal.h"
#include "core/ledger/wholefile.h"
#include "core/record/nameless.h"
#include "core/record/writeup.h"
#include "ui/print/sheetpages.h"
#include "ui/sheet/sheets.h"
#include "ui/wording/errorwords.h"

#include <algorithm>

namespace setfolio {

namespace {

/// The sheets of some matches, and what the PDF says of itself.
struct Sheets {
    std::vector<Page> pages;
    PdfInfo info;
};

/// Adds words to a list of which each is named once.
void addWords(QString& list, const QString& words) {
    const QString between = QStringLiteral("; ");
    if (!words.isEmpty() && !list.split(between).contains(words))
        list += list.isEmpty() ? words : between + words;
}

/// Adds the sheets of a match; of one in which no set has begun, the empty sheet of the first. The PDF is dated by the
/// newest entry, not by the clock: the same match files give the same PDF.
void addSheets(Sheets& sheets, const std::vector<Recorded>& entries, const std::set<SheetKind>& kinds,
               const SheetOptions& options) {
    const MatchRecord record = writeUp(entries);
    const SheetChoice choice{kinds.empty() ? usualSheets(record) : kinds, {}};
    std::ranges::move(composeSheets({record, entries}, choice, options), std::back_inserter(sheets.pages));
    const PdfInfo own = pdfInfoOf({record, entries}, Names::Given, entries.back().time);
    addWords(sheets.info.title, own.title);
    addWords(sheets.info.subject, own.subject);
    addWords(sheets.info.author, own.author);
    if (!sheets.info.created.isValid() || own.created > sheets.info.created)
        sheets.info.created = own.created;
}

tl::expected<Sheets, ExitCode> sheetsOf(const PrintSheets& command, const SheetOptions& options) {
    Sheets sheets;
    ExitCode code = ExitCode::Done;
    for (const QString& path : command.files) {
        auto entries = readMatch(path);
        if (entries && command.names == Names::LeftOut)
            *entries = withoutNames(*entries);
        if (entries)
            addSheets(sheets, *entries, command.sheets, options);
        else
            code = worse(code, entries.error());
    }
    if (code != ExitCode::Done)
        return tl::unexpected(code);
    return sheets;
}

ExitCode write(const Sheets& sheets, const QString& to) {
    const auto pdf = pdfOf(sheets.pages, sheets.info);
    if (!pdf) {
        sayMessage(sheetsNotDrawn(to));
        return ExitCode::CannotWrite;
    }
    if (const auto written = writeWholeFile(to, *pdf); !written) {
        sayMessage(sentence(written.error()));
        return exitCodeOf(written.error().code);
    }
    sayResult(pagesWritten(to, static_cast<int>(sheets.pages.size())));
    return ExitCode::Done;
}

} // namespace

ExitCode run(const PrintSheets& command) {
    const auto fonts = SheetFonts::load();
    if (!fonts) {
        sayMessage(typefaceMissing(fonts.error().family, fonts.error().package));
        return ExitCode::Unavailable;
    }
    const QLocale locale;
    const SheetOptions options{.fonts = *fonts,
                               .paper = command.paper.value_or(usualPaper(locale)),
                               .locale = locale,
                               .former = std::nullopt,
                               .inks = command.inks};
    auto sheets = sheetsOf(command, options);
    if (!sheets)
        return sheets.error();
    sheets->info.form = command.form;
    return write(*sheets, command.to);
}

} // namespace setfolio
