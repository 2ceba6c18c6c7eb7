// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randommatch.h"

#include <QtTest>

#include <set>

using namespace setfolio;
using namespace setfolio::testing;

/// What must hold of every lawful set, over random ones. Seeds are printed, so that a failure can be played again.
class TestRandomMatches : public QObject {
    Q_OBJECT

    static constexpr std::uint32_t sets = 1000;

    /// Goes through a set entry by entry beside a plain model of the order of service.
    static void checkService(const MatchBuilder& match) {
        MatchState state;
        for (const TimelineItem& item : timelineOf(match.entries())) {
            if (!item.stands())
                continue;
            const MatchState before = state;
            state = apply(std::move(state), *item.recorded);
            if (!before.opened || !before.set().started || before.sets.size() != state.sets.size())
                continue;
            const SetState& was = before.set();
            const SetState& is = state.set();
            // FIVB Official Volleyball Rules 2025-2028, 7.6.2: only a team that wins the serve back rotates.
            for (const Team team : bothTeams) {
                const bool wonServe = was.serving != team && is.serving == team;
                QCOMPARE(is.teams[team].termsBegun - was.teams[team].termsBegun, wonServe ? 1 : 0);
            }
            // The server is the player the order demands: slot by slot, in turn.
            const TeamInSet& serving = is.teams[is.serving];
            QCOMPARE(serving.nextServer.value, (serving.termsBegun - 1) % 6 + 1);
            for (const Team team : bothTeams)
                checkSix(is, team);
        }
    }
    static void checkSix(const SetState& set, Team team) {
        std::set<int> onCourtNow;
        std::set<int> bound;
        std::size_t boundPlaces = 0;
        for (const Slot slot : allSlots) {
            onCourtNow.insert(onCourt(set.teams[team], slot).value);
            std::set<int> here;
            for (const Standing& standing : set.teams[team].slots[slot.index()])
                here.insert(standing.number.value);
            boundPlaces += here.size();
            bound.insert(here.begin(), here.end());
            QCOMPARE(slotAt(set, team, positionOf(set, team, slot)), slot);
        }
        QCOMPARE(onCourtNow.size(), std::size_t(6)); // six different players
        QCOMPARE(bound.size(), boundPlaces);         // a number once bound to a slot stands in no other
    }
    static void checkRecord(const SetRecord& record, const SetState& set) {
        for (const Team team : bothTeams) {
            const TeamRecord& written = record.teams[team];
            QCOMPARE(static_cast<int>(written.running.size()), set.teams[team].points);
            for (std::size_t i = 0; i < written.running.size(); ++i)
                QCOMPARE(written.running[i].total, static_cast<int>(i) + 1);
            QCOMPARE(static_cast<int>(written.substitutions.size()), substitutionsOf(set.teams[team]));
            QVERIFY(substitutionsOf(set.teams[team]) <= 18);
            QVERIFY(set.teams[team].timeOuts.size() <= 2);
        }
        QCOMPARE(record.score.home + record.score.visitors, static_cast<int>(set.points.size()));
    }

private Q_SLOTS:
    void lawfulSetsKeepTheRules() {
        int entries = 0;
        for (std::uint32_t seed = 1; seed <= sets; ++seed) {
            RandomMatch random(seed);
            random.playSet(seed % 4 == 0 ? static_cast<int>(seed % 40) + 1 : 0);
            checkService(random.match());
            checkRecord(random.match().record().sets.front(), random.state().sets.front());
            for (const EntryFinding& finding : review(random.match().entries()))
                qFatal("seed %u: entry %u, finding %d", seed, finding.entry.value, int(finding.finding.kind));
            if (QTest::currentTestFailed())
                qFatal("the set of seed %u breaks a rule", seed);
            entries += static_cast<int>(random.match().entries().size());
        }
        qInfo("%u random sets, seeds 1 to %u, %d entries, no finding", sets, sets, entries);
    }

    void wholeMatchesEndByTheRulebookAndWritingOnEqualsWritingAnew() {
        for (std::uint32_t seed = 1; seed <= 40; ++seed) {
            RandomMatch random(seed);
            random.playMatch();
            const PerTeam<int> won = setsWon(random.state());
            QCOMPARE(std::max(won.home, won.visitors), 3);
            RecordWriter writer;
            for (const TimelineItem& item : timelineOf(random.match().entries()))
                writer.take(item);
            QCOMPARE(writer.record(), random.match().record());
            QCOMPARE(writer.state(), random.match().state());
        }
        qInfo("40 random matches, seeds 1 to 40");
    }
};

QTEST_APPLESS_MAIN(TestRandomMatches)
#include "tst_randommatches.moc"
