// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/commands/printsheets.h"

#include "app/commands/readmatch.h"
#include "app/terminal.h"
#include "core/ledger/wholefile.h"
#include "core/record/writeup.h"
#include "ui/sheet/compose.h"
#include "ui/sheet/pdf.h"
#include "ui/wording/about.h"
#include "ui/wording/errorwords.h"
#include "ui/wording/openwords.h"

namespace setfolio {

namespace {

/// The sheets of some matches, and what the PDF says of itself.
struct Sheets {
    std::vector<Page> pages;
    PdfInfo info;
};

/// Adds the sheets of a match; of one in which no set has begun, the empty sheet of the first. The PDF is dated by the
/// newest entry, not by the clock: the same match files give the same PDF.
void addSheets(Sheets& sheets, const std::vector<Recorded>& entries, const SheetOptions& options) {
    const MatchRecord record = writeUp(entries);
    const std::vector<SetRecord> sets = record.sets.empty() ? std::vector<SetRecord>(1) : record.sets;
    for (const SetRecord& set : sets)
        for (Page& page : composeSet(record.heading, set, options))
            sheets.pages.push_back(std::move(page));
    const QString title = matchTitle(fold(entries));
    sheets.info.title += sheets.info.title.isEmpty() ? title : QStringLiteral("; ") + title;
    if (!sheets.info.created.isValid() || entries.back().time > sheets.info.created)
        sheets.info.created = entries.back().time;
}

tl::expected<Sheets, ExitCode> sheetsOf(const QStringList& files, const SheetOptions& options) {
    Sheets sheets;
    sheets.info.author = aboutLine();
    ExitCode code = ExitCode::Done;
    for (const QString& path : files) {
        const auto entries = readMatch(path);
        if (entries)
            addSheets(sheets, *entries, options);
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
    const SheetOptions options{*fonts, command.paper, false, QLocale(), std::nullopt};
    const auto sheets = sheetsOf(command.files, options);
    return sheets ? write(*sheets, command.to) : sheets.error();
}

} // namespace setfolio
