// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/entryjson.h"
#include "core/ledger/limits.h"
#include "tests/ui/drawnwords.h"
#include "tests/ui/signoff/strokes.h"

#include <QSignalSpy>

#include <functional>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

using Draw = std::function<void(SignaturePad&, const std::vector<QPoint>&)>;

std::size_t pointsIn(const std::vector<PenStroke>& strokes) {
    std::size_t count = 0;
    for (const PenStroke& stroke : strokes)
        count += stroke.size();
    return count;
}

} // namespace

Q_DECLARE_METATYPE(Draw)

/// What is drawn by hand becomes strokes as they are recorded.
class TestSignaturePad : public QObject {
    Q_OBJECT

private:
    static void everyPointer() {
        QTest::addColumn<Draw>("draw");
        QTest::newRow("mouse") << Draw(drawByMouse);
        QTest::newRow("finger") << Draw(drawByFinger);
        QTest::newRow("pen") << Draw(drawByPen);
    }

private Q_SLOTS:
    void init() {
        m_pad = std::make_unique<SignaturePad>();
        m_pad->resize(600, 200);
        m_pad->show();
        QVERIFY(QTest::qWaitForWindowExposed(m_pad.get()));
    }

    void anEmptyPadSaysWhatItIsFor() {
        const auto says = [this] { return !wordsDrawnBy(*m_pad).empty(); };
        QVERIFY(says());
        QTest::mouseClick(m_pad.get(), Qt::LeftButton, {}, QPoint(300, 100));
        QVERIFY(!says());
        m_pad->clear();
        QVERIFY(says());
        m_pad->setEnabled(false); // left unsigned
        QVERIFY(!says());
    }

    void aStrokeIsAsItWasDrawn_data() { everyPointer(); }
    void aStrokeIsAsItWasDrawn() {
        QFETCH(Draw, draw);
        const std::vector<QPoint> drawn = wave(*m_pad);
        draw(*m_pad, drawn);
        const std::vector<PenStroke> strokes = m_pad->strokes();
        QCOMPARE(strokes.size(), std::size_t(1));
        QCOMPARE(strokes.front().size(), drawn.size());
        for (std::size_t i = 0; i < drawn.size(); ++i) {
            const double pixel = m_pad->width() / double(limits::strokeExtent);
            QVERIFY(std::abs(strokes.front()[i].x * pixel - drawn[i].x()) < 1);
            QVERIFY(std::abs(strokes.front()[i].y * pixel - drawn[i].y()) < 1);
        }
    }

    void timesBeginAtTheFirstTouchAndOnlyGrow_data() { everyPointer(); }
    void timesBeginAtTheFirstTouchAndOnlyGrow() {
        QFETCH(Draw, draw);
        draw(*m_pad, wave(*m_pad, 20, 0.1, 0.4));
        draw(*m_pad, wave(*m_pad, 20, 0.5, 0.9));
        const std::vector<PenStroke> strokes = m_pad->strokes();
        QCOMPARE(strokes.size(), std::size_t(2));
        QCOMPARE(strokes.front().front().at, 0);
        int last = 0;
        for (const PenStroke& stroke : strokes)
            for (const PenPoint& point : stroke) {
                QVERIFY(point.at >= last);
                last = point.at;
            }
        QVERIFY(last > 0);
    }

    void aDotIsAStroke() {
        QTest::mouseClick(m_pad.get(), Qt::LeftButton, {}, {100, 100});
        QCOMPARE(m_pad->strokes().size(), std::size_t(1));
        QCOMPARE(m_pad->strokes().front().size(), std::size_t(1));
    }

    void aSecondFingerDoesNotDraw() {
        QPointingDevice* screen = QTest::createTouchDevice();
        QTest::touchEvent(m_pad.get(), screen).press(1, {100, 100});
        QTest::touchEvent(m_pad.get(), screen).move(1, {140, 100}).press(2, {400, 50});
        QTest::touchEvent(m_pad.get(), screen).move(1, {180, 100}).move(2, {500, 50});
        QTest::touchEvent(m_pad.get(), screen).release(1, {180, 100}).release(2, {500, 50});
        QCOMPARE(m_pad->strokes().size(), std::size_t(1));
        const PenStroke stroke = m_pad->strokes().front();
        for (const PenPoint& point : stroke)
            QVERIFY(point.x < 3500);
    }

    void whatLeavesThePadStaysAtItsEdge() {
        drawByMouse(*m_pad, {{20, 20}, {-50, -70}, {900, 500}});
        const PenStroke stroke = m_pad->strokes().front();
        for (const PenPoint& point : stroke) {
            QVERIFY(point.x >= 0 && point.x <= limits::strokeExtent);
            QVERIFY(point.y >= 0 && point.y <= limits::strokeExtent);
        }
    }

    void aVeryLongSignatureIsThinnedToWhatARecordHolds() {
        std::vector<QPoint> places;
        for (int i = 0; i < 2600; ++i)
            places.emplace_back(20 + i % 2 * 300, 10 + i % 180);
        drawByPen(*m_pad, places);
        drawByPen(*m_pad, places);
        const std::vector<PenStroke> strokes = m_pad->strokes();
        QCOMPARE(strokes.size(), std::size_t(2));
        QVERIFY(pointsIn(strokes) <= std::size_t(limits::strokePoints));
        QVERIFY(pointsIn(strokes) > std::size_t(limits::strokePoints) / 3);
        const Signed given{1, {Signer::Scorer, std::nullopt}, u"Wim Sedge"_s, strokes, std::nullopt};
        const auto read = entryFromJson(toJson(Entry(given)));
        QVERIFY(read.has_value());
        QCOMPARE(std::get<Signed>(*read), given);
    }

    void clearTakesAllOfItAway() {
        QSignalSpy changed(m_pad.get(), &SignaturePad::changed);
        drawByMouse(*m_pad, wave(*m_pad));
        QCOMPARE(changed.size(), 1);
        m_pad->clear();
        QVERIFY(m_pad->isEmpty());
        QCOMPARE(changed.size(), 2);
    }

private:
    std::unique_ptr<SignaturePad> m_pad;
};

QTEST_MAIN(TestSignaturePad)
#include "tst_signaturepad.moc"
