// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/matchbuilder.h"
#include "ui/sheet/hit.h"
#include "ui/table/sheetview.h"

#include <QPaintEvent>
#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

/// Collects what a widget is asked to paint.
class Painted : public QObject {
public:
    explicit Painted(QWidget& widget) { widget.installEventFilter(this); }
    /// What has been painted since it was asked last.
    QRegion taken() {
        QCoreApplication::processEvents();
        return std::exchange(m_region, {});
    }

protected:
    bool eventFilter(QObject* watched, QEvent* event) override {
        if (event->type() == QEvent::Paint)
            m_region += static_cast<QPaintEvent*>(event)->region();
        return QObject::eventFilter(watched, event);
    }

private:
    QRegion m_region;
};

qint64 areaOf(const QRegion& region) {
    qint64 area = 0;
    for (const QRect& rect : region)
        area += qint64(rect.width()) * rect.height();
    return area;
}

} // namespace

/// A new mark on the sheet in the window: only its part is painted, and the page is the same as if all had been.
class TestRepaint : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aNewMarkRepaintsOnlyItsPart_data();
    void aNewMarkRepaintsOnlyItsPart();
    void nothingNewRepaintsNothing();

private:
    static constexpr QSize room{1040, 522};
    SheetFonts m_fonts = SheetFonts::load().value();
};

void TestRepaint::aNewMarkRepaintsOnlyItsPart_data() {
    QTest::addColumn<QByteArray>("then"); // what is played after a start
    QTest::addColumn<double>("most");     // of the window, in hundredths
    QTest::newRow("serve contacted") << QByteArray("s") << 0.5;
    QTest::newRow("point on the own serve") << QByteArray("h") << 1.5;
    QTest::newRow("serve lost") << QByteArray("v") << 6.0;
}

void TestRepaint::aNewMarkRepaintsOnlyItsPart() {
    QFETCH(QByteArray, then);
    QFETCH(double, most);
    MatchBuilder match = MatchBuilder().started().play("hhvvhvhhhvhhh");
    const MatchRecord before = match.record();
    const MatchRecord after = match.play(then.constData()).record();
    SheetView view(m_fonts);
    view.resize(room);
    view.setRecord(before, 1);
    view.show();
    QVERIFY(QTest::qWaitForWindowExposed(&view));
    Painted painted(view);
    (void)painted.taken();
    view.setRecord(after, 1);
    const QRegion region = painted.taken();
    const double share = 100.0 * double(areaOf(region)) / (room.width() * room.height());
    qInfo("%.2f %% of the window painted", share);
    QVERIFY(share > 0);
    QVERIFY2(share <= most, qPrintable(QString::number(share)));

    SheetView fresh(m_fonts);
    fresh.resize(room);
    fresh.setRecord(before, 1); // columns and sizes are kept while a set is written
    fresh.setRecord(after, 1);
    fresh.setSight(view.sight());
    QCOMPARE(view.grab().toImage(), fresh.grab().toImage());
}

void TestRepaint::nothingNewRepaintsNothing() {
    const MatchRecord record = MatchBuilder().started().play("hhvvhvhhhvhhh").record();
    const MatchRecord again = record;
    SheetView view(m_fonts);
    view.resize(room);
    view.setRecord(record, 1);
    view.show();
    QVERIFY(QTest::qWaitForWindowExposed(&view));
    Painted painted(view);
    (void)painted.taken();
    view.setRecord(again, 1);
    QVERIFY(painted.taken().isEmpty());
}

QTEST_MAIN(TestRepaint)
#include "tst_repaint.moc"
