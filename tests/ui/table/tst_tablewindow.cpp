// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/hands.h"
#include "tests/ui/table/opentable.h"
#include "ui/table/commandpad.h"
#include "ui/table/entrylist.h"
#include "ui/table/noticestrip.h"
#include "ui/table/servingcard.h"
#include "ui/table/sheetview.h"
#include "ui/table/stepcard.h"
#include "ui/table/teamarea.h"
#include "ui/table/topbar.h"

#include <QSignalSpy>

using namespace setfolio;
using namespace setfolio::testing;

class TestTableWindow : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void arrowsAreTheSidesAsTheScorerSeesThem();
    void aClickOnATeamAreaIsARally();
    void aTapOnATeamAreaIsARally();
    void aDoubleClickIsOneRally();
    void aHeldKeyRecordsOnce();
    void serveDrawsTheEmptyRingAndTheResultFillsIt();
    void spaceServesWhateverHasTheFocus();
    void enterPressesTheFocusedButton();
    void replayReServeAndNoServeHaveTheirKeys();
    void undoAndRedoByKeys();
    void keysBelongToSidesWhenTeamsHaveChanged();
    void theHeadSaysWhatIsNext();
    void savedIsSaidWithTheTimeOfDay();
    void paintedComesAfterEachEntry();
    void wholePageAndBack();
    void pagesTurnToEarlierSetsAndHomeComesBack();
    void aSmallChangeRepaintsLittle();
};

void TestTableWindow::arrowsAreTheSidesAsTheScorerSeesThem() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_Left);
    table.press(Qt::Key_Left);
    table.press(Qt::Key_Right);
    QCOMPARE(table.score().home, 2);
    QCOMPARE(table.score().visitors, 1);
    QCOMPARE(table.set().serving, Team::Visitors);
}

void TestTableWindow::aClickOnATeamAreaIsARally() {
    OpenTable table(MatchBuilder().started());
    table.click("teamAreaRight");
    table.click("teamAreaLeft");
    QCOMPARE(table.score().home, 1);
    QCOMPARE(table.score().visitors, 1);
    QCOMPARE(table.find<TeamArea>("teamAreaLeft")->accessibleName(),
             QStringLiteral("Saltmarsh Herons 1 wins the rally, serves"));
}

void TestTableWindow::aTapOnATeamAreaIsARally() {
    OpenTable table(MatchBuilder().started());
    tap(*table.find("teamAreaLeft"));
    QTRY_COMPARE(table.score().home, 1);
    tap(*table.find("timeOutLeft"));
    QTRY_COMPARE(table.set().teams.home.timeOuts.size(), 1U);
}

void TestTableWindow::aDoubleClickIsOneRally() {
    OpenTable table(MatchBuilder().started());
    QTest::mouseClick(table.find("teamAreaLeft"), Qt::LeftButton);
    QTest::mouseDClick(table.find("teamAreaLeft"), Qt::LeftButton);
    QCOMPARE(table.score().home, 1);
}

void TestTableWindow::aHeldKeyRecordsOnce() {
    OpenTable table(MatchBuilder().started());
    QWidget* focus = table.window().focusWidget();
    QTest::keyPress(focus, Qt::Key_Left);
    for (int i = 0; i < 5; ++i)
        QTest::simulateEvent(focus, true, Qt::Key_Left, Qt::NoModifier, {}, true);
    QTest::keyRelease(focus, Qt::Key_Left);
    QCOMPARE(table.score().home, 1);
}

void TestTableWindow::serveDrawsTheEmptyRingAndTheResultFillsIt() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_Space);
    QVERIFY(table.set().contacted);
    const auto& mark = [&]() -> const Mark& {
        return table.window().file().record().sets.back().teams.home.terms.back().marks.back();
    };
    QVERIFY(std::holds_alternative<Awaiting>(mark().content));
    table.press(Qt::Key_Left);
    QCOMPARE(inWords(mark()), QStringLiteral("(1)"));
    QVERIFY(!table.set().contacted);
}

void TestTableWindow::spaceServesWhateverHasTheFocus() {
    OpenTable table(MatchBuilder().started());
    table.find("undo")->setFocus(Qt::TabFocusReason);
    table.press(Qt::Key_Space);
    QVERIFY(table.set().contacted);
}

void TestTableWindow::enterPressesTheFocusedButton() {
    OpenTable table(MatchBuilder().started());
    table.find("teamAreaRight")->setFocus(Qt::TabFocusReason);
    table.press(Qt::Key_Return);
    QCOMPARE(table.score().visitors, 1);
}

void TestTableWindow::replayReServeAndNoServeHaveTheirKeys() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_Y);
    QVERIFY(std::get<Replay>(table.newest().entry) == Replay{Again::Replay});
    table.press(Qt::Key_Y, Qt::ShiftModifier);
    QVERIFY(std::get<Replay>(table.newest().entry) == Replay{Again::ReServe});
    table.press(Qt::Key_N);
    QVERIFY(std::holds_alternative<NoServe>(table.newest().entry));
    QCOMPARE(table.score().visitors, 1);
}

void TestTableWindow::undoAndRedoByKeys() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_Left);
    const std::size_t before = table.recorded();
    table.press(Qt::Key_Backspace);
    QCOMPARE(table.score().home, 0);
    QCOMPARE(table.recorded(), before + 1); // nothing is erased: undo adds
    QVERIFY(table.find<EntryList>("entryList")->entries().at(1).struck);
    table.press(Qt::Key_Z, Qt::ControlModifier | Qt::ShiftModifier);
    QCOMPARE(table.score().home, 1);
    table.press(Qt::Key_Z, Qt::ControlModifier);
    QCOMPARE(table.score().home, 0);
}

void TestTableWindow::keysBelongToSidesWhenTeamsHaveChanged() {
    MatchBuilder match;
    match.open()
        .toss(Team::Home, Team::Visitors)
        .lineUp(Team::Home, {1, 2, 3, 4, 5, 6})
        .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16})
        .start();
    OpenTable table(match);
    table.press(Qt::Key_Left);
    QCOMPARE(table.score().visitors, 1);
    table.press(Qt::Key_D);
    QCOMPARE(std::get<TimeOut>(table.newest().entry).team, Team::Visitors);
}

void TestTableWindow::theHeadSaysWhatIsNext() {
    MatchBuilder match;
    match.open(3);
    OpenTable table(match);
    const auto head = [&] { return table.find<StepCard>("stepCard")->accessibleName().section(u'.', 0, 0); };
    table.dialogs.toss = [](QWidget*, const MatchState&) { return Answer{Toss{Team::Visitors, Team::Home}, {}}; };
    table.dialogs.lineUp = [](QWidget*, const MatchState&, Team team) {
        const bool home = team == Team::Home;
        return std::vector<Answer>{
            {LineUp{team, home ? six({1, 2, 3, 4, 5, 6}) : six({11, 12, 13, 14, 15, 16}), {}, {}}, {}}};
    };
    table.dialogs.setEnd = [](QWidget*, const MatchState&, QTime now) { return Answer{SetEnded{now}, {}}; };
    table.dialogs.closeMatch = [](QWidget*, const MatchState&) { return Answer{MatchClosed{}, {}}; };
    QCOMPARE(head(), QStringLiteral("Next: the toss"));
    table.press(Qt::Key_Return);
    QCOMPARE(head(), QStringLiteral("Next: line-up of SAL"));
    table.press(Qt::Key_Return);
    QCOMPARE(head(), QStringLiteral("Next: line-up of QRL"));
    table.click("teamAreaRight"); // a mouse is as good as Enter
    QCOMPARE(head(), QStringLiteral("Next: start of set 1"));
    table.press(Qt::Key_Return);
    QCOMPARE(table.set().startedAt, QTime(15, 1));
    QVERIFY(table.find<ServingCard>("servingCard")->accessibleName().startsWith(u"Serving now: QRL 11, Slot I"));
    table.press(Qt::Key_Space);
    QVERIFY(table.find<ServingCard>("servingCard")->accessibleName().startsWith(u"Rally: who wins it?"));
    for (int i = 0; i < 25; ++i)
        table.press(Qt::Key_Left);
    QCOMPARE(head(), QStringLiteral("SAL wins set 1, 25–0"));
    table.press(Qt::Key_Left);
    QCOMPARE(table.score().home, 25);
    table.press(Qt::Key_Return);
    QCOMPARE(table.set().number, 2);
    const auto putOff = [&] { // the sign-off is closed without a signature, and waits
        QCOMPARE(head(), QStringLiteral("Next: sign-off of set 1"));
        table.press(Qt::Key_Return);
    };
    putOff();
    QCOMPARE(head(), QStringLiteral("Next: line-up of QRL")); // the sides have changed
    table.press(Qt::Key_Return);
    table.press(Qt::Key_Return);
    table.press(Qt::Key_Return);
    for (int i = 0; i < 25; ++i)
        table.press(Qt::Key_Right);
    table.press(Qt::Key_Return);
    QCOMPARE(head(), QStringLiteral("SAL wins the match, 2–0"));
    table.press(Qt::Key_Return);
    QVERIFY(table.state().closed);
    putOff();
    QCOMPARE(head(), QStringLiteral("The match is closed"));
    table.press(Qt::Key_Return);
    QCOMPARE(table.printed, 1);
}

void TestTableWindow::savedIsSaidWithTheTimeOfDay() {
    OpenTable table(MatchBuilder().started());
    table.timeOfDay = QTime(19, 1, 22);
    table.press(Qt::Key_Left);
    QCOMPARE(table.find<TopBar>("topBar")->savedWords(), QStringLiteral("Saved 19:01:22"));
}

void TestTableWindow::paintedComesAfterEachEntry() {
    OpenTable table(MatchBuilder().started());
    QSignalSpy painted(&table.window(), &TableWindow::painted);
    table.press(Qt::Key_Left);
    QTRY_COMPARE(painted.size(), 1);
    QCOMPARE(painted.front().front().value<EntryNumber>(), table.newest().number);
}

void TestTableWindow::wholePageAndBack() {
    OpenTable table(MatchBuilder().started());
    auto* sheet = table.find<SheetView>("sheetView");
    table.press(Qt::Key_F8);
    QVERIFY(sheet->sight() == Sight::WholePage);
    table.click("liveBand");
    QVERIFY(sheet->sight() != Sight::WholePage);
    table.click("wholePage");
    QVERIFY(sheet->sight() == Sight::WholePage);
    table.press(Qt::Key_F7);
    QVERIFY(sheet->sight() != Sight::WholePage);
}

void TestTableWindow::pagesTurnToEarlierSetsAndHomeComesBack() {
    MatchBuilder match;
    match.started();
    for (int i = 0; i < 25; ++i)
        match.play("h");
    match.add(SetEnded{QTime(19, 20)});
    OpenTable table(match);
    auto* sheet = table.find<SheetView>("sheetView");
    QCOMPARE(sheet->shownSet(), 2);
    table.press(Qt::Key_PageUp);
    QCOMPARE(sheet->shownSet(), 1);
    QVERIFY(!sheet->isLive());
    table.press(Qt::Key_Home);
    QCOMPARE(sheet->shownSet(), 2);
    QVERIFY(sheet->isLive());
}

void TestTableWindow::aSmallChangeRepaintsLittle() {
    OpenTable table(MatchBuilder().started().play("hvhvhv"));
    auto* sheet = table.find<SheetView>("sheetView");
    QTest::qWait(50);
    struct Watch : QObject {
        int area = 0;
        bool eventFilter(QObject*, QEvent* event) override {
            if (event->type() == QEvent::Paint)
                for (const QRect& part : static_cast<QPaintEvent*>(event)->region())
                    area += part.width() * part.height();
            return false;
        }
    } watch;
    sheet->installEventFilter(&watch);
    table.press(Qt::Key_Space);
    QTRY_VERIFY(watch.area > 0);
    QVERIFY2(watch.area * 10 < sheet->width() * sheet->height(), qPrintable(QString::number(watch.area)));
}

QTEST_MAIN(TestTableWindow)
#include "tst_tablewindow.moc"
