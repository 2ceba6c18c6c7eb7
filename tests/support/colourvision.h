// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Colours as people see them who lack one kind of cone, and how far two colours are from each other.
#pragma once

#include <QRgb>

#include <array>

namespace setfolio::testing {

enum class Sight { Usual, Protanopia, Deuteranopia, Tritanopia };
inline constexpr std::array allSights{Sight::Usual, Sight::Protanopia, Sight::Deuteranopia, Sight::Tritanopia};

/// By the matrices for severity 1.0 of G. M. Machado, M. M. Oliveira, L. A. F. Fernandes: A Physiologically-based Model
/// for Simulation of Color Vision Deficiency, IEEE Transactions on Visualization and Computer Graphics 15 (2009), 6.
[[nodiscard]] QRgb seenBy(Sight sight, QRgb colour);

struct Lab {
    double lightness = 0, a = 0, b = 0;
};
/// CIE 1976 L*a*b* of a colour of sRGB, for the white D65.
[[nodiscard]] Lab labOf(QRgb colour);

/// CIEDE2000, as written out by G. Sharma, W. Wu, E. N. Dalal: The CIEDE2000 Color-Difference Formula, Color Research
/// and Application 30 (2005), 1, equations 2 to 22.
[[nodiscard]] double distance(const Lab& one, const Lab& other);

} // namespace setfolio::testing
