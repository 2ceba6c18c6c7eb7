// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// How well one colour is seen on another, by the formula of WCAG 2.2 (W3C Recommendation), "contrast ratio" and
/// "relative luminance" among its definitions.
#pragma once

#include <QColor>

#include <algorithm>
#include <cmath>

namespace setfolio::testing {

[[nodiscard]] inline double relativeLuminance(const QColor& colour) {
    const auto linear = [](double part) {
        return part <= 0.04045 ? part / 12.92 : std::pow((part + 0.055) / 1.055, 2.4);
    };
    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF());
}

/// 1 for the same colour, 21 for black on white.
[[nodiscard]] inline double contrastOf(const QColor& a, const QColor& b) {
    const double first = relativeLuminance(a);
    const double second = relativeLuminance(b);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

} // namespace setfolio::testing
