// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/tablewords.h"

#include "tests/support/matchbuilder.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

class TestTableWords : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void noticesAreSaidAsSentences_data();
    void noticesAreSaidAsSentences();
    void aChangeOfSidesIsToldWhereTheRulebookWantsIt();
    void theLiberoIsSaidInAWord_data();
    void theLiberoIsSaidInAWord();
    void clocksCountInMinutesAndSeconds_data();
    void clocksCountInMinutesAndSeconds();
    void aReadOnlyWindowNamesTheOther();
};

// clang-format off
void TestTableWords::noticesAreSaidAsSentences_data() {
    QTest::addColumn<Notice>("notice");
    QTest::addColumn<QString>("words");
    using enum NoticeKind;
    QTest::newRow("substitutions") << Notice{SubstitutionsUsed, Team::Home, 16, 18} << "Tell the second referee: SAL has used 16 of 18 substitutions.";
    QTest::newRow("last time-out") << Notice{LastTimeOutUsed, Team::Visitors, 2, 2} << "Tell the second referee: QRL has taken its last time-out.";
    QTest::newRow("set point")     << Notice{SetPoint, Team::Home, 25, 0}           << "Set point SAL";
    QTest::newRow("match point")   << Notice{MatchPoint, Team::Home, 25, 0}         << "Match point SAL";
    QTest::newRow("set won")       << Notice{SetWonAtScore, Team::Home, 2, 0}       << "SAL wins the set 2–1: confirm with the second referee.";
    const auto about = [](NoticeKind kind) { return Notice{kind, Team::Home, 8, 0, ShirtNumber(4), ShirtNumber(7), Slot(3)}; };
    QTest::newRow("sides")         << about(SidesChangeDue)    << "SAL has 8 points, and the teams change sides.";
    QTest::newRow("silent")        << about(WrongServerSilent) << "Number 4 of SAL is at the service line for number 7: say nothing before the serve.";
    QTest::newRow("wrong server")  << about(WrongServerTold)   << "Tell the second referee now: number 4 of SAL is at serve for number 7.";
    QTest::newRow("vacant place")  << about(VacantServer)      << "The vacant place of SAL is to serve, in slot III: the rally is lost, record no serve.";
    QTest::newRow("libero")        << about(LiberoMustLeave)   << "Libero 4 of SAL has come to the front row: she goes out before the serve.";
    QTest::newRow("improper")      << about(ImproperRequest)   << "SAL has had its improper request: the next one is a delay.";
}
// clang-format on

void TestTableWords::aChangeOfSidesIsToldWhereTheRulebookWantsIt() {
    Rulebook telling = highSchool();
    telling.sideChangeNotice = true;
    const MatchState state = MatchBuilder().open(5, telling).state();
    QCOMPARE(sentence(Notice{NoticeKind::SidesChangeDue, Team::Home, 8, 0}, state),
             QStringLiteral("Tell the referees: SAL has 8 points, and the teams change sides."));
}

void TestTableWords::noticesAreSaidAsSentences() {
    QFETCH(Notice, notice);
    const MatchState state = MatchBuilder().started().play("hhv").state();
    QTEST(sentence(notice, state), "words");
}

// clang-format off
void TestTableWords::theLiberoIsSaidInAWord_data() {
    QTest::addColumn<bool>("named");
    QTest::addColumn<int>("serving"); // her number, 0 for nobody
    QTest::addColumn<int>("slot");    // where she has served, 0 for nowhere
    QTest::addColumn<LiberoServeRule>("rule");
    QTest::addColumn<QString>("words");
    QTest::newRow("none")     << false << 0 << 0 << LiberoServeRule::OneSlot << "none";
    QTest::newRow("not yet")  << true  << 0 << 0 << LiberoServeRule::OneSlot << "not on";
    QTest::newRow("serves")   << true  << 9 << 4 << LiberoServeRule::OneSlot << "9 serves";
    QTest::newRow("one slot") << true  << 0 << 4 << LiberoServeRule::OneSlot << "in IV";
    QTest::newRow("may not")  << true  << 0 << 0 << LiberoServeRule::Never   << "not on";
}
// clang-format on

void TestTableWords::theLiberoIsSaidInAWord() {
    QFETCH(bool, named);
    QFETCH(int, serving);
    QFETCH(int, slot);
    QFETCH(LiberoServeRule, rule);
    TeamInSet team;
    team.lineUp = LineUp{};
    if (named)
        team.liberos = {ShirtNumber(9)};
    if (serving)
        team.liberoServing = ShirtNumber(serving);
    if (slot)
        team.liberoSlot = Slot(slot);
    QTEST(liberoState(team, rule), "words");
}

// clang-format off
void TestTableWords::clocksCountInMinutesAndSeconds_data() {
    QTest::addColumn<int>("seconds");
    QTest::addColumn<QString>("words");
    QTest::newRow("over")          << 0   << "0:00";
    QTest::newRow("seconds")       << 9   << "0:09";
    QTest::newRow("a minute")      << 60  << "1:00";
    QTest::newRow("three minutes") << 179 << "2:59";
}
// clang-format on

void TestTableWords::clocksCountInMinutesAndSeconds() {
    QFETCH(int, seconds);
    QTEST(clockWord(seconds), "words");
}

void TestTableWords::aReadOnlyWindowNamesTheOther() {
    QVERIFY(readOnlyBecause(QStringLiteral("table, process 4711")).contains(u"table, process 4711"));
    QVERIFY(!readOnlyBecause({}).contains(u'('));
}

QTEST_GUILESS_MAIN(TestTableWords)
#include "tst_tablewords.moc"
