// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What it costs to make the PDF of all sheets of a match of five sets, and of one set's, beside a bare QPdfWriter.
/// Bare means: as many lines, rectangles, rings, polygons and texts, at the same places, on the same paper, in the same
/// weights of the same embedded typeface, but plain calls of QPainter, one pen for all, and nothing composed, shaped or
/// dashed beforehand.
#include "core/record/matchfile.h"
#include "core/record/writeup.h"
#include "tests/bench/timings.h"
#include "tests/support/randomplay.h"
#include "ui/sheet/pdf.h"
#include "ui/sheet/sheets.h"

#include <QBuffer>
#include <QFile>
#include <QGuiApplication>
#include <QHashSeed>
#include <QPainter>
#include <QPdfWriter>

#include <map>

using namespace setfolio;

namespace {

constexpr int turns = 40;
constexpr int dotsPerInch = 1200;

/// Draws one item with a plain call of QPainter.
class BarePainter {
public:
    explicit BarePainter(QPainter& painter) : m_painter(painter), m_millimetres(painter.transform()) {
        for (const FontWeight weight :
             {FontWeight::Regular, FontWeight::Medium, FontWeight::SemiBold, FontWeight::Bold}) {
            QFont font(QStringLiteral("Inter"));
            font.setPixelSize(static_cast<int>(ShapedText::pixels));
            font.setWeight(QFont::Weight(400 + 100 * static_cast<int>(weight)));
            font.setHintingPreference(QFont::PreferNoHinting);
            m_fonts[weight] = font;
        }
        m_painter.setPen(QPen(Qt::black, 0.2));
    }

    void operator()(const TextShape& text) {
        QTransform place = m_millimetres;
        place.translate(text.left(), text.anchor.y());
        place.scale(text.em() / ShapedText::pixels, text.em() / ShapedText::pixels);
        m_painter.setTransform(place);
        m_painter.setFont(m_fonts[text.shaped->weight]);
        m_painter.drawText(QPointF(), text.shaped->text);
        m_painter.setTransform(m_millimetres);
    }
    void operator()(const LineShape& line) { m_painter.drawLine(line.from, line.to); }
    void operator()(const RectShape& rect) { m_painter.drawRect(rect.rect); }
    void operator()(const RingShape& ring) { m_painter.drawEllipse(ring.centre, ring.radius, ring.radius); }
    void operator()(const PolygonShape& polygon) { m_painter.drawPolygon(polygon.corners); }
    void operator()(const StrokesShape& strokes) {
        for (const QPolygonF& line : strokes.lines)
            m_painter.drawPolyline(line);
    }
    void operator()(const SquaresShape& squares) {
        const double side = squares.size * static_cast<double>(squares.dark.size());
        m_painter.drawRect(QRectF(squares.corner, QSizeF(side, side)));
    }

private:
    QPainter& m_painter;
    QTransform m_millimetres;
    std::map<FontWeight, QFont> m_fonts;
};

QByteArray barePdf(const std::vector<Page>& pages) {
    QByteArray pdf;
    QBuffer buffer(&pdf);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setResolution(dotsPerInch);
    writer.setPageLayout({QPageSize(QPageSize::Letter), QPageLayout::Landscape, QMarginsF()});
    QPainter painter(&writer);
    painter.scale(dotsPerInch / 25.4, dotsPerInch / 25.4);
    for (const Page& page : pages) {
        if (&page != &pages.front())
            writer.newPage();
        BarePainter shapes(painter);
        for (const Item& item : page.items)
            std::visit(shapes, item.shape);
    }
    painter.end();
    return pdf;
}

void printItems(const std::vector<Page>& pages) {
    std::array<int, std::variant_size_v<Shape>> kinds{};
    for (const Page& page : pages)
        for (const Item& item : page.items)
            ++kinds[item.shape.index()];
    std::printf("pages %zu, texts %d, lines %d, rectangles %d, rings %d, polygons %d\n", pages.size(), kinds[0],
                kinds[1], kinds[2], kinds[3], kinds[4]);
}

/// The first random match whose five sets are played to their end.
std::vector<Recorded> fiveSets() {
    testing::Habits habits;
    habits.forfeit = habits.suspended = 0;
    for (std::uint32_t seed = 1;; ++seed) {
        testing::RandomPlay play(seed, publishedRulebook(QStringLiteral("high-school")).value(), habits);
        play.playMatch();
        const MatchRecord record = writeUp(play.entries());
        if (record.sets.size() == 5 && record.sets.back().result)
            return play.entries();
    }
}

/// The set of a match with the most points.
SheetChoice longestSetOf(const MatchRecord& record) {
    const auto longest = std::ranges::max_element(
        record.sets, {}, [](const SetRecord& set) { return set.score.home + set.score.visitors; });
    return {{SheetKind::Set}, {longest->number}};
}

void compareWithBare(const char* what, const PrintedMatch& match, const SheetChoice& choice, const SheetFonts& fonts) {
    const SheetOptions options{.fonts = fonts, .former = {}};
    const PdfInfo info{QStringLiteral("Sheets"), QStringLiteral("League"),
                       QDateTime(QDate(2026, 10, 14), QTime(20, 0), Qt::UTC)};
    const std::vector<Page> pages = composeSheets(match, choice, options);
    std::printf("\n%s: ", what);
    printItems(pages);
    bench::Timings bare;
    bench::Timings composing;
    bench::Timings whole;
    // In turns, so that a busy machine slows all of them alike.
    for (int turn = 0; turn < turns; ++turn) {
        bare.push_back(bench::once([&] { (void)barePdf(pages); }));
        composing.push_back(bench::once([&] { (void)composeSheets(match, choice, options); }));
        whole.push_back(bench::once([&] {
            if (!pdfOf(composeSheets(match, choice, options), info))
                qFatal("no PDF");
        }));
    }
    bench::print("bare QPdfWriter, as many items of the same kinds", bare);
    bench::print("composed and written as PDF for the archive", whole);
    bench::compare("  that is", whole, bare);
    bench::print("  of it: composed", composing);
    std::printf("bytes: bare %d, ours %d\n", static_cast<int>(barePdf(pages).size()),
                static_cast<int>(pdfOf(pages, info)->size()));
}

} // namespace

int main(int count, char** words) {
    QHashSeed::setDeterministicGlobalSeed();
    const QGuiApplication application(count, words);
    const auto fonts = SheetFonts::load();
    const auto match = MatchFile::open(QStringLiteral(SETFOLIO_SOURCE_DIR "/resources/demo/herons-larks.setfolio"),
                                       Ledger::Access::ReadOnly);
    if (!fonts || !match)
        qFatal("the typeface or the demo match is missing");
    compareWithBare("the demo's longest set", {match->record(), match->ledger().entries()},
                    longestSetOf(match->record()), *fonts);
    const std::vector<Recorded> entries = fiveSets();
    const MatchRecord record = writeUp(entries);
    compareWithBare("the sheets of five sets", {record, entries}, {{SheetKind::Set}, {}}, *fonts);
    compareWithBare("all kinds of sheets of those five sets", {record, entries},
                    {{allSheetKinds.begin(), allSheetKinds.end()}, {}}, *fonts);
    return 0;
}
