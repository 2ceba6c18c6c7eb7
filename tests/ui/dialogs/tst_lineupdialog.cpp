// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/dialogmatches.h"
#include "ui/dialogs/lineupdialog.h"
#include "ui/dialogs/lineuppanel.h"
#include "ui/dialogs/shirtfield.h"

#include <QLabel>
#include <QPushButton>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

using namespace testing;

namespace {

LineUpPanel* panelOf(LineUpDialog& dialog, Team team) {
    for (auto* panel : dialog.findChildren<LineUpPanel*>()) {
        if (panel->team() == team)
            return panel;
    }
    qFatal("no panel");
}

MatchState tossed(Team servesFirst = Team::Home) {
    return withRosters().toss(servesFirst).state();
}

QPushButton* record(LineUpDialog& dialog) {
    return childOf<QPushButton>(dialog, "record");
}

/// 99: the first 9 is a number of the roster and goes on to the next field; back there, a second one makes it longer.
void typeNumberNotOnTheRoster(LineUpDialog& dialog) {
    typeInto(dialog, u"9"_s);
    QTest::keyClick(dialog.focusWidget(), Qt::Key_Backspace);
    typeInto(dialog, u"99"_s);
}

QString textIn(LineUpPanel* panel, const char* field) {
    return childOf<ShirtField>(*panel, field)->text();
}

} // namespace

class LineUpDialogTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aWholeNumberGoesOnToTheNextPosition();
    void theDeadlineCountsDownBesideTheButtons();
    void anAmbiguousDigitWaitsForSpace();
    void backspaceInAnEmptyPlaceGoesBack();
    void afterTheLastFieldTheOtherTeamHasTheKeyboard();
    void bothLineUpsAreRecordedAtOnce();
    void eitherTeamMayComeFirst();
    void aHalfFilledLineUpIsNotRecorded();
    void aNumberTwiceIsSaidAtOnceAndNotRecorded();
    void theRefereeMayLetItStandWithAReason();
    void aNewFindingTakesTheRefereesWordBack();
    void aNumberThatTheRosterDoesNotHaveCanBeTyped();
    void doubleZeroIsNoNumber();
    void numbersMayBeTapped();
    void theEarlierLineUpComesOnlyWhenAskedFor();
    void theEarlierLineUpMayBeTurned();
    void theRostersLiberosComeOnlyWhenAskedFor();
    void aRecordedLineUpIsShownAndNotRecordedAgain();
    void theServingOrderIsShown_data();
    void theServingOrderIsShown();
    void afterTheStartNothingIsRecorded();
};

void LineUpDialogTest::theDeadlineCountsDownBesideTheButtons() {
    LineUpDialog dialog(tossed(), Team::Home);
    int asked = 0;
    dialog.countDown([&asked] {
        static const LineUpDialog::Deadline said[] = {{u"Line-ups due 0:01"_s, false}, {u"Line-ups late"_s, true}, {}};
        return said[std::min(asked++, 2)];
    });
    showActive(dialog);
    QWidget* const keyboard = dialog.focusWidget();
    const auto* words = childOf<QLabel>(dialog, "deadline");
    QCOMPARE(words->text(), u"Line-ups due 0:01"_s);
    QVERIFY(words->isVisible() && !words->font().bold());
    QTRY_COMPARE_WITH_TIMEOUT(words->text(), u"Line-ups late"_s, 3000);
    QVERIFY(words->font().bold());
    QTRY_VERIFY_WITH_TIMEOUT(!words->isVisible(), 3000);
    QCOMPARE(dialog.focusWidget(), keyboard);
}

void LineUpDialogTest::aWholeNumberGoesOnToTheNextPosition() {
    LineUpDialog dialog(tossed(), Team::Home);
    typeInto(dialog, u"347814"_s); // 3 4 7 8 are whole, as no number of the roster goes on from them; then 14
    LineUpPanel* home = panelOf(dialog, Team::Home);
    QCOMPARE(textIn(home, "position1"), u"3"_s);
    QCOMPARE(textIn(home, "position4"), u"8"_s);
    QCOMPARE(textIn(home, "position5"), u"14"_s);
    QCOMPARE(dialog.focusWidget()->objectName(), u"position6"_s);
}

void LineUpDialogTest::anAmbiguousDigitWaitsForSpace() {
    LineUpDialog dialog(tossed(), Team::Home);
    typeInto(dialog, u"1"_s);
    QCOMPARE(dialog.focusWidget()->objectName(), u"position1"_s);
    typeInto(dialog, u" 3"_s);
    LineUpPanel* home = panelOf(dialog, Team::Home);
    QCOMPARE(textIn(home, "position1"), u"1"_s);
    QCOMPARE(textIn(home, "position2"), u"3"_s);
}

void LineUpDialogTest::backspaceInAnEmptyPlaceGoesBack() {
    LineUpDialog dialog(tossed(), Team::Home);
    showActive(dialog);
    typeInto(dialog, u"3"_s);
    QTest::keyClick(dialog.focusWidget(), Qt::Key_Backspace);
    QCOMPARE(dialog.focusWidget()->objectName(), u"position1"_s);
    typeInto(dialog, u"4"_s);
    QCOMPARE(textIn(panelOf(dialog, Team::Home), "position1"), u"4"_s);
}

void LineUpDialogTest::afterTheLastFieldTheOtherTeamHasTheKeyboard() {
    LineUpDialog dialog(tossed(), Team::Home);
    typeInto(dialog, u"34789"_s + u"10"_s + u"7"_s + u"2"_s + u"15"_s); // six, captain, two liberos
    const LineUpPanel* visitors = panelOf(dialog, Team::Visitors);
    QVERIFY(visitors->isAncestorOf(dialog.focusWidget()));
    QCOMPARE(dialog.focusWidget()->objectName(), u"position1"_s);
}

void LineUpDialogTest::bothLineUpsAreRecordedAtOnce() {
    LineUpDialog dialog(tossed(), Team::Home);
    typeInto(dialog, u"347891072"_s);
    panelOf(dialog, Team::Visitors)->begin();
    typeInto(dialog, u"2 458910"_s);
    QCOMPARE(record(dialog)->text(), u"Record both line-ups"_s);
    QTest::mouseClick(record(dialog), Qt::LeftButton);
    QCOMPARE(dialog.QDialog::result(), int(QDialog::Accepted));
    const std::vector<LineUpGiven> given = dialog.result();
    QCOMPARE(given.size(), 2U);
    QCOMPARE(given[0].lineUp, (LineUp{Team::Home, six({3, 4, 7, 8, 9, 10}), ShirtNumber(7), {ShirtNumber(2)}}));
    QCOMPARE(given[1].lineUp, (LineUp{Team::Visitors, six({2, 4, 5, 8, 9, 10}), {}, {}}));
    QVERIFY(!given[0].overruled && !given[1].overruled);
}

void LineUpDialogTest::eitherTeamMayComeFirst() {
    LineUpDialog dialog(tossed(), Team::Visitors);
    typeInto(dialog, u"2 458910"_s);
    QCOMPARE(record(dialog)->text(), u"Record line-up of QRL"_s);
    QVERIFY(record(dialog)->isEnabled());
    QCOMPARE(dialog.result().size(), 1U);
    QCOMPARE(dialog.result().front().lineUp.team, Team::Visitors);
}

void LineUpDialogTest::aHalfFilledLineUpIsNotRecorded() {
    LineUpDialog dialog(tossed(), Team::Home);
    QVERIFY(!record(dialog)->isEnabled());
    typeInto(dialog, u"3478"_s);
    QVERIFY(!record(dialog)->isEnabled());
    QCOMPARE(childOf<QLabel>(dialog, "missing")->text(), u"SAL: still empty: 5, 6."_s);
    QVERIFY(dialog.result().empty());
}

void LineUpDialogTest::aNumberTwiceIsSaidAtOnceAndNotRecorded() {
    LineUpDialog dialog(tossed(), Team::Home);
    typeInto(dialog, u"3"_s);
    LineUpPanel* home = panelOf(dialog, Team::Home);
    QCOMPARE(childOf<QLabel>(*home, "sentences")->text(), QString());
    typeInto(dialog, u"3"_s);
    QVERIFY(childOf<QLabel>(*home, "sentences")->text().contains(u"Number 3 stands twice"_s));
    QVERIFY(childOf<ShirtField>(*home, "position1")->property("problem").toBool());
    QVERIFY(!childOf<ShirtField>(*home, "position3")->property("problem").toBool());
    typeInto(dialog, u"7891012"_s);
    QVERIFY(!record(dialog)->isEnabled());
}

void LineUpDialogTest::theRefereeMayLetItStandWithAReason() {
    LineUpDialog dialog(tossed(), Team::Home);
    showActive(dialog);
    typeInto(dialog, u"34789"_s);
    typeNumberNotOnTheRoster(dialog);
    LineUpPanel* home = panelOf(dialog, Team::Home);
    QVERIFY(childOf<QLabel>(*home, "sentences")->text().contains(u"99"_s));
    QTest::mouseClick(childOf<QPushButton>(*home, "letStand"), Qt::LeftButton);
    QVERIFY(!record(dialog)->isEnabled()); // the reason is missing
    typeInto(dialog, u"late shirt"_s);
    QVERIFY(record(dialog)->isEnabled());
    QCOMPARE(dialog.result().front().overruled, std::optional(u"late shirt"_s));
}

void LineUpDialogTest::aNewFindingTakesTheRefereesWordBack() {
    LineUpDialog dialog(tossed(), Team::Home);
    showActive(dialog);
    typeInto(dialog, u"34789"_s);
    typeNumberNotOnTheRoster(dialog);
    LineUpPanel* home = panelOf(dialog, Team::Home);
    childOf<QPushButton>(*home, "letStand")->click();
    typeInto(dialog, u"reason"_s);
    childOf<ShirtField>(*home, "position1")->setText(u"98"_s);
    QVERIFY(!childOf<QPushButton>(*home, "letStand")->isChecked());
    QVERIFY(!record(dialog)->isEnabled());
}

void LineUpDialogTest::aNumberThatTheRosterDoesNotHaveCanBeTyped() {
    LineUpDialog dialog(tossed(), Team::Home);
    showActive(dialog);
    typeInto(dialog, u"34781"_s);
    typeInto(dialog, u"0"_s);
    typeNumberNotOnTheRoster(dialog);
    QCOMPARE(textIn(panelOf(dialog, Team::Home), "position6"), u"99"_s);
    QCOMPARE(dialog.focusWidget()->objectName(), u"captain"_s);
}

void LineUpDialogTest::doubleZeroIsNoNumber() {
    LineUpDialog dialog(tossed(), Team::Home);
    typeInto(dialog, u"34789"_s);
    typeInto(dialog, u"00"_s);
    QVERIFY(childOf<ShirtField>(*panelOf(dialog, Team::Home), "position6")->property("problem").toBool());
    QVERIFY(!record(dialog)->isEnabled());
}

void LineUpDialogTest::numbersMayBeTapped() {
    LineUpDialog dialog(tossed(), Team::Home);
    showActive(dialog);
    LineUpPanel* home = panelOf(dialog, Team::Home);
    for (const char* chip : {"chip1", "chip3", "chip4", "chip7", "chip8", "chip9"})
        QTest::mouseClick(childOf<QPushButton>(*home, chip), Qt::LeftButton);
    QCOMPARE(home->lineUp().positions, six({1, 3, 4, 7, 8, 9}));
    QVERIFY(childOf<QPushButton>(*home, "chip3")->isEnabled()); // the captain is one of the six
    QTest::keyClick(dialog.focusWidget(), Qt::Key_Tab);
    QVERIFY(!childOf<QPushButton>(*home, "chip3")->isEnabled()); // a libero is not
    QVERIFY(childOf<QPushButton>(*home, "chip10")->isEnabled());
}

void LineUpDialogTest::theEarlierLineUpComesOnlyWhenAskedFor() {
    MatchBuilder match = setWon();
    match.add(SetEnded{});
    LineUpDialog dialog(match.state(), Team::Home);
    LineUpPanel* home = panelOf(dialog, Team::Home);
    QCOMPARE(home->readiness(), LineUpPanel::Readiness::Untouched);
    QTest::mouseClick(childOf<QPushButton>(*home, "asEarlier"), Qt::LeftButton);
    QCOMPARE(home->lineUp().positions, six({1, 3, 4, 7, 8, 9}));
    QVERIFY(record(dialog)->isEnabled());
}

void LineUpDialogTest::theEarlierLineUpMayBeTurned() {
    MatchBuilder match = setWon();
    match.add(SetEnded{});
    LineUpDialog dialog(match.state(), Team::Home);
    LineUpPanel* home = panelOf(dialog, Team::Home);
    QTest::mouseClick(childOf<QPushButton>(*home, "asEarlier"), Qt::LeftButton);
    const LineUp before = home->lineUp();
    QTest::mouseClick(childOf<QPushButton>(*home, "rotate"), Qt::LeftButton);
    QCOMPARE(home->lineUp().positions, six({3, 4, 7, 8, 9, 1}));
    QCOMPARE(home->lineUp().liberos, before.liberos);
    for (int turn = 0; turn < 5; ++turn)
        QTest::mouseClick(childOf<QPushButton>(*home, "rotate"), Qt::LeftButton);
    QCOMPARE(home->lineUp().positions, before.positions);
}

void LineUpDialogTest::theRostersLiberosComeOnlyWhenAskedFor() {
    LineUpDialog dialog(tossed(), Team::Home);
    LineUpPanel* home = panelOf(dialog, Team::Home);
    QVERIFY(home->lineUp().liberos.empty());
    childOf<QPushButton>(*home, "rosterLiberos")->click();
    QCOMPARE(home->lineUp().liberos, (std::vector{ShirtNumber(2)}));
}

void LineUpDialogTest::aRecordedLineUpIsShownAndNotRecordedAgain() {
    LineUpDialog dialog(linedUp().state(), Team::Home);
    LineUpPanel* home = panelOf(dialog, Team::Home);
    QCOMPARE(textIn(home, "position6"), u"9"_s);
    QVERIFY(!record(dialog)->isEnabled());
    childOf<ShirtField>(*home, "position6")->setText(u"10"_s);
    QCOMPARE(dialog.result().size(), 1U);
    QVERIFY(record(dialog)->isEnabled());
}

void LineUpDialogTest::theServingOrderIsShown_data() {
    QTest::addColumn<int>("servesFirst");
    QTest::addColumn<QString>("order");
    // IHSAA Volleyball Scorekeeping Narrative: the receiving team's order begins with position 2
    QTest::newRow("serves") << int(Team::Home) << u"Serving order: I 3, II 4, III 7, IV 8, V 9, VI empty"_s;
    QTest::newRow("receives") << int(Team::Visitors) << u"Serving order: I 4, II 7, III 8, IV 9, V empty, VI 3"_s;
}

void LineUpDialogTest::theServingOrderIsShown() {
    QFETCH(int, servesFirst);
    QFETCH(QString, order);
    LineUpDialog dialog(tossed(static_cast<Team>(servesFirst)), Team::Home);
    typeInto(dialog, u"34789"_s);
    QCOMPARE(childOf<QWidget>(*panelOf(dialog, Team::Home), "order")->accessibleName(), order);
}

void LineUpDialogTest::afterTheStartNothingIsRecorded() {
    LineUpDialog dialog(linedUp().start().state(), Team::Home);
    LineUpPanel* home = panelOf(dialog, Team::Home);
    childOf<ShirtField>(*home, "position6")->setText(u"10"_s);
    QVERIFY(!record(dialog)->isEnabled());
    QVERIFY(childOf<QPushButton>(*home, "letStand")->isHidden());
}

} // namespace setfolio

QTEST_MAIN(setfolio::LineUpDialogTest)
#include "tst_lineupdialog.moc"
