// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/proposals.h"

#include "tests/support/matchbuilder.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

constexpr Team H = Team::Home;
constexpr Team V = Team::Visitors;

QString inWords(const std::optional<Substitution>& change) {
    return change ? QStringLiteral("%1/%2").arg(change->in.value).arg(change->out.value) : QStringLiteral("nothing");
}

QString inWords(const std::optional<LiberoIn>& move) {
    return move ? QStringLiteral("%1 for %2").arg(move->libero.value).arg(move->replaced.value)
                : QStringLiteral("nothing");
}

/// The home team wins a set in which 7 served for 1.
MatchBuilder secondSet() {
    MatchBuilder match;
    match.started().substitute(H, 7, 1);
    for (int rally = 0; rally < 25; ++rally)
        match.play("h");
    match.add(SetEnded{}).lineUp(H, {2, 3, 4, 5, 6, 1}).lineUp(V, {11, 12, 13, 14, 15, 16}).start();
    return match;
}

} // namespace

/// Where no source is named, it is common practice.
class TestProposals : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void nothingWithoutAnExchangeBefore();
    void theServerChangesAsBefore();
    void whatHasJustBeenDoneIsNotProposed();
    void aSubstituteLeavesAsSheComesToTheFront();
    void anEarlierSetIsRemembered();
    void anIllegalPlayerGoesBackFirst();
    void nothingWhileTheRallyIsPlayed();
    void aLiberoComesInAtTheServersPlace();
    void noSecondPlaceForTheLiberosServe();
};

void TestProposals::nothingWithoutAnExchangeBefore() {
    QCOMPARE(inWords(proposedSubstitution(MatchBuilder().started().state(), H)), QStringLiteral("nothing"));
    QCOMPARE(inWords(proposedSubstitution(MatchState(), H)), QStringLiteral("nothing"));
}

void TestProposals::theServerChangesAsBefore() {
    MatchBuilder match;
    match.started().substitute(H, 7, 1).play("h").substitute(H, 1, 7).play("h");
    QCOMPARE(inWords(proposedSubstitution(match.state(), H)), QStringLiteral("7/1"));
    QCOMPARE(inWords(proposedSubstitution(match.state(), V)), QStringLiteral("nothing"));
}

void TestProposals::whatHasJustBeenDoneIsNotProposed() {
    MatchBuilder match;
    match.started().substitute(H, 7, 1);
    QCOMPARE(inWords(proposedSubstitution(match.state(), H)), QStringLiteral("nothing"));
}

void TestProposals::aSubstituteLeavesAsSheComesToTheFront() {
    MatchBuilder match;
    match.started().substitute(H, 7, 1); // slot I serves, and comes to position 4 three rotations later
    for (const char* rally : {"v", "h", "v", "h", "v", "h"}) {
        QCOMPARE(inWords(proposedSubstitution(match.state(), H)), QStringLiteral("nothing"));
        match.play(rally);
    }
    QCOMPARE(inWords(proposedSubstitution(match.state(), H)), QStringLiteral("1/7"));
}

void TestProposals::anEarlierSetIsRemembered() {
    MatchBuilder match = secondSet();
    QCOMPARE(match.state().set().serving, V); // the first serve alternates
    for (const char* rally : {"h", "v", "h", "v", "h", "v", "h", "v", "h"})
        match.play(rally);
    QCOMPARE(match.state().set().serving, H);
    QCOMPARE(onCourt(match.state().set().teams.home, slotAt(match.state().set(), H, CourtPosition(1))), ShirtNumber(1));
    QCOMPARE(inWords(proposedSubstitution(match.state(), H)), QStringLiteral("7/1"));
}

/// Source: FIVB Official Volleyball Rules 2025-2028, 15.9.2: the substitution is put right.
void TestProposals::anIllegalPlayerGoesBackFirst() {
    MatchBuilder match;
    match.started().substitute(H, 7, 1).play("h").substitute(H, 8, 4).play("hs");
    match.add(IllegalPlayer{H, ShirtNumber(8), {}, {}});
    QCOMPARE(inWords(proposedSubstitution(match.state(), H)), QStringLiteral("4/8"));
    match.substitute(H, 4, 8);
    QVERIFY(inWords(proposedSubstitution(match.state(), H)) != QStringLiteral("4/8"));
}

void TestProposals::nothingWhileTheRallyIsPlayed() {
    MatchBuilder match;
    match.started().substitute(H, 7, 1).play("h").substitute(H, 1, 7).play("h").add(ServeContacted{});
    QCOMPARE(inWords(proposedSubstitution(match.state(), H)), QStringLiteral("nothing"));
}

void TestProposals::aLiberoComesInAtTheServersPlace() {
    MatchBuilder match;
    match.started();
    QCOMPARE(inWords(proposedReplacement(match.state(), H)), QStringLiteral("9 for 1"));
    match.add(LiberoIn{H, ShirtNumber(9), ShirtNumber(1)});
    QCOMPARE(inWords(proposedReplacement(match.state(), H)), QStringLiteral("nothing")); // she is on court
}

/// Source: Libero Tracking Instructions, Iowa Girls High School Athletic Union: one place in the serving order a set.
void TestProposals::noSecondPlaceForTheLiberosServe() {
    MatchBuilder match;
    match.started().add(LiberoIn{H, ShirtNumber(9), ShirtNumber(1)}).play("h").play("v");
    match.add(LiberoOut{H, ShirtNumber(9)}).play("h");
    QCOMPARE(match.state().set().serving, H);
    QCOMPARE(inWords(proposedReplacement(match.state(), H)), QStringLiteral("nothing"));
}

QTEST_MAIN(TestProposals)
#include "tst_proposals.moc"
