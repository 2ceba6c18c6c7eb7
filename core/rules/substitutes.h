// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Who may come in for whom, the moment and the requests of a team aside.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

#include <vector>

namespace setfolio {

/// A pair of numbers and the slot it is about.
struct Pair {
    Team team = Team::Home;
    ShirtNumber in;
    ShirtNumber out;
    Slot slot;
};

/// What is to be said against a regular substitution of the pair.
[[nodiscard]] Findings againstRegular(const MatchState& state, const Pair& pair);
/// What is to be said against an exceptional one: also that a regular one is lawful.
/// Source: FIVB Official Volleyball Rules 2025-2028, 15.7; the rulebook's settings.
[[nodiscard]] Findings againstExceptional(const MatchState& state, const Pair& pair);

/// Who of the bench may come in for a number on court, or into the place it left vacant.
[[nodiscard]] std::vector<ShirtNumber> regularSubstitutes(const MatchState& state, Team team, ShirtNumber out);
/// Who may when there is no regular substitute.
[[nodiscard]] std::vector<ShirtNumber> exceptionalSubstitutes(const MatchState& state, Team team, ShirtNumber out);

} // namespace setfolio
