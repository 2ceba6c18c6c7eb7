// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/inkstyle.h"

#include <cmath>
#include <numbers>

namespace setfolio::sheet {

namespace {

constexpr double inked = 0.63; // of a pattern, for dashes of which whole ones fit

double whole(double length, double pitch) {
    return std::max(1.0, std::round(length / pitch));
}

} // namespace

const InkStyle& styleOf(Ink ink) {
    static const InkStyle first{0xFF14171C, 0.26, false, FontWeight::Medium, std::nullopt, 0.3, 0.38, 0.24};
    static const InkStyle second{0xFF0A429F, 0.52, false, FontWeight::Bold, 0xFFEEF3FB, 0.9, 0.52, 0.36};
    static const InkStyle third{0xFFA94A05, 0.40, true, FontWeight::SemiBold, 0xFFFAF0E6, 0.7, 0.40, 0.32};
    switch (ink) {
    case Ink::First:
        return first;
    case Ink::Second:
        return second;
    case Ink::Third:
        return third;
    }
    Q_UNREACHABLE();
}

Stroke strokeAlong(const InkStyle& ink, double width, double length, double pitch) {
    Stroke stroke{ink.colour, width, {}, false};
    if (ink.broken) { // n dashes and n - 1 gaps
        const double on = length / (whole(length, pitch) / inked - (1 - inked) / inked);
        stroke.dash = {on, on * (1 - inked) / inked, 0};
    }
    return stroke;
}

Stroke strokeRound(const InkStyle& ink, double width, double radius, double pitch) {
    Stroke stroke{ink.colour, width, {}, false};
    if (ink.broken) {
        const double girth = 2 * std::numbers::pi * radius;
        const double pattern = girth / whole(girth, pitch);
        stroke.dash = {pattern * inked, pattern * (1 - inked), 0};
    }
    return stroke;
}

Dash dashOfSide(double length, double pitch) {
    const double pattern = length / whole(length, pitch);
    return {pattern * inked, pattern * (1 - inked), pattern * inked / 2};
}

} // namespace setfolio::sheet
