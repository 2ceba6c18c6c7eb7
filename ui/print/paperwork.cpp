// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/print/paperwork.h"

#include "ui/sheet/paint.h"

#include <QPageLayout>
#include <QPainter>
#include <QPrinter>
#include <QPrinterInfo>

#include <algorithm>

namespace setfolio {

namespace {

constexpr double mmPerInch = 25.4;

void paintOn(QPainter& painter, const QPrinter& printer, const Page& page) {
    painter.save();
    const double pixels = printer.resolution() / mmPerInch;
    painter.scale(pixels, pixels);
    paint(page, painter, {});
    painter.restore();
}

} // namespace

void setUp(QPrinter& printer, PaperSize paper) {
    // one by one: a printer that has margins of its own refuses a whole layout without them
    printer.setFullPage(true);
    printer.setPageSize(QPageSize(paper == PaperSize::Letter ? QPageSize::Letter : QPageSize::A4));
    printer.setPageOrientation(QPageLayout::Landscape);
    printer.setPageMargins(QMarginsF(), QPageLayout::Millimeter);
}

std::optional<PaperSize> paperIn(const QPrinter& printer) {
    // by the size: a paper may go by another name with a printer
    const QSize points = printer.pageLayout().pageSize().sizePoints();
    for (const auto& [paper, size] : {std::pair(PaperSize::Letter, QPageSize::Letter), {PaperSize::A4, QPageSize::A4}})
        if (QPageSize(size).sizePoints() == points)
            return paper;
    return std::nullopt; // Qt knows a hundred more, which the sheet has no drawing for
}

QMarginsF whiteEdges(const QString& printerName, PaperSize paper) {
    const QPrinterInfo info = QPrinterInfo::printerInfo(printerName);
    if (info.isNull())
        return {};
    QPrinter printer(info); // another than is printed on: a layout of the whole paper forgets the edges
    printer.setPageSize(QPageSize(paper == PaperSize::Letter ? QPageSize::Letter : QPageSize::A4));
    printer.setPageOrientation(QPageLayout::Landscape);
    QPageLayout layout = printer.pageLayout();
    layout.setUnits(QPageLayout::Millimeter);
    return layout.minimumMargins();
}

double cutBy(const QMarginsF& edges, PaperSize paper) {
    const QSizeF room = (sizeOf(paper) - liveArea) / 2;
    const double across = std::max(edges.left(), edges.right()) - room.width();
    const double down = std::max(edges.top(), edges.bottom()) - room.height();
    return std::max({0.0, across, down});
}

std::vector<Page> pagesInRange(const QPrinter& printer, const std::vector<Page>& pages) {
    const int count = static_cast<int>(pages.size());
    const int first = printer.fromPage() == 0 ? 1 : std::min(printer.fromPage(), count);
    const int last = printer.toPage() == 0 ? count : std::clamp(printer.toPage(), first, count);
    return {pages.begin() + first - 1, pages.begin() + last};
}

bool printPages(QPrinter& printer, const std::vector<Page>& pages) {
    if (pages.empty())
        return false;
    QPainter painter;
    if (!painter.begin(&printer))
        return false;
    const int copies = printer.supportsMultipleCopies() ? 1 : std::max(1, printer.copyCount());
    bool begun = false;
    for (int copy = 0; copy < copies; ++copy) {
        for (const Page& page : pagesInRange(printer, pages)) {
            if (begun && !printer.newPage())
                return false;
            begun = true;
            paintOn(painter, printer, page);
        }
    }
    return painter.end() && printer.printerState() != QPrinter::Error;
}

tl::expected<void, PdfFileError> savePdf(const QString& path, const std::vector<Page>& pages, const PdfInfo& info,
                                         const FileCalls& calls) {
    const auto bytes = pdfOf(pages, info);
    if (!bytes)
        return tl::unexpected(PdfFileError(bytes.error()));
    if (const auto written = writeWholeFile(path, *bytes, calls); !written)
        return tl::unexpected(PdfFileError(written.error()));
    return {};
}

} // namespace setfolio
