// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/timeoutcard.h"

#include "tests/support/matchbuilder.h"
#include "ui/table/running.h"

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
    void theIntervalBeginsWithTheEndOfTheSet();
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

void TestTimeOutCard::theIntervalBeginsWithTheEndOfTheSet() {
    MatchBuilder match;
    match.started();
    for (int i = 0; i < 25; ++i)
        match.play("h");
    QVERIFY(!intervalBegan(match.entries()));
    match.add(SetEnded{QTime(19, 20)});
    const QDateTime ended = match.entries().back().time;
    match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6});
    QCOMPARE(intervalBegan(match.entries()), std::optional(ended));
    match.lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
    QVERIFY(!intervalBegan(match.entries()));
}

QTEST_GUILESS_MAIN(TestTimeOutCard)
#include "tst_timeoutcard.moc"
