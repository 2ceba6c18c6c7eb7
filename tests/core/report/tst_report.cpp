// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/report/report.h"
#include "tests/support/matchbuilder.h"
#include "tests/support/randomplay.h"

#include <QtTest>

#include <numeric>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

using namespace testing;

namespace {

constexpr std::uint32_t randomMatches = 25;

/// Worked by hand. Herons 1 to 6 serve first, Larks 11 to 16; the team that wins the serve turns by one court position,
/// so that 12 is the first of the Larks to serve.
///     rally      1    2    3    4     5     6     7    8
///     server     1    1    1    12    12    12    2    2
///     won by     h    h    v    v     v     h     h    v
///     score      1-0  2-0  2-1  2-2   2-3   3-3   4-3  4-4
MatchBuilder eightRallies() {
    MatchBuilder match;
    match.started().play("hhvvvhhv");
    return match;
}

SetFigures figuresOfSet(const MatchBuilder& match) {
    return figuresOf(match.entries()).back();
}

/// The rotation in which the number of the line-up stands in court position 1.
const RotationFigures& with(const SetFigures& figures, Team team, int number) {
    const int first = team == Team::Home ? 1 : 11;
    static const MatchState state = MatchBuilder().started().state();
    const auto slot = slotAt(state.set(), team, CourtPosition(number - first + 1));
    return figures.teams[team].rotations[slot.index()];
}

/// What must hold of every set that was played: each point is in one figure, and in one only.
QString contradictionIn(const SetFigures& figures) {
    const auto won = [&](Team team) { return std::ranges::count(figures.course, team); };
    for (const Team team : bothTeams) {
        const TeamFigures& own = figures.teams[team];
        const RotationFigures sum = own.sum();
        const RotationFigures theirs = figures.teams[opponentsOf(team)].sum();
        const auto over = [&](auto member) {
            return std::accumulate(own.servers.begin(), own.servers.end(), 0,
                                   [&](int total, const ServerFigures& server) { return total + server.*member; });
        };
        const int inRuns = std::accumulate(own.runs.begin(), own.runs.end(), 0,
                                           [](int total, const Run& run) { return total + run.length; });
        if (sum.serveWon + sum.receiveWon + own.penalties + own.given != figures.score[team])
            return u"rallies, penalties and points given are not the score"_s;
        if (won(team) != figures.score[team] || inRuns != figures.score[team])
            return u"the course or the runs are not the score"_s;
        if (sum.serveWon != theirs.receiveLost || sum.serveLost != theirs.receiveWon)
            return u"what one team won on serve is not what the other lost on receive"_s;
        if (over(&ServerFigures::won) != sum.serveWon || over(&ServerFigures::lost) != sum.serveLost)
            return u"the servers' rallies are not those of the rotations"_s;
    }
    return {};
}

} // namespace

class ReportTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void ralliesAreCountedByRotation();
    void ralliesAreCountedByServer();
    void runsFollowTheScore();
    void aPenaltyPointIsOfNoRotation();
    void whatIsUndoneIsNotCounted();
    void changesStandWithTheirScore();
    void serversOfCancelledSetsAreLeftOut();
    void everyPointOfARandomMatchIsCountedOnce_data();
    void everyPointOfARandomMatchIsCountedOnce();
};

void ReportTest::ralliesAreCountedByRotation() {
    const SetFigures figures = figuresOfSet(eightRallies());
    QVERIFY((with(figures, Team::Home, 1) == RotationFigures{2, 1, 1, 2}));
    QVERIFY((with(figures, Team::Home, 2) == RotationFigures{1, 1, 0, 0}));
    QVERIFY((with(figures, Team::Visitors, 11) == RotationFigures{0, 0, 1, 2}));
    QVERIFY((with(figures, Team::Visitors, 12) == RotationFigures{2, 1, 1, 1}));
    QVERIFY((figures.teams.home.sum() == RotationFigures{3, 2, 1, 2}));
    QCOMPARE(figures.teams.home.sum().difference(), 0); // 4-4
    QCOMPARE(with(figures, Team::Home, 1).served(), 3);
    QCOMPARE(with(figures, Team::Home, 1).received(), 3);
}

void ReportTest::ralliesAreCountedByServer() {
    const SetFigures figures = figuresOfSet(eightRallies());
    const std::vector<ServerFigures> home{{ShirtNumber(1), 1, 2, 1, 2}, {ShirtNumber(2), 1, 1, 1, 1}};
    QVERIFY(figures.teams.home.servers == home);
    const std::vector<ServerFigures> visitors{{ShirtNumber(12), 1, 2, 1, 2}}; // 13 has the ball, and no rally yet
    QVERIFY(figures.teams.visitors.servers == visitors);
}

void ReportTest::runsFollowTheScore() {
    const SetFigures figures = figuresOfSet(eightRallies());
    const std::vector<Run> home{{2, {0, 0}, {2, 0}}, {2, {2, 3}, {4, 3}}};
    const std::vector<Run> visitors{{3, {2, 0}, {2, 3}}, {1, {4, 3}, {4, 4}}};
    QVERIFY(figures.teams.home.runs == home);
    QVERIFY(figures.teams.visitors.runs == visitors);
    QVERIFY(figures.teams.home.longestRun() == home.front()); // of two as long, the first
    QCOMPARE(figures.teams.visitors.longestRun().length, 3);
}

void ReportTest::aPenaltyPointIsOfNoRotation() {
    MatchBuilder match = eightRallies();
    const TeamFigures before = figuresOfSet(match).teams.home;
    match.add(PenaltyPoint{Team::Home, u"the bench left it"_s});
    const SetFigures after = figuresOfSet(match);
    QCOMPARE(after.teams.home.penalties, 1);
    QVERIFY(after.teams.home.sum() == before.sum());
    QVERIFY(after.teams.home.servers == before.servers);
    QCOMPARE(after.score.home, 5);
    QVERIFY((after.teams.home.runs.back() == Run{1, {4, 4}, {5, 4}}));
}

void ReportTest::whatIsUndoneIsNotCounted() {
    MatchBuilder match = eightRallies();
    const SetFigures before = figuresOfSet(match);
    match.play("h").undo();
    QVERIFY(figuresOfSet(match) == before);
}

void ReportTest::changesStandWithTheirScore() {
    MatchBuilder match = eightRallies();
    match.add(TimeOut{Team::Visitors});
    const EntryNumber timeOut = match.last();
    match.play("h").substitute(Team::Home, 7, 3);
    const std::vector<Change> changes{
        {Team::Visitors, std::nullopt, {4, 4}, timeOut},
        {Team::Home, Substitution{Team::Home, ShirtNumber(7), ShirtNumber(3)}, {5, 4}, match.last()}};
    QVERIFY(figuresOfSet(match).changes == changes);
}

void ReportTest::serversOfCancelledSetsAreLeftOut() {
    SetFigures played = figuresOfSet(eightRallies());
    SetFigures cancelled = played;
    cancelled.cancelled = true;
    const std::vector<SetFigures> sets{cancelled, played, played};
    const std::vector<ServerFigures> over = serversOver(sets, Team::Visitors);
    QVERIFY((over == std::vector<ServerFigures>{{ShirtNumber(12), 2, 4, 2, 2}}));
}

void ReportTest::everyPointOfARandomMatchIsCountedOnce_data() {
    QTest::addColumn<QString>("rulebook");
    for (const QString& id : publishedRulebookIds())
        QTest::newRow(qPrintable(id)) << id;
}

void ReportTest::everyPointOfARandomMatchIsCountedOnce() {
    QFETCH(QString, rulebook);
    std::size_t sets = 0;
    for (std::uint32_t seed = 1; seed <= randomMatches; ++seed) {
        RandomPlay play(seed, publishedRulebook(rulebook).value(), Habits{});
        play.playMatch();
        for (const SetFigures& figures : figuresOf(play.entries())) {
            const QString contradiction = contradictionIn(figures);
            QVERIFY2(contradiction.isEmpty(), qPrintable(u"seed %1: %2"_s.arg(seed).arg(contradiction)));
            ++sets;
        }
    }
    QVERIFY(sets > randomMatches);
}

} // namespace setfolio

QTEST_GUILESS_MAIN(setfolio::ReportTest)
#include "tst_report.moc"
