// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/findingwords.h"

#include "ui/wording/fill.h"
#include "ui/wording/names.h"

#include <QCoreApplication>

namespace setfolio {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(setfolio::FindingWords)
};

// %1 is the number, %2 the team, %3 the slot, %4 the other slot, %5 the count, %6 the limit.
// clang-format off

QString refusal(FindingKind kind) {
    using enum FindingKind;
    switch (kind) {
    case MatchNotOpened:        return Say::tr("No match is open: open it first, with its teams and its rulebook.");
    case MatchAlreadyOpened:    return Say::tr("The match is open already: another match goes into a file of its own.");
    case MatchIsClosed:         return Say::tr("The match is closed: undo the closing to record more.");
    case MatchAlreadyWon:       return Say::tr("The match is won: close it, or undo the end of the last set.");
    case MatchNotWon:           return Say::tr("The match is not won yet: play on, or record the end of the set that decides it.");
    case MatchIsSuspended:      return Say::tr("Play is suspended: resume it first.");
    case NotSuspended:          return Say::tr("Play has not been suspended: there is nothing to resume.");
    case SetNotStarted:         return Say::tr("The set has not started: record its start first.");
    case SetAlreadyStarted:     return Say::tr("The set has started, and its toss and line-ups are settled: undo the start to change them.");
    case SetAlreadyWon:         return Say::tr("The set is won: record its end, or undo the last point.");
    case SetNotWon:             return Say::tr("The set is not won yet: play on until the score decides it.");
    case TossMissing:           return Say::tr("It is not known who serves first: record the toss.");
    case LineUpMissing:         return Say::tr("%2 has no line-up yet: record it first.");
    case RallyUndecided:        return Say::tr("The rally is not decided: record who won it, or a replay, first.");
    case ServeAlreadyContacted: return Say::tr("The serve is contacted already: record who won the rally, or a replay.");
    case NotOnCourt:            return Say::tr("Number %1 of %2 is not on court: name one of the six who are.");
    case NoSuchEntry:           return Say::tr("There is no entry %5 that stands: choose another one to strike.");
    case CannotBeStruck:        return Say::tr("The opening of the match cannot be struck: begin a new match instead.");
    case BestOfImpossible:      return Say::tr("The rulebook has no match of best of %5: choose a number of sets that it allows.");
    case NumberImpossible:      return Say::tr("%1 is no shirt number: numbers go from 0 to 99.");
    case LiberoNotServing:      return Say::tr("No libero of %2 is serving: there is nothing to end.");
    case NotServing:            return Say::tr("%2 does not have the serve: its libero can serve when it has won it back.");

    case NumberNotAllowed:  case DoubledInRoster:    case TooManyLiberos:        case DoubledInLineUp:
    case StrangerInLineUp:  case LiberoInLineUp:     case LiberoNotOnRoster:     case CaptainNotInTeam:
    case WrongSlot:         case SubstitutionLimit:  case SubstituteNotOnRoster: case SubstituteOnCourt:
    case TimeOutLimit:      case LiberoMayNotServe:  case SubstituteIsLibero:    case LiberoSecondSlot:
    case ServerIsNotLibero: case ReServeLimit:
        break;
    }
    return {};
}

QString objection(FindingKind kind) {
    using enum FindingKind;
    switch (kind) {
    case NumberNotAllowed:      return Say::tr("The rulebook does not allow number %1 of %2: the player needs another shirt.");
    case DoubledInRoster:       return Say::tr("Number %1 stands twice on the roster of %2: ask the coach which of the two is meant.");
    case TooManyLiberos:        return Say::tr("%2 names %5 as liberos, and the limit is %6: ask the coach who is not to be one.");
    case DoubledInLineUp:       return Say::tr("Number %1 stands twice in the line-up of %2: ask the coach for the right slip.");
    case StrangerInLineUp:      return Say::tr("Number %1 in the line-up of %2 is not on the roster: check the slip, then the roster.");
    case LiberoInLineUp:        return Say::tr("Number %1 is a libero of %2 and cannot be one of the six: ask the coach for the right slip.");
    case LiberoNotOnRoster:     return Say::tr("Libero %1 of %2 is not on the roster: check the slip, then the roster.");
    case CaptainNotInTeam:      return Say::tr("Number %1 is named captain of %2 but is not in the team: check the slip.");
    case SubstituteNotOnRoster: return Say::tr("Number %1 of %2 is not on the roster and may not come in: tell the second referee.");
    case SubstituteOnCourt:     return Say::tr("Number %1 of %2 is on court already, in slot %3: check the number that comes in.");
    case SubstituteIsLibero:    return Say::tr("Number %1 of %2 is a libero in this set and may not come in as a substitute.");
    case WrongSlot:             return Say::tr("Number %1 of %2 belongs to slot %3 and may not come in to slot %4: tell the second referee.");
    case SubstitutionLimit:     return Say::tr("This is substitution %5 of %2, and the limit is %6: tell the second referee.");
    case TimeOutLimit:          return Say::tr("This is time-out %5 of %2, and the limit is %6: tell the second referee.");
    case LiberoMayNotServe:     return Say::tr("Number %1 of %2 is a libero and may not serve: the player of the slot serves.");
    case LiberoSecondSlot:      return Say::tr("A libero of %2 has served in slot %3, so number %1 may not serve in slot %4: tell the second referee.");
    case ServerIsNotLibero:     return Say::tr("Number %1 is not a libero of %2 in this set: check the number.");
    case ReServeLimit:          return Say::tr("This is re-serve %5 in this term of %2, and the limit is %6: the rally is lost, record no serve.");

    case MatchNotOpened: case MatchAlreadyOpened: case MatchIsClosed:    case MatchAlreadyWon:       case MatchNotWon:
    case MatchIsSuspended: case NotSuspended:
    case SetNotStarted:  case SetAlreadyStarted:  case SetAlreadyWon:    case SetNotWon:             case TossMissing:
    case LineUpMissing:  case RallyUndecided:     case NotOnCourt:       case ServeAlreadyContacted: case NoSuchEntry:
    case CannotBeStruck: case BestOfImpossible:   case NumberImpossible: case LiberoNotServing:      case NotServing:
        break;
    }
    return {};
}

// clang-format on

} // namespace

QString sentence(const Finding& finding, const MatchState& state) {
    const QString refused = refusal(finding.kind);
    return fill(refused.isEmpty() ? objection(finding.kind) : refused,
                {QString::number(finding.number.value), finding.team ? codeOf(state, *finding.team) : QString(),
                 finding.slot ? roman(*finding.slot) : QString(), finding.other ? roman(*finding.other) : QString(),
                 QString::number(finding.count), QString::number(finding.limit)});
}

QString sourceOf(const Finding& finding, const Rulebook& rulebook) {
    return rulebook.sources.value(finding.setting).text;
}

} // namespace setfolio
