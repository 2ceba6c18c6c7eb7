// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/findingwords.h"

#include <QRegularExpression>
#include <QSet>
#include <QTest>

using namespace setfolio;

namespace {

constexpr auto allKinds =
    std::to_array<FindingKind>({FindingKind::MatchNotOpened,    FindingKind::MatchAlreadyOpened,
                                FindingKind::MatchIsClosed,     FindingKind::MatchAlreadyWon,
                                FindingKind::MatchIsSuspended,  FindingKind::NotSuspended,
                                FindingKind::MatchNotWon,       FindingKind::SetNotStarted,
                                FindingKind::SetAlreadyStarted, FindingKind::SetAlreadyWon,
                                FindingKind::SetNotWon,         FindingKind::TossMissing,
                                FindingKind::LineUpMissing,     FindingKind::RallyUndecided,
                                FindingKind::NotOnCourt,        FindingKind::ServeAlreadyContacted,
                                FindingKind::NoSuchEntry,       FindingKind::CannotBeStruck,
                                FindingKind::BestOfImpossible,  FindingKind::NumberImpossible,
                                FindingKind::LiberoNotServing,  FindingKind::NotServing,
                                FindingKind::NumberNotAllowed,  FindingKind::DoubledInRoster,
                                FindingKind::TooManyLiberos,    FindingKind::DoubledInLineUp,
                                FindingKind::StrangerInLineUp,  FindingKind::LiberoInLineUp,
                                FindingKind::LiberoNotOnRoster, FindingKind::CaptainNotInTeam,
                                FindingKind::WrongSlot,         FindingKind::SubstituteNotOnRoster,
                                FindingKind::SubstituteOnCourt, FindingKind::SubstituteIsLibero,
                                FindingKind::SubstitutionLimit, FindingKind::TimeOutLimit,
                                FindingKind::LiberoMayNotServe, FindingKind::LiberoSecondSlot,
                                FindingKind::ServerIsNotLibero, FindingKind::ReServeLimit});

MatchState namedMatch() {
    MatchState state;
    state.opened = MatchOpened{};
    state.opened->teams = {{u"Saltmarsh Herons"_qs, u"SAL"_qs, {}}, {u"Quarry Ridge Larks"_qs, u"QRL"_qs, {}}};
    return state;
}

/// A finding of that kind with every field filled in, each with a value of its own.
Finding fullFinding(FindingKind kind) {
    return {.kind = kind,
            .setting = u"substitution-limit"_qs,
            .team = Team::Visitors,
            .number = ShirtNumber(47),
            .slot = Slot(3),
            .other = Slot(6),
            .count = 19,
            .limit = 18};
}

} // namespace

class TestFindingWords : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theSentenceIs_data();
    void theSentenceIs();
    void everyKindHasASentenceOfItsOwn();
    void everySentenceIsShortAndWhole();
    void aTeamWithoutACodeIsCalledByItsName();
    void whatIsFilledInIsNotReadAgain();
    void theSourceStandsBesideTheSetting();
};

// clang-format off
void TestFindingWords::theSentenceIs_data() {
    using enum FindingKind;
    QTest::addColumn<FindingKind>("kind");
    QTest::addColumn<QString>("expected");
    const auto row = [](FindingKind kind, const char* expected) { QTest::newRow(expected) << kind << QString::fromUtf8(expected); };

    row(MatchNotOpened,        "No match is open: open it first, with its teams and its rulebook.");
    row(MatchAlreadyOpened,    "The match is open already: another match goes into a file of its own.");
    row(MatchIsClosed,         "The match is closed: undo the closing to record more.");
    row(MatchAlreadyWon,       "The match is won: close it, or undo the end of the last set.");
    row(MatchNotWon,           "The match is not won yet: play on, or record the end of the set that decides it.");
    row(MatchIsSuspended,      "Play is suspended: resume it first.");
    row(NotSuspended,          "Play has not been suspended: there is nothing to resume.");
    row(SetNotStarted,         "The set has not started: record its start first.");
    row(SetAlreadyStarted,     "The set has started, and its toss and line-ups are settled: undo the start to change them.");
    row(SetAlreadyWon,         "The set is won: record its end, or undo the last point.");
    row(SetNotWon,             "The set is not won yet: play on until the score decides it.");
    row(TossMissing,           "It is not known who serves first: record the toss.");
    row(LineUpMissing,         "QRL has no line-up yet: record it first.");
    row(RallyUndecided,        "The rally is not decided: record who won it, or a replay, first.");
    row(ServeAlreadyContacted, "The serve is contacted already: record who won the rally, or a replay.");
    row(NotOnCourt,            "Number 47 of QRL is not on court: name one of the six who are.");
    row(NoSuchEntry,           "There is no entry 19 that stands: choose another one to strike.");
    row(CannotBeStruck,        "The opening of the match cannot be struck: begin a new match instead.");
    row(BestOfImpossible,      "The rulebook has no match of best of 19: choose a number of sets that it allows.");
    row(NumberImpossible,      "47 is no shirt number: numbers go from 0 to 99.");
    row(LiberoNotServing,      "No libero of QRL is serving: there is nothing to end.");
    row(NotServing,            "QRL does not have the serve: its libero can serve when it has won it back.");
    row(NumberNotAllowed,      "The rulebook does not allow number 47 of QRL: the player needs another shirt.");
    row(DoubledInRoster,       "Number 47 stands twice on the roster of QRL: ask the coach which of the two is meant.");
    row(TooManyLiberos,        "QRL names 19 as liberos, and the limit is 18: ask the coach who is not to be one.");
    row(DoubledInLineUp,       "Number 47 stands twice in the line-up of QRL: ask the coach for the right slip.");
    row(StrangerInLineUp,      "Number 47 in the line-up of QRL is not on the roster: check the slip, then the roster.");
    row(LiberoInLineUp,        "Number 47 is a libero of QRL and cannot be one of the six: ask the coach for the right slip.");
    row(LiberoNotOnRoster,     "Libero 47 of QRL is not on the roster: check the slip, then the roster.");
    row(CaptainNotInTeam,      "Number 47 is named captain of QRL but is not in the team: check the slip.");
    row(SubstituteNotOnRoster, "Number 47 of QRL is not on the roster and may not come in: tell the second referee.");
    row(SubstituteOnCourt,     "Number 47 of QRL is on court already, in slot III: check the number that comes in.");
    row(SubstituteIsLibero,    "Number 47 of QRL is a libero in this set and may not come in as a substitute.");
    row(WrongSlot,             "Number 47 of QRL belongs to slot III and may not come in to slot VI: tell the second referee.");
    row(SubstitutionLimit,     "This is substitution 19 of QRL, and the limit is 18: tell the second referee.");
    row(TimeOutLimit,          "This is time-out 19 of QRL, and the limit is 18: tell the second referee.");
    row(LiberoMayNotServe,     "Number 47 of QRL is a libero and may not serve: the player of the slot serves.");
    row(LiberoSecondSlot,      "A libero of QRL has served in slot III, so number 47 may not serve in slot VI: tell the second referee.");
    row(ServerIsNotLibero,     "Number 47 is not a libero of QRL in this set: check the number.");
    row(ReServeLimit,          "This is re-serve 19 in this term of QRL, and the limit is 18: the rally is lost, record no serve.");
}
// clang-format on

void TestFindingWords::theSentenceIs() {
    QFETCH(FindingKind, kind);
    QFETCH(QString, expected);
    QCOMPARE(sentence(fullFinding(kind), namedMatch()), expected);
}

void TestFindingWords::everyKindHasASentenceOfItsOwn() {
    QSet<QString> sentences;
    for (const FindingKind kind : allKinds)
        sentences.insert(sentence(fullFinding(kind), namedMatch()));
    QVERIFY(!sentences.contains(QString()));
    QCOMPARE(static_cast<std::size_t>(sentences.size()), allKinds.size());
    // The kinds are counted from 0, so that the list above is whole when it holds the last one and as many as there
    // are.
    QCOMPARE(allKinds.size(), static_cast<std::size_t>(*std::max_element(allKinds.begin(), allKinds.end())) + 1);
}

void TestFindingWords::everySentenceIsShortAndWhole() {
    static const QRegularExpression openPlace(QStringLiteral("%[0-9]"));
    for (const FindingKind kind : allKinds) {
        const QString text = sentence(fullFinding(kind), namedMatch());
        QVERIFY2(text.size() <= 110, qPrintable(text));
        QVERIFY2(text.endsWith(u'.'), qPrintable(text));
        QVERIFY2(!openPlace.match(text).hasMatch(), qPrintable(text));
    }
}

void TestFindingWords::aTeamWithoutACodeIsCalledByItsName() {
    MatchState state = namedMatch();
    state.opened->teams.visitors.code.clear();
    const Finding finding = fullFinding(FindingKind::LineUpMissing);
    QCOMPARE(sentence(finding, state), u"Quarry Ridge Larks has no line-up yet: record it first."_qs);
    QCOMPARE(sentence(finding, MatchState{}), u"visitors has no line-up yet: record it first."_qs);
}

void TestFindingWords::whatIsFilledInIsNotReadAgain() {
    MatchState state = namedMatch();
    state.opened->teams.visitors.code = u"%1<b>%5"_qs;
    QCOMPARE(sentence(fullFinding(FindingKind::LineUpMissing), state),
             u"%1<b>%5 has no line-up yet: record it first."_qs);
}

void TestFindingWords::theSourceStandsBesideTheSetting() {
    Rulebook rulebook;
    rulebook.sources.insert(u"substitution-limit"_qs, {u"a handbook, 5-6"_qs, u"B"_qs});
    Finding finding = fullFinding(FindingKind::SubstitutionLimit);
    QCOMPARE(sourceOf(finding, rulebook), u"a handbook, 5-6"_qs);
    finding.setting.clear();
    QCOMPARE(sourceOf(finding, rulebook), QString());
}

QTEST_GUILESS_MAIN(TestFindingWords)
#include "tst_findingwords.moc"
