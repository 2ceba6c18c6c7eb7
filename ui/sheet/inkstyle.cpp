// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/inkstyle.h"

#include "ui/sheet/palette.h"

#include <array>
#include <cmath>
#include <numbers>

namespace setfolio::sheet {

namespace {

constexpr double inked = 0.63; // of a pattern, for dashes of which whole ones fit

double whole(double length, double pitch) {
    return std::max(1.0, std::round(length / pitch));
}

/// The colour of an ink in one set, and the tint of its columns.
struct Pigment {
    QRgb colour = soot;
    std::optional<QRgb> tint;
};

/// What an ink is besides its colour: the same in every set.
constexpr std::array<InkStyle, 4> lines{{
    {.line = 0.26, .digits = FontWeight::Medium, .headRule = 0.3, .cross = 0.38, .slash = 0.24},
    {.line = 0.52, .digits = FontWeight::Bold, .headRule = 0.9, .cross = 0.52, .slash = 0.36},
    {.line = 0.40, .broken = true, .digits = FontWeight::SemiBold, .headRule = 0.7, .cross = 0.40, .slash = 0.32},
    {.line = 0.52,
     .broken = true,
     .dashes = 2.4,
     .digits = FontWeight::Bold,
     .headRule = 0.9,
     .cross = 0.52,
     .slash = 0.36},
}};

using Pigments = std::array<Pigment, 4>;

Pigments pigmentsOf(InkSet set) {
    constexpr QRgb pine = 0xFF0B6B62, pineTint = 0xFFEDF5F3;
    switch (set) {
    case InkSet::CobaltAndRust:
    case InkSet::Greys: // the page is turned grey as a whole
        return {{{}, {0xFF0A429F, 0xFFEEF3FB}, {0xFFA94A05, 0xFFFAF0E6}, {pine, pineTint}}};
    case InkSet::HeatherAndGorse:
        return {{{}, {0xFF5B1A8C, 0xFFF4EFF9}, {0xFF7A5C00, 0xFFF8F2DF}, {pine, pineTint}}};
    case InkSet::BlackOnly:
        return {};
    }
    Q_UNREACHABLE();
}

std::array<InkStyle, 4> stylesOf(InkSet set) {
    std::array<InkStyle, 4> styles = lines;
    const Pigments pigments = pigmentsOf(set);
    for (std::size_t i = 0; i < styles.size(); ++i) {
        styles[i].colour = pigments[i].colour;
        styles[i].tint = pigments[i].tint;
    }
    return styles;
}

} // namespace

const InkStyle& styleOf(Ink ink, InkSet set) {
    static const std::array sets{stylesOf(InkSet::CobaltAndRust), stylesOf(InkSet::HeatherAndGorse),
                                 stylesOf(InkSet::Greys), stylesOf(InkSet::BlackOnly)};
    return sets.at(static_cast<std::size_t>(set)).at(static_cast<std::size_t>(ink));
}

Stroke strokeAlong(const InkStyle& ink, double width, double length, double pitch) {
    Stroke stroke{ink.colour, width, {}, false};
    if (ink.broken) { // n dashes and n - 1 gaps
        const double on = length / (whole(length, pitch * ink.dashes) / inked - (1 - inked) / inked);
        stroke.dash = {on, on * (1 - inked) / inked, 0};
    }
    return stroke;
}

Stroke strokeRound(const InkStyle& ink, double width, double radius, double pitch) {
    Stroke stroke{ink.colour, width, {}, false};
    if (ink.broken) {
        const double girth = 2 * std::numbers::pi * radius;
        const double pattern = girth / whole(girth, pitch * ink.dashes);
        stroke.dash = {pattern * inked, pattern * (1 - inked), 0};
    }
    return stroke;
}

Dash dashOfSide(double length, double pitch) {
    const double pattern = length / whole(length, pitch);
    return {pattern * inked, pattern * (1 - inked), pattern * inked / 2};
}

} // namespace setfolio::sheet
