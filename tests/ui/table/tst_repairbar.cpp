// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/hands.h"
#include "tests/ui/table/opentable.h"
#include "ui/table/entrylist.h"
#include "ui/table/noticestrip.h"
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

/// The screen of the tests is smaller than the window: it is moved until the place is under the finger.
void tapOn(OpenTable& table, QWidget& widget, QPoint at = {}) {
    const QPoint place = at.isNull() ? widget.rect().center() : at;
    table.window().move(table.window().pos() + QPoint(400, 400) - widget.mapToGlobal(place));
    QCoreApplication::processEvents();
    tap(widget, place);
}

/// The line that many under the newest one, in the list beside the sheet.
void tapEntry(OpenTable& table, std::size_t line) {
    auto* list = table.find<EntryList>("entryList");
    tapOn(table, *list, QPoint(list->width() / 2, static_cast<int>(list->middleOf(line))));
    QTRY_VERIFY(bar(table).isVisible());
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
    void aPressOnAnEntryOfTheListChoosesIt();
    void aFingerOnAnEntryOfTheListStrikesIt();
    void aFingerOnAnEntryOfTheListChangesIt();
    void aFingerOnAnEntryOfTheListPutsInWhatWasMissed();
    void aFingerGoesOnInTheListOfTheBar();
    void aFingerChoosesAMarkOnTheSheet();
    void somethingElseIsRecordedAtTheTableAsItStood();
    void aCardThatWasMissedIsPutInByKeys();
    void aTimeOutOfTheWrongTeamIsRecordedAnew();
    void anOlderRallyBecomesAReplayByMouse();
    void whatIsAgainstTheRulesThereNeedsTheReferee();
    void escapeAndUndoGiveThePlaceUp_data();
    void escapeAndUndoGiveThePlaceUp();
    void correctionsAreUndoneAndRedoneByTheStandardKeys_data();
    void correctionsAreUndoneAndRedoneByTheStandardKeys();
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
    QCOMPARE(substitutionsOf(table.set().teams.visitors), 1);
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
    QCOMPARE(table.find("repairHow1")->text(), QStringLiteral("Record it anew"));
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

void TestRepairBar::aPressOnAnEntryOfTheListChoosesIt() {
    OpenTable table(MatchBuilder().started().play("hhv"));
    auto* list = table.find<EntryList>("entryList");
    const auto line = [list](std::size_t index) {
        return QPoint(list->width() / 2, static_cast<int>(list->middleOf(index)));
    };
    QTest::mouseClick(list, Qt::LeftButton, {}, line(1));
    QVERIFY(bar(table).isVisible());
    QCOMPARE(bar(table).target().value, table.newest().number.value - 1);
    table.press(Qt::Key_Return);
    QCOMPARE(table.score().home, 1);
}

void TestRepairBar::aFingerOnAnEntryOfTheListStrikesIt() {
    OpenTable table(MatchBuilder().started().play("hhv"));
    tapEntry(table, 1);
    QVERIFY(bar(table).isVisible());
    QCOMPARE(bar(table).target().value, table.newest().number.value - 1);
    tapOn(table, *table.find("repairHow0"));
    QTRY_VERIFY2(bar(table).preview().startsWith(u"The score becomes SAL 1–1 QRL."), qPrintable(bar(table).preview()));
    QCOMPARE(table.score().home, 2); // not yet
    tapOn(table, *recordIn(table));
    QTRY_COMPARE(table.score().home, 1);
    QVERIFY(std::holds_alternative<Strike>(table.newest().entry));
    QVERIFY(!bar(table).isVisible());
}

void TestRepairBar::aFingerOnAnEntryOfTheListChangesIt() {
    OpenTable table(MatchBuilder().started().play("hhv"));
    tapEntry(table, 1);
    const EntryNumber target = bar(table).target();
    tapOn(table, *table.find("repairHow1"));
    QTRY_VERIFY2(bar(table).preview().startsWith(u"The score becomes SAL 1–2 QRL."), qPrintable(bar(table).preview()));
    tapOn(table, *recordIn(table));
    QTRY_COMPARE(table.score().visitors, 2);
    QVERIFY(std::get<RallyWon>(table.newest().entry) == RallyWon{Team::Visitors});
    QVERIFY(table.newest().placed == (Placed{Placed::How::InsteadOf, target, {}}));
}

void TestRepairBar::aFingerOnAnEntryOfTheListPutsInWhatWasMissed() {
    OpenTable table(MatchBuilder().started().play("hv"));
    tapEntry(table, 0);
    const EntryNumber target = bar(table).target();
    tapOn(table, *table.find("repairHow2"));
    QTRY_VERIFY(table.find("missed0")->isVisible());
    tapOn(table, *table.find("missed0"));
    QTRY_VERIFY2(bar(table).preview().startsWith(u"The score becomes SAL 2–1 QRL."), qPrintable(bar(table).preview()));
    tapOn(table, *recordIn(table));
    QTRY_COMPARE(table.score().home, 2);
    QVERIFY(table.newest().placed == (Placed{Placed::How::Before, target, {}}));
}

/// The lines beside the sheet are close together; in the bar each is as high as a finger needs.
void TestRepairBar::aFingerGoesOnInTheListOfTheBar() {
    OpenTable table(MatchBuilder().started().play("hhv"));
    tapEntry(table, 0);
    const EntryNumber newest = bar(table).target();
    auto* list = table.find<QListWidget>("repairList");
    const QRect next = list->visualItemRect(list->item(1));
    QVERIFY(next.height() >= 44);
    tapOn(table, *list->viewport(), next.center());
    QTRY_COMPARE(bar(table).target().value, newest.value - 1);
}

void TestRepairBar::aFingerChoosesAMarkOnTheSheet() {
    OpenTable table(MatchBuilder().started().play("hhvhv"));
    auto* sheet = table.find<SheetView>("sheetView");
    const EntryNumber second(table.newest().number.value - 3); // the second point
    bool found = false;
    for (int y = 4; y < std::min(sheet->height(), 500) && !found; y += 6)
        for (int x = 4; x < std::min(sheet->width(), 780) && !found; x += 6) {
            tap(*sheet, QPoint(x, y));
            found = bar(table).isVisible() && bar(table).target() == second;
        }
    QVERIFY(found);
    table.press(Qt::Key_O);
    table.press(Qt::Key_Return);
    QCOMPARE(table.newest().placed->target, second);
    QVERIFY(table.newest().placed->how == Placed::How::InsteadOf);
}

void TestRepairBar::somethingElseIsRecordedAtTheTableAsItStood() {
    OpenTable table(MatchBuilder().started().play("hhv"));
    table.press(Qt::Key_C);
    table.find<QLineEdit>("repairWhy")->setFocus(Qt::TabFocusReason);
    table.type("not written");
    table.click("repairHow2");
    table.click("missed6");
    QVERIFY(!bar(table).isVisible());
    const auto& told = table.find<NoticeStrip>("noticeStrip")->view().told;
    QVERIFY2(told.join(u' ').startsWith(u"Before “"), qPrintable(told.join(u' ')));
    table.press(Qt::Key_F); // the libero of the left side, as the table stood before the last rally
    table.type("5");
    table.press(Qt::Key_Return);
    QVERIFY(bar(table).isVisible()); // what it changes is looked at first
    QVERIFY2(bar(table).title().startsWith(u"Before “"), qPrintable(bar(table).title()));
    QVERIFY2(bar(table).preview().startsWith(u"The score stays SAL 2–1 QRL."), qPrintable(bar(table).preview()));
    const std::size_t before = table.recorded();
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before + 1);
    QVERIFY(std::get<LiberoIn>(table.newest().entry) == (LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(5)}));
    QCOMPARE(table.newest().placed->reason, QStringLiteral("not written"));
    QVERIFY(table.newest().placed->how == Placed::How::Before);
    table.press(Qt::Key_Left); // the table stands where play stands again
    QCOMPARE(table.score().home, 3);
}

void TestRepairBar::aCardThatWasMissedIsPutInByKeys() {
    OpenTable table(MatchBuilder().started().play("hv"));
    table.press(Qt::Key_C);
    table.press(Qt::Key_B);
    table.press(Qt::Key_E);
    table.press(Qt::Key_H);
    table.type("12");
    table.press(Qt::Key_Return);
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Sanction>(table.newest().entry).who == Member(ShirtNumber(12)));
    QVERIFY(table.newest().placed.has_value());
    QCOMPARE(table.state().sanctions.front().score.visitors, 0); // before the rally it was put in front of
}

void TestRepairBar::aTimeOutOfTheWrongTeamIsRecordedAnew() {
    OpenTable table(MatchBuilder().started().play("h").add(TimeOut{Team::Home}).play("v"));
    table.press(Qt::Key_C);
    table.press(Qt::Key_Down);
    table.press(Qt::Key_O);
    QCOMPARE(phaseOf(table.state()), Phase::ReadyToServe);
    table.press(Qt::Key_K);
    QVERIFY(bar(table).isVisible());
    QVERIFY2(bar(table).title().startsWith(u"In place of “"), qPrintable(bar(table).title()));
    QVERIFY2(bar(table).title().endsWith(u": QRL time-out at 0–1"), qPrintable(bar(table).title()));
    table.press(Qt::Key_Return);
    QCOMPARE(table.set().teams.home.timeOuts.size(), std::size_t(0));
    QCOMPARE(table.set().teams.visitors.timeOuts.front().opponents, 1);
    QCOMPARE(table.set().teams.visitors.timeOuts.front().own, 0);
}

void TestRepairBar::anOlderRallyBecomesAReplayByMouse() {
    OpenTable table(MatchBuilder().started().play("hhv"));
    table.click("correct");
    bar(table).findChild<QListWidget*>(QStringLiteral("repairList"))->setCurrentRow(1);
    table.click("repairHow2");
    table.click("missed6");
    table.click("replay");
    QTest::mouseClick(recordIn(table), Qt::LeftButton);
    QVERIFY(std::holds_alternative<Replay>(table.newest().entry));
    table.press(Qt::Key_C); // and the rally that it was goes
    table.press(Qt::Key_Down);
    table.press(Qt::Key_Return);
    QCOMPARE(table.score().home, 1);
    QCOMPARE(table.score().visitors, 1);
}

void TestRepairBar::whatIsAgainstTheRulesThereNeedsTheReferee() {
    OpenTable table(MatchBuilder().started().add(TimeOut{Team::Home}).add(TimeOut{Team::Home}).play("h"));
    table.press(Qt::Key_C);
    table.press(Qt::Key_B);
    table.press(Qt::Key_E);
    const std::size_t before = table.recorded();
    table.press(Qt::Key_D);
    QVERIFY(bar(table).sentence().contains(u"time-out 3 of SAL"));
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before);
    table.type("league rule");
    table.press(Qt::Key_Return);
    QCOMPARE(table.newest().overruled, std::optional(QStringLiteral("league rule")));
    QCOMPARE(table.set().teams.home.timeOuts.size(), std::size_t(3));
}

void TestRepairBar::escapeAndUndoGiveThePlaceUp_data() {
    QTest::addColumn<QList<Qt::Key>>("keys");
    QTest::newRow("at the table") << QList<Qt::Key>{Qt::Key_Escape};
    QTest::newRow("undo") << QList<Qt::Key>{Qt::Key_Backspace};
    QTest::newRow("to be confirmed") << QList<Qt::Key>{Qt::Key_D, Qt::Key_Escape};
    QTest::newRow("another correction") << QList<Qt::Key>{Qt::Key_C, Qt::Key_Escape};
}

void TestRepairBar::escapeAndUndoGiveThePlaceUp() {
    QFETCH(QList<Qt::Key>, keys);
    OpenTable table(MatchBuilder().started().play("hhv"));
    const std::size_t before = table.recorded();
    for (const Qt::Key key : {Qt::Key_C, Qt::Key_B, Qt::Key_E})
        table.press(key);
    for (const Qt::Key key : keys)
        table.press(key);
    QCOMPARE(table.recorded(), before);
    QVERIFY(table.find<NoticeStrip>("noticeStrip")->view().told.isEmpty());
    table.press(Qt::Key_Right);
    QVERIFY(!table.newest().placed);
    QCOMPARE(table.score().visitors, 2);
}

void TestRepairBar::correctionsAreUndoneAndRedoneByTheStandardKeys_data() {
    using Keys = QList<Qt::Key>;
    QTest::addColumn<Keys>("keys");
    QTest::addColumn<QString>("corrected"); // score and time-outs of home
    QTest::newRow("strike") << Keys{Qt::Key_C, Qt::Key_Down, Qt::Key_Down, Qt::Key_Return} << QStringLiteral("1:1 1");
    QTest::newRow("change") << Keys{Qt::Key_C, Qt::Key_O, Qt::Key_Return} << QStringLiteral("3:0 1");
    QTest::newRow("put in") << Keys{Qt::Key_C, Qt::Key_B, Qt::Key_D, Qt::Key_Return} << QStringLiteral("2:1 2");
    QTest::newRow("put in at the table") << Keys{Qt::Key_C, Qt::Key_B, Qt::Key_E, Qt::Key_Left, Qt::Key_Return}
                                         << QStringLiteral("3:1 1");
    QTest::newRow("record anew") << Keys{Qt::Key_C, Qt::Key_Down, Qt::Key_O, Qt::Key_K, Qt::Key_Return}
                                 << QStringLiteral("2:1 0");
}

void TestRepairBar::correctionsAreUndoneAndRedoneByTheStandardKeys() {
    QFETCH(QList<Qt::Key>, keys);
    QFETCH(QString, corrected);
    OpenTable table(MatchBuilder().started().play("hh").add(TimeOut{Team::Home}).play("v"));
    const auto standing = [&table] {
        return QStringLiteral("%1:%2 %3")
            .arg(table.score().home)
            .arg(table.score().visitors)
            .arg(table.set().teams.home.timeOuts.size());
    };
    for (const Qt::Key key : keys)
        table.press(key);
    QCOMPARE(standing(), corrected);
    const QKeySequence redo = QKeySequence::keyBindings(QKeySequence::Redo).first();
    table.press(Qt::Key_Z, Qt::ControlModifier);
    QCOMPARE(standing(), QStringLiteral("2:1 1"));
    table.press(static_cast<Qt::Key>(redo[0].key()), redo[0].keyboardModifiers());
    QCOMPARE(standing(), corrected);
    table.press(Qt::Key_Backspace);
    QCOMPARE(standing(), QStringLiteral("2:1 1"));
}

QTEST_MAIN(TestRepairBar)
#include "tst_repairbar.moc"
