// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/colourvision.h"
#include "tests/support/contrast.h"
#include "tests/support/sheetscenes.h"
#include "ui/sheet/grey.h"
#include "ui/sheet/inkstyle.h"
#include "ui/sheet/palette.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;
using sheet::InkStyle;
using sheet::styleOf;

/// The inks of the rounds and all other colours of the sheet: told from their ground and from each other by every eye,
/// and in grey.
class TestInks : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theFormulasGiveTheFiguresOfTheirPapers_data();
    void theFormulasGiveTheFiguresOfTheirPapers();
    void contrastIsThatOfTheGuidelines();
    void eachInkIsReadOnItsGrounds_data();
    void eachInkIsReadOnItsGrounds();
    void eachTextIsReadOnWhatLiesUnderIt_data();
    void eachTextIsReadOnWhatLiesUnderIt();
    void twoInksAreToldApartByEveryEye_data();
    void twoInksAreToldApartByEveryEye();
    void theUsualThreeInksAreToldApartInGrey();
    void twoInksAreToldApartByTheirLinesAlone_data();
    void twoInksAreToldApartByTheirLinesAlone();
    void aGreyIsAsLightAsItsColour();
    void aGreyPageHasNothingButGreys();

private:
    SheetFonts m_fonts = SheetFonts::load().value();
};

namespace {

constexpr std::array allInks{Ink::First, Ink::Second, Ink::Third, Ink::Fourth};

/// The colour as it is printed.
QRgb colourOf(Ink ink, InkSet set) {
    const QRgb colour = styleOf(ink, set).colour;
    return set == InkSet::Greys ? sheet::greyOf(colour) : colour;
}

QByteArray rowName(InkSet set, Ink ink) {
    return nameOf(set).toLatin1() + " " + QByteArray::number(static_cast<int>(ink) + 1);
}

/// Each two inks of each set; `all`, or only of those that differ by hue.
void pairRows(bool all) {
    QTest::addColumn<InkSet>("set");
    QTest::addColumn<Ink>("one");
    QTest::addColumn<Ink>("other");
    for (const InkSet set : allInkSets)
        for (const Ink one : allInks)
            for (const Ink other : allInks)
                if (one < other && (all || set < InkSet::Greys))
                    QTest::newRow(rowName(set, one) + " and " + QByteArray::number(static_cast<int>(other) + 1))
                        << set << one << other;
}

SheetOptions optionsOf(const SheetFonts& fonts, InkSet inks, bool screen) {
    return {.fonts = fonts, .screen = screen, .locale = QLocale(QStringLiteral("en_GB")), .former = {}, .inks = inks};
}

std::optional<QRgb> fillOf(const Item& item) {
    if (const auto* rect = std::get_if<RectShape>(&item.shape))
        return rect->fill;
    const auto* polygon = std::get_if<PolygonShape>(&item.shape);
    return polygon ? polygon->fill : std::nullopt;
}

/// The colour under the middle of an item: of the newest filled shape there that was drawn before it.
QRgb groundOf(const Page& page, std::size_t index, QRgb paper) {
    const QPointF middle = boundingBox(page.items[index]).center();
    QRgb ground = paper;
    for (std::size_t i = 0; i < index; ++i)
        if (const auto fill = fillOf(page.items[i]); fill && boundingBox(page.items[i]).contains(middle))
            ground = *fill;
    return ground;
}

/// The colours of all that is drawn.
std::vector<QRgb> coloursOf(const Item& item) {
    std::vector<QRgb> colours;
    if (const auto fill = fillOf(item))
        colours.push_back(*fill);
    std::visit(
        [&](const auto& shape) {
            if constexpr (requires { shape.stroke.colour; })
                colours.push_back(shape.stroke.colour);
            else if constexpr (requires { shape.outline.colour; })
                colours.push_back(shape.outline.colour);
            else
                colours.push_back(shape.colour);
        },
        item.shape);
    return colours;
}

} // namespace

void TestInks::theFormulasGiveTheFiguresOfTheirPapers_data() {
    QTest::addColumn<Lab>("one");
    QTest::addColumn<Lab>("other");
    QTest::addColumn<double>("distance");
    // clang-format off
    // Sharma, Wu, Dalal 2005, Table 1: the pairs' numbers.
    QTest::newRow("pair 1")  << Lab{50, 2.6772, -79.7751}        << Lab{50, 0, -82.7485}            << 2.0425;
    QTest::newRow("pair 17") << Lab{50, 2.5, 0}                  << Lab{73, 25, -18}                << 27.1492;
    QTest::newRow("pair 20") << Lab{50, 2.5, 0}                  << Lab{58, 24, 15}                 << 19.4535;
    QTest::newRow("pair 25") << Lab{60.2574, -34.0099, 36.2677}  << Lab{60.4626, -34.1751, 39.4387} << 1.2644;
    // clang-format on
}

void TestInks::theFormulasGiveTheFiguresOfTheirPapers() {
    QFETCH(Lab, one);
    QFETCH(Lab, other);
    QFETCH(double, distance);
    QVERIFY2(std::abs(setfolio::testing::distance(one, other) - distance) < 1e-4,
             qPrintable(QString::number(setfolio::testing::distance(one, other), 'f', 5)));
}

void TestInks::contrastIsThatOfTheGuidelines() {
    QCOMPARE(contrastRatio(0xFF000000, 0xFFFFFFFF), 21.0); // WCAG 2.2, contrast ratio: from 1 to 21
    QCOMPARE(contrastRatio(0xFF777777, 0xFF777777), 1.0);
    // Greys have no hue to lose, and white stays white: each row of Machado's matrices adds up to 1.
    for (const Sight sight : allSights)
        for (const QRgb grey : {0xFF000000U, 0xFF808080U, 0xFFFFFFFFU})
            QCOMPARE(seenBy(sight, grey), grey);
}

void TestInks::eachInkIsReadOnItsGrounds_data() {
    QTest::addColumn<InkSet>("set");
    QTest::addColumn<Ink>("ink");
    for (const InkSet set : allInkSets)
        for (const Ink ink : allInks)
            QTest::newRow(rowName(set, ink)) << set << ink;
}

void TestInks::eachInkIsReadOnItsGrounds() {
    QFETCH(InkSet, set);
    QFETCH(Ink, ink);
    std::vector<QRgb> grounds{sheet::white, sheet::paper, sheet::live};
    if (const auto tint = styleOf(ink, set).tint)
        grounds.push_back(*tint);
    for (QRgb ground : grounds) {
        if (set == InkSet::Greys)
            ground = sheet::greyOf(ground);
        for (const Sight sight : allSights) {
            const double ratio = contrastRatio(seenBy(sight, colourOf(ink, set)), seenBy(sight, ground));
            QVERIFY2(ratio >= leastTextContrast, qPrintable(QStringLiteral("%1 on %2, sight %3: %4")
                                                                .arg(colourOf(ink, set), 0, 16)
                                                                .arg(ground, 0, 16)
                                                                .arg(static_cast<int>(sight))
                                                                .arg(ratio)));
        }
    }
}

void TestInks::eachTextIsReadOnWhatLiesUnderIt_data() {
    QTest::addColumn<QString>("name");
    for (const QString& name : sheetSceneNames())
        QTest::newRow(qPrintable(name)) << name;
}

void TestInks::eachTextIsReadOnWhatLiesUnderIt() {
    QFETCH(QString, name);
    const SheetScene scene = sheetScene(name);
    for (const InkSet inks : allInkSets) {
        const std::vector<Page> pages = composeSet(scene.heading, scene.set, optionsOf(m_fonts, inks, scene.screen));
        for (const Page& page : pages)
            for (std::size_t i = 0; i < page.items.size(); ++i) {
                const auto* text = std::get_if<TextShape>(&page.items[i].shape);
                if (!text)
                    continue;
                const double ratio =
                    contrastRatio(text->colour, groundOf(page, i, scene.screen ? sheet::paper : sheet::white));
                QVERIFY2(ratio >= leastTextContrast,
                         qPrintable(QStringLiteral("%1: %2").arg(text->shaped->text).arg(ratio)));
            }
    }
}

void TestInks::twoInksAreToldApartByEveryEye_data() {
    pairRows(false);
}

/// From 10 on, two colours are seen as different at a glance, side by side or not (common practice; 1 is what a trained
/// eye just sees).
void TestInks::twoInksAreToldApartByEveryEye() {
    QFETCH(InkSet, set);
    QFETCH(Ink, one);
    QFETCH(Ink, other);
    for (const Sight sight : allSights) {
        const double apart =
            distance(labOf(seenBy(sight, colourOf(one, set))), labOf(seenBy(sight, colourOf(other, set))));
        qInfo("sight %d: %.1f", static_cast<int>(sight), apart);
        QVERIFY2(apart >= 10, qPrintable(QStringLiteral("sight %1: %2").arg(static_cast<int>(sight)).arg(apart)));
    }
}

/// By lightness; the fourth, which is as light as the third, by its line alone.
void TestInks::theUsualThreeInksAreToldApartInGrey() {
    const auto lab = [](Ink ink) { return labOf(colourOf(ink, InkSet::Greys)); };
    QVERIFY(distance(lab(Ink::First), lab(Ink::Second)) >= 10);
    QVERIFY(distance(lab(Ink::Second), lab(Ink::Third)) >= 10);
    QVERIFY(lab(Ink::First).lightness < lab(Ink::Second).lightness);
    QVERIFY(lab(Ink::Second).lightness < lab(Ink::Third).lightness);
}

void TestInks::twoInksAreToldApartByTheirLinesAlone_data() {
    pairRows(true);
}

/// Broken or not, with dashes twice as long, or with a line half as wide again.
void TestInks::twoInksAreToldApartByTheirLinesAlone() {
    QFETCH(InkSet, set);
    QFETCH(Ink, one);
    QFETCH(Ink, other);
    const InkStyle &first = styleOf(one, set), &second = styleOf(other, set);
    const auto differ = [](double left, double right, double times) {
        return std::max(left, right) >= times * std::min(left, right);
    };
    QVERIFY(first.broken != second.broken || differ(first.line, second.line, 1.5) ||
            differ(first.dashes, second.dashes, 2));
}

void TestInks::aGreyIsAsLightAsItsColour() {
    for (const QRgb colour :
         {sheet::label, sheet::amber, sheet::live, sheet::white, sheet::soot, 0xFFA3161EU,
          colourOf(Ink::Second, InkSet::CobaltAndRust), colourOf(Ink::Third, InkSet::HeatherAndGorse)}) {
        const QRgb grey = sheet::greyOf(colour);
        QVERIFY(qRed(grey) == qGreen(grey) && qGreen(grey) == qBlue(grey));
        QCOMPARE(qAlpha(grey), qAlpha(colour));
        QVERIFY(contrastRatio(grey, colour) < 1.02); // rounded to one of 256
    }
}

void TestInks::aGreyPageHasNothingButGreys() {
    for (const char* name : {"sanctions", "every-mark", "live"}) {
        const SheetScene scene = sheetScene(QString::fromLatin1(name));
        int greys = 0;
        for (const Page& page : composeSet(scene.heading, scene.set, optionsOf(m_fonts, InkSet::Greys, true)))
            for (const Item& item : page.items)
                for (const QRgb colour : coloursOf(item)) {
                    QVERIFY(qRed(colour) == qGreen(colour) && qGreen(colour) == qBlue(colour));
                    ++greys;
                }
        QVERIFY(greys > 500);
    }
}

QTEST_MAIN(TestInks)
#include "tst_inks.moc"
