// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/paint.h"

#include "tests/support/sheetscenes.h"
#include "ui/sheet/compose.h"
#include "ui/sheet/palette.h"

#include <QImage>
#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

class TestPaint : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void thePainterIsLeftAsItWas();
    void aPartIsPaintedAsInTheWhole();
    void onlyTheScreenHasPaper();
    void aMillimetreIsAMillimetreAtEveryScale_data();
    void aMillimetreIsAMillimetreAtEveryScale();
    void everyItemPaintsWithinItsBox();
    void brokenLinesAreBrokenAndCornersClosed();

private:
    Page page(const QString& name) const {
        const SheetScene scene = sheetScene(name);
        return composeSet(scene.heading, scene.set,
                          SheetOptions{.fonts = m_fonts,
                                       .paper = PaperSize::Letter,
                                       .screen = scene.screen,
                                       .locale = QLocale::c(),
                                       .former = {}})
            .front();
    }

    SheetFonts m_fonts = SheetFonts::load().value();
};

namespace {

QImage blank(const Page& page, double scale) {
    QImage image(qCeil(page.widthMm * scale), qCeil(page.heightMm * scale), QImage::Format_ARGB32_Premultiplied);
    image.fill(Qt::white);
    return image;
}

/// What is not white, in pixels.
QRect inkOf(const QImage& image) {
    QRect ink;
    for (int y = 0; y < image.height(); ++y)
        for (int x = 0; x < image.width(); ++x)
            if (image.pixel(x, y) != qRgb(255, 255, 255))
                ink |= QRect(x, y, 1, 1);
    return ink;
}

/// The largest difference of a colour's part between two pictures, of 255.
int worstDifference(const QImage& left, const QImage& right) {
    int worst = 0;
    for (int y = 0; y < left.height(); ++y)
        for (int x = 0; x < left.width(); ++x) {
            const QRgb a = left.pixel(x, y), b = right.pixel(x, y);
            worst = std::max(
                {worst, std::abs(qRed(a) - qRed(b)), std::abs(qGreen(a) - qGreen(b)), std::abs(qBlue(a) - qBlue(b))});
        }
    return worst;
}

Page only(const Page& page, const Item& item) {
    Page one = page;
    one.items = {item};
    return one;
}

} // namespace

void TestPaint::thePainterIsLeftAsItWas() {
    QImage image(100, 100, QImage::Format_ARGB32_Premultiplied);
    QPainter painter(&image);
    painter.scale(0.5, 0.5);
    painter.setPen(QPen(Qt::red, 3));
    paint(page(QStringLiteral("demo")), painter, {});
    QCOMPARE(painter.transform(), QTransform::fromScale(0.5, 0.5));
    QCOMPARE(painter.pen(), QPen(Qt::red, 3));
    QVERIFY(!painter.testRenderHint(QPainter::Antialiasing));
}

void TestPaint::aPartIsPaintedAsInTheWhole() {
    const Page live = page(QStringLiteral("live"));
    constexpr double scale = 4;
    QImage whole = blank(live, scale), part = blank(live, scale);
    const QRectF clip(92, 60, 90, 30);
    {
        QPainter painter(&whole);
        painter.scale(scale, scale);
        paint(live, painter, {true, {}});
    }
    {
        QPainter painter(&part);
        painter.scale(scale, scale);
        painter.setClipRect(clip);
        paint(live, painter, {true, clip});
    }
    const QRect pixels = QRectF(clip.topLeft() * scale, clip.size() * scale).toAlignedRect();
    QVERIFY2(worstDifference(part.copy(pixels), whole.copy(pixels)) <= 2,
             qPrintable(QString::number(worstDifference(part.copy(pixels), whole.copy(pixels)))));
}

void TestPaint::onlyTheScreenHasPaper() {
    const Page demo = page(QStringLiteral("demo"));
    for (const bool fill : {false, true}) {
        QImage image = blank(demo, 2);
        QPainter painter(&image);
        painter.scale(2, 2);
        paint(demo, painter, {fill, {}});
        QCOMPARE(image.pixel(2, 2), fill ? sheet::paper : qRgb(255, 255, 255));
    }
}

void TestPaint::aMillimetreIsAMillimetreAtEveryScale_data() {
    QTest::addColumn<double>("dotsPerInch");
    for (const double dots : {72.0, 96.0, 98.9, 120.0, 144.0, 300.0})
        QTest::addRow("%.1f", dots) << dots;
}

void TestPaint::aMillimetreIsAMillimetreAtEveryScale() {
    QFETCH(double, dotsPerInch);
    const double scale = dotsPerInch / 25.4;
    const Page demo = page(QStringLiteral("demo"));
    const auto title = std::ranges::find(demo.items, ItemRole::Title, &Item::role);
    QImage image = blank(demo, scale);
    QPainter painter(&image);
    painter.scale(scale, scale);
    paint(only(demo, *title), painter, {});
    const QRect ink = inkOf(image);
    const QRectF box = boundingBox(*title);
    QVERIFY(std::abs(ink.left() - box.left() * scale) <= 2);
    QVERIFY(std::abs(ink.right() + 1 - box.right() * scale) <= 2);
    QVERIFY(std::abs(ink.bottom() + 1 - box.bottom() * scale) <= 2);
}

void TestPaint::everyItemPaintsWithinItsBox() {
    constexpr double scale = 8;
    const Page demo = page(QStringLiteral("demo"));
    int inked = 0;
    for (std::size_t i = 0; i < demo.items.size(); i += 7) { // some of each kind
        const QRectF box = boundingBox(demo.items[i]);
        const QRect area = QRectF(box.topLeft() * scale, box.size() * scale).toAlignedRect().adjusted(-8, -8, 8, 8);
        QImage image(area.size(), QImage::Format_ARGB32_Premultiplied);
        image.fill(Qt::white);
        QPainter painter(&image);
        painter.translate(-area.topLeft());
        painter.scale(scale, scale);
        paint(only(demo, demo.items[i]), painter, {});
        painter.end();
        const QRect ink = inkOf(image);
        if (ink.isEmpty()) // white, on its dark ground
            continue;
        ++inked;
        QVERIFY2(image.rect().adjusted(6, 6, -6, -6).contains(ink),
                 qPrintable(QStringLiteral("item %1, role %2").arg(i).arg(static_cast<int>(demo.items[i].role))));
    }
    QVERIFY(inked > 90);
}

void TestPaint::brokenLinesAreBrokenAndCornersClosed() {
    constexpr double scale = 20;
    const Page demo = page(QStringLiteral("demo"));
    const auto triangle = std::ranges::find_if(demo.items, [](const Item& item) {
        const auto* polygon = std::get_if<PolygonShape>(&item.shape);
        return item.role == ItemRole::ServeMark && polygon && !polygon->sides.empty();
    });
    QVERIFY(triangle != demo.items.end());
    QImage image = blank(demo, scale);
    QPainter painter(&image);
    painter.scale(scale, scale);
    paint(only(demo, *triangle), painter, {});
    const auto& polygon = std::get<PolygonShape>(triangle->shape);
    const auto isInked = [&](QPointF mm) { return qGray(image.pixel((mm * scale).toPoint())) < 200; };
    for (const QPointF& corner : polygon.corners)
        QVERIFY(isInked(corner));
    int changes = 0; // from dash to gap along the base
    bool inked = true;
    const QLineF base(polygon.corners.at(1), polygon.corners.at(2));
    for (int i = 0; i <= 400; ++i)
        if (const bool now = isInked(base.pointAt(i / 400.0)); now != inked) {
            inked = now;
            ++changes;
        }
    QVERIFY(changes >= 8);
    QVERIFY(inked);
}

QTEST_MAIN(TestPaint)
#include "tst_paint.moc"
