// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The colours of the window: light, dark, and white on black for eyes that need contrast. Colour never carries a
/// meaning alone; teams are told apart by solid and outlined plates.
#pragma once

#include <QColor>
#include <QPalette>

namespace setfolio {

enum class Theme : std::uint8_t { Light, Dark, HighContrast };

struct Colours {
    QColor ground; ///< behind everything
    QColor bar;    ///< the menu's bar
    QColor panel;  ///< a group of things that belong together
    QColor button; ///< what can be pressed or typed in
    QColor text;
    QColor secondary; ///< labels and explanations
    QColor edge;      ///< round what can be pressed or typed in
    QColor rule;      ///< between rows; decoration only
    QColor court;
    QColor courtLine;
    QColor focus;   ///< round the control that has the keyboard
    QColor problem; ///< an edge or a word about something that needs mending
};

/// Amber means "serves", or "the one thing to press now"; the text on it is dark in every theme.
[[nodiscard]] QColor amber();
[[nodiscard]] QColor onAmber();
/// The plates look the same in every theme: the home team's is solid, the visitors' outlined.
[[nodiscard]] QColor plateDark();
[[nodiscard]] QColor plateLight();

[[nodiscard]] const Colours& coloursOf(Theme theme);
/// The theme that a palette asks for: high contrast if its text is white on black, dark if its window is darker than
/// its text.
[[nodiscard]] Theme themeOf(const QPalette& palette);
/// The palette that gives Qt's own widgets these colours.
[[nodiscard]] QPalette paletteOf(Theme theme);

} // namespace setfolio
