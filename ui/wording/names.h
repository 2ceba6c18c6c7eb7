// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// How teams and slots are called in a sentence.
#pragma once

#include "core/match/state.h"

#include <QString>

namespace setfolio {

/// The team's code, "SAL"; its name where it has no code; "home team" or "visitors" where it has neither.
[[nodiscard]] QString codeOf(const MatchState& state, Team team);

/// A slot as it stands on the sheet: I to VI.
[[nodiscard]] QString roman(Slot slot);

} // namespace setfolio
