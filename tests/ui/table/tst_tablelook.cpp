// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/table/opentable.h"
#include "ui/table/courtpicture.h"
#include "ui/table/deck.h"
#include "ui/table/inlinebar.h"
#include "ui/table/keybutton.h"
#include "ui/table/panel.h"
#include "ui/table/sheetview.h"

#include <QLabel>
#include <QLineEdit>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

InlineBar* openBar(OpenTable& table) {
    for (auto* bar : table.window().findChildren<InlineBar*>())
        if (bar->isVisible())
            return bar;
    return nullptr;
}

} // namespace

class TestTableLook : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void everythingFitsTheScreen_data();
    void everythingFitsTheScreen();
    void everythingToPressIsLargeEnough_data() { everythingFitsTheScreen_data(); }
    void everythingToPressIsLargeEnough();
    void everyControlHasANameOfItsOwnAndSaysWhatItIs();
    void noTextIsBelowElevenPixels();
    void aBarStaysInTheWindow_data();
    void aBarStaysInTheWindow();
    void theDeckGrowsWithTheWindow();
    void theServerStandsOutsideTheEndLine();
    void darkAndLightDifferAndPlatesDoNot();
};

// clang-format off
void TestTableLook::everythingFitsTheScreen_data() {
    QTest::addColumn<QSize>("size");
    QTest::newRow("the smallest screen")         << QSize(1366, 768);
    QTest::newRow("with a panel of the desktop") << QSize(1366, 720);
    QTest::newRow("and a title bar")             << QSize(1366, 696);
    QTest::newRow("narrow")                      << QSize(1280, 800);
    QTest::newRow("large")                       << QSize(1920, 1080);
}
// clang-format on

void TestTableLook::everythingFitsTheScreen() {
    QFETCH(QSize, size);
    OpenTable table(MatchBuilder().started().play("hvh"), size);
    QCOMPARE(table.window().size(), size);
    const QRect inside = table.window().rect();
    for (const char* name :
         {"sheetView", "sidePanel", "deck", "commandPad", "courtPicture", "noticeStrip", "entryList"}) {
        auto* widget = table.find<QWidget>(name);
        const QRect place(widget->mapTo(&table.window(), QPoint(0, 0)), widget->size());
        QVERIFY2(inside.contains(place), name);
        QVERIFY2(place.height() > 0 && place.width() > 0, name);
    }
    auto* sheet = table.find<SheetView>("sheetView");
    QVERIFY(sheet->height() * 2 > table.window().height()); // the sheet has more than half the height
}

void TestTableLook::everythingToPressIsLargeEnough() {
    QFETCH(QSize, size);
    OpenTable table(MatchBuilder().started(), size);
    table.press(Qt::Key_S);
    for (const QAbstractButton* button : table.window().findChildren<QAbstractButton*>())
        if (button->isVisible())
            QVERIFY2(
                button->width() >= 44 && button->height() >= 44,
                qPrintable(
                    QStringLiteral("%1 %2x%3").arg(button->objectName()).arg(button->width()).arg(button->height())));
}

void TestTableLook::everyControlHasANameOfItsOwnAndSaysWhatItIs() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_S);
    QSet<QString> names;
    for (const QAbstractButton* button : table.window().findChildren<QAbstractButton*>()) {
        if (!button->isVisible())
            continue;
        QVERIFY2(!button->objectName().isEmpty(), qPrintable(button->text()));
        QVERIFY2(!names.contains(button->objectName()), qPrintable(button->objectName()));
        names.insert(button->objectName());
        QVERIFY2(!button->accessibleName().isEmpty() || !button->text().isEmpty(), qPrintable(button->objectName()));
    }
    for (const QLineEdit* line : table.window().findChildren<QLineEdit*>())
        if (line->isVisible())
            QVERIFY2(!line->accessibleName().isEmpty(), qPrintable(line->objectName()));
    for (const char* name : {"sheetView", "courtPicture", "servingCard", "entryList", "noticeStrip"})
        QVERIFY2(!table.find<QWidget>(name)->accessibleName().isEmpty(), name);
}

void TestTableLook::noTextIsBelowElevenPixels() {
    for (const double scale : {1.0, 1.4})
        for (const double size : {6.0, 11.0, 13.5})
            QVERIFY(Look::of(Theme::Light, scale).font(size).pixelSize() >= 11);
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_S);
    for (const QWidget* widget : table.window().findChildren<QWidget*>())
        if (widget->isVisible())
            QVERIFY2(widget->fontInfo().pixelSize() >= 11, qPrintable(widget->objectName()));
}

void TestTableLook::aBarStaysInTheWindow_data() {
    using enum Qt::Key;
    using C = TableCommand;
    QTest::addColumn<QSize>("size");
    QTest::addColumn<TableCommand>("command");
    QTest::addColumn<QList<Qt::Key>>("keys");
    for (const QSize size : {QSize(1366, 768), QSize(1366, 696), QSize(1280, 800), QSize(1920, 1080)}) {
        const auto row = [size](const char* name, TableCommand command, const QList<Qt::Key>& keys) {
            QTest::addRow("%s at %dx%d", name, size.width(), size.height()) << size << command << keys;
        };
        row("substitution", C::LeftSubstitution, {});
        row("exceptional substitution", C::LeftSubstitution, {Key_E});
        row("libero", C::LeftLibero, {});
        row("server", C::WhoServes, {Key_3, Key_R});
        row("card", C::LeftCard, {Key_7});
        row("forfeit", C::Forfeit, {Key_F, Key_M});
        row("new libero", C::LeftRedesignation, {});
        row("strike", C::Correct, {});
        row("missed substitution", C::Correct, {Key_B, Key_S});
    }
}

void TestTableLook::aBarStaysInTheWindow() {
    QFETCH(QSize, size);
    MatchBuilder match;
    match.started();
    Roster roster{Team::Home, {}, {}};
    for (int number = 1; number <= 30; ++number) // the largest bench
        roster.players.push_back({ShirtNumber(number), {}, false, false});
    OpenTable table(match.add(roster), size);
    QFETCH(TableCommand, command);
    QFETCH(QList<Qt::Key>, keys);
    table.window().perform(command);
    for (const Qt::Key key : keys)
        table.press(key);
    const InlineBar* bar = openBar(table);
    QVERIFY(bar);
    const QRect ground = bar->parentWidget()->rect();
    const QRect place = bar->geometry();
    QVERIFY2(
        ground.contains(place),
        qPrintable(
            QStringLiteral("%1x%2 at %3,%4").arg(place.width()).arg(place.height()).arg(place.x()).arg(place.y())));
    for (const QAbstractButton* button : bar->findChildren<QAbstractButton*>())
        if (button->isVisible())
            QVERIFY2(bar->rect().contains(QRect(button->mapTo(bar, QPoint(0, 0)), button->size())),
                     qPrintable(button->objectName()));
    const auto* deck = table.find<Deck>("deck");
    QVERIFY(!bar->geometry().intersects(table.find("teamAreaLeft")->geometry().translated(deck->pos())));
    QVERIFY(!bar->geometry().intersects(table.find("teamAreaRight")->geometry().translated(deck->pos())));
}

void TestTableLook::theDeckGrowsWithTheWindow() {
    OpenTable small(MatchBuilder().started(), {1366, 768});
    OpenTable large(MatchBuilder().started(), {1920, 1080});
    QVERIFY(large.find("teamAreaLeft")->height() > small.find("teamAreaLeft")->height() * 1.3);
    QVERIFY(large.find<SheetView>("sheetView")->width() > small.find<SheetView>("sheetView")->width() * 1.3);
}

void TestTableLook::theServerStandsOutsideTheEndLine() {
    OpenTable table(MatchBuilder().started());
    const auto* court = table.find<CourtPicture>("courtPicture");
    const CourtPlayer server{Team::Home, Side::Left, CourtPosition(1), ShirtNumber(1), false, false, true};
    const CourtPlayer other{Team::Home, Side::Left, CourtPosition(5), ShirtNumber(5), false, false, false};
    QVERIFY(court->centreOf(server).x() + 25 < court->centreOf(other).x());
    QVERIFY(court->centreOf(server).x() > 0);
}

void TestTableLook::darkAndLightDifferAndPlatesDoNot() {
    OpenTable table(MatchBuilder().started());
    const auto colourAt = [&](const char* name, QPoint place) {
        return table.find<QWidget>(name)->grab().toImage().pixelColor(place);
    };
    const QColor panel = colourAt("entryList", {60, 60});
    const QColor plate = colourAt("teamAreaLeft", {200, 110});
    table.window().setLook(LookChoice::Dark);
    QVERIFY(colourAt("entryList", {60, 60}) != panel);
    QCOMPARE(colourAt("teamAreaLeft", {200, 110}), plate);
    table.window().setLook(LookChoice::AsSystem);
    QCOMPARE(colourAt("entryList", {60, 60}), panel);
}

QTEST_MAIN(TestTableLook)
#include "tst_tablelook.moc"
