// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/matchbuilder.h"

#include <QtTest>

using namespace setfolio;
using namespace setfolio::testing;

Q_DECLARE_METATYPE(setfolio::Entry)
Q_DECLARE_METATYPE(setfolio::Gravity)

namespace {

constexpr Team H = Team::Home;
constexpr Team V = Team::Visitors;
using K = FindingKind;

ShirtNumber n(int number) {
    return ShirtNumber(number);
}

LineUp slip(Team team, std::initializer_list<int> numbers, std::optional<ShirtNumber> captain = std::nullopt,
            std::vector<ShirtNumber> liberos = {}) {
    return {team, six(numbers), captain, std::move(liberos)};
}

Roster roster(Team team, std::initializer_list<int> numbers) {
    Roster roster{team, {}, {}};
    for (const int number : numbers)
        roster.players.push_back({n(number), {}, false, false});
    return roster;
}

/// A match with home's roster 1 to 10, its line-up 1 to 6 with libero 9, and a set in play; home serves.
MatchBuilder withRoster() {
    MatchBuilder match;
    match.open()
        .add(roster(H, {1, 2, 3, 4, 5, 6, 7, 8, 9, 10}))
        .toss(H)
        .lineUp(H, {1, 2, 3, 4, 5, 6}, {n(9)})
        .lineUp(V, {11, 12, 13, 14, 15, 16}, {n(19)})
        .start();
    return match;
}

MatchBuilder substitutions(int count) {
    MatchBuilder match = withRoster();
    for (int i = 0; i < count; ++i)
        match.substitute(H, i % 2 ? 1 : 7, i % 2 ? 7 : 1);
    return match;
}

} // namespace

class TestJudge : public QObject {
    Q_OBJECT

    /// One finding of that kind, or none when `kind` is empty.
    static void expect(const Findings& findings, std::optional<FindingKind> kind, Gravity gravity = Gravity::Unlawful) {
        QCOMPARE(findings.size(), std::size_t(kind ? 1 : 0));
        if (!kind)
            return;
        QCOMPARE(findings[0].kind, *kind);
        QCOMPARE(findings[0].gravity, gravity);
    }

private Q_SLOTS:
    void lineUps_data() {
        QTest::addColumn<Entry>("entry");
        QTest::addColumn<int>("kind"); // -1: lawful
        // Sources: NFHS Points of Emphasis 2025-26 and Referee magazine, Triple check accuracy: six different numbers,
        // all on the roster; NFHS Rules Interpretations 2016-17, 7-1-4: not both starter and libero; NFHS Comments on
        // the Rules 2026-27, 6-4-2: none, one or two liberos.
        // clang-format off
        QTest::newRow("six of the roster")                     << Entry(slip(H, {1, 2, 3, 4, 5, 6}))                     << -1;
        QTest::newRow("one number twice")                      << Entry(slip(H, {1, 2, 3, 4, 5, 5}))                     << int(K::DoubledInLineUp);
        QTest::newRow("a number that is not on the roster")    << Entry(slip(H, {1, 2, 3, 4, 5, 12}))                    << int(K::StrangerInLineUp);
        QTest::newRow("a libero among the six")                << Entry(slip(H, {1, 2, 3, 4, 5, 9}, {}, {n(9)}))         << int(K::LiberoInLineUp);
        QTest::newRow("two liberos")                           << Entry(slip(H, {1, 2, 3, 4, 5, 6}, {}, {n(9), n(10)}))  << -1;
        QTest::newRow("three liberos")                         << Entry(slip(H, {1, 2, 3, 4, 5, 6}, {}, {n(8), n(9), n(10)})) << int(K::TooManyLiberos);
        QTest::newRow("the same libero twice")                 << Entry(slip(H, {1, 2, 3, 4, 5, 6}, {}, {n(9), n(9)}))   << int(K::DoubledInLineUp);
        QTest::newRow("a libero not on the roster")            << Entry(slip(H, {1, 2, 3, 4, 5, 6}, {}, {n(20)}))        << int(K::LiberoNotOnRoster);
        QTest::newRow("a captain not of the team")             << Entry(slip(H, {1, 2, 3, 4, 5, 6}, n(20)))              << int(K::CaptainNotInTeam);
        QTest::newRow("a captain on the bench")                << Entry(slip(H, {1, 2, 3, 4, 5, 6}, n(7)))               << -1;
        QTest::newRow("a team without a roster is not held to one") << Entry(slip(V, {1, 2, 30, 40, 50, 66}, n(2)))      << -1;
        QTest::newRow("a number over 99 is no number")         << Entry(slip(V, {1, 2, 3, 4, 5, 100}))                   << int(K::NumberImpossible);
        // clang-format on
    }
    void lineUps() {
        QFETCH(Entry, entry);
        QFETCH(int, kind);
        MatchBuilder match;
        match.open().add(roster(H, {1, 2, 3, 4, 5, 6, 7, 8, 9, 10}));
        const auto gravity = kind == int(K::NumberImpossible) ? Gravity::Refused : Gravity::Unlawful;
        expect(match.judge(entry), kind < 0 ? std::nullopt : std::optional(K(kind)), gravity);
    }

    void rosterNumbersStandOnce() {
        MatchBuilder match;
        match.open();
        expect(match.judge(roster(H, {1, 2, 2})), K::DoubledInRoster); // Referee magazine, Triple check accuracy
        expect(match.judge(roster(H, {0, 99})), std::nullopt);
    }

    void substitutions_data() {
        QTest::addColumn<Entry>("entry");
        QTest::addColumn<int>("kind");
        // State: 7 has come in for 1 (slot I), 8 for 2 (slot II). Source: Scoring & Libero Tracking, EOA Volleyball
        // Officials Clinic (citing NFHS Rule 5-6): wrong position, not on the roster, the limit of 18.
        // clang-format off
        QTest::newRow("a fresh player for anyone")              << Entry(Substitution{H, n(10), n(3)}) << -1;
        QTest::newRow("the starter back into her slot")         << Entry(Substitution{H, n(1), n(7)})  << -1;
        QTest::newRow("the starter into another slot")          << Entry(Substitution{H, n(1), n(8)})  << int(K::WrongSlot);
        QTest::newRow("a substitute into another slot than hers") << Entry(Substitution{H, n(2), n(7)}) << int(K::WrongSlot);
        QTest::newRow("a player who is on court")               << Entry(Substitution{H, n(4), n(3)})  << int(K::SubstituteOnCourt);
        QTest::newRow("a player who is not on the roster")      << Entry(Substitution{H, n(33), n(3)}) << int(K::SubstituteNotOnRoster);
        QTest::newRow("the libero as a substitute")             << Entry(Substitution{H, n(9), n(3)})  << int(K::SubstituteIsLibero);
        QTest::newRow("out who is not on court")                << Entry(Substitution{H, n(10), n(1)}) << int(K::NotOnCourt);
        QTest::newRow("out who never was")                      << Entry(Substitution{H, n(10), n(55)})<< int(K::NotOnCourt);
        // clang-format on
    }
    void substitutions() {
        QFETCH(Entry, entry);
        QFETCH(int, kind);
        MatchBuilder match = withRoster();
        match.substitute(H, 7, 1).substitute(H, 8, 2);
        const auto gravity = kind == int(K::NotOnCourt) ? Gravity::Refused : Gravity::Unlawful;
        expect(match.judge(entry), kind < 0 ? std::nullopt : std::optional(K(kind)), gravity);
    }

    void theEighteenthSubstitutionIsLawfulTheNineteenthIsNot() {
        // Scoring & Libero Tracking, EOA Volleyball Officials Clinic: 18 a set; the second referee is told at 15, 16,
        // 17, 18.
        expect(::substitutions(17).judge(Substitution{H, n(1), n(7)}), std::nullopt);
        const Findings findings = ::substitutions(18).judge(Substitution{H, n(7), n(1)});
        expect(findings, K::SubstitutionLimit);
        QCOMPARE(findings[0].count, 19);
        QCOMPARE(findings[0].limit, 18);
        QCOMPARE(findings[0].setting, QStringLiteral("substitution-limit"));
    }

    void aSubstitutionMayComeBeforeTheSetStarts() {
        // NFHS release of January 2010.
        MatchBuilder match;
        match.open().toss(H).lineUp(H, {1, 2, 3, 4, 5, 6});
        expect(match.judge(Substitution{H, n(7), n(1)}), std::nullopt);
        expect(match.judge(Substitution{V, n(7), n(1)}), K::LineUpMissing, Gravity::Refused);
    }

    void twoTimeOutsASet() {
        // NFHS 2003 rule changes: two a set. NFHS Rules Interpretations 2016-17, 11-2: a third is an unnecessary delay.
        MatchBuilder match;
        match.started().add(TimeOut{H});
        expect(match.judge(TimeOut{H}), std::nullopt);
        match.add(TimeOut{H});
        expect(match.judge(TimeOut{H}), K::TimeOutLimit);
        expect(match.judge(TimeOut{V}), std::nullopt);
    }

    void theLiberoServesInOneSlotOnly() {
        // Libero Serving 2013; Iowa Girls HSAU Libero Tracking Instructions: one position in the serving order a set.
        MatchBuilder match;
        const LiberoServe serve{H, n(9), LiberoServing::Begins};
        match.started().add(serve).play("hv");
        expect(match.judge(LiberoServe{H, n(9), LiberoServing::Begins}), K::NotServing, Gravity::Refused);
        match.play("h"); // slot II serves
        const Findings second = match.judge(serve);
        expect(second, K::LiberoSecondSlot);
        QCOMPARE(second[0].slot, std::optional(Slot(1)));
        QCOMPARE(second[0].other, std::optional(Slot(2)));
        match.play("vhvhvhvhvh"); // round to slot I again
        expect(match.judge(serve), std::nullopt);
        expect(match.judge(LiberoServe{H, n(5), LiberoServing::Begins}), K::ServerIsNotLibero);
    }

    void aLiberoWhoMayNotServe() {
        // FIVB Official Volleyball Rules 2025-2028, 19.3.1.3, as a setting.
        Rulebook rulebook = highSchool();
        rulebook.liberoServe = LiberoServeRule::Never;
        MatchBuilder match;
        match.open(5, rulebook).toss(H).lineUp(H, {1, 2, 3, 4, 5, 6}, {n(9)}).lineUp(V, {1, 2, 3, 4, 5, 6}).start();
        expect(match.judge(LiberoServe{H, n(9), LiberoServing::Begins}), K::LiberoMayNotServe);
    }

    void oneReServeATerm() {
        // GTCCVO, Ask the interpreter (NFHS 8-2-5): once a term of service.
        MatchBuilder match;
        match.started();
        expect(match.judge(Replay{Again::ReServe}), std::nullopt);
        match.play("e");
        expect(match.judge(Replay{Again::ReServe}), K::ReServeLimit);
        expect(match.judge(Replay{Again::Replay}), std::nullopt);
        match.play("v");
        expect(match.judge(Replay{Again::ReServe}), std::nullopt);
    }

    void whatHasNoMeaningHereIsRefused_data() {
        QTest::addColumn<QByteArray>(
            "moment"); // before: open, ready: the set started, rally: serve contacted, won: 25-0
        QTest::addColumn<Entry>("entry");
        QTest::addColumn<int>("kind");
        // Sense, not a rule: no source.
        // clang-format off
        QTest::newRow("a rally before the set")          << QByteArray("before") << Entry(RallyWon{H})        << int(K::SetNotStarted);
        QTest::newRow("a time-out before the set")       << QByteArray("before") << Entry(TimeOut{H})         << int(K::SetNotStarted);
        QTest::newRow("an end before the set")           << QByteArray("before") << Entry(SetEnded{})         << int(K::SetNotWon);
        QTest::newRow("a second opening")                << QByteArray("before") << Entry(MatchOpened{})      << int(K::MatchAlreadyOpened);
        QTest::newRow("closing before it is won")        << QByteArray("before") << Entry(MatchClosed{})      << int(K::MatchNotWon);
        QTest::newRow("a toss in the set")               << QByteArray("ready")  << Entry(Toss{})             << int(K::SetAlreadyStarted);
        QTest::newRow("a line-up in the set")            << QByteArray("ready")  << Entry(slip(H, {1, 2, 3, 4, 5, 6})) << int(K::SetAlreadyStarted);
        QTest::newRow("a start in the set")              << QByteArray("ready")  << Entry(SetStarted{})       << int(K::SetAlreadyStarted);
        QTest::newRow("an end at 0-0")                   << QByteArray("ready")  << Entry(SetEnded{})         << int(K::SetNotWon);
        QTest::newRow("the end of no libero's serve")    << QByteArray("ready")  << Entry(LiberoServe{H, n(9), LiberoServing::Ends}) << int(K::LiberoNotServing);
        QTest::newRow("two contacts")                    << QByteArray("rally")  << Entry(ServeContacted{})   << int(K::ServeAlreadyContacted);
        QTest::newRow("no serve after a contact")        << QByteArray("rally")  << Entry(NoServe{})          << int(K::ServeAlreadyContacted);
        QTest::newRow("a time-out in the rally")         << QByteArray("rally")  << Entry(TimeOut{H})         << int(K::RallyUndecided);
        QTest::newRow("a substitution in the rally")     << QByteArray("rally")  << Entry(Substitution{H, n(7), n(1)}) << int(K::RallyUndecided);
        QTest::newRow("a penalty point in the rally")    << QByteArray("rally")  << Entry(PenaltyPoint{H, {}})<< int(K::RallyUndecided);
        QTest::newRow("a penalty in the rally")          << QByteArray("rally")  << Entry(Sanction{H, n(1), SanctionLevel::Penalty, {}}) << int(K::RallyUndecided);
        QTest::newRow("a delay penalty in the rally")    << QByteArray("rally")  << Entry(DelaySanction{H, DelayLevel::Penalty, {}}) << int(K::RallyUndecided);
        QTest::newRow("a line-up once the set is won")   << QByteArray("won")    << Entry(slip(H, {1, 2, 3, 4, 5, 6})) << int(K::SetAlreadyWon);
        QTest::newRow("a rally after the set is won")    << QByteArray("won")    << Entry(RallyWon{H})        << int(K::SetAlreadyWon);
        QTest::newRow("a time-out after the set is won") << QByteArray("won")    << Entry(TimeOut{H})         << int(K::SetAlreadyWon);
        // clang-format on
    }
    void whatHasNoMeaningHereIsRefused() {
        QFETCH(QByteArray, moment);
        QFETCH(Entry, entry);
        QFETCH(int, kind);
        MatchBuilder match;
        if (moment == "before")
            match.open();
        else
            match.started();
        if (moment == "rally")
            match.play("s");
        if (moment == "won")
            match.play(QByteArray(25, 'h').constData());
        const Findings findings = match.judge(entry);
        QVERIFY(!findings.empty());
        QCOMPARE(int(findings[0].kind), kind);
        QVERIFY(isRefused(findings));
    }

    void whatIsChangedUponALineUpIsNotUndoneByAnother_data() {
        QTest::addColumn<Entry>("change");
        // Sense: the six who stand there would be put back.
        QTest::newRow("a substitution") << Entry(Substitution{H, n(7), n(1)});
        QTest::newRow("a libero") << Entry(LiberoIn{H, n(9), n(6)});
        QTest::newRow("a vacant place") << Entry(PlaceVacated{H, n(4), {}});
        QTest::newRow("a captain") << Entry(CaptainNamed{H, n(4)});
        QTest::newRow("another libero") << Entry(LiberoRedesignated{H, n(9), n(10), {}});
    }
    void whatIsChangedUponALineUpIsNotUndoneByAnother() {
        QFETCH(Entry, change);
        MatchBuilder match;
        match.open().toss(H).lineUp(H, {1, 2, 3, 4, 5, 6}, {n(9)}).lineUp(V, {11, 12, 13, 14, 15, 16});
        expect(match.judge(slip(H, {1, 2, 3, 4, 5, 6})), std::nullopt);
        const EntryNumber lineUp(match.last().value - 1);
        match.add(change);
        expect(match.judge(slip(H, {1, 2, 3, 4, 5, 6})), K::ChangedSinceLineUp, Gravity::Refused);
        if (!std::holds_alternative<CaptainNamed>(change))
            expect(match.judge(Toss{V, V}), K::ChangedSinceLineUp, Gravity::Refused);
        expect(match.judge(slip(V, {11, 12, 13, 14, 15, 16})), std::nullopt);
        const Placed inItsPlace{Placed::How::InsteadOf, lineUp, {}};
        QVERIFY(judgeNext(match.entries(), match.state(), slip(H, {1, 2, 3, 4, 6, 5}), inItsPlace).empty());
    }

    void aSetStartsWithATossAndTwoLineUps() {
        MatchBuilder match;
        match.open();
        QCOMPARE(match.judge(SetStarted{}).size(), std::size_t(3));
        match.toss(H).lineUp(H, {1, 2, 3, 4, 5, 6});
        const Findings findings = match.judge(SetStarted{});
        expect(findings, K::LineUpMissing, Gravity::Refused);
        QCOMPARE(findings[0].team, std::optional(V));
    }

    void theFirstEntryOpensTheMatchWithAnOddNumberOfSets() {
        const MatchState nothing;
        expect(judge(nothing, Toss{}), K::MatchNotOpened, Gravity::Refused);
        MatchOpened opened;
        opened.rulebook = highSchool();
        expect(judge(nothing, opened), std::nullopt);
        opened.bestOf = 4;
        expect(judge(nothing, opened), K::BestOfImpossible, Gravity::Refused);
        opened.bestOf = 1;
        expect(judge(nothing, opened), K::BestOfImpossible); // NFHS 2003 rule changes: three or five
    }

    void aStrikeNeedsAStandingEntry() {
        MatchBuilder match;
        match.started().play("h");
        const EntryNumber point = match.last();
        QVERIFY(judgeStrike(match.entries(), {point, {}}).empty());
        QCOMPARE(judgeStrike(match.entries(), {EntryNumber(99), {}})[0].kind, K::NoSuchEntry);
        QCOMPARE(judgeStrike(match.entries(), {EntryNumber(1), {}})[0].kind, K::CannotBeStruck);
        match.undo();
        QCOMPARE(judgeStrike(match.entries(), {point, {}})[0].kind, K::NoSuchEntry);
    }

    void afterTheMatchIsClosedNothingButACorrectionIsRecorded() {
        MatchBuilder match;
        match.open(3);
        for (int set = 0; set < 2; ++set)
            match.toss(H)
                .lineUp(H, {1, 2, 3, 4, 5, 6})
                .lineUp(V, {1, 2, 3, 4, 5, 6})
                .start()
                .play(QByteArray(25, 'h').constData())
                .add(SetEnded{});
        expect(match.judge(Toss{}), K::MatchAlreadyWon, Gravity::Refused);
        expect(match.judge(MatchClosed{}), std::nullopt);
        match.add(MatchClosed{});
        expect(match.judge(Remark{QStringLiteral("late")}), K::MatchIsClosed, Gravity::Refused);
        expect(match.judge(Strike{match.last(), {}}), std::nullopt);
    }

    void aReviewFindsWhatEntersUnlawfullyAndWhatACorrectionMakesSo() {
        MatchBuilder match = withRoster();
        match.substitute(H, 7, 1);
        const EntryNumber first = match.last();
        match.substitute(H, 1, 7);
        QVERIFY(review(match.entries()).empty());
        match.add(Substitution{H, n(2), n(1)}, QStringLiteral("first referee"));
        auto findings = review(match.entries());
        QCOMPARE(findings.size(), std::size_t(1));
        QCOMPARE(findings[0].entry, match.last());
        QCOMPARE(findings[0].overruled, std::optional(QStringLiteral("first referee")));
        match.undo();
        QVERIFY(review(match.entries()).empty());
        match.add(Strike{first, {}}); // now 7 never came in, and 1 came in for a player who was not there
        findings = review(match.entries());
        QCOMPARE(findings.size(), std::size_t(1));
        QCOMPARE(findings[0].finding.kind, K::NotOnCourt);
    }

    void whoGoesOutIsProposedWhenThereIsOneAnswer() {
        MatchBuilder match = withRoster();
        match.substitute(H, 7, 1);
        const TeamInSet team = match.state().set().teams.home;
        QCOMPARE(proposedOut(team, n(1)), std::optional(n(7)));
        QVERIFY(!proposedOut(team, n(7)));
        QVERIFY(!proposedOut(team, n(10)));
    }
};

QTEST_APPLESS_MAIN(TestJudge)
#include "tst_judge.moc"
