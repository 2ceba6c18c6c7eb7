// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/writeup.h"
#include "tests/support/lostcheck.h"
#include "tests/support/pagecheck.h"
#include "tests/support/randomplaycorrect.h"
#include "ui/sheet/sheets.h"

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
    int others = 0; ///< pages of all kinds of sheets

    void take(const SetRecord& set, const std::vector<Page>& composed) {
        ++sets;
        pages += static_cast<int>(composed.size());
        continued += composed.size() > 1;
        longest = std::max(longest, static_cast<int>(composed.size()));
        mostPoints = std::max({mostPoints, set.score.home, set.score.visitors});
        look(composed);
    }
    void take(const std::vector<Page>& composed) {
        others += static_cast<int>(composed.size());
        look(composed);
    }
    void print() const {
        qInfo("%d matches, %d sets on %d pages, %d pages of all sheets; smallest type %.2f pt; fullest page %zu items; "
              "%d sets (%.2f %%) on more than one page, at most %d; most points %d",
              matches, sets, pages, others, smallest, fullest, continued, 100.0 * continued / std::max(1, sets),
              longest, mostPoints);
    }

private:
    void look(const std::vector<Page>& composed) {
        for (const Page& page : composed) {
            fullest = std::max(fullest, page.items.size());
            for (const Item& item : page.items)
                if (const auto* text = std::get_if<TextShape>(&item.shape))
                    smallest = std::min(smallest, text->points);
        }
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
                          .remark = 400,
                          .compared = 60,
                          .suspended = 8,
                          .forfeit = 1};
/// One team serves on and on: runs of twenty points and more.
constexpr Habits runs{.ownServe = 950};

/// What a match is made of; the kinds come in turn.
struct Course {
    Habits habits;
    int setPoints = 0; ///< more than the rulebook's: 36-34 and beyond
    bool mistakes = false;
    bool brokenOff = false;
    bool longNames = false;
    std::size_t inOneSlot = 0; ///< numbers that come into a slot beside those of the play
};

Course courseOf(std::uint32_t seed) {
    Course course;
    switch (seed % 8) {
    case 0:
        course.habits = eventful;
        course.mistakes = true;
        break;
    case 1:
        course.longNames = true;
        break;
    case 2:
        course.habits = runs;
        course.setPoints = 25 + static_cast<int>(seed / 8 % 12);
        break;
    case 3:
        course.setPoints = 30 + static_cast<int>(seed / 8 % 29);
        break;
    case 4:
        course.inOneSlot = 6 + seed / 8 % 13;
        break;
    case 5:
        course.habits = eventful;
        course.brokenOff = true;
        break;
    case 6:
        course.mistakes = true;
        break;
    default:
        course.habits = eventful;
        course.longNames = true;
        course.inOneSlot = 6;
    }
    return course;
}

/// Names that no layout likes, all invented.
const std::array<QString, 9> longNames{
    QStringLiteral("Saltmarsh Estuary and Northern Uplands Girls' Volleyball Club"),
    QStringLiteral("Wilhelmina-Bartholomea Featherstonehaugh-Vantongeren of Quarl"),
    QStringLiteral("Quarryridgelarksvolleyballassociationofthewesternuplandsshire"),
    QStringLiteral("נבחרת הכדורעף של מחוז המישור הצפוני ועמק הנחלים הרחבים מאוד"),
    QStringLiteral("فريق الكرة الطائرة لمنطقة المستنقعات الشمالية وسهول الأنهار"),
    QStringLiteral("Σύλλογος Πετοσφαίρισης των Βόρειων Υψιπέδων και των Ελών"),
    QStringLiteral("Câu lạc bộ Bóng chuyền Nữ Đồng bằng sông Ngọc và Ấp Đỉnh Đồi"),
    QStringLiteral("إدارة رياضة الفتيات في مرتفعات الأرياف وآفاق الجنوب والخليج"),
    QStringLiteral("Женский волейбольный клуб Йодлёвских озёр и Ўзвышанскіх пагоркаў")};

void giveLongNames(MatchHeading& heading, std::uint32_t seed) {
    const auto name = [seed](std::size_t place) { return longNames.at((seed / 8 + place) % longNames.size()); };
    heading.opened.teams.home = {name(0), QStringLiteral("WWWWWWWW"), QStringLiteral("midnight blue and white")};
    heading.opened.teams.visitors = {name(2), name(3).left(8).trimmed(), QStringLiteral("أخضر وأبيض")};
    heading.opened.competition = heading.opened.division = heading.opened.venue = name(5);
    for (const Team team : bothTeams) {
        std::size_t place = 1;
        heading.rosters[team].coach = name(0);
        for (RosterPlayer& player : heading.rosters[team].players)
            player.name = name(place++);
    }
    heading.officials.clear();
    std::size_t place = 0;
    for (const Role role : {Role::FirstReferee, Role::SecondReferee, Role::Scorer, Role::AssistantScorer, Role::Timer,
                            Role::LineJudge, Role::LineJudge, Role::LineJudge, Role::LineJudge})
        heading.officials.push_back({role, name(place++)});
}

/// More numbers in one slot of each set than any rulebook allows.
void fillOneSlot(MatchRecord& record, std::size_t numbers, std::uint32_t seed) {
    for (SetRecord& set : record.sets) {
        SlotRecord& row = set.teams[seed % 2 ? Team::Home : Team::Visitors].slots[seed / 2 % 6];
        for (std::size_t i = 0; !row.stood.empty() && i < numbers; ++i)
            row.stood.push_back({ShirtNumber(static_cast<int>(99 - i)), EntryNumber(9000 + std::uint32_t(i))});
    }
}

MatchRecord recordOf(std::vector<Recorded>& entries, const Course& course, std::uint32_t seed) {
    if (course.mistakes)
        entries = withMistakes(entries, seed).entries;
    if (course.brokenOff)
        entries.resize(entries.size() / 2);
    MatchRecord record = writeUp(entries);
    if (course.longNames)
        giveLongNames(record.heading, seed);
    fillOneSlot(record, course.inOneSlot, seed);
    return record;
}

/// Words that were shortened where no remarks stand on the page to tell them in full.
QStringList shortenedOn(const std::vector<Page>& pages) {
    QStringList shortened;
    for (const Page& page : pages)
        for (const Item& item : page.items)
            if (const auto* text = std::get_if<TextShape>(&item.shape);
                text && item.zone >= Zone::Masthead && text->shaped->text.endsWith(QChar(0x2026)))
                shortened += QStringLiteral("shortened: ") + text->shaped->text;
    return shortened;
}

QStringList lostFrom(SheetKind kind, const PrintedMatch& match, const std::vector<Page>& pages) {
    switch (kind) {
    case SheetKind::Match:
        return lostFromMatch(match.record, pages);
    case SheetKind::Entries:
        return lostFromEntries(match.entries, pages);
    case SheetKind::Libero:
        return lostFromLibero(match.entries, pages);
    default: // forms for the pen, and sheets that tell again what others hold
        return {};
    }
}

// A long run takes longer than QtTest allows a test function by itself; it reads this before the first.
const bool longRunMayTakeLong =
    qEnvironmentVariableIsSet("SETFOLIO_LONG") && qputenv("QTEST_FUNCTION_TIMEOUT", QByteArray("86400000"));

} // namespace

/// Whole matches of every rulebook, of all kinds down to the very unlikely: on no page is a fault, and nothing is lost.
class TestRandomPages : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void noPageHasAFaultAndNothingIsLost_data();
    void noPageHasAFaultAndNothingIsLost();

private:
    [[nodiscard]] SheetOptions options(std::uint32_t seed) const {
        return {.fonts = m_fonts,
                .paper = seed % 2 ? PaperSize::Letter : PaperSize::A4,
                .screen = seed % 5 == 0,
                .locale = QLocale(QStringLiteral("en_GB")),
                .former = {},
                .inks = allInkSets.at(seed % allInkSets.size()),
                .standsAt = QTime(19, 30)};
    }
    [[nodiscard]] QStringList checkSets(const MatchRecord& record, std::uint32_t seed, Figures& figures) const;
    [[nodiscard]] QStringList checkOthers(const PrintedMatch& match, std::uint32_t seed, Figures& figures) const;

    SheetFonts m_fonts = SheetFonts::load().value();
};

namespace {

QStringList faultsOn(const std::vector<Page>& pages) {
    QStringList faults;
    for (const Page& page : pages)
        for (const QString& fault : faultsOf(page))
            faults += QStringLiteral("page %1: %2").arg(page.number).arg(fault);
    return faults;
}

} // namespace

void TestRandomPages::noPageHasAFaultAndNothingIsLost_data() {
    QTest::addColumn<QString>("rulebook");
    for (const QString& id : publishedRulebookIds())
        QTest::newRow(qPrintable(id)) << id;
}

QStringList TestRandomPages::checkSets(const MatchRecord& record, std::uint32_t seed, Figures& figures) const {
    QStringList faults;
    for (const SetRecord& set : record.sets) {
        const std::vector<Page> pages = composeSet(record.heading, set, options(seed));
        figures.take(set, pages);
        for (const QString& fault : faultsOn(pages) + lostFromSet(record.heading, set, pages))
            faults += QStringLiteral("set %1: %2").arg(set.number).arg(fault);
    }
    return faults;
}

QStringList TestRandomPages::checkOthers(const PrintedMatch& match, std::uint32_t seed, Figures& figures) const {
    QStringList faults;
    for (const SheetKind kind : allSheetKinds) {
        const std::vector<Page> pages = composeSheets(match, {{kind}, {}}, options(seed));
        figures.take(pages);
        for (const QString& fault : faultsOn(pages) + lostFrom(kind, match, pages) + shortenedOn(pages))
            faults += QStringLiteral("%1: %2").arg(nameOf(kind), fault);
    }
    return faults;
}

void TestRandomPages::noPageHasAFaultAndNothingIsLost() {
    QFETCH(QString, rulebook);
    const int wanted = qEnvironmentVariableIntValue("SETFOLIO_LONG"); // a number above 1 is so many of each rulebook
    const auto matches = static_cast<std::uint32_t>(wanted > 1 ? wanted : wanted == 1 ? 2500 : 8);
    Figures figures;
    QStringList faults;
    for (std::uint32_t seed = 1; seed <= matches && faults.size() < 5; ++seed) {
        const Course course = courseOf(seed);
        Rulebook rules = publishedRulebook(rulebook).value();
        rules.setPoints = std::max(rules.setPoints, course.setPoints);
        RandomPlay play(seed, rules, course.habits);
        play.playMatch();
        std::vector<Recorded> entries = play.entries();
        const MatchRecord record = recordOf(entries, course, seed);
        ++figures.matches;
        QStringList found = checkSets(record, seed, figures);
        if (seed / 8 % 4 == 0)
            found += checkOthers({record, entries}, seed, figures);
        if (!found.isEmpty())
            faults += QStringLiteral("seed %1: %2").arg(seed).arg(found.join(u'\n'));
    }
    figures.print();
    QVERIFY2(faults.isEmpty(), qPrintable(faults.join(u'\n')));
}

QTEST_MAIN(TestRandomPages)
#include "tst_randompages.moc"
