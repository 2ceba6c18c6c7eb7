// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What is to be said against the rulings that may take points back.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

namespace setfolio {

[[nodiscard]] Findings judgeWrongServer(const MatchState& state, const WrongServer& ruling);
[[nodiscard]] Findings judgeIllegalPlayer(const MatchState& state, const IllegalPlayer& ruling);

} // namespace setfolio
