// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/entryjson.h"
#include "core/match/statebefore.h"
#include "core/practice/differences.h"
#include "tests/ui/table/papermarks.h"
#include "tests/ui/table/tablehand.h"
#include "ui/wording/differencewords.h"

#include <map>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

constexpr double mostInputsPerRally = 1.3;
constexpr double mostOfPaper = 0.40;

struct Tally {
    int times = 0;
    int inputs = 0;
    int marks = 0;
};

template <typename Kind>
bool is(const Entry& entry) {
    return std::holds_alternative<Kind>(entry);
}

std::vector<Recorded> demoMatch() {
    auto file = MatchFile::open(QStringLiteral(SETFOLIO_SOURCE_DIR "/resources/demo/herons-larks.setfolio"),
                                Ledger::Access::ReadOnly);
    if (!file)
        qFatal("%s", qPrintable(sentence(file.error())));
    const auto entries = file->ledger().entries();
    return {entries.begin(), entries.end()};
}

/// What is done and written before the scorer sits down: the match, the rosters, the officials.
std::vector<Recorded> framesOf(const std::vector<Recorded>& match) {
    const auto toss = std::ranges::find_if(match, [](const Recorded& recorded) { return is<Toss>(recorded.entry); });
    return {match.begin(), toss};
}

/// Enters the demo match from the toss on, and counts.
class Counting {
public:
    Counting() : m_match(demoMatch()), m_table(std::span<const Recorded>(framesOf(m_match)), QSize(1366, 768)) {}

    void run() {
        for (m_at = framesOf(m_match).size(); m_at < m_match.size(); ++m_at) {
            m_table.now = m_match[m_at].time;
            m_table.timeOfDay = m_match[m_at].time.time().addSecs(-4 * 3600);
            count();
        }
    }
    [[nodiscard]] const MatchRecord& entered() { return m_table.window().file().record(); }
    [[nodiscard]] const MatchState& state() const { return m_table.state(); }
    [[nodiscard]] const std::map<QString, Tally>& tallies() const { return m_tallies; }
    [[nodiscard]] const std::vector<Recorded>& match() const { return m_match; }
    [[nodiscard]] int letters() const { return m_hand.letters(); }

private:
    void count() {
        const Recorded& recorded = m_match[m_at];
        Tally& tally = m_tallies[nameOf(recorded)];
        const int before = m_hand.inputs();
        const MatchState then = stateBefore(m_match, recorded.number);
        tally.times += 1;
        tally.marks += paperMarks(then, recorded.entry, struckBy(recorded.entry));
        enter(recorded);
        tally.inputs += m_hand.inputs() - before;
        const bool isLeftOut = is<ServeContacted>(recorded.entry) && !isContactNeeded();
        m_enteredAs[recorded.number] = EntryNumber(m_table.newest().number.value + (isLeftOut ? 1 : 0));
    }

    void enter(const Recorded& recorded) {
        if (is<ServeContacted>(recorded.entry) && !isContactNeeded())
            return;
        if (recorded.placed)
            return m_hand.putRallyIn(std::get<RallyWon>(recorded.entry).by, m_enteredAs.at(recorded.placed->target));
        if (is<Strike>(recorded.entry))
            return m_hand.undo();
        if (!is<LineUp>(recorded.entry))
            return m_hand.enter(recorded.entry);
        if (is<LineUp>(m_match[m_at + 1].entry)) // with the second one, as the dialog asks for both
            return;
        m_hand.lineUps(std::get<LineUp>(m_match[m_at - 1].entry), std::get<LineUp>(recorded.entry));
    }

    /// A result implies the contact; a ruling on the server comes after it and does not.
    [[nodiscard]] bool isContactNeeded() const {
        return m_at + 1 < m_match.size() && is<WrongServer>(m_match[m_at + 1].entry);
    }

    [[nodiscard]] const Entry* struckBy(const Entry& entry) const {
        const auto* strike = std::get_if<Strike>(&entry);
        return strike ? &m_match[strike->target.value - 1].entry : nullptr;
    }

    static QString nameOf(const Recorded& recorded) {
        if (recorded.placed)
            return u"rally put in later"_s;
        if (is<ServeContacted>(recorded.entry) || is<RallyWon>(recorded.entry))
            return u"rally"_s;
        return kindOf(recorded.entry);
    }

    std::vector<Recorded> m_match;
    OpenTable m_table;
    TableHand m_hand{m_table};
    std::size_t m_at = 0;
    std::map<QString, Tally> m_tallies;
    std::map<EntryNumber, EntryNumber> m_enteredAs;
};

} // namespace

class TestCountedInputs : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void initTestCase() { m_counting.run(); }
    void theSheetsAreThoseOfTheDemoMatch();
    void aRallyWithoutEventsIsOneInputOrTwo();
    void theMatchNeedsFewerInputsThanMarksOnPaper();

private:
    Counting m_counting;
};

/// Nothing is counted that has not left the right marks.
void TestCountedInputs::theSheetsAreThoseOfTheDemoMatch() {
    const MatchRecord right = writeUp(m_counting.match());
    const MatchRecord& hers = m_counting.entered();
    QCOMPARE(hers.sets.size(), right.sets.size());
    for (std::size_t set = 0; set < right.sets.size(); ++set) {
        for (const Difference& difference : differencesOf(right.sets[set], hers.sets[set])) {
            const DifferenceWords words = wordsFor(difference, m_counting.state());
            qWarning("%s: %s, not %s", qPrintable(words.where), qPrintable(words.right), qPrintable(words.hers));
        }
        QCOMPARE(differencesOf(right.sets[set], hers.sets[set]).size(), std::size_t(0));
        const MarksRight marks = marksRight(right.sets[set], hers.sets[set]);
        QVERIFY(marks.of > 50);
        QCOMPARE(marks.right, marks.of);
    }
}

void TestCountedInputs::aRallyWithoutEventsIsOneInputOrTwo() {
    const Tally rally = m_counting.tallies().at(u"rally"_s);
    const auto won = std::ranges::count_if(
        m_counting.match(), [](const Recorded& recorded) { return is<RallyWon>(recorded.entry) && !recorded.placed; });
    const double perRally = static_cast<double>(rally.inputs) / static_cast<double>(won);
    qInfo("%d inputs for %d rallies without events: %.2f each", rally.inputs, static_cast<int>(won), perRally);
    QVERIFY(won > 100);
    QVERIFY(perRally >= 1.0);
    QVERIFY(perRally <= mostInputsPerRally);
}

void TestCountedInputs::theMatchNeedsFewerInputsThanMarksOnPaper() {
    Tally all;
    for (const auto& [name, tally] : m_counting.tallies()) {
        qInfo("%-24s %4d times  %4d inputs  %4d marks on paper", qPrintable(name), tally.times, tally.inputs,
              tally.marks);
        all.times += tally.times;
        all.inputs += tally.inputs;
        all.marks += tally.marks;
    }
    const double share = static_cast<double>(all.inputs) / all.marks;
    qInfo("all: %d inputs, %d marks on paper: %.1f %%; beside them %d letters of sentences, the same by pen",
          all.inputs, all.marks, share * 100, m_counting.letters());
    QVERIFY(share <= mostOfPaper);
}

QTEST_MAIN(TestCountedInputs)
#include "tst_countedinputs.moc"
