// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/tracking.h"
#include "tests/support/matchbuilder.h"

#include <QtTest>

namespace setfolio {

using namespace testing;

namespace {

/// The slot in which a number began.
const TrackedSlot& slotOf(const TrackedTeam& team, int starter) {
    return *std::ranges::find(team.slots, ShirtNumber(starter), &TrackedSlot::starter);
}

TrackedTeam herons(const MatchBuilder& match) {
    return trackSets(match.entries()).back().home;
}

} // namespace

class TrackingTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aSlotBeginsWithItsStarter();
    void theLiberoComesAndGoesWithTheScore();
    void aSubstitutionStandsAmongTheReplacements();
    void aVacantPlaceHasNoNumber();
    void whatIsUndoneIsNotTracked();
    void eachSetIsTrackedByItself();
};

void TrackingTest::aSlotBeginsWithItsStarter() {
    const TrackedTeam team = herons(MatchBuilder().started());
    QVERIFY(!team.kept);
    for (int number = 1; number <= 6; ++number)
        QVERIFY(slotOf(team, number).arrivals.empty());
}

void TrackingTest::theLiberoComesAndGoesWithTheScore() {
    MatchBuilder match;
    match.started().play("h").add(LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(5)});
    const EntryNumber in = match.last();
    match.play("hv").add(LiberoOut{Team::Home, ShirtNumber(9)});
    const EntryNumber out = match.last();
    const TrackedTeam team = herons(match);
    QVERIFY(team.kept);
    const std::vector<TrackedArrival> arrivals{{Arrival::LiberoIn, ShirtNumber(9), {1, 0}, in},
                                               {Arrival::LiberoOut, ShirtNumber(5), {2, 1}, out}};
    QVERIFY(slotOf(team, 5).arrivals == arrivals);
    QVERIFY(!trackSets(match.entries()).back().visitors.kept);
}

void TrackingTest::aSubstitutionStandsAmongTheReplacements() {
    MatchBuilder match;
    match.started().substitute(Team::Home, 7, 5);
    const EntryNumber substitution = match.last();
    match.play("h").add(LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(7)});
    const std::vector<TrackedArrival> arrivals{{Arrival::Substitution, ShirtNumber(7), {0, 0}, substitution},
                                               {Arrival::LiberoIn, ShirtNumber(9), {1, 0}, match.last()}};
    QVERIFY(slotOf(herons(match), 5).arrivals == arrivals);
}

void TrackingTest::aVacantPlaceHasNoNumber() {
    MatchBuilder match;
    match.started().play("v").add(PlaceVacated{Team::Home, ShirtNumber(3), QStringLiteral("ankle")});
    const std::vector<TrackedArrival> arrivals{{Arrival::Substitution, ShirtNumber(), {0, 1}, match.last()}};
    QVERIFY(slotOf(herons(match), 3).arrivals == arrivals);
}

void TrackingTest::whatIsUndoneIsNotTracked() {
    MatchBuilder match;
    match.started().add(LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(5)}).undo();
    const TrackedTeam team = herons(match);
    QVERIFY(!team.kept);
    QVERIFY(slotOf(team, 5).arrivals.empty());
}

void TrackingTest::eachSetIsTrackedByItself() {
    MatchBuilder match;
    match.started().add(LiberoIn{Team::Home, ShirtNumber(9), ShirtNumber(5)});
    match.play("hhhhhhhhhhhhhhhhhhhhhhhhh").add(SetEnded{});
    match.lineUp(Team::Home, {2, 3, 4, 5, 6, 1}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
    const std::vector<PerTeam<TrackedTeam>> sets = trackSets(match.entries());
    QCOMPARE(sets.size(), 2U);
    QCOMPARE(slotOf(sets.front().home, 5).arrivals.size(), 1U);
    QVERIFY(slotOf(sets.back().home, 5).arrivals.empty());
    QVERIFY(!sets.back().home.kept);
}

} // namespace setfolio

QTEST_GUILESS_MAIN(setfolio::TrackingTest)
#include "tst_tracking.moc"
