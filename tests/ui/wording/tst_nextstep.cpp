// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/nextstep.h"

#include "tests/support/signoffs.h"

#include <QTest>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

void won(MatchBuilder& match, const char* letter) {
    match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
    for (int i = 0; i < 25; ++i)
        match.play(letter);
}

} // namespace

class TestNextStep : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void withoutAMatchThereIsOneToBegin();
    void theStepsOfASetFollowEachOther();
    void whatIsSignedIsAskedForInTurn();
    void whereOnlyTheMatchIsSignedNoSetIs();
    void theLineUpOnTheLeftComesFirst();
    void theDecidingSetHasAToss();
    void theWordsSayTeamsAndScores();
};

void TestNextStep::withoutAMatchThereIsOneToBegin() {
    QVERIFY(nextStep(MatchState()) == (NextStep{Step::OpenMatch, {}}));
}

void TestNextStep::theStepsOfASetFollowEachOther() {
    MatchBuilder match;
    match.open(3);
    QCOMPARE(nextStep(match.state()).step, Step::Toss);
    match.toss(Team::Home);
    QVERIFY(nextStep(match.state()) == (NextStep{Step::LineUp, Team::Home}));
    match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6});
    QVERIFY(nextStep(match.state()) == (NextStep{Step::LineUp, Team::Visitors}));
    match.lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16});
    QCOMPARE(nextStep(match.state()).step, Step::StartSet);
    match.start();
    QCOMPARE(nextStep(match.state()).step, Step::Serve);
    match.play("s");
    QCOMPARE(nextStep(match.state()).step, Step::Decide);
    for (int i = 0; i < 25; ++i)
        match.play("h");
    QCOMPARE(nextStep(match.state()).step, Step::EndSet);
    match.add(SetEnded{});
    QVERIFY(nextStep(match.state()) == (NextStep{Step::SignOff, {}, 1}));
    QVERIFY(nextStep(match.state(), true) == (NextStep{Step::LineUp, Team::Visitors}));
    won(match, "h");
    match.add(SetEnded{});
    QVERIFY(nextStep(match.state()) == (NextStep{Step::SignOff, {}, 1})); // it was put off, and comes first
    QCOMPARE(nextStep(match.state(), true).step, Step::CloseMatch);
    match.add(MatchClosed{});
    QCOMPARE(nextStep(match.state(), true).step, Step::Print);
}

void TestNextStep::whatIsSignedIsAskedForInTurn() {
    MatchBuilder match = oneSetSealed();
    QCOMPARE(nextStep(match.state()).step, Step::LineUp);
    playSet(match, Team::Home);
    QVERIFY(nextStep(match.state()) == (NextStep{Step::SignOff, {}, 2}));
    signOff(match, 2);
    QCOMPARE(nextStep(match.state()).step, Step::CloseMatch);
    match.add(MatchClosed{});
    QVERIFY(nextStep(match.state()) == (NextStep{Step::SignOff, {}, {}}));
    QVERIFY(wordsFor(nextStep(match.state()), match.state()).title.contains(u"sign-off of the match"));
    signOff(match, std::nullopt);
    QCOMPARE(nextStep(match.state()).step, Step::Print);
    QVERIFY(wordsFor(nextStep(match.state()), match.state()).sentence.contains(u"signed and sealed"));
}

void TestNextStep::whereOnlyTheMatchIsSignedNoSetIs() {
    MatchBuilder match;
    match.open(3, publishedRulebook(QStringLiteral("international")).value()).toss(Team::Home);
    won(match, "h");
    match.add(SetEnded{});
    QCOMPARE(nextStep(match.state()).step, Step::LineUp);
    won(match, "h");
    match.add(SetEnded{});
    QCOMPARE(nextStep(match.state()).step, Step::CloseMatch);
    match.add(MatchClosed{});
    QVERIFY(nextStep(match.state()) == (NextStep{Step::SignOff, {}, {}}));
}

void TestNextStep::theLineUpOnTheLeftComesFirst() {
    MatchBuilder match;
    match.open().toss(Team::Home, Team::Visitors);
    QVERIFY(nextStep(match.state()) == (NextStep{Step::LineUp, Team::Visitors}));
}

void TestNextStep::theDecidingSetHasAToss() {
    MatchBuilder match;
    match.open(3).toss(Team::Home);
    won(match, "h");
    match.add(SetEnded{});
    won(match, "v");
    match.add(SetEnded{});
    // Source: NFHS 2003 rule changes, 1-4-4: a new toss before the deciding set.
    QCOMPARE(nextStep(match.state(), true).step, Step::Toss);
    QCOMPARE(wordsFor(nextStep(match.state(), true), match.state()).title,
             QStringLiteral("Next: toss for the deciding set"));
}

void TestNextStep::theWordsSayTeamsAndScores() {
    MatchBuilder match;
    match.open(3).toss(Team::Visitors);
    won(match, "h");
    const StepWords words = wordsFor(nextStep(match.state()), match.state());
    QCOMPARE(words.title, QStringLiteral("SAL wins set 1, 25–0"));
    QVERIFY(words.sentence.contains(u"second referee"));
    QVERIFY(!words.button.isEmpty());
}

QTEST_GUILESS_MAIN(TestNextStep)
#include "tst_nextstep.moc"
