// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What is printed: the sets there are sheets of, the paper that is usual in a country, and the name of the PDF.
#pragma once

#include "core/record/record.h"
#include "ui/sheet/pdf.h"
#include "ui/sheet/sheets.h"

#include <QDateTime>
#include <QLocale>

#include <vector>

namespace setfolio {

/// The numbers of the sets that there is a sheet of: those begun; set 1, to be filled by pen, where none has begun.
[[nodiscard]] std::vector<int> printableSets(const MatchRecord& record);

/// Letter in the countries where it is the usual paper (Unicode CLDR, territory information: paper size), and where the
/// locale names no country; else A4.
[[nodiscard]] PaperSize usualPaper(const QLocale& locale);

/// "2026-10-10-SAL-QRL.pdf"; of one kind of sheet "2026-10-10-SAL-QRL-coach.pdf"; of one set alone
/// "2026-10-10-SAL-QRL-set-2.pdf" or "2026-10-10-SAL-QRL-libero-set-2.pdf".
[[nodiscard]] QString pdfName(const MatchRecord& record, const SheetChoice& choice);

/// What the PDF says of itself, and whether there are names of persons in it.
[[nodiscard]] PdfInfo pdfInfoOf(const PrintedMatch& match, Names names, const QDateTime& created);

} // namespace setfolio
