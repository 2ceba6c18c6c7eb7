// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The sentence of each kind of finding, before its places are filled in: %1 is the number, %2 the team, %3 the slot,
/// %4 the other slot, %5 the count, %6 the limit, %7 who, %8 the level of a sanction, %9 the number that would be
/// lawful.
#pragma once

#include "core/rules/finding.h"

#include <QtGlobal>

#include <array>

namespace setfolio {

struct FindingSentence {
    FindingKind kind;
    const char* english;
};

// clang-format off
inline constexpr std::array findingSentences{
    FindingSentence{FindingKind::MatchNotOpened,           QT_TRANSLATE_NOOP("setfolio::FindingWords", "No match is open: open it first, with its teams and its rulebook.")},
    FindingSentence{FindingKind::MatchAlreadyOpened,       QT_TRANSLATE_NOOP("setfolio::FindingWords", "The match is open already: another match goes into a file of its own.")},
    FindingSentence{FindingKind::MatchIsClosed,            QT_TRANSLATE_NOOP("setfolio::FindingWords", "The match is closed: undo the closing to record more.")},
    FindingSentence{FindingKind::MatchAlreadyWon,          QT_TRANSLATE_NOOP("setfolio::FindingWords", "The match is won: close it, or undo the end of the last set.")},
    FindingSentence{FindingKind::MatchNotWon,              QT_TRANSLATE_NOOP("setfolio::FindingWords", "The match is not won yet: play on, or record the end of the set that decides it.")},
    FindingSentence{FindingKind::MatchIsSuspended,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "Play is suspended: resume it first.")},
    FindingSentence{FindingKind::NotSuspended,             QT_TRANSLATE_NOOP("setfolio::FindingWords", "Play has not been suspended: there is nothing to resume.")},
    FindingSentence{FindingKind::SetNotStarted,            QT_TRANSLATE_NOOP("setfolio::FindingWords", "The set has not started: record its start first, or, for the set before, undo its end.")},
    FindingSentence{FindingKind::SetAlreadyStarted,        QT_TRANSLATE_NOOP("setfolio::FindingWords", "The set has started, and its toss and line-ups are settled: undo the start to change them.")},
    FindingSentence{FindingKind::SetAlreadyWon,            QT_TRANSLATE_NOOP("setfolio::FindingWords", "The set is won: record its end, or undo the last point.")},
    FindingSentence{FindingKind::SetNotWon,                QT_TRANSLATE_NOOP("setfolio::FindingWords", "The set is not won yet: play on until the score decides it.")},
    FindingSentence{FindingKind::TossMissing,              QT_TRANSLATE_NOOP("setfolio::FindingWords", "It is not known who serves first: record the toss.")},
    FindingSentence{FindingKind::LineUpMissing,            QT_TRANSLATE_NOOP("setfolio::FindingWords", "%2 has no line-up yet: record it first.")},
    FindingSentence{FindingKind::RallyUndecided,           QT_TRANSLATE_NOOP("setfolio::FindingWords", "The rally is not decided: record who won it, or a replay, first.")},
    FindingSentence{FindingKind::ServeAlreadyContacted,    QT_TRANSLATE_NOOP("setfolio::FindingWords", "The serve is contacted already: record who won the rally, or a replay.")},
    FindingSentence{FindingKind::NotOnCourt,               QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 is not on court: name one of the six who are.")},
    FindingSentence{FindingKind::NoSuchEntry,              QT_TRANSLATE_NOOP("setfolio::FindingWords", "There is no entry %5 that stands: name one that does.")},
    FindingSentence{FindingKind::CannotBeStruck,           QT_TRANSLATE_NOOP("setfolio::FindingWords", "The opening of the match cannot be struck: begin a new match instead.")},
    FindingSentence{FindingKind::BestOfImpossible,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "The rulebook has no match of best of %5: choose a number of sets that it allows.")},
    FindingSentence{FindingKind::NumberImpossible,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "%1 is no shirt number: numbers go from 0 to 99.")},
    FindingSentence{FindingKind::LiberoNotServing,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "No libero of %2 is serving: there is nothing to end.")},
    FindingSentence{FindingKind::NotServing,               QT_TRANSLATE_NOOP("setfolio::FindingWords", "%2 does not have the serve: its libero can serve when it has won it back.")},
    FindingSentence{FindingKind::LiberoNotOnCourt,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "Libero %1 of %2 is not on court: there is nobody to go out.")},
    FindingSentence{FindingKind::NoSuchPoint,              QT_TRANSLATE_NOOP("setfolio::FindingWords", "Entry %5 brought %2 no point in this set: name the first point to be taken back.")},
    FindingSentence{FindingKind::NeverServed,              QT_TRANSLATE_NOOP("setfolio::FindingWords", "%2 has not served in this set, so nobody of it has served wrongly: check the team.")},
    FindingSentence{FindingKind::IsSealed,                  QT_TRANSLATE_NOOP("setfolio::FindingWords", "This is signed and sealed: reopen it first, with the reason and the name of who says so.")},
    FindingSentence{FindingKind::NotSealed,                 QT_TRANSLATE_NOOP("setfolio::FindingWords", "This is not sealed: there is nothing to reopen.")},
    FindingSentence{FindingKind::SignedTooEarly,            QT_TRANSLATE_NOOP("setfolio::FindingWords", "This cannot be signed yet: end the set, or close the match, first.")},
    FindingSentence{FindingKind::SignaturesMissing,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "Signatures still missing: %6. Let them sign, or record why they do not.")},
    FindingSentence{FindingKind::ReasonMissing,             QT_TRANSLATE_NOOP("setfolio::FindingWords", "A reason is needed here, and the name of who gives it: type them.")},
    FindingSentence{FindingKind::NumberNotAllowed,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "The rulebook does not allow number %1 of %2: the player needs another shirt.")},
    FindingSentence{FindingKind::DoubledInRoster,          QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 stands twice on the roster of %2: ask the coach which of the two is meant.")},
    FindingSentence{FindingKind::RosterSettled,            QT_TRANSLATE_NOOP("setfolio::FindingWords", "The match has begun, and the rulebook lets %2 change no number of its roster: tell the referee.")},
    FindingSentence{FindingKind::TooManyLiberos,           QT_TRANSLATE_NOOP("setfolio::FindingWords", "%2 names %5 as liberos, and the limit is %6: ask the coach who is not to be one.")},
    FindingSentence{FindingKind::DoubledInLineUp,          QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 stands twice in the line-up of %2: ask the coach for the right slip.")},
    FindingSentence{FindingKind::StrangerInLineUp,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 in the line-up of %2 is not on the roster: check the slip, then the roster.")},
    FindingSentence{FindingKind::LiberoInLineUp,           QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 is a libero of %2 and cannot be one of the six: ask the coach for the right slip.")},
    FindingSentence{FindingKind::LiberoNotOnRoster,        QT_TRANSLATE_NOOP("setfolio::FindingWords", "Libero %1 of %2 is not on the roster: check the slip, then the roster.")},
    FindingSentence{FindingKind::LiberoNotOfMatch,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 is no libero of the match: ask the coach for the right slip.")},
    FindingSentence{FindingKind::CaptainNotInTeam,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 is named captain of %2 but is not in the team: check the slip.")},
    FindingSentence{FindingKind::CaptainNotOnCourt,        QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 is not on court and cannot be playing captain: ask who is.")},
    FindingSentence{FindingKind::CaptainIsLibero,          QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 is a libero and may not be playing captain: ask who is.")},
    FindingSentence{FindingKind::FirstServeAlternates,     QT_TRANSLATE_NOOP("setfolio::FindingWords", "%2 served first in the set before, and the first serve alternates: the other team serves.")},
    FindingSentence{FindingKind::SidesNotAsRuled,          QT_TRANSLATE_NOOP("setfolio::FindingWords", "By the rulebook %2 stands left of the table in this set: ask the second referee.")},
    FindingSentence{FindingKind::SignedOutOfOrder,          QT_TRANSLATE_NOOP("setfolio::FindingWords", "By the rulebook others sign before, still to sign: %5. Let them sign first.")},
    FindingSentence{FindingKind::SentOff,                  QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 is out by %8 and may not play: tell the second referee.")},
    FindingSentence{FindingKind::ReplacedForGood,          QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 was replaced exceptionally and may not come back: tell the second referee.")},
    FindingSentence{FindingKind::GivenUpAsLibero,          QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 was given up as a libero and may not come back: tell the second referee.")},
    FindingSentence{FindingKind::SubstituteNotOnRoster,    QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 is not on the roster and may not come in: tell the second referee.")},
    FindingSentence{FindingKind::SubstituteOnCourt,        QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 is on court already, in slot %3: check the number that comes in.")},
    FindingSentence{FindingKind::SubstituteIsLibero,       QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 is a libero in this set and may not come in as a substitute.")},
    FindingSentence{FindingKind::SubstituteOffForLibero,   QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 is one of the six, with a libero in her place: somebody else must come in.")},
    FindingSentence{FindingKind::OutOffForLibero,          QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 is off court for libero %9: record the libero out first, then this.")},
    FindingSentence{FindingKind::WrongSlot,                QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 belongs to slot %3 and may not come in to slot %4: tell the second referee.")},
    FindingSentence{FindingKind::NotHerPartner,            QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 may not come in to slot %3: only number %9 may come back there.")},
    FindingSentence{FindingKind::SlotUsedUp,               QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 in slot %3 has no regular substitute left: tell the second referee.")},
    FindingSentence{FindingKind::PlayersPerSlot,           QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 would be player %5 of %2 in slot %3, and the limit is %6: tell the second referee.")},
    FindingSentence{FindingKind::SubstitutionLimit,        QT_TRANSLATE_NOOP("setfolio::FindingWords", "This is substitution %5 of %2, and the limit is %6: tell the second referee.")},
    FindingSentence{FindingKind::SecondRequest,            QT_TRANSLATE_NOOP("setfolio::FindingWords", "%2 has substituted in this interruption and may not ask again yet: tell the second referee.")},
    FindingSentence{FindingKind::SubstitutionBarred,       QT_TRANSLATE_NOOP("setfolio::FindingWords", "%2 was sanctioned for delay and may not substitute before a rally is completed: tell the referee.")},
    FindingSentence{FindingKind::SubstitutionBeforeStart,  QT_TRANSLATE_NOOP("setfolio::FindingWords", "The rulebook has no substitution before the start: %2 begins with its line-up.")},
    FindingSentence{FindingKind::RequestBeforeRepeat,      QT_TRANSLATE_NOOP("setfolio::FindingWords", "The serve is repeated, and %2 may ask for nothing before it: tell the second referee.")},
    FindingSentence{FindingKind::RegularSubstituteLeft,    QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 can be replaced by a regular substitution: number %9 may come in.")},
    FindingSentence{FindingKind::LiberoComesLast,          QT_TRANSLATE_NOOP("setfolio::FindingWords", "Libero %1 of %2 may come in only when nobody else can: number %9 may.")},
    FindingSentence{FindingKind::FewerThanSixNotAllowed,   QT_TRANSLATE_NOOP("setfolio::FindingWords", "%2 may not play with fewer than six: number %1 is replaced, or the team is incomplete.")},
    FindingSentence{FindingKind::SubstituteLeft,           QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 leaves no vacant place while number %9 may come in: record who does.")},
    FindingSentence{FindingKind::TimeOutLimit,             QT_TRANSLATE_NOOP("setfolio::FindingWords", "This is time-out %5 of %2, and the limit is %6: tell the second referee.")},
    FindingSentence{FindingKind::VacantServer,             QT_TRANSLATE_NOOP("setfolio::FindingWords", "Slot %3 of %2 is vacant and cannot serve: the rally is lost, record no serve.")},
    FindingSentence{FindingKind::SentOffOnCourt,           QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 is out by %8 and still on court: record who came in for her.")},
    FindingSentence{FindingKind::LiberoInFrontRow,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "Libero %1 of %2 is in the front row, in slot %3: tell the second referee, and record her out.")},
    FindingSentence{FindingKind::LiberoMayNotServe,        QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 is a libero and may not serve: the player of the slot serves.")},
    FindingSentence{FindingKind::LiberoSecondSlot,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "A libero of %2 has served in slot %3, so number %1 may not serve in slot %4: tell the second referee.")},
    FindingSentence{FindingKind::ServerIsNotLibero,        QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 is not a libero of %2 in this set: check the number.")},
    FindingSentence{FindingKind::WrongServerUnruled,       QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 was seen serving for %2 in place of number %9: ask for the ruling, and record it.")},
    FindingSentence{FindingKind::ServedRightly,            QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 was the right server: check the number that served.")},
    FindingSentence{FindingKind::NotServedYet,             QT_TRANSLATE_NOOP("setfolio::FindingWords", "No serve of %2 is contacted in this term: say nothing before the contact, then tell the referee.")},
    FindingSentence{FindingKind::PointsStand,              QT_TRANSLATE_NOOP("setfolio::FindingWords", "The rulebook takes no points back from %2: record the ruling without them.")},
    FindingSentence{FindingKind::TakenBackTooMuch,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "Only points of this term of %2 may be taken back, those from entry %5 on.")},
    FindingSentence{FindingKind::TakenBackTooLate,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "The opponents have contacted their next serve: the points of %2 stand.")},
    FindingSentence{FindingKind::ReServeLimit,             QT_TRANSLATE_NOOP("setfolio::FindingWords", "This is re-serve %5 in this term of %2, and the limit is %6: the rally is lost, record no serve.")},
    FindingSentence{FindingKind::NotALibero,               QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 is not named a libero here: check the number, or ask the coach.")},
    FindingSentence{FindingKind::LiberoAlreadyOnCourt,     QT_TRANSLATE_NOOP("setfolio::FindingWords", "Libero %9 of %2 is on court already: record her out first, or one for the other.")},
    FindingSentence{FindingKind::LiberoForFrontRow,        QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 stands in the front row, and a libero replaces the back row only.")},
    FindingSentence{FindingKind::LiberoRallyBetween,       QT_TRANSLATE_NOOP("setfolio::FindingWords", "No rally lies between two replacements of liberos of %2 (number %1): tell the second referee.")},
    FindingSentence{FindingKind::LiberoExchangeNotAllowed, QT_TRANSLATE_NOOP("setfolio::FindingWords", "Libero %1 of %2 may not come in for a libero: only number %9 may.")},
    FindingSentence{FindingKind::RedesignationNotAllowed,  QT_TRANSLATE_NOOP("setfolio::FindingWords", "%2 may have no new libero for number %1: it plays on with whom it has left.")},
    FindingSentence{FindingKind::NewLiberoOnCourt,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 is one of the six and may not become a libero: name one of the bench.")},
    FindingSentence{FindingKind::LevelNotOnLadder,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "The rulebook has no such sanction (%7 of %2, %8): ask the referee which one was given.")},
    FindingSentence{FindingKind::SanctionNotHigher,        QT_TRANSLATE_NOOP("setfolio::FindingWords", "%7 of %2 has had as much; the next sanction is %8: ask the referee which one was given.")},
    FindingSentence{FindingKind::TeamWarnedAlready,        QT_TRANSLATE_NOOP("setfolio::FindingWords", "%2 has had its warning: the next sanction is %8, so ask the referee which one was given.")},
    FindingSentence{FindingKind::SentOffAlready,           QT_TRANSLATE_NOOP("setfolio::FindingWords", "%7 of %2 is out already by %8: ask the referee who was meant.")},
    FindingSentence{FindingKind::SanctionedStranger,       QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 is not on the roster of %2: ask the referee who was sanctioned.")},
    FindingSentence{FindingKind::DelayNotNext,             QT_TRANSLATE_NOOP("setfolio::FindingWords", "The next sanction of %2 for delay is the %8: ask the referee which one was given.")},
    FindingSentence{FindingKind::ImproperRequestIsDelay,   QT_TRANSLATE_NOOP("setfolio::FindingWords", "Such a request of %2 is a delay, and the next sanction is the %8: tell the second referee.")},
    FindingSentence{FindingKind::SidesChangeEarly,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "Sides change in the deciding set when a team has %5 points: wait until then.")},
    FindingSentence{FindingKind::SidesChangedAlready,      QT_TRANSLATE_NOOP("setfolio::FindingWords", "The teams have changed sides in this set already: ask the second referee.")},
    FindingSentence{FindingKind::NoSidesChange,            QT_TRANSLATE_NOOP("setfolio::FindingWords", "The rulebook has no change of sides within this set: ask the second referee.")},
    FindingSentence{FindingKind::DefaultIsOfMatch,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "A default loses the match, not one set: record it for the match, or %2 as incomplete.")},
    FindingSentence{FindingKind::IncompleteBeforePlay,     QT_TRANSLATE_NOOP("setfolio::FindingWords", "No set has begun, and %2 has nothing to keep: a team that cannot begin loses by default.")},
    FindingSentence{FindingKind::SetNotPlayedAgain,        QT_TRANSLATE_NOOP("setfolio::FindingWords", "By the rulebook the set goes on as it stood: ask the referee before it is played again.")},
    FindingSentence{FindingKind::ResumedTooLate,           QT_TRANSLATE_NOOP("setfolio::FindingWords", "Play was broken off %5 hours ago, more than %6: the match is played anew, in a file of its own.")},
    FindingSentence{FindingKind::RequestsGoToo,            QT_TRANSLATE_NOOP("setfolio::FindingWords", "Time-outs and substitutions of the time that is taken back go too: strike entry %5 and those after it first, then rule.")},
    FindingSentence{FindingKind::PlayNotResumed,           QT_TRANSLATE_NOOP("setfolio::FindingWords", "Play has not been resumed with number %1 of %2 on court: tell the referee, nothing is lost yet.")},
    FindingSentence{FindingKind::LateReplacementIsDelay,   QT_TRANSLATE_NOOP("setfolio::FindingWords", "A late replacement of %2 is not let pass now, and the sanction is the %8: tell the second referee.")},
    FindingSentence{FindingKind::LiberoForSentOff,         QT_TRANSLATE_NOOP("setfolio::FindingWords", "Libero %1 of %2 may not come in for number %9, who was sent off: ask who else comes in.")},
    FindingSentence{FindingKind::NoLiberoThisSet,          QT_TRANSLATE_NOOP("setfolio::FindingWords", "The slip of %2 named a libero, %1, whom nobody wears: the team has no libero in this set.")},
    FindingSentence{FindingKind::IllegalPlayerStays,       QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 of %2 was ruled illegal and still stands in slot %3: strike her substitution, entry %5, or record number %9 in for her.")},
    FindingSentence{FindingKind::SameLineUpDue,            QT_TRANSLATE_NOOP("setfolio::FindingWords", "The set is played again with the same line-ups: put the six of %2 where they stood before.")},
    FindingSentence{FindingKind::ServerNotOnRoster,        QT_TRANSLATE_NOOP("setfolio::FindingWords", "Number %1 is not on the roster of %2: look again who serves.")},
    FindingSentence{FindingKind::RosterChangeCosts,        QT_TRANSLATE_NOOP("setfolio::FindingWords", "The match has begun: by the rulebook other numbers on the roster of %2 cost a point, so tell the referee.")},
    FindingSentence{FindingKind::ChangedSinceLineUp,       QT_TRANSLATE_NOOP("setfolio::FindingWords", "Changes upon this line-up of %2 are recorded already: strike them first, or correct the line-up in its place.")},
};
// clang-format on
static_assert(nameEveryKind(findingSentences));

} // namespace setfolio
