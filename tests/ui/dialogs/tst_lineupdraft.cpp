// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/matchbuilder.h"
#include "ui/dialogs/lineupdraft.h"

#include <QTest>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

using testing::MatchBuilder;
using testing::six;

Roster rosterOf(Team team, std::initializer_list<int> numbers) {
    Roster roster{team, {}, {}};
    for (const int number : numbers)
        roster.players.push_back({ShirtNumber(number), {}, false, false});
    return roster;
}

QString told(const std::array<ShirtNumber, 6>& numbers) {
    QStringList words;
    for (const ShirtNumber number : numbers)
        words << QString::number(number.value);
    return words.join(u' ');
}

constexpr int empty = -1;

} // namespace

class LineUpDraftTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aNumberIsWholeWhenNoOtherGoesOn_data();
    void aNumberIsWholeWhenNoOtherGoesOn();
    void withoutARosterOneDigitMayGoOn();
    void emptyFieldsAreNotSpokenOf();
    void whatIsTypedIsJudgedAtOnce();
    void theServingOrderBeginsAtPositionOneOrTwo_data();
    void theServingOrderBeginsAtPositionOneOrTwo();
    void withoutATossThereIsNoServingOrder();
    void theEarlierLineUpIsThatOfTheSetBefore();
    void theRosterNamesCaptainAndLiberos();
    void emptyLiberoFieldsAreLeftOut();
};

void LineUpDraftTest::aNumberIsWholeWhenNoOtherGoesOn_data() {
    QTest::addColumn<QString>("text");
    QTest::addColumn<bool>("whole");
    // clang-format off
    // the roster: 1 4 7 12 15 40
    QTest::newRow("two digits")                  << u"12"_s   << true;
    QTest::newRow("two digits of a stranger")    << u"99"_s   << true;
    QTest::newRow("one digit, none goes on")     << u"7"_s    << true;
    QTest::newRow("one digit, one goes on")      << u"4"_s    << false;
    QTest::newRow("1 may become 12")             << u"1"_s    << false;
    QTest::newRow("a stranger, none goes on")    << u"9"_s    << true;
    QTest::newRow("a leading zero")              << u"07"_s   << true;
    QTest::newRow("double zero is no number")    << u"00"_s   << false;
    QTest::newRow("nothing")                     << QString() << false;
    QTest::newRow("letters")                     << u"x"_s    << false;
    // clang-format on
}

void LineUpDraftTest::aNumberIsWholeWhenNoOtherGoesOn() {
    QFETCH(QString, text);
    QFETCH(bool, whole);
    QCOMPARE(isWholeNumber(text, rosterOf(Team::Home, {1, 4, 7, 12, 15, 40})), whole);
}

void LineUpDraftTest::withoutARosterOneDigitMayGoOn() {
    QVERIFY(!isWholeNumber(u"7"_s, rosterOf(Team::Home, {})));
    QVERIFY(isWholeNumber(u"17"_s, rosterOf(Team::Home, {})));
}

void LineUpDraftTest::emptyFieldsAreNotSpokenOf() {
    const MatchState state = MatchBuilder().open().add(rosterOf(Team::Home, {1, 2, 3})).state();
    QVERIFY(findingsFor(state, {Team::Home, {}, {}, {}}).empty());
    const LineUp some{Team::Home, six({1, empty, 3, empty, empty, 2}), {}, {ShirtNumber()}};
    QVERIFY(findingsFor(state, some).empty());
    QVERIFY(!isFilled(some));
}

void LineUpDraftTest::whatIsTypedIsJudgedAtOnce() {
    const MatchState state = MatchBuilder().open().add(rosterOf(Team::Home, {1, 2, 3})).state();
    const Findings findings = findingsFor(state, {Team::Home, six({1, 1, 8, empty, empty, empty}), {}, {}});
    QCOMPARE(findings.size(), 2U);
    QCOMPARE(findings[0].kind, FindingKind::DoubledInLineUp);
    QCOMPARE(findings[0].number, ShirtNumber(1));
    QCOMPARE(findings[1].kind, FindingKind::StrangerInLineUp);
    QCOMPARE(findings[1].number, ShirtNumber(8));
}

void LineUpDraftTest::theServingOrderBeginsAtPositionOneOrTwo_data() {
    QTest::addColumn<int>("servesFirst");
    QTest::addColumn<bool>("byFloor");
    QTest::addColumn<QString>("order");
    const int home = static_cast<int>(Team::Home);
    const int visitors = static_cast<int>(Team::Visitors);
    // clang-format off
    // IHSAA Volleyball Scorekeeping Narrative: both teams in serving order, the receiving team from position 2
    QTest::newRow("serves first")            << home     << false << u"1 2 3 4 5 6"_s;
    QTest::newRow("receives first")          << visitors << false << u"2 3 4 5 6 1"_s;
    // the rulebook's other choice: slot I is court position 1 for both
    QTest::newRow("receives first, by floor")<< visitors << true  << u"1 2 3 4 5 6"_s;
    // clang-format on
}

void LineUpDraftTest::theServingOrderBeginsAtPositionOneOrTwo() {
    QFETCH(int, servesFirst);
    QFETCH(bool, byFloor);
    QFETCH(QString, order);
    Rulebook rulebook = testing::highSchool();
    rulebook.writtenOrder = byFloor ? WrittenOrder::Floor : WrittenOrder::Serving;
    const MatchState state = MatchBuilder().open(5, rulebook).toss(static_cast<Team>(servesFirst)).state();
    const auto given = servingOrder(state, {Team::Home, six({1, 2, 3, 4, 5, 6}), {}, {}});
    QVERIFY(given.has_value());
    QCOMPARE(told(*given), order);
}

void LineUpDraftTest::withoutATossThereIsNoServingOrder() {
    const MatchState state = MatchBuilder().open().state();
    QVERIFY(!servingOrder(state, {Team::Home, six({1, 2, 3, 4, 5, 6}), {}, {}}).has_value());
    QVERIFY(!servingOrder(MatchState(), {Team::Home, six({1, 2, 3, 4, 5, 6}), {}, {}}).has_value());
}

void LineUpDraftTest::theEarlierLineUpIsThatOfTheSetBefore() {
    MatchBuilder match;
    match.started();
    QVERIFY(!earlierLineUp(match.state(), Team::Home).has_value());
    match.play("hhhhhhhhhhhhhhhhhhhhhhhhh").add(SetEnded{});
    const auto earlier = earlierLineUp(match.state(), Team::Visitors);
    QVERIFY(earlier.has_value());
    QCOMPARE(earlier->set, 1);
    QCOMPARE(told(earlier->lineUp.positions), u"11 12 13 14 15 16"_s);
    QCOMPARE(earlier->lineUp.liberos, (std::vector{ShirtNumber(19)}));
}

void LineUpDraftTest::theRosterNamesCaptainAndLiberos() {
    Roster roster = rosterOf(Team::Home, {1, 2, 3, 4});
    roster.players[0].libero = roster.players[1].libero = roster.players[3].libero = true;
    roster.players[2].captain = true;
    const MatchState state = MatchBuilder().open().add(roster).state();
    QCOMPARE(rosterCaptain(state, Team::Home), std::optional(ShirtNumber(3)));
    QCOMPARE(rosterLiberos(state, Team::Home), (std::vector{ShirtNumber(1), ShirtNumber(2)}));
    QVERIFY(!rosterCaptain(state, Team::Visitors).has_value());
}

void LineUpDraftTest::emptyLiberoFieldsAreLeftOut() {
    const LineUp lineUp{Team::Home, six({1, 2, 3, 4, 5, 6}), {}, {ShirtNumber(), ShirtNumber(9)}};
    QCOMPARE(withoutEmptyLiberos(lineUp).liberos, (std::vector{ShirtNumber(9)}));
}

} // namespace setfolio

QTEST_APPLESS_MAIN(setfolio::LineUpDraftTest)
#include "tst_lineupdraft.moc"
