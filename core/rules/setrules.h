// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A rulebook's settings of sets and of the match.
#pragma once

#include <optional>
#include <vector>

namespace setfolio {

/// After which sets the teams change sides.
enum class SideChange {
    EachSet,
    EachSetButDeciding, ///< before the deciding set the toss says who stands where
    AfterSecondSet,
    NoChange,
};

/// What becomes of the score of a team that loses without playing on.
enum class LostSets {
    PointsKept,   ///< it keeps its points and sets; the opponents get what they need
    SetsToNought, ///< every set is lost to nought
};

/// How a set goes on that was broken off and is resumed on another court.
enum class Resumption {
    GoesOn,      ///< at the score it had
    SetReplayed, ///< with the same line-ups; the sets before it stand
};

/// Until when a protest may be made.
enum class ProtestRule {
    NoProtest,
    BeforeNextServe,
    DuringMatch, ///< it is decided before the match ends
    AtOnce,      ///< it is told the first referee at once and written down after the match
};

/// How a set and the match are won, what lies between sets, and how a match ends otherwise.
struct SetRules {
    int setPoints = 25;                                      ///< points that win a set, the deciding one apart
    int decidingSetPoints = 15;                              ///< points that win the deciding set
    int margin = 2;                                          ///< points a set must be won by
    std::optional<int> cap;                                  ///< a set ends at this score whatever the margin
    std::vector<int> bestOf{3, 5};                           ///< the numbers of sets a match may be played over
    int intervalSeconds = 180;                               ///< the interval between sets
    std::optional<int> longIntervalSeconds = 300;            ///< an interval that may be longer
    std::optional<int> longIntervalAfterSet;                 ///< and after which set; any if none is named
    int lineUpCheckSeconds = 15;                             ///< added to an interval for the check of the line-ups
    SideChange changeSides = SideChange::EachSetButDeciding; ///< between sets
    std::optional<int> decidingSetSideChange;                ///< sides change within the deciding set at this score
    LostSets defaultResult = LostSets::SetsToNought;         ///< a team that does not come or refuses to play
    LostSets incompleteResult = LostSets::PointsKept;        ///< a team that can no longer play
    /// A match broken off goes on where it stood if resumed within these on the same court; none: always.
    std::optional<int> resumeWithinHours;
    Resumption resumedElsewhere = Resumption::GoesOn; ///< resumed on another court
    ProtestRule protest = ProtestRule::NoProtest;
    bool operator==(const SetRules&) const = default;
};

} // namespace setfolio
