// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/practice/differences.h"
#include "core/practice/story.h"
#include "core/record/writeup.h"

#include <QTest>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

SetRecord setOf(const std::vector<Recorded>& entries) {
    return writeUp(entries).sets.front();
}

/// The entries without one of them, numbered anew; nothing may refer back to a later one.
std::vector<Recorded> without(std::vector<Recorded> entries, std::size_t index) {
    entries.erase(entries.begin() + static_cast<std::ptrdiff_t>(index));
    for (std::size_t i = 0; i < entries.size(); ++i)
        entries[i].number = EntryNumber(static_cast<std::uint32_t>(i + 1));
    return entries;
}

template <typename Kind>
std::size_t lastOf(const std::vector<Recorded>& entries) {
    for (std::size_t index = entries.size(); index-- > 0;)
        if (std::holds_alternative<Kind>(entries[index].entry))
            return index;
    qFatal("no such entry");
}

template <typename Kind>
int countOf(const std::vector<Difference>& differences) {
    return static_cast<int>(std::count_if(differences.begin(), differences.end(), [](const Difference& difference) {
        return std::holds_alternative<Kind>(difference);
    }));
}

} // namespace

class DifferencesTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theRightSheetDiffersInNothingFromItself_data();
    void theRightSheetDiffersInNothingFromItself();
    void eachEntryLeftOutIsFound_data() { theRightSheetDiffersInNothingFromItself_data(); }
    void eachEntryLeftOutIsFound();
    void aSlipPutRightIsNoDifference();
    void aMissedTimeOutIsOneMarkAndOneCount();
    void aMissedSubstitutionIsFoundInSlotMarkAndCount();
    void anotherNumberInAMarkIsShownBesideTheRightOne();
    void aSanctionMissedIsFound();
    void theFirstDifferenceIsWhereTheSheetsPart();
    void marksRightCountsThoseThatStand();
};

void DifferencesTest::theRightSheetDiffersInNothingFromItself_data() {
    QTest::addColumn<QString>("id");
    for (const QString& id : storyIds())
        QTest::newRow(qPrintable(id)) << id;
}

void DifferencesTest::theRightSheetDiffersInNothingFromItself() {
    QFETCH(QString, id);
    const SetRecord right = setOf(practiceStory(id).right);
    QCOMPARE(differencesOf(right, right).size(), std::size_t(0));
    const MarksRight marks = marksRight(right, right);
    QVERIFY(marks.of > 60);
    QCOMPARE(marks.right, marks.of);
}

void DifferencesTest::eachEntryLeftOutIsFound() {
    QFETCH(QString, id);
    const Story story = practiceStory(id);
    const SetRecord right = setOf(story.right);
    int left = 0;
    for (std::size_t index = story.given.size() + 1; index < story.right.size(); ++index) {
        const Entry& entry = story.right[index].entry;
        // A serve is implied by its result, the end of the set adds no mark, and numbers that refer back would change.
        const bool counts = std::holds_alternative<RallyWon>(entry) || std::holds_alternative<Substitution>(entry) ||
                            std::holds_alternative<TimeOut>(entry);
        const bool refersBack = std::any_of(
            story.right.begin() + static_cast<std::ptrdiff_t>(index), story.right.end(), [](const Recorded& later) {
                return std::holds_alternative<Strike>(later.entry) || std::holds_alternative<WrongServer>(later.entry);
            });
        if (!counts || refersBack)
            continue;
        ++left;
        QVERIFY2(!differencesOf(right, setOf(without(story.right, index))).empty(), qPrintable(QString::number(index)));
    }
    QVERIFY(left > 10);
}

void DifferencesTest::aSlipPutRightIsNoDifference() {
    const Story story = practiceStory(u"1-plain-set"_s);
    std::vector<Recorded> hers(story.right.begin(), story.right.begin() + 20);
    const SetRecord right = setOf(hers);
    const auto next = [&hers] { return EntryNumber(static_cast<std::uint32_t>(hers.size() + 1)); };
    hers.push_back({next(), {}, TimeOut{Team::Home}, {}, {}});
    QVERIFY(!differencesOf(right, setOf(hers)).empty());
    hers.push_back({next(), {}, Strike{hers.back().number, u"not asked for"_s}, {}, {}});
    QCOMPARE(differencesOf(right, setOf(hers)).size(), std::size_t(0));
}

void DifferencesTest::aMissedTimeOutIsOneMarkAndOneCount() {
    const Story story = practiceStory(u"1-plain-set"_s);
    const std::size_t index = lastOf<TimeOut>(story.right);
    const Team team = std::get<TimeOut>(story.right[index].entry).team;
    const auto found = differencesOf(setOf(story.right), setOf(without(story.right, index)));
    QCOMPARE(found.size(), std::size_t(2));
    const auto& mark = std::get<MarkDiffers>(found[0]);
    QVERIFY(std::holds_alternative<TimeOutMark>(mark.right->content) && !mark.hers);
    const auto& count = std::get<CountDiffers>(found[1]);
    QCOMPARE(count.team, team);
    QCOMPARE(count.what, Counted::TimeOuts);
    QCOMPARE(count.right, count.hers + 1);
}

void DifferencesTest::aMissedSubstitutionIsFoundInSlotMarkAndCount() {
    const Story story = practiceStory(u"2-substitutions"_s);
    const auto found =
        differencesOf(setOf(story.right), setOf(without(story.right, lastOf<Substitution>(story.right))));
    QCOMPARE(countOf<MarkDiffers>(found), 1);
    QCOMPARE(countOf<SlotDiffers>(found), 1);
    QCOMPARE(countOf<CountDiffers>(found), 1);
    QCOMPARE(found.size(), std::size_t(3));
}

void DifferencesTest::anotherNumberInAMarkIsShownBesideTheRightOne() {
    const Story story = practiceStory(u"2-substitutions"_s);
    std::vector<Recorded> hers = story.right;
    std::get<Substitution>(hers[lastOf<Substitution>(hers)].entry).in = ShirtNumber(77);
    const auto found = differencesOf(setOf(story.right), setOf(hers));
    const auto& mark = std::get<MarkDiffers>(found.front());
    QCOMPARE(std::get<SubstitutionMark>(mark.hers->content).in, ShirtNumber(77));
    QVERIFY(std::get<SubstitutionMark>(mark.right->content).in != ShirtNumber(77));
}

void DifferencesTest::aSanctionMissedIsFound() {
    const Story story = practiceStory(u"4-wrong-server"_s);
    const auto found =
        differencesOf(setOf(story.right), setOf(without(story.right, lastOf<DelaySanction>(story.right))));
    QCOMPARE(found.size(), std::size_t(1));
    const auto& sanction = std::get<SanctionDiffers>(found.front());
    QVERIFY(sanction.right && !sanction.hers);
}

void DifferencesTest::theFirstDifferenceIsWhereTheSheetsPart() {
    const Story story = practiceStory(u"1-plain-set"_s);
    std::vector<Recorded> hers = story.right;
    const std::size_t wrong = story.given.size() + 40;
    std::size_t index = wrong;
    while (!std::holds_alternative<RallyWon>(hers[index].entry))
        ++index;
    auto& rally = std::get<RallyWon>(hers[index].entry);
    rally.by = opponentsOf(rally.by);
    const auto found = differencesOf(setOf(story.right), setOf(hers));
    QVERIFY(found.size() > 10); // everything after it has other numbers
    const auto& first = std::get<MarkDiffers>(found.front());
    const std::uint32_t entry = first.right ? first.right->entry.value : first.hers->entry.value;
    QCOMPARE(entry, hers[index].number.value);
}

void DifferencesTest::marksRightCountsThoseThatStand() {
    const Story story = practiceStory(u"1-plain-set"_s);
    const SetRecord right = setOf(story.right);
    const MarksRight whole = marksRight(right, right);
    const MarksRight less = marksRight(right, setOf(without(story.right, lastOf<TimeOut>(story.right))));
    QCOMPARE(less.of, whole.of);
    QCOMPARE(less.right, whole.right - 1);
}

} // namespace setfolio

QTEST_GUILESS_MAIN(setfolio::DifferencesTest)
#include "tst_differences.moc"
