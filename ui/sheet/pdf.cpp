// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/pdf.h"

#include "ui/sheet/paint.h"
#include "ui/sheet/pdfabout.h"
#include "ui/wording/about.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPdfWriter>

#include <cmath>

namespace setfolio {

namespace {

constexpr int dotsPerInch = 1200;
constexpr double millimetresPerInch = 25.4;
constexpr double pointsPerInch = 72;

QPageLayout layoutOf(PaperSize paper) {
    const QPageSize size(paper == PaperSize::Letter ? QPageSize::Letter : QPageSize::A4);
    return {size, QPageLayout::Landscape, QMarginsF()};
}

double points(double millimetres) {
    return millimetres / millimetresPerInch * pointsPerInch;
}

/// Qt's pages are whole points high and counted from the foot: how far its paper's top edge lies below the true one.
double aboveQtsPaper(const Page& page) {
    const double missing = points(page.heightMm) - std::round(points(page.heightMm));
    return missing / pointsPerInch * millimetresPerInch;
}

bool paintAll(const std::vector<Page>& pages, QPdfWriter& writer) {
    writer.setPageLayout(layoutOf(pages.front().paper));
    QPainter painter;
    if (!painter.begin(&writer))
        return false;
    for (const Page& page : pages) {
        if (&page != &pages.front() && !(writer.setPageLayout(layoutOf(page.paper)) && writer.newPage()))
            return false;
        painter.resetTransform();
        painter.scale(dotsPerInch / millimetresPerInch, dotsPerInch / millimetresPerInch);
        painter.translate(0, -aboveQtsPaper(page));
        paint(page, painter, {});
    }
    return painter.end();
}

std::optional<QByteArray> painted(const std::vector<Page>& pages, const PdfInfo& info) {
    QByteArray pdf;
    QBuffer buffer(&pdf);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    const bool archive = info.form == PdfForm::Archive;
    writer.setPdfVersion(archive ? QPagedPaintDevice::PdfVersion_A1b : QPagedPaintDevice::PdfVersion_1_4);
    writer.setResolution(dotsPerInch);
    writer.setTitle(sheet::plainWords(info.title));
    writer.setCreator(aboutLine());
    writer.setDocumentXmpMetadata(sheet::xmpOf(info));
    if (!paintAll(pages, writer))
        return std::nullopt;
    return pdf;
}

/// Gives each page its exact size: Qt rounds it to whole points, and A4 has none. True if there are as many pages.
bool setSizes(sheet::PdfObjects& pdf, const std::vector<Page>& pages) {
    std::size_t count = 0;
    for (sheet::PdfObjects::Object& object : pdf.objects()) {
        const qsizetype begin = object.bytes.indexOf("/MediaBox [");
        const qsizetype end = object.bytes.indexOf(']', begin);
        if (!object.bytes.contains("<<\n/Type /Page\n") || begin < 0 || end < 0)
            continue;
        if (count == pages.size())
            return false;
        const Page& page = pages[count++];
        object.bytes.replace(begin, end + 1 - begin,
                             "/MediaBox [0 0 " + QByteArray::number(points(page.widthMm), 'f', 4) + ' ' +
                                 QByteArray::number(points(page.heightMm), 'f', 4) + ']');
    }
    return count == pages.size();
}

} // namespace

tl::expected<QByteArray, PdfError> pdfOf(const std::vector<Page>& pages, const PdfInfo& info) {
    using enum PdfError::Code;
    if (pages.empty())
        return tl::unexpected(PdfError{NoPages});
    if (!info.created.isValid())
        return tl::unexpected(PdfError{NoDate});
    const auto bytes = painted(pages, info);
    auto pdf = bytes ? sheet::PdfObjects::read(*bytes) : std::nullopt;
    if (!pdf || !setSizes(*pdf, pages) || !describe(*pdf, info))
        return tl::unexpected(PdfError{NotPainted});
    pdf->setIdentifier();
    return pdf->write();
}

} // namespace setfolio
