// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/hands.h"
#include "tests/ui/table/opentable.h"
#include "ui/table/deckview.h"
#include "ui/table/keybutton.h"
#include "ui/table/liberobar.h"

#include <algorithm>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

/// Home 1 to 6 by court position, home serves; liberos 8 and 9.
MatchBuilder withTwoLiberos() {
    MatchBuilder match;
    return match.open()
        .toss(Team::Home)
        .lineUp(Team::Home, {1, 2, 3, 4, 5, 6}, {ShirtNumber(8), ShirtNumber(9)})
        .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16})
        .start();
}

LiberoBar& bar(OpenTable& table) {
    return *table.find<LiberoBar>("liberoBar");
}

} // namespace

class TestLiberoBar : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void keysBringHerIn();
    void aMouseBringsHerIn();
    void aFingerBringsHerIn();
    void onlyTheBackRowIsOffered();
    void sheGoesOutByTwoKeys();
    void oneLiberoComesForTheOther();
    void ofTwoLiberosTheNumberIsAsked();
    void enterAloneTakesWhatIsProposed();
    void thePictureShowsHerWithHerMark();
    void theButtonSaysWhoIsOn();
    void anOpenRallyIsSaidBeforeEnter();
    void theMarkOfHerServeStaysReachable();
    void noServeIsOfferedWhereSheMayNot();
    void escapeRecordsNothing();
    void whomSheMayComeInForIsOffered();
    void whereNobodyMayGoAllAreOfferedAndTheReasonIsSaid();
    void sheComesInBeforeTheFirstServe();
};

void TestLiberoBar::keysBringHerIn() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_F);
    QVERIFY(bar(table).isVisible());
    table.type("5");
    QCOMPARE(bar(table).sentence(), QStringLiteral("Enter records."));
    table.press(Qt::Key_Return);
    QVERIFY(std::get<LiberoIn>(table.newest().entry) == (LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(5)}));
    QVERIFY(!bar(table).isVisible());
}

void TestLiberoBar::aMouseBringsHerIn() {
    OpenTable table(MatchBuilder().started());
    table.click("liberoRight");
    table.click("backRow15");
    QTest::mouseClick(bar(table).findChild<QAbstractButton*>(QStringLiteral("barRecord")), Qt::LeftButton);
    QVERIFY(std::get<LiberoIn>(table.newest().entry) == (LiberoIn{Team::Visitors, ShirtNumber(19), ShirtNumber(15)}));
}

void TestLiberoBar::aFingerBringsHerIn() {
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_F);
    tap(*table.find("backRow6"));
    tap(*bar(table).findChild<QAbstractButton*>(QStringLiteral("barRecord")));
    QCOMPARE(std::get<LiberoIn>(table.newest().entry).replaced, ShirtNumber(6));
}

void TestLiberoBar::onlyTheBackRowIsOffered() {
    // Source: FIVB Official Volleyball Rules 2025-2028, 19.3.1.1 and 7.4.1: 1, 6 and 5 are the back row.
    OpenTable table(MatchBuilder().started());
    table.press(Qt::Key_F);
    for (const char* number : {"backRow1", "backRow5", "backRow6"})
        QVERIFY2(table.find(number)->isVisible(), number);
    for (const char* number : {"backRow2", "backRow3", "backRow4"})
        QVERIFY2(!table.window().findChild<QWidget*>(QLatin1String(number)), number);
}

void TestLiberoBar::sheGoesOutByTwoKeys() {
    OpenTable table(MatchBuilder().started().add(LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(5)}).play("h"));
    table.press(Qt::Key_F);
    QVERIFY(bar(table).title().contains(u"9 on court for 5"));
    table.press(Qt::Key_Return);
    QVERIFY(std::get<LiberoOut>(table.newest().entry) == (LiberoOut{Team::Home, ShirtNumber(9)}));
    QVERIFY(!table.set().teams.home.libero);
}

void TestLiberoBar::oneLiberoComesForTheOther() {
    OpenTable table(withTwoLiberos().add(LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(5)}).play("h"));
    table.press(Qt::Key_F);
    table.press(Qt::Key_X);
    table.press(Qt::Key_Return);
    QVERIFY(std::get<LiberoExchange>(table.newest().entry) ==
            (LiberoExchange{Team::Home, ShirtNumber(8), ShirtNumber(9)}));
}

void TestLiberoBar::ofTwoLiberosTheNumberIsAsked() {
    OpenTable table(withTwoLiberos());
    table.press(Qt::Key_F);
    QCOMPARE(table.find<QLineEdit>("liberoNumber")->placeholderText(), QStringLiteral("8"));
    table.type("9"); // it can only be hers: on to the second field
    QCOMPARE(table.window().focusWidget()->objectName(), QStringLiteral("liberoFor"));
    table.type("6");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<LiberoIn>(table.newest().entry) == (LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(6)}));
}

void TestLiberoBar::enterAloneTakesWhatIsProposed() {
    OpenTable table(withTwoLiberos());
    table.press(Qt::Key_F);
    QVERIFY(bar(table).sentence().startsWith(u"In for 1, "));
    table.press(Qt::Key_Return);
    QVERIFY(std::get<LiberoIn>(table.newest().entry) == (LiberoIn{Team::Home, ShirtNumber(8), ShirtNumber(1)}));
}

void TestLiberoBar::thePictureShowsHerWithHerMark() {
    const MatchState state = MatchBuilder().started().add(LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(5)}).state();
    const std::vector<CourtPlayer> players = deckViewOf(state).court;
    const auto libero = std::ranges::find(players, ShirtNumber(9), &CourtPlayer::number);
    QVERIFY(libero != players.end());
    QVERIFY(libero->libero);
    QCOMPARE(libero->position, CourtPosition(5));
    QVERIFY(std::ranges::find(players, ShirtNumber(5), &CourtPlayer::number) == players.end());
}

void TestLiberoBar::theButtonSaysWhoIsOn() {
    OpenTable table(MatchBuilder().started());
    QCOMPARE(table.find("liberoLeft")->accessibleName(), QStringLiteral("Libero, not on"));
    table.press(Qt::Key_F);
    table.type("5");
    table.press(Qt::Key_Return);
    QCOMPARE(table.find("liberoLeft")->accessibleName(), QStringLiteral("Libero, 9 on"));
}

void TestLiberoBar::anOpenRallyIsSaidBeforeEnter() {
    OpenTable table(MatchBuilder().started(Team::Visitors).play("s"));
    const std::size_t before = table.recorded();
    table.press(Qt::Key_F);
    table.type("5");
    QVERIFY(bar(table).sentence().startsWith(u"The rally is not decided"));
    table.press(Qt::Key_Return);
    QCOMPARE(table.recorded(), before);
}

void TestLiberoBar::theMarkOfHerServeStaysReachable() {
    OpenTable table(MatchBuilder().started().play("s"));
    table.press(Qt::Key_F);
    table.press(Qt::Key_Return); // in a rally only the mark can be meant
    QVERIFY(std::get<LiberoServe>(table.newest().entry) == (LiberoServe{Team::Home, ShirtNumber(9)}));
}

void TestLiberoBar::noServeIsOfferedWhereSheMayNot() {
    // Source: FIVB Official Volleyball Rules 2025-2028, 19.3.1.3.
    MatchBuilder match;
    match.open(5, *publishedRulebook(QStringLiteral("international")))
        .toss(Team::Home)
        .lineUp(Team::Home, {1, 2, 3, 4, 5, 6}, {ShirtNumber(9)})
        .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16})
        .start();
    OpenTable table(match);
    table.press(Qt::Key_F);
    QVERIFY(!table.window().findChild<QAbstractButton*>(QStringLiteral("liberoMove1")));
}

void TestLiberoBar::escapeRecordsNothing() {
    OpenTable table(MatchBuilder().started());
    const std::size_t before = table.recorded();
    table.press(Qt::Key_F);
    table.type("5");
    table.press(Qt::Key_Escape);
    QCOMPARE(table.recorded(), before);
    table.press(Qt::Key_Left);
    QCOMPARE(table.score().home, 1);
}

void TestLiberoBar::whomSheMayComeInForIsOffered() {
    // Source: FIVB Official Volleyball Rules 2025-2028, 19.3.1.3: not for the server.
    MatchBuilder match;
    match.open(5, *publishedRulebook(QStringLiteral("international")))
        .toss(Team::Home)
        .lineUp(Team::Home, {1, 2, 3, 4, 5, 6}, {ShirtNumber(9)})
        .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}, {ShirtNumber(19)})
        .start();
    OpenTable table(match);
    table.press(Qt::Key_F);
    QVERIFY(table.find("backRow5")->isVisible() && table.find("backRow6")->isVisible());
    QVERIFY(!table.window().findChild<QWidget*>(QStringLiteral("backRow1")));
    table.press(Qt::Key_J); // who receives has all three
    QVERIFY(table.find("backRow11")->isVisible());
}

void TestLiberoBar::whereNobodyMayGoAllAreOfferedAndTheReasonIsSaid() {
    // Source: FIVB Official Volleyball Rules 2025-2028, 19.3.2.1: a rally between two replacements.
    OpenTable table(MatchBuilder()
                        .started(Team::Visitors)
                        .add(LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(5)})
                        .play("v")
                        .add(LiberoOut{Team::Home, ShirtNumber(9)}));
    table.press(Qt::Key_F);
    QVERIFY(table.find("backRow3")->isVisible());
    table.click("backRow6");
    QVERIFY2(bar(table).sentence().contains(u"No rally lies between"), qPrintable(bar(table).sentence()));
}

void TestLiberoBar::sheComesInBeforeTheFirstServe() {
    // Source: FIVB Official Volleyball Rules 2025-2028, 19.3.2.3: once the line-up is checked.
    MatchBuilder match;
    match.open()
        .toss(Team::Home)
        .lineUp(Team::Home, {1, 2, 3, 4, 5, 6}, {ShirtNumber(9)})
        .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16});
    OpenTable table(match);
    table.press(Qt::Key_F);
    table.type("6");
    table.press(Qt::Key_Return);
    QVERIFY(std::get<LiberoIn>(table.newest().entry) == (LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(6)}));
    QVERIFY(!table.set().started);
}

QTEST_MAIN(TestLiberoBar)
#include "tst_liberobar.moc"
