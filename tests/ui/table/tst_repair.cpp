// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/matchbuilder.h"
#include "ui/table/repair.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

RepairPreview previewIn(const MatchBuilder& match, const Repair& repair) {
    return previewOf(match.entries(), match.state(), repair);
}

QString wordsIn(const MatchBuilder& match, const Repair& repair) {
    EntryLog log;
    log.follow(match.entries());
    return sentence(previewIn(match, repair), log);
}

} // namespace

class TestRepair : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void anotherWinnerChangesScoreAndServer();
    void aPointThatTheRefereesMayNoLongerChangeIsSaid();
    void aStrikeThatChangesNothingSaysSo();
    void laterEntriesThatBecomeQuestionableAreNamed();
    void theSetThatIsWonByItIsSaid();
    void theStateBeforeAnEntryIsThatOfItsPlace();
};

void TestRepair::anotherWinnerChangesScoreAndServer() {
    MatchBuilder match;
    match.started().play("hh");
    const Repair repair{RallyWon{Team::Visitors}, Placed{Placed::How::InsteadOf, match.last(), {}}};
    const RepairPreview preview = previewIn(match, repair);
    QVERIFY(preview.scoreBefore == (PerTeam<int>{2, 0}));
    QVERIFY(preview.scoreAfter == (PerTeam<int>{1, 1}));
    QCOMPARE(wordsIn(match, repair), QStringLiteral("The score becomes SAL 1–1 QRL. QRL 12 serves next, not SAL 1. "
                                                    "No later entry becomes questionable."));
}

/// Source: CVVOA Interpreter's Report of September 2015, situation 2.
void TestRepair::aPointThatTheRefereesMayNoLongerChangeIsSaid() {
    MatchBuilder match;
    match.started().play("h");
    const EntryNumber point = match.last();
    const Repair strike{Strike{point, {}}, {}};
    const Repair otherWinner{RallyWon{Team::Visitors}, Placed{Placed::How::InsteadOf, point, {}}};
    const Repair before{RallyWon{Team::Visitors}, Placed{Placed::How::Before, point, {}}};
    QVERIFY(!previewIn(match, otherWinner).settled);
    match.play("h");
    QVERIFY(previewIn(match, strike).settled);
    QVERIFY(!previewIn(match, before).settled);
    QVERIFY(wordsIn(match, otherWinner).contains(u"by the rulebook it stands: correct only a slip of the table."));
}

void TestRepair::aStrikeThatChangesNothingSaysSo() {
    MatchBuilder match;
    match.started().play("h").add(Remark{QStringLiteral("wet floor")});
    QCOMPARE(wordsIn(match, {Strike{match.last(), {}}, {}}),
             QStringLiteral("The score stays SAL 1–0 QRL. No later entry becomes questionable."));
}

void TestRepair::laterEntriesThatBecomeQuestionableAreNamed() {
    MatchBuilder match;
    match.started().substitute(Team::Home, 7, 3);
    const EntryNumber first = match.last();
    match.play("h").substitute(Team::Home, 3, 7);
    const Repair repair{Strike{first, {}}, {}};
    const RepairPreview preview = previewIn(match, repair);
    QVERIFY(!preview.questionable.empty());
    QCOMPARE(preview.questionable.front().entry, match.last());
    QVERIFY2(wordsIn(match, repair).contains(u"The first is “3 in for 7”"), qPrintable(wordsIn(match, repair)));
}

void TestRepair::theSetThatIsWonByItIsSaid() {
    MatchBuilder match;
    match.started();
    for (int i = 0; i < 24; ++i)
        match.play("h");
    const Repair repair{RallyWon{Team::Home}, Placed{Placed::How::Before, match.last(), {}}};
    QVERIFY2(wordsIn(match, repair).contains(u"The set is won by SAL"), qPrintable(wordsIn(match, repair)));
}

void TestRepair::theStateBeforeAnEntryIsThatOfItsPlace() {
    MatchBuilder match;
    match.started().play("h").substitute(Team::Home, 7, 3);
    const EntryNumber substitution = match.last();
    match.play("v");
    const MatchState before = stateBefore(match.entries(), substitution);
    QCOMPARE(before.set().teams.home.points, 1);
    QCOMPARE(onCourt(before.set().teams.home, Slot(3)), ShirtNumber(3));
}

QTEST_APPLESS_MAIN(TestRepair)
#include "tst_repair.moc"
