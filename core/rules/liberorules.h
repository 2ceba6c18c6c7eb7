// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A rulebook's settings of liberos.
#pragma once

#include "core/rules/scope.h"

namespace setfolio {

/// Where a libero may serve.
enum class LiberoServeRule { Never, OneSlot };

/// What follows a libero's replacement between the signal and the contact of the serve.
enum class LateReplacementRule {
    DelayOrFault,         ///< a delay before the contact, a fault of alignment after it
    ToleratedThenPenalty, ///< the first in a match is let pass and told the captain, later ones are a delay penalty
    SpokenThenDelay,      ///< the first is warned in words, later ones are a delay
};

/// What an illegal replacement is that is found after the serve was contacted.
enum class IllegalReplacement {
    AlignmentFault,      ///< points are taken back as after a wrong server
    IllegalSubstitution, ///< points are taken back as after an illegal substitution
};

/// Who may come in for a libero.
enum class LiberoReplacedBy {
    SamePlayer,         ///< only whom she replaced
    SamePlayerOrLibero, ///< or the other libero
};

/// Whether another player may be made libero.
enum class Redesignation {
    NoRedesignation,
    WhenUnable,   ///< when a libero cannot play on
    WhenNoneLeft, ///< when no libero can play on
};

/// How a team plays on whose libero is disqualified.
enum class LiberoDisqualified {
    OtherLibero,         ///< with its other libero, or without one
    OtherOrRedesignated, ///< with its other libero, or with a new one if it had no other
};

/// What follows a wrong libero's number on a line-up.
enum class LiberoNumberWrong {
    Corrected, ///< without penalty
    NoLibero,  ///< the team has none that set
};

/// Who is a libero, who replaces her, and what follows when it goes wrong.
struct LiberoRules {
    int maximumLiberos = 2; ///< one on court at a time
    Scope liberoNamedFor = Scope::Set;
    bool liberoNamedLate = false; ///< at the check of the line-up, when the line-up names none
    LiberoServeRule liberoServe = LiberoServeRule::OneSlot;
    bool liberoRallyBetween = true; ///< between two replacements; not when she goes in to serve, where she may
    LiberoReplacedBy liberoReplacedBy = LiberoReplacedBy::SamePlayerOrLibero;
    LateReplacementRule liberoLateReplacement = LateReplacementRule::DelayOrFault;
    IllegalReplacement liberoIllegalReplacement = IllegalReplacement::AlignmentFault;
    Redesignation liberoRedesignation = Redesignation::WhenUnable;
    LiberoDisqualified liberoDisqualified = LiberoDisqualified::OtherLibero;
    LiberoNumberWrong liberoNumberWrong = LiberoNumberWrong::Corrected;
    bool liberoCaptain = true; ///< whether a libero may be the floor captain
    bool operator==(const LiberoRules&) const = default;
};

} // namespace setfolio
