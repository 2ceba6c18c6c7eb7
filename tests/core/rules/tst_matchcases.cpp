// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/core/rules/caseplay.h"

using namespace setfolio;
using namespace setfolio::testing;
using namespace setfolio::testing::families;

namespace {

/// Two sets each, and the deciding set begun; home serves.
const std::string decidingSet = "win h; win h; win v; win v; ";

} // namespace

class TestMatchCases : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void tossesSidesAndCaptains_data();
    void tossesSidesAndCaptains() { checkFindings(); }
    void matchesThatEndOtherwise_data();
    void matchesThatEndOtherwise() { checkFindings(); }
    void scoresOfThem_data();
    void scoresOfThem() { checkScore(); }
    void resultsOfForfeitsAreAsPublished();
    void resultsOfSetsLostAfterwardsAreAsPublished();
    void aTeamThatCannotBeginLosesByDefault();
    void sidesBetweenSetsAreTheRulebooks();
    void aPenaltyPointOutsideASetIsNotRefused();
    void aRosterStandsOnceTheMatchHasBegun();
};

// clang-format off
void TestMatchCases::tossesSidesAndCaptains_data() {
    addCaseColumns();
    caseRow(in, "end h; v toss v",                                 "",                        "FIVB Rules 2025-2028, 12.1.2, 18.2.1");
    caseRow(in, "end h; h toss v",                                 "first-serve-alternates",  "FIVB Rules 2025-2028, 12.1.2");
    caseRow(cw, "end h; h toss v",                                 "first-serve-alternates",  "NCAA Women's Volleyball 2012 and 2013 Rules, 13.1.2");
    caseRow(hs, "end h; h toss v",                                 "first-serve-alternates",  "from memory");
    caseRow(in, "end h; v toss h",                                 "sides-not-as-ruled",      "FIVB Rules 2025-2028, 18.2.1");
    caseRow(in, "win h; win h; win v; end v; h toss h",            "",                        "FIVB Rules 2025-2028, 7.1, 18.2.1: a new toss");
    caseRow(in, "win h; win h; win v; end v; v toss h",            "",                        "FIVB Rules 2025-2028, 7.1: a new toss");
    caseRow(in, decidingSet + times(7, "rally h; ") + "sides",     "sides-change-early",      "FIVB Rules 2025-2028, 18.2.2");
    caseRow(in, decidingSet + times(8, "rally h; ") + "sides",     "",                        "FIVB Rules 2025-2028, 18.2.2");
    caseRow(in, decidingSet + times(8, "rally v; ") + "sides",     "",                        "FIVB Rules 2025-2028, 18.2.2: the leading team");
    caseRow(in, decidingSet + times(10, "rally h; ") + "sides",    "",                        "FIVB Rules 2025-2028, 18.2.2: as soon as it is noticed");
    caseRow(in, decidingSet + times(8, "rally h; ") + "sides; sides", "sides-changed-already", "FIVB Rules 2025-2028, 18.2.2");
    caseRow(cw, decidingSet + times(8, "rally h; ") + "sides",     "",                        "NCAA News of March 2002; NCAA and PAVO interpretations of August 2002, 1");
    caseRow(cl, decidingSet + times(8, "rally h; ") + "sides",     "",                        "USA Volleyball, Scorer tips and reminders 2014, 11c");
    caseRow(hs, decidingSet + times(8, "rally h; ") + "sides",     "no-sides-change",         "from memory: none");
    caseRow(in, times(13, "rally h; ") + "sides",                  "no-sides-change",         "FIVB Rules 2025-2028, 18.2.1, 18.2.2: in the deciding set only");
    caseRow(hs, "rally h; sides",                                  "no-sides-change",         "from memory: between the sets");
    caseRow(in, "rally hhv; sides",                                "no-sides-change",         "from memory: missed between the sets, on the referees' word");
    caseRow(in, "h captain 3",                                     "",                        "from memory: on court");
    caseRow(hs, "h libero 9 5; rally h; h captain 9",              "",                        "common practice: she is on court");
    caseRow(hs, "h libero 9 5; rally h; h captain 10",             "captain-not-on-court",    "common practice: the other libero is on court");
    caseRow(hs, "h libero 9 5; rally h; h captain 5",              "captain-not-on-court",    "common practice: the libero is on court for her");
    caseRow(hs, "h libero 9 5; rally h; h libero-out 9; h captain 9", "captain-not-on-court", "common practice: she has left the court");
    caseRow(in, "h captain 7",                                     "captain-not-on-court",    "from memory: on court");
    caseRow(in, "h captain 20",                                    "captain-not-in-team",     "from memory: of the team");
    caseRow(in, "h captain 9",                                     "",                        "FIVB Rules 2025-2028, 5: a libero may be");
    caseRow(cw, "h captain 9",                                     "",                        "NCAA Women's Volleyball 2012 and 2013 Rules, 12.1.1: a libero may be");
}

void TestMatchCases::matchesThatEndOtherwise_data() {
    addCaseColumns();
    caseRow(in, "h default match",                                 "",                        "FIVB Rules 2025-2028, 6.4.1: refuses to play");
    caseRow(in, "h default set",                                   "default-is-of-match",     "FIVB Rules 2025-2028, 6.4.1");
    caseRow(in, "rally hhv; h incomplete set",                     "",                        "FIVB Rules 2025-2028, 6.4.3");
    caseRow(in, "rally hhv; h incomplete match",                   "",                        "FIVB Rules 2025-2028, 6.4.3");
    caseRow(in, times(25, "rally h; ") + "h incomplete set",       "set-already-won",         "sense");
    caseRow(in, "h default match; v default match",                "match-already-won",       "sense");
    caseRow(in, "win h; rally hv; h forfeits 1 10",                "",                        "FIVB Rules 2025-2028, 7.3.5.4: the points and sets gained while she was on court");
    caseRow(in, "win h; rally hv; v forfeits 1 0",                 "",                        "FIVB Rules 2025-2028, 7.3.5.4: of a set that was lost, 0-25");
    caseRow(in, "win h; rally hs; h forfeits 1",                   "",                        "FIVB Rules 2025-2028, 7.3.5.4, 6.4.3: whenever it is found");
    caseRow(in, "end h; h forfeits 1 0",                           "",                        "FIVB Rules 2025-2028, 7.3.5.4: between sets");
    caseRow(in, "win h; win h; end h; h forfeits 3 0",             "",                        "FIVB Rules 2025-2028, 7.3.5.4: before the match is closed");
    caseRow(in, "win h; rally hv; suspend; h forfeits 1 0",        "",                        "FIVB Rules 2025-2028, 7.3.5.4: nothing is played by it");
    caseRow(in, "rally hv; h forfeits 1 0",                        "set-not-ended",           "sense");
    caseRow(in, "win h; rally hv; h forfeits 2 0",                 "set-not-ended",           "sense");
    caseRow(in, "win h; rally hv; h forfeits 1 26",                "keeps-too-much",          "sense");
    caseRow(in, "win h; rally hv; v forfeits 1 1",                 "keeps-too-much",          "sense");
    caseRow(in, "win h; rally hv; h default match; h forfeits 1 0", "match-already-won",      "sense");
    caseRow(in, "rally hhs; suspend",                              "",                        "FIVB Rules 2025-2028, 17.3");
    caseRow(in, "rally hh; suspend; h card coach penalty",         "match-is-suspended",      "sense: its point comes when play goes on");
    caseRow(in, "rally hh; suspend; h delay warning",              "match-is-suspended",      "sense");
    caseRow(in, "rally hh; suspend; rally h",                      "match-is-suspended",      "sense");
    caseRow(in, "rally hh; suspend; resume stood",                 "",                        "FIVB Rules 2025-2028, 17.3: the same court");
    caseRow(in, "rally hh; suspend; resume again",                 "",                        "FIVB Rules 2025-2028, 17.3: another court");
    caseRow(in, "rally hh; suspend; resume again; h slip 1 2 3 4 5 6 / 9 10", "",             "FIVB Rules 2025-2028, 17.3: the same line-ups");
    caseRow(in, "rally hh; suspend; resume again; h slip 7 1 2 3 4 5 / 9 10", "same-line-up-due", "FIVB Rules 2025-2028, 17.3: the same line-ups");
    caseRow(in, "rally hh; suspend; resume again; start; end h; h slip 7 1 2 3 4 5 / 9 10", "", "FIVB Rules 2025-2028, 17.3: of that set only");
    caseRow(hs, "rally hh; suspend; resume stood",                 "",                        "from memory: from the point of suspension");
    caseRow(hs, "rally hh; suspend; resume again",                 "set-not-played-again",    "from memory: from the point of suspension");
    caseRow(in, "resume stood",                                    "not-suspended",           "sense");
    caseRow(in, "rally hh; suspend; after 3; resume stood",        "",                        "FIVB Rules 2025-2028, 17.3: within four hours");
    caseRow(in, "rally hh; suspend; after 5; resume stood",        "resumed-too-late",        "FIVB Rules 2025-2028, 17.3: the whole match is replayed");
    caseRow(in, "rally hh; suspend; after 5; resume again",        "resumed-too-late",        "FIVB Rules 2025-2028, 17.3: the whole match is replayed");
    caseRow(in, "rally hh; suspend; after 3; resume stood; suspend; after 3; resume stood", "", "FIVB Rules 2025-2028, 17.3: each interruption by itself, derived");
    caseRow(cl, "rally hh; suspend; after 5; resume stood",        "resumed-too-late",        "from memory, as FIVB");
    caseRow(hs, "rally hh; suspend; after 50; resume stood",       "",                        "from memory: from the point of suspension");
}

void TestMatchCases::scoresOfThem_data() {
    addCaseColumns();
    caseRow(in, "rally hhhvv; h incomplete set",                   "3:25",      "FIVB Rules 2025-2028, 6.4.3");
    caseRow(in, times(24, "rally hv; ") + "h incomplete set",      "24:26",     "FIVB Rules 2025-2028, 6.4.3, 6.2");
    caseRow(cl, times(26, "rally hv; ") + "h incomplete set",      "26:28",     "from memory, as FIVB");
    caseRow(hs, times(24, "rally hv; ") + "h incomplete set",      "24:26",     "from memory: enough to win by two");
    caseRow(in, "win h; rally hhv; h forfeits 1 0",                "2:1 v 2",   "FIVB Rules 2025-2028, 7.3.5.4: the present set is as it was");
    caseRow(in, "rally hhv; suspend; resume stood",                "2:1 v 2",   "FIVB Rules 2025-2028, 17.3: the same score");
    caseRow(in, "rally hhv; suspend; resume again; start",         "0:0 h 1",   "FIVB Rules 2025-2028, 17.3: the set anew");
    caseRow(in, "rally hhs; suspend; resume stood",                "2:0 h 1",   "FIVB Rules 2025-2028, 17.3, 17.2: the open rally is played over");
    caseRow(in, decidingSet + times(8, "rally h; ") + "sides",     "8:0 h 1",   "FIVB Rules 2025-2028, 18.2.2: the same positions");
    caseRow(in, decidingSet + times(10, "rally h; ") + "sides",    "10:0 h 1",  "FIVB Rules 2025-2028, 18.2.2: the score stands");
}
// clang-format on

void TestMatchCases::resultsOfForfeitsAreAsPublished() {
    // FIVB Rules 2025-2028, 6.4.1, 6.4.2: 0-3, each set 0-25
    const CasePlay byDefault(QString::fromLatin1(in), QStringLiteral("win h; rally hh; h default match"));
    QCOMPARE(setsWon(byDefault.state()), (PerTeam<int>{0, 3}));
    QCOMPARE(setScores(byDefault.state()), (std::vector<PerTeam<int>>{{0, 25}, {0, 25}, {0, 25}}));
    // FIVB Rules 2025-2028, 6.4.3: it keeps its points and sets
    const CasePlay incomplete(QString::fromLatin1(in), QStringLiteral("win h; rally hh; h incomplete match"));
    QCOMPARE(setsWon(incomplete.state()), (PerTeam<int>{1, 3}));
    QCOMPARE(setScores(incomplete.state()), (std::vector<PerTeam<int>>{{25, 0}, {2, 25}, {0, 25}, {0, 25}}));
}

void TestMatchCases::resultsOfSetsLostAfterwardsAreAsPublished() {
    const auto results = [](const char* play) {
        const CasePlay done(QString::fromLatin1(in), QString::fromLatin1(play));
        return std::pair(setsWon(done.state()), setScores(done.state()));
    };
    using Scores = std::vector<PerTeam<int>>;
    // FIVB Rules 2025-2028, 7.3.5.4: 0-25 if needed
    QCOMPARE(results("end h; h forfeits 1 0"), std::pair(PerTeam<int>{0, 1}, Scores{{0, 25}}));
    QCOMPARE(results("end v; h forfeits 1 0"), std::pair(PerTeam<int>{0, 1}, Scores{{0, 25}}));
    // FIVB Rules 2025-2028, 6.4.3: what is needed to win the set
    QCOMPARE(results("end h; h forfeits 1 24"), std::pair(PerTeam<int>{0, 1}, Scores{{24, 26}}));
    // FIVB Rules 2025-2028, 7.3.5.4, 6.3.1: the third set of a team wins the match
    QCOMPARE(results("win h; win v; win v; rally hv; h forfeits 1 0"),
             std::pair(PerTeam<int>{0, 3}, Scores{{0, 25}, {0, 25}, {0, 25}}));
}

void TestMatchCases::aTeamThatCannotBeginLosesByDefault() {
    // FIVB Rules 2025-2028, 6.4.2
    MatchBuilder match;
    match.open(5, publishedRulebook(QString::fromLatin1(in)).value());
    QVERIFY(match.judge(Forfeit{Team::Home, ForfeitKind::Default, Scope::Match, {}}).empty());
    const Findings findings = match.judge(Forfeit{Team::Home, ForfeitKind::Incomplete, Scope::Match, {}});
    QCOMPARE(findings.size(), std::size_t(1));
    QCOMPARE(findings[0].kind, FindingKind::IncompleteBeforePlay);
}

void TestMatchCases::sidesBetweenSetsAreTheRulebooks() {
    // FIVB Rules 2025-2028, 18.2.1, and leagues that let the teams stay: who stands left in sets 2 and 3
    const auto leftOf = [](SideChange change) {
        Rulebook rulebook = highSchool();
        rulebook.changeSides = change;
        MatchBuilder match;
        match.open(5, rulebook).toss(Team::Home, Team::Home);
        for (int set = 0; set < 2; ++set)
            match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6})
                .lineUp(Team::Visitors, {1, 2, 3, 4, 5, 6})
                .start()
                .play(QByteArray(25, set == 0 ? 'h' : 'v').constData())
                .add(SetEnded{});
        const MatchState state = match.state();
        return std::pair(state.sets[1].left.value(), state.sets[2].left.value());
    };
    QCOMPARE(leftOf(SideChange::EachSet), std::pair(Team::Visitors, Team::Home));
    QCOMPARE(leftOf(SideChange::EachSetButDeciding), std::pair(Team::Visitors, Team::Home));
    QCOMPARE(leftOf(SideChange::AfterSecondSet), std::pair(Team::Home, Team::Visitors));
    QCOMPARE(leftOf(SideChange::NoChange), std::pair(Team::Home, Team::Home));
}

void TestMatchCases::aPenaltyPointOutsideASetIsNotRefused() {
    // NFHS Comments on the Rules 2020-21: a late change of the roster costs the first rally of the set
    MatchBuilder match;
    match.open();
    QVERIFY(match.judge(PenaltyPoint{Team::Visitors, {}}).empty());
    match.started().play("s");
    QVERIFY(isRefused(match.judge(PenaltyPoint{Team::Visitors, {}})));
}

void TestMatchCases::aRosterStandsOnceTheMatchHasBegun() {
    const auto judged = [](const char* rulebook, int number, const char* name) {
        const CasePlay play(QString::fromLatin1(rulebook), {});
        Roster roster = play.state().rosters.home;
        roster.players.front() = {ShirtNumber(number), QString::fromLatin1(name), false, false};
        const Findings findings = play.match().judge(roster);
        return findings.empty() ? QString() : exportWord(findings[0].kind);
    };
    QCOMPARE(judged(in, 31, ""), QStringLiteral("roster-settled"));      // FIVB Rules 2025-2028, 5.2.2
    QCOMPARE(judged(in, 1, "Tamsin Orrell"), QString());                 // FIVB Rules 2025-2028, 5.2.2: the same number
    QCOMPARE(judged(hs, 31, ""), QStringLiteral("roster-change-costs")); // NFHS Comments on the Rules 2020-21
    QCOMPARE(judged(cw, 31, ""), QString());                             // from memory
}

QTEST_APPLESS_MAIN(TestMatchCases)
#include "tst_matchcases.moc"
