// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/entrylog.h"

#include "tests/support/matchbuilder.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

/// The newest line: "2 SAL point 1, own serve", a struck one in ~.
QString line(const LoggedEntry& entry) {
    const QString team = !entry.words.team                 ? QString()
                         : *entry.words.team == Team::Home ? QStringLiteral("SAL ")
                                                           : QStringLiteral("QRL ");
    const QString words = QStringLiteral("%1 %2%3").arg(entry.words.rally).arg(team, entry.words.words);
    return entry.struck ? QStringLiteral("~%1~").arg(words) : words;
}

std::vector<LoggedEntry> linesOf(const MatchBuilder& match) {
    EntryLog log;
    log.follow(match.entries());
    return log.lines();
}

} // namespace

class TestEntryLog : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void anEntryIsSaidInAFewWords_data();
    void anEntryIsSaidInAFewWords();
    void aTimeOfDayIsSaidWhereItIsKnown();
    void whatIsStruckStaysAndSaysSo();
    void redoSaysThatItStandsAgain();
    void followingIsTheSameAsReadingAnew();
};

// clang-format off
void TestEntryLog::anEntryIsSaidInAFewWords_data() {
    QTest::addColumn<Entry>("entry");
    QTest::addColumn<QString>("words");
    const ShirtNumber seven(7);
    const ShirtNumber one(1);
    QTest::newRow("serve")        << Entry(ServeContacted{})                     << "2 SAL 1 serves";
    QTest::newRow("own serve")    << Entry(RallyWon{Team::Home})                 << "2 SAL point 2, own serve";
    QTest::newRow("wins serve")   << Entry(RallyWon{Team::Visitors})             << "2 QRL point 1, wins the serve";
    QTest::newRow("replay")       << Entry(Replay{Again::Replay})                << "2 SAL replay";
    QTest::newRow("re-serve")     << Entry(Replay{Again::ReServe})               << "2 SAL re-serve";
    QTest::newRow("no serve")     << Entry(NoServe{})                            << "2 QRL point 1, no serve";
    QTest::newRow("substitution") << Entry(Substitution{Team::Home, seven, one}) << "2 SAL 7 in for 1";
    QTest::newRow("time-out")     << Entry(TimeOut{Team::Visitors})              << "2 QRL time-out at 0–1";
    QTest::newRow("libero")       << Entry(LiberoServe{Team::Home, seven})       << "2 SAL libero 7 serves";
    QTest::newRow("penalty")      << Entry(PenaltyPoint{Team::Visitors, {}})     << "2 QRL point 1, penalty";
    QTest::newRow("remark")       << Entry(Remark{QStringLiteral("wet floor")})  << "2 remark: wet floor";
}
// clang-format on

void TestEntryLog::anEntryIsSaidInAFewWords() {
    QFETCH(Entry, entry);
    MatchBuilder match;
    match.started().play("h").add(entry);
    QTEST(line(linesOf(match).back()), "words");
}

void TestEntryLog::aTimeOfDayIsSaidWhereItIsKnown() {
    MatchBuilder match;
    match.open().toss(Team::Home);
    match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16});
    QCOMPARE(linesOf(MatchBuilder(match).add(SetStarted{})).back().words.words, QStringLiteral("set 1 started"));
    match.add(SetStarted{QTime(18, 40)});
    QVERIFY(linesOf(match).back().words.words.startsWith(u"set 1 started "));
    match.play(QByteArray(25, 'h').constData()).add(SetEnded{});
    QCOMPARE(linesOf(match).back().words.words, QStringLiteral("set 1 ended"));
}

void TestEntryLog::whatIsStruckStaysAndSaysSo() {
    MatchBuilder match;
    match.started().play("hh").undo().play("v");
    const auto lines = linesOf(match);
    const std::size_t last = lines.size() - 1;
    QCOMPARE(line(lines[last]), QStringLiteral("2 QRL point 1, wins the serve"));
    QCOMPARE(line(lines[last - 1]), QStringLiteral("2 SAL struck: point 2, own serve"));
    QCOMPARE(line(lines[last - 2]), QStringLiteral("~2 SAL point 2, own serve~"));
}

void TestEntryLog::redoSaysThatItStandsAgain() {
    MatchBuilder match;
    match.started().play("h").undo();
    match.add(Strike{match.last(), {}});
    const auto lines = linesOf(match);
    QCOMPARE(line(lines.back()), QStringLiteral("1 SAL stands again: point 1, own serve"));
    QVERIFY(!lines[lines.size() - 3].struck);
}

void TestEntryLog::followingIsTheSameAsReadingAnew() {
    MatchBuilder match;
    match.started();
    EntryLog followed;
    for (const char* step : {"h", "s", "v", "r", "v", "h"}) {
        match.play(step);
        followed.follow(match.entries());
        match.undo();
        followed.follow(match.entries());
        match.play(step);
        followed.follow(match.entries());
        QVERIFY(followed.lines() == linesOf(match));
    }
}

QTEST_GUILESS_MAIN(TestEntryLog)
#include "tst_entrylog.moc"
