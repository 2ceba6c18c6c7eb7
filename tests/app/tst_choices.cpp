// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/choices.h"
#include "app/damagedmatch.h"
#include "app/frontdesk.h"
#include "tests/app/deskhands.h"
#include "tests/app/program.h"
#include "tests/ui/dialogs/hands.h"
#include "ui/dialogs/teambookdialog.h"
#include "ui/help/helpdialog.h"
#include "ui/help/keyfield.h"
#include "ui/help/keysdialog.h"
#include "ui/table/noticeband.h"
#include "ui/table/sheetview.h"
#include "ui/table/topbar.h"
#include "ui/wording/tablewords.h"

#include <QAction>
#include <QDir>
#include <QSettings>
#include <QTableWidget>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

/// A match that is open in a window, with its desk.
struct Opened {
    Opened() { desk.open(path); }
    [[nodiscard]] TableWindow& table() const { return *tables().front(); }
    void choose(const char* action) const { table().findChild<QAction*>(QLatin1String(action))->trigger(); }

    const Folder folder;
    const QString path = put(folder.path(u"a.setfolio"_s), contentOf(demoMatch()));
    FrontDesk desk{SheetFonts::load().value(), stoppedClock()};
};

/// As if the program had been ended and begun again.
void beginAgain() {
    setProgramLook(LookChoice::AsSystem);
    setProgramTextSize(100);
    setChangedKeys({});
    wearChoices();
}

} // namespace

class TestChoices : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void theLookIsThereAgain();
    void theSizeOfTheWordsIsThereAgain();
    void theSightIsThereAgain();
    void keysAreChangedAndThereAgain();
    void theFolderOfMatchesIsChosenOnce();
    void whatSettingsHoldWrongIsPassedOver();
    void aFileThatIsHeldElsewhereOpensReadOnly();
    void whatIsDoneIsToldWithoutAWarning();
    void theTeamBookAndTheHelpOpenFromTheStartPage();
};

void TestChoices::initTestCase() {
    QCoreApplication::setOrganizationName(u"Setfolio"_s);
    QCoreApplication::setApplicationName(u"tst_choices"_s);
    QApplication::setQuitOnLastWindowClosed(false);
}

void TestChoices::init() {
    QSettings().clear();
}

void TestChoices::theLookIsThereAgain() {
    const Opened opened;
    opened.choose("look3");
    QCOMPARE(opened.table().look().theme, Theme::HighContrast);
    beginAgain();
    QCOMPARE(programLook(), LookChoice::HighContrast);
    QVERIFY(opened.table().findChild<QAction*>(u"look3"_s)->isChecked());
    opened.choose("look0");
    QCOMPARE(opened.table().look().theme, Theme::Light);
}

void TestChoices::theSizeOfTheWordsIsThereAgain() {
    const Opened opened;
    QVERIFY(!opened.table().look().stacked);
    opened.choose("textSize200");
    QTRY_VERIFY(opened.table().look().stacked);
    QCOMPARE(textScale(), 2.0);
    beginAgain();
    QCOMPARE(programTextSize(), 200);
    opened.choose("textSize100");
    QTRY_VERIFY(!opened.table().look().stacked);
}

void TestChoices::theSightIsThereAgain() {
    {
        const Opened opened;
        QTest::mouseClick(opened.table().findChild<QAbstractButton*>(u"wholePage"_s), Qt::LeftButton);
    }
    const Opened again;
    QCOMPARE(again.table().findChild<SheetView*>()->sight(), Sight::WholePage);
    QVERIFY(again.table().findChild<QAbstractButton*>(u"wholePage"_s)->isChecked());
}

void TestChoices::keysAreChangedAndThereAgain() {
    const Opened opened;
    const Working<KeysDialog> working([](KeysDialog& dialog) {
        dialog.findChild<QTableWidget*>()->setCurrentCell(0, 0); // the next step
        QTest::keyClick(dialog.findChild<KeyField*>(), Qt::Key_F11);
        QTest::mouseClick(dialog.findChild<QPushButton*>(u"record"_s), Qt::LeftButton);
    });
    opened.choose("changeKeys");
    const QKeySequence wanted(Qt::Key_F11);
    QTRY_COMPARE(opened.table().findChild<QAction*>(u"nextStep"_s)->shortcut(), wanted);
    beginAgain();
    QCOMPARE(keysOf(TableCommand::NextStep).first(), wanted);
    setChangedKeys({});
}

void TestChoices::theFolderOfMatchesIsChosenOnce() {
    const Folder folder;
    const QString chosen = folder.path(u"matches of the season"_s);
    QVERIFY(QDir().mkpath(chosen));
    QVERIFY(matchFolder() != chosen);
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    desk.showStartPage();
    const Working<> working([&](NewMatchDialog& dialog) {
        typeNames(dialog);
        const ChoosingFile choosing(chosen + u"/first.setfolio"_s);
        QTest::mouseClick(dialog.findChild<QPushButton*>(u"otherFile"_s), Qt::LeftButton);
        QTest::mouseClick(dialog.findChild<QPushButton*>(u"record"_s), Qt::LeftButton);
    });
    QTest::mouseClick(startPage()->findChild<QPushButton*>(u"newMatch"_s), Qt::LeftButton);
    QVERIFY(QFile::exists(chosen + u"/first.setfolio"_s));
    QCOMPARE(matchFolder(), chosen);
    QString proposed;
    const Working<> next([&](NewMatchDialog& dialog) {
        proposed = dialog.path();
        dialog.reject();
    });
    tables().front()->findChild<QAction*>(u"newMatch"_s)->trigger();
    QVERIFY2(proposed.startsWith(chosen), qPrintable(proposed));
}

void TestChoices::whatSettingsHoldWrongIsPassedOver() {
    QSettings settings;
    settings.setValue(u"look"_s, u"pink"_s);
    settings.setValue(u"text-size"_s, 900);
    settings.setValue(u"sight"_s, 4);
    settings.setValue(u"match-folder"_s, u"/not/there"_s);
    beginAgain();
    QCOMPARE(programLook(), LookChoice::AsSystem);
    QCOMPARE(programTextSize(), 100);
    QCOMPARE(chosenSight(), Sight::LiveBand);
    QVERIFY(matchFolder() != u"/not/there"_s);
}

void TestChoices::aFileThatIsHeldElsewhereOpensReadOnly() {
    const Folder folder;
    const QString path = put(folder.path(u"a.setfolio"_s), contentOf(demoMatch()));
    const auto holder = MatchFile::open(path, Ledger::Access::ReadWrite);
    QVERIFY(holder);
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    QVERIFY(desk.open(path));
    TableWindow& table = *tables().front();
    QVERIFY(table.file().ledger().isReadOnly());
    auto* band = table.findChild<NoticeBand*>();
    QVERIFY(band->isVisible());
    QVERIFY(!band->sentenceOf(BandKind::ReadOnly).isEmpty());
    QCOMPARE(table.findChild<TopBar*>()->savedWords(), readOnlyWord());
    const std::size_t before = table.file().ledger().entries().size();
    for (const Qt::Key key : {Qt::Key_Left, Qt::Key_Space, Qt::Key_M, Qt::Key_C, Qt::Key_Backspace, Qt::Key_Return})
        QTest::keyClick(&table, key);
    QCOMPARE(table.file().ledger().entries().size(), before);
    QVERIFY(table.findChild<QAction*>(u"print"_s)->isEnabled()); // it can be read and printed
}

void TestChoices::whatIsDoneIsToldWithoutAWarning() {
    {
        const Answering done(QMessageBox::AcceptRole);
        tellDone(u"The story is written."_s, nullptr);
        QCOMPARE(done.icon(), QMessageBox::Information);
    }
    const Answering wrong(QMessageBox::AcceptRole);
    tell(u"The story is not written."_s, nullptr);
    QCOMPARE(wrong.icon(), QMessageBox::Warning);
}

void TestChoices::theTeamBookAndTheHelpOpenFromTheStartPage() {
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    desk.showStartPage();
    const Working<TeamBookDialog> book([](TeamBookDialog& dialog) { dialog.reject(); });
    QTest::mouseClick(startPage()->findChild<QPushButton*>(u"teamBook"_s), Qt::LeftButton);
    QVERIFY(book.isDone());
    const Working<HelpDialog> help([](HelpDialog& dialog) { dialog.reject(); });
    startPage()->activateWindow();
    QVERIFY(QTest::qWaitForWindowActive(startPage()));
    QTest::keyClick(startPage(), Qt::Key_F1);
    QVERIFY(help.isDone());
}

QTEST_MAIN(TestChoices)
#include "tst_choices.moc"
