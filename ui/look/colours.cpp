// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/look/colours.h"

namespace setfolio {

QColor amber() {
    return {0xF5, 0xB9, 0x0B};
}

QColor onAmber() {
    return {0x14, 0x17, 0x1C};
}

QColor plateDark() {
    return {0x0E, 0x10, 0x13};
}

QColor plateLight() {
    return {0xFF, 0xFF, 0xFF};
}

const Colours& coloursOf(Theme theme) {
    static const Colours light{
        .ground = QColor(0xE7, 0xE9, 0xEA),
        .bar = QColor(0xD9, 0xDC, 0xDE),
        .panel = QColor(0xF7, 0xF8, 0xF8),
        .button = QColor(0xFF, 0xFF, 0xFF),
        .text = QColor(0x14, 0x17, 0x1C),
        .secondary = QColor(0x4C, 0x53, 0x5B),
        .edge = QColor(0x76, 0x7E, 0x86),
        .rule = QColor(0xCD, 0xD1, 0xD4),
        .court = QColor(0xDC, 0xE3, 0xE0),
        .courtLine = QColor(0x14, 0x17, 0x1C),
        .focus = QColor(0x0A, 0x42, 0x9F),
        .problem = QColor(0xA3, 0x16, 0x1E),
    };
    static const Colours dark{
        .ground = QColor(0x22, 0x26, 0x2B),
        .bar = QColor(0x19, 0x1C, 0x20),
        .panel = QColor(0x2C, 0x31, 0x37),
        .button = QColor(0x37, 0x3D, 0x45),
        .text = QColor(0xF2, 0xF4, 0xF5),
        .secondary = QColor(0xB7, 0xBE, 0xC5),
        .edge = QColor(0x8B, 0x94, 0x9D),
        .rule = QColor(0x43, 0x4A, 0x52),
        .court = QColor(0x3A, 0x46, 0x40),
        .courtLine = QColor(0xE9, 0xED, 0xEF),
        .focus = QColor(0x9C, 0xC2, 0xFF),
        .problem = QColor(0xFF, 0x9C, 0x9C),
    };
    static const Colours contrast{
        .ground = QColor(0x00, 0x00, 0x00),
        .bar = QColor(0x00, 0x00, 0x00),
        .panel = QColor(0x00, 0x00, 0x00),
        .button = QColor(0x00, 0x00, 0x00),
        .text = QColor(0xFF, 0xFF, 0xFF),
        .secondary = QColor(0xE4, 0xE7, 0xEA),
        .edge = QColor(0xFF, 0xFF, 0xFF),
        .rule = QColor(0xA6, 0xAE, 0xB6),
        .court = QColor(0x1C, 0x20, 0x1E),
        .courtLine = QColor(0xFF, 0xFF, 0xFF),
        .focus = QColor(0x6C, 0xD4, 0xFF),
        .problem = QColor(0xFF, 0xB0, 0xB0),
    };
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

Theme themeOf(const QPalette& palette) {
    const int ground = palette.color(QPalette::Window).lightness();
    const int text = palette.color(QPalette::WindowText).lightness();
    if (ground == 0 && text == 255)
        return Theme::HighContrast;
    return ground < text ? Theme::Dark : Theme::Light;
}

QPalette paletteOf(Theme theme) {
    const Colours& colours = coloursOf(theme);
    QPalette palette;
    palette.setColor(QPalette::Window, colours.ground);
    palette.setColor(QPalette::WindowText, colours.text);
    palette.setColor(QPalette::Base, colours.button);
    palette.setColor(QPalette::AlternateBase, colours.panel);
    palette.setColor(QPalette::Text, colours.text);
    palette.setColor(QPalette::PlaceholderText, colours.secondary);
    palette.setColor(QPalette::Button, colours.button);
    palette.setColor(QPalette::ButtonText, colours.text);
    palette.setColor(QPalette::ToolTipBase, colours.panel);
    palette.setColor(QPalette::ToolTipText, colours.text);
    palette.setColor(QPalette::Highlight, amber());
    palette.setColor(QPalette::HighlightedText, onAmber());
    palette.setColor(QPalette::Mid, colours.edge);
    palette.setColor(QPalette::Light, colours.rule);
    palette.setColor(QPalette::Link, colours.focus);
    palette.setColor(QPalette::Disabled, QPalette::WindowText, colours.secondary);
    palette.setColor(QPalette::Disabled, QPalette::Text, colours.secondary);
    palette.setColor(QPalette::Disabled, QPalette::ButtonText, colours.secondary);
    return palette;
}

} // namespace setfolio
