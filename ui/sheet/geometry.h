// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Where things stand on the live area, in millimetres from its top left corner, y downwards.
#pragma once

#include "core/match/ids.h"
#include "ui/sheet/item.h"

#include <QRectF>

namespace setfolio::sheet {

inline constexpr double mainRight = 234; ///< right edge of all but the ladder

inline constexpr double headerBottom = 16.4;
inline constexpr double blockTop = 18.6;
inline constexpr double blockPitch = 67.2; ///< from the top of the home team's block to that of the visitors'

// A block: strip, column heads, six rows.
inline constexpr double stripHeight = 8.4;
inline constexpr double columnHeadHeight = 4.2;
inline constexpr double rowHeight = 8.6;
inline constexpr double blockHeight = stripHeight + columnHeadHeight + 6 * rowHeight;

// Columns of a block.
inline constexpr double numeralRight = 8;
inline constexpr double starterRight = 18.8;
inline constexpr double roundsLeft = 43;
inline constexpr double roundsWidth = mainRight - roundsLeft;

inline constexpr double ladderLeft = 237;
inline constexpr double ladderRight = 264;
inline constexpr double ladderTop = 18.6;
inline constexpr double ladderBottom = 195;

inline constexpr double footTop = 152.7;
inline constexpr double footBottom = 185.3;
inline constexpr double legendTop = 186.2;
inline constexpr double liveBottom = 195;

[[nodiscard]] constexpr double topOf(Team team) {
    return team == Team::Home ? blockTop : blockTop + blockPitch;
}
[[nodiscard]] constexpr double rowsTop(Team team) {
    return topOf(team) + stripHeight + columnHeadHeight;
}
[[nodiscard]] constexpr double rowCentre(Team team, Slot slot) {
    return rowsTop(team) + rowHeight * (static_cast<double>(slot.index()) + 0.5);
}
[[nodiscard]] constexpr Zone blockOf(Team team) {
    return team == Team::Home ? Zone::BlockHome : Zone::BlockVisitors;
}
/// Where a zone lies on the live area.
[[nodiscard]] QRectF areaOf(Zone zone);

} // namespace setfolio::sheet
