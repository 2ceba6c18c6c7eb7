// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/dialogmatches.h"
#include "ui/dialogs/setdialogs.h"
#include "ui/dialogs/setresult.h"
#include "ui/dialogs/tossdialog.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

using namespace testing;

namespace {

const QLocale unitedStates(QLocale::English, QLocale::UnitedStates);

QPushButton* record(QWidget& dialog) {
    return childOf<QPushButton>(dialog, "record");
}

QStringList textsOf(QWidget& dialog) {
    QStringList texts;
    for (const QLabel* label : dialog.findChildren<QLabel*>())
        texts << label->text();
    return texts;
}

} // namespace

class SetDialogsTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theTossIsRecordedOnlyWhenBothAreChosen();
    void theTossIsChosenByKeys_data();
    void theTossIsChosenByKeys();
    void theTossIsChosenByMouse();
    void aTossAfterTheStartIsRefused();
    void theEndProposesTheTimeAndTakesAnother();
    void aTimeThatIsNoneIsNotRecorded();
    void theEndNamesWinnerLoserAndPoints();
    void theEndOfASetThatIsNotWonIsRefused();
    void theCloseShowsTheSets();
    void theCloseOfAMatchThatGoesOnIsRefused();
    void minutesRunOverMidnight();
};

void SetDialogsTest::theTossIsRecordedOnlyWhenBothAreChosen() {
    TossDialog dialog(withRosters().state());
    QVERIFY(!record(dialog)->isEnabled());
    QTest::keyClick(&dialog, '2');
    QVERIFY(!record(dialog)->isEnabled());
    QTest::keyClick(&dialog, '3');
    QVERIFY(record(dialog)->isEnabled());
}

void SetDialogsTest::theTossIsChosenByKeys_data() {
    QTest::addColumn<QString>("keys");
    QTest::addColumn<int>("servesFirst");
    QTest::addColumn<int>("left");
    const int home = static_cast<int>(Team::Home);
    const int visitors = static_cast<int>(Team::Visitors);
    QTest::newRow("home left and serves") << u"13"_s << home << home;
    QTest::newRow("visitors left, home serves") << u"23"_s << home << visitors;
    QTest::newRow("home left, visitors serve") << u"14"_s << visitors << home;
    QTest::newRow("thought better of it") << u"1324"_s << visitors << visitors;
}

void SetDialogsTest::theTossIsChosenByKeys() {
    QFETCH(QString, keys);
    QFETCH(int, servesFirst);
    QFETCH(int, left);
    TossDialog dialog(withRosters().state());
    dialog.show();
    typeInto(dialog, keys);
    QTest::keyClick(dialog.focusWidget(), Qt::Key_Return);
    QCOMPARE(dialog.QDialog::result(), int(QDialog::Accepted));
    QCOMPARE(dialog.result(), (Toss{static_cast<Team>(servesFirst), static_cast<Team>(left)}));
    QVERIFY(!dialog.overruled().has_value());
}

void SetDialogsTest::theTossIsChosenByMouse() {
    TossDialog dialog(withRosters().state());
    dialog.show();
    QTest::mouseClick(childOf<QPushButton>(dialog, "leftVisitors"), Qt::LeftButton);
    auto* court = childOf<QWidget>(dialog, "court");
    QTest::mouseClick(court, Qt::LeftButton, {}, QPoint(court->width() * 3 / 4, court->height() / 2));
    QVERIFY(childOf<QPushButton>(dialog, "servesHome")->isChecked());
    QTest::mouseClick(record(dialog), Qt::LeftButton);
    QCOMPARE(dialog.result(), (Toss{Team::Home, Team::Visitors}));
}

void SetDialogsTest::aTossAfterTheStartIsRefused() {
    TossDialog dialog(linedUp().start().state());
    typeInto(dialog, u"13"_s);
    QVERIFY(!record(dialog)->isEnabled());
    QVERIFY(!childOf<QLabel>(dialog, "sentences")->text().isEmpty());
}

void SetDialogsTest::theEndProposesTheTimeAndTakesAnother() {
    SetEndDialog dialog(setWon().state(), QTime(18, 34), unitedStates);
    showActive(dialog);
    QCOMPARE(dialog.result().at, QTime(18, 34));
    QVERIFY(record(dialog)->isEnabled());
    while (dialog.focusWidget()->objectName() != u"time"_s)
        QTest::keyClick(dialog.focusWidget(), Qt::Key_Tab);
    typeInto(dialog, u"1836"_s);
    QTest::keyClick(dialog.focusWidget(), Qt::Key_Return);
    QCOMPARE(dialog.QDialog::result(), int(QDialog::Accepted));
    QCOMPARE(dialog.result().at, QTime(18, 36));
}

void SetDialogsTest::aTimeThatIsNoneIsNotRecorded() {
    SetEndDialog dialog(setWon().state(), QTime(18, 34), unitedStates);
    auto* time = childOf<QLineEdit>(dialog, "time");
    for (const QString& typed : {u"25:00"_s, u""_s, u"soon"_s, u"18:6"_s}) {
        time->clear();
        QTest::keyClicks(time, typed);
        QVERIFY2(!record(dialog)->isEnabled(), qPrintable(typed));
        QVERIFY(time->property("problem").toBool());
    }
}

void SetDialogsTest::theEndNamesWinnerLoserAndPoints() {
    SetEndDialog dialog(setWon().state(), QTime(18, 59), unitedStates);
    showActive(dialog);
    const QStringList texts = textsOf(dialog);
    QVERIFY(texts.contains(u"25"_s) && texts.contains(u"0"_s));
    QVERIFY(texts.indexOf(u"wins the set"_s) < texts.indexOf(u"loses the set"_s));
    QVERIFY(texts.filter(u"second referee"_s).size() == 1);
    QTest::keyClick(&dialog, Qt::Key_Return);
    QCOMPARE(dialog.QDialog::result(), int(QDialog::Accepted));
    QCOMPARE(dialog.result(), SetEnded{QTime(18, 59)});
}

void SetDialogsTest::theEndOfASetThatIsNotWonIsRefused() {
    SetEndDialog dialog(linedUp().start().play("hhv").state(), QTime(18, 59), unitedStates);
    showActive(dialog);
    QVERIFY(!record(dialog)->isEnabled());
    QVERIFY(!childOf<QLabel>(dialog, "sentences")->text().isEmpty());
    QTest::keyClick(&dialog, Qt::Key_Return);
    QCOMPARE(dialog.QDialog::result(), int(QDialog::Rejected));
}

void SetDialogsTest::theCloseShowsTheSets() {
    MatchBuilder match = withRosters();
    match.toss(Team::Home);
    for (int set = 0; set < 3; ++set) {
        match.lineUp(Team::Home, {1, 3, 4, 7, 8, 9}).lineUp(Team::Visitors, {2, 4, 5, 8, 9, 10});
        match.add(SetStarted{QTime(18 + set, 30)}).play("vvvhhhhhhhhhhhhhhhhhhhhhhhhh");
        match.add(SetEnded{QTime(18 + set, 52)});
    }
    MatchCloseDialog dialog(match.state(), unitedStates);
    const QStringList texts = textsOf(dialog);
    QCOMPARE(texts.filter(u"wins the match"_s).size(), 1);
    QCOMPARE(texts.count(u"25"_s), 3);
    QCOMPARE(texts.count(u"22"_s), 3);
    QVERIFY(texts.contains(u"6:30 PM"_s));
    QVERIFY(record(dialog)->isEnabled());
    QCOMPARE(leaderIn(match.state()), std::optional(Team::Home));
}

void SetDialogsTest::theCloseOfAMatchThatGoesOnIsRefused() {
    MatchBuilder match = setWon();
    match.add(SetEnded{QTime(18, 59)});
    MatchCloseDialog dialog(match.state(), unitedStates);
    QVERIFY(!record(dialog)->isEnabled());
}

void SetDialogsTest::minutesRunOverMidnight() {
    MatchBuilder match = linedUp();
    match.add(SetStarted{QTime(23, 50)}).play("hhhhhhhhhhhhhhhhhhhhhhhhh").add(SetEnded{QTime(0, 15)});
    const auto rows = setResults(match.state());
    QCOMPARE(rows.size(), 1U);
    QCOMPARE(rows.front().minutes, 25);
    QCOMPARE(rows.front().points, (PerTeam<int>{25, 0}));
    QCOMPARE(setResults(linedUp().start().state()).front().minutes, -1);
}

} // namespace setfolio

QTEST_MAIN(setfolio::SetDialogsTest)
#include "tst_setdialogs.moc"
