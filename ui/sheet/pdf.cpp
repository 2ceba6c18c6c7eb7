// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/pdf.h"

#include "ui/sheet/paint.h"

#include <QBuffer>
#include <QPageLayout>
#include <QPdfWriter>

namespace setfolio {

namespace {

constexpr int dotsPerInch = 1200;
constexpr double millimetresPerInch = 25.4;

QPageLayout layoutOf(PaperSize paper) {
    const QPageSize size(paper == PaperSize::Letter ? QPageSize::Letter : QPageSize::A4);
    return {size, QPageLayout::Landscape, QMarginsF()};
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
        paint(page, painter, {});
    }
    return painter.end();
}

/// Qt writes the time of the clock: its digits give way to as many others, so that all places in the file stay right.
bool setCreationDate(QByteArray& pdf, const QDateTime& created) {
    const QByteArray key = "/CreationDate (D:";
    const qsizetype begin = pdf.indexOf(key);
    const qsizetype end = begin < 0 ? -1 : pdf.indexOf(')', begin);
    if (end < 0)
        return false;
    const qsizetype room = end - begin - key.size();
    QByteArray date = created.toUTC().toString(QStringLiteral("yyyyMMddHHmmss")).toLatin1();
    date += room == date.size() + 1 ? "Z" : "+00'00'";
    if (date.size() != room)
        return false;
    pdf.replace(begin + key.size(), room, date);
    return true;
}

} // namespace

tl::expected<QByteArray, PdfError> pdfOf(const std::vector<Page>& pages, const PdfInfo& info) {
    using enum PdfError::Code;
    if (pages.empty())
        return tl::unexpected(PdfError{NoPages});
    if (!info.created.isValid())
        return tl::unexpected(PdfError{NoDate});
    QByteArray pdf;
    QBuffer buffer(&pdf);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setResolution(dotsPerInch);
        writer.setTitle(info.title);
        writer.setCreator(info.author);
        if (!paintAll(pages, writer))
            return tl::unexpected(PdfError{NotPainted});
    }
    buffer.close();
    if (!setCreationDate(pdf, info.created))
        return tl::unexpected(PdfError{NotPainted});
    return pdf;
}

} // namespace setfolio
