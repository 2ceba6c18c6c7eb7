// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A rulebook's settings of sanctions for misconduct and for delay.
#pragma once

#include "core/rules/scope.h"

#include <cstdint>
#include <vector>

namespace setfolio {

/// The levels of misconduct and of delay, rising.
enum class SanctionLevel : std::uint8_t {
    Warning,
    Penalty,
    Expulsion,        ///< out for the set
    Disqualification, ///< out for the match
};

/// The cards that are shown.
enum class CardsShown {
    Yellow,
    Red,
    BothTogether, ///< red and yellow in one hand
    BothApart,    ///< red and yellow, one in each hand
};

/// Who is warned but once.
enum class WarnedOnce { Person, Team };

/// The lowest level after which the head coach stays seated.
enum class CoachSeated { NotSeated, AfterWarning, AfterPenalty };

/// How a delay stands on the sheet.
enum class DelayWritten {
    YudRud,   ///< YUD and RUD, for yellow and red
    ColumnsD, ///< D in the column of warnings or of penalties
};

/// What a request is that comes at the wrong moment or once too often and delays nothing.
enum class ImproperRequestRule {
    RecordedFirst, ///< the first in a match is refused and recorded, further ones are delays
    DelayAtOnce,
};

/// A rung of a ladder of sanctions.
struct CardStep {
    SanctionLevel level = SanctionLevel::Warning;
    CardsShown cards = CardsShown::Yellow;
    bool point = false; ///< the opponents get a point and the serve
    bool operator==(const CardStep&) const = default;
};

/// The ladders of sanctions, and how long they are remembered.
struct SanctionRules {
    /// The sanctions for misconduct of a person.
    std::vector<CardStep> conductLadder{{SanctionLevel::Warning, CardsShown::Yellow, false},
                                        {SanctionLevel::Penalty, CardsShown::Red, true},
                                        {SanctionLevel::Disqualification, CardsShown::BothApart, true}};
    Scope conductScope = Scope::Match;                   ///< how long a person's sanctions are remembered
    WarnedOnce conductWarnedOnce = WarnedOnce::Person;   ///< the next misconduct is a penalty
    bool conductStepsUp = true;                          ///< a person's next sanction is higher than the last
    CoachSeated coachSeated = CoachSeated::AfterPenalty; ///< for the rest of the match
    /// The sanctions for delay of a team; the last is given again.
    std::vector<CardStep> delayLadder{{SanctionLevel::Warning, CardsShown::Yellow, false},
                                      {SanctionLevel::Penalty, CardsShown::Red, true}};
    Scope delayScope = Scope::Set; ///< how long a team's delays are counted
    DelayWritten delayWritten = DelayWritten::YudRud;
    ImproperRequestRule improperRequest = ImproperRequestRule::DelayAtOnce;
    bool operator==(const SanctionRules&) const = default;
};

} // namespace setfolio
