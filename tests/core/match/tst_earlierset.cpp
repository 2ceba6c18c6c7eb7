// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/signoff.h"
#include "tests/support/matchbuilder.h"

#include <QtTest>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

using Scores = std::vector<PerTeam<int>>;

Forfeit ofSet(Team by, int number, std::optional<int> keeps) {
    return {by, ForfeitKind::Incomplete, Scope::Set, QStringLiteral("not registered"), EarlierSet{number, keeps}};
}

/// A set to this score, the winner's points last.
void playTo(MatchBuilder& match, PerTeam<int> score) {
    if (!match.state().set().servesFirst)
        match.toss(Team::Home);
    match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
    const Team winner = score.home > score.visitors ? Team::Home : Team::Visitors;
    for (int both = 0; both < score[opponentsOf(winner)]; ++both)
        match.play(winner == Team::Home ? "hv" : "vh");
    for (int more = score[opponentsOf(winner)]; more < score[winner]; ++more)
        match.play(winner == Team::Home ? "h" : "v");
}

MatchBuilder played(const Scores& scores, int bestOf = 5) {
    MatchBuilder match;
    match.open(bestOf);
    for (const PerTeam<int>& score : scores) {
        playTo(match, score);
        match.add(SetEnded{});
    }
    return match;
}

MatchState without(MatchState state, EntryNumber last) {
    state.last = last;
    return state;
}

} // namespace

/// Source, where no other is named: FIVB Official Volleyball Rules 2025-2028, 7.3.5.4, and 6.4.3 for what the opponents
/// get.
class TestEarlierSet : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void itIsLostWhateverItsScoreWas_data() {
        QTest::addColumn<PerTeam<int>>("score");
        QTest::addColumn<int>("keeps");
        QTest::addColumn<PerTeam<int>>("result");
        using Points = PerTeam<int>;
        // clang-format off
        QTest::newRow("all points go")                           << Points{25, 20} << 0  << Points{0, 25};
        QTest::newRow("the first ten stand")                     << Points{25, 20} << 10 << Points{10, 25};
        QTest::newRow("two points ahead")                        << Points{27, 25} << 24 << Points{24, 26};
        QTest::newRow("more than were needed")                   << Points{28, 26} << 25 << Points{25, 27};
        QTest::newRow("all points stand (sense)")                << Points{25, 20} << -1 << Points{25, 27};
        QTest::newRow("a set that was lost")                     << Points{20, 25} << 0  << Points{0, 25};
        QTest::newRow("the opponents' points stand (derived)")   << Points{26, 28} << 3  << Points{3, 28};
        // clang-format on
    }
    void itIsLostWhateverItsScoreWas() {
        QFETCH(PerTeam<int>, score);
        QFETCH(int, keeps);
        MatchBuilder match = played({score});
        const Forfeit forfeit = ofSet(Team::Home, 1, keeps < 0 ? std::nullopt : std::optional(keeps));
        QVERIFY(match.judge(forfeit).empty());
        const MatchState state = match.add(forfeit).state();
        const SetState& set = state.sets.front();
        QCOMPARE(set.winner, std::optional(Team::Visitors));
        QCOMPARE(set.forfeit, std::optional(forfeit));
        QFETCH(PerTeam<int>, result);
        QCOMPARE(setScores(state), Scores{result});
        QCOMPARE(setsWon(state), (PerTeam<int>{0, 1}));
        for (const Team team : bothTeams)
            QCOMPARE(std::ranges::count(set.points, team, &Point::team), result[team]);
        QCOMPARE(phaseOf(state), Phase::BeforeSet);
        QCOMPARE(state.set().number, 2);
    }

    void theFirstPointsAreThoseThatStand() {
        MatchBuilder match = played({{25, 20}});
        const std::vector<Point> before = match.state().sets.front().points;
        const std::vector<Point> after = match.add(ofSet(Team::Home, 1, 3)).state().sets.front().points;
        QVERIFY(std::equal(after.begin(), after.begin() + 5, before.begin())); // h v h v h
        QCOMPARE(after.back().by, PointBy::Forfeit);
        QCOMPARE(after.back().entry, match.last());
        QCOMPARE(std::ranges::count(after, PointBy::Forfeit, &Point::by), 5);
    }

    void aCapIsTheMostTheOpponentsGet() { // the cap as in play; derived
        Rulebook capped = highSchool();
        capped.cap = 27;
        MatchBuilder match;
        match.open(5, capped);
        playTo(match, {27, 26});
        match.add(SetEnded{});
        const Findings tooMany = match.judge(ofSet(Team::Home, 1, 27));
        QCOMPARE(tooMany.size(), std::size_t(1));
        QCOMPARE(tooMany.front().kind, FindingKind::KeepsTooMuch);
        QCOMPARE(tooMany.front().limit, 26);
        QCOMPARE(setScores(match.add(ofSet(Team::Home, 1, 26)).state()), (Scores{{26, 27}}));
        QCOMPARE(setScores(match.undo().add(ofSet(Team::Home, 1, std::nullopt)).state()), (Scores{{26, 27}}));
    }

    void theSetThatIsPlayedGoesOn() {
        MatchBuilder match = played({{25, 20}});
        playTo(match, {3, 2});
        const SetState before = match.state().set();
        for (const char* moment : {"", "s", "h"}) { // dead ball, rally, a later score
            match.play(moment);
            const SetState present = match.state().set();
            const Phase phase = phaseOf(match.state());
            match.add(ofSet(Team::Home, 1, 0));
            QCOMPARE(match.state().set(), present);
            QCOMPARE(phaseOf(match.state()), phase);
            match.undo();
        }
        QCOMPARE(match.state().sets.size(), std::size_t(2));
    }

    void itMayDecideTheMatchInALaterSet() {
        MatchBuilder match = played({{25, 20}, {20, 25}, {20, 25}});
        playTo(match, {5, 8});
        const MatchState before = match.state();
        QVERIFY(match.judge(ofSet(Team::Home, 1, 0)).empty());
        const MatchState state = match.add(ofSet(Team::Home, 1, 0)).state();
        QCOMPARE(phaseOf(state), Phase::MatchWon);
        QCOMPARE(setsWon(state), (PerTeam<int>{0, 3}));
        QCOMPARE(setScores(state), (Scores{{0, 25}, {20, 25}, {20, 25}}));
        QVERIFY(state.set().cancelled && state.set().inVain);
        QVERIFY(!canBeSigned(state, 4));
        QCOMPARE(match.judge(ofSet(Team::Home, 4, 0)).front().kind, FindingKind::SetNotEnded);
        QCOMPARE(without(match.undo().state(), before.last), before);
    }

    void aLaterSetThatWasNotBegunIsNotDue() {
        MatchBuilder match = played({{25, 20}, {20, 25}, {20, 25}});
        QCOMPARE(match.state().sets.size(), std::size_t(4));
        const MatchState state = match.add(ofSet(Team::Home, 1, 0)).state();
        QCOMPARE(state.sets.size(), std::size_t(3));
        QCOMPARE(phaseOf(state), Phase::MatchWon);
        QVERIFY(match.judge(MatchClosed{}).empty());
    }

    void aLaterSetThatHasEndedIsOfNoAccount() {
        MatchBuilder match = played({{25, 20}, {20, 25}, {20, 25}, {25, 18}, {15, 9}});
        const MatchState state = match.add(ofSet(Team::Home, 1, 0)).state();
        QCOMPARE(phaseOf(state), Phase::MatchWon);
        QCOMPARE(setsWon(state), (PerTeam<int>{0, 3}));
        QCOMPARE(setScores(state), (Scores{{0, 25}, {20, 25}, {20, 25}}));
        QVERIFY(state.sets[3].cancelled && state.sets[4].cancelled);
    }

    void itMayTakeBackTheDecision() {
        MatchBuilder match = played({{25, 20}, {25, 20}, {25, 20}});
        QCOMPARE(phaseOf(match.state()), Phase::MatchWon);
        const MatchState before = match.state();
        QVERIFY(match.judge(ofSet(Team::Home, 2, 10)).empty());
        const MatchState state = match.add(ofSet(Team::Home, 2, 10)).state();
        QCOMPARE(phaseOf(state), Phase::BeforeSet);
        QCOMPARE(state.set().number, 4);
        QCOMPARE(state.set().servesFirst, std::optional(Team::Visitors)); // as after any set: FIVB 12.1.2
        QCOMPARE(setsWon(state), (PerTeam<int>{2, 1}));
        QCOMPARE(setScores(state), (Scores{{25, 20}, {10, 25}, {25, 20}}));
        QCOMPARE(without(match.undo().state(), before.last), before);
        match.add(ofSet(Team::Home, 2, 10));
        playTo(match, {25, 3});
        match.add(SetEnded{});
        QCOMPARE(setsWon(match.state()), (PerTeam<int>{3, 1}));
        QCOMPARE(phaseOf(match.state()), Phase::MatchWon);
    }

    void anotherMayFollowAnother() { // with the player on court from the first set on
        MatchBuilder match = played({{25, 20}, {25, 20}, {25, 20}});
        for (const int number : {1, 2, 3}) {
            QVERIFY(match.judge(ofSet(Team::Home, number, 0)).empty());
            match.add(ofSet(Team::Home, number, 0));
        }
        QCOMPARE(phaseOf(match.state()), Phase::MatchWon);
        QCOMPARE(setScores(match.state()), (Scores{{0, 25}, {0, 25}, {0, 25}}));
        QCOMPARE(match.state().sets.size(), std::size_t(3));
    }

    void aDecisionTakenBackAgainLetsPlayGoOn() { // both teams were in the wrong: derived
        MatchBuilder match = played({{25, 20}, {20, 25}, {20, 25}});
        playTo(match, {5, 8});
        match.add(ofSet(Team::Home, 1, 0));
        QCOMPARE(phaseOf(match.state()), Phase::MatchWon);
        const MatchState state = match.add(ofSet(Team::Visitors, 2, 0)).state();
        QCOMPARE(phaseOf(state), Phase::ReadyToServe);
        QCOMPARE(state.set().number, 4);
        QCOMPARE(state.set().teams.home.points, 5);
        QCOMPARE(state.set().teams.visitors.points, 8);
        QVERIFY(!state.set().cancelled && !state.set().inVain);
        QCOMPARE(setsWon(state), (PerTeam<int>{1, 2}));
        QVERIFY(!match.record().sets.back().cancelled);
    }

    void playThatIsSuspendedStaysSo() {
        MatchBuilder match = played({{25, 20}, {20, 25}});
        playTo(match, {5, 8});
        match.add(Suspended{});
        QVERIFY(match.judge(ofSet(Team::Home, 1, 0)).empty());
        QCOMPARE(phaseOf(match.add(ofSet(Team::Home, 1, 0)).state()), Phase::Suspended);
    }

    void aMatchThatIsDecidedIsSuspendedNoMore() {
        MatchBuilder match = played({{25, 20}, {20, 25}}, 3);
        playTo(match, {5, 8});
        match.add(Suspended{}).add(ofSet(Team::Home, 1, 0));
        QCOMPARE(phaseOf(match.state()), Phase::MatchWon);
        QVERIFY(!match.state().suspended);
    }

    void aMatchGivenUpInASetThatDoesNotCountIsNotGivenUp() { // derived
        MatchBuilder match = played({{20, 25}, {25, 20}, {25, 20}});
        playTo(match, {5, 8});
        match.add(Forfeit{Team::Home, ForfeitKind::Incomplete, Scope::Match, {}});
        QCOMPARE(setsWon(match.state()), (PerTeam<int>{2, 3}));
        match.add(ofSet(Team::Visitors, 1, 0));
        QVERIFY(!match.state().forfeit);
        QCOMPARE(setsWon(match.state()), (PerTeam<int>{3, 0}));
        QCOMPARE(phaseOf(match.state()), Phase::MatchWon);
    }

    void aMatchGivenUpStaysSoElse() {
        MatchBuilder match = played({{25, 20}});
        playTo(match, {5, 8});
        match.add(Forfeit{Team::Home, ForfeitKind::Incomplete, Scope::Match, {}}).add(ofSet(Team::Home, 1, 0));
        QCOMPARE(phaseOf(match.state()), Phase::MatchWon);
        QCOMPARE(setsWon(match.state()), (PerTeam<int>{0, 3}));
        QCOMPARE(setScores(match.state()), (Scores{{0, 25}, {5, 25}, {0, 25}}));
    }

    void whatIsNoTargetChangesNothing() {
        MatchBuilder match = played({{25, 20}});
        playTo(match, {5, 8});
        const MatchState before = match.state();
        for (const int number : {2, 3, 5}) {
            const Findings findings = match.judge(ofSet(Team::Home, number, 0));
            QVERIFY(isRefused(findings));
            QCOMPARE(findings.front().kind, FindingKind::SetNotEnded);
            QCOMPARE(findings.front().count, number);
            const MatchState after = apply(before, {EntryNumber(999), {}, ofSet(Team::Home, number, 0), {}, {}});
            QCOMPARE(without(after, before.last), before);
        }
        const Findings tooMany = match.judge(ofSet(Team::Visitors, 1, 21));
        QVERIFY(isRefused(tooMany));
        QCOMPARE(tooMany.front().kind, FindingKind::KeepsTooMuch);
        QCOMPARE(without(apply(before, {EntryNumber(999), {}, ofSet(Team::Visitors, 1, 21), {}, {}}), before.last),
                 before);
        QCOMPARE(tooMany.front().count, 21);
        QCOMPARE(tooMany.front().limit, 20);
    }

    void twoSetsAreLostInEitherOrder() {
        const Scores scores{{25, 20}, {20, 25}, {20, 25}, {25, 20}, {15, 10}};
        const Forfeit first = ofSet(Team::Home, 1, 0);
        const Forfeit second = ofSet(Team::Visitors, 2, 0);
        MatchBuilder match = played(scores);
        match.add(first);
        QCOMPARE(setsWon(match.state()), (PerTeam<int>{0, 3}));
        match.add(second); // sets 4 and 5 count again
        MatchBuilder other = played(scores);
        other.add(second);
        QCOMPARE(setsWon(other.state()), (PerTeam<int>{3, 1}));
        other.add(first);
        QCOMPARE(setScores(match.state()), (Scores{{0, 25}, {25, 0}, {20, 25}, {25, 20}, {15, 10}}));
        QCOMPARE(setScores(other.state()), setScores(match.state()));
        QCOMPARE(setsWon(match.state()), (PerTeam<int>{3, 2}));
        QCOMPARE(phaseOf(match.state()), Phase::MatchWon);
        QCOMPARE(phaseOf(other.state()), Phase::MatchWon);
        QCOMPARE(match.state().sets.size(), scores.size());
    }

    void aSheetThatARemarkHasBegunIsInVainToo() {
        MatchBuilder match = played({{25, 20}, {20, 25}}, 3);
        match.add(Remark{QStringLiteral("the net is low")});
        QCOMPARE(match.record().sets.size(), std::size_t(3));
        match.add(ofSet(Team::Home, 1, 0));
        QVERIFY(match.record().sets.back().inVain && match.record().sets.back().cancelled);
        QCOMPARE(match.record().heading.setsWon, (PerTeam<int>{0, 2}));
    }

    void aMatchThatIsClosedOrGivenWholeIsSettled() {
        MatchBuilder match = played({{25, 20}, {25, 20}}, 3);
        match.add(MatchClosed{});
        QCOMPARE(match.judge(ofSet(Team::Home, 1, 0)).front().kind, FindingKind::MatchIsClosed);
        const MatchState closed = match.state();
        QCOMPARE(without(apply(closed, {EntryNumber(999), {}, ofSet(Team::Home, 1, 0), {}, {}}), closed.last), closed);
        MatchBuilder given = played({{25, 20}});
        given.add(Forfeit{Team::Home, ForfeitKind::Default, Scope::Match, {}});
        QCOMPARE(given.judge(ofSet(Team::Home, 1, 0)).front().kind, FindingKind::MatchAlreadyWon);
    }
};

QTEST_APPLESS_MAIN(TestEarlierSet)
#include "tst_earlierset.moc"
