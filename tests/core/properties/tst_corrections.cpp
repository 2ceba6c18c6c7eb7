// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/chain.h"
#include "core/record/writeup.h"
#include "core/rules/judge.h"
#include "tests/core/properties/manymatches.h"
#include "tests/support/randomplaycorrect.h"

#include <algorithm>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

QByteArray bytesOf(const std::vector<Recorded>& entries) {
    QByteArray bytes;
    QByteArray digest = firstDigest();
    for (const Recorded& recorded : entries) {
        const QByteArray line = ledgerLine(recorded, digest);
        digest = digestOfLine(line);
        bytes += line;
    }
    return bytes;
}

} // namespace

/// A ledger with mistakes put right, beside the one that would have been written right at once.
class TestCorrections : public QObject {
    Q_OBJECT

    /// `check(right, corrected)` over the matches of the row's rulebook.
    template <typename Check>
    static void forLedgers(Seeds seeds, Check&& check) {
        QFETCH(QString, rulebook);
        int corrections = 0;
        overMatches(rulebookOf(rulebook), seeds, [&](const RandomPlay& play, std::uint32_t seed) {
            const Corrected corrected = withMistakes(play.entries(), seed);
            corrections += corrected.corrections;
            check(play.entries(), corrected);
        });
        qInfo("%d corrections", corrections);
        QVERIFY(corrections > 0);
    }

private Q_SLOTS:
    void aCorrectedLedgerAddsUpToTheOneWrittenRightAtOnce_data() { eachRulebook(); }
    void aCorrectedLedgerAddsUpToTheOneWrittenRightAtOnce() {
        forLedgers(seedsToPlay(300), [](const std::vector<Recorded>& right, const Corrected& corrected) {
            QVERIFY(corrected.entries.size() >= right.size());
            QVERIFY(renumbered(fold(corrected.entries), corrected.rightNumbers) == fold(right));
        });
    }

    void correctionsOfALawfulMatchGiveNoRefusal_data() { eachRulebook(); }
    void correctionsOfALawfulMatchGiveNoRefusal() {
        forLedgers(seedsToPlay(100), [](const std::vector<Recorded>&, const Corrected& corrected) {
            for (const EntryFinding& found : review(corrected.entries))
                if (found.finding.gravity == Gravity::Refused) {
                    tell(QStringLiteral("finding %1").arg(int(found.finding.kind)), corrected.entries,
                         found.entry.value);
                    QFAIL("refused");
                }
        });
    }

    void readingWhatWasWrittenGivesTheSameEntriesAndState_data() { eachRulebook(); }
    void readingWhatWasWrittenGivesTheSameEntriesAndState() {
        forLedgers(seedsToPlay(15, 2000), [](const std::vector<Recorded>&, const Corrected& corrected) {
            const QByteArray bytes = bytesOf(corrected.entries);
            const LedgerContent content = readLedger(bytes);
            QVERIFY(!content.damage && !content.torn);
            QCOMPARE(content.wholeBytes, bytes.size());
            QVERIFY(content.entries == corrected.entries);
            QVERIFY(fold(content.entries) == fold(corrected.entries));
        });
    }

    void writingOnEqualsWritingAnew_data() { eachRulebook(); }
    void writingOnEqualsWritingAnew() {
        forLedgers(seedsToPlay(40, 20000), [](const std::vector<Recorded>&, const Corrected& corrected) {
            RecordWriter writer;
            for (const TimelineItem& item : timelineOf(corrected.entries))
                writer.take(item);
            QVERIFY(writer.record() == writeUp(corrected.entries));
            QVERIFY(writer.state() == fold(corrected.entries));
        });
    }

    void whatIsWrittenUpAddsUpToTheScore_data() { eachRulebook(); }
    void whatIsWrittenUpAddsUpToTheScore() {
        forLedgers(seedsToPlay(40, 20000), [](const std::vector<Recorded>& right, const Corrected& corrected) {
            const MatchState state = fold(right);
            const MatchRecord record = writeUp(corrected.entries);
            QCOMPARE(record.heading.setScores, setScores(state));
            QCOMPARE(record.heading.setsWon, setsWon(state));
            for (std::size_t set = 0; set < record.sets.size(); ++set)
                for (const Team team : bothTeams) {
                    const auto& running = record.sets[set].teams[team].running;
                    const auto stand = std::ranges::count(running, false, &RunningPoint::takenBack);
                    QCOMPARE(static_cast<int>(stand), state.sets[set].teams[team].points);
                }
        });
    }

    void eachPartOfALedgerIsWrittenUpAsItStands_data() { eachRulebook(); }
    void eachPartOfALedgerIsWrittenUpAsItStands() {
        forLedgers(seedsToPlay(1, 200), [](const std::vector<Recorded>& right, const Corrected&) {
            RecordWriter writer;
            const std::span all(right);
            for (std::size_t count = 1; count <= all.size(); ++count) {
                writer.take({&right[count - 1], nullptr});
                if (count % 7 == 0)
                    QVERIFY(writer.record() == writeUp(all.first(count)));
            }
        });
    }
};

QTEST_APPLESS_MAIN(TestCorrections)
#include "tst_corrections.moc"
