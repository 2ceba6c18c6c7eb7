// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What is to be said against a substitution, and against a place left vacant.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

namespace setfolio {

[[nodiscard]] Findings judgeSubstitution(const MatchState& state, const Substitution& substitution);
/// A place stays vacant only where the rulebook lets a team play with fewer than six, and when nobody may come in.
[[nodiscard]] Findings judgePlaceVacated(const MatchState& state, const PlaceVacated& vacated);

/// What is to be said against a team's request before a serve that is repeated.
[[nodiscard]] Findings againstRequestBeforeRepeat(const MatchState& state, Team team);

} // namespace setfolio
