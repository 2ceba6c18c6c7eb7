// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/pagecheck.h"
#include "tests/support/randommatch.h"
#include "tests/support/sheetscenes.h"
#include "ui/sheet/compose.h"
#include "ui/sheet/slips.h"

#include <QTest>

#include <map>

using namespace setfolio;
using namespace setfolio::testing;

/// What must hold on every page whatever is written on it.
class TestPages : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aCheckedPageWithAFaultIsFound_data();
    void aCheckedPageWithAFaultIsFound();
    void noSceneHasAFault_data();
    void noSceneHasAFault();
    void noRandomSetHasAFault();
    void noWildSetHasAFault();
    void numbersStandClearOfTheirMarks();
    void nothingIsLeftOut();
    void allRemarksAreWritten();
    void aRemarkStandsOnOnePage_data();
    void aRemarkStandsOnOnePage();
    void aRemarkLongerThanAPageGoesOn();
    void noNumberOfAFullSlotIsLost();
    void aCaptainsRingClearsTheRulesOfAFullRow();
    void aNumberTakenBackOftenHasACrossForEachTime();
    void marksInACrossedCellStandAfterTheCross();
    void aSlipHoldsTheNamesOfAnyRoster();
    void theSameDrawingOnBothPapers();
    void composingIsPure();

private:
    std::vector<Page> compose(const MatchHeading& heading, const SetRecord& set, bool screen = false,
                              PaperSize paper = PaperSize::Letter) const {
        return composeSet(heading, set,
                          SheetOptions{.fonts = m_fonts,
                                       .paper = paper,
                                       .screen = screen,
                                       .locale = QLocale(QStringLiteral("en_GB")),
                                       .former = {}});
    }
    void checkRandomSets(std::uint32_t firstSeed, int count, Liveliness lively);

    SheetFonts m_fonts = SheetFonts::load().value();
};

namespace {

QStringList textsOf(const std::vector<Page>& pages, ItemRole role) {
    QStringList texts;
    for (const Page& page : pages)
        for (const Item& item : page.items)
            if (const auto* text = std::get_if<TextShape>(&item.shape); text && item.role == role)
                texts += text->shaped->text;
    return texts;
}

} // namespace

void TestPages::aCheckedPageWithAFaultIsFound_data() {
    QTest::addColumn<ItemRole>("role");
    QTest::addColumn<double>("right");  // how far the item is moved
    QTest::addColumn<double>("points"); // added to its type
    QTest::addColumn<QString>("fault");
    // clang-format off
    QTest::newRow("a number on its ring")     << ItemRole::ServeContent << 1.6  << 0.0  << "touches its mark";
    QTest::newRow("a number too large")       << ItemRole::ServeContent << 0.0  << 6.0  << "touches its mark";
    QTest::newRow("a number in another cell") << ItemRole::OpeningNumber << -2.0 << 0.0 << "lies on a rule";
    QTest::newRow("a ring over the next")     << ItemRole::ServeMark    << 3.0  << 0.0  << "lies over";
    QTest::newRow("a text over another")      << ItemRole::TermWord     << -3.0 << 0.0  << "lies over";
    QTest::newRow("a text off the page")      << ItemRole::Title        << -60.0 << 0.0 << "outside its zone";
    QTest::newRow("a text too small")         << ItemRole::OfficialName << 0.0  << -2.0 << "has only";
    QTest::newRow("a number on a box's edge") << ItemRole::CounterNumber << 2.0 << 0.0  << "edge of a box";
    // clang-format on
}

void TestPages::aCheckedPageWithAFaultIsFound() {
    QFETCH(ItemRole, role);
    QFETCH(double, right);
    QFETCH(double, points);
    QFETCH(QString, fault);
    const SheetScene scene = sheetScene(QStringLiteral("demo"));
    Page page = compose(scene.heading, scene.set).front();
    QVERIFY(faultsOf(page).isEmpty());
    for (Item& item : page.items) {
        if (item.role != role)
            continue;
        translate(item, {right, 0});
        if (auto* text = std::get_if<TextShape>(&item.shape))
            text->points += points;
    }
    QVERIFY2(faultsOf(page).join(u'\n').contains(fault), qPrintable(faultsOf(page).join(u'\n')));
}

void TestPages::noSceneHasAFault_data() {
    QTest::addColumn<QString>("name");
    for (const QString& name : sheetSceneNames())
        QTest::newRow(qPrintable(name)) << name;
}

void TestPages::noSceneHasAFault() {
    QFETCH(QString, name);
    const SheetScene scene = sheetScene(name);
    for (const bool screen : {false, true})
        for (const PaperSize paper : {PaperSize::Letter, PaperSize::A4})
            for (const Page& page : compose(scene.heading, scene.set, screen, paper)) {
                const QStringList faults = faultsOf(page);
                QVERIFY2(faults.isEmpty(), qPrintable(faults.join(u'\n')));
            }
}

void TestPages::checkRandomSets(std::uint32_t firstSeed, int count, Liveliness lively) {
    const int times = qEnvironmentVariableIsSet("SETFOLIO_LONG") ? 10 * count : count;
    int pages = 0;
    for (std::uint32_t seed = firstSeed; seed < firstSeed + static_cast<std::uint32_t>(times); ++seed) {
        RandomMatch random(seed, lively);
        random.playSet(seed % 4 == 0 ? static_cast<int>(seed % 50) + 1 : 0); // a quarter stops in the middle
        const MatchRecord record = random.match().record();
        for (const Page& page : compose(record.heading, record.sets.front(), seed % 3 == 0)) {
            ++pages;
            const QStringList faults = faultsOf(page);
            QVERIFY2(
                faults.isEmpty(),
                qPrintable(QStringLiteral("seed %1, page %2: %3").arg(seed).arg(page.number).arg(faults.join(u'\n'))));
        }
    }
    qInfo("seeds %u to %u: %d pages", firstSeed, firstSeed + static_cast<std::uint32_t>(times) - 1, pages);
}

void TestPages::noRandomSetHasAFault() {
    checkRandomSets(1, 120, Liveliness{});
}

void TestPages::noWildSetHasAFault() {
    // Far livelier than any match: corrections, replays and substitutions at every turn.
    checkRandomSets(5001, 30, Liveliness{700, 150, 700, 250, 60, 60, 350, 500, 550});
}

void TestPages::numbersStandClearOfTheirMarks() {
    for (const QString& name : sheetSceneNames()) {
        const SheetScene scene = sheetScene(name);
        for (const Page& page : compose(scene.heading, scene.set)) {
            const double least = leastClearance(page);
            QVERIFY2(least >= 0.04, qPrintable(QStringLiteral("%1: %2 mm").arg(name).arg(least)));
        }
    }
}

void TestPages::nothingIsLeftOut() {
    for (std::uint32_t seed = 1; seed <= 60; ++seed) {
        RandomMatch random(seed);
        random.playSet();
        const MatchRecord record = random.match().record();
        const SetRecord& set = record.sets.front();
        const std::vector<Page> pages = compose(record.heading, set);
        qsizetype marks = 0, shapes = 0, struck = 0, substitutions = 0, points = 0;
        for (const Team team : bothTeams) {
            substitutions += static_cast<qsizetype>(set.teams[team].substitutions.size());
            points += static_cast<qsizetype>(set.teams[team].running.size());
            for (const Term& term : set.teams[team].terms)
                for (const Mark& mark : term.marks) {
                    ++marks;
                    shapes += mark.shape != MarkShape::None;
                    struck += mark.struck;
                }
        }
        const auto count = [&pages](ItemRole role) {
            qsizetype found = 0;
            for (const Page& page : pages)
                found += std::ranges::count(page.items, role, &Item::role);
            return found;
        };
        QCOMPARE(count(ItemRole::ServeMark), shapes);
        QCOMPARE(count(ItemRole::CounterCross),
                 substitutions * static_cast<qsizetype>(pages.front().flow.pages.size()));
        QCOMPARE(count(ItemRole::RunningOpponents), points);
        QVERIFY(count(ItemRole::MarkStrike) >= struck);
        QVERIFY(marks > 40);
    }
}

void TestPages::allRemarksAreWritten() {
    const SheetScene scene = sheetScene(QStringLiteral("many-remarks"));
    const std::vector<Page> pages = compose(scene.heading, scene.set);
    QCOMPARE(pages.size(), std::size_t(2));
    QStringList numbers;
    for (const Note& note : scene.set.notes)
        numbers += QString::number(note.number);
    QCOMPARE(textsOf(pages, ItemRole::RemarkNumber), numbers);
    const QString all = textsOf(pages, ItemRole::RemarkText).join(u' ');
    for (int i = 1; i <= 12; ++i)
        QVERIFY(
            all.contains(QStringLiteral("Remark %1: the lights over the visitors' bench went out and came back after "
                                        "a minute.")
                             .arg(i)));
}

void TestPages::aRemarkStandsOnOnePage_data() {
    QTest::addColumn<QString>("name");
    for (const char* name : {"many-remarks", "vacant-place", "signed-twice"})
        QTest::newRow(name) << QString::fromLatin1(name);
}

void TestPages::aRemarkStandsOnOnePage() {
    QFETCH(QString, name);
    const SheetScene scene = sheetScene(name);
    std::map<EntryNumber, int> pageOf;
    for (const Page& page : compose(scene.heading, scene.set))
        for (const Item& item : page.items)
            if (item.role == ItemRole::RemarkText)
                QCOMPARE(pageOf.try_emplace(item.entry, page.number).first->second, page.number);
    QCOMPARE(pageOf.size(), scene.set.notes.size());
    QCOMPARE(pageOf.rbegin()->second, 2);
}

void TestPages::aRemarkLongerThanAPageGoesOn() {
    SheetScene scene = sheetScene(QStringLiteral("demo"));
    QString text;
    for (int word = 1; word <= 2000; ++word)
        text += QStringLiteral("w%1 ").arg(word);
    scene.set.notes = {Note{1, WrittenNote{text.trimmed(), {}}, EntryNumber(3)}};
    const std::vector<Page> pages = compose(scene.heading, scene.set);
    QVERIFY(pages.size() > 2);
    const QString written = textsOf(pages, ItemRole::RemarkText).join(u' ');
    QVERIFY2(written.contains(text.trimmed()), qPrintable(written));
}

void TestPages::noNumberOfAFullSlotIsLost() {
    const SheetScene scene = sheetScene(QStringLiteral("full-slot"));
    const std::vector<Page> pages = compose(scene.heading, scene.set);
    std::map<EntryNumber, QString> inSlot; // two slots of the line-ups begin with the same entry: none of the later do
    for (const Item& item : pages.front().items)
        if (const auto* text = std::get_if<TextShape>(&item.shape); text && item.role == ItemRole::SlotNumber)
            inSlot[item.entry] = text->shaped->text;
    const QString remarks = textsOf(pages, ItemRole::RemarkText).join(u' ');
    int told = 0;
    for (const Team team : bothTeams)
        for (const SlotRecord& row : scene.set.teams[team].slots) {
            QStringList older;
            for (std::size_t i = 1; i < row.stood.size(); ++i) {
                const QString number = QString::number(row.stood[i].number.value);
                if (inSlot.contains(row.stood[i].since))
                    QCOMPARE(inSlot.at(row.stood[i].since), number);
                else
                    older += number;
            }
            QVERIFY2(remarks.contains(older.join(QStringLiteral(", "))), qPrintable(remarks));
            told += static_cast<int>(older.size());
        }
    QVERIFY(told > 0);
}

/// Three lines of numbers in the lowest row, over its heavier rule, and in another; her ring in one of the lines.
void TestPages::aCaptainsRingClearsTheRulesOfAFullRow() {
    const SheetScene scene = sheetScene(QStringLiteral("demo"));
    MatchHeading heading = scene.heading;
    heading.opened.rulebook.captainMark = CaptainMark::RingedNumber;
    for (int captain = 0; captain < 100; ++captain) {
        SetRecord set = scene.set;
        set.teams[Team::Home].captain.reset();
        TeamRecord& team = set.teams[Team::Visitors];
        team.captain = ShirtNumber(captain);
        team.slots = {};
        std::vector<Standing>& stood = team.slots[captain % 2 ? 5 : 2].stood;
        stood.push_back({ShirtNumber((captain + 20) % 100), EntryNumber(4)});
        constexpr int inRow = 14;
        for (int i = 0; i < inRow; ++i)
            stood.push_back({ShirtNumber(i == captain % inRow ? captain : (captain + 40 + i) % 100), EntryNumber(4)});
        const std::vector<Page> pages = compose(heading, set);
        const auto rings = std::ranges::count(pages.front().items, ItemRole::CaptainRing, &Item::role);
        QVERIFY2(rings == 1, qPrintable(QStringLiteral("%1 rings for %2").arg(rings).arg(captain)));
        QVERIFY2(faultsOf(pages.front()).isEmpty(), qPrintable(faultsOf(pages.front()).join(u'\n')));
    }
}

void TestPages::aNumberTakenBackOftenHasACrossForEachTime() {
    const SheetScene scene = sheetScene(QStringLiteral("demo"));
    for (int times = 1; times <= 5; ++times) {
        SetRecord set = scene.set;
        std::vector<RunningPoint>& running = set.teams[Team::Home].running;
        const auto won = std::ranges::find(running, 7, &RunningPoint::total);
        std::vector<RunningPoint> before(static_cast<std::size_t>(times), *won);
        for (RunningPoint& point : before) {
            point.takenBack = true;
            point.place = static_cast<int>(&point - before.data()) - 100;
            point.entry = EntryNumber(9000 + static_cast<std::uint32_t>(&point - before.data()));
        }
        running.insert(won, before.begin(), before.end());
        const std::vector<Page> pages = compose(scene.heading, set);
        QCOMPARE(std::ranges::count(pages.front().items, ItemRole::RunningCross, &Item::role), times);
        QVERIFY2(faultsOf(pages.front()).isEmpty(), qPrintable(faultsOf(pages.front()).join(u'\n')));
    }
}

void TestPages::marksInACrossedCellStandAfterTheCross() {
    const SheetScene scene = sheetScene(QStringLiteral("by-floor"));
    SetRecord set = scene.set;
    std::vector<Term>& terms = set.teams[Team::Visitors].terms;
    const auto crossed = std::ranges::find(terms, true, &Term::crossed);
    QVERIFY(crossed != terms.end() && crossed->marks.empty());
    Term served = terms.back(); // out of order: in the slot and the round of the cross
    served.slot = crossed->slot;
    served.round = crossed->round;
    terms.push_back(served);
    const std::vector<Page> pages = compose(scene.heading, set);
    QVERIFY2(faultsOf(pages.front()).isEmpty(), qPrintable(faultsOf(pages.front()).join(u'\n')));
}

void TestPages::aSlipHoldsTheNamesOfAnyRoster() {
    const QString name = QStringLiteral("Wilhelmina-Bartholomea Featherstonehaugh-Vantongeren of Quarl");
    MatchRecord record = sheetScene(QStringLiteral("slips")).record;
    std::vector<RosterPlayer>& players = record.heading.rosters[Team::Home].players;
    players.clear();
    for (int count = 1; count <= 22; ++count) {
        players.push_back({.number = ShirtNumber(count), .name = name});
        const std::vector<Page> pages = composeSlips(record, {.fonts = m_fonts});
        for (const Page& page : pages)
            QVERIFY2(faultsOf(page).isEmpty(), qPrintable(QString::number(count) + faultsOf(page).join(u'\n')));
        const QString all = textsOf({pages.front()}, ItemRole::Value).join(u' ');
        QVERIFY2(all.count(name) >= count, qPrintable(QStringLiteral("%1 players: %2").arg(count).arg(all)));
    }
}

void TestPages::theSameDrawingOnBothPapers() {
    const SheetScene scene = sheetScene(QStringLiteral("demo"));
    Page letter = compose(scene.heading, scene.set, false, PaperSize::Letter).front();
    const Page a4 = compose(scene.heading, scene.set, false, PaperSize::A4).front();
    QCOMPARE(QSizeF(letter.widthMm, letter.heightMm), QSizeF(279.4, 215.9)); // US Letter, 11 x 8.5 inches
    QCOMPARE(QSizeF(a4.widthMm, a4.heightMm), QSizeF(297, 210));             // ISO 216
    QCOMPARE(letter.items.size(), a4.items.size());
    for (std::size_t i = 0; i < letter.items.size(); ++i) {
        translate(letter.items[i], a4.live - letter.live);
        const QRectF difference = boundingBox(letter.items[i]);
        QVERIFY(std::abs(difference.x() - boundingBox(a4.items[i]).x()) < 1e-6);
        QVERIFY(std::abs(difference.y() - boundingBox(a4.items[i]).y()) < 1e-6);
    }
}

void TestPages::composingIsPure() {
    const SheetScene scene = sheetScene(QStringLiteral("every-mark"));
    const std::vector<Page> first = compose(scene.heading, scene.set);
    (void)compose(sheetScene(QStringLiteral("names")).heading, scene.set);
    const std::vector<Page> second = compose(scene.heading, scene.set);
    QCOMPARE(first.size(), second.size());
    for (std::size_t i = 0; i < first.size(); ++i)
        QVERIFY(first[i].items == second[i].items);
}

QTEST_MAIN(TestPages)
#include "tst_pages.moc"
