// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What a team is most likely to ask for next, so that the table need only be told when it is something else. A
/// proposal is lawful; nothing follows from it until somebody records it.
#pragma once

#include "core/match/state.h"

#include <optional>

namespace setfolio {

/// Who comes in for whom, as before in the same place of the rotation: for the player about to serve, whoever changed
/// with her before, in this set or an earlier one; for a substitute who has just come to the front row, whoever she
/// came in for. Not what has been done in this interruption already. Common practice: a player who serves and receives
/// leaves as she comes to the front row.
[[nodiscard]] std::optional<Substitution> proposedSubstitution(const MatchState& state, Team team);

/// The libero who served last, or else the line-up's first, for the player in court position 1, as one of the front row
/// has then just come to the back. Common practice.
[[nodiscard]] std::optional<LiberoIn> proposedReplacement(const MatchState& state, Team team);

} // namespace setfolio
