// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/sweep.h"
#include "tests/ui/windowscenes.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/look/plate.h"
#include "ui/table/keybutton.h"
#include "ui/table/timeoutcard.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QMenu>
#include <QPushButton>
#include <QScrollArea>
#include <QStyledItemDelegate>
#include <QTest>

using namespace Qt::Literals::StringLiterals;
using namespace setfolio::testing;

namespace {

constexpr int fingertip = 44; ///< pixels at scale 1

void compareToNothing(const QStringList& complaints) {
    QVERIFY2(complaints.isEmpty(), qPrintable(u"\n  "_s + complaints.join(u"\n  "_s)));
}

} // namespace

class TestEveryWindow : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void cleanup() { setfolio::setProgramTextSize(100); }
    void itFitsTheSmallestScreen_data() { scenes(); }
    void itFitsTheSmallestScreen();
    void everyControlHasAName_data() { scenes(); }
    void everyControlHasAName();
    void everyControlIsLargeEnoughForAFinger_data() { scenes(); }
    void everyControlIsLargeEnoughForAFinger();
    void everyControlIsReachedByTheKeyboard_data() { scenes(); }
    void everyControlIsReachedByTheKeyboard();
    void noWordsAreCutOff_data() { scenes(); }
    void noWordsAreCutOff();
    void nothingIsLostWithWordsTwiceAsLarge_data() { scenes(); }
    void nothingIsLostWithWordsTwiceAsLarge();
    void whatIsWrongIsFound();
    void whatIsOutOfReachIsFound();
    void smallRowsOfMenusAndListsAreFound();
    void wordsUnderAControlAreFound();

private:
    static void scenes();
    static ShownWindow open();
};

void TestEveryWindow::scenes() {
    QTest::addColumn<int>("scene");
    int number = 0;
    for (const WindowScene& scene : windowScenes())
        QTest::newRow(scene.name) << number++;
}

ShownWindow TestEveryWindow::open() {
    QFETCH(int, scene);
    setfolio::setProgramTextSize(100); // as the program does
    return windowScenes().at(static_cast<std::size_t>(scene)).show();
}

void TestEveryWindow::itFitsTheSmallestScreen() {
    const ShownWindow shown = open();
    const QSize size = shown.window->size();
    QVERIFY2(size.width() <= smallestRoom.width() && size.height() <= smallestRoom.height(),
             qPrintable(u"%1 x %2"_s.arg(size.width()).arg(size.height())));
}

void TestEveryWindow::everyControlHasAName() {
    const ShownWindow shown = open();
    QVERIFY(!controlsOf(*shown.window).empty());
    compareToNothing(unnamedControls(*shown.window));
}

void TestEveryWindow::everyControlIsLargeEnoughForAFinger() {
    const ShownWindow shown = open();
    compareToNothing(smallControls(*shown.window, fingertip));
}

void TestEveryWindow::everyControlIsReachedByTheKeyboard() {
    const ShownWindow shown = open();
    compareToNothing(unreachedControls(*shown.window));
}

void TestEveryWindow::noWordsAreCutOff() {
    const ShownWindow shown = open();
    compareToNothing(cutWords(*shown.window));
}

// WCAG 2.2, 1.4.4 Resize Text, level AA: up to 200 percent without loss of content or functionality.
void TestEveryWindow::nothingIsLostWithWordsTwiceAsLarge() {
    QFETCH(int, scene);
    setfolio::setProgramTextSize(200);
    const ShownWindow shown = windowScenes().at(static_cast<std::size_t>(scene)).show();
    shown.window->resize(shown.window->size().boundedTo(smallestRoom));
    QTest::qWait(50); // what is laid out anew comes to rest
    const QSize size = shown.window->size();
    QVERIFY2(size.width() <= smallestRoom.width() && size.height() <= smallestRoom.height(),
             qPrintable(u"%1 x %2"_s.arg(size.width()).arg(size.height())));
    compareToNothing(controlsOutOfReach(*shown.window) + overlappingControls(*shown.window) + cutWords(*shown.window));
}

void TestEveryWindow::whatIsOutOfReachIsFound() {
    QWidget window;
    window.resize(300, 200);
    auto* scroll = new QScrollArea(&window);
    scroll->setGeometry(0, 0, 300, 100);
    auto* inner = new QWidget;
    inner->resize(300, 500);
    auto* scrolledTo = new QPushButton(u"scrolled to"_s, inner);
    scrolledTo->setGeometry(0, 400, 100, 44);
    scroll->setWidget(inner);
    auto* lost = new QPushButton(u"lost"_s, &window);
    lost->setGeometry(0, 180, 100, 44);
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    QCOMPARE(controlsOutOfReach(window).size(), 1);
    lost->move(0, 150);
    QVERIFY(controlsOutOfReach(window).isEmpty());
    scrolledTo->move(0, 480);
    QCOMPARE(controlsOutOfReach(window).size(), 1);
}

void TestEveryWindow::whatIsWrongIsFound() {
    QWidget window;
    window.resize(400, 300);
    auto* good = new QPushButton(u"good"_s, &window);
    good->setGeometry(0, 0, 100, 44);
    auto* bad = new QPushButton(&window); // no name, too small, not to be reached
    bad->setGeometry(0, 50, 44, 43);
    bad->setFocusPolicy(Qt::NoFocus);
    auto* label = new QLabel(u"more words than there is room for"_s, &window);
    label->setGeometry(0, 100, 60, 20);
    auto* drawn = new setfolio::KeyButton(setfolio::TableCommand::LeftSubstitution, &window);
    drawn->setGeometry(0, 150, 86, 50);
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    QCOMPARE(overlappingControls(window), QStringList());
    good->resize(100, 51);
    QCOMPARE(overlappingControls(window).size(), 1);
    good->resize(100, 44);
    QCOMPARE(controlsOf(window).size(), 3U);
    QCOMPARE(unnamedControls(window).size(), 1);
    QCOMPARE(smallControls(window, fingertip).size(), 1);
    QCOMPARE(unreachedControls(window).size(), 1);
    QCOMPARE(cutWords(window).size(), 2);
    label->resize(300, 20);
    drawn->resize(300, 50);
    QVERIFY(cutWords(window).isEmpty());
}

void TestEveryWindow::smallRowsOfMenusAndListsAreFound() {
    QWidget window;
    auto* menu = new QMenu(&window);
    menu->addAction(u"an item"_s);
    menu->addSeparator();
    auto* choice = new QComboBox(&window);
    choice->setGeometry(0, 0, 200, 44);
    choice->addItem(u"a row"_s);
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    QCOMPARE(smallControls(window, fingertip).size(), 2);
    choice->setItemDelegate(new QStyledItemDelegate(choice));
    setfolio::dress(window);
    QCOMPARE(smallControls(window, fingertip), QStringList());
}

void TestEveryWindow::wordsUnderAControlAreFound() {
    QWidget window;
    window.resize(400, 300);
    auto* card = new setfolio::TimeOutCard(&window);
    card->setGeometry(0, 0, 296, 200);
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    QVERIFY(!cutWords(window).isEmpty());
    card->resize(296, card->minimumSizeHint().height());
    QTRY_COMPARE(cutWords(window), QStringList());
}

QTEST_MAIN(TestEveryWindow)
#include "tst_everywindow.moc"
