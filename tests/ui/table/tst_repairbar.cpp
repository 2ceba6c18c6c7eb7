// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/hands.h"
#include "tests/ui/table/opentable.h"
#include "ui/table/entrylist.h"
#include "ui/table/repairbar.h"
#include "ui/table/sheetview.h"

#include <QLineEdit>
#include <QListWidget>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

RepairBar& bar(OpenTable& table) {
    return *table.find<RepairBar>("repairBar");
}

QAbstractButton* recordIn(OpenTable& table) {
    return bar(table).findChild<QAbstractButton*>(QStringLiteral("barRecord"));
}

} // namespace

class TestRepairBar : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void keysStrikeAnOlderEntry();
    void theOtherWinnerTakesItsPlace();
    void aMissedRallyIsPutIn();
    void aMissedSubstitutionIsPutInByKeys();
    void aMissedTimeOutIsPutInByMouse();
    void otherNumbersTakeThePlaceOfASubstitution();
    void aFingerStrikes();
    void aMarkOnTheSheetChoosesItsEntry();
    void whatIsStruckIsNotStruckAgain();
    void thePreviewSaysWhatChanges();
    void anUnlawfulOneNeedsTheReferee();
    void escapeCorrectsNothing();
    void undoTakesACorrectionBack();
    void onlyWhatCanBeChangedOffersAChange();
    void laterEntriesThatBecomeQuestionableAreSaid();
};

void TestRepairBar::keysStrikeAnOlderEntry() {
    OpenTable table(MatchBuilder().started().play("hhv"));
    table.press(Qt::Key_C);
    QVERIFY(bar(table).isVisible());
    QCOMPARE(bar(table).target(), table.newest().number);
    table.press(Qt::Key_Down);
    table.find<QLineEdit>("repairWhy")->setFocus(Qt::TabFocusReason);
    table.type("touched");
    table.press(Qt::Key_Return);
    const auto& strike = std::get<Strike>(table.newest().entry);
    QCOMPARE(strike.reason, QStringLiteral("touched"));
    QCOMPARE(strike.target.value, table.newest().number.value - 2);
    QCOMPARE(table.score().home, 1);
    QCOMPARE(table.score().visitors, 1);
    QVERIFY(!bar(table).isVisible());
}

void TestRepairBar::theOtherWinnerTakesItsPlace() {
    OpenTable table(MatchBuilder().started().play("hh"));
    table.press(Qt::Key_C);
    table.press(Qt::Key_O);
    table.press(Qt::Key_Return);
    QVERIFY(std::get<RallyWon>(table.newest().entry) == RallyWon{Team::Visitors});
    QVERIFY(table.newest().placed && table.newest().placed->how == Placed::How::InsteadOf);
    QCOMPARE(table.score().home, 1);
    QCOMPARE(table.score().visitors, 1);
    QVERIFY(table.find<EntryList>("entryList")->entries().at(1).struck);
}

void TestRepairBar::aMissedRallyIsPutIn() {
    OpenTable table(MatchBuilder().started().play("hv"));
    table.press(Qt::Key_C);
    table.press(Qt::Key_B);
    table.press(Qt::Key_Left); // the left side's rally, as at the table
    QVERIFY2(bar(table).preview().startsWith(u"The score becomes SAL 2–1 QRL."), qPrintable(bar(table).preview()));
    table.press(Qt::Key_Return);
    QVERIFY(table.newest().placed && table.newest().placed->how == Placed::How::Before);
    QCOMPARE(table.score().home, 2);
    QCOMPARE(table.score().visitors, 1);
    QCOMPARE(table.set().serving, Team::Visitors);
}

void TestRepairBar::aMissedSubstitutionIsPutInByKeys() {
    OpenTable table(MatchBuilder().started().play("hv"));
    table.press(Qt::Key_C);
    table.press(Qt::Key_B);
    table.press(Qt::Key_L);
    table.type("20");
    table.press(Qt::Key_Return); // who went out? on to the second field
    QCOMPARE(table.window().focusWidget()->objectName(), QStringLiteral("repairOut"));
    table.type("13");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Substitution>(table.newest().entry) ==
            (Substitution{Team::Visitors, ShirtNumber(20), ShirtNumber(13)}));
    QCOMPARE(table.set().teams.visitors.substitutions, 1);
}

void TestRepairBar::aMissedTimeOutIsPutInByMouse() {
    OpenTable table(MatchBuilder().started().play("hhv"));
    table.click("correct");
    table.click("repairHow2");
    table.click("missed4");
    QTest::mouseClick(recordIn(table), Qt::LeftButton);
    QVERIFY(std::get<TimeOut>(table.newest().entry) == TimeOut{Team::Home});
    QCOMPARE(table.set().teams.home.timeOuts.front().own, 2); // before the point it was put in front of
    QCOMPARE(table.set().teams.home.timeOuts.front().opponents, 0);
}

void TestRepairBar::otherNumbersTakeThePlaceOfASubstitution() {
    OpenTable table(MatchBuilder().started().substitute(Team::Home, 7, 3));
    table.press(Qt::Key_C);
    table.press(Qt::Key_O);
    table.find<QLineEdit>("repairOut")->setFocus(Qt::TabFocusReason);
    table.find<QLineEdit>("repairOut")->selectAll();
    table.type("4");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Substitution>(table.newest().entry) == (Substitution{Team::Home, ShirtNumber(7), ShirtNumber(4)}));
    QCOMPARE(onCourt(table.set().teams.home, Slot(3)), ShirtNumber(3));
    QCOMPARE(onCourt(table.set().teams.home, Slot(4)), ShirtNumber(7));
}

void TestRepairBar::aFingerStrikes() {
    OpenTable table(MatchBuilder().started().play("h"));
    table.press(Qt::Key_C);
    tap(*table.find("repairHow0"));
    table.press(Qt::Key_Return); // the button lies beyond the screen of the tests
    QCOMPARE(table.score().home, 0);
}

void TestRepairBar::aMarkOnTheSheetChoosesItsEntry() {
    OpenTable table(MatchBuilder().started().play("hhvhv"));
    auto* sheet = table.find<SheetView>("sheetView");
    const EntryNumber second(table.newest().number.value - 3); // the second point
    bool found = false;
    for (int y = 4; y < sheet->height() && !found; y += 4)
        for (int x = 4; x < sheet->width() && !found; x += 4) {
            QTest::mouseClick(sheet, Qt::LeftButton, {}, QPoint(x, y));
            found = bar(table).isVisible() && bar(table).target() == second;
        }
    QVERIFY(found);
    table.press(Qt::Key_Return);
    QCOMPARE(std::get<Strike>(table.newest().entry).target, second);
}

void TestRepairBar::whatIsStruckIsNotStruckAgain() {
    OpenTable table(MatchBuilder().started().play("h").undo());
    const std::size_t before = table.recorded();
    table.press(Qt::Key_C);
    QVERIFY(bar(table).sentence().startsWith(u"This entry is struck already"));
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before);
}

void TestRepairBar::thePreviewSaysWhatChanges() {
    OpenTable table(MatchBuilder().started().play("hh"));
    table.press(Qt::Key_C);
    QVERIFY2(bar(table).preview().startsWith(u"The score becomes SAL 1–0 QRL."), qPrintable(bar(table).preview()));
    table.press(Qt::Key_O);
    QVERIFY2(bar(table).preview().contains(u"QRL 12 serves next, not SAL 1."), qPrintable(bar(table).preview()));
    QVERIFY(bar(table).preview().endsWith(u"No later entry becomes questionable."));
}

void TestRepairBar::anUnlawfulOneNeedsTheReferee() {
    MatchBuilder match;
    match.started().add(TimeOut{Team::Home}).add(TimeOut{Team::Home}).play("h");
    OpenTable table(match);
    const std::size_t before = table.recorded();
    table.press(Qt::Key_C);
    table.press(Qt::Key_B);
    table.press(Qt::Key_D);
    QVERIFY(bar(table).sentence().contains(u"time-out 3 of SAL"));
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before);
    table.type("league rule");
    table.press(Qt::Key_Return);
    QCOMPARE(table.newest().overruled, std::optional(QStringLiteral("league rule")));
}

void TestRepairBar::escapeCorrectsNothing() {
    OpenTable table(MatchBuilder().started().play("h"));
    const std::size_t before = table.recorded();
    table.press(Qt::Key_C);
    table.press(Qt::Key_O);
    table.press(Qt::Key_Escape);
    QCOMPARE(table.recorded(), before);
    table.press(Qt::Key_Left);
    QCOMPARE(table.score().home, 2);
}

void TestRepairBar::undoTakesACorrectionBack() {
    OpenTable table(MatchBuilder().started().play("hh"));
    table.press(Qt::Key_C);
    table.press(Qt::Key_O);
    table.press(Qt::Key_Return);
    table.press(Qt::Key_Backspace);
    QCOMPARE(table.score().home, 2);
    QCOMPARE(table.score().visitors, 0);
}

void TestRepairBar::onlyWhatCanBeChangedOffersAChange() {
    OpenTable table(MatchBuilder().started().play("h").add(TimeOut{Team::Home}));
    table.press(Qt::Key_C);
    QCOMPARE(table.find("repairHow1")->text(), QStringLiteral("Put in before it"));
    table.press(Qt::Key_Down);
    QCOMPARE(table.find("repairHow1")->text(), QStringLiteral("Other winner"));
    table.press(Qt::Key_O);
    table.press(Qt::Key_Up);
    const std::size_t before = table.recorded();
    table.press(Qt::Key_Return); // back to striking, where there is nothing to change
    QCOMPARE(table.recorded(), before + 1);
    QVERIFY(std::holds_alternative<Strike>(table.newest().entry));
}

void TestRepairBar::laterEntriesThatBecomeQuestionableAreSaid() {
    MatchBuilder match;
    match.started().substitute(Team::Home, 7, 3).play("h").substitute(Team::Home, 3, 7);
    OpenTable table(match);
    table.press(Qt::Key_C);
    table.press(Qt::Key_Down);
    table.press(Qt::Key_Down);
    QVERIFY2(bar(table).preview().contains(u"become questionable: 1. The first is “3 in for 7”"),
             qPrintable(bar(table).preview()));
}

QTEST_MAIN(TestRepairBar)
#include "tst_repairbar.moc"
