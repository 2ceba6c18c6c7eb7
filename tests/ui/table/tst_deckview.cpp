// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/deckview.h"

#include "tests/support/matchbuilder.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

/// Who stands where: "1:1* 2:2 ..." by court position; * the server, L a libero, C the captain.
QString onSide(const DeckView& view, Side side) {
    QStringList words;
    for (const CourtPlayer& player : view.court)
        if (player.side == side)
            words += QStringLiteral("%1:%2%3%4%5")
                         .arg(player.position.value)
                         .arg(player.number.value)
                         .arg(player.server ? QStringLiteral("*") : QString(),
                              player.libero ? QStringLiteral("L") : QString(),
                              player.captain ? QStringLiteral("C") : QString());
    words.sort();
    return words.join(u' ');
}

} // namespace

class TestDeckView : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void positionsLieAsTheScorerSeesThem_data();
    void positionsLieAsTheScorerSeesThem();
    void theTwelveStandWhereTheyPlay_data();
    void theTwelveStandWhereTheyPlay();
    void aLiberoServesInTheSlotsPlace();
    void theServerAndTheNextOnes();
    void anAreaSaysWhatAPressMeans();
    void areasFollowTheSides();
    void countersAreThoseOfTheRulebook();
};

// Each half as it is looked at: left half back row then front row, right half front row then back row.
// clang-format off
void TestDeckView::positionsLieAsTheScorerSeesThem_data() {
    QTest::addColumn<int>("position");
    QTest::addColumn<CourtPlace>("left");
    QTest::addColumn<CourtPlace>("right");
    // Source: FIVB Official Volleyball Rules 2025-2028, 7.4.1: 4 3 2 at the net from left to right, 5 6 1 behind.
    //                       depth row (0 far side line, 2 near)
    QTest::newRow("back right")   << 1 << CourtPlace{1, 2} << CourtPlace{1, 0};
    QTest::newRow("front right")  << 2 << CourtPlace{0, 2} << CourtPlace{0, 0};
    QTest::newRow("front centre") << 3 << CourtPlace{0, 1} << CourtPlace{0, 1};
    QTest::newRow("front left")   << 4 << CourtPlace{0, 0} << CourtPlace{0, 2};
    QTest::newRow("back left")    << 5 << CourtPlace{1, 0} << CourtPlace{1, 2};
    QTest::newRow("back centre")  << 6 << CourtPlace{1, 1} << CourtPlace{1, 1};
}
// clang-format on

void TestDeckView::positionsLieAsTheScorerSeesThem() {
    QFETCH(int, position);
    QFETCH(CourtPlace, left);
    QFETCH(CourtPlace, right);
    QVERIFY(placeOf(CourtPosition(position), Side::Left) == left);
    QVERIFY(placeOf(CourtPosition(position), Side::Right) == right);
}

// clang-format off
void TestDeckView::theTwelveStandWhereTheyPlay_data() {
    QTest::addColumn<QString>("rallies");
    QTest::addColumn<QString>("left");
    QTest::addColumn<QString>("right");
    // Source: FIVB Official Volleyball Rules 2025-2028, 7.6.2: the team that wins the serve rotates one place, 2 to 1.
    QTest::newRow("at the start")          << ""   << "1:1* 2:2 3:3 4:4 5:5 6:6" << "1:11 2:12 3:13 4:14 5:15 6:16";
    QTest::newRow("server wins")           << "h"  << "1:1* 2:2 3:3 4:4 5:5 6:6" << "1:11 2:12 3:13 4:14 5:15 6:16";
    QTest::newRow("receivers win: rotate") << "v"  << "1:1 2:2 3:3 4:4 5:5 6:6"  << "1:12* 2:13 3:14 4:15 5:16 6:11";
    QTest::newRow("and back")              << "vh" << "1:2* 2:3 3:4 4:5 5:6 6:1" << "1:12 2:13 3:14 4:15 5:16 6:11";
}
// clang-format on

void TestDeckView::theTwelveStandWhereTheyPlay() {
    QFETCH(QString, rallies);
    MatchBuilder match;
    match.started().play(qPrintable(rallies));
    const DeckView view = deckViewOf(match.state());
    QTEST(onSide(view, Side::Left), "left");
    QTEST(onSide(view, Side::Right), "right");
}

void TestDeckView::aLiberoServesInTheSlotsPlace() {
    MatchBuilder match;
    match.started().add(LiberoServe{Team::Home, ShirtNumber(9)});
    const DeckView view = deckViewOf(match.state());
    QCOMPARE(onSide(view, Side::Left), QStringLiteral("1:9*L 2:2 3:3 4:4 5:5 6:6"));
    QCOMPARE(view.serving->number, ShirtNumber(9));
    QCOMPARE(view.serving->replaced, std::optional(ShirtNumber(1)));
    QCOMPARE(view.areas.left.liberoState, QStringLiteral("9 serves"));
}

void TestDeckView::theServerAndTheNextOnes() {
    MatchBuilder match;
    match.started();
    const ServingView serving = deckViewOf(match.state()).serving.value();
    QCOMPARE(serving.code, QStringLiteral("SAL"));
    QCOMPARE(serving.number, ShirtNumber(1));
    QCOMPARE(serving.slot, Slot(1));
    QCOMPARE(serving.rally, 1);
    QCOMPARE(serving.nextNumber, ShirtNumber(12)); // position 2 rotates to serve: FIVB Rules 2025-2028, 12.2.2.2
    QCOMPARE(serving.nextSlot, Slot(1));
    QCOMPARE(serving.thenNumber, ShirtNumber(2));
    match.play("hv");
    const ServingView after = deckViewOf(match.state()).serving.value();
    QCOMPARE(after.team, Team::Visitors);
    QCOMPARE(after.number, ShirtNumber(12));
    QCOMPARE(after.rally, 3);
    QCOMPARE(after.nextNumber, ShirtNumber(2));
    QCOMPARE(after.nextSlot, Slot(2));
}

void TestDeckView::anAreaSaysWhatAPressMeans() {
    MatchBuilder match;
    match.open().toss(Team::Visitors).lineUp(Team::Home, {1, 2, 3, 4, 5, 6});
    DeckView view = deckViewOf(match.state());
    QCOMPARE(view.areas.left.call, AreaCall::LineUpStands);
    QCOMPARE(view.areas.right.call, AreaCall::LineUpAwaited);
    QVERIFY(!view.serving);
    match.lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
    view = deckViewOf(match.state());
    QCOMPARE(view.areas.left.call, AreaCall::WinsTheRally);
    QVERIFY(view.areas.right.serves);
    QVERIFY(!view.areas.left.serves);
    for (int i = 0; i < 25; ++i)
        match.play("h");
    view = deckViewOf(match.state());
    QCOMPARE(view.areas.left.call, AreaCall::WinsTheSet);
    QCOMPARE(view.areas.right.call, AreaCall::None);
    QVERIFY(!view.areas.left.serves);
}

void TestDeckView::areasFollowTheSides() {
    MatchBuilder match;
    match.open().toss(Team::Home, Team::Visitors);
    const DeckView view = deckViewOf(match.state());
    QCOMPARE(view.areas.left.code, QStringLiteral("QRL"));
    QCOMPARE(view.areas.right.code, QStringLiteral("SAL"));
    QCOMPARE(teamOn(match.state(), Side::Left), Team::Visitors);
    QCOMPARE(sideOf(match.state(), Team::Visitors), Side::Left);
}

void TestDeckView::countersAreThoseOfTheRulebook() {
    MatchBuilder match;
    match.started().substitute(Team::Home, 7, 1).add(TimeOut{Team::Visitors});
    const DeckView view = deckViewOf(match.state());
    QCOMPARE(view.areas.left.substitutions, 1);
    QCOMPARE(view.areas.left.substitutionLimit, 18); // Scoring & Libero Tracking, EOA Volleyball Officials Clinic
    QCOMPARE(view.areas.left.timeOutsLeft, 2);       // NFHS 2003 rule changes
    QCOMPARE(view.areas.right.timeOutsLeft, 1);
}

QTEST_GUILESS_MAIN(TestDeckView)
#include "tst_deckview.moc"
