// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/damagedmatch.h"
#include "app/frontdesk.h"
#include "app/recentmatches.h"
#include "core/ledger/ledger.h"
#include "core/ledger/newledger.h"
#include "tests/app/deskhands.h"
#include "tests/app/program.h"
#include "tests/support/matchbuilder.h"
#include "ui/look/appearance.h"

#include <QComboBox>
#include <QSettings>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

class TestFrontDesk : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase();
    void init();
    void aMatchIsOpenedInAWindowOfItsOwn();
    void aMatchThatIsOpenAlreadyIsNotOpenedTwice();
    void aMatchWindowFillsTheScreenAtFirst();
    void aMatchWindowComesUpAsItWasClosed();
    void theStartPageGivesWayToTheMatch();
    void theStartPageListsWhatWasOpenedLast();
    void theStartPageWearsWhatIsChosenOnIt();
    void theDemoIsOpenedInACopy();
    void aNewMatchTakesNothingFromTheDemo();
    void aCancelledNewMatchIsThereAgain();
    void aNewMatchIsWrittenAndOpened();
    void whatIsDamagedIsSaidAsPlainText();
    void whatIsNotThereIsSaid();
    void aGoodPartIsOfferedOnlyWhereThereIsOne_data();
    void aGoodPartIsOfferedOnlyWhereThereIsOne();
    void theListOfRecentMatchesIsShortAndHasEachOnce();
    void aLedgerMadeInOneGoIsReadBack();
};

void TestFrontDesk::initTestCase() {
    QCoreApplication::setOrganizationName(u"Setfolio"_s);
    QCoreApplication::setApplicationName(u"tst_frontdesk"_s);
    QApplication::setQuitOnLastWindowClosed(false);
}

void TestFrontDesk::init() {
    QSettings().clear();
}

void TestFrontDesk::aMatchIsOpenedInAWindowOfItsOwn() {
    const Folder folder;
    const QString path = put(folder.path(u"a.setfolio"_s), contentOf(demoMatch()));
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    QVERIFY(desk.open(path));
    QCOMPARE(tables().size(), std::size_t(1));
    QCOMPARE(tables().front()->file().ledger().entries().size(), std::size_t(380));
}

void TestFrontDesk::aMatchThatIsOpenAlreadyIsNotOpenedTwice() {
    const Folder folder;
    const QString path = put(folder.path(u"a.setfolio"_s), contentOf(demoMatch()));
    const QString link = folder.path(u"b.setfolio"_s);
    QVERIFY(QFile::link(path, link));
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    QVERIFY(desk.open(path) && desk.open(path) && desk.open(link));
    QCOMPARE(tables().size(), std::size_t(1));
    tables().front()->close();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QVERIFY(desk.open(path));
    QCOMPARE(tables().size(), std::size_t(1));
}

void TestFrontDesk::aMatchWindowFillsTheScreenAtFirst() {
    const Folder folder;
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    QVERIFY(desk.open(put(folder.path(u"a.setfolio"_s), contentOf(demoMatch()))));
    QVERIFY(tables().front()->isMaximized());
}

void TestFrontDesk::aMatchWindowComesUpAsItWasClosed() {
    const Folder folder;
    const QString path = put(folder.path(u"a.setfolio"_s), contentOf(demoMatch()));
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    QVERIFY(desk.open(path));
    tables().front()->showNormal();
    tables().front()->setGeometry(20, 30, 1370, 770);
    QCoreApplication::processEvents();
    const QRect left = tables().front()->geometry();
    tables().front()->close();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QVERIFY(tables().empty());
    QVERIFY(desk.open(path));
    QVERIFY(!tables().front()->isMaximized());
    QCOMPARE(tables().front()->size(), left.size());
    tables().front()->showMaximized();
    tables().front()->close();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    QVERIFY(desk.open(path));
    QVERIFY(tables().front()->isMaximized());
}

void TestFrontDesk::theStartPageGivesWayToTheMatch() {
    const Folder folder;
    const QString path = put(folder.path(u"a.setfolio"_s), contentOf(demoMatch()));
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    desk.showStartPage();
    QPointer<StartPage> page;
    for (QWidget* widget : QApplication::topLevelWidgets())
        if (auto* found = qobject_cast<StartPage*>(widget))
            page = found;
    QVERIFY(page && page->isVisible());
    Q_EMIT page->matchChosen(path);
    QCOMPARE(tables().size(), std::size_t(1));
    QVERIFY(!page || !page->isVisible());
}

void TestFrontDesk::theStartPageListsWhatWasOpenedLast() {
    const Folder folder;
    const QString path = put(folder.path(u"a.setfolio"_s), contentOf(demoMatch()));
    const QString other = put(folder.path(u"b.setfolio"_s), contentOf(demoMatch()));
    {
        FrontDesk desk(SheetFonts::load().value(), stoppedClock());
        QVERIFY(desk.open(path) && desk.open(other));
    }
    QCOMPARE(recentPaths(), (QStringList{other, path}));
    QVERIFY(QFile::remove(other));
    const std::vector<RecentMatch> recent = recentMatches(recentPaths(), QLocale::c());
    QCOMPARE(recent.size(), std::size_t(1));
    QCOMPARE(recent.front().path, path);
    QCOMPARE(recent.front().title, u"Saltmarsh Herons – Quarry Ridge Larks"_s);
    QCOMPARE(recent.front().detail, u"14 October 2026, SAL 1–1 QRL in sets"_s);
    QCOMPARE(newestMatch(recentPaths()).opened->venue, u"Tidewater Hall, Court 2"_s);
}

void TestFrontDesk::theStartPageWearsWhatIsChosenOnIt() {
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    desk.showStartPage();
    const QPointer<StartPage> page = startPage();
    QVERIFY(QTest::qWaitForWindowActive(page));
    page->findChild<QComboBox*>(u"look"_s)->setFocus();
    QTest::keyClick(page->focusWidget(), Qt::Key_End);
    QTRY_COMPARE(programLook(), LookChoice::HighContrast);
    QCOMPARE(QSettings().value(u"look"_s).toString(), u"high-contrast"_s);
    QTRY_COMPARE(page->grab().toImage().pixelColor(2, 2), QColor(Qt::black));
    QCOMPARE(page->focusWidget()->objectName(), u"look"_s); // the next one can be tried at once
    QTest::keyClick(page->focusWidget(), Qt::Key_Home);
    QTRY_COMPARE(programLook(), LookChoice::AsSystem);
    page->findChild<QComboBox*>(u"textSize"_s)->setFocus();
    QTest::keyClick(page->focusWidget(), Qt::Key_Down);
    QTRY_COMPARE(programTextSize(), 125);
    QCOMPARE(QSettings().value(u"text-size"_s).toInt(), 125);
    QTRY_COMPARE(page->findChild<QPushButton*>(u"help"_s)->font().pixelSize(), 19);
    QTest::keyClick(page->focusWidget(), Qt::Key_Up);
    QTRY_COMPARE(programTextSize(), 100);
    QCOMPARE(startPage(), page.data());
}

void TestFrontDesk::theDemoIsOpenedInACopy() {
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    desk.showStartPage();
    for (QWidget* widget : QApplication::topLevelWidgets())
        if (auto* page = qobject_cast<StartPage*>(widget))
            Q_EMIT page->demoWanted();
    QCOMPARE(tables().size(), std::size_t(1));
    QVERIFY(!tables().front()->file().ledger().isReadOnly());
    QVERIFY(!tables().front()->file().ledger().path().startsWith(u":"_s));
}

void TestFrontDesk::aNewMatchTakesNothingFromTheDemo() {
    const Folder folder;
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    const auto homeOfTheNext = [&] {
        QString name;
        const Working<> working([&name](NewMatchDialog& dialog) {
            name = dialog.draft().opened.teams.home.name;
            dialog.reject();
        });
        tables().front()->perform(TableCommand::NewMatch);
        return name;
    };
    desk.showStartPage();
    Q_EMIT startPage()->demoWanted();
    QCOMPARE(homeOfTheNext(), QString());
    QVERIFY(desk.open(put(folder.path(u"a.setfolio"_s), contentOf(demoMatch())))); // one of the user's own
    QCOMPARE(homeOfTheNext(), u"Saltmarsh Herons"_s);
}

void TestFrontDesk::aCancelledNewMatchIsThereAgain() {
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    desk.showStartPage();
    QVERIFY(QTest::qWaitForWindowActive(startPage()));
    QString found;
    const Working<> first([](NewMatchDialog& dialog) {
        typeNames(dialog);
        QTest::keyClick(dialog.focusWidget(), Qt::Key_Escape);
    });
    QTest::mouseClick(startPage()->findChild<QPushButton*>(u"newMatch"_s), Qt::LeftButton);
    const Working<> second([&found](NewMatchDialog& dialog) {
        found = dialog.draft().opened.teams.visitors.name;
        QTest::mouseClick(dialog.findChild<QPushButton*>(u"cancel"_s), Qt::LeftButton);
    });
    QTest::mouseClick(startPage()->findChild<QPushButton*>(u"newMatch"_s), Qt::LeftButton);
    QCOMPARE(found, u"Quarry Ridge Larks"_s);
    QVERIFY(tables().empty());
}

void TestFrontDesk::aNewMatchIsWrittenAndOpened() {
    const Folder folder;
    qputenv("HOME", folder.path({}).toUtf8()); // where matches are kept
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    desk.showStartPage();
    QVERIFY(QTest::qWaitForWindowActive(startPage()));
    QString path;
    const Working<> working([&path](NewMatchDialog& dialog) {
        typeNames(dialog);
        path = dialog.path();
        QTest::mouseClick(dialog.findChild<QPushButton*>(u"record"_s), Qt::LeftButton);
    });
    QTest::mouseClick(startPage()->findChild<QPushButton*>(u"newMatch"_s), Qt::LeftButton);
    QCOMPARE(tables().size(), std::size_t(1));
    const Ledger& ledger = tables().front()->file().ledger();
    QCOMPARE(ledger.path(), path);
    QVERIFY(QFileInfo(path).size() > 0);
    QCOMPARE(ledger.entries().size(), std::size_t(4));
    QCOMPARE(std::get<MatchOpened>(ledger.entries()[0].entry).teams.home.name, u"Saltmarsh Herons"_s);
    QFile::remove(path);
}

void TestFrontDesk::whatIsDamagedIsSaidAsPlainText() {
    const Folder folder;
    const QString path =
        put(folder.path(u"<b>a.setfolio"_s), contentOf(demoMatch()).replace("Tidewater Hall", "Tidewater Mall"));
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    const Answering answering(QMessageBox::AcceptRole);
    QVERIFY(!desk.open(path));
    QVERIFY2(answering.said().startsWith(u"Line 1 of "_s + path + u" was altered"_s), qPrintable(answering.said()));
    QCOMPARE(answering.format(), Qt::PlainText);
    QVERIFY(tables().empty());
}

void TestFrontDesk::whatIsNotThereIsSaid() {
    FrontDesk desk(SheetFonts::load().value(), stoppedClock());
    const Answering answering(QMessageBox::AcceptRole);
    QVERIFY(!desk.open(u"nowhere.setfolio"_s));
    QVERIFY2(answering.said().startsWith(u"nowhere.setfolio cannot be opened"_s), qPrintable(answering.said()));
}

// clang-format off
void TestFrontDesk::aGoodPartIsOfferedOnlyWhereThereIsOne_data() {
    using enum LedgerError::Code;
    QTest::addColumn<LedgerError::Code>("code");
    QTest::addColumn<int>("line");
    QTest::addColumn<bool>("offered");
    QTest::newRow("altered in the middle")   << WrongDigest   << 9 << true;
    QTest::newRow("altered in line 2")       << WrongDigest   << 2 << true;
    QTest::newRow("altered at the start")    << WrongDigest   << 1 << false; // nothing is whole before it
    QTest::newRow("a line that is no JSON")  << BrokenLine    << 9 << true;
    QTest::newRow("a kind of a later time")  << UnknownKind   << 9 << true;
    QTest::newRow("a line missing")          << WrongSequence << 9 << true;
    QTest::newRow("too long")                << TooLong       << 9 << true;
    QTest::newRow("not there")               << CannotOpen    << 0 << false;
    QTest::newRow("no match file")           << NotALedger    << 1 << false;
    QTest::newRow("of a newer version")      << NewerVersion  << 1 << false;
}
// clang-format on

void TestFrontDesk::aGoodPartIsOfferedOnlyWhereThereIsOne() {
    QFETCH(LedgerError::Code, code);
    QFETCH(int, line);
    QFETCH(bool, offered);
    QCOMPARE(hasGoodPart(LedgerError{code, line, {}, {}}), offered);
}

void TestFrontDesk::theListOfRecentMatchesIsShortAndHasEachOnce() {
    QStringList paths;
    for (int i = 0; i < 12; ++i)
        paths = withNewest(paths, QString::number(i));
    QCOMPARE(paths.join(u' '), u"11 10 9 8 7 6 5 4"_s);
    QCOMPARE(withNewest(paths, u"7"_s).join(u' '), u"7 11 10 9 8 6 5 4"_s);
}

void TestFrontDesk::aLedgerMadeInOneGoIsReadBack() {
    const std::vector<Recorded> entries = MatchBuilder().started().play("hvh").undo().entries();
    const auto bytes = ledgerOf(entries);
    QVERIFY(bytes);
    QVERIFY(readLedger(*bytes).entries == entries);

    std::vector<Recorded> spoilt = entries;
    std::get<MatchOpened>(spoilt.front().entry).venue = u"a\u001bb"_s;
    QCOMPARE(ledgerOf(spoilt).error().line, 1);
}

QTEST_MAIN(TestFrontDesk)
#include "tst_frontdesk.moc"
