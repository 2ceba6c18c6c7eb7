// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/hands.h"
#include "tests/ui/table/opentable.h"
#include "ui/table/courtpicture.h"
#include "ui/table/noticestrip.h"
#include "ui/table/numberfield.h"
#include "ui/table/substitutionbar.h"

using namespace setfolio;
using namespace setfolio::testing;

namespace {

/// Home 1 to 6 on court, 7 to 9 on the bench (9 a libero), visitors 11 to 16.
MatchBuilder withRoster() {
    MatchBuilder match;
    match.started();
    Roster roster{Team::Home, {}, {}};
    for (int number = 1; number <= 9; ++number)
        roster.players.push_back({ShirtNumber(number), {}, false, number == 9});
    return match.add(roster);
}

/// Home with nobody on the bench but number 7, who is bound to slot III.
MatchBuilder withOneBound() {
    MatchBuilder match;
    match.started();
    Roster roster{Team::Home, {}, {}};
    for (int number = 1; number <= 7; ++number)
        roster.players.push_back({ShirtNumber(number), {}, false, false});
    return match.add(roster).substitute(Team::Home, 7, 3).substitute(Team::Home, 3, 7).play("h");
}

/// Home with nobody on the bench.
MatchBuilder withNobody() {
    MatchBuilder match;
    match.started();
    Roster roster{Team::Home, {}, {}};
    for (int number = 1; number <= 6; ++number)
        roster.players.push_back({ShirtNumber(number), {}, false, false});
    return match.add(roster);
}

CourtPicture* court(OpenTable& table) {
    return table.find<CourtPicture>("courtPicture");
}

CourtPlayer playerOf(OpenTable& table, int number) {
    for (const CourtPlayer& player : deckViewOf(table.state()).court)
        if (player.number == ShirtNumber(number))
            return player;
    qFatal("not on court");
}

QPoint placeOf(OpenTable& table, int number) {
    return court(table)->centreOf(playerOf(table, number)).toPoint();
}

} // namespace

class TestSubstitutionBar : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void keysAloneMakeASubstitution();
    void tapsAloneMakeASubstitution();
    void theNumberOutIsProposedWhereThereIsOnlyOne();
    void severalOneAfterAnother();
    void whatIsUnlawfulIsSaidBeforeEnter();
    void theRefereesWordNeedsItsReason();
    void refusedOnesSayTheWayOut();
    void theLimitIsToldToTheSecondReferee();
    void escapeClosesAndTheTableGoesOn();
    void anEmptyBarLetsTheTablesKeysThrough();
    void backspaceInTheBarNeverUndoes();
    void aRallyInPlayIsSaidAtOnce();
    void bothSidesHaveTheirKey();
    void aNumberThatMayNotComeInIsExplainedAtOnce_data();
    void aNumberThatMayNotComeInIsExplainedAtOnce();
    void anExceptionalOneSaysWhatHappened();
    void aPlaceIsVacatedWhenNobodyCanComeIn();
    void aFingerVacatesAPlace();
    void digitsAfterATapAreTheOtherNumber();
    void whoMayComeInForTheNumberThatGoesOutIsOffered();
    void theExceptionalOnesAreOffered();
    void aPressOnAPlayerAsksForSomebodyInHerPlace();
    void aPressOnALiberoAsksForHerReplacement();
    void betweenThePlayersNothingHappens();
    void enterAloneRecordsWhatIsProposed();
    void enterTwiceIsOneSubstitution();
    void aTypedNumberTakesThePlaceOfTheProposal();
    void twoDigitsGoOnToTheNumberOut();
};

void TestSubstitutionBar::keysAloneMakeASubstitution() {
    OpenTable table(withRoster());
    table.press(Qt::Key_S);
    auto* bar = table.find<SubstitutionBar>("substitutionBar");
    QVERIFY(bar->isVisible());
    table.type("7");
    table.press(Qt::Key_Return); // nobody goes out yet: on to the second field
    QCOMPARE(table.window().focusWidget()->objectName(), QStringLiteral("subOut"));
    table.type("3");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Substitution>(table.newest().entry) == (Substitution{Team::Home, ShirtNumber(7), ShirtNumber(3)}));
    QCOMPARE(bar->sentence(), QStringLiteral("Recorded: SAL #7 in for #3. Signal the second referee."));
    QVERIFY(bar->isVisible());
}

void TestSubstitutionBar::tapsAloneMakeASubstitution() {
    OpenTable table(withRoster());
    table.click("subLeft");
    table.click("bench8");
    table.click("court2");
    table.find<SubstitutionBar>("substitutionBar")->findChild<QAbstractButton*>(QStringLiteral("barRecord"))->click();
    QVERIFY(std::get<Substitution>(table.newest().entry) == (Substitution{Team::Home, ShirtNumber(8), ShirtNumber(2)}));
    QVERIFY(!table.window().findChild<QAbstractButton*>(QStringLiteral("bench9"))); // a libero is no substitute
}

void TestSubstitutionBar::theNumberOutIsProposedWhereThereIsOnlyOne() {
    OpenTable table(withRoster().substitute(Team::Home, 7, 3));
    table.press(Qt::Key_S);
    table.type("3");
    QCOMPARE(table.find<NumberField>("subOut")->number(), std::optional(ShirtNumber(7)));
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Substitution>(table.newest().entry) == (Substitution{Team::Home, ShirtNumber(3), ShirtNumber(7)}));
}

void TestSubstitutionBar::severalOneAfterAnother() {
    OpenTable table(withRoster());
    table.press(Qt::Key_S);
    for (const char* pair : {"73", "84"}) {
        const char in[] = {pair[0], 0};
        const char out[] = {pair[1], 0};
        table.type(in);
        table.press(Qt::Key_Return);
        table.type(out);
        table.press(Qt::Key_Return);
    }
    QCOMPARE(substitutionsOf(table.set().teams.home), 2);
    QCOMPARE(onCourt(table.set().teams.home, Slot(4)), ShirtNumber(8));
}

void TestSubstitutionBar::whatIsUnlawfulIsSaidBeforeEnter() {
    OpenTable table(withRoster().substitute(Team::Home, 7, 3));
    const std::size_t before = table.recorded();
    table.press(Qt::Key_S);
    table.type("3");
    table.find<NumberField>("subOut")->setNumber(ShirtNumber(5));
    QVERIFY(table.find<SubstitutionBar>("substitutionBar")->sentence().contains(u"belongs to slot III"));
    QCOMPARE(table.recorded(), before);
}

void TestSubstitutionBar::theRefereesWordNeedsItsReason() {
    OpenTable table(withRoster().substitute(Team::Home, 7, 3));
    const std::size_t before = table.recorded();
    table.press(Qt::Key_S);
    table.type("3");
    table.find<NumberField>("subOut")->setNumber(ShirtNumber(5));
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before);
    QCOMPARE(table.window().focusWidget()->objectName(), QStringLiteral("subReason"));
    table.press(Qt::Key_Return); // no reason, no entry
    QCOMPARE(table.recorded(), before);
    table.type("injury");
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before + 1);
    QCOMPARE(table.newest().overruled, std::optional(QStringLiteral("injury")));
}

void TestSubstitutionBar::refusedOnesSayTheWayOut() {
    OpenTable table(withRoster());
    const std::size_t before = table.recorded();
    table.press(Qt::Key_S);
    table.type("7");
    table.press(Qt::Key_Return);
    table.type("42");
    table.press(Qt::Key_Return);
    QVERIFY(table.find<SubstitutionBar>("substitutionBar")->sentence().contains(u"not on court"));
    QVERIFY(!table.find<QLineEdit>("subReason")->isVisible());
    QCOMPARE(table.recorded(), before);
}

void TestSubstitutionBar::theLimitIsToldToTheSecondReferee() {
    MatchBuilder match = withRoster();
    for (int i = 0; i < 7; ++i) // 14 substitutions
        match.substitute(Team::Home, 7, 3).substitute(Team::Home, 3, 7);
    OpenTable table(match);
    table.press(Qt::Key_S);
    table.type("7");
    table.press(Qt::Key_Return);
    // Source: Scoring & Libero Tracking, EOA Volleyball Officials Clinic: the 15th is told.
    QVERIFY(table.find<SubstitutionBar>("substitutionBar")->sentence().contains(u"used 15 of 18 substitutions"));
    table.press(Qt::Key_Escape);
    QVERIFY(table.find<NoticeStrip>("noticeStrip")->view().told.join(u' ').contains(u"15 of 18"));
    table.press(Qt::Key_Space);
    QVERIFY(table.find<NoticeStrip>("noticeStrip")->view().told.isEmpty());
}

void TestSubstitutionBar::escapeClosesAndTheTableGoesOn() {
    OpenTable table(withRoster());
    table.press(Qt::Key_S);
    table.press(Qt::Key_Escape);
    QVERIFY(!table.find<SubstitutionBar>("substitutionBar")->isVisible());
    table.press(Qt::Key_Left);
    QCOMPARE(table.score().home, 1);
}

void TestSubstitutionBar::anEmptyBarLetsTheTablesKeysThrough() {
    OpenTable table(withRoster());
    table.press(Qt::Key_S);
    table.press(Qt::Key_Space);
    QVERIFY(table.set().contacted);
    QVERIFY(!table.find<SubstitutionBar>("substitutionBar")->isVisible());
    table.press(Qt::Key_Left);
    table.press(Qt::Key_S);
    table.type("7");
    table.press(Qt::Key_Left); // half a substitution: the arrow belongs to the field
    QCOMPARE(table.score().home, 1);
}

void TestSubstitutionBar::backspaceInTheBarNeverUndoes() {
    OpenTable table(withRoster());
    const std::size_t before = table.recorded();
    table.press(Qt::Key_S);
    table.press(Qt::Key_Backspace);
    table.type("7");
    table.press(Qt::Key_Backspace);
    table.press(Qt::Key_Backspace);
    QCOMPARE(table.recorded(), before);
}

void TestSubstitutionBar::aRallyInPlayIsSaidAtOnce() {
    OpenTable table(withRoster());
    table.press(Qt::Key_Space);
    table.press(Qt::Key_S);
    QVERIFY(!table.find<SubstitutionBar>("substitutionBar")->isVisible());
    QVERIFY(table.find<NoticeStrip>("noticeStrip")->view().refused.startsWith(u"The rally is not decided"));
    table.press(Qt::Key_Left);
    QVERIFY(table.find<NoticeStrip>("noticeStrip")->view().refused.isEmpty());
}

void TestSubstitutionBar::bothSidesHaveTheirKey() {
    OpenTable table(withRoster());
    table.press(Qt::Key_L);
    QCOMPARE(table.find<SubstitutionBar>("substitutionBar")->team(), Team::Visitors);
    table.press(Qt::Key_S);
    QCOMPARE(table.find<SubstitutionBar>("substitutionBar")->team(), Team::Home);
}

void TestSubstitutionBar::aNumberThatMayNotComeInIsExplainedAtOnce_data() {
    QTest::addColumn<QString>("number");
    QTest::addColumn<QString>("words");
    QTest::newRow("not on the roster") << "77"
                                       << "not on the roster";
    QTest::newRow("a libero") << "9"
                              << "is a libero";
    QTest::newRow("on court") << "4"
                              << "on court already";
    QTest::newRow("lawful") << "7"
                            << "Who goes out?";
}

void TestSubstitutionBar::aNumberThatMayNotComeInIsExplainedAtOnce() {
    QFETCH(QString, number);
    QFETCH(QString, words);
    OpenTable table(withRoster());
    table.press(Qt::Key_S);
    table.type(qPrintable(number));
    auto* bar = table.find<SubstitutionBar>("substitutionBar");
    QVERIFY2(bar->sentence().contains(words), qPrintable(bar->sentence()));
}

void TestSubstitutionBar::anExceptionalOneSaysWhatHappened() {
    OpenTable table(withOneBound());
    table.press(Qt::Key_S);
    table.type("7");
    table.press(Qt::Key_E);
    table.find<NumberField>("subOut")->setNumber(ShirtNumber(5));
    auto* bar = table.find<SubstitutionBar>("substitutionBar");
    QVERIFY2(bar->sentence().contains(u"stays out for the rest of the"), qPrintable(bar->sentence()));
    table.find<QLineEdit>("subWhy")->setFocus(Qt::TabFocusReason);
    table.type("ankle");
    table.press(Qt::Key_Return);
    const auto entries = table.window().file().ledger().entries();
    const auto& made = std::get<Substitution>(entries[entries.size() - 2].entry);
    QVERIFY(made == (Substitution{Team::Home, ShirtNumber(7), ShirtNumber(5), SubstitutionKind::Exceptional}));
    QCOMPARE(std::get<Remark>(table.newest().entry).text,
             QStringLiteral("Exceptional substitution SAL, 7 in for 5: ankle"));
}

void TestSubstitutionBar::aPlaceIsVacatedWhenNobodyCanComeIn() {
    OpenTable table(withNobody());
    table.press(Qt::Key_S);
    table.press(Qt::Key_V);
    QVERIFY(!table.find<NumberField>("subIn")->isVisible());
    table.type("5");
    table.find<QLineEdit>("subWhy")->setFocus(Qt::TabFocusReason);
    table.type("hurt");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<PlaceVacated>(table.newest().entry) ==
            (PlaceVacated{Team::Home, ShirtNumber(5), QStringLiteral("hurt")}));
    QVERIFY(isVacant(table.set().teams.home, Slot(5)));
    QVERIFY(table.find<SubstitutionBar>("substitutionBar")->sentence().contains(u"vacant place"));
}

void TestSubstitutionBar::aFingerVacatesAPlace() {
    OpenTable table(withNobody());
    table.click("subLeft");
    table.press(Qt::Key_V); // its button, and that of Enter, lie beyond the screen of the tests
    tap(*table.find("court2"));
    table.press(Qt::Key_Return);
    QVERIFY(isVacant(table.set().teams.home, Slot(2)));
}

void TestSubstitutionBar::digitsAfterATapAreTheOtherNumber() {
    OpenTable table(withRoster());
    table.press(Qt::Key_S);
    tap(*table.find("bench7"));
    table.type("3");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Substitution>(table.newest().entry) == (Substitution{Team::Home, ShirtNumber(7), ShirtNumber(3)}));
}

void TestSubstitutionBar::whoMayComeInForTheNumberThatGoesOutIsOffered() {
    OpenTable table(withRoster().substitute(Team::Home, 7, 3).play("h"));
    table.press(Qt::Key_S);
    QVERIFY(table.find("bench3")->isVisible());
    table.click("court5"); // 3 is bound to slot III
    QVERIFY(table.find("bench8")->isVisible());
    QCOMPARE(table.window().findChildren<QAbstractButton*>(QStringLiteral("bench3")).size(), 0);
    table.click("court7");
    table.click("bench3");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Substitution>(table.newest().entry) == (Substitution{Team::Home, ShirtNumber(3), ShirtNumber(7)}));
}

void TestSubstitutionBar::theExceptionalOnesAreOffered() {
    // 3 and 7 belong to slot III, so that nobody but exceptionally comes in for 5; 9, the libero, comes last.
    OpenTable table(withOneBound());
    table.press(Qt::Key_S);
    table.press(Qt::Key_E);
    QCOMPARE(table.window().focusWidget()->objectName(), QStringLiteral("subOut")); // who is hurt is known first
    table.type("5");
    table.press(Qt::Key_Return);
    QCOMPARE(table.window().focusWidget()->objectName(), QStringLiteral("subIn"));
    QVERIFY(table.find("bench7")->isVisible());
    QCOMPARE(table.window().findChildren<QAbstractButton*>(QStringLiteral("bench9")).size(), 0);
    table.click("bench7");
    const QString said = table.find<SubstitutionBar>("substitutionBar")->sentence();
    QVERIFY2(said.startsWith(u"Exceptional: anybody may come in"), qPrintable(said));
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Substitution>(table.newest().entry) ==
            (Substitution{Team::Home, ShirtNumber(7), ShirtNumber(5), SubstitutionKind::Exceptional}));
}

void TestSubstitutionBar::aPressOnAPlayerAsksForSomebodyInHerPlace() {
    OpenTable table(withRoster());
    QTest::mouseClick(court(table), Qt::LeftButton, {}, placeOf(table, 4));
    QVERIFY(table.find<SubstitutionBar>("substitutionBar")->isVisible());
    QCOMPARE(table.find<NumberField>("subOut")->number(), std::optional(ShirtNumber(4)));
    QCOMPARE(table.window().focusWidget()->objectName(), QStringLiteral("subIn"));
    table.type("7");
    QCOMPARE(table.find<NumberField>("subOut")->number(), std::optional(ShirtNumber(4)));
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Substitution>(table.newest().entry) == (Substitution{Team::Home, ShirtNumber(7), ShirtNumber(4)}));
}

void TestSubstitutionBar::aPressOnALiberoAsksForHerReplacement() {
    OpenTable table(withRoster().add(LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(5)}).play("h"));
    QTest::mouseClick(court(table), Qt::LeftButton, {}, placeOf(table, 9));
    QVERIFY(table.find<QWidget>("liberoBar")->isVisible());
    table.press(Qt::Key_Return);
    QVERIFY(std::get<LiberoOut>(table.newest().entry) == (LiberoOut{Team::Home, ShirtNumber(9)}));
}

void TestSubstitutionBar::betweenThePlayersNothingHappens() {
    OpenTable table(withRoster());
    const std::size_t before = table.recorded();
    QTest::mouseClick(court(table), Qt::LeftButton, {}, QPoint(2, 2));
    QVERIFY(!table.find<SubstitutionBar>("substitutionBar")->isVisible());
    table.press(Qt::Key_Space);
    QTest::mouseClick(court(table), Qt::LeftButton, {}, placeOf(table, 4)); // a rally is being played
    QVERIFY(!table.find<SubstitutionBar>("substitutionBar")->isVisible());
    QVERIFY(table.find<NoticeStrip>("noticeStrip")->view().refused.startsWith(u"The rally is not decided"));
    QCOMPARE(table.recorded(), before + 1);
}

/// Home serves from slot I, where 7 came in for 1 before and went out again.
MatchBuilder withOnePair() {
    return withRoster().substitute(Team::Home, 7, 1).play("h").substitute(Team::Home, 1, 7).play("h");
}

void TestSubstitutionBar::enterAloneRecordsWhatIsProposed() {
    OpenTable table(withOnePair());
    table.press(Qt::Key_S);
    auto* bar = table.find<SubstitutionBar>("substitutionBar");
    QVERIFY2(bar->sentence().startsWith(u"As before: 7 in for 1."), qPrintable(bar->sentence()));
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Substitution>(table.newest().entry) == (Substitution{Team::Home, ShirtNumber(7), ShirtNumber(1)}));
}

void TestSubstitutionBar::enterTwiceIsOneSubstitution() {
    OpenTable table(withOnePair());
    table.press(Qt::Key_S);
    table.press(Qt::Key_Return);
    const std::size_t before = table.recorded();
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before);
}

void TestSubstitutionBar::aTypedNumberTakesThePlaceOfTheProposal() {
    OpenTable table(withOnePair());
    table.press(Qt::Key_S);
    table.type("8");
    QCOMPARE(table.find<SubstitutionBar>("substitutionBar")->sentence(), QStringLiteral("Who goes out?"));
    table.press(Qt::Key_Return);
    table.type("4");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Substitution>(table.newest().entry) == (Substitution{Team::Home, ShirtNumber(8), ShirtNumber(4)}));
}

void TestSubstitutionBar::twoDigitsGoOnToTheNumberOut() {
    MatchBuilder match;
    OpenTable table(match.started());
    table.press(Qt::Key_S);
    table.type("10");
    QCOMPARE(table.window().focusWidget()->objectName(), QStringLiteral("subOut"));
    table.press(Qt::Key_Left); // half a substitution: no key of the table passes
    QCOMPARE(table.score().home, 0);
    table.press(Qt::Key_Backspace);
    QCOMPARE(table.window().focusWidget()->objectName(), QStringLiteral("subIn"));
}

QTEST_MAIN(TestSubstitutionBar)
#include "tst_substitutionbar.moc"
