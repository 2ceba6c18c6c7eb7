// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/hit.h"

#include "tests/support/sheetscenes.h"
#include "ui/sheet/compose.h"
#include "ui/sheet/paint.h"

#include <QImage>
#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

class TestHit : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aClickOnAMarkMeansItsEntry();
    void aClickOnPaperMeansNothing();
    void aSlotsNumberMeansTheEntryThatPutItThere();
    void equalPagesHaveNoDifference();
    void allThatDiffersIsPaintedAgain_data();
    void allThatDiffersIsPaintedAgain();
    void oneEntryChangesLittle();
    void otherPaperIsPaintedWhole();

private:
    Page pageOf(MatchBuilder& match, const Flow* former = nullptr) const {
        const MatchRecord record = match.record();
        return composeSet(record.heading, record.sets.back(),
                          SheetOptions{.fonts = m_fonts,
                                       .paper = PaperSize::Letter,
                                       .screen = true,
                                       .locale = QLocale::c(),
                                       .former = former ? std::optional(*former) : std::nullopt})
            .front();
    }
    Page pageOf(const QString& name) const {
        const SheetScene scene = sheetScene(name);
        return composeSet(scene.heading, scene.set,
                          SheetOptions{.fonts = m_fonts,
                                       .paper = PaperSize::Letter,
                                       .screen = true,
                                       .locale = QLocale::c(),
                                       .former = {}})
            .front();
    }

    SheetFonts m_fonts = SheetFonts::load().value();
};

namespace {

constexpr double pixelsPerMm = 3.895;

QImage painted(const Page& page) {
    QImage image(qRound(page.widthMm * pixelsPerMm), qRound(page.heightMm * pixelsPerMm),
                 QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    QPainter painter(&image);
    painter.scale(pixelsPerMm, pixelsPerMm);
    paint(page, painter, {true, {}});
    return image;
}

double areaOf(const std::vector<QRectF>& rects) {
    double area = 0;
    for (const QRectF& rect : rects)
        area += rect.width() * rect.height();
    return area;
}

} // namespace

void TestHit::aClickOnAMarkMeansItsEntry() {
    const Page page = pageOf(QStringLiteral("demo"));
    int marks = 0;
    for (const Item& item : page.items) {
        if (item.role != ItemRole::ServeMark)
            continue;
        const Item* hit = itemAt(page, boundingBox(item).center());
        QVERIFY(hit);
        QCOMPARE(hit->entry, item.entry);
        QVERIFY(item.entry.value > 0);
        ++marks;
    }
    QVERIFY(marks > 40);
}

void TestHit::aClickOnPaperMeansNothing() {
    const Page page = pageOf(QStringLiteral("demo"));
    QCOMPARE(itemAt(page, QPointF(2, 2)), nullptr);
    QCOMPARE(itemAt(page, page.live + QPointF(20, 158)), nullptr); // among the sanctions
}

void TestHit::aSlotsNumberMeansTheEntryThatPutItThere() {
    MatchBuilder match;
    match.started().play("v").substitute(Team::Home, 7, 2);
    const EntryNumber entry = match.last();
    const Page page = pageOf(match);
    const auto number = std::ranges::find_if(page.items, [](const Item& item) {
        const auto* text = std::get_if<TextShape>(&item.shape);
        return item.role == ItemRole::SlotNumber && text && text->shaped->text == QStringLiteral("7");
    });
    QVERIFY(number != page.items.end());
    QCOMPARE(itemAt(page, boundingBox(*number).center())->entry, entry);
}

void TestHit::equalPagesHaveNoDifference() {
    QVERIFY(changedRects(pageOf(QStringLiteral("live")), pageOf(QStringLiteral("live"))).empty());
}

void TestHit::allThatDiffersIsPaintedAgain_data() {
    QTest::addColumn<QString>("words");
    QTest::newRow("a serve") << QStringLiteral("s");
    QTest::newRow("a point") << QStringLiteral("h");
    QTest::newRow("a side-out") << QStringLiteral("v");
    QTest::newRow("a substitution") << QStringLiteral("H8/9");
    QTest::newRow("a time-out") << QStringLiteral("th");
    QTest::newRow("an undo") << QStringLiteral("u");
    QTest::newRow("a long run") << QStringLiteral("h*12");
}

void TestHit::allThatDiffersIsPaintedAgain() {
    QFETCH(QString, words);
    MatchBuilder match;
    match.started().play("vhhvvhvhvvvhhv");
    const Page before = pageOf(match);
    playWords(match, words);
    const Page after = pageOf(match, &before.flow);
    const QImage first = painted(before), second = painted(after);
    QVERIFY(first != second);
    const std::vector<QRectF> rects = changedRects(before, after);
    for (int y = 0; y < first.height(); ++y)
        for (int x = 0; x < first.width(); ++x) {
            if (first.pixel(x, y) == second.pixel(x, y))
                continue;
            const QRectF pixel(x / pixelsPerMm, y / pixelsPerMm, 1 / pixelsPerMm, 1 / pixelsPerMm);
            const bool told =
                std::ranges::any_of(rects, [&](const QRectF& rect) { return rect.contains(pixel.center()); });
            QVERIFY2(told, qPrintable(QStringLiteral("pixel %1, %2").arg(x).arg(y)));
        }
}

void TestHit::oneEntryChangesLittle() {
    MatchBuilder match;
    match.started().play("vhhvvhvhvvvhhv");
    const Page before = pageOf(match);
    match.play("s");
    const Page contacted = pageOf(match, &before.flow);
    QVERIFY(areaOf(changedRects(before, contacted)) < 60); // one ring
    match.play("v");
    const Page won = pageOf(match, &contacted.flow);
    const std::vector<QRectF> rects = changedRects(contacted, won);
    QVERIFY(rects.size() <= 12);
    QVERIFY2(areaOf(rects) < 0.05 * 264 * 195, qPrintable(QString::number(areaOf(rects))));
}

void TestHit::otherPaperIsPaintedWhole() {
    const Page letter = pageOf(QStringLiteral("live"));
    Page a4 = letter;
    a4.paper = PaperSize::A4;
    a4.widthMm = 297;
    a4.heightMm = 210;
    QCOMPARE(changedRects(letter, a4), std::vector<QRectF>{QRectF(0, 0, 297, 210)});
}

QTEST_MAIN(TestHit)
#include "tst_hit.moc"
