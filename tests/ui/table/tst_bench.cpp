// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/bench.h"

#include "tests/support/matchbuilder.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

QString inWords(const std::vector<BenchPlayer>& players) {
    QStringList words;
    for (const BenchPlayer& player : players)
        words += player.slot ? QStringLiteral("%1/%2").arg(player.number.value).arg(player.slot->value)
                             : QString::number(player.number.value);
    return words.join(u' ');
}

} // namespace

class TestBench : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void withoutARosterItHoldsWhoHasLeft();
    void theRosterWithoutSixAndLiberos();
    void whoHasLeftIsBoundToHerSlot();
    void beforeTheLineUpNobodyIsOnCourt();
};

void TestBench::withoutARosterItHoldsWhoHasLeft() {
    MatchBuilder match;
    match.started();
    QCOMPARE(inWords(benchOf(match.state(), Team::Home)), QString());
    match.substitute(Team::Home, 7, 3);
    QCOMPARE(inWords(benchOf(match.state(), Team::Home)), QStringLiteral("3/3"));
}

void TestBench::theRosterWithoutSixAndLiberos() {
    MatchBuilder match;
    match.started();
    Roster roster{Team::Home, {}, {}};
    for (const int number : {12, 10, 9, 1, 2, 3, 4, 5, 6, 7})
        roster.players.push_back({ShirtNumber(number), {}, false, false});
    match.add(roster);
    QCOMPARE(inWords(benchOf(match.state(), Team::Home)), QStringLiteral("7 10 12"));
}

void TestBench::whoHasLeftIsBoundToHerSlot() {
    MatchBuilder match;
    match.started().substitute(Team::Home, 7, 3).substitute(Team::Home, 3, 7);
    QCOMPARE(inWords(benchOf(match.state(), Team::Home)), QStringLiteral("7/3"));
    QCOMPARE(inWords(sixOf(match.state(), Team::Home)), QStringLiteral("1/1 2/2 3/3 4/4 5/5 6/6"));
}

void TestBench::beforeTheLineUpNobodyIsOnCourt() {
    MatchBuilder match;
    match.open();
    QVERIFY(sixOf(match.state(), Team::Home).empty());
}

QTEST_GUILESS_MAIN(TestBench)
#include "tst_bench.moc"
