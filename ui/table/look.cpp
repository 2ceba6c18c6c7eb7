// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/look.h"

#include "ui/look/plate.h"

#include <algorithm>

namespace setfolio {

namespace {

/// What only the table's window has, in each theme.
struct Own {
    QColor pressed;
    QColor newest;
    QColor courtGround;
    QColor saved;
};

const Own& ownOf(Theme theme) {
    static const Own light{{0xE3, 0xE6, 0xE8}, {0xFF, 0xF1, 0xBF}, {0xEE, 0xF1, 0xF0}, {0x2E, 0x8B, 0x57}};
    static const Own dark{{0x4A, 0x52, 0x5B}, {0x4A, 0x3F, 0x14}, {0x2C, 0x31, 0x37}, {0x58, 0xC7, 0x8A}};
    static const Own contrast{{0x33, 0x33, 0x33}, {0x3A, 0x30, 0x00}, {0x00, 0x00, 0x00}, {0x7C, 0xF0, 0xB0}};
    switch (theme) {
    case Theme::Light:
        return light;
    case Theme::Dark:
        return dark;
    case Theme::HighContrast:
        return contrast;
    }
    Q_UNREACHABLE();
}

} // namespace

Look Look::of(Theme theme, double scale) {
    const Own& own = ownOf(theme);
    Look look;
    look.theme = theme;
    look.scale = scale;
    look.colours = coloursOf(theme);
    look.pressed = own.pressed;
    look.newest = own.newest;
    look.courtGround = own.courtGround;
    look.alarm = QColor(0xA3, 0x16, 0x1E);
    look.onAlarm = QColor(0xFF, 0xFF, 0xFF);
    look.saved = own.saved;
    return look;
}

QFont Look::font(double size, QFont::Weight weight) const {
    return typeface(std::max(11, qRound(size * scale)), weight);
}

} // namespace setfolio
