// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/dialogmatches.h"
#include "tests/ui/dialogs/hands.h"
#include "ui/dialogs/newmatchdialog.h"
#include "ui/dialogs/teampage.h"

#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QStackedWidget>
#include <QTableView>
#include <QTemporaryDir>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

using namespace testing;

namespace {

const QLocale unitedStates(QLocale::English, QLocale::UnitedStates);

MatchDraft emptyDraft() {
    MatchDraft draft;
    draft.opened.id = u"a-match"_s;
    draft.opened.date = QDate(2026, 10, 14);
    draft.opened.rulebook = highSchool();
    draft.opened.bestOf = 5;
    return draft;
}

/// The dialog, shown, with a folder for match files.
class Shown {
public:
    explicit Shown(const MatchDraft& draft = emptyDraft(), const QString& below = {})
        : dialog(draft, folder.filePath(below), unitedStates) {
        showActive(dialog);
    }
    [[nodiscard]] QString current() { return dialog.findChild<QStackedWidget*>()->currentWidget()->objectName(); }
    [[nodiscard]] QString problem() {
        const auto* label = childOf<QLabel>(dialog, "problem");
        return label->isVisible() ? label->text() : QString();
    }
    template <typename Child>
    [[nodiscard]] Child* on(const char* page, const char* name) {
        return childOf<Child>(*childOf<QWidget>(dialog, page), name);
    }
    void click(const char* button) { QTest::mouseClick(childOf<QPushButton>(dialog, button), Qt::LeftButton); }
    void clickOn(const char* page, const char* button) {
        QTest::mouseClick(on<QPushButton>(page, button), Qt::LeftButton);
    }
    /// Types into the field of that name on the page that is shown, found by Tab.
    void fill(const QString& name, const QString& words) {
        QVERIFY2(tabTo(dialog, name), qPrintable(name));
        typeInto(dialog, words);
    }

    QTemporaryDir folder;
    NewMatchDialog dialog;
};

template <typename Kind>
Kind entryIn(const std::vector<Entry>& entries, std::size_t place) {
    return std::get<Kind>(entries.at(place));
}

} // namespace

class NewMatchDialogTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theMatchMadeHoldsWhatWasTyped();
    void enterGoesThroughThePagesAndStartsOnTheLast();
    void pagesAreTurnedByAltAndByFinger();
    void aMissingNameIsToldAndItsFieldHasTheKeyboard();
    void theStartInvitesOnlyWhenNothingIsMissing();
    void aDoubledNumberIsToldWithItsLineAndStopsTheStart();
    void aRosterFromCsvIsInTheMatch();
    void aTimeThatCannotBeReadIsTold();
    void cancelWritesNothingAndKeepsWhatWasTyped_data();
    void cancelWritesNothingAndKeepsWhatWasTyped();
    void aFileOfThatNameIsNeverWrittenOver();
    void aLongPathIsShortenedInItsMiddle();
    void theShortNameIsProposedAndMayBeTyped();
    void itCanBeBegunEmpty();
};

void NewMatchDialogTest::theMatchMadeHoldsWhatWasTyped() {
    Shown shown;
    shown.fill(u"competition"_s, u"Coastal League"_s);
    shown.fill(u"venue"_s, u"Tidewater Hall"_s);
    shown.fill(u"scheduled"_s, u"630pm"_s);
    shown.click("next");
    shown.fill(u"name"_s, u"Saltmarsh Herons"_s);
    shown.fill(u"coach"_s, u"M. Aldous"_s);
    putOnClipboard(u"7\tAda Lund\tC\n2\tBea Moss\t\tL\n"_s);
    shown.clickOn("homePage", "paste");
    shown.click("next");
    shown.fill(u"name"_s, u"Quarry Ridge Larks"_s);
    shown.click("next");
    shown.fill(u"official2"_s, u"J. Reed"_s);
    shown.click("record");
    QCOMPARE(shown.dialog.QDialog::result(), int(QDialog::Accepted));
    const std::vector<Entry> entries = shown.dialog.result();
    const auto opened = entryIn<MatchOpened>(entries, 0);
    QCOMPARE(opened.competition, u"Coastal League"_s);
    QCOMPARE(opened.venue, u"Tidewater Hall"_s);
    QCOMPARE(opened.scheduled, QTime(18, 30));
    QCOMPARE(opened.teams.home.name, u"Saltmarsh Herons"_s);
    QCOMPARE(opened.teams.visitors.code, u"QRL"_s);
    QCOMPARE(opened.id, u"a-match"_s);
    const auto home = entryIn<Roster>(entries, 1);
    QCOMPARE(home.coach, u"M. Aldous"_s);
    QCOMPARE(home.players.size(), 2U);
    QVERIFY(home.players[0] == (RosterPlayer{ShirtNumber(7), u"Ada Lund"_s, true, false}));
    QVERIFY(home.players[1] == (RosterPlayer{ShirtNumber(2), u"Bea Moss"_s, false, true}));
    QVERIFY(entryIn<Roster>(entries, 2).players.empty());
    const auto officials = entryIn<Officials>(entries, 3);
    QCOMPARE(officials.officials.size(), 1U);
    QCOMPARE(officials.officials[0].role, Role::Scorer);
    QCOMPARE(officials.officials[0].name, u"J. Reed"_s);
}

void NewMatchDialogTest::enterGoesThroughThePagesAndStartsOnTheLast() {
    MatchDraft draft = emptyDraft();
    draft.opened.teams.home = {u"Saltmarsh Herons"_s, u"SAL"_s, {}};
    draft.opened.teams.visitors = {u"Quarry Ridge Larks"_s, u"QRL"_s, {}};
    Shown shown(draft);
    for (const QString& page : {u"homePage"_s, u"visitorsPage"_s, u"officialsPage"_s}) {
        pressIn(shown.dialog, Qt::Key_Return);
        QCOMPARE(shown.current(), page);
        QVERIFY(shown.dialog.isVisible());
    }
    pressIn(shown.dialog, Qt::Key_Return);
    QCOMPARE(shown.dialog.QDialog::result(), int(QDialog::Accepted));
}

void NewMatchDialogTest::pagesAreTurnedByAltAndByFinger() {
    Shown shown;
    pressIn(shown.dialog, Qt::Key_4, Qt::AltModifier);
    QCOMPARE(shown.current(), u"officialsPage"_s);
    pressIn(shown.dialog, Qt::Key_2, Qt::AltModifier);
    QCOMPARE(shown.current(), u"homePage"_s);
    tap(*childOf<QPushButton>(shown.dialog, "step3"));
    QTRY_COMPARE(shown.current(), u"visitorsPage"_s);
}

void NewMatchDialogTest::aMissingNameIsToldAndItsFieldHasTheKeyboard() {
    Shown shown;
    QCOMPARE(shown.problem(), QString());
    shown.click("record");
    QVERIFY(shown.dialog.isVisible());
    QCOMPARE(shown.problem(), u"The home team needs a name."_s);
    QCOMPARE(shown.current(), u"homePage"_s);
    typeInto(shown.dialog, u"Saltmarsh Herons"_s);
    QCOMPARE(shown.problem(), u"The visitors need a name."_s);
}

void NewMatchDialogTest::theStartInvitesOnlyWhenNothingIsMissing() {
    Shown shown;
    const auto invites = [&](const char* name) {
        return childOf<QPushButton>(shown.dialog, name)->property("primary").toBool();
    };
    const auto* missing = childOf<QLabel>(shown.dialog, "missing");
    QVERIFY(invites("next") && !invites("record"));
    QVERIFY(missing->isVisible());
    QCOMPARE(missing->text(), u"The match cannot start yet. The home team needs a name."_s);
    pressIn(shown.dialog, Qt::Key_2, Qt::AltModifier);
    typeInto(shown.dialog, u"Saltmarsh Herons"_s);
    QCOMPARE(missing->text(), u"The match cannot start yet. The visitors need a name."_s);
    QVERIFY(!invites("record"));
    pressIn(shown.dialog, Qt::Key_3, Qt::AltModifier);
    typeInto(shown.dialog, u"Quarry Ridge Larks"_s);
    QVERIFY(!missing->isVisible());
    QVERIFY(invites("record") && !invites("next"));
    shown.click("step1");
    shown.fill(u"scheduled"_s, u"half six"_s);
    QVERIFY(missing->isVisible() && !invites("record"));
    shown.click("record"); // now it is a problem, and said once
    QVERIFY(!missing->isVisible());
    QVERIFY(!shown.problem().isEmpty());
}

void NewMatchDialogTest::aDoubledNumberIsToldWithItsLineAndStopsTheStart() {
    MatchDraft draft = emptyDraft();
    draft.opened.teams.home = {u"Saltmarsh Herons"_s, u"SAL"_s, {}};
    draft.opened.teams.visitors = {u"Quarry Ridge Larks"_s, u"QRL"_s, {}};
    Shown shown(draft);
    pressIn(shown.dialog, Qt::Key_2, Qt::AltModifier);
    putOnClipboard(u"7\tAda Lund\n2\tBea Moss\n7\tCyra Roe\n"_s);
    shown.clickOn("homePage", "paste");
    QCOMPARE(shown.on<QLabel>("homePage", "rosterProblems")->text(),
             u"Line 3: number 7 stands in line 1 too: change one of them."_s);
    shown.click("record");
    QVERIFY(shown.dialog.isVisible());
    QCOMPARE(shown.problem(), u"Home roster. Line 3: number 7 stands in line 1 too: change one of them."_s);
    auto* table = shown.on<QTableView>("homePage", "roster");
    table->setCurrentIndex(table->model()->index(2, 0));
    pressIn(shown.dialog, Qt::Key_Delete);
    QCOMPARE(shown.problem(), QString());
    shown.click("record");
    QCOMPARE(shown.dialog.QDialog::result(), int(QDialog::Accepted));
}

void NewMatchDialogTest::aRosterFromCsvIsInTheMatch() {
    Shown shown;
    const QString path = shown.folder.filePath(u"larks.csv"_s);
    write(path, "#,Player,Libero\r\n4,\"Dale, Ines\",\r\n11,,yes\r\n");
    pressIn(shown.dialog, Qt::Key_3, Qt::AltModifier);
    const ChoosingFile choosing(path);
    shown.clickOn("visitorsPage", "readFile");
    QVERIFY(choosing.hasChosen());
    const auto visitors = entryIn<Roster>(shown.dialog.result(), 2);
    QCOMPARE(visitors.players.size(), 2U);
    QVERIFY(visitors.players[0] == (RosterPlayer{ShirtNumber(4), u"Dale, Ines"_s, false, false}));
    QVERIFY(visitors.players[1] == (RosterPlayer{ShirtNumber(11), {}, false, true}));
}

void NewMatchDialogTest::aTimeThatCannotBeReadIsTold() {
    Shown shown;
    shown.fill(u"scheduled"_s, u"half six"_s);
    shown.click("record");
    QVERIFY(shown.dialog.isVisible());
    QCOMPARE(shown.current(), u"matchPage"_s);
    QVERIFY(shown.problem().startsWith(u"The scheduled time cannot be read"_s));
}

void NewMatchDialogTest::cancelWritesNothingAndKeepsWhatWasTyped_data() {
    QTest::addColumn<bool>("byKey");
    QTest::newRow("Escape") << true;
    QTest::newRow("the button") << false;
}

void NewMatchDialogTest::cancelWritesNothingAndKeepsWhatWasTyped() {
    QFETCH(bool, byKey);
    Shown shown;
    pressIn(shown.dialog, Qt::Key_2, Qt::AltModifier);
    shown.fill(u"name"_s, u"Saltmarsh Herons"_s);
    putOnClipboard(u"7\tAda Lund\n2\tBea Moss\n"_s);
    shown.clickOn("homePage", "paste");
    if (byKey)
        pressIn(shown.dialog, Qt::Key_Escape);
    else
        shown.click("cancel");
    QCOMPARE(shown.dialog.QDialog::result(), int(QDialog::Rejected));
    QVERIFY(QDir(shown.folder.path()).isEmpty());
    const Shown again(shown.dialog.draft()); // as the next new match begins
    QCOMPARE(again.dialog.draft().opened.teams.home.name, u"Saltmarsh Herons"_s);
    QCOMPARE(again.dialog.draft().rosters.home.size(), 2U);
    QVERIFY(again.dialog.draft() == shown.dialog.draft());
}

void NewMatchDialogTest::aFileOfThatNameIsNeverWrittenOver() {
    MatchDraft draft = emptyDraft();
    draft.opened.teams.home = {u"Saltmarsh Herons"_s, u"SAL"_s, {}};
    draft.opened.teams.visitors = {u"Quarry Ridge Larks"_s, u"QRL"_s, {}};
    Shown shown(draft);
    QCOMPARE(shown.dialog.path(), shown.folder.filePath(u"2026-10-14-SAL-QRL.setfolio"_s));
    write(shown.dialog.path(), "a match");
    QCOMPARE(shown.dialog.path(), shown.folder.filePath(u"2026-10-14-SAL-QRL-2.setfolio"_s));
    const ChoosingFile choosing(shown.folder.filePath(u"2026-10-14-SAL-QRL.setfolio"_s));
    shown.click("otherFile");
    QVERIFY(choosing.hasChosen());
    shown.click("record");
    QVERIFY(shown.dialog.isVisible());
    QCOMPARE(shown.problem(), u"A file of that name is there already: choose another one."_s);
}

void NewMatchDialogTest::aLongPathIsShortenedInItsMiddle() {
    Shown shown(emptyDraft(), QString(300, u'w'));
    const auto* label = childOf<QLabel>(shown.dialog, "path");
    QVERIFY(label->text().startsWith(u"Kept in /"_s));
    QVERIFY(label->text().contains(u'…') && label->text().endsWith(u".setfolio"_s));
    QVERIFY(label->fontMetrics().horizontalAdvance(label->text()) <= label->width());
    QVERIFY(label->accessibleName().contains(QString(300, u'w')));
}

void NewMatchDialogTest::theShortNameIsProposedAndMayBeTyped() {
    Shown shown;
    pressIn(shown.dialog, Qt::Key_2, Qt::AltModifier);
    shown.fill(u"name"_s, u"Saltmarsh Herons"_s);
    auto* code = shown.on<QLineEdit>("homePage", "code");
    QCOMPARE(code->text(), u"SALT"_s.left(code->text().size()));
    QVERIFY(tabTo(shown.dialog, u"code"_s));
    typeInto(shown.dialog, u"shn"_s);
    QCOMPARE(code->text(), u"SHN"_s);
    QVERIFY(tabTo(shown.dialog, u"name"_s));
    typeInto(shown.dialog, u"Other Name"_s);
    QCOMPARE(code->text(), u"SHN"_s); // typed by hand, it stays
}

void NewMatchDialogTest::itCanBeBegunEmpty() {
    Shown usual;
    QVERIFY(!usual.dialog.findChild<QPushButton*>(u"beginEmpty"_s));
    Shown shown;
    shown.dialog.offerToBeginEmpty();
    shown.click("beginEmpty");
    QCOMPARE(shown.dialog.QDialog::result(), int(NewMatchDialog::BeginEmpty));
}

} // namespace setfolio

QTEST_MAIN(setfolio::NewMatchDialogTest)
#include "tst_newmatchdialog.moc"
