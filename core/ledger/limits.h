// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The limits of FORMAT.md. Changing one changes the format.
#pragma once

#include <QtGlobal>

namespace setfolio::limits {

inline constexpr int format = 1; ///< the format's own number

inline constexpr qsizetype lineBytes = 65'536; ///< with the line feed
inline constexpr qsizetype entries = 100'000;
inline constexpr qsizetype fileBytes = 67'108'864;

inline constexpr qsizetype nameCharacters = 120; ///< Unicode code points, here and below
inline constexpr qsizetype codeCharacters = 8;
inline constexpr qsizetype textCharacters = 1'000;

inline constexpr qsizetype players = 100;
inline constexpr qsizetype liberos = 10;
inline constexpr qsizetype officials = 30;

inline constexpr int sets = 5;
inline constexpr int pointsKept = 999;           ///< of a set that is forfeited afterwards
inline constexpr qsizetype strokePoints = 2'000; ///< of one signature
inline constexpr int strokeExtent = 9'999;       ///< the largest x and y
inline constexpr int strokeMilliseconds = 3'600'000;

} // namespace setfolio::limits
