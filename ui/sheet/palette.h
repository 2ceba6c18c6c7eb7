// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The colours of the sheet. Teams are told apart by solid and outlined plates, never by colour.
#pragma once

#include <QRgb>

namespace setfolio::sheet {

inline constexpr QRgb soot = 0xFF14171C; ///< text, the first ink
inline constexpr QRgb label = 0xFF565C64;
inline constexpr QRgb paleRule = 0xFFB4B8BC;
inline constexpr QRgb rule = 0xFF7C8288;
inline constexpr QRgb white = 0xFFFFFFFF;
inline constexpr QRgb paper = 0xFFFCFBF7; ///< on the screen only
inline constexpr QRgb live = 0xFFFFF1BF;  ///< the cell that is being served in
inline constexpr QRgb amber = 0xFFF5B90B; ///< serves

} // namespace setfolio::sheet
