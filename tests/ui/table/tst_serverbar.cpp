// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/hands.h"
#include "tests/ui/table/opentable.h"
#include "ui/table/noticestrip.h"
#include "ui/table/numberfield.h"
#include "ui/table/serverbar.h"

using namespace setfolio;
using namespace setfolio::testing;

namespace {

QString told(OpenTable& table) {
    return table.find<NoticeStrip>("noticeStrip")->view().told.join(u' ');
}

ServerBar& bar(OpenTable& table) {
    return *table.find<ServerBar>("serverBar");
}

/// Home has served two points; 3 has been at the line all the time, where 1 should serve.
MatchBuilder twoPointsOn() {
    MatchBuilder match;
    return match.started().play("hh");
}

} // namespace

class TestServerBar : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void beforeTheContactTheNumberIsNotedAndNothingSaid();
    void afterTheContactTheSecondRefereeIsTold();
    void theRightNumberIsNotRecorded();
    void theRulingTakesThePointsOfTheTermBack();
    void fewerPointsCanBeTakenBack();
    void aMouseRules();
    void aFingerNotesTheNumber();
    void theTermThatHasJustEndedCanBeMeant();
    void thePointThatWonTheServeStays();
    void escapeRulesNothing();
    void whatTheRulebookDoesNotTakeBackIsNotProposed();
};

void TestServerBar::beforeTheContactTheNumberIsNotedAndNothingSaid() {
    // Source: FIVB Official Volleyball Rules 2025-2028, 27.2.2.2: only after the contact.
    OpenTable table(twoPointsOn());
    table.press(Qt::Key_W);
    QVERIFY(bar(table).title().contains(u"SAL 1 should serve"));
    table.type("3");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<ServerSeen>(table.newest().entry) == ServerSeen{ShirtNumber(3)});
    QVERIFY(!bar(table).isVisible());
    QVERIFY2(told(table).contains(u"say nothing before the serve"), qPrintable(told(table)));
}

void TestServerBar::afterTheContactTheSecondRefereeIsTold() {
    OpenTable table(twoPointsOn().add(ServerSeen{ShirtNumber(3)}));
    table.press(Qt::Key_Space);
    QVERIFY2(told(table).contains(u"Tell the second referee now: number 3 of SAL is at serve for number 1."),
             qPrintable(told(table)));
}

void TestServerBar::theRightNumberIsNotRecorded() {
    OpenTable table(twoPointsOn());
    const std::size_t before = table.recorded();
    table.press(Qt::Key_W);
    table.type("1");
    QCOMPARE(bar(table).sentence(), QStringLiteral("She is the right server."));
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before);
}

void TestServerBar::theRulingTakesThePointsOfTheTermBack() {
    // Source: FIVB Official Volleyball Rules 2025-2028, 7.7.1 and 7.7.2.
    OpenTable table(twoPointsOn().add(ServerSeen{ShirtNumber(3)}));
    table.press(Qt::Key_Space);
    table.press(Qt::Key_W);
    QVERIFY2(bar(table).sentence().startsWith(u"Point and serve to QRL; points of SAL taken back: 2."),
             qPrintable(bar(table).sentence()));
    table.press(Qt::Key_Return);
    const auto& ruling = std::get<WrongServer>(table.newest().entry);
    QCOMPARE(ruling.served, ShirtNumber(3));
    QCOMPARE(table.score().home, 0);
    QCOMPARE(table.score().visitors, 1);
    QCOMPARE(table.set().serving, Team::Visitors);
}

void TestServerBar::fewerPointsCanBeTakenBack() {
    OpenTable table(twoPointsOn().add(ServerSeen{ShirtNumber(3)}).play("s"));
    table.press(Qt::Key_W);
    table.find<NumberField>("pointsBack")->selectAll();
    table.type("1");
    table.press(Qt::Key_Return);
    QCOMPARE(table.score().home, 1);
    table.press(Qt::Key_Backspace); // undone, and ruled again without points
    table.press(Qt::Key_W);
    table.find<NumberField>("pointsBack")->selectAll();
    table.type("0");
    table.press(Qt::Key_Return);
    QVERIFY(!std::get<WrongServer>(table.newest().entry).takenBackFrom);
    QCOMPARE(table.score().home, 2);
    QCOMPARE(table.score().visitors, 1);
}

void TestServerBar::aMouseRules() {
    OpenTable table(twoPointsOn().play("s"));
    table.click("whoServes");
    table.click("seen3");
    table.click("ruled1");
    table.click("back1");
    QTest::mouseClick(bar(table).findChild<QAbstractButton*>(QStringLiteral("barRecord")), Qt::LeftButton);
    QCOMPARE(table.score().home, 1);
    QCOMPARE(table.set().serving, Team::Visitors);
}

void TestServerBar::aFingerNotesTheNumber() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_W);
    tap(*table.find("seen4"));
    tap(*bar(table).findChild<QAbstractButton*>(QStringLiteral("barRecord")));
    QCOMPARE(table.set().seen, std::optional(ShirtNumber(4)));
}

void TestServerBar::theTermThatHasJustEndedCanBeMeant() {
    OpenTable table(twoPointsOn().play("v"));
    table.press(Qt::Key_W);
    table.type("3");
    table.press(Qt::Key_R);
    table.press(Qt::Key_B);
    QVERIFY2(bar(table).title().contains(u"SAL 1 should serve"), qPrintable(bar(table).title()));
    QVERIFY2(bar(table).sentence().startsWith(u"QRL has the serve already; points of SAL taken back: 2."),
             qPrintable(bar(table).sentence()));
    table.press(Qt::Key_Return);
    QCOMPARE(table.score().home, 0);
    QCOMPARE(table.score().visitors, 1);
    QCOMPARE(table.set().serving, Team::Visitors);
}

void TestServerBar::thePointThatWonTheServeStays() {
    OpenTable table(MatchBuilder().started().play("hvhhs")); // 2–1 with the serve won back, and one point since
    table.press(Qt::Key_W);
    table.type("5");
    table.press(Qt::Key_R);
    table.press(Qt::Key_Return);
    QCOMPARE(table.score().home, 2);
    QCOMPARE(table.score().visitors, 2);
}

void TestServerBar::escapeRulesNothing() {
    OpenTable table(twoPointsOn());
    const std::size_t before = table.recorded();
    table.press(Qt::Key_W);
    table.type("3");
    table.press(Qt::Key_Escape);
    QCOMPARE(table.recorded(), before);
}

void TestServerBar::whatTheRulebookDoesNotTakeBackIsNotProposed() {
    MatchBuilder match;
    Rulebook keeps = highSchool();
    keeps.wrongServerPoints = TakenBack::NoPoints;
    match.open(5, keeps)
        .toss(Team::Home)
        .lineUp(Team::Home, {1, 2, 3, 4, 5, 6})
        .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16})
        .start();
    OpenTable table(match.play("hhs"));
    table.press(Qt::Key_W);
    table.type("3");
    table.press(Qt::Key_R);
    QCOMPARE(table.find<NumberField>("pointsBack")->number(), std::optional(ShirtNumber(0)));
    table.press(Qt::Key_Return);
    QCOMPARE(table.score().home, 2);
    QCOMPARE(table.score().visitors, 1);
}

QTEST_MAIN(TestServerBar)
#include "tst_serverbar.moc"
