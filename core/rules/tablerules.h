// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A rulebook's settings of the scorer's table: what is handed in when, how the sheet is written, what is told.
#pragma once

#include "core/rules/scope.h"

#include <optional>
#include <vector>

namespace setfolio {

/// How the order of service of a team that receives first is written.
enum class WrittenOrder {
    Serving, ///< slot I holds the player who serves first: court position 1 of the serving, 2 of the receiving team
    Floor,   ///< slot I holds court position 1 for both; the receiving team's first cell of slot I is crossed
};

/// What follows when a list is late.
enum class LateList {
    Told,  ///< the scorer tells the second referee
    Delay, ///< a delay sanction
};

/// What a change of the roster costs after its deadline.
enum class RosterChange { Free, PenaltyPoint, NotAllowed };

/// What follows when a player is found who is not on the roster.
enum class UnregisteredPlayer {
    Added,
    AddedWithPoint, ///< she is added; the opponents get a point and the serve
    MayNotPlay,
    PointsLost, ///< the opponents get a point and the serve; all that was won with her on court is lost
};

/// How a point won on one's own serve is marked in the running score.
enum class OwnPointMark { Ringed, Slashed };

/// How the captain is marked.
enum class CaptainMark {
    LetterC, ///< a C at the number
    RingedNumber,
    OwnPlace, ///< the number is written in a place of its own
};

/// Who signs.
enum class Signer { Scorer, AssistantScorer, Captains, Coaches, SecondReferee, FirstReferee };

/// Rosters and line-ups: when they are due, and what a late or wrong one costs.
struct DeadlineRules {
    std::optional<int> rosterSeconds = 600; ///< due this long before the end of the warm-up
    LateList rosterLate = LateList::Delay;
    RosterChange rosterChange = RosterChange::PenaltyPoint; ///< after its deadline
    bool teamListSigned = false;                            ///< by captain and coach, before the match
    int firstLineUpSeconds = 120; ///< a line-up is due this long before the end of the warm-up
    /// Until then it may be changed freely; else once it is in it stands.
    std::optional<int> firstLineUpFixedSeconds;
    int lineUpSeconds = 60; ///< and this long before the end of an interval
    LateList lineUpLate = LateList::Delay;
    /// A number on the line-up that nobody wears is put right by a counted substitution.
    bool lineUpNumberCharged = false;
    UnregisteredPlayer unregisteredPlayer = UnregisteredPlayer::AddedWithPoint;
    int lowestNumber = 0;   ///< on a shirt
    int highestNumber = 99; ///< on a shirt
    bool operator==(const DeadlineRules&) const = default;
};

/// How the sheet is written and signed, and what the scorer tells the referees.
struct SheetRules {
    WrittenOrder writtenOrder = WrittenOrder::Serving;
    bool exitScores = false;    ///< a team's total is written when it loses the serve
    bool reServeWritten = true; ///< RS
    OwnPointMark runningMark = OwnPointMark::Ringed;
    CaptainMark captainMark = CaptainMark::LetterC;
    bool liberoSlotMarked = true;    ///< a triangle at the slot she first serves in
    bool substitutionScored = false; ///< a substitution is written with the score
    int inks = 3;                    ///< taken in turn, round by round
    std::vector<Signer> signingOrder{Signer::Scorer, Signer::SecondReferee, Signer::FirstReferee};
    Scope signedFor = Scope::Set;
    bool setPointNotice = true;    ///< told the second referee
    bool matchPointNotice = true;  ///< told the second referee
    bool sideChangeNotice = false; ///< told the referees, within the deciding set
    bool operator==(const SheetRules&) const = default;
};

} // namespace setfolio
