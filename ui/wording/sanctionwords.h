// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Words about sanctions: levels, and who is sanctioned.
#pragma once

#include "core/match/entry.h"

#include <QString>

namespace setfolio {

/// "warning", "penalty", "expulsion", "disqualification".
[[nodiscard]] QString levelWords(SanctionLevel level);
/// "delay warning", "delay penalty".
[[nodiscard]] QString delayWords(DelayLevel level);
/// "7", "coach".
[[nodiscard]] QString memberWords(const Member& who);

} // namespace setfolio
