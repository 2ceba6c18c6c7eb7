// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Looks over a window that is shown for what a hand, an eye or a screen reader would miss. Each complaint names the
/// control; no complaint is an empty list.
#pragma once

#include <QStringList>
#include <QWidget>

namespace setfolio::testing {

/// What can be pressed, typed into or chosen from in a window: its visible controls, without the inner parts of Qt's.
[[nodiscard]] std::vector<QWidget*> controlsOf(QWidget& window);

/// Controls that have no name for those who hear the screen.
[[nodiscard]] QStringList unnamedControls(QWidget& window);
/// Controls, titles of menus, their items, and rows of lists that drop down, that are below `smallest` pixels in one
/// direction.
[[nodiscard]] QStringList smallControls(QWidget& window, int smallest);
/// Enabled controls that Tab does not come by, that show no key, and whose number cannot be typed in their place.
[[nodiscard]] QStringList unreachedControls(QWidget& window);
/// Controls that lie beyond the edge of their window, or of the part of it that can be scrolled to.
[[nodiscard]] QStringList controlsOutOfReach(QWidget& window);
/// Controls that lie over one another.
[[nodiscard]] QStringList overlappingControls(QWidget& window);
/// Words that are wider or higher than the place they have, or were shortened to fit it.
[[nodiscard]] QStringList cutWords(QWidget& window);

} // namespace setfolio::testing
