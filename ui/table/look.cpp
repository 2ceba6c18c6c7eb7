// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/look.h"

#include "ui/look/plate.h"

#include <algorithm>

namespace setfolio {

Theme themeFor(LookChoice choice, const QPalette& system) {
    switch (choice) {
    case LookChoice::AsSystem:
        return themeOf(system);
    case LookChoice::Light:
        return Theme::Light;
    case LookChoice::Dark:
        return Theme::Dark;
    }
    return Theme::Light;
}

Look Look::of(Theme theme, double scale) {
    const bool dark = theme == Theme::Dark;
    Look look;
    look.theme = theme;
    look.scale = scale;
    look.colours = coloursOf(theme);
    look.pressed = dark ? QColor(0x4A, 0x52, 0x5B) : QColor(0xE3, 0xE6, 0xE8);
    look.newest = dark ? QColor(0x4A, 0x3F, 0x14) : QColor(0xFF, 0xF1, 0xBF);
    look.courtGround = dark ? QColor(0x2C, 0x31, 0x37) : QColor(0xEE, 0xF1, 0xF0);
    look.alarm = QColor(0xA3, 0x16, 0x1E);
    look.onAlarm = QColor(0xFF, 0xFF, 0xFF);
    look.saved = dark ? QColor(0x58, 0xC7, 0x8A) : QColor(0x2E, 0x8B, 0x57);
    return look;
}

QFont Look::font(double size, QFont::Weight weight) const {
    return windowFont(std::max(11, qRound(size * scale)), weight);
}

} // namespace setfolio
