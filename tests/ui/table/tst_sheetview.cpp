// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/table/opentable.h"
#include "ui/sheet/hit.h"
#include "ui/table/repairbar.h"
#include "ui/table/sheetview.h"

#include <QPointingDevice>
#include <QSignalSpy>
#include <QWheelEvent>

using namespace setfolio;
using namespace setfolio::testing;

/// The sheet in the window under real keys, mouse and fingers.
class TestSheetView : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void keysEnlargeAndFit();
    void buttonsEnlargeAndFit();
    void theWheelEnlargesAboutThePointer();
    void theMouseDragsThePageAndClicksNothing();
    void twoFingersStretchThePage();
    void aClickOnAMarkLeadsToItsEntry();
    void aTapOnAnEnlargedMarkLeadsToItsEntry();
    void enlargedItFollowsThePlay();
    void thePlayIsShownWhereRemarksGoOnToAnotherPage();

private:
    static MatchBuilder played() { return MatchBuilder().started().play("hhvvhvhhhv"); }
    /// A ring that tells of an entry, in the live page.
    static const Item& someMark(const SheetView& sheet);
    static QPoint placeOf(const SheetView& sheet, const Item& item) {
        return sheet.pixelOf(boundingBox(item).center()).toPoint();
    }

    QPointingDevice* m_finger = nullptr;
};

void TestSheetView::initTestCase() {
    m_finger = QTest::createTouchDevice();
}

const Item& TestSheetView::someMark(const SheetView& sheet) {
    for (const Item& item : sheet.pages().back().items)
        if (item.role == ItemRole::ServeContent && item.entry.value != 0)
            return item;
    qFatal("no mark");
}

void TestSheetView::keysEnlargeAndFit() {
    OpenTable table(played());
    auto* sheet = table.find<SheetView>("sheetView");
    const double band = sheet->scale();
    table.press(Qt::Key_Equal, Qt::ControlModifier);
    QCOMPARE(sheet->sight(), Sight::Enlarged);
    QVERIFY(sheet->scale() > band);
    table.press(Qt::Key_F8);
    const double whole = sheet->scale();
    QVERIFY(whole < band);
    table.press(Qt::Key_F6);
    QCOMPARE(sheet->sight(), Sight::PageWidth);
    const double left = sheet->pixelOf(sheet->pages().back().live).x();
    QVERIFY(left >= 0 && left < 10);
    QVERIFY(sheet->pixelOf(sheet->pages().back().live + QPointF(liveArea.width(), 0)).x() <= sheet->width());
    for (int i = 0; i < 20; ++i)
        table.press(Qt::Key_Minus, Qt::ControlModifier);
    QCOMPARE(sheet->scale(), whole); // no smaller than all of it
    table.press(Qt::Key_F7);
    QCOMPARE(sheet->scale(), band);
}

void TestSheetView::buttonsEnlargeAndFit() {
    OpenTable table(played());
    auto* sheet = table.find<SheetView>("sheetView");
    const double band = sheet->scale();
    table.click("larger");
    QVERIFY(sheet->scale() > band);
    QVERIFY(!table.find("liveBand")->isChecked());
    table.click("smaller");
    QVERIFY(qAbs(sheet->scale() - band) < 1e-9);
    table.click("pageWidth");
    QVERIFY(table.find("pageWidth")->isChecked());
    for (const char* name : {"larger", "smaller", "pageWidth", "wholePage", "liveBand"}) // the least size for a finger
        QVERIFY(table.find(name)->width() >= 44 && table.find(name)->height() >= 44);
}

void TestSheetView::theWheelEnlargesAboutThePointer() {
    OpenTable table(played());
    auto* sheet = table.find<SheetView>("sheetView");
    const Item& mark = someMark(*sheet);
    const QPoint before = placeOf(*sheet, mark);
    QWheelEvent turned(before, sheet->mapToGlobal(before), {}, {0, 120}, Qt::NoButton, Qt::ControlModifier,
                       Qt::NoScrollPhase, false);
    QApplication::sendEvent(sheet, &turned);
    QCOMPARE(sheet->sight(), Sight::Enlarged);
    QVERIFY2((placeOf(*sheet, mark) - before).manhattanLength() <= 3, "the mark has run away from the pointer");
}

void TestSheetView::theMouseDragsThePageAndClicksNothing() {
    OpenTable table(played());
    auto* sheet = table.find<SheetView>("sheetView");
    QSignalSpy clicked(sheet, &SheetView::entryClicked);
    for (int i = 0; i < 5; ++i)
        table.click("larger");
    const Item& mark = someMark(*sheet);
    const QPoint from = sheet->rect().center();
    const QPoint before = placeOf(*sheet, mark);
    QTest::mousePress(sheet, Qt::LeftButton, {}, from);
    QTest::mouseMove(sheet, from - QPoint(30, 20));
    QTest::mouseMove(sheet, from - QPoint(60, 40));
    QTest::mouseRelease(sheet, Qt::LeftButton, {}, from - QPoint(60, 40));
    QVERIFY2((placeOf(*sheet, mark) - before + QPoint(60, 40)).manhattanLength() <= 3,
             qPrintable(QStringLiteral("%1").arg((placeOf(*sheet, mark) - before).manhattanLength())));
    QCOMPARE(clicked.size(), 0);
}

void TestSheetView::twoFingersStretchThePage() {
    OpenTable table(played());
    auto* sheet = table.find<SheetView>("sheetView");
    QSignalSpy clicked(sheet, &SheetView::entryClicked);
    const double before = sheet->scale();
    const QPoint middle = sheet->rect().center();
    const QPoint near(40, 0), far(80, 0);
    QTest::touchEvent(sheet, m_finger).press(0, middle - near, sheet).press(1, middle + near, sheet);
    QTest::touchEvent(sheet, m_finger).move(0, middle - far, sheet).move(1, middle + far, sheet);
    QTest::touchEvent(sheet, m_finger).release(0, middle - far, sheet).release(1, middle + far, sheet);
    QVERIFY2(qAbs(sheet->scale() - 2 * before) < 0.01 * before, qPrintable(QString::number(sheet->scale() / before)));
    QCOMPARE(clicked.size(), 0);
}

void TestSheetView::aClickOnAMarkLeadsToItsEntry() {
    OpenTable table(played());
    auto* sheet = table.find<SheetView>("sheetView");
    const Item& mark = someMark(*sheet);
    const EntryNumber entry = mark.entry;
    QTest::mouseClick(sheet, Qt::LeftButton, {}, placeOf(*sheet, mark));
    auto* bar = table.window().findChild<RepairBar*>();
    QVERIFY(bar && bar->isVisible());
    QCOMPARE(bar->target(), entry);
}

void TestSheetView::aTapOnAnEnlargedMarkLeadsToItsEntry() {
    OpenTable table(played());
    auto* sheet = table.find<SheetView>("sheetView");
    table.click("larger");
    table.click("larger");
    const Item* mark = nullptr;
    for (const Item& item : sheet->pages().back().items)
        if (item.role == ItemRole::ServeContent && item.entry.value != 0 &&
            sheet->rect().adjusted(5, 5, -5, -5).contains(placeOf(*sheet, item)))
            mark = &item;
    QVERIFY(mark);
    const EntryNumber entry = mark->entry;
    const QPoint at = placeOf(*sheet, *mark);
    QTest::touchEvent(sheet, m_finger).press(0, at, sheet);
    QTest::touchEvent(sheet, m_finger).release(0, at, sheet);
    auto* bar = table.window().findChild<RepairBar*>();
    QVERIFY(bar && bar->isVisible());
    QCOMPARE(bar->target(), entry);
}

void TestSheetView::thePlayIsShownWhereRemarksGoOnToAnotherPage() {
    MatchBuilder match = played();
    for (int i = 0; i < 30; ++i)
        match.add(Remark{QStringLiteral("The floor was wiped where somebody had fallen, number %1.").arg(i)});
    OpenTable table(match);
    auto* sheet = table.find<SheetView>("sheetView");
    const auto showsPlay = [&] {
        return std::ranges::any_of(sheet->pages().at(static_cast<std::size_t>(sheet->shownPage())).items,
                                   [](const Item& item) { return item.role == ItemRole::LiveCell; });
    };
    QVERIFY(sheet->pages().size() > 1);
    QVERIFY(showsPlay() && sheet->isLive());
    table.press(Qt::Key_Left);
    QVERIFY(showsPlay() && sheet->isLive());
    table.press(Qt::Key_PageDown);
    QVERIFY(!sheet->isLive());
    table.press(Qt::Key_Home);
    QVERIFY(showsPlay() && sheet->isLive());
}

void TestSheetView::enlargedItFollowsThePlay() {
    OpenTable table(played());
    auto* sheet = table.find<SheetView>("sheetView");
    for (int i = 0; i < 6; ++i)
        table.click("larger");
    for (int i = 0; i < 6; ++i) { // each wins the serve back: one team's block, then the other's
        table.press(i % 2 ? Qt::Key_Left : Qt::Key_Right);
        const Item* newest = nullptr;
        for (const Item& item : sheet->pages().back().items)
            if ((item.zone == Zone::BlockHome || item.zone == Zone::BlockVisitors) &&
                item.entry == table.newest().number)
                newest = &item;
        QVERIFY(newest);
        QVERIFY(sheet->rect().contains(placeOf(*sheet, *newest)));
    }
}

QTEST_MAIN(TestSheetView)
#include "tst_sheetview.moc"
