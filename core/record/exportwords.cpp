// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/exportparts.h"

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

QString exportWord(Slot slot) {
    static const std::array<QString, 6> numerals{u"I"_s, u"II"_s, u"III"_s, u"IV"_s, u"V"_s, u"VI"_s};
    return numerals.at(slot.index());
}

// clang-format off
QString exportWord(FindingKind kind) {
    using enum FindingKind;
    switch (kind) {
    case MatchNotOpened:        return u"match-not-opened"_s;
    case MatchAlreadyOpened:    return u"match-already-opened"_s;
    case MatchIsClosed:         return u"match-is-closed"_s;
    case MatchAlreadyWon:       return u"match-already-won"_s;
    case MatchNotWon:           return u"match-not-won"_s;
    case MatchIsSuspended:      return u"match-is-suspended"_s;
    case NotSuspended:          return u"not-suspended"_s;
    case SetNotStarted:         return u"set-not-started"_s;
    case SetAlreadyStarted:     return u"set-already-started"_s;
    case SetAlreadyWon:         return u"set-already-won"_s;
    case SetNotWon:             return u"set-not-won"_s;
    case TossMissing:           return u"toss-missing"_s;
    case LineUpMissing:         return u"line-up-missing"_s;
    case RallyUndecided:        return u"rally-undecided"_s;
    case ServeAlreadyContacted: return u"serve-already-contacted"_s;
    case NotOnCourt:            return u"not-on-court"_s;
    case NoSuchEntry:           return u"no-such-entry"_s;
    case CannotBeStruck:        return u"cannot-be-struck"_s;
    case BestOfImpossible:      return u"best-of-impossible"_s;
    case NumberImpossible:      return u"number-impossible"_s;
    case LiberoNotServing:      return u"libero-not-serving"_s;
    case NotServing:            return u"not-serving"_s;
    case NumberNotAllowed:      return u"number-not-allowed"_s;
    case DoubledInRoster:       return u"doubled-in-roster"_s;
    case TooManyLiberos:        return u"too-many-liberos"_s;
    case DoubledInLineUp:       return u"doubled-in-line-up"_s;
    case StrangerInLineUp:      return u"stranger-in-line-up"_s;
    case LiberoInLineUp:        return u"libero-in-line-up"_s;
    case LiberoNotOnRoster:     return u"libero-not-on-roster"_s;
    case CaptainNotInTeam:      return u"captain-not-in-team"_s;
    case SubstituteNotOnRoster: return u"substitute-not-on-roster"_s;
    case SubstituteOnCourt:     return u"substitute-on-court"_s;
    case SubstituteIsLibero:    return u"substitute-is-libero"_s;
    case WrongSlot:             return u"wrong-slot"_s;
    case SubstitutionLimit:     return u"substitution-limit"_s;
    case TimeOutLimit:          return u"time-out-limit"_s;
    case LiberoMayNotServe:     return u"libero-may-not-serve"_s;
    case LiberoSecondSlot:      return u"libero-second-slot"_s;
    case ServerIsNotLibero:     return u"server-is-not-libero"_s;
    case ReServeLimit:          return u"re-serve-limit"_s;
    }
    Q_UNREACHABLE();
}
// clang-format on

QJsonValue toExport(ShirtNumber number) {
    return number.value;
}

QJsonValue toExport(EntryNumber entry) {
    return static_cast<qint64>(entry.value);
}

QJsonObject toExport(const PerTeam<int>& score) {
    return {{u"home"_s, score.home}, {u"visitors"_s, score.visitors}};
}

} // namespace setfolio
