// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the judge has to say about an entry, as a value; the sentence for it is made in ui/wording.
#pragma once

#include "core/match/ids.h"

#include <QString>

#include <optional>
#include <vector>

namespace setfolio {

/// How grave a finding is.
enum class Gravity : std::uint8_t {
    Refused,  ///< cannot be recorded at all: it has no meaning here
    Unlawful, ///< against the rulebook; may be recorded as overruled, with the referee's reason
};

enum class FindingKind : std::uint8_t {
    // refused: the entry has no meaning here
    MatchNotOpened, ///< the first entry must open the match
    MatchAlreadyOpened,
    MatchIsClosed,
    MatchAlreadyWon,       ///< the match is won: it can only be closed
    MatchNotWon,           ///< the match cannot be closed yet
    MatchIsSuspended,      ///< play is broken off: it must be resumed first
    NotSuspended,          ///< play cannot be resumed that was not broken off
    SetNotStarted,         ///< a rally, a time-out, a substitution before the set has started
    SetAlreadyStarted,     ///< a toss or a line-up after the set has started
    SetAlreadyWon,         ///< a rally after the set is won
    SetNotWon,             ///< the end of a set that is not won
    TossMissing,           ///< nobody knows who serves first
    LineUpMissing,         ///< subject: team
    RallyUndecided,        ///< a dead-ball entry while a rally is open
    ServeAlreadyContacted, ///< contacted twice, or no serve after a contact
    NotOnCourt,            ///< the number to go out is not on court; number
    NoSuchEntry,           ///< a correction of an entry that is not there or stands no more; count: its number
    CannotBeStruck,        ///< the opening of the match
    BestOfImpossible,      ///< best of an even number or outside the rulebook's list; count
    NumberImpossible,      ///< a shirt number outside 0 to 99
    LiberoNotServing,      ///< the end of a libero's serve that has not begun
    NotServing,            ///< a libero's serve of the team that does not serve; team

    // unlawful: the referee may overrule
    NumberNotAllowed,      ///< outside the rulebook's numbers; number
    DoubledInRoster,       ///< number
    TooManyLiberos,        ///< count, limit
    DoubledInLineUp,       ///< number
    StrangerInLineUp,      ///< not on the roster; number
    LiberoInLineUp,        ///< a libero among the six; number
    LiberoNotOnRoster,     ///< number
    CaptainNotInTeam,      ///< neither among the six nor a libero nor on the roster; number
    SubstituteNotOnRoster, ///< number
    SubstituteOnCourt,     ///< already on court; number, slot
    SubstituteIsLibero,    ///< number
    WrongSlot,             ///< bound to another slot; number, slot (her own), other (the one asked for)
    SubstitutionLimit,     ///< count (this would be), limit
    TimeOutLimit,          ///< count (this would be), limit
    LiberoMayNotServe,     ///< the rulebook does not let her; number
    LiberoSecondSlot,      ///< she has served in another slot; number, slot (that one), other (this one)
    ServerIsNotLibero,     ///< the number is not one of the set's liberos; number
    ReServeLimit,          ///< count (this would be), limit
};

/// One finding. Which of the fields say something is written beside each kind.
struct Finding {
    FindingKind kind = FindingKind::MatchNotOpened;
    Gravity gravity = Gravity::Refused;
    QString setting = {};          ///< the rulebook's setting it rests on, empty when it rests on sense alone
    std::optional<Team> team = {}; ///< whose
    ShirtNumber number = {};       ///< the number to look at
    std::optional<Slot> slot = {};
    std::optional<Slot> other = {};
    int count = 0;
    int limit = 0;
    bool operator==(const Finding&) const = default;
};

using Findings = std::vector<Finding>;

[[nodiscard]] bool isRefused(const Findings& findings);

} // namespace setfolio
