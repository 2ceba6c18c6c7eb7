// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The letters and numbers of the marks. They are notation, the same in every language.
#pragma once

#include "core/record/record.h"

#include <QString>

namespace setfolio {

/// "12", "R", "RS", "P", "S", "Sx", "T", "Tx"; nothing for a serve that is not decided.
/// A number in a slot; a dash where the place is vacant.
[[nodiscard]] QString shirtWords(ShirtNumber number);
[[nodiscard]] QString markLetters(const MarkContent& content);
/// What follows S and Sx, in and out: "10/7"; nothing for other marks.
[[nodiscard]] QString markNumbers(const MarkContent& content);
/// The captain's letter.
[[nodiscard]] QString captainLetter();
/// The libero's letter.
[[nodiscard]] QString liberoLetter();

} // namespace setfolio
