// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/ways.h"
#include "tests/ui/dialogs/hands.h"
#include "tests/ui/table/opentable.h"
#include "ui/table/cardbar.h"

#include <QLineEdit>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

CardBar& bar(OpenTable& table) {
    return *table.find<CardBar>("cardBar");
}

MatchBuilder international() {
    MatchBuilder match;
    return match.open(5, *publishedRulebook(QStringLiteral("international")))
        .toss(Team::Home)
        .lineUp(Team::Home, {1, 2, 3, 4, 5, 6}, {ShirtNumber(9)})
        .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16})
        .start();
}

const Member coach = BenchRole::Coach;
const Member three = ShirtNumber(3);

} // namespace

class TestCardBar : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void keysGiveACard();
    void theNextRungIsProposed();
    void theRefereeMayGiveAnotherLevel();
    void aRoleOfTheBenchIsChosenByItsKey_data();
    void aRoleOfTheBenchIsChosenByItsKey();
    void aMouseGivesADelay();
    void aFingerGivesACardToTheCoach();
    void aRequestIsWrittenDown();
    void aLateReplacementIsLetPassOnce();
    void nothingIsRecordedWithoutAMember();
    void bothSidesHaveTheirKey();
    void aTeamIsWarnedButOnceWhereTheRulebookSaysSo();
    void aSecondDelayIsAPenalty();
};

void TestCardBar::keysGiveACard() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_G);
    table.type("3");
    QVERIFY2(bar(table).sentence().startsWith(u"Warning: no point"), qPrintable(bar(table).sentence()));
    table.find<QLineEdit>("cardWhy")->setFocus(Qt::TabFocusReason);
    table.type("arguing");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Sanction>(table.newest().entry) ==
            (Sanction{Team::Home, ShirtNumber(3), SanctionLevel::Warning, QStringLiteral("arguing")}));
    QVERIFY(!bar(table).isVisible());
}

void TestCardBar::theNextRungIsProposed() {
    OpenTable table(MatchBuilder().started().add(Sanction{Team::Home, three, SanctionLevel::Warning, {}}));
    table.press(Qt::Key_G);
    table.type("3");
    QVERIFY2(bar(table).sentence().startsWith(u"Penalty: point and serve to QRL"), qPrintable(bar(table).sentence()));
    table.press(Qt::Key_Return);
    QCOMPARE(std::get<Sanction>(table.newest().entry).level, SanctionLevel::Penalty);
    QCOMPARE(table.score().visitors, 1);
    QCOMPARE(table.set().serving, Team::Visitors);
}

void TestCardBar::theRefereeMayGiveAnotherLevel() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_H);
    table.type("13");
    table.press(Qt::Key_Q);
    QVERIFY(bar(table).sentence().contains(u"out for the rest of the match"));
    table.press(Qt::Key_Return);
    QCOMPARE(std::get<Sanction>(table.newest().entry).level, SanctionLevel::Disqualification);
}

void TestCardBar::aRoleOfTheBenchIsChosenByItsKey_data() {
    QTest::addColumn<Qt::Key>("key");
    QTest::addColumn<BenchRole>("role");
    QTest::newRow("coach") << Qt::Key_C << BenchRole::Coach;
    QTest::newRow("assistant") << Qt::Key_A << BenchRole::AssistantCoach;
    QTest::newRow("second assistant") << Qt::Key_S << BenchRole::SecondAssistantCoach;
    QTest::newRow("therapist") << Qt::Key_T << BenchRole::Therapist;
    QTest::newRow("doctor") << Qt::Key_O << BenchRole::Doctor;
    QTest::newRow("bench") << Qt::Key_B << BenchRole::Other;
}

void TestCardBar::aRoleOfTheBenchIsChosenByItsKey() {
    QFETCH(Qt::Key, key);
    QFETCH(BenchRole, role);
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_G);
    table.press(key);
    table.press(Qt::Key_Return);
    QVERIFY(std::get<Sanction>(table.newest().entry).who == Member(role));
}

void TestCardBar::aMouseGivesADelay() {
    OpenTable table(MatchBuilder().started());
    table.click("cardRight");
    table.click("cardWhat1");
    QTest::mouseClick(bar(table).findChild<QAbstractButton*>(QStringLiteral("barRecord")), Qt::LeftButton);
    QVERIFY(std::get<DelaySanction>(table.newest().entry) == (DelaySanction{Team::Visitors, DelayLevel::Warning, {}}));
}

void TestCardBar::aFingerGivesACardToTheCoach() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_G);
    tap(*table.find("cardRole0"));
    tap(*table.find("cardLevel1"));
    table.press(Qt::Key_Return); // the button lies beyond the screen of the tests
    QVERIFY(std::get<Sanction>(table.newest().entry) == (Sanction{Team::Home, coach, SanctionLevel::Penalty, {}}));
}

void TestCardBar::aRequestIsWrittenDown() {
    // Source: FIVB Official Volleyball Rules 2025-2028, 15.11.
    OpenTable table(international());
    table.press(Qt::Key_G);
    table.press(Qt::Key_R);
    QVERIFY(bar(table).sentence().startsWith(u"Refused and written down"));
    table.press(Qt::Key_Return);
    QCOMPARE(std::get<ImproperRequest>(table.newest().entry).team, Team::Home);
    table.press(Qt::Key_G);
    table.press(Qt::Key_R);
    QVERIFY2(bar(table).sentence().contains(u"delay"), qPrintable(bar(table).sentence()));
    QVERIFY(!bar(table).sentence().startsWith(u"Refused"));
}

void TestCardBar::aLateReplacementIsLetPassOnce() {
    // Source: FIVB Official Volleyball Rules 2025-2028, 19.3.2.5, 19.3.2.6.
    OpenTable table(international());
    table.press(Qt::Key_G);
    table.press(Qt::Key_L);
    QVERIFY(bar(table).sentence().startsWith(u"Let pass"));
    table.press(Qt::Key_Return);
    QCOMPARE(std::get<LateReplacement>(table.newest().entry).team, Team::Home);
    const std::size_t before = table.recorded();
    table.press(Qt::Key_G);
    table.press(Qt::Key_L); // not offered any more
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before);
}

void TestCardBar::nothingIsRecordedWithoutAMember() {
    OpenTable table(MatchBuilder().started());
    const std::size_t before = table.recorded();
    table.press(Qt::Key_G);
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before);
    QCOMPARE(table.window().focusWidget()->objectName(), QStringLiteral("cardNumber"));
    table.press(Qt::Key_Escape);
    QCOMPARE(table.recorded(), before);
}

void TestCardBar::bothSidesHaveTheirKey() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_G);
    QCOMPARE(bar(table).team(), Team::Home);
    table.press(Qt::Key_Escape);
    table.press(Qt::Key_H);
    QCOMPARE(bar(table).team(), Team::Visitors);
}

void TestCardBar::aTeamIsWarnedButOnceWhereTheRulebookSaysSo() {
    // Source: FIVB Official Volleyball Rules 2025-2028, diagram 9a: minor misconduct, any member of the team.
    const MatchState warned = international().add(Sanction{Team::Home, three, SanctionLevel::Warning, {}}).state();
    QCOMPARE(nextCard(warned, Team::Home, coach)->level, SanctionLevel::Penalty);
    QCOMPARE(nextCard(warned, Team::Visitors, coach)->level, SanctionLevel::Warning);
    const MatchState school =
        MatchBuilder().started().add(Sanction{Team::Home, three, SanctionLevel::Warning, {}}).state();
    QCOMPARE(nextCard(school, Team::Home, coach)->level, SanctionLevel::Warning);
}

void TestCardBar::aSecondDelayIsAPenalty() {
    MatchBuilder match;
    match.started();
    QCOMPARE(nextDelay(match.state(), Team::Home), DelayLevel::Warning);
    match.add(DelaySanction{Team::Home, DelayLevel::Warning, {}});
    QCOMPARE(nextDelay(match.state(), Team::Home), DelayLevel::Penalty);
    QCOMPARE(nextDelay(match.state(), Team::Visitors), DelayLevel::Warning);
}

QTEST_MAIN(TestCardBar)
#include "tst_cardbar.moc"
