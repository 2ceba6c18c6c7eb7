// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/consequences.h"
#include "tests/support/matchbuilder.h"

#include <QtTest>

using namespace setfolio;
using namespace setfolio::testing;

/// Marks as they are written, term by term. Sources: the two-colour circle style of the NCAA Women's scoresheet
/// instructions (grade A) where named, else common practice at a high-school table.
class TestWriteUp : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void marksOfRallies_data() {
        QTest::addColumn<bool>("homeServes");
        QTest::addColumn<QString>("rallies");
        QTest::addColumn<QString>("home");
        QTest::addColumn<QString>("visitors");
        // clang-format off
        QTest::newRow("nothing served yet; common practice")                       << true  << ""      << "I: "              << "";
        QTest::newRow("serve contacted draws an empty ring; NCINS, circle at contact") << true << "s"  << "I: ( )"           << "";
        QTest::newRow("point on own serve fills the ring; common practice")        << true  << "sh"    << "I: (1)"           << "";
        QTest::newRow("a result alone implies the contact; common practice")       << true  << "h"     << "I: (1)"           << "";
        QTest::newRow("rally lost: R, and the next server's row opens un-ringed; common practice") << true << "hv" << "I: (1) (R)" << "I: 1";
        QTest::newRow("two side-outs")                                             << true  << "vh"    << "I: (R) | II: 1"   << "I: 1 (R)";
        QTest::newRow("replay: RS in the ring drawn, then a new ring; common practice") << true << "srsh" << "I: (RS) (1)"   << "";
        QTest::newRow("re-serve likewise, also without the contact")               << true  << "eh"    << "I: (RS) (1)"      << "";
        QTest::newRow("no serve: R in a square; common practice")                  << true  << "hn"    << "I: (1) [R]"       << "I: 1";
        QTest::newRow("visitors serve first")                                      << false << "vh"    << "I: 1"             << "I: (1) (R)";
        // clang-format on
    }
    void marksOfRallies() {
        QFETCH(bool, homeServes);
        QFETCH(QString, rallies);
        MatchBuilder match;
        match.started(homeServes ? Team::Home : Team::Visitors).play(rallies.toLatin1().constData());
        const SetRecord set = match.set();
        QTEST(inWords(set.teams.home), "home");
        QTEST(inWords(set.teams.visitors), "visitors");
    }

    void aSubstitutionIsWrittenInTheServedTermAndCounted() {
        MatchBuilder match;
        match.started().play("h").substitute(Team::Home, 7, 2).substitute(Team::Visitors, 17, 12).play("h");
        const SetRecord set = match.set();
        QCOMPARE(inWords(set.teams.home), QStringLiteral("I: (1) S 7/2 Sx 17/12 (2)"));
        QCOMPARE(set.teams.home.substitutions.size(), std::size_t(1));
        QCOMPARE(set.teams.visitors.substitutions.size(), std::size_t(1));
        QCOMPARE(set.teams.home.slots[1].stood.size(), std::size_t(2));
        QCOMPARE(set.teams.home.slots[1].stood.back().number, ShirtNumber(7));
        // The receiving team's slot I holds its position 2, so 12 stands there.
        QCOMPARE(set.teams.visitors.slots[0].stood.front().number, ShirtNumber(12));
    }

    void aTimeOutIsTorTxWithTheScoreOfTheTeamThatAsked() {
        MatchBuilder match;
        match.started().play("hhv").add(TimeOut{Team::Home}).add(TimeOut{Team::Visitors});
        const SetRecord set = match.set();
        QCOMPARE(inWords(set.teams.visitors), QStringLiteral("I: 1 Tx T"));
        QCOMPARE(set.teams.home.timeOuts.front().own, 2);
        QCOMPARE(set.teams.home.timeOuts.front().opponents, 1);
        QCOMPARE(set.teams.visitors.timeOuts.front().own, 1);
    }

    void aLiberosServeIsATriangleToTheEndOfTheTerm() {
        MatchBuilder match;
        match.started().play("h").add(LiberoServe{Team::Home, ShirtNumber(9), LiberoServing::Begins}).play("hv");
        const SetRecord set = match.set();
        QCOMPARE(inWords(set.teams.home), QStringLiteral("I: (1) <2> <R>"));
        QCOMPARE(set.teams.home.slots[0].libero, std::optional(ShirtNumber(9)));
        QCOMPARE(set.teams.home.running[1].mark, RunningMark::Triangle);
        QCOMPARE(set.teams.home.slots[0].stood.size(), std::size_t(1)); // she strikes no number
    }

    void aLiberosServeSaidAfterTheContactTurnsTheRingIntoATriangle() {
        MatchBuilder match;
        match.started().play("s").add(LiberoServe{Team::Home, ShirtNumber(9), LiberoServing::Begins});
        QCOMPARE(inWords(match.set().teams.home), QStringLiteral("I: < >"));
        match.play("h");
        QCOMPARE(inWords(match.set().teams.home), QStringLiteral("I: <1>"));
    }

    void aPenaltyPointIsPAndASquareOrOpensTheNextTerm() {
        MatchBuilder own;
        own.started().play("h").add(PenaltyPoint{Team::Home, {}});
        QCOMPARE(inWords(own.set().teams.home), QStringLiteral("I: (1) P [2]"));
        QCOMPARE(own.set().teams.home.running[1].mark, RunningMark::Ring);
        QVERIFY(own.set().teams.home.running[1].penalty);
        MatchBuilder other;
        other.started().play("h").add(PenaltyPoint{Team::Visitors, {}});
        QCOMPARE(inWords(other.set().teams.home), QStringLiteral("I: (1) [R]"));
        QCOMPARE(inWords(other.set().teams.visitors), QStringLiteral("I: P 1"));
        QCOMPARE(other.set().teams.visitors.running[0].mark, RunningMark::Slash);
        QCOMPARE(other.set().notes.size(), std::size_t(1));
    }

    void anUndoneResultStaysStruckWithANote() {
        MatchBuilder match;
        match.started().play("hsh").undo().play("v");
        const SetRecord set = match.set();
        QCOMPARE(inWords(set.teams.home), QStringLiteral("I: (1) ~(2)~#1 (R)"));
        QCOMPARE(inWords(set.teams.visitors), QStringLiteral("I: 1"));
        QCOMPARE(set.teams.home.running.size(), std::size_t(1));
        QCOMPARE(set.notes.size(), std::size_t(1));
        QVERIFY(std::holds_alternative<StruckNote>(set.notes[0].content));
    }

    void anUndoneContactAndResultAreOneStruckMarkWithOneNote() {
        MatchBuilder match;
        match.started().play("sh").undo().undo().play("sh");
        QCOMPARE(inWords(match.set().teams.home), QStringLiteral("I: ~(1)~#1 (1)"));
        QCOMPARE(match.set().notes.size(), std::size_t(1));
    }

    void anUndoneSideOutStrikesBothItsMarks() {
        MatchBuilder match;
        match.started().play("hv").undo().play("hv");
        QCOMPARE(inWords(match.set().teams.home), QStringLiteral("I: (1) ~(R)~#1 (2) (R)"));
        QCOMPARE(inWords(match.set().teams.visitors), QStringLiteral("I: ~1~#1 1"));
    }

    void redoLeavesTheSheetAsItWas() {
        MatchBuilder match;
        match.started().play("hv");
        const SetRecord before = match.set();
        match.undo();
        match.add(Strike{newestUndone(match.entries()).value(), {}});
        QCOMPARE(match.set(), before);
    }

    // FIVB Official Volleyball Rules 2025-2028, 16.2.4 and 21.5: what is given between sets counts in the next one.
    void whatIsGivenBetweenSetsStandsOnTheNextSheet_data() {
        QTest::addColumn<bool>("ended");
        QTest::newRow("after the last point, before the set is ended") << false;
        QTest::newRow("after the end of the set") << true;
    }
    void whatIsGivenBetweenSetsStandsOnTheNextSheet() {
        QFETCH(bool, ended);
        MatchBuilder match;
        match.started().play("hhhhhhhhhhhhhhhhhhhhhhhhh");
        if (ended)
            match.add(SetEnded{});
        match.add(DelaySanction{Team::Home, DelayLevel::Penalty, QStringLiteral("late line-up")});
        match.add(PenaltyPoint{Team::Visitors, QStringLiteral("roster")});
        const MatchRecord between = match.record();
        QCOMPARE(between.sets.size(), std::size_t(2));
        QVERIFY(between.sets[0].sanctions.empty() && between.sets[0].notes.empty());
        QCOMPARE(between.sets[1].number, 2);
        QVERIFY(!between.sets[1].started);
        QCOMPARE(between.sets[1].notes.size(), std::size_t(1));
        QCOMPARE(between.sets[1].sanctions.size(), std::size_t(1));
        QCOMPARE(between.sets[1].sanctions.front().set, 2);
        QCOMPARE(between.sets[1].sanctions.front().score, PerTeam<int>());
        if (!ended)
            match.add(SetEnded{});
        match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
        QCOMPARE(match.set().score, (PerTeam<int>{0, 2}));
        QCOMPARE(match.set().sanctions.size(), std::size_t(1));
        QCOMPARE(match.set().notes.size(), std::size_t(1));
    }

    void aCardOnceTheScoreHasDecidedTheSetIsOfTheNext() {
        MatchBuilder match;
        match.started().play("hhhhhhhhhhhhhhhhhhhhhhhhh");
        const Entry card = Sanction{Team::Visitors, BenchRole::Coach, SanctionLevel::Warning, {}};
        QCOMPARE(setOfEntry(match.state(), card), 2);
        QCOMPARE(setOfEntry(match.state(), Remark{}), 1);
        match.add(Suspended{});
        QCOMPARE(setOfEntry(match.state(), card), 2);
    }

    /// Source: FIVB Official Volleyball Rules 2025-2028, 17.3, 17.2: the rally is played again.
    void aRallyBrokenOffIsWrittenAsOneThatIsPlayedAgain() {
        MatchBuilder match;
        match.started().play("hs").add(Suspended{}).add(Resumed{}).play("h");
        QCOMPARE(inWords(match.set().teams.home), QStringLiteral("I: (1) (RS) (2)"));
        MatchBuilder between;
        between.started().play("h").add(Suspended{}).add(Resumed{}).play("h");
        QCOMPARE(inWords(between.set().teams.home), QStringLiteral("I: (1) (2)"));
    }

    /// Source: GEVA Region (USAV) scorekeeper clinic 2010: the team's total when its server loses the serve.
    void anExitScoreIsThatAfterPointsAreTakenBack() {
        MatchBuilder match;
        match.open(3, publishedRulebook(QStringLiteral("club")).value()).toss(Team::Home);
        match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
        match.play("hhh");
        const std::vector<Point> points = match.state().set().points;
        match.add(IllegalPlayer{Team::Home, ShirtNumber(7), {}, points[1].entry});
        const std::vector<Mark> marks = match.set().teams.home.terms.front().marks;
        QCOMPARE(std::get<ExitScore>(marks.back().content).total, 1);
    }

    /// Sources: GEVA Region (USAV) scorekeeper clinic 2010 (exit scores are the team's total); common practice (what
    /// was written for a wrong server is struck with an X).
    void aWrongServerFoundAfterTheRallyCrossesItAndTheExitScore() {
        MatchBuilder match;
        match.open(3, publishedRulebook(QStringLiteral("club")).value()).toss(Team::Home);
        match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
        match.play("hhv");
        match.add(WrongServer{Team::Home, ShirtNumber(3), match.state().set().points.front().entry});
        const std::vector<Mark> marks = match.set().teams.home.terms.front().marks;
        const auto standing = [&](auto content) {
            return std::ranges::count_if(marks, [&](const Mark& mark) {
                return !mark.takenBack && std::holds_alternative<decltype(content)>(mark.content);
            });
        };
        QCOMPARE(standing(ServedPoint{}), 0);
        QCOMPARE(standing(RallyLost{}), 1);
        QCOMPARE(standing(ExitScore{}), 1);
        for (const Mark& mark : marks)
            if (const auto* exit = std::get_if<ExitScore>(&mark.content))
                QCOMPARE(exit->total, mark.takenBack ? 2 : 0);
        QCOMPARE(match.set().teams.visitors.running.front().opponents, 2); // the rally was lost at 2-0
    }

    void aSetThatIsWonNoMoreHasOneExitScore() {
        MatchBuilder match;
        match.open(3, publishedRulebook(QStringLiteral("international")).value()).toss(Team::Home);
        match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
        match.play(QByteArray(25, 'h').constData());
        match.add(WrongServer{Team::Home, ShirtNumber(3), match.state().set().points[20].entry});
        const std::vector<Mark> marks = match.set().teams.home.terms.front().marks;
        const auto standing = std::ranges::count_if(
            marks, [](const Mark& mark) { return !mark.takenBack && std::holds_alternative<ExitScore>(mark.content); });
        QCOMPARE(standing, 1);
        QCOMPARE(std::get<ExitScore>(marks.back().content).total, 20);
    }

    void theRulingsPointComesAfterThoseItTakesBack() {
        MatchBuilder match;
        match.started().play("hhs");
        match.add(IllegalPlayer{Team::Home, ShirtNumber(7), {}, match.state().set().points.front().entry});
        QCOMPARE(match.set().teams.visitors.running.front().opponents, 0);
        const auto* note = std::get_if<EventNote>(&match.set().notes.back().content);
        QVERIFY(note);
        QCOMPARE(note->takenBack, 2);
        QCOMPARE(note->score, (PerTeam<int>{0, 1}));
    }

    void aRemarkBetweenSetsBeginsTheNextSheet() {
        MatchBuilder match;
        match.started().play("hhhhhhhhhhhhhhhhhhhhhhhhh").add(SetEnded{}).add(Toss{Team::Visitors, Team::Visitors});
        QCOMPARE(match.record().sets.size(), std::size_t(1));
        match.add(Remark{QStringLiteral("Net was low")});
        QCOMPARE(match.set().number, 2);
        QCOMPARE(match.set().notes.size(), std::size_t(1));
        match.undo();
        QVERIFY(match.set().notes.front().struck);
    }

    void whatIsGivenAfterTheLastPointOfTheMatchStandsOnTheLastSheet() {
        MatchBuilder match;
        match.open(1).toss(Team::Home);
        match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
        while (!match.state().set().winner)
            match.play("h");
        match.add(Sanction{Team::Visitors, BenchRole::Coach, SanctionLevel::Penalty, {}});
        QCOMPARE(match.record().sets.size(), std::size_t(1));
        QCOMPARE(match.set().sanctions.front().set, 1);
        QCOMPARE(match.state().sanctions.front().set, 1);
    }

    void roundsTakeThreeInksInTurn() {
        QCOMPARE(inkOfRound(1, 3), Ink::First);
        QCOMPARE(inkOfRound(2, 3), Ink::Second);
        QCOMPARE(inkOfRound(3, 3), Ink::Third);
        QCOMPARE(inkOfRound(4, 3), Ink::First);
        MatchBuilder match;
        match.started().play("vhvhvhvhvhvhv"); // seven terms of home's opponents end
        const SetRecord set = match.set();
        QCOMPARE(set.teams.home.terms[5].round, 1);
        QCOMPARE(set.teams.home.terms[6].round, 2);
        QCOMPARE(set.teams.visitors.terms[6].round, 2);
        // The point that opens a new round has the new round's ink (section 12 of the trade: common practice).
        QCOMPARE(set.teams.visitors.running.back().round, 2);
    }

    void floorOrderCrossesTheReceivingTeamsFirstCell() {
        Rulebook rulebook = highSchool();
        rulebook.writtenOrder = WrittenOrder::Floor;
        MatchBuilder match;
        match.open(5, rulebook)
            .toss(Team::Home)
            .lineUp(Team::Home, {1, 2, 3, 4, 5, 6})
            .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16})
            .start()
            .play("v");
        const TeamRecord visitors = match.set().teams.visitors;
        QVERIFY(visitors.terms[0].crossed);
        QCOMPARE(visitors.terms[1].slot, Slot(2));
        QCOMPARE(visitors.terms[1].round, 1);
        QCOMPARE(visitors.slots[0].stood.front().number, ShirtNumber(11));
        QCOMPARE(serverOf(match.state().set()), ShirtNumber(12));
    }

    // FIVB Official Volleyball Rules 2025-2028, 7.3.5.4: points and sets gained while a player was not registered.
    void aSetLostAfterwardsShowsItOnItsOwnSheet() {
        MatchBuilder match;
        match.started().play("hhvhhhhhhhhhhhhhhhhhhhhhhhhh").add(SetEnded{});
        match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start().play("v");
        const SetRecord second = match.set();
        match.add(Forfeit{Team::Home, ForfeitKind::Incomplete, Scope::Set, QStringLiteral("not registered"),
                          EarlierSet{1, 3}});
        const MatchRecord record = match.record();
        const SetRecord& lost = record.sets.front();
        QCOMPARE(lost.score, (PerTeam<int>{3, 25}));
        QCOMPARE(lost.result->winner, Team::Visitors);
        QVERIFY(lost.result->confirmed);
        QVERIFY(inWords(lost.teams.home).startsWith(u"I: (1) (2) (R) | II: 3 x(4)x#1 x(5)x#1"));
        QCOMPARE(std::ranges::count(lost.teams.home.running, true, &RunningPoint::takenBack), 22);
        QVERIFY(!lost.teams.home.running[2].takenBack && lost.teams.home.running[3].takenBack);
        QCOMPARE(inWords(lost.teams.visitors), QStringLiteral("I: 1 (R)"));
        const std::vector<RunningPoint>& given = lost.teams.visitors.running;
        QCOMPARE(given.size(), std::size_t(25));
        QVERIFY(std::all_of(given.begin() + 1, given.end(),
                            [](const RunningPoint& point) { return point.mark == RunningMark::Square; }));
        QCOMPARE(given.back().total, 25);
        QCOMPARE(given.back().opponents, 3);
        QCOMPARE(lost.notes.size(), std::size_t(1));
        QCOMPARE(std::get<EventNote>(lost.notes.front().content).score, (PerTeam<int>{25, 1}));
        QCOMPARE(record.sets.back(), second);
        QCOMPARE(record.heading.setsWon, (PerTeam<int>{0, 1}));
        QCOMPARE(setOfEntry(match.state(), match.entries().back().entry), 1);
        const SetRecord struck = match.undo().record().sets.front();
        QCOMPARE(struck.score, (PerTeam<int>{25, 1}));
        QCOMPARE(std::ranges::count(struck.teams.home.running, true, &RunningPoint::takenBack), 0);
        QVERIFY(std::holds_alternative<StruckNote>(struck.notes.front().content));
    }

    void aSetBegunInVainSaysSo() {
        MatchBuilder match;
        match.open(3).toss(Team::Home);
        for (const Team winner : {Team::Home, Team::Visitors}) {
            match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
            match.play(QByteArray(25, winner == Team::Home ? 'h' : 'v').constData()).add(SetEnded{});
        }
        match.toss(Team::Home).lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16});
        match.start().play("hhvs");
        match.add(Forfeit{Team::Home, ForfeitKind::Incomplete, Scope::Set, {}, EarlierSet{1, 0}});
        const MatchRecord record = match.record();
        QVERIFY(record.sets.back().cancelled && record.sets.back().inVain);
        QVERIFY(!record.sets.back().live && !record.sets.front().cancelled);
        QCOMPARE(record.sets.back().score, (PerTeam<int>{2, 1}));
        QCOMPARE(record.heading.setScores, (std::vector<PerTeam<int>>{{0, 25}, {0, 25}}));
    }

    void writingOnEqualsWritingAnew() {
        MatchBuilder match;
        match.started().play("shvvhrhvn").add(TimeOut{Team::Home}).substitute(Team::Home, 8, 3).play("hhvhv");
        match.play("hhhhhhhhhhhhhhhhhhhhhhhhhhhhh").add(SetEnded{});
        match.add(Forfeit{Team::Home, ForfeitKind::Incomplete, Scope::Set, {}, EarlierSet{1, 4}});
        RecordWriter writer;
        for (const Recorded& recorded : match.entries()) {
            writer.take({&recorded, nullptr});
            const auto read = std::span(match.entries()).first(recorded.number.value);
            QCOMPARE(writer.record(), writeUp(read));
        }
    }
};

QTEST_APPLESS_MAIN(TestWriteUp)
#include "tst_writeup.moc"
