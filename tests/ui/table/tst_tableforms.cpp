// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/hands.h"
#include "tests/ui/table/opentable.h"
#include "ui/table/askbar.h"
#include "ui/table/formbar.h"
#include "ui/table/numberfield.h"

#include <QLineEdit>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

FormBar& bar(OpenTable& table) {
    return *table.find<FormBar>("formBar");
}

MatchBuilder withBench() {
    MatchBuilder match;
    match.started();
    Roster roster{Team::Home, {}, {}};
    for (int number = 1; number <= 12; ++number)
        roster.players.push_back({ShirtNumber(number), {}, false, number == 9});
    return match.add(roster);
}

/// Sets to nothing by these winners, and the next begun where there is one.
MatchBuilder withSets(std::initializer_list<Team> winners) {
    MatchBuilder match = withBench();
    for (const Team winner : winners) {
        match.play(QByteArray(25, winner == Team::Home ? 'h' : 'v').constData()).add(SetEnded{});
        if (phaseOf(match.state()) == Phase::BeforeSet)
            match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
    }
    return match;
}

} // namespace

class TestTableForms : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theCaptainIsNamed();
    void theSidesChange();
    void aDifferenceFromTheScoreboardIsWritten();
    void playIsSuspendedAndGoesOn();
    void aSuspendedSetIsPlayedAgain();
    void aForfeitAsksTeamAndReach();
    void aFingerForfeitsTheMatch();
    void aForfeitWithoutTeamIsNotRecorded();
    void aForfeitOfAnEarlierSetAsksWhichAndWhatIsKept();
    void anEarlierSetIsOfferedOnceThereIsOne();
    void ofAMatchThatIsWonAnEarlierSetCanBeForfeited();
    void anotherPlayerBecomesLibero();
    void aLiberoMayBeGivenUp();
    void aTeamWithoutLiberosIsTold();
    void aReplayIsRecordedWithItsCause_data();
    void aReplayIsRecordedWithItsCause();
    void aMouseAndAFingerSayTheCause();
    void aReplayNeedsNoCause();
    void anIllegalPlayerIsRuledOnByKeys();
    void anIllegalLiberoIsRuledOnByMouse();
    void aFingerRulesOnAnIllegalPlayer();
    void aRulingBeforePlayIsResumedIsSpokenAgainst();
    void whoReceivesHasNoServeToLose();
    void beforePlayIsResumedNothingIsLost();
};

void TestTableForms::theCaptainIsNamed() {
    OpenTable table(withBench());
    table.window().perform(TableCommand::LeftCaptain);
    table.type("4");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<CaptainNamed>(table.newest().entry) == (CaptainNamed{Team::Home, ShirtNumber(4)}));
}

void TestTableForms::theSidesChange() {
    MatchBuilder match;
    match.open(3, publishedRulebook(QStringLiteral("international")).value()).toss(Team::Home);
    for (const char winner : {'h', 'v'}) {
        match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
        match.play(QByteArray(25, winner).constData()).add(SetEnded{});
    }
    match.toss(Team::Home).lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16});
    match.start().play("hhhhhhhh");
    OpenTable table(match);
    const Team right = opponentsOf(table.set().left.value());
    table.window().perform(TableCommand::SidesChanged);
    QVERIFY(std::holds_alternative<SidesChanged>(table.newest().entry));
    const int before = table.score()[right];
    table.press(Qt::Key_Left); // who stood on the right stands on the left now
    QCOMPARE(table.score()[right], before + 1);
}

void TestTableForms::aDifferenceFromTheScoreboardIsWritten() {
    OpenTable table(withBench());
    table.window().perform(TableCommand::ComparedDiffers);
    table.press(Qt::Key_Return); // nothing differs yet
    QVERIFY(table.find<AskBar>("askBar")->isVisible());
    table.type("board 1-0");
    table.press(Qt::Key_Return);
    QCOMPARE(std::get<SheetCompared>(table.newest().entry).differs, QStringLiteral("board 1-0"));
}

void TestTableForms::playIsSuspendedAndGoesOn() {
    OpenTable table(withBench().play("hh"));
    table.window().perform(TableCommand::Suspend);
    table.type("lights");
    table.press(Qt::Key_Return);
    QCOMPARE(std::get<Suspended>(table.newest().entry).reason, QStringLiteral("lights"));
    QVERIFY(phaseOf(table.state()) == Phase::Suspended);
    table.press(Qt::Key_Return); // the next step
    QVERIFY(bar(table).isVisible());
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Resumed>(table.newest().entry) == Resumed{GoOn::AsItStood});
    QCOMPARE(table.score().home, 2);
}

void TestTableForms::aSuspendedSetIsPlayedAgain() {
    MatchBuilder match;
    match.open(5, publishedRulebook(QStringLiteral("international")).value()).toss(Team::Home);
    match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
    OpenTable table(match.play("hh").add(Suspended{}));
    table.click("nextStep");
    table.click("formFirst1");
    QTest::mouseClick(bar(table).findChild<QAbstractButton*>(QStringLiteral("barRecord")), Qt::LeftButton);
    QVERIFY(std::get<Resumed>(table.newest().entry) == Resumed{GoOn::SetAgain});
    QCOMPARE(table.score().home, 0);
    QCOMPARE(table.set().number, 1);
}

void TestTableForms::aForfeitAsksTeamAndReach() {
    OpenTable table(withBench().play("hh"));
    table.window().perform(TableCommand::Forfeit);
    table.press(Qt::Key_J);
    table.press(Qt::Key_T);
    QVERIFY2(bar(table).sentence().contains(u"QRL keeps its points; SAL gets what it needs for this set"),
             qPrintable(bar(table).sentence()));
    table.find<QLineEdit>("formLine")->setFocus(Qt::TabFocusReason);
    table.type("five players");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Forfeit>(table.newest().entry) ==
            (Forfeit{Team::Visitors, ForfeitKind::Incomplete, Scope::Set, QStringLiteral("five players")}));
    QCOMPARE(table.set().winner, std::optional(Team::Home));
}

void TestTableForms::aFingerForfeitsTheMatch() {
    OpenTable table(MatchBuilder().open());
    table.window().perform(TableCommand::Forfeit);
    tap(*table.find("formFirst0"));
    tap(*table.find("formSecond0"));
    table.press(Qt::Key_Return); // the button lies beyond the screen of the tests
    QVERIFY(std::get<Forfeit>(table.newest().entry) == (Forfeit{Team::Home, ForfeitKind::Default, Scope::Match, {}}));
    QVERIFY(phaseOf(table.state()) == Phase::MatchWon);
}

void TestTableForms::aForfeitWithoutTeamIsNotRecorded() {
    OpenTable table(withBench());
    const std::size_t before = table.recorded();
    table.window().perform(TableCommand::Forfeit);
    table.press(Qt::Key_A);
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before);
    table.press(Qt::Key_Escape);
    QVERIFY(!bar(table).isVisible());
}

void TestTableForms::aForfeitOfAnEarlierSetAsksWhichAndWhatIsKept() {
    OpenTable table(withSets({Team::Home, Team::Visitors}));
    table.window().perform(TableCommand::Forfeit);
    QVERIFY(!table.find<NumberField>("formNumber")->isVisible());
    table.press(Qt::Key_E);
    QVERIFY(bar(table).sentence().startsWith(u"Which team and set"));
    table.type("1");
    table.find<NumberField>("formOther")->setFocus(Qt::TabFocusReason);
    table.type("10");
    table.press(table.state().set().left == Team::Home ? Qt::Key_F : Qt::Key_J);
    QVERIFY2(bar(table).sentence().startsWith(u"SAL loses set 1, 10–25."), qPrintable(bar(table).sentence()));
    table.find<QLineEdit>("formLine")->setFocus(Qt::TabFocusReason);
    table.type("not registered");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Forfeit>(table.newest().entry) == (Forfeit{Team::Home, ForfeitKind::Incomplete, Scope::Set,
                                                                QStringLiteral("not registered"), EarlierSet{1, 10}}));
    QCOMPARE(setsWon(table.state()), (PerTeam<int>{0, 2}));
}

void TestTableForms::anEarlierSetIsOfferedOnceThereIsOne() {
    OpenTable table(withBench());
    table.window().perform(TableCommand::Forfeit);
    table.press(Qt::Key_E);
    QVERIFY(!table.find<NumberField>("formNumber")->isVisible());
    OpenTable later(withSets({Team::Home}));
    later.window().perform(TableCommand::Forfeit);
    later.click("formSecond3");
    QCOMPARE(later.find<NumberField>("formNumber")->number(), std::optional(ShirtNumber(1)));
    later.click("formSecond2"); // this set after all
    QVERIFY(!later.find<NumberField>("formNumber")->isVisible());
    later.press(Qt::Key_F);
    QVERIFY(bar(later).sentence().contains(u"keeps its points"));
}

void TestTableForms::ofAMatchThatIsWonAnEarlierSetCanBeForfeited() {
    OpenTable table(withSets({Team::Home, Team::Home, Team::Home}));
    QVERIFY(phaseOf(table.state()) == Phase::MatchWon);
    table.window().perform(TableCommand::Forfeit);
    table.type("2");
    table.click(table.state().set().left == Team::Home ? "formFirst0" : "formFirst1");
    QVERIFY2(bar(table).sentence() == u"SAL loses set 2, 25–27. Set 4 is to be played.",
             qPrintable(bar(table).sentence()));
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Forfeit>(table.newest().entry) ==
            (Forfeit{Team::Home, ForfeitKind::Incomplete, Scope::Set, {}, EarlierSet{2, std::nullopt}}));
    QVERIFY(phaseOf(table.state()) == Phase::BeforeSet);
}

void TestTableForms::anotherPlayerBecomesLibero() {
    OpenTable table(withBench());
    table.window().perform(TableCommand::LeftRedesignation);
    table.type("10");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<LiberoRedesignated>(table.newest().entry) ==
            (LiberoRedesignated{Team::Home, ShirtNumber(9), ShirtNumber(10), {}}));
    QVERIFY(liberosOf(table.set().teams.home) == std::vector<ShirtNumber>{ShirtNumber(10)});
}

void TestTableForms::aLiberoMayBeGivenUp() {
    OpenTable table(withBench());
    table.window().perform(TableCommand::LeftRedesignation);
    QVERIFY(bar(table).sentence().startsWith(u"Nobody takes her part"));
    table.press(Qt::Key_Return);
    QVERIFY(liberosOf(table.set().teams.home).empty());
}

void TestTableForms::aTeamWithoutLiberosIsTold() {
    MatchBuilder match;
    match.open()
        .toss(Team::Home)
        .lineUp(Team::Home, {1, 2, 3, 4, 5, 6})
        .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16});
    OpenTable table(match.start());
    table.window().perform(TableCommand::LeftRedesignation);
    QVERIFY(!bar(table).isVisible());
}

// clang-format off
void TestTableForms::aReplayIsRecordedWithItsCause_data() {
    QTest::addColumn<Qt::Key>("key");
    QTest::addColumn<ReplayCause>("cause");
    QTest::newRow("injury")         << Qt::Key_I << ReplayCause::Injury;
    QTest::newRow("interference")   << Qt::Key_O << ReplayCause::Interference;
    QTest::newRow("double fault")   << Qt::Key_D << ReplayCause::DoubleFault;
    QTest::newRow("whistle")        << Qt::Key_W << ReplayCause::Whistle;
    QTest::newRow("early serve")    << Qt::Key_E << ReplayCause::EarlyServe;
}
// clang-format on

void TestTableForms::aReplayIsRecordedWithItsCause() {
    QFETCH(Qt::Key, key);
    QFETCH(ReplayCause, cause);
    OpenTable table(withBench().play("s"));
    table.press(Qt::Key_Y, Qt::AltModifier);
    QVERIFY(bar(table).isVisible());
    table.press(key);
    QVERIFY(std::get<Replay>(table.newest().entry) == (Replay{Again::Replay, cause}));
    QVERIFY(!bar(table).isVisible());
    QVERIFY(!table.set().contacted);
}

void TestTableForms::aMouseAndAFingerSayTheCause() {
    OpenTable table(withBench().play("s"));
    table.window().perform(TableCommand::ReplayBecause);
    table.click("formFirst4");
    QVERIFY(std::get<Replay>(table.newest().entry).cause == ReplayCause::EarlyServe);
    table.press(Qt::Key_Space);
    table.window().perform(TableCommand::ReplayBecause);
    tap(*table.find("formFirst0"));
    QVERIFY(std::get<Replay>(table.newest().entry).cause == ReplayCause::Injury);
}

void TestTableForms::aReplayNeedsNoCause() {
    OpenTable table(withBench().play("s"));
    table.press(Qt::Key_Y, Qt::AltModifier);
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Replay>(table.newest().entry) == Replay{});
    const std::size_t before = table.recorded();
    table.press(Qt::Key_Y, Qt::AltModifier);
    table.press(Qt::Key_Escape);
    QCOMPARE(table.recorded(), before);
}

void TestTableForms::anIllegalPlayerIsRuledOnByKeys() {
    // From memory: a high-school table takes the points of the term back.
    OpenTable table(withBench().play("hhh"));
    table.press(Qt::Key_S, Qt::ShiftModifier);
    QVERIFY(bar(table).sentence().startsWith(u"Who has no right"));
    table.type("4");
    QVERIFY2(bar(table).sentence().startsWith(u"Point and serve to QRL; points of SAL taken back: 3."),
             qPrintable(bar(table).sentence()));
    table.press(Qt::Key_Return);
    const auto& ruling = std::get<IllegalPlayer>(table.newest().entry);
    QCOMPARE(ruling.number, ShirtNumber(4));
    QVERIFY(ruling.by == IllegalBy::Substitution && ruling.takenBackFrom);
    QCOMPARE(table.score().home, 0);
    QCOMPARE(table.score().visitors, 1);
    QCOMPARE(table.set().serving, Team::Visitors);
}

void TestTableForms::aRulingBeforePlayIsResumedIsSpokenAgainst() {
    OpenTable table(withBench()); // nobody has served yet
    const std::size_t before = table.recorded();
    table.press(Qt::Key_S, Qt::ShiftModifier);
    table.type("4");
    QVERIFY2(bar(table).sentence().contains(u"Play has not been resumed with number 4 of SAL on court"),
             qPrintable(bar(table).sentence()));
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before); // a reason is asked for first
}

void TestTableForms::anIllegalLiberoIsRuledOnByMouse() {
    OpenTable table(withBench().add(LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(5)}).play("hh"));
    table.window().perform(TableCommand::LeftIllegalPlayer);
    table.click("formFirst1");
    table.click("number9");
    table.click("other1");
    QTest::mouseClick(bar(table).findChild<QAbstractButton*>(QStringLiteral("barRecord")), Qt::LeftButton);
    const auto& ruling = std::get<IllegalPlayer>(table.newest().entry);
    QCOMPARE(ruling.number, ShirtNumber(9));
    QVERIFY(ruling.by == IllegalBy::LiberoReplacement);
    QCOMPARE(table.score().home, 1);
}

void TestTableForms::aFingerRulesOnAnIllegalPlayer() {
    OpenTable table(withBench().play("h"));
    table.window().perform(TableCommand::LeftIllegalPlayer);
    tap(*table.find("number2"));
    table.press(Qt::Key_Return); // the button lies beyond the screen of the tests
    QCOMPARE(std::get<IllegalPlayer>(table.newest().entry).number, ShirtNumber(2));
}

void TestTableForms::whoReceivesHasNoServeToLose() {
    OpenTable table(withBench().play("h"));
    table.press(Qt::Key_L, Qt::ShiftModifier);
    table.type("11");
    QVERIFY2(bar(table).sentence().startsWith(u"SAL has the serve already; no point is taken back."),
             qPrintable(bar(table).sentence()));
    table.press(Qt::Key_Return);
    QCOMPARE(table.score().home, 1);
    table.press(Qt::Key_Space);
    table.press(Qt::Key_L, Qt::ShiftModifier);
    table.type("12");
    QVERIFY2(bar(table).sentence().startsWith(u"A point to SAL"), qPrintable(bar(table).sentence()));
    table.press(Qt::Key_Return);
    QCOMPARE(table.score().home, 2);
}

void TestTableForms::beforePlayIsResumedNothingIsLost() {
    OpenTable table(withBench());
    const std::size_t before = table.recorded();
    table.press(Qt::Key_S, Qt::ShiftModifier);
    table.type("4");
    QVERIFY2(bar(table).sentence().contains(u"nothing is lost yet"), qPrintable(bar(table).sentence()));
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before);
}

QTEST_MAIN(TestTableForms)
#include "tst_tableforms.moc"
