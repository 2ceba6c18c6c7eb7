// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/table/opentable.h"
#include "ui/table/askbar.h"
#include "ui/table/conductor.h"
#include "ui/table/liberobar.h"
#include "ui/table/noticestrip.h"
#include "ui/table/timeoutcard.h"

#include <QLineEdit>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

/// A set in which home has two liberos, 8 and 9, and the visitors none.
MatchBuilder withTwoLiberos() {
    MatchBuilder match;
    return match.open()
        .toss(Team::Home)
        .lineUp(Team::Home, {1, 2, 3, 4, 5, 6}, {ShirtNumber(8), ShirtNumber(9)})
        .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16})
        .start();
}

const StripView& strip(OpenTable& table) {
    return table.find<NoticeStrip>("noticeStrip")->view();
}

} // namespace

class TestConductor : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aTimeOutIsRecordedAndCountsDown();
    void theTimeOutLeavesTheKeyboardAlone();
    void theTimeOutCardIsPutAway();
    void undoingTheTimeOutStopsItsCard();
    void theSecondTimeOutIsTold();
    void theThirdTimeOutNeedsTheReferee();
    void escapeLeavesTheThirdTimeOutUnrecorded();
    void aSingleLiberoServesByOneKeyPressedTwice();
    void ofTwoLiberosOneIsChosen();
    void theLiberoServesNoMoreByTheSameKey();
    void aSecondSlotOfTheLiberoNeedsTheReferee();
    void aTeamWithoutLiberosIsTold();
    void theLiberoOfTheReceiversDoesNotServe();
    void aSecondReServeNeedsTheReferee();
    void aPenaltyPointAsksWhatFor();
    void aRemarkIsOneLine();
    void lettersInARemarkAreNoCommands();
    void theServeContactedTwiceIsSaid();
    void aDialogThatIsCancelledRecordsNothing();
    void theRefereesWordOfADialogIsRecorded();
    void aRosterIsChangedDuringTheSet();
    void theOfficialsAreChangedDuringTheSet();
    void setPointIsToldBesideTheRest();
    void whereItIsNotToldSetPointIsOnlyShown();
    void theCardOfATimeOutRecordsTheComparison();
};

void TestConductor::aTimeOutIsRecordedAndCountsDown() {
    OpenTable table(MatchBuilder().started().play("hhv"));
    table.press(Qt::Key_D);
    QVERIFY(std::get<TimeOut>(table.newest().entry) == TimeOut{Team::Home});
    auto* card = table.find<TimeOutCard>("timeOutCard");
    QVERIFY(card->isVisible());
    QCOMPARE(card->view().sides.left.points, QStringLiteral("2"));
    QCOMPARE(card->view().server, QStringLiteral("QRL 12, slot I"));
    table.now = table.now.addSecs(17);
    QTRY_COMPARE(card->elapsed(), 17);
}

void TestConductor::theTimeOutLeavesTheKeyboardAlone() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_K);
    table.press(Qt::Key_Space);
    QVERIFY(table.set().contacted);
    QVERIFY(!table.find<TimeOutCard>("timeOutCard")->isVisible());
}

void TestConductor::theTimeOutCardIsPutAway() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_D);
    table.click("timeOutClose");
    QVERIFY(!table.find<TimeOutCard>("timeOutCard")->isVisible());
    table.press(Qt::Key_K); // the other team's
    QVERIFY(table.find<TimeOutCard>("timeOutCard")->isVisible());
    table.press(Qt::Key_Home);
    QVERIFY(!table.find<TimeOutCard>("timeOutCard")->isVisible());
}

void TestConductor::undoingTheTimeOutStopsItsCard() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_D);
    table.press(Qt::Key_Backspace);
    QVERIFY(!table.find<TimeOutCard>("timeOutCard")->isVisible());
    QVERIFY(table.set().teams.home.timeOuts.empty());
}

void TestConductor::theSecondTimeOutIsTold() {
    OpenTable table(MatchBuilder().started().add(TimeOut{Team::Home}));
    table.press(Qt::Key_D);
    QVERIFY(strip(table).told.join(u' ').contains(u"SAL has taken its last time-out"));
}

void TestConductor::theThirdTimeOutNeedsTheReferee() {
    OpenTable table(MatchBuilder().started().add(TimeOut{Team::Home}).add(TimeOut{Team::Home}));
    const std::size_t before = table.recorded();
    table.press(Qt::Key_D);
    auto* bar = table.find<AskBar>("askBar");
    QVERIFY(bar->isVisible());
    QVERIFY(bar->sentence().contains(u"time-out 3 of SAL, and the limit is 2"));
    QCOMPARE(table.recorded(), before);
    table.press(Qt::Key_Return); // no reason, no entry
    QVERIFY(bar->isVisible());
    table.type("league rule");
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before + 1);
    QCOMPARE(table.newest().overruled, std::optional(QStringLiteral("league rule")));
    QVERIFY(!bar->isVisible());
}

void TestConductor::escapeLeavesTheThirdTimeOutUnrecorded() {
    OpenTable table(MatchBuilder().started().add(TimeOut{Team::Home}).add(TimeOut{Team::Home}));
    const std::size_t before = table.recorded();
    table.press(Qt::Key_D);
    table.press(Qt::Key_Escape);
    QCOMPARE(table.recorded(), before);
    table.press(Qt::Key_Left);
    QCOMPARE(table.score().home, 1);
}

void TestConductor::aSingleLiberoServesByOneKeyPressedTwice() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_F);
    table.press(Qt::Key_F);
    QVERIFY(std::get<LiberoServe>(table.newest().entry) == (LiberoServe{Team::Home, ShirtNumber(9)}));
    QCOMPARE(serverOf(table.set()), ShirtNumber(9));
}

void TestConductor::ofTwoLiberosOneIsChosen() {
    OpenTable table(withTwoLiberos());
    table.press(Qt::Key_F);
    table.press(Qt::Key_F);
    auto* bar = table.find<LiberoBar>("liberoBar");
    QVERIFY(bar->isVisible());
    table.type("9");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<LiberoServe>(table.newest().entry) == (LiberoServe{Team::Home, ShirtNumber(9)}));
    table.press(Qt::Key_Backspace);
    table.press(Qt::Key_F);
    table.press(Qt::Key_F);
    table.click("libero8");
    table.press(Qt::Key_Return);
    QCOMPARE(serverOf(table.set()), ShirtNumber(8));
    QVERIFY(!bar->isVisible());
}

void TestConductor::theLiberoServesNoMoreByTheSameKey() {
    OpenTable table(MatchBuilder().started());
    for (int pressed = 0; pressed < 4; ++pressed)
        table.press(Qt::Key_F);
    QVERIFY(std::get<LiberoServe>(table.newest().entry).serving == LiberoServing::Ends);
    QCOMPARE(serverOf(table.set()), ShirtNumber(1));
}

void TestConductor::aSecondSlotOfTheLiberoNeedsTheReferee() {
    MatchBuilder match;
    match.started().add(LiberoServe{Team::Home, ShirtNumber(9)}).play("vh");
    OpenTable table(match);
    table.press(Qt::Key_F);
    table.press(Qt::Key_F);
    // Source: Iowa Girls HSAU, Libero Tracking Instructions: one place in the serving order a set.
    QVERIFY(table.find<LiberoBar>("liberoBar")->sentence().contains(u"served in slot I"));
}

void TestConductor::aTeamWithoutLiberosIsTold() {
    OpenTable table(withTwoLiberos().play("v"));
    table.press(Qt::Key_J);
    QVERIFY(strip(table).refused.startsWith(u"QRL has named no libero"));
}

void TestConductor::theLiberoOfTheReceiversDoesNotServe() {
    OpenTable table(withTwoLiberos().play("v"));
    table.press(Qt::Key_F);
    QVERIFY(table.find<LiberoBar>("liberoBar")->isVisible());
    QVERIFY(!table.window().findChild<QAbstractButton*>(QStringLiteral("liberoMove1"))); // only In is offered
}

void TestConductor::aSecondReServeNeedsTheReferee() {
    OpenTable table(MatchBuilder().started().play("e"));
    const std::size_t before = table.recorded();
    table.press(Qt::Key_Y, Qt::ShiftModifier);
    // Source: GTCCVO, Ask the interpreter (NFHS 8-2-5: one re-serve a term of service).
    QVERIFY(table.find<AskBar>("askBar")->sentence().contains(u"re-serve 2"));
    QCOMPARE(table.recorded(), before);
}

void TestConductor::aPenaltyPointAsksWhatFor() {
    OpenTable table(MatchBuilder().started());
    table.window().perform(TableCommand::RightPenalty);
    table.type("delay");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<PenaltyPoint>(table.newest().entry) == (PenaltyPoint{Team::Visitors, QStringLiteral("delay")}));
    QCOMPARE(table.score().visitors, 1);
    QCOMPARE(table.set().serving, Team::Visitors);
}

void TestConductor::aRemarkIsOneLine() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_M);
    table.type("wet floor");
    table.press(Qt::Key_Return);
    QCOMPARE(std::get<Remark>(table.newest().entry).text, QStringLiteral("wet floor"));
}

void TestConductor::lettersInARemarkAreNoCommands() {
    OpenTable table(MatchBuilder().started());
    const std::size_t before = table.recorded();
    table.press(Qt::Key_M);
    table.type("sdfgjkl n y m");
    table.press(Qt::Key_Left);
    table.press(Qt::Key_Backspace);
    QCOMPARE(table.recorded(), before);
    QCOMPARE(table.find<QLineEdit>("askLine")->text(), QStringLiteral("sdfgjkl n ym"));
}

void TestConductor::theServeContactedTwiceIsSaid() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_Space);
    const std::size_t before = table.recorded();
    table.press(Qt::Key_Space);
    QCOMPARE(table.recorded(), before);
    QVERIFY(strip(table).refused.startsWith(u"The serve is contacted already"));
}

void TestConductor::aDialogThatIsCancelledRecordsNothing() {
    OpenTable table(MatchBuilder().open());
    const std::size_t before = table.recorded();
    table.press(Qt::Key_Return);
    table.click("teamAreaLeft");
    QCOMPARE(table.recorded(), before);
}

void TestConductor::theRefereesWordOfADialogIsRecorded() {
    OpenTable table(MatchBuilder().open().toss(Team::Home));
    table.dialogs.lineUp = [](QWidget*, const MatchState&, Team team) {
        const LineUp doubled{team, six({1, 1, 3, 4, 5, 6}), {}, {}};
        return std::vector<Answer>{{doubled, QStringLiteral("checked with the coach")}};
    };
    table.click("teamAreaLeft");
    QVERIFY(std::holds_alternative<LineUp>(table.newest().entry));
    QCOMPARE(table.newest().overruled, std::optional(QStringLiteral("checked with the coach")));
}

void TestConductor::aRosterIsChangedDuringTheSet() {
    OpenTable table(MatchBuilder().started().play("h"));
    Team asked = Team::Home;
    table.dialogs.roster = [&asked](QWidget*, const MatchState&, Team team) {
        asked = team;
        return std::optional(
            Answer{Roster{team, {{ShirtNumber(20), QStringLiteral("Late Comer"), false, false}}, {}}, {}});
    };
    table.window().perform(TableCommand::RightRoster);
    QCOMPARE(asked, Team::Visitors);
    QCOMPARE(table.state().rosters.visitors.players.front().number, ShirtNumber(20));
    QCOMPARE(table.score().home, 1);
}

void TestConductor::theOfficialsAreChangedDuringTheSet() {
    OpenTable table(MatchBuilder().started().play("h"));
    table.dialogs.officials = [](QWidget*, const MatchState&) {
        return std::optional(Answer{Officials{{{Role::LineJudge, QStringLiteral("Late Comer")}}}, {}});
    };
    table.window().perform(TableCommand::Officials);
    QCOMPARE(table.state().officials.officials.front().name, QStringLiteral("Late Comer"));
    QCOMPARE(table.score().home, 1);
}

void TestConductor::whereItIsNotToldSetPointIsOnlyShown() {
    // International, from memory: neither set point nor match point is told.
    MatchBuilder match;
    match.open(5, *publishedRulebook(QStringLiteral("international")))
        .toss(Team::Home)
        .lineUp(Team::Home, {1, 2, 3, 4, 5, 6})
        .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16})
        .start();
    OpenTable table(match.play("hhhhhhhhhhhhhhhhhhhhhhhh"));
    QVERIFY(strip(table).points.isEmpty());
    QCOMPARE(strip(table).quietPoints, QStringList{QStringLiteral("Set point SAL")});
    QVERIFY(strip(table).told.isEmpty());
}

void TestConductor::setPointIsToldBesideTheRest() {
    // Scoring & Libero Tracking, EOA Volleyball Officials Clinic: set point is announced.
    OpenTable table(MatchBuilder().started().play("hhhhhhhhhhhhhhhhhhhhhhhh"));
    QCOMPARE(strip(table).points, QStringList{QStringLiteral("Set point SAL")});
    QVERIFY(strip(table).told.isEmpty());
    table.press(Qt::Key_Left);
    QVERIFY(strip(table).points.isEmpty());
    QVERIFY(strip(table).told.join(u' ').contains(u"SAL wins the set 25–0"));
}

void TestConductor::theCardOfATimeOutRecordsTheComparison() {
    OpenTable table(MatchBuilder().started().play("h"));
    table.press(Qt::Key_D);
    table.click("agrees");
    QVERIFY(std::get<SheetCompared>(table.newest().entry) == SheetCompared{});
    QVERIFY(table.find<TimeOutCard>("timeOutCard")->isVisible()); // the time-out goes on
    table.click("differs");
    table.type("the board shows 2");
    table.press(Qt::Key_Return);
    QCOMPARE(std::get<SheetCompared>(table.newest().entry).differs, QStringLiteral("the board shows 2"));
}

QTEST_MAIN(TestConductor)
#include "tst_conductor.moc"
