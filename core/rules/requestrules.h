// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A rulebook's settings of what a team may ask for in a dead ball: substitutions and time-outs.
#pragma once

#include "core/rules/scope.h"
#include "core/rules/servicerules.h"

#include <optional>
#include <vector>

namespace setfolio {

/// Who may come in for whom.
enum class SubstitutionRule {
    OwnSlot,         ///< anybody into one slot a set, again and again
    OnceOutOnceBack, ///< a starter leaves and comes back once, for the same player
};

/// Whether a team that has substituted may ask again.
enum class SecondRequest {
    Allowed,             ///< in the same dead ball
    AfterRally,          ///< not before a completed rally
    AfterRallyOrTimeOut, ///< not before a completed rally or a time-out of either team
};

/// Whether an exceptional substitution counts as one of the team's.
enum class ExceptionalCount { WhileAnyLeft, NotCounted };

/// Whether a libero may come in by an exceptional substitution.
enum class ExceptionalLibero {
    Last,        ///< when nobody else may
    LastForHurt, ///< likewise, but not for a player who was sent off
    Never,
};

/// What becomes of a team that cannot have six on court.
enum class FewerThanSix {
    VacantPlace, ///< it plays on; when the vacant place is to serve the rally is lost
    Incomplete,  ///< it has lost
};

/// What a request against the rules is.
enum class RequestFault {
    Delay,           ///< an unnecessary delay, sanctioned
    ImproperRequest, ///< see ImproperRequestRule
};

/// Substitutions, lawful, illegal and exceptional.
struct SubstitutionRules {
    int substitutionLimit = 18; ///< a team, a set
    SubstitutionRule substitutionRule = SubstitutionRule::OwnSlot;
    std::optional<int> playersPerSlot = 5;                ///< in a set
    std::vector<int> substitutionNotices{15, 16, 17, 18}; ///< told the second referee
    bool substitutionBeforeStart = true;                  ///< once the line-up is in
    SecondRequest secondRequest = SecondRequest::Allowed;
    bool substitutionBarredByDelay = true; ///< after a delay no further request before a completed rally
    RequestFault substitutionRequestIllegal = RequestFault::Delay; ///< asked for, and refused before play
    RequestFault excessSubstitution = RequestFault::Delay;         ///< asked for when none is left
    /// Found after play was resumed; the opponents get a point and the serve besides.
    TakenBack illegalSubstitutionPoints = TakenBack::PresentTerm;
    TakenBackUntil illegalSubstitutionUntil = TakenBackUntil::NextServeContact;
    bool illegalSubstitutionCounts = false; ///< as one of the team's
    ExceptionalCount exceptionalCount = ExceptionalCount::WhileAnyLeft;
    Scope exceptionalOutFor = Scope::Set; ///< the player who was replaced stays out
    ExceptionalLibero exceptionalLibero = ExceptionalLibero::LastForHurt;
    int playersAtStart = 6;                                ///< fewer forfeit the set
    FewerThanSix fewerThanSix = FewerThanSix::VacantPlace; ///< later in the set
    int injurySeconds = 30;                                ///< to decide about an injured player
    bool operator==(const SubstitutionRules&) const = default;
};

/// Time-outs.
struct TimeOutRules {
    int timeOuts = 2; ///< a team, a set
    int timeOutSeconds = 60;
    int timeOutWarningSeconds = 45;                   ///< a warning sounds this long after the start; 0 for none
    bool timeOutEndsEarly = true;                     ///< when both teams are ready
    std::vector<int> timeOutNotices{2};               ///< told the second referee
    RequestFault excessTimeOut = RequestFault::Delay; ///< asked for when none is left
    bool operator==(const TimeOutRules&) const = default;
};

} // namespace setfolio
