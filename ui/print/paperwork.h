// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Pages on their way to paper: to a printer at their true size, or into a PDF file that is written whole or not at
/// all.
#pragma once

#include "core/ledger/wholefile.h"
#include "ui/sheet/pdf.h"

#include <QMarginsF>

#include <tl/expected.hpp>

#include <optional>
#include <variant>
#include <vector>

class QPrinter;

namespace setfolio {

/// Sets a printer to a paper on its long side: the whole of it, without margins, nothing scaled.
void setUp(QPrinter& printer, PaperSize paper);
/// The paper a printer is set to; none when it is neither Letter nor A4.
[[nodiscard]] std::optional<PaperSize> paperIn(const QPrinter& printer);

/// What a printer leaves white at the edges of a paper on its long side, in millimetres; nothing if it is not known.
[[nodiscard]] QMarginsF whiteEdges(const QString& printerName, PaperSize paper);
/// How many millimetres of the sheet such edges would hide at the worst of the four; 0 if none.
[[nodiscard]] double cutBy(const QMarginsF& edges, PaperSize paper);

/// The pages of the range that the printer was asked for; all of them when none was.
[[nodiscard]] std::vector<Page> pagesInRange(const QPrinter& printer, const std::vector<Page>& pages);

/// Prints the pages, those of the printer's range when it has one, and its copies when it cannot make them itself. The
/// printer must be set up for their paper. False when it would not begin or broke off.
[[nodiscard]] bool printPages(QPrinter& printer, const std::vector<Page>& pages);

using PdfFileError = std::variant<PdfError, FileError>;
/// Saves the pages as a PDF. On an error a file that was there before stands as it was.
[[nodiscard]] tl::expected<void, PdfFileError> savePdf(const QString& path, const std::vector<Page>& pages,
                                                       const PdfInfo& info, const FileCalls& calls = systemCalls());

} // namespace setfolio
