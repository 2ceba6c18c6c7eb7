// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/contrast.h"
#include "tests/ui/drawnwords.h"
#include "tests/ui/sweep.h"
#include "tests/ui/windowscenes.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/look/plate.h"
#include "ui/table/keybutton.h"
#include "ui/table/look.h"
#include "ui/table/sheetview.h"
#include "ui/table/tablewindow.h"
#include "ui/table/teamarea.h"

#include <QApplication>
#include <QComboBox>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QPainter>
#include <QPushButton>
#include <QTest>
#include <QTextBrowser>

#include <map>

using namespace Qt::Literals::StringLiterals;
using namespace setfolio;
using namespace setfolio::testing;

namespace {

constexpr std::array themes{Theme::Light, Theme::Dark, Theme::HighContrast};
constexpr std::array themeNames{"light", "dark", "high contrast"};

/// WCAG 2.2, 1.4.3 Contrast (Minimum), level AA, for text of any size; 1.4.6 Contrast (Enhanced), level AAA, in the
/// look that is made for it.
double asked(Theme theme) {
    return theme == Theme::HighContrast ? 7 : leastTextContrast;
}
LookChoice choiceOf(Theme theme) {
    return allLookChoices.at(static_cast<std::size_t>(theme) + 1);
}

double contrastOf(const QColor& one, const QColor& other) {
    return contrastRatio(one.rgb(), other.rgb());
}

struct OnGround {
    const char* what;
    QColor ink;
    QColor ground;
};

/// Every pair of ink and ground in which words are drawn.
std::vector<OnGround> wordsOf(Theme theme) {
    const Look look = Look::of(theme, 1);
    const Colours& c = look.colours;
    std::vector<OnGround> words;
    for (const auto& [name, ground] : std::initializer_list<std::pair<const char*, QColor>>{
             {"the ground", c.ground}, {"the bar", c.bar}, {"a panel", c.panel}, {"a button", c.button}}) {
        words.push_back({"text", c.text, ground});
        words.push_back({"secondary text", c.secondary, ground});
        words.push_back({"a problem", c.problem, ground});
        Q_UNUSED(name)
    }
    words.push_back({"text on a pressed button", c.text, look.pressed});
    words.push_back({"the newest entry", c.text, look.newest});
    words.push_back({"the newest entry, quietly", c.secondary, look.newest});
    words.push_back({"a position on court", c.secondary, c.court});
    words.push_back({"a position beside the court", c.secondary, look.courtGround});
    words.push_back({"a chosen button", c.ground, c.text});
    words.push_back({"the net", c.panel, c.text});
    words.push_back({"an alarm", look.onAlarm, look.alarm});
    words.push_back({"amber", onAmber(), amber()});
    words.push_back({"pressed amber", onAmber(), amber().darker(115)});
    words.push_back({"a solid plate", plateLight(), plateDark()});
    words.push_back({"an outlined plate", onAmber(), plateLight()});
    const QPalette palette = paletteOf(theme);
    for (const auto group : {QPalette::Active, QPalette::Inactive, QPalette::Disabled}) {
        words.push_back(
            {"Qt's window", palette.color(group, QPalette::WindowText), palette.color(group, QPalette::Window)});
        words.push_back({"Qt's fields", palette.color(group, QPalette::Text), palette.color(group, QPalette::Base)});
        words.push_back(
            {"Qt's other rows", palette.color(group, QPalette::Text), palette.color(group, QPalette::AlternateBase)});
        words.push_back({"Qt's placeholders", palette.color(group, QPalette::PlaceholderText),
                         palette.color(group, QPalette::Base)});
        words.push_back(
            {"Qt's buttons", palette.color(group, QPalette::ButtonText), palette.color(group, QPalette::Button)});
        words.push_back({"Qt's selection", palette.color(group, QPalette::HighlightedText),
                         palette.color(group, QPalette::Highlight)});
        words.push_back(
            {"Qt's tips", palette.color(group, QPalette::ToolTipText), palette.color(group, QPalette::ToolTipBase)});
    }
    return words;
}

constexpr int finely = 3; ///< pixels of the picture for one of the window, so that thin strokes reach their ink

QImage pictureOf(QWidget& window) {
    QImage picture(window.size() * finely, QImage::Format_RGB32);
    picture.setDevicePixelRatio(finely);
    window.render(&picture);
    return picture;
}

/// The contrast between the colour that most of a part of a picture has and the one that differs most from it.
double contrastIn(const QImage& picture, const QRect& part) {
    std::map<QRgb, int> count;
    const QRect pixels = QRect(part.topLeft() * finely, part.size() * finely) & picture.rect();
    for (int y = pixels.top(); y <= pixels.bottom(); ++y)
        for (int x = pixels.left(); x <= pixels.right(); ++x)
            ++count[picture.pixel(x, y)];
    const auto most = std::ranges::max_element(count, {}, [](const auto& one) { return one.second; });
    double best = 1;
    for (const auto& [colour, times] : count)
        best = std::max(best, contrastOf(QColor(colour), QColor(most->first)));
    return best;
}

struct Seen {
    QString words;
    QRect place; ///< in the window
};

bool holdsWords(const QString& text) {
    return std::ranges::any_of(text, [](QChar sign) { return sign.isLetterOrNumber(); });
}

bool drawsSheet(const QWidget* widget) {
    return qobject_cast<const SheetView*>(widget) || widget->inherits("setfolio::PageCanvas");
}

/// Whether nothing else lies over the middle and the corners of a place.
bool isOnTop(QWidget& widget, const QWidget& window, const QRect& place) {
    return std::ranges::all_of(std::array{place.center(), place.topLeft(), place.bottomRight()}, [&](QPoint at) {
        const QWidget* top = window.childAt(at);
        return !top || top == &widget || widget.isAncestorOf(top) || top->isAncestorOf(&widget);
    });
}

/// The words in a window: those of labels, buttons and fields of Qt's, and those that our own widgets draw.
std::vector<Seen> wordsIn(QWidget& window) {
    std::vector<Seen> seen;
    const auto add = [&](QWidget* widget, const QString& text, const QRect& place) {
        const QRect inWindow(widget->mapTo(&window, place.topLeft()), place.size());
        const bool uncovered = widget->visibleRegion().contains(place) && isOnTop(*widget, window, inWindow);
        if (uncovered && holdsWords(text) && window.rect().contains(inWindow))
            seen.push_back({text, inWindow});
    };
    for (auto* widget : window.findChildren<QWidget*>()) {
        if (!widget->isVisible() || widget->window() != &window || drawsSheet(widget))
            continue;
        const QRect inner = widget->rect().adjusted(6, 6, -6, -6);
        if (auto* label = qobject_cast<QLabel*>(widget))
            add(widget, label->text(), label->rect());
        else if (auto* field = qobject_cast<QLineEdit*>(widget))
            add(widget, field->text() + field->placeholderText(), inner);
        else if (auto* box = qobject_cast<QComboBox*>(widget))
            add(widget, box->currentText(), inner);
        else if (QByteArrayView(widget->metaObject()->className()).startsWith("setfolio::"))
            for (const DrawnWords& words : wordsDrawnBy(*widget))
                add(widget, words.text, words.place.toAlignedRect());
        else if (auto* button = qobject_cast<QPushButton*>(widget))
            add(widget, button->text(), inner);
    }
    return seen;
}

QString focusedPicture(QWidget& window, QWidget& control, bool focused) {
    focused ? control.setFocus(Qt::TabFocusReason) : control.clearFocus();
    QImage picture(window.size(), QImage::Format_RGB32);
    window.render(&picture);
    return QString::number(qHash(QByteArrayView(picture.constBits(), picture.sizeInBytes()), 0));
}

} // namespace

class TestLooks : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void cleanup();
    void contrastIsThatOfThePublishedFormula();
    void everyTextHasContrastOnItsGround_data();
    void everyTextHasContrastOnItsGround();
    void whatCanBePressedHasAnEdge_data() { everyTextHasContrastOnItsGround_data(); }
    void whatCanBePressedHasAnEdge();
    void focusIsSeen_data() { everyTextHasContrastOnItsGround_data(); }
    void focusIsSeen();
    void whatIsDrawnHasContrast_data();
    void whatIsDrawnHasContrast();
    void aPaletteAsksForItsTheme();
    void theSystemsPaletteComesBack();
    void wordsGrowUpToTwice_data();
    void wordsGrowUpToTwice();
};

void TestLooks::cleanup() {
    setProgramLook(LookChoice::AsSystem);
    setProgramTextSize(100);
}

void TestLooks::contrastIsThatOfThePublishedFormula() {
    QCOMPARE(contrastOf(Qt::black, Qt::white), 21.0);
    QCOMPARE(contrastOf(Qt::red, Qt::red), 1.0);
    QVERIFY(std::abs(contrastOf(QColor(0x76, 0x76, 0x76), Qt::white) - 4.54) < 0.01); // the greys on either side of 4.5
    QVERIFY(std::abs(contrastOf(QColor(0x77, 0x77, 0x77), Qt::white) - 4.48) < 0.01);
}

void TestLooks::everyTextHasContrastOnItsGround_data() {
    QTest::addColumn<Theme>("theme");
    for (std::size_t i = 0; i < themes.size(); ++i)
        QTest::newRow(themeNames.at(i)) << themes.at(i);
}

void TestLooks::everyTextHasContrastOnItsGround() {
    QFETCH(Theme, theme);
    double least = 21;
    for (const OnGround& words : wordsOf(theme)) {
        const double contrast = contrastOf(words.ink, words.ground);
        least = std::min(least, contrast);
        QVERIFY2(
            contrast >= asked(theme),
            qPrintable(u"%1: %2 on %3 is %4"_s.arg(QLatin1String(words.what), words.ink.name(), words.ground.name())
                           .arg(contrast, 0, 'f', 2)));
    }
    qInfo("least contrast of %zu pairs: %.2f", wordsOf(theme).size(), least);
}

void TestLooks::whatCanBePressedHasAnEdge() {
    QFETCH(Theme, theme);
    const Colours& colours = coloursOf(theme);
    for (const QColor& ground : {colours.ground, colours.panel, colours.button}) {
        QVERIFY(contrastOf(colours.edge, ground) >= leastShapeContrast);
        QVERIFY(contrastOf(colours.focus, ground) >= leastShapeContrast);
    }
}

void TestLooks::focusIsSeen() {
    QFETCH(Theme, theme);
    setProgramLook(choiceOf(theme));
    QWidget window;
    dress(window);
    window.resize(600, 500);
    const Look look = Look::of(theme, 1);
    auto* key = new KeyButton(TableCommand::Replay, &window);
    key->setLook(look);
    auto* area = new TeamArea(Side::Left, &window);
    area->setLook(look);
    auto* primary = new QPushButton(u"primary"_s, &window);
    makePrimary(*primary);
    auto* list = new QListWidget(&window);
    list->addItem(u"one"_s);
    const std::vector<QWidget*> controls{key,
                                         area,
                                         primary,
                                         list,
                                         new QPushButton(u"button"_s, &window),
                                         new QLineEdit(&window),
                                         new QComboBox(&window),
                                         new QTextBrowser(&window)};
    int y = 0;
    for (QWidget* control : controls)
        control->setGeometry(0, std::exchange(y, y + 60), 300, 56);
    window.show();
    QVERIFY(QTest::qWaitForWindowActive(&window));
    for (QWidget* control : controls)
        QVERIFY2(focusedPicture(window, *control, true) != focusedPicture(window, *control, false),
                 control->metaObject()->className());
}

void TestLooks::whatIsDrawnHasContrast_data() {
    QTest::addColumn<int>("scene");
    QTest::addColumn<Theme>("theme");
    int number = 0;
    for (const WindowScene& scene : windowScenes()) {
        for (std::size_t i = 0; i < themes.size(); ++i)
            QTest::addRow("%s, %s", scene.name, themeNames.at(i)) << number << themes.at(i);
        ++number;
    }
}

void TestLooks::whatIsDrawnHasContrast() {
    QFETCH(int, scene);
    QFETCH(Theme, theme);
    setProgramLook(choiceOf(theme));
    setProgramTextSize(100);
    const ShownWindow shown = windowScenes().at(static_cast<std::size_t>(scene)).show();
    const std::vector<Seen> words = wordsIn(*shown.window);
    QVERIFY(!words.empty());
    const QImage picture = pictureOf(*shown.window);
    QStringList weak;
    for (const Seen& seen : words) {
        const double contrast = contrastIn(picture, seen.place);
        if (contrast < asked(theme))
            weak << u"%1: %2"_s.arg(seen.words).arg(contrast, 0, 'f', 2);
    }
    QVERIFY2(weak.isEmpty(), qPrintable(weak.join(u"\n  "_s)));
}

void TestLooks::aPaletteAsksForItsTheme() {
    for (const Theme theme : themes)
        QCOMPARE(themeOf(paletteOf(theme)), theme);
}

void TestLooks::theSystemsPaletteComesBack() {
    const QColor before = QApplication::palette().color(QPalette::Window);
    setProgramLook(LookChoice::HighContrast);
    QCOMPARE(QApplication::palette().color(QPalette::Window), QColor(Qt::black));
    setProgramLook(LookChoice::AsSystem);
    QCOMPARE(QApplication::palette().color(QPalette::Window), before);
}

void TestLooks::wordsGrowUpToTwice_data() {
    QTest::addColumn<int>("percent");
    QTest::addColumn<int>("pixels");
    QTest::newRow("100") << 100 << 15;
    QTest::newRow("125") << 125 << 19;
    QTest::newRow("150") << 150 << 23;
    QTest::newRow("200") << 200 << 30;
    QTest::newRow("300") << 300 << 30;
}

void TestLooks::wordsGrowUpToTwice() {
    QFETCH(int, percent);
    setProgramTextSize(percent);
    QTEST(windowFont(15).pixelSize(), "pixels");
    QCOMPARE(programTextSize(), percent);
}

QTEST_MAIN(TestLooks)
#include "tst_looks.moc"
