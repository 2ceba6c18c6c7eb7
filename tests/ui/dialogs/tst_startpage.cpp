// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/dialogs/dialogmatches.h"
#include "tests/ui/dialogs/hands.h"
#include "ui/dialogs/startpage.h"
#include "ui/look/colours.h"

#include <QAbstractItemView>
#include <QComboBox>
#include <QPushButton>
#include <QScrollArea>
#include <QScrollBar>
#include <QSignalSpy>
#include <QTemporaryDir>
#include <QTextDocument>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

using namespace testing;

namespace {

std::vector<RecentMatch> recent(int count) {
    std::vector<RecentMatch> matches;
    for (int i = 1; i <= count; ++i)
        matches.push_back({u"/matches/%1.setfolio"_s.arg(i), u"Match %1"_s.arg(i), u"10 October 2026"_s});
    return matches;
}

enum class Hand { Mouse, Finger };

/// Drops the field's list down and chooses from it.
void chooseFrom(QWidget& page, const char* name, int row, Hand hand) {
    auto* field = childOf<QComboBox>(page, name);
    const auto press = [hand](QWidget& widget, QPoint at) {
        if (hand == Hand::Finger)
            return tap(widget, at);
        QTest::mouseMove(&widget, at);
        QTest::mouseClick(&widget, Qt::LeftButton, {}, at);
    };
    press(*field, field->rect().center());
    QTRY_VERIFY(field->view()->isVisible());
    QTest::qWait(QApplication::doubleClickInterval()); // a press so soon could be the end of the one before
    press(*field->view()->viewport(), field->view()->visualRect(field->model()->index(row, 0)).center());
    QTRY_VERIFY(!field->view()->isVisible());
}

} // namespace

class StartPageTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void spaceBeginsANewMatch();
    void enterPressesTheButtonThatHasTheKeyboard_data();
    void enterPressesTheButtonThatHasTheKeyboard();
    void newAndOpenHaveTheirKeys();
    void aMatchThatIsGoneCannotBeChosen();
    void buttonsHaveTheColoursOfTheWindow_data();
    void buttonsHaveTheColoursOfTheWindow();
    void eachChoiceIsWorkedByKeyMouseAndFinger_data();
    void eachChoiceIsWorkedByKeyMouseAndFinger();
    void aRecentMatchIsChosenByKeyMouseAndFinger();
    void aFileIsChosenFromTheFolderOfMatches();
    void aCancelledChoiceOpensNothing();
    void aPathIsShownAsItIsWritten();
    void aTitleIsShownAsItIsWritten();
    void theSmallestWindowShowsEveryChoice();
    void eightMatchesNeedNoScrolling();
    void aLanguageIsChosenByKeyMouseAndFinger();
    void aLookIsChosenByKeyMouseAndFinger();
    void aSizeOfWordsIsChosenByKeyMouseAndFinger();
    void whatIsInForceIsMarked();
    void thePageIsMadeAnewAroundTheKeyboard();
};

void StartPageTest::spaceBeginsANewMatch() {
    StartPage page({});
    QSignalSpy wanted(&page, &StartPage::newMatchWanted);
    showActive(page);
    pressIn(page, Qt::Key_Space);
    QCOMPARE(wanted.size(), 1);
}

void StartPageTest::enterPressesTheButtonThatHasTheKeyboard_data() {
    QTest::addColumn<Qt::Key>("key");
    QTest::newRow("Return") << Qt::Key_Return;
    QTest::newRow("Enter of the number pad") << Qt::Key_Enter;
}

void StartPageTest::enterPressesTheButtonThatHasTheKeyboard() {
    QFETCH(Qt::Key, key);
    StartPage page(recent(3));
    QSignalSpy newMatch(&page, &StartPage::newMatchWanted);
    QSignalSpy demo(&page, &StartPage::demoWanted);
    QSignalSpy chosen(&page, &StartPage::matchChosen);
    showActive(page);
    pressIn(page, key);
    QCOMPARE(newMatch.size(), 1); // it has the keyboard at first
    QVERIFY(tabTo(page, u"demo"_s));
    pressIn(page, key);
    QCOMPARE(demo.size(), 1);
    QVERIFY(tabTo(page, u"recent"_s));
    pressIn(page, key);
    QCOMPARE(chosen.size(), 1);
    QCOMPARE(newMatch.size(), 1);
}

void StartPageTest::newAndOpenHaveTheirKeys() {
    const QTemporaryDir folder;
    write(folder.filePath(u"a.setfolio"_s), {});
    StartPage page({});
    page.setFolder(folder.path());
    QSignalSpy newMatch(&page, &StartPage::newMatchWanted);
    QSignalSpy chosen(&page, &StartPage::matchChosen);
    showActive(page);
    pressIn(page, Qt::Key_N, Qt::ControlModifier);
    QCOMPARE(newMatch.size(), 1);
    const ChoosingFile choosing(u"a.setfolio"_s);
    pressIn(page, Qt::Key_O, Qt::ControlModifier);
    QVERIFY(choosing.hasChosen());
    QCOMPARE(chosen.size(), 1);
}

void StartPageTest::aMatchThatIsGoneCannotBeChosen() {
    StartPage page(recent(2));
    QSignalSpy chosen(&page, &StartPage::matchChosen);
    showActive(page);
    page.showGone(u"/matches/2.setfolio"_s);
    page.showGone(u"/matches/never listed.setfolio"_s);
    const auto buttons = page.findChildren<QPushButton*>(u"recent"_s);
    QVERIFY(buttons.at(0)->isEnabled() && !buttons.at(1)->isEnabled());
    QCOMPARE(buttons.at(1)->accessibleDescription(), u"The file is no longer there: /matches/2.setfolio"_s);
    QTest::mouseClick(buttons.at(1), Qt::LeftButton);
    QCOMPARE(chosen.size(), 0);
}

void StartPageTest::buttonsHaveTheColoursOfTheWindow_data() {
    QTest::addColumn<Theme>("theme");
    QTest::newRow("light") << Theme::Light;
    QTest::newRow("dark") << Theme::Dark;
}

void StartPageTest::buttonsHaveTheColoursOfTheWindow() {
    QFETCH(Theme, theme);
    const QPalette before = QApplication::palette();
    QApplication::setPalette(paletteOf(theme));
    StartPage page({});
    showActive(page);
    QApplication::setPalette(before);
    const Colours& colours = coloursOf(theme);
    const auto groundOf = [](QPushButton* shown) {
        return QColor(shown->grab().toImage().pixel(shown->width() - 20, 30));
    };
    auto* other = childOf<QPushButton>(page, "demo");
    auto* button = childOf<QPushButton>(page, "openFile");
    QTest::mouseMove(other);
    QTest::mouseMove(button);
    QTRY_COMPARE(groundOf(other), colours.button);
    QTRY_COMPARE(groundOf(button), colours.panel);
    QTest::mousePress(button, Qt::LeftButton);
    QCOMPARE(groundOf(button), colours.bar);
    QTest::mouseRelease(button, Qt::LeftButton, Qt::NoModifier, QPoint(-9, -9)); // let go beside it: nothing is asked
}

void StartPageTest::eachChoiceIsWorkedByKeyMouseAndFinger_data() {
    QTest::addColumn<QString>("name");
    QTest::addColumn<bool>("isDemo");
    QTest::newRow("new match") << u"newMatch"_s << false;
    QTest::newRow("demo match") << u"demo"_s << true;
}

void StartPageTest::eachChoiceIsWorkedByKeyMouseAndFinger() {
    QFETCH(QString, name);
    QFETCH(bool, isDemo);
    StartPage page(recent(3));
    QSignalSpy wanted(&page, isDemo ? &StartPage::demoWanted : &StartPage::newMatchWanted);
    showActive(page);
    auto* button = page.findChild<QPushButton*>(name);
    QVERIFY(tabTo(page, name));
    pressIn(page, Qt::Key_Space);
    QCOMPARE(wanted.size(), 1);
    QTest::mouseClick(button, Qt::LeftButton);
    QCOMPARE(wanted.size(), 2);
    tap(*button);
    QTRY_COMPARE(wanted.size(), 3);
}

void StartPageTest::aRecentMatchIsChosenByKeyMouseAndFinger() {
    StartPage page(recent(3));
    QSignalSpy chosen(&page, &StartPage::matchChosen);
    showActive(page);
    const auto buttons = page.findChildren<QPushButton*>(u"recent"_s);
    QCOMPARE(buttons.size(), 3);
    QVERIFY(tabTo(page, u"recent"_s)); // the newest comes first
    pressIn(page, Qt::Key_Space);
    QTest::mouseClick(buttons.at(1), Qt::LeftButton);
    tap(*buttons.at(2));
    QTRY_COMPARE(chosen.size(), 3);
    for (int i = 0; i < 3; ++i)
        QCOMPARE(chosen.at(i).at(0).toString(), u"/matches/%1.setfolio"_s.arg(i + 1));
}

void StartPageTest::aFileIsChosenFromTheFolderOfMatches() {
    const QTemporaryDir folder;
    const QString path = folder.filePath(u"a.setfolio"_s);
    write(path, {});
    StartPage page({});
    page.setFolder(folder.path());
    QSignalSpy chosen(&page, &StartPage::matchChosen);
    showActive(page);
    const ChoosingFile choosing(u"a.setfolio"_s);
    QTest::mouseClick(childOf<QPushButton>(page, "openFile"), Qt::LeftButton);
    QVERIFY(choosing.hasChosen());
    QCOMPARE(chosen.size(), 1);
    QCOMPARE(chosen.at(0).at(0).toString(), path);
}

void StartPageTest::aCancelledChoiceOpensNothing() {
    StartPage page({});
    QSignalSpy chosen(&page, &StartPage::matchChosen);
    showActive(page);
    const ChoosingFile choosing(QString{});
    QTest::mouseClick(childOf<QPushButton>(page, "openFile"), Qt::LeftButton);
    QVERIFY(choosing.hasChosen());
    QCOMPARE(chosen.size(), 0);
}

void StartPageTest::aPathIsShownAsItIsWritten() {
    const QString path = u"/matches/<b>bold</b> & <img src='x'>/a.setfolio"_s;
    const StartPage page({{path, u"A"_s, u"B"_s}});
    QTextDocument shown;
    shown.setHtml(page.findChild<QPushButton*>(u"recent"_s)->toolTip());
    QCOMPARE(shown.toPlainText(), path);
}

void StartPageTest::aTitleIsShownAsItIsWritten() {
    const StartPage page({{u"/a"_s, u"<b>Herons</b> & Larks"_s, u"<i>B</i>"_s}});
    const auto* button = page.findChild<QPushButton*>(u"recent"_s);
    QCOMPARE(button->accessibleName(), u"<b>Herons</b> & Larks"_s);
    QVERIFY(button->text().isEmpty()); // drawn by hand, so that "&" is no key
}

void StartPageTest::theSmallestWindowShowsEveryChoice() {
    StartPage page(recent(8));
    page.resize(10, 10);
    showActive(page);
    QVERIFY(page.width() <= 1366 && page.height() <= 696);
    for (const auto* button : page.findChildren<QPushButton*>()) {
        QVERIFY(button->height() >= (button->property("twoLine").toBool() ? 60 : 44)); // both lines
        if (button->objectName() != u"recent"_s)
            QVERIFY(page.rect().contains(QRect(button->mapTo(&page, QPoint(0, 0)), button->size())));
    }
}

void StartPageTest::eightMatchesNeedNoScrolling() {
    StartPage page(recent(8));
    showActive(page);
    QCOMPARE(page.findChild<QScrollArea*>()->verticalScrollBar()->maximum(), 0);
}

void StartPageTest::aLanguageIsChosenByKeyMouseAndFinger() {
    StartPage page({});
    page.offerLanguages({allLanguages.begin(), allLanguages.end()}, Language::English);
    QSignalSpy chosen(&page, &StartPage::languageChosen);
    showActive(page);
    QVERIFY(tabTo(page, u"language-es"_s));
    pressIn(page, Qt::Key_Space);
    QTest::mouseClick(childOf<QPushButton>(page, "language-fr"), Qt::LeftButton);
    tap(*childOf<QPushButton>(page, "language-en"));
    QTRY_COMPARE(chosen.size(), 3);
    QCOMPARE(chosen.at(0).front().value<Language>(), Language::Spanish);
    QCOMPARE(chosen.at(1).front().value<Language>(), Language::French);
    QCOMPARE(chosen.at(2).front().value<Language>(), Language::English);
}

void StartPageTest::aLookIsChosenByKeyMouseAndFinger() {
    StartPage page({});
    QSignalSpy chosen(&page, &StartPage::lookChosen);
    showActive(page);
    QVERIFY(tabTo(page, u"look"_s));
    pressIn(page, Qt::Key_Down);
    chooseFrom(page, "look", 2, Hand::Mouse);
    chooseFrom(page, "look", 3, Hand::Finger);
    QTRY_COMPARE(chosen.size(), 3);
    QCOMPARE(chosen.at(0).front().value<LookChoice>(), LookChoice::Light);
    QCOMPARE(chosen.at(1).front().value<LookChoice>(), LookChoice::Dark);
    QCOMPARE(chosen.at(2).front().value<LookChoice>(), LookChoice::HighContrast);
}

void StartPageTest::aSizeOfWordsIsChosenByKeyMouseAndFinger() {
    StartPage page({});
    QSignalSpy chosen(&page, &StartPage::textSizeChosen);
    showActive(page);
    QVERIFY(tabTo(page, u"textSize"_s));
    pressIn(page, Qt::Key_Down);
    chooseFrom(page, "textSize", 2, Hand::Mouse);
    chooseFrom(page, "textSize", 3, Hand::Finger);
    QTRY_COMPARE(chosen.size(), 3);
    for (int i = 0; i < 3; ++i)
        QCOMPARE(chosen.at(i).front().toInt(), (std::array{125, 150, 200}).at(static_cast<std::size_t>(i)));
}

void StartPageTest::whatIsInForceIsMarked() {
    setProgramLook(LookChoice::Dark);
    setProgramTextSize(125);
    StartPage page({});
    page.offerLanguages({allLanguages.begin(), allLanguages.end()}, Language::Spanish);
    setProgramLook(LookChoice::AsSystem);
    setProgramTextSize(100);
    QVERIFY(childOf<QPushButton>(page, "language-es")->isChecked());
    QVERIFY(!childOf<QPushButton>(page, "language-en")->isChecked());
    QCOMPARE(childOf<QComboBox>(page, "look")->currentIndex(), 2);
    const QLocale before;
    QLocale::setDefault(QLocale(QLocale::French, QLocale::Canada));
    StartPage french({});
    french.offerLanguages({allLanguages.begin(), allLanguages.end()}, Language::AsSystem);
    QLocale::setDefault(before);
    QVERIFY(childOf<QPushButton>(french, "language-fr")->isChecked());
    QCOMPARE(childOf<QComboBox>(page, "textSize")->currentIndex(), 1);
}

void StartPageTest::thePageIsMadeAnewAroundTheKeyboard() {
    StartPage page(recent(3));
    page.offerLanguages({allLanguages.begin(), allLanguages.end()}, Language::English);
    showActive(page);
    QVERIFY(tabTo(page, u"look"_s));
    const QRect before = page.geometry();
    setProgramLook(LookChoice::Dark);
    page.rebuild(recent(4), Language::French);
    setProgramLook(LookChoice::AsSystem);
    QCOMPARE(page.geometry(), before);
    QCOMPARE(page.focusWidget(), childOf<QComboBox>(page, "look"));
    QVERIFY(childOf<QPushButton>(page, "language-fr")->isChecked());
    QCOMPARE(page.findChildren<QPushButton*>(u"recent"_s).size(), 4);
    QCOMPARE(page.grab().toImage().pixelColor(2, 2), coloursOf(Theme::Dark).ground);
    QSignalSpy wanted(&page, &StartPage::newMatchWanted);
    pressIn(page, Qt::Key_N, Qt::ControlModifier);
    QCOMPARE(wanted.size(), 1); // its keys are there once
}

} // namespace setfolio

QTEST_MAIN(setfolio::StartPageTest)
#include "tst_startpage.moc"
