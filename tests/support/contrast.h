// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// How well a colour is told from the ground it stands on, by the Web Content Accessibility Guidelines (WCAG) 2.2, W3C
/// Recommendation: "relative luminance" and "contrast ratio" in its section 6, Glossary.
#pragma once

#include <QRgb>

#include <algorithm>
#include <cmath>

namespace setfolio::testing {

/// Of text, by success criterion 1.4.3, Contrast (Minimum), level AA.
inline constexpr double leastTextContrast = 4.5;
/// Of large text (1.4.3), and of what a control or a picture is known by (1.4.11, Non-text Contrast), level AA.
inline constexpr double leastShapeContrast = 3.0;

/// A channel of sRGB, from 0 to 255, as light from 0 to 1.
inline double linearChannel(int channel) {
    const double value = channel / 255.0;
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}

/// From 0, black, to 1, white.
inline double relativeLuminance(QRgb colour) {
    return 0.2126 * linearChannel(qRed(colour)) + 0.7152 * linearChannel(qGreen(colour)) +
           0.0722 * linearChannel(qBlue(colour));
}

/// From 1, the same, to 21, black on white. The order of the two does not matter.
inline double contrastRatio(QRgb one, QRgb other) {
    const double first = relativeLuminance(one), second = relativeLuminance(other);
    return (std::max(first, second) + 0.05) / (std::min(first, second) + 0.05);
}

} // namespace setfolio::testing
