// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/timeoutcard.h"

#include "tests/support/matchbuilder.h"
#include "ui/table/interval.h"
#include "ui/table/running.h"
#include "ui/wording/tablewords.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

class TestTimeOutCard : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void itComparesBothTeamsAsTheyStand();
    void itWarnsAndEndsByTheRulebook_data();
    void itWarnsAndEndsByTheRulebook();
    void itRunsUntilTheNextServe_data();
    void itRunsUntilTheNextServe();
    void lineUpsAndThenTheIntervalCountDown();
    void theWarmUpEndsAtTheScheduledTime();
};

void TestTimeOutCard::itComparesBothTeamsAsTheyStand() {
    MatchBuilder match;
    match.open()
        .toss(Team::Home, Team::Visitors)
        .lineUp(Team::Home, {1, 2, 3, 4, 5, 6})
        .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16})
        .start()
        .play("hhv")
        .substitute(Team::Home, 7, 1)
        .add(TimeOut{Team::Home});
    const TimeOutView view = timeOutViewOf(match.state(), Team::Home);
    QCOMPARE(view.title, QStringLiteral("Time-out SAL"));
    QCOMPARE(view.count, QStringLiteral("1 of 2"));
    QCOMPARE(view.sides.left.code, QStringLiteral("QRL"));
    QCOMPARE(view.sides.left.points, QStringLiteral("1"));
    QCOMPARE(view.sides.right.points, QStringLiteral("2"));
    QCOMPARE(view.sides.right.substitutions, QStringLiteral("1 of 18"));
    QCOMPARE(view.sides.right.timeOuts, QStringLiteral("1 of 2"));
    QCOMPARE(view.server, QStringLiteral("QRL 12, slot I"));
}

// clang-format off
void TestTimeOutCard::itWarnsAndEndsByTheRulebook_data() {
    QTest::addColumn<int>("seconds");
    QTest::addColumn<int>("warning");
    QTest::addColumn<int>("elapsed");
    QTest::addColumn<TimeOutStage>("stage");
    // Sources: 60 seconds: Referee magazine, 5 rule differences every referee must know; a whistle at 45: from memory.
    QTest::newRow("begins")      << 60 << 45 << 0  << TimeOutStage::Running;
    QTest::newRow("before")      << 60 << 45 << 44 << TimeOutStage::Running;
    QTest::newRow("warning")     << 60 << 45 << 45 << TimeOutStage::Warned;
    QTest::newRow("last second") << 60 << 45 << 59 << TimeOutStage::Warned;
    QTest::newRow("over")        << 60 << 45 << 60 << TimeOutStage::Over;
    // Source: FIVB Official Volleyball Rules 2025-2028, 15.4.1: 30 seconds, no warning.
    QTest::newRow("no warning") << 30 << 0 << 29 << TimeOutStage::Running;
    QTest::newRow("over at 30") << 30 << 0 << 30 << TimeOutStage::Over;
}
// clang-format on

void TestTimeOutCard::itWarnsAndEndsByTheRulebook() {
    QFETCH(int, seconds);
    QFETCH(int, warning);
    QFETCH(int, elapsed);
    TimeOutView view;
    view.seconds = seconds;
    view.warningAfter = warning;
    QTEST(stageAfter(view, elapsed), "stage");
}

// clang-format off
void TestTimeOutCard::itRunsUntilTheNextServe_data() {
    QTest::addColumn<QString>("then"); // u: undo, S: substitution, else as MatchBuilder::play
    QTest::addColumn<bool>("runs");
    QTest::newRow("just taken")       << ""   << true;
    QTest::newRow("substitution")     << "S"  << true;
    QTest::newRow("serve contacted")  << "s"  << false;
    QTest::newRow("rally")            << "h"  << false;
    QTest::newRow("time-out undone")  << "u"  << false;
    QTest::newRow("the serve undone") << "su" << true;
}
// clang-format on

void TestTimeOutCard::itRunsUntilTheNextServe() {
    QFETCH(QString, then);
    MatchBuilder match;
    match.started().play("h").add(TimeOut{Team::Visitors});
    const EntryNumber timeOut = match.last();
    for (const QChar step : then) {
        const char letters[] = {step.toLatin1(), 0};
        if (step == u'u')
            match.undo();
        else if (step == u'S')
            match.substitute(Team::Home, 7, 1);
        else
            match.play(letters);
    }
    const Recorded* running = runningTimeOut(match.entries());
    QTEST(running != nullptr, "runs");
    if (running)
        QCOMPARE(running->number, timeOut);
}

namespace {

/// What the table shows so long after `from`; empty when nothing counts down.
QString shownAfter(const MatchState& state, const QDateTime& from, int seconds) {
    const QDateTime now = from.addSecs(seconds);
    const auto countdown = countdownNow(state, {[now] { return now; }, [now] { return now.time(); }});
    return countdown ? countdownWords(*countdown) : QString();
}

} // namespace

void TestTimeOutCard::lineUpsAndThenTheIntervalCountDown() {
    // An interval of three minutes: NFHS Comments on the Rules 2026-27, 5-5-3b(21); line-ups before its last minute:
    // NFHS Rules Interpretations 2016-17.
    MatchBuilder match;
    match.started();
    for (int i = 0; i < 25; ++i)
        match.play("h");
    QCOMPARE(shownAfter(match.state(), match.entries().back().time, 1), QString());
    match.add(SetEnded{QTime(19, 20)});
    const QDateTime ended = match.entries().back().time;
    QCOMPARE(shownAfter(match.state(), ended, 0), QStringLiteral("Line-ups due 2:00"));
    QCOMPARE(shownAfter(match.state(), ended, 119), QStringLiteral("Line-ups due 0:01"));
    QCOMPARE(shownAfter(match.state(), ended, 120), QStringLiteral("Line-ups late"));
    match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6});
    QCOMPARE(shownAfter(match.state(), ended, 60), QStringLiteral("Line-ups due 1:00"));
    match.lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16});
    QCOMPARE(shownAfter(match.state(), ended, 150), QStringLiteral("Interval 0:30"));
    QCOMPARE(shownAfter(match.state(), ended, 200), QStringLiteral("Interval 0:00"));
    match.start();
    QCOMPARE(shownAfter(match.state(), ended, 150), QString());
}

void TestTimeOutCard::theWarmUpEndsAtTheScheduledTime() {
    // 2021-22 NFHS Volleyball Rules PowerPoint, 7-1-4: two minutes before the end of the warm-up.
    MatchBuilder match;
    match.open();
    MatchState state = match.state();
    const QDateTime from = match.entries().back().time;
    QCOMPARE(shownAfter(state, from, 0), QString());
    state.opened->scheduled = from.time().addSecs(600);
    QCOMPARE(shownAfter(state, from, 0), QStringLiteral("Line-ups due 8:00"));
    QCOMPARE(shownAfter(state, from, 480), QStringLiteral("Line-ups late"));
    QCOMPARE(shownAfter(state, from, 601), QString());
    for (const Team team : bothTeams)
        state.sets.back().teams[team].lineUp = LineUp{team, six({1, 2, 3, 4, 5, 6}), {}, {}};
    QCOMPARE(shownAfter(state, from, 480), QStringLiteral("Warm-up 2:00"));
    state.opened->scheduled = from.time().addSecs(3700);
    QCOMPARE(shownAfter(state, from, 0), QString());
}

QTEST_GUILESS_MAIN(TestTimeOutCard)
#include "tst_timeoutcard.moc"
