// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Who may not play, whoever she comes in for, and who is there to choose from.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

#include <vector>

namespace setfolio {

/// What keeps a number out of the present set: sent off, replaced by an exceptional substitution, or given up as a
/// libero; none if nothing does.
/// Sources: FIVB Official Volleyball Rules 2025-2028, 15.7, 19.4, 21.3; the rulebook's settings.
[[nodiscard]] std::optional<Finding> keptOut(const MatchState& state, Team team, ShirtNumber number);

/// Whether a number is one of the set's liberos.
[[nodiscard]] bool isLibero(const TeamInSet& team, ShirtNumber number);
/// Whether a number may belong to the team: it is on its roster, or the team has none.
[[nodiscard]] bool isOfTeam(const MatchState& state, Team team, ShirtNumber number);

/// Who stands on court in a slot: the libero where she has come in.
[[nodiscard]] ShirtNumber standsIn(const TeamInSet& team, Slot slot);

/// Every number known of a team that is not one of the six and left no vacant place: its roster's, or, without one,
/// those that have played in the set. In the roster's order.
[[nodiscard]] std::vector<ShirtNumber> offCourtOf(const MatchState& state, Team team);

} // namespace setfolio
