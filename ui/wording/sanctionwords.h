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

// Short forms for the columns of a sheet.

/// "7", "C", "AC1", "AC2", "T", "M", "B".
[[nodiscard]] QString memberLetters(const Member& who);
/// "YUD" and "RUD": yellow and red for unnecessary delay.
[[nodiscard]] QString delayLetters(DelayLevel level);
[[nodiscard]] QString delayLetter();        ///< "D", beside a card
[[nodiscard]] QString cardLetter(bool red); ///< "R" or "Y", printed on the card
[[nodiscard]] QString improperWords();

} // namespace setfolio
