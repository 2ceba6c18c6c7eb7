// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/matchbuilder.h"

#include <QtTest>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

constexpr Team A = Team::Home;
constexpr Team B = Team::Visitors;

/// The line-ups of the Indiana and Illinois worked set: A receives, front 15c-14-13, back 20-21-22 from left to right;
/// B serves, front 12-3-4, back 11c-10-5.
MatchBuilder indiana() {
    MatchBuilder match;
    match.open(3)
        .toss(B)
        .add(LineUp{A, six({22, 13, 14, 15, 20, 21}), ShirtNumber(15), {}})
        .add(LineUp{B, six({5, 4, 3, 12, 11, 10}), ShirtNumber(11), {}})
        .start();
    return match;
}

QString order(const TeamRecord& team) {
    QStringList numbers;
    for (const SlotRecord& slot : team.slots)
        numbers += QString::number(slot.stood.front().number.value);
    return numbers.join(u' ');
}

QString running(const TeamRecord& team) {
    QStringList words;
    for (const RunningPoint& point : team.running)
        words += QStringLiteral("%1%2")
                     .arg(point.total)
                     .arg(QLatin1String(point.mark == RunningMark::Ring    ? "o"
                                        : point.mark == RunningMark::Slash ? "/"
                                                                           : "^"));
    return words.join(u' ');
}

} // namespace

/// Published worked sets, as far as they are printed. Their notation differs in shape from ours (a box for a point on
/// receive, a hash for a lost serve); what is compared is the order of service, who serves, the score and where it is
/// written.
class TestWorkedSets : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void bothTeamsAreListedInServingOrder() {
        // IHSAA Volleyball Scorekeeping Narrative; IHSA Rally Scoring Sample Game 2002 (grade B).
        const SetRecord set = indiana().set();
        QCOMPARE(order(set.teams.home), QStringLiteral("13 14 15 20 21 22"));
        QCOMPARE(order(set.teams.visitors), QStringLiteral("5 4 3 12 11 10"));
        QCOMPARE(set.teams.home.captain, std::optional(ShirtNumber(15)));
        QCOMPARE(set.teams.visitors.captain, std::optional(ShirtNumber(11)));
    }

    void theIndianaOpening() {
        // IHSAA Volleyball Scorekeeping Narrative, 1-5: B5 scores 1-3, her fourth serve is lost: A1 in row 13, B3-A1;
        // A13 serves out: B4 in the row of B's number 4, B4-A1.
        MatchBuilder match = indiana();
        QCOMPARE(serverOf(match.state().set()), ShirtNumber(5));
        match.play("vvvh");
        QCOMPARE(serverOf(match.state().set()), ShirtNumber(13));
        QCOMPARE(match.set().score, (PerTeam<int>{1, 3}));
        match.play("v");
        const SetRecord set = match.set();
        QCOMPARE(serverOf(match.state().set()), ShirtNumber(4));
        QCOMPARE(set.score, (PerTeam<int>{1, 4}));
        QCOMPARE(inWords(set.teams.visitors), QStringLiteral("I: (1) (2) (3) (R) | II: 4"));
        QCOMPARE(inWords(set.teams.home), QStringLiteral("I: 1 (R)"));
        QCOMPARE(running(set.teams.visitors), QStringLiteral("1o 2o 3o 4/"));
    }

    void theOhioContinuation() {
        // Rally scoring tutorial for official scorers, Ohio HSAA 2004 (grade B), on from B4-A1: B4 serves 5 and 6; A
        // sub #5 for #13, noted Sx5/13 in B's row; B4 serves 7 and 8; a red card on B ends her term, A gets 2; A14
        // serves 3, 4, 5; B time-out, Tx, its box 8-5; B sub #13 for #3, Sx13/3; A14 serves 6, 7, 8; a yellow card
        // gives no point; the next serve is lost: B 9, A 8 (the last score DERIVED from the text).
        MatchBuilder match = indiana();
        match.play("vvvhv").play("vv").substitute(A, 5, 13).play("vv");
        QCOMPARE(match.set().score, (PerTeam<int>{1, 8}));
        match.add(PenaltyPoint{A, QStringLiteral("red card, number 3")});
        QCOMPARE(serverOf(match.state().set()), ShirtNumber(14));
        QCOMPARE(match.set().score, (PerTeam<int>{2, 8}));
        match.play("hhh").add(TimeOut{B}).substitute(B, 13, 3).play("hhhv");
        const SetRecord set = match.set();
        QCOMPARE(set.score, (PerTeam<int>{8, 9}));
        QCOMPARE(inWords(set.teams.visitors),
                 QStringLiteral("I: (1) (2) (3) (R) | II: 4 (5) (6) Sx 5/13 (7) (8) [R] | III: 9"));
        QCOMPARE(inWords(set.teams.home), QStringLiteral("I: 1 (R) | II: P 2 (3) (4) (5) Tx Sx 13/3 (6) (7) (8) (R)"));
        QCOMPARE(set.teams.visitors.timeOuts.front().own, 8);
        QCOMPARE(set.teams.visitors.timeOuts.front().opponents, 5);
        QCOMPARE(serverOf(match.state().set()), ShirtNumber(13)); // she stands in number 3's slot
    }

    void theLiberosServe() {
        // Libero Serving 2013 (grade B): order 2, 5c, 18, 7, 12, 10, libero 21; the libero's serve wins point 8,
        // written in a triangle in her row and in the running score, and a triangle stands at that place of the order.
        // Where points 1 to 7 stand is DERIVED: 1 and 2 on the first server's serve, 3, 4 and 7 on receive, 5 and 6 on
        // serve.
        MatchBuilder match;
        match.open(3)
            .toss(A)
            .add(LineUp{A, six({2, 5, 18, 7, 12, 10}), ShirtNumber(5), {ShirtNumber(21)}})
            .lineUp(B, {31, 32, 33, 34, 35, 36})
            .start();
        match
            .play("hhvh"
                  "vhhh"
                  "vh")
            .add(LiberoServe{A, ShirtNumber(21), LiberoServing::Begins})
            .play("h");
        const SetRecord set = match.set();
        QCOMPARE(set.score.home, 8);
        QCOMPARE(running(set.teams.home), QStringLiteral("1o 2o 3/ 4/ 5o 6o 7/ 8^"));
        QCOMPARE(inWords(set.teams.home),
                 QStringLiteral("I: (1) (2) (R) | II: 3 (R) | III: 4 (5) (6) (R) | IV: 7 <8>"));
        QCOMPARE(set.teams.home.slots[3].libero, std::optional(ShirtNumber(21)));
        QCOMPARE(set.teams.home.slots[3].stood.size(), std::size_t(1)); // number 7's place is kept
    }

    void aServingTeamStartsRightBackAReceivingTeamRightFront() {
        // NCAA Women's Volleyball 2012 and 2013 Rules, explanation of the scorekeeping example (grade A): the serving
        // team's first line is its right back, number 7, the receiving team's its right front, number 2.
        MatchBuilder match;
        match.open().toss(A).lineUp(A, {7, 21, 22, 23, 24, 25}).lineUp(B, {31, 2, 32, 33, 34, 35});
        QCOMPARE(match.set().teams.home.slots[0].stood.front().number, ShirtNumber(7));
        QCOMPARE(match.set().teams.visitors.slots[0].stood.front().number, ShirtNumber(2));
    }
};

QTEST_APPLESS_MAIN(TestWorkedSets)
#include "tst_workedsets.moc"
