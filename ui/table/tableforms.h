// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the form bar asks for the entries that are seldom.
#pragma once

#include "core/match/state.h"
#include "ui/table/formbar.h"

namespace setfolio {

/// Which team, a default or an incomplete team, the set or the match, and why.
[[nodiscard]] Form forfeitForm(const MatchState& state);
/// How play goes on.
[[nodiscard]] Form resumptionForm(const MatchState& state);
/// Who cannot play on as a libero, who takes her part if anybody does, and why. The team must have a libero.
[[nodiscard]] Form redesignationForm(const MatchState& state, Team team);

/// What a rally is played over for; each choice records the replay at once.
[[nodiscard]] Form replayForm();
/// Who has been found on court with no right to be there, how she came, and which points of her team go.
[[nodiscard]] Form illegalPlayerForm(const MatchState& state, Team team);

} // namespace setfolio
