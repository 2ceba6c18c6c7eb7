// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/writeup.h"
#include "tests/support/lostcheck.h"
#include "tests/support/pagecheck.h"
#include "tests/support/randomplaycorrect.h"
#include "ui/sheet/compose.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

/// What is met in many pages.
struct Figures {
    int matches = 0, sets = 0, pages = 0;
    int continued = 0; ///< sets that take more than one page
    int longest = 0;   ///< pages of one set
    double smallest = 100;
    std::size_t fullest = 0; ///< items
    int mostPoints = 0;

    void take(const SetRecord& set, const std::vector<Page>& composed) {
        ++sets;
        pages += static_cast<int>(composed.size());
        continued += composed.size() > 1;
        longest = std::max(longest, static_cast<int>(composed.size()));
        mostPoints = std::max({mostPoints, set.score.home, set.score.visitors});
        for (const Page& page : composed) {
            fullest = std::max(fullest, page.items.size());
            for (const Item& item : page.items)
                if (const auto* text = std::get_if<TextShape>(&item.shape))
                    smallest = std::min(smallest, text->points);
        }
    }
    void print() const {
        qInfo("%d matches, %d sets, %d pages; smallest type %.2f pt; fullest page %zu items; %d sets (%.2f %%) on more "
              "than one page, at most %d; most points %d",
              matches, sets, pages, smallest, fullest, continued, 100.0 * continued / std::max(1, sets), longest,
              mostPoints);
    }
};

/// Nearly every rally brings something.
constexpr Habits eventful{.substitution = 600,
                          .timeOut = 150,
                          .libero = 700,
                          .replay = 150,
                          .noServe = 60,
                          .wrongServer = 60,
                          .card = 40,
                          .delay = 40,
                          .improper = 30,
                          .penalty = 30,
                          .hurt = 40,
                          .captain = 60,
                          .remark = 150,
                          .compared = 60,
                          .suspended = 3,
                          .forfeit = 1};
/// One team serves on and on.
constexpr Habits runs{.ownServe = 900};

/// Names that no layout likes, all invented.
const std::array<QString, 6> longNames{QStringLiteral("Saltmarsh Estuary and Northern Uplands Girls' Volleyball Club"),
                                       QStringLiteral("Wilhelmina-Bartholomea Featherstonehaugh-Vantongeren of Quarl"),
                                       QStringLiteral("Quarryridgelarksvolleyballassociationofthewesternuplandsshire"),
                                       QStringLiteral("נבחרת הכדורעף של מחוז המישור הצפוני ועמק הנחלים הרחבים מאוד"),
                                       QStringLiteral("فريق الكرة الطائرة لمنطقة المستنقعات الشمالية وسهول الأنهار"),
                                       QStringLiteral("Σύλλογος Πετοσφαίρισης των Βόρειων Υψιπέδων και των Ελών")};

void giveLongNames(MatchHeading& heading, std::uint32_t seed) {
    const auto name = [seed](std::size_t place) { return longNames.at((seed / 7 + place) % longNames.size()); };
    heading.opened.teams.home = {name(0), QStringLiteral("WWMWWM"), name(1)};
    heading.opened.teams.visitors = {name(2), name(3).left(6), name(4)};
    heading.opened.competition = heading.opened.division = heading.opened.venue = name(5);
    heading.officials.clear();
    std::size_t place = 0;
    for (const Role role : {Role::FirstReferee, Role::SecondReferee, Role::Scorer, Role::AssistantScorer, Role::Timer,
                            Role::LineJudge, Role::LineJudge, Role::LineJudge, Role::LineJudge})
        heading.officials.push_back({role, name(place++)});
}

} // namespace

/// Whole matches of every rulebook, of all kinds down to the very unlikely: on no page is a fault, and nothing is lost.
class TestRandomPages : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void noPageHasAFaultAndNothingIsLost_data();
    void noPageHasAFaultAndNothingIsLost();

private:
    QStringList check(const MatchRecord& record, std::uint32_t seed, Figures& figures) const;

    SheetFonts m_fonts = SheetFonts::load().value();
};

void TestRandomPages::noPageHasAFaultAndNothingIsLost_data() {
    QTest::addColumn<QString>("rulebook");
    for (const QString& id : publishedRulebookIds())
        QTest::newRow(qPrintable(id)) << id;
}

QStringList TestRandomPages::check(const MatchRecord& record, std::uint32_t seed, Figures& figures) const {
    QStringList faults;
    for (const SetRecord& set : record.sets) {
        const SheetOptions options{.fonts = m_fonts,
                                   .paper = seed % 2 ? PaperSize::Letter : PaperSize::A4,
                                   .screen = seed % 5 == 0,
                                   .locale = QLocale(QStringLiteral("en_GB")),
                                   .former = {},
                                   .inks = allInkSets.at(seed % allInkSets.size())};
        const std::vector<Page> pages = composeSet(record.heading, set, options);
        figures.take(set, pages);
        for (const Page& page : pages)
            for (const QString& fault : faultsOf(page))
                faults += QStringLiteral("set %1, page %2: %3").arg(set.number).arg(page.number).arg(fault);
        for (const QString& lost : lostFrom(record.heading, set, pages))
            faults += QStringLiteral("set %1 has lost %2").arg(set.number).arg(lost);
    }
    return faults;
}

void TestRandomPages::noPageHasAFaultAndNothingIsLost() {
    QFETCH(QString, rulebook);
    const std::uint32_t matches = qEnvironmentVariableIsSet("SETFOLIO_LONG") ? 2500 : 25;
    Figures figures;
    QStringList faults;
    for (std::uint32_t seed = 1; seed <= matches; ++seed) {
        Rulebook rules = publishedRulebook(rulebook).value();
        if (seed % 10 == 3) // 36-34, 54-52 and beyond
            rules.setPoints = 30 + static_cast<int>(seed % 29);
        RandomPlay play(seed, rules, seed % 4 == 1 ? eventful : seed % 4 == 3 ? runs : Habits{});
        play.playMatch();
        std::vector<Recorded> entries = play.entries();
        if (seed % 3 == 0)
            entries = withMistakes(entries, seed).entries;
        if (seed % 8 == 5) // left in the middle
            entries.resize(entries.size() / 2);
        MatchRecord record = writeUp(entries);
        if (seed % 7 == 2)
            giveLongNames(record.heading, seed);
        ++figures.matches;
        if (const QStringList found = check(record, seed, figures); !found.isEmpty())
            faults += QStringLiteral("seed %1: %2").arg(seed).arg(found.join(u'\n'));
        if (faults.size() >= 5)
            break;
    }
    figures.print();
    QVERIFY2(faults.isEmpty(), qPrintable(faults.join(u'\n')));
}

QTEST_MAIN(TestRandomPages)
#include "tst_randompages.moc"
