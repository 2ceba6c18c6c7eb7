// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/ways.h"

#include "tests/core/rules/caseplay.h"

using namespace setfolio;
using namespace setfolio::testing;
using namespace setfolio::testing::families;

namespace {

constexpr Team H = Team::Home;
constexpr Team V = Team::Visitors;

/// "7 8 11", or "nobody".
QString inWords(const std::vector<ShirtNumber>& numbers) {
    QStringList words;
    for (const ShirtNumber number : numbers)
        words += QString::number(number.value);
    return words.isEmpty() ? QStringLiteral("nobody") : words.join(u' ');
}

/// "9 for 5", "out 9", "10 for libero 9".
QString inWords(const Entry& move) {
    const auto words = [](const char* pattern, ShirtNumber a, ShirtNumber b = {}) {
        return QString::fromLatin1(pattern)
            .replace(u'A', QString::number(a.value))
            .replace(u'B', QString::number(b.value));
    };
    if (const auto* in = std::get_if<LiberoIn>(&move))
        return words("A for B", in->libero, in->replaced);
    if (const auto* out = std::get_if<LiberoOut>(&move))
        return words("out A", out->libero);
    const auto& exchange = std::get<LiberoExchange>(move);
    return words("A for libero B", exchange.in, exchange.out);
}

MatchState after(const char* rulebook, const std::string& play) {
    return CasePlay(QString::fromLatin1(rulebook), QString::fromStdString(play)).state();
}

void addWayColumns() {
    QTest::addColumn<QString>("rulebook");
    QTest::addColumn<QString>("play");
    QTest::addColumn<QString>("expected");
}

} // namespace

class TestWays : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whoMayComeInForNumberOne_data();
    void whoMayComeInForNumberOne();
    void forWhomNumberSevenMayComeIn_data();
    void forWhomNumberSevenMayComeIn();
    void whatIsOfferedIsLawfulAndNothingElseIs_data();
    void whatIsOfferedIsLawfulAndNothingElseIs();
    void exceptionalSubstitutesComeWhenNobodyElseMay();
    void theNextCardFollowsTheLadder();
    void theNextDelayFollowsTheLadder();
    void whoMustServe();
    void whatARulingOnAWrongServerTakesBack();
    void liberosMayMove_data();
    void aPointOfTheRefereesIsSettledByTheNextContact();
    void liberosMayMove();
};

// clang-format off
void TestWays::whoMayComeInForNumberOne_data() {
    addWayColumns();
    caseRow(hs, "",                                       "7 8 11 12 13 14", "Scoring & Libero Tracking, EOA Volleyball Officials Clinic");
    caseRow(hs, "h sub 7 1; h sub 1 7; h sub 8 2",        "7 11 12 13 14",   "Scoring & Libero Tracking, EOA Volleyball Officials Clinic");
    caseRow(in, "h sub 7 1; rally h; h sub 1 7",          "nobody",          "FIVB Rules 2025-2028, 15.6");
    caseRow(in, "h sub 7 2; h card 8 expulsion",          "11 12 13 14",     "FIVB Rules 2025-2028, 15.6, 21.3");
    caseRow(hs, "h vacate 1",                             "7 8 11 12 13 14", "from memory: the vacant place");
    caseRow(hs, "h sub 7 1",                              "nobody",          "sense: she is not on court");
}

void TestWays::forWhomNumberSevenMayComeIn_data() {
    addWayColumns();
    caseRow(hs, "",                                       "1 2 3 4 5 6",     "Scoring & Libero Tracking, EOA Volleyball Officials Clinic");
    caseRow(hs, "h sub 7 1; h sub 1 7",                   "1",               "Scoring & Libero Tracking, EOA Volleyball Officials Clinic");
    caseRow(in, "h sub 7 1; rally h; h sub 1 7",          "nobody",          "FIVB Rules 2025-2028, 15.6");
    caseRow(in, "h sub 8 1; rally h",                     "2 3 4 5 6",       "FIVB Rules 2025-2028, 15.6");
    caseRow(hs, "h sub 7 1",                              "nobody",          "sense: she is on court");
}

void TestWays::whatIsOfferedIsLawfulAndNothingElseIs_data() {
    addWayColumns();
    for (const char* rulebook : {hs, cw, cl, in}) {
        caseRow(rulebook, "",                                                     "", "the judge");
        caseRow(rulebook, "h sub 7 1; h sub 8 2; rally h; h sub 1 7; rally vh",   "", "the judge");
        caseRow(rulebook, "h sub 7 1; rally h; h card 8 expulsion; h card 2 disqualification; rally hvh", "", "the judge");
        caseRow(rulebook, "h sub 7 1; h sub 8 2; h sub 11 3; h sub 12 4; h sub 13 5; rally h", "", "the judge");
    }
}

void TestWays::liberosMayMove_data() {
    addWayColumns();
    caseRow(in, "",                                       "9 for 5, 9 for 6, 10 for 5, 10 for 6",                       "FIVB Rules 2025-2028, 19.3.1, 19.3.1.3");
    caseRow(hs, "",                                       "9 for 1, 9 for 5, 9 for 6, 10 for 1, 10 for 5, 10 for 6",    "Libero Serving 2013: she may serve");
    caseRow(in, "rally v",                                "9 for 1, 9 for 5, 9 for 6, 10 for 1, 10 for 5, 10 for 6",    "FIVB Rules 2025-2028, 19.3.1");
    caseRow(in, "h libero 9 5",                           "",                                                           "FIVB Rules 2025-2028, 19.3.2.1");
    caseRow(in, "h libero 9 5; rally h",                  "out 9, 10 for libero 9",                                     "FIVB Rules 2025-2028, 19.3.2.2");
    caseRow(in, "h libero 9 5; rally vh",                 "out 9",                                                      "FIVB Rules 2025-2028, 19.3.1: in the front row");
    caseRow(in, "rally s",                                "",                                                           "sense: a rally is open");
}
// clang-format on

void TestWays::whoMayComeInForNumberOne() {
    QFETCH(QString, rulebook);
    QFETCH(QString, play);
    QTEST(inWords(mayComeIn(CasePlay(rulebook, play).state(), H, ShirtNumber(1))), "expected");
}

void TestWays::forWhomNumberSevenMayComeIn() {
    QFETCH(QString, rulebook);
    QFETCH(QString, play);
    QTEST(inWords(mayGoOut(CasePlay(rulebook, play).state(), H, ShirtNumber(7))), "expected");
}

void TestWays::whatIsOfferedIsLawfulAndNothingElseIs() {
    QFETCH(QString, rulebook);
    QFETCH(QString, play);
    const MatchState state = CasePlay(rulebook, play).state();
    for (int out = 0; out < 30; ++out) {
        const std::vector<ShirtNumber> offered = mayComeIn(state, H, ShirtNumber(out));
        for (int in = 0; in < 30; ++in) {
            const bool lawful = judge(state, Substitution{H, ShirtNumber(in), ShirtNumber(out)}).empty();
            QCOMPARE(std::ranges::find(offered, ShirtNumber(in)) != offered.end(), lawful);
            const std::vector<ShirtNumber> leaving = mayGoOut(state, H, ShirtNumber(in));
            QCOMPARE(std::ranges::find(leaving, ShirtNumber(out)) != leaving.end(), lawful);
        }
    }
}

void TestWays::exceptionalSubstitutesComeWhenNobodyElseMay() {
    // FIVB Rules 2025-2028, 15.7: anyone not on court but a libero
    const std::string six = "h sub 7 1; h sub 8 2; h sub 11 3; h sub 12 4; h sub 13 5; h sub 14 6; rally h";
    QCOMPARE(inWords(mayComeInExceptionally(after(in, ""), H, ShirtNumber(1))), QStringLiteral("nobody"));
    QCOMPARE(inWords(mayComeInExceptionally(after(in, six), H, ShirtNumber(14))), QStringLiteral("1 2 3 4 5 6"));
    // from memory: at a high-school table a libero, but last
    const std::string allOut = "h card 7 disqualification; h card 8 disqualification; h card 11 disqualification; "
                               "h card 12 disqualification; h card 13 disqualification; h card 14 disqualification";
    QCOMPARE(inWords(mayComeInExceptionally(after(hs, allOut), H, ShirtNumber(2))), QStringLiteral("9 10"));
}

void TestWays::theNextCardFollowsTheLadder() {
    // FIVB Rules 2025-2028, diagram 9a
    const auto next = [](const char* rulebook, const char* play, const Member& who) {
        const auto step = nextCard(after(rulebook, play), H, who);
        return step ? std::optional(step->level) : std::nullopt;
    };
    using enum SanctionLevel;
    QCOMPARE(next(in, "", ShirtNumber(7)), std::optional(Warning));
    QCOMPARE(next(in, "h card 8 warning", ShirtNumber(7)), std::optional(Penalty));
    QCOMPARE(next(in, "h card 7 penalty", ShirtNumber(7)), std::optional(Expulsion));
    QCOMPARE(next(in, "h card 7 penalty", ShirtNumber(8)), std::optional(Warning));
    QCOMPARE(next(in, "h card 7 expulsion; win h", ShirtNumber(7)), std::optional(Disqualification));
    QCOMPARE(next(in, "h card coach penalty", BenchRole::Coach), std::optional(Expulsion));
    QVERIFY(!next(in, "h card 7 disqualification", ShirtNumber(7)));
    // from memory: no expulsion; Referee magazine, 5 rule differences: in college the current set only
    QCOMPARE(next(hs, "h card 7 penalty", ShirtNumber(7)), std::optional(Disqualification));
    QCOMPARE(next(cw, "h card 7 penalty; win h", ShirtNumber(7)), std::optional(Warning));
}

void TestWays::theNextDelayFollowsTheLadder() {
    // FIVB Rules 2025-2028, diagram 9b; NFHS Comments on the Rules 2015, 9-9-1
    QCOMPARE(nextDelay(after(in, ""), H), DelayLevel::Warning);
    QCOMPARE(nextDelay(after(in, "h delay warning; win h"), H), DelayLevel::Penalty);
    QCOMPARE(nextDelay(after(in, "h delay warning; win h"), V), DelayLevel::Warning);
    QCOMPARE(nextDelay(after(hs, "h delay warning; win h"), H), DelayLevel::Warning);
    QCOMPARE(nextDelay(after(hs, "h delay warning"), H), DelayLevel::Penalty);
}

void TestWays::whoMustServe() {
    QCOMPARE(mustServe(after(in, "")), std::optional(ServerDue{H, Slot(1), ShirtNumber(1)}));
    QCOMPARE(mustServe(after(in, "rally v")), std::optional(ServerDue{V, Slot(2), ShirtNumber(2)}));
    QCOMPARE(mustServe(after(hs, "rally v")), std::optional(ServerDue{V, Slot(1), ShirtNumber(2)}));
    QCOMPARE(mustServe(after(hs, "h serves 9")), std::optional(ServerDue{H, Slot(1), ShirtNumber(9)}));
    QCOMPARE(mustServe(after(hs, "h vacate 1")), std::optional(ServerDue{H, Slot(1), ShirtNumber()}));
    QVERIFY(!mustServe(after(hs, "end h")));
    QVERIFY(!mustServe(MatchState()));
}

void TestWays::whatARulingOnAWrongServerTakesBack() {
    const auto count = [](const char* rulebook, const char* play) {
        const auto points = pointsToTakeBack(after(rulebook, play), H);
        return points ? points->count : 0;
    };
    // FIVB Rules 2025-2028, 7.7.2; from memory for the other families: the points of the term
    QCOMPARE(count(in, "rally vhhhh"), 3);
    QCOMPARE(count(hs, "rally vhhhh"), 3);
    QCOMPARE(count(hs, "rally hhhv"), 3);
    QCOMPARE(count(hs, "rally hhhvs"), 0);
    QCOMPARE(count(in, "rally hhhvs"), 3);
    QCOMPARE(count(hs, "rally v"), 0);
    const auto illegal = [](const char* rulebook, const char* play, IllegalBy by) {
        const auto points = pointsToTakeBack(after(rulebook, play), H, by);
        return points ? points->count : 0;
    };
    // FIVB Rules 2025-2028, 15.9.2 and 19.3.2.9; from memory for the other families
    QCOMPARE(illegal(in, "rally vhhhhv", IllegalBy::Substitution), 3);
    QCOMPARE(illegal(in, "rally vhhhhvs", IllegalBy::LiberoReplacement), 3);
    QCOMPARE(illegal(hs, "rally vhhhhv", IllegalBy::LiberoReplacement), 3);
    QCOMPARE(illegal(hs, "rally vhhhhvs", IllegalBy::LiberoReplacement), 0);
    QCOMPARE(illegal(cl, "rally vhhhhvs", IllegalBy::Substitution), 0);
    // What is offered is lawful, and takes back so many.
    const CasePlay play(QString::fromLatin1(hs), QStringLiteral("rally vhhhhv"));
    const auto points = pointsToTakeBack(play.state(), H);
    const WrongServer ruling{H, ShirtNumber(4), points.value().from};
    QVERIFY(play.match().judge(ruling).empty());
    QCOMPARE(MatchBuilder(play.match()).add(ruling).state().set().teams.home.points, 4 - points->count);
}

/// Source: CVVOA Interpreter's Report of September 2015, situation 2: until the next serve is contacted.
void TestWays::aPointOfTheRefereesIsSettledByTheNextContact() {
    const auto settled = [](const char* rulebook, const char* play) {
        const CasePlay cast(QString::fromLatin1(rulebook), QString::fromLatin1(play));
        const auto entries = cast.match().entries();
        const auto rally = std::ranges::find_if(
            entries, [](const Recorded& recorded) { return std::holds_alternative<RallyWon>(recorded.entry); });
        return isPointSettled(entries, rally->number);
    };
    QVERIFY(!settled(hs, "rally v"));
    QVERIFY(!settled(hs, "rally v; h time-out; h sub 7 1"));
    QVERIFY(settled(hs, "rally v; rally s"));
    QVERIFY(settled(hs, "rally v; rally v"));
    QVERIFY(!settled(hs, "rally v; rally se")); // a dropped toss
    QVERIFY(settled(hs, "rally v; rally ses"));
    QVERIFY(settled(hs, "rally v; rally sr"));
    QVERIFY(!settled(in, "rally v; rally v")); // from memory: whenever it is established
    QVERIFY(!isPointSettled({}, EntryNumber(1)));
}

void TestWays::liberosMayMove() {
    QFETCH(QString, rulebook);
    QFETCH(QString, play);
    QStringList moves;
    for (const Entry& move : liberoMoves(CasePlay(rulebook, play).state(), H))
        moves += inWords(move);
    QTEST(moves.join(QStringLiteral(", ")), "expected");
}

QTEST_APPLESS_MAIN(TestWays)
#include "tst_ways.moc"
