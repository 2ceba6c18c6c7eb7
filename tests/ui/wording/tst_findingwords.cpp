// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/findingwords.h"

#include <QRegularExpression>
#include <QSet>
#include <QTest>

using namespace setfolio;

namespace {

std::vector<FindingKind> everyKind() {
    std::vector<FindingKind> kinds;
    for (std::size_t kind = 0; kind < findingKindCount; ++kind)
        kinds.push_back(static_cast<FindingKind>(kind));
    return kinds;
}

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
            .limit = 18,
            .lawful = ShirtNumber(53),
            .who = Member(ShirtNumber(47)),
            .level = SanctionLevel::Expulsion};
}

} // namespace

class TestFindingWords : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theSentenceIs_data();
    void theSentenceIs();
    void everyKindHasASentenceOfItsOwn();
    void everySentenceIsShortAndWhole();
    void someoneOfTheBenchIsCalledByTheRole();
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
    row(SetNotStarted,         "The set has not started: record its start first, or, for the set before, undo its end.");
    row(SetAlreadyStarted,     "The set has started, and its toss and line-ups are settled: undo the start to change them.");
    row(SetAlreadyWon,         "The set is won: record its end, or undo the last point.");
    row(SetNotWon,             "The set is not won yet: play on until the score decides it.");
    row(TossMissing,           "It is not known who serves first: record the toss.");
    row(LineUpMissing,         "QRL has no line-up yet: record it first.");
    row(ChangedSinceLineUp,    "This line-up of QRL has been changed since: strike the changes, or correct the line-up in its place.");
    row(RallyUndecided,        "The rally is not decided: record who won it, or a replay, first.");
    row(ServeAlreadyContacted, "The serve is contacted already: record who won the rally, or a replay.");
    row(NotOnCourt,            "Number 47 of QRL is not on court: name one of the six who are.");
    row(NoSuchEntry,           "There is no entry 19 that stands: name one that does.");
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
    row(NeverServed,              "QRL has not served in this set, so nobody of it has served wrongly: check the team.");
    row(NotServedYet,             "No serve of QRL is contacted in this term: say nothing before the contact, then tell the referee.");
    row(RosterSettled,            "The match has begun, and the rulebook lets QRL change no number of its roster: tell the referee.");
    row(LiberoNotOfMatch,        "Number 47 of QRL is no libero of the match: ask the coach for the right slip.");
    row(CaptainNotOnCourt,       "Number 47 of QRL is not on court and cannot be playing captain: ask who is.");
    row(CaptainIsLibero,         "Number 47 of QRL is a libero and may not be playing captain: ask who is.");
    row(FirstServeAlternates,    "QRL served first in the set before, and the first serve alternates: the other team serves.");
    row(SidesNotAsRuled,         "By the rulebook QRL stands left of the table in this set: ask the second referee.");
    row(SentOff,                 "Number 47 of QRL is out by expulsion and may not play: tell the second referee.");
    row(ReplacedForGood,         "Number 47 of QRL was replaced exceptionally and may not come back: tell the second referee.");
    row(GivenUpAsLibero,         "Number 47 of QRL was given up as a libero and may not come back: tell the second referee.");
    row(SubstituteOffForLibero,  "Number 47 of QRL is one of the six, with a libero in her place: somebody else must come in.");
    row(OutOffForLibero,         "Number 47 of QRL is off court for libero 53: record the libero out first, then this.");
    row(NotHerPartner,           "Number 47 of QRL may not come in to slot III: only number 53 may come back there.");
    row(SlotUsedUp,              "Number 47 of QRL in slot III has no regular substitute left: tell the second referee.");
    row(PlayersPerSlot,          "Number 47 would be player 19 of QRL in slot III, and the limit is 18: tell the second referee.");
    row(SecondRequest,           "QRL has substituted in this interruption and may not ask again yet: tell the second referee.");
    row(SubstitutionBarred,      "QRL was sanctioned for delay and may not substitute before a rally is completed: tell the referee.");
    row(SubstitutionBeforeStart, "The rulebook has no substitution before the start: QRL begins with its line-up.");
    row(RequestBeforeRepeat,     "The serve is repeated, and QRL may ask for nothing before it: tell the second referee.");
    row(RegularSubstituteLeft,   "Number 47 of QRL can be replaced by a regular substitution: number 53 may come in.");
    row(LiberoComesLast,         "Libero 47 of QRL may come in only when nobody else can: number 53 may.");
    row(FewerThanSixNotAllowed,  "QRL may not play with fewer than six: number 47 is replaced, or the team is incomplete.");
    row(SubstituteLeft,          "Number 47 of QRL leaves no vacant place while number 53 may come in: record who does.");
    row(VacantServer,            "Slot III of QRL is vacant and cannot serve: the rally is lost, record no serve.");
    row(SentOffOnCourt,          "Number 47 of QRL is out by expulsion and still on court: record who came in for her.");
    row(LiberoInFrontRow,        "Libero 47 of QRL is in the front row, in slot III: tell the second referee, and record her out.");
    row(WrongServerUnruled,      "Number 47 was seen serving for QRL in place of number 53: ask for the ruling, and record it.");
    row(ServedRightly,           "Number 47 of QRL was the right server: check the number that served.");
    row(PointsStand,             "The rulebook takes no points back from QRL: record the ruling without them.");
    row(TakenBackTooMuch,        "Only points of this term of QRL may be taken back, those from entry 19 on.");
    row(TakenBackTooLate,        "The opponents have contacted their next serve: the points of QRL stand.");
    row(NotALibero,              "Number 47 of QRL is not named a libero here: check the number, or ask the coach.");
    row(LiberoAlreadyOnCourt,    "Libero 53 of QRL is on court already: record her out first, or one for the other.");
    row(LiberoForFrontRow,       "Number 47 of QRL stands in the front row, and a libero replaces the back row only.");
    row(LiberoRallyBetween,      "No rally lies between two replacements of liberos of QRL (number 47): tell the second referee.");
    row(LiberoExchangeNotAllowed,"Libero 47 of QRL may not come in for a libero: only number 53 may.");
    row(RedesignationNotAllowed, "QRL may have no new libero for number 47: it plays on with whom it has left.");
    row(NewLiberoOnCourt,        "Number 47 of QRL is one of the six and may not become a libero: name one of the bench.");
    row(LevelNotOnLadder,        "The rulebook has no such sanction (Number 47 of QRL, expulsion): ask the referee which one was given.");
    row(SanctionNotHigher,       "Number 47 of QRL has had as much; the next sanction is expulsion: ask the referee which one was given.");
    row(TeamWarnedAlready,       "QRL has had its warning: the next sanction is expulsion, so ask the referee which one was given.");
    row(SentOffAlready,          "Number 47 of QRL is out already by expulsion: ask the referee who was meant.");
    row(SanctionedStranger,      "Number 47 is not on the roster of QRL: ask the referee who was sanctioned.");
    row(DelayNotNext,            "The next sanction of QRL for delay is the expulsion: ask the referee which one was given.");
    row(ImproperRequestIsDelay,  "Such a request of QRL is a delay, and the next sanction is the expulsion: tell the second referee.");
    row(SidesChangeEarly,        "Sides change in the deciding set when a team has 19 points: wait until then.");
    row(SidesChangedAlready,     "The teams have changed sides in this set already: ask the second referee.");
    row(NoSidesChange,           "The rulebook has no change of sides within this set: ask the second referee.");
    row(DefaultIsOfMatch,        "A default loses the match, not one set: record it for the match, or QRL as incomplete.");
    row(IncompleteBeforePlay,    "No set has begun, and QRL has nothing to keep: a team that cannot begin loses by default.");
    row(SetNotPlayedAgain,       "By the rulebook the set goes on as it stood: ask the referee before it is played again.");
    row(ResumedTooLate,          "Play was broken off 19 hours ago, more than 18: the match is played anew, in a file of its own.");
    row(RequestsGoToo,           "Time-outs and substitutions since then go too: strike entry 19 and those after it, then rule.");
    row(PlayNotResumed,          "Play has not been resumed with number 47 of QRL on court: tell the referee, nothing is lost yet.");
    row(LateReplacementIsDelay,  "A late replacement of QRL is not let pass now, and the sanction is the expulsion: tell the second referee.");
    row(LiberoForSentOff,        "Libero 47 of QRL may not come in for number 53, who was sent off: ask who else comes in.");
    row(NoLiberoThisSet,         "The slip of QRL named a libero, 47, whom nobody wears: the team has no libero in this set.");
    row(IllegalPlayerStays,      "Number 47 of QRL, ruled illegal, still stands in slot III: strike entry 19, or record number 53 in for her.");
    row(SameLineUpDue,           "The set is played again with the same line-ups: put the six of QRL where they stood before.");
    row(ServerNotOnRoster,       "Number 47 is not on the roster of QRL: look again who serves.");
    row(RosterChangeCosts,       "The match has begun: by the rulebook other numbers on the roster of QRL cost a point, so tell the referee.");
    row(NoSuchPoint,             "Entry 19 brought QRL no point in this set: name the first point to be taken back.");
    row(SetNotEnded,             "There is no set 19 that has ended: name one that has, or record a forfeit of this set.");
    row(KeepsTooMuch,            "QRL cannot keep 19 points of a set it loses: here it keeps 18 at most.");
    row(LiberoNotOnCourt,        "Libero 47 of QRL is not on court: there is nobody to go out.");
}
// clang-format on

void TestFindingWords::theSentenceIs() {
    QFETCH(FindingKind, kind);
    QFETCH(QString, expected);
    QCOMPARE(sentence(fullFinding(kind), namedMatch()), expected);
}

void TestFindingWords::everyKindHasASentenceOfItsOwn() {
    QSet<QString> sentences;
    for (const FindingKind kind : everyKind())
        sentences.insert(sentence(fullFinding(kind), namedMatch()));
    QVERIFY(!sentences.contains(QString()));
    QCOMPARE(static_cast<std::size_t>(sentences.size()), findingKindCount);
}

void TestFindingWords::everySentenceIsShortAndWhole() {
    static const QRegularExpression openPlace(QStringLiteral("%[0-9]"));
    for (const FindingKind kind : everyKind()) {
        const QString text = sentence(fullFinding(kind), namedMatch());
        QVERIFY2(text.size() <= 110, qPrintable(text));
        QVERIFY2(text.endsWith(u'.'), qPrintable(text));
        QVERIFY2(!openPlace.match(text).hasMatch(), qPrintable(text));
    }
}

void TestFindingWords::someoneOfTheBenchIsCalledByTheRole() {
    Finding finding = fullFinding(FindingKind::SanctionNotHigher);
    finding.who = BenchRole::Coach;
    QCOMPARE(
        sentence(finding, namedMatch()),
        u"The coach of QRL has had as much; the next sanction is expulsion: ask the referee which one was given."_qs);
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
