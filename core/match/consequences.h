// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the match's rulebook makes of an entry: the answers that the fold needs.
#pragma once

#include "core/match/state.h"

namespace setfolio {

/// Whether a card for misconduct brings the opponents a point and the serve.
[[nodiscard]] bool bringsPoint(const Rulebook& rulebook, SanctionLevel level);
/// Whether a substitution of this kind is one of the team's limited number, of which it has
/// `used` so many.
[[nodiscard]] bool countsAsSubstitution(const Rulebook& rulebook, int used, SubstitutionKind kind);
/// Whether a time-out lets both teams ask for substitutions again in the same interruption.
[[nodiscard]] bool timeOutRenewsRequests(const Rulebook& rulebook);

} // namespace setfolio
