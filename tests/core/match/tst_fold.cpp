// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/undo.h"
#include "tests/support/matchbuilder.h"

#include <QtTest>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

/// The numbers on court of a team by court position 1 to 6.
QString onCourtByPosition(const SetState& set, Team team) {
    QStringList numbers;
    for (int position = 1; position <= 6; ++position)
        numbers += QString::number(onCourt(set.teams[team], slotAt(set, team, CourtPosition(position))).value);
    return numbers.join(u' ');
}

} // namespace

class TestFold : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theServingTeamStartsFromPositionOneTheReceivingFromPositionTwo() {
        // NCAA Women's scoresheet example (grade A): the serving team's line I is its right back, the receiving team's
        // its right front. FIVB Official Volleyball Rules 2025-2028, 12.2.2.2: the receiving team rotates before it
        // first serves.
        MatchBuilder match;
        match.started();
        QCOMPARE(serverOf(match.state().set()), ShirtNumber(1));
        match.play("v");
        QCOMPARE(serverOf(match.state().set()), ShirtNumber(12));
    }

    void aTeamRotatesOnlyWhenItWinsTheServeBack_data() {
        QTest::addColumn<QByteArray>("rallies");
        QTest::addColumn<QString>("home");
        QTest::addColumn<QString>("visitors");
        // FIVB Official Volleyball Rules 2025-2028, 7.6.2: 2 to 1, 1 to 6, 6 to 5, 5 to 4, 4 to 3, 3 to 2.
        // clang-format off
        QTest::newRow("at the start")                    << QByteArray("")       << "1 2 3 4 5 6" << "11 12 13 14 15 16";
        QTest::newRow("points on serve do not rotate")   << QByteArray("hhh")    << "1 2 3 4 5 6" << "11 12 13 14 15 16";
        QTest::newRow("visitors win the serve")          << QByteArray("v")      << "1 2 3 4 5 6" << "12 13 14 15 16 11";
        QTest::newRow("home win it back")                << QByteArray("vh")     << "2 3 4 5 6 1" << "12 13 14 15 16 11";
        QTest::newRow("six times round")                 << QByteArray("vhvhvhvhvhvh") << "1 2 3 4 5 6" << "11 12 13 14 15 16";
        QTest::newRow("a replay does not rotate")        << QByteArray("rvr")    << "1 2 3 4 5 6" << "12 13 14 15 16 11";
        QTest::newRow("a serve not made gives the serve away") << QByteArray("n") << "1 2 3 4 5 6" << "12 13 14 15 16 11";
        // clang-format on
    }
    void aTeamRotatesOnlyWhenItWinsTheServeBack() {
        QFETCH(QByteArray, rallies);
        MatchBuilder match;
        match.started().play(rallies.constData());
        const SetState set = match.state().set();
        QTEST(onCourtByPosition(set, Team::Home), "home");
        QTEST(onCourtByPosition(set, Team::Visitors), "visitors");
    }

    void aSetIsWonByTheRulebook_data() {
        QTest::addColumn<int>("setNumber");
        QTest::addColumn<int>("home");
        QTest::addColumn<int>("visitors");
        QTest::addColumn<int>("winner"); // 0 home, 1 visitors, -1 nobody yet
        // NFHS 2003 rule changes: rally scoring to 25 by two without a cap, the deciding set to 15.
        // clang-format off
        QTest::newRow("24-22 not yet")              << 1 << 24 << 22 << -1;
        QTest::newRow("25-23 won")                  << 1 << 25 << 23 <<  0;
        QTest::newRow("23-25 won by visitors")      << 1 << 23 << 25 <<  1;
        QTest::newRow("25-24 goes on")              << 1 << 25 << 24 << -1;
        QTest::newRow("26-24 won")                  << 1 << 26 << 24 <<  0;
        QTest::newRow("40-39 goes on: no cap")      << 1 << 40 << 39 << -1;
        QTest::newRow("41-39 won")                  << 1 << 41 << 39 <<  0;
        QTest::newRow("15-13 is nothing in set 4")  << 4 << 15 << 13 << -1;
        QTest::newRow("15-13 wins the deciding set")<< 5 << 15 << 13 <<  0;
        QTest::newRow("15-14 goes on there too")    << 5 << 15 << 14 << -1;
        QTest::newRow("14-16 wins it")              << 5 << 14 << 16 <<  1;
        // clang-format on
    }
    void aSetIsWonByTheRulebook() {
        QFETCH(int, setNumber);
        QFETCH(int, home);
        QFETCH(int, visitors);
        QFETCH(int, winner);
        MatchBuilder match;
        const MatchState state = match.open().state();
        const auto won = winnerAt(state.rulebook(), pointsToWin(state, setNumber), {home, visitors});
        QCOMPARE(won ? (*won == Team::Home ? 0 : 1) : -1, winner);
    }

    void aCapEndsASetWhateverTheMargin() {
        Rulebook rulebook = highSchool();
        rulebook.cap = 28;
        QVERIFY(!winnerAt(rulebook, 25, {27, 26}));
        QCOMPARE(winnerAt(rulebook, 25, {28, 27}), std::optional(Team::Home));
        QCOMPARE(winnerAt(rulebook, 25, {27, 28}), std::optional(Team::Visitors));
    }

    void theFirstServeAlternatesAndSidesChangeBetweenSets() {
        MatchBuilder match;
        match.started(Team::Home).play(QByteArray(25, 'h').constData()).add(SetEnded{});
        const SetState second = match.state().set();
        QCOMPARE(second.number, 2);
        QCOMPARE(second.servesFirst, std::optional(Team::Visitors)); // from memory
        QCOMPARE(second.left, std::optional(Team::Visitors));        // from memory
        QCOMPARE(setsWon(match.state()).home, 1);
    }

    void theDecidingSetAwaitsATossOfItsOwn() {
        // NFHS 2003 rule changes, 1-4-4: a new toss before the deciding set.
        MatchBuilder match;
        match.open(3);
        for (const char winner : {'h', 'v'}) {
            match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16});
            if (winner == 'h')
                match.toss(Team::Home);
            match.start().play(QByteArray(25, winner).constData()).add(SetEnded{});
        }
        QCOMPARE(match.state().set().number, 3);
        QVERIFY(!match.state().set().servesFirst);
        QVERIFY(!match.state().set().left);
    }

    void theMatchIsWonWhenHalfTheSetsAreAndThenClosed() {
        MatchBuilder match;
        match.open(3);
        for (int set = 0; set < 2; ++set)
            match.toss(Team::Home)
                .lineUp(Team::Home, {1, 2, 3, 4, 5, 6})
                .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16})
                .start()
                .play(QByteArray(25, 'h').constData())
                .add(SetEnded{});
        QCOMPARE(phaseOf(match.state()), Phase::MatchWon);
        QCOMPARE(phaseOf(match.add(MatchClosed{}).state()), Phase::MatchClosed);
    }

    void aStrikeTakesAnEntryOutAndStrikingTheStrikePutsItBack() {
        MatchBuilder match;
        match.started().play("hh");
        const EntryNumber point = match.last();
        match.add(Strike{point, QStringLiteral("net touch")});
        QCOMPARE(match.state().set().teams.home.points, 1);
        match.add(Strike{match.last(), {}});
        QCOMPARE(match.state().set().teams.home.points, 2);
        QVERIFY(standsIn(match.entries(), point));
    }

    void undoGoesBackEntryByEntryButNeverPastTheOpening() {
        MatchBuilder match;
        match.open().toss(Team::Home);
        match.undo();
        QVERIFY(!match.state().set().servesFirst);
        QVERIFY(!newestStanding(match.entries()));
    }

    void redoIsOverOnceSomethingElseIsRecorded() {
        MatchBuilder match;
        match.started().play("h");
        match.undo();
        QVERIFY(newestUndone(match.entries()));
        match.play("v");
        QVERIFY(!newestUndone(match.entries()));
    }

    void severalUndosAreRedoneNewestFirst() {
        MatchBuilder match;
        match.started().play("hv");
        const MatchState before = match.state();
        match.undo().undo();
        QCOMPARE(match.state().set().points.size(), std::size_t(0));
        match.add(Strike{newestUndone(match.entries()).value(), {}});
        QCOMPARE(match.state().set().points.size(), std::size_t(1));
        match.add(Strike{newestUndone(match.entries()).value(), {}});
        QCOMPARE(match.state().set(), before.set());
        QVERIFY(!newestUndone(match.entries()));
    }

    void aCorrectionIsUndoneBeforeWhatCameBeforeIt() {
        MatchBuilder match;
        match.started().play("hhv");
        const EntryNumber newest = match.last();
        const auto points = [&match] { return match.state().set().points.size(); };
        match.add(Strike{EntryNumber(newest.value - 1), {}}); // an older rally
        QCOMPARE(points(), std::size_t(2));
        QVERIFY(!newestUndone(match.entries())); // a correction is no undo
        match.add(Strike{newestToUndo(match.entries()).value(), {}});
        QCOMPARE(points(), std::size_t(3));
        QCOMPARE(newestToUndo(match.entries()), std::optional(newest));
        match.add(Strike{newest, {}});
        QCOMPARE(points(), std::size_t(2));
        for (const std::size_t redone : {3, 2}) { // the rally, then the correction
            match.add(Strike{newestUndone(match.entries()).value(), {}});
            QCOMPARE(points(), redone);
        }
        QVERIFY(!newestUndone(match.entries()));
        QVERIFY(newestToUndo(match.entries()) != std::optional(newest)); // the correction again
    }

    void aReasonTellsACorrectionFromAnUndo() {
        MatchBuilder match;
        match.started().play("hh");
        const EntryNumber newest = match.last();
        match.add(Strike{newest, QStringLiteral("net touch")});
        QVERIFY(!newestUndone(match.entries()));
        match.add(Strike{newestToUndo(match.entries()).value(), {}});
        QVERIFY(standsIn(match.entries(), newest));
    }

    void aPointGivenBeforeTheSetComesWithItsStart() {
        MatchBuilder match;
        match.open().add(DelaySanction{Team::Home, DelayLevel::Penalty, {}});
        QCOMPARE(match.state().pointsDue, std::vector<Team>{Team::Visitors});
        match.toss(Team::Home)
            .lineUp(Team::Home, {1, 2, 3, 4, 5, 6})
            .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16})
            .start();
        const SetState set = match.state().set();
        QCOMPARE(set.teams.visitors.points, 1);
        QCOMPARE(set.serving, Team::Visitors);
        QCOMPARE(serverOf(set), ShirtNumber(12));
        QVERIFY(match.state().pointsDue.empty());
        QCOMPARE(inWords(match.set().teams.home), QStringLiteral("I: [R]"));
        QCOMPARE(inWords(match.set().teams.visitors), QStringLiteral("I: P 1"));
    }

    // FIVB Official Volleyball Rules 2025-2028, 7.7.2: the points since the fault go, the opponents' stand, and a point
    // and the serve besides.
    void aWrongServersPointsAreTakenBack() {
        MatchBuilder match;
        match.started().play("hhhhhvvvvh"); // 5-0, 5-4, then home serves at 6-4
        match.play("h");
        const EntryNumber first = match.last();
        match.play("hhs").add(WrongServer{Team::Home, ShirtNumber(6), first});
        const SetState set = match.state().set();
        QCOMPARE(set.teams.home.points, 6);
        QCOMPARE(set.teams.visitors.points, 5);
        QCOMPARE(set.serving, Team::Visitors);
        QVERIFY(!set.contacted);
        const TeamRecord home = match.set().teams.home;
        QCOMPARE(inWords(home.terms.back()), QStringLiteral("6 x(7)x#1 x(8)x#1 x(9)x#1 x( )x#1 [R]#1"));
        QCOMPARE(match.set().teams.visitors.running.back().total, 5);
    }

    // FIVB Official Volleyball Rules 2025-2028, 7.7.1.1: one point only, whoever won the rally.
    void aWrongServerWhoseRallyIsLostCostsNoSecondPoint() {
        MatchBuilder match;
        match.started().play("hhhv").add(WrongServer{Team::Home, ShirtNumber(6), std::nullopt});
        QCOMPARE(match.state().set().teams.visitors.points, 1);
        QCOMPARE(match.state().set().serving, Team::Visitors);
    }

    // FIVB Official Volleyball Rules 2025-2028, 7.7.1.1: without a point taken back a set that is won stays as it is.
    void aRulingThatTakesNothingBackLeavesAWonSetAlone() {
        MatchBuilder match;
        match.started().play("hhhhhhhhhhhhhhhhhhhhhhhhh");
        const EntryNumber winning = match.last();
        const Entry nothing = WrongServer{Team::Home, ShirtNumber(6), std::nullopt};
        QVERIFY(isRefused(match.judge(nothing)));
        const MatchState before = match.state();
        QCOMPARE(apply(before, {EntryNumber(99), {}, nothing, {}, {}}).set(), before.set());
        match.add(WrongServer{Team::Home, ShirtNumber(6), winning});
        QCOMPARE(match.state().set().teams.home.points, 24);
        QCOMPARE(match.state().set().teams.visitors.points, 1);
        QCOMPARE(phaseOf(match.state()), Phase::ReadyToServe);
    }

    void aForfeitedSetIsNotTakenBack() {
        MatchBuilder match;
        match.started().play("hh");
        const EntryNumber second = match.last();
        match.add(Forfeit{Team::Visitors, ForfeitKind::Incomplete, Scope::Set, {}});
        const Entry ruling = WrongServer{Team::Home, ShirtNumber(6), second};
        QVERIFY(isRefused(match.judge(ruling)));
        const MatchState before = match.state();
        QCOMPARE(apply(before, {EntryNumber(99), {}, ruling, {}, {}}).set(), before.set());
    }

    void anEntryPutInBeforeAnotherStandsThere() {
        MatchBuilder match;
        match.started().play("hv");
        const EntryNumber lost = match.last();
        match.place(RallyWon{Team::Home}, Placed::How::Before, lost, QStringLiteral("missed"));
        QCOMPARE(match.state().set().teams.home.points, 2);
        QCOMPARE(match.state().set().teams.visitors.points, 1);
        QCOMPARE(inWords(match.set().teams.home), QStringLiteral("I: (1) (2)#1 (R)"));
        match.undo();
        QCOMPARE(inWords(match.set().teams.home), QStringLiteral("I: (1) ~(2)~#1 (R)"));
        QCOMPARE(match.state().set().teams.home.points, 1);
    }

    void anEntrySetInThePlaceOfAnotherStrikesIt() {
        MatchBuilder match;
        match.started().play("hh");
        const EntryNumber second = match.last();
        match.play("v").place(RallyWon{Team::Visitors}, Placed::How::InsteadOf, second, QStringLiteral("ball out"));
        QCOMPARE(match.state().set().teams.home.points, 1);
        QCOMPARE(match.state().set().teams.visitors.points, 2);
        QCOMPARE(inWords(match.set().teams.home), QStringLiteral("I: (1) ~(2)~#1 (R)"));
        match.undo();
        QCOMPARE(match.state().set().teams.home.points, 2);
        QCOMPARE(match.state().set().teams.visitors.points, 1);
    }

    void ofAnEntryCorrectedTwiceTheLastAloneStands() {
        MatchBuilder match;
        match.started().play("h");
        const EntryNumber called = match.last();
        match.place(RallyWon{Team::Visitors}, Placed::How::InsteadOf, called, QStringLiteral("ball out"));
        const EntryNumber changed = match.last();
        match.place(RallyWon{Team::Home}, Placed::How::InsteadOf, changed, QStringLiteral("touched"));
        QCOMPARE(match.state().set().teams.home.points, 1);
        QCOMPARE(match.state().set().teams.visitors.points, 0);
        match.undo();
        QCOMPARE(match.state().set().teams.home.points, 0);
        QCOMPARE(match.state().set().teams.visitors.points, 1);
        match.add(Strike{changed, {}});
        QCOMPARE(match.state().set().teams.home.points, 1);
        QCOMPARE(match.state().set().teams.visitors.points, 0);
    }

    void aVacantPlaceHasNoServer() {
        MatchBuilder match;
        match.started().add(PlaceVacated{Team::Home, ShirtNumber(1), {}});
        QVERIFY(isVacant(match.state().set().teams.home, Slot(1)));
        QVERIFY(!serverOf(match.state().set()).isValid());
        match.substitute(Team::Home, 7, 1);
        QCOMPARE(serverOf(match.state().set()), ShirtNumber(7));
    }

    void aLiberoOnCourtServesInThePlaceSheTook() {
        MatchBuilder match;
        match.started().add(LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(1)});
        QCOMPARE(serverOf(match.state().set()), ShirtNumber(9));
        match.play("h");
        QCOMPARE(match.state().set().teams.home.liberoSlot, Slot(1));
        QCOMPARE(inWords(match.set().teams.home), QStringLiteral("I: <1>"));
        match.add(LiberoOut{Team::Home, ShirtNumber(9)}).play("h");
        QCOMPARE(inWords(match.set().teams.home), QStringLiteral("I: <1> (2)"));
    }

    // FIVB Official Volleyball Rules 2025-2028, 6.4.3: an incomplete team keeps its points and sets.
    void anIncompleteTeamKeepsItsPoints() {
        MatchBuilder match;
        match.open(3)
            .toss(Team::Home)
            .lineUp(Team::Home, {1, 2, 3, 4, 5, 6})
            .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16});
        match.start().play("hhhv").add(Forfeit{Team::Visitors, ForfeitKind::Incomplete, Scope::Match, {}});
        const MatchState state = match.state();
        QCOMPARE(phaseOf(state), Phase::MatchWon);
        QCOMPARE(setsWon(state), (PerTeam<int>{2, 0}));
        QCOMPARE(setScores(state), (std::vector<PerTeam<int>>{{25, 1}, {25, 0}}));
    }

    // FIVB Official Volleyball Rules 2025-2028, 6.4.1: 0-3, 0-25 in each set.
    void aDefaultIsLostToNothing() {
        MatchBuilder match;
        match.open(5).add(Forfeit{Team::Home, ForfeitKind::Default, Scope::Match, {}});
        QCOMPARE(setsWon(match.state()), (PerTeam<int>{0, 3}));
        QCOMPARE(setScores(match.state()), (std::vector<PerTeam<int>>{{0, 25}, {0, 25}, {0, 25}}));
    }

    // FIVB Official Volleyball Rules 2025-2028, 17.3.
    void anInterruptedSetMayBePlayedAgain() {
        MatchBuilder match;
        match.started().play("hhv").add(Suspended{}).add(Resumed{GoOn::SetAgain});
        QCOMPARE(match.state().sets.size(), std::size_t(2));
        QCOMPARE(match.state().set().number, 1);
        QCOMPARE(match.state().set().teams.home.points, 0);
        QCOMPARE(onCourt(match.state().set().teams.visitors, Slot(1)), ShirtNumber(12));
        match.start().play("v");
        const MatchRecord record = match.record();
        QCOMPARE(record.sets.size(), std::size_t(2));
        QVERIFY(record.sets[0].cancelled);
        QCOMPARE(record.sets[1].number, 1);
        QCOMPARE(record.sets[1].score, (PerTeam<int>{0, 1}));
    }

    void anIllegalSubstitutionCountsNoLongerOnceItIsRuled_data() {
        QTest::addColumn<bool>("counts");
        QTest::addColumn<int>("ruled");
        QTest::addColumn<int>("putRight");
        // Scoring & Libero Tracking, EOA Volleyball Officials Clinic: an illegal substitution never counts.
        QTest::newRow("it never counts") << false << 1 << 1;
        QTest::newRow("a rulebook that counts it, but not what puts it right") << true << 2 << 2;
    }
    void anIllegalSubstitutionCountsNoLongerOnceItIsRuled() {
        QFETCH(bool, counts);
        Rulebook rulebook = highSchool();
        rulebook.illegalSubstitutionCounts = counts;
        MatchBuilder match;
        match.open(5, rulebook).toss(Team::Home);
        match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
        match.substitute(Team::Home, 7, 2).play("h").substitute(Team::Home, 2, 3).play("s");
        QCOMPARE(substitutionsOf(match.state().set().teams.home), 2);
        match.add(IllegalPlayer{Team::Home, ShirtNumber(2), {}, {}});
        QTEST(substitutionsOf(match.state().set().teams.home), "ruled");
        QCOMPARE(static_cast<int>(match.set().teams.home.substitutions.size()), counts ? 2 : 1);
        match.substitute(Team::Home, 3, 2);
        QTEST(substitutionsOf(match.state().set().teams.home), "putRight");
        QTEST(static_cast<int>(match.set().teams.home.substitutions.size()), "putRight");
        QCOMPARE(onCourt(match.state().set().teams.home, Slot(3)), ShirtNumber(3));
        QCOMPARE(slotOf(match.state().set().teams.home, ShirtNumber(2)), std::optional(Slot(2)));
    }

    void entriesThatMeanNothingHereLeaveTheStateAsItWas() {
        MatchBuilder match;
        match.open();
        const MatchState before = match.state();
        for (const Entry& entry :
             std::vector<Entry>{ServeContacted{}, RallyWon{Team::Home}, Replay{}, NoServe{}, TimeOut{Team::Home},
                                SetStarted{}, SetEnded{}, MatchClosed{}, SidesChanged{}, Resumed{},
                                Substitution{Team::Home, ShirtNumber(7), ShirtNumber(1)}}) {
            MatchState after = apply(before, {EntryNumber(2), {}, entry, {}, {}});
            after.last = before.last;
            QCOMPARE(after, before);
        }
    }
};

QTEST_APPLESS_MAIN(TestFold)
#include "tst_fold.moc"
