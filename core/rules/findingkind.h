// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the judge may have to say: the kinds of findings, and which fields of a Finding say something for each.
#pragma once

#include <cstddef>
#include <cstdint>

namespace setfolio {

enum class FindingKind : std::uint8_t {
    // refused: the entry has no meaning here
    MatchNotOpened, ///< the first entry must open the match
    MatchAlreadyOpened,
    MatchIsClosed,
    MatchAlreadyWon,       ///< the match is won: it can only be closed
    MatchNotWon,           ///< the match cannot be closed yet
    MatchIsSuspended,      ///< play is broken off: it must be resumed first
    NotSuspended,          ///< play cannot be resumed that was not broken off
    SetNotStarted,         ///< a rally, a time-out before the set has started
    SetAlreadyStarted,     ///< a toss or a line-up after the set has started
    SetAlreadyWon,         ///< a rally after the set is won
    SetNotWon,             ///< the end of a set that is not won
    TossMissing,           ///< nobody knows who serves first
    LineUpMissing,         ///< subject: team
    ChangedSinceLineUp,    ///< a toss or another line-up would undo what was changed upon it; team
    RallyUndecided,        ///< a dead-ball entry while a rally is open
    ServeAlreadyContacted, ///< contacted twice, or no serve after a contact
    NotOnCourt,            ///< the number to go out is not on court; number
    NoSuchEntry,           ///< a correction of an entry that is not there or stands no more; count: its number
    CannotBeStruck,        ///< the opening of the match
    BestOfImpossible,      ///< best of an even number or outside the rulebook's list; count
    NumberImpossible,      ///< a shirt number outside 0 to 99
    LiberoNotServing,      ///< the end of a libero's serve that has not begun
    NotServing,            ///< a libero's serve of the team that does not serve; team
    LiberoNotOnCourt,      ///< a libero who is not there leaves; number
    NoSuchPoint,  ///< points are taken back from an entry that brought the team none in this set; count: its number
    NeverServed,  ///< a ruling on the server of a team that has not had the serve in this set; team
    SetNotEnded,  ///< a forfeit of an earlier set that has not ended, or is none of the match; count: its number
    KeepsTooMuch, ///< of a set that is forfeited afterwards; team, count, limit: the most it may keep
    // for these count is the number of the set, 0 for the match
    IsSealed,          ///< what is sealed would change
    NotSealed,         ///< what is not sealed cannot be reopened
    SignedTooEarly,    ///< the set has not ended, the match is not closed
    SignaturesMissing, ///< nobody may seal yet; limit: how many are missing
    ReasonMissing,     ///< left unsigned, or reopened, without saying why and by whom

    // unlawful: the referee may overrule
    NumberNotAllowed,        ///< outside the rulebook's numbers; number
    DoubledInRoster,         ///< number
    RosterSettled,           ///< other numbers once the match has begun; team
    TooManyLiberos,          ///< count, limit
    DoubledInLineUp,         ///< number
    StrangerInLineUp,        ///< not on the roster; number
    LiberoInLineUp,          ///< a libero among the six; number
    LiberoNotOnRoster,       ///< number
    LiberoNotOfMatch,        ///< not among the liberos named for the match; number
    CaptainNotInTeam,        ///< neither among the six nor a libero nor on the roster; number
    CaptainNotOnCourt,       ///< number
    CaptainIsLibero,         ///< where no libero may be; number
    FirstServeAlternates,    ///< the same team would serve first again; team
    SidesNotAsRuled,         ///< between sets; team: who should stand left
    SignedOutOfOrder,        ///< team; count: how many come before
    SentOff,                 ///< expelled for the set, disqualified for the match; number, level
    ReplacedForGood,         ///< by an exceptional substitution; number
    GivenUpAsLibero,         ///< a libero who could not go on; number
    SubstituteNotOnRoster,   ///< number
    SubstituteOnCourt,       ///< already on court; number, slot
    SubstituteIsLibero,      ///< number
    SubstituteOffForLibero,  ///< she is one of the six, and the libero stands in her place; number, slot
    OutOffForLibero,         ///< the libero stands in the place of the number to go out; number, lawful: the libero
    WrongSlot,               ///< bound to another slot; number, slot (her own), other (the one asked for)
    NotHerPartner,           ///< only one may come in here; number, slot, lawful: who
    SlotUsedUp,              ///< out and back once, or the partner may not; number: who is to go out, slot
    PlayersPerSlot,          ///< number, slot, count (this would be), limit
    SubstitutionLimit,       ///< count (this would be), limit
    SecondRequest,           ///< in the same interruption; team
    SubstitutionBarred,      ///< after a delay; team
    SubstitutionBeforeStart, ///< team
    RequestBeforeRepeat,     ///< between the signal that a serve is repeated and that serve; team
    RegularSubstituteLeft, ///< an exceptional substitution where a regular one is lawful; number: who goes out, lawful:
                           ///< who may come in
    LiberoComesLast,       ///< as exceptional substitute; number, lawful: who may come in before her
    FewerThanSixNotAllowed,   ///< number
    SubstituteLeft,           ///< a place is vacated though someone may come in; number, lawful: who
    TimeOutLimit,             ///< count (this would be), limit
    VacantServer,             ///< the vacant place is to serve; slot
    SentOffOnCourt,           ///< at the contact of a serve; number, level
    LiberoInFrontRow,         ///< at the contact of a serve; number, slot
    LiberoMayNotServe,        ///< the rulebook does not let her; number
    LiberoSecondSlot,         ///< she has served in another slot; number, slot (that one), other (this one)
    ServerIsNotLibero,        ///< the number is not one of the set's liberos; number
    WrongServerUnruled,       ///< a result while a wrong server has been seen; number: who was seen, lawful: the server
    ServedRightly,            ///< a ruling on someone who was the server; number
    NotServedYet,             ///< a ruling on a wrong server before a serve of the term is contacted; number
    PointsStand,              ///< the rulebook takes none back; team
    TakenBackTooMuch,         ///< count: the entry from which points may be taken back, 0 for none
    TakenBackTooLate,         ///< the opponents have contacted their next serve; team
    ReServeLimit,             ///< count (this would be), limit
    NotALibero,               ///< in this set; number
    LiberoAlreadyOnCourt,     ///< one at a time; number, lawful: who is on court
    LiberoForFrontRow,        ///< number: who stands in the front row
    LiberoRallyBetween,       ///< two replacements without a completed rally between them; number: the libero
    LiberoExchangeNotAllowed, ///< only the same player may come in for her; number: who comes in, lawful: who may
    RedesignationNotAllowed,  ///< number: the former libero
    NewLiberoOnCourt,         ///< number
    LevelNotOnLadder,         ///< who, level
    SanctionNotHigher,        ///< than the one the person has had; who, level: the next
    TeamWarnedAlready,        ///< who, level: the next
    SentOffAlready,           ///< who, level
    SanctionedStranger,       ///< not on the roster; number
    DelayNotNext,             ///< team, level: the next
    ImproperRequestIsDelay,   ///< it is not the first, or none is let pass; team, level: what it is
    SidesChangeEarly,         ///< count: the score it is due at
    SidesChangedAlready,      ///< in this set
    NoSidesChange,            ///< the rulebook has none in this set
    DefaultIsOfMatch,         ///< team
    IncompleteBeforePlay,     ///< no set has started; team
    SetNotPlayedAgain,        ///< after an interruption
    ResumedTooLate,           ///< count: the hours since play was broken off, limit
    RequestsGoToo,            ///< requests of the time that is taken back stand; count: the entry of the first
    PlayNotResumed,           ///< a ruling on an illegal player before a serve is contacted; number
    LateReplacementIsDelay,   ///< it is not the first, or none is let pass; team, level: what it is
    LiberoForSentOff,         ///< a libero would come in for a player who was sent off; number, lawful: the player
    NoLiberoThisSet,          ///< the line-up named a libero nobody is; number: that one
    IllegalPlayerStays,       ///< at the contact of a serve; number, slot, count: the entry of her substitution
    SameLineUpDue,            ///< the set is played again, and with the same six in their places; team
    ServerNotOnRoster,        ///< number
    RosterChangeCosts,        ///< other numbers once the match has begun cost a point; team
};
inline constexpr std::size_t findingKindCount = static_cast<std::size_t>(FindingKind::RosterChangeCosts) + 1;

/// Whether the rows of a table name every kind once, in the order of the enum: for a static_assert beside the table.
constexpr bool nameEveryKind(const auto& rows) {
    for (std::size_t place = 0; place < rows.size(); ++place)
        if (rows[place].kind != static_cast<FindingKind>(place))
            return false;
    return rows.size() == findingKindCount;
}

} // namespace setfolio
