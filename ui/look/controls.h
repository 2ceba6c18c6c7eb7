// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// How buttons and fields look: large enough for a finger, the one with the keyboard plainly seen.
#pragma once

#include "ui/look/colours.h"

#include <QSize>
#include <QString>

class QLabel;
class QPushButton;
class QWidget;

namespace setfolio {

/// The least height of anything to press or to type in, in pixels.
inline constexpr int targetHeight = 44;

/// Gives a window this look, in the theme its palette asks for. Call it once, before its children are shown.
void dress(QWidget& window);
/// The style sheet that dress() sets.
[[nodiscard]] QString controlStyle(Theme theme);

/// Resizes a window to what it wants with words of the usual size; more with larger ones, as far as the screen allows.
void giveRoom(QWidget& window, QSize wanted);

/// A name on a button or in a menu, where "&" would make a letter of it a key.
[[nodiscard]] QString asButtonWords(const QString& name);
/// A tooltip that shows the text as it stands, on its own lines, whatever looks like markup in it.
[[nodiscard]] QString plainTip(const QString& text);
/// Shows a sentence in a label that wraps: a long path in it may break after each folder, and never makes the window
/// wider. Its accessible name is the sentence as it is.
void showSentence(QLabel& label, const QString& sentence);

/// Marks the one button that does what the window is for: amber; or takes the mark away, while it cannot be done yet.
void makePrimary(QPushButton& button, bool primary = true);
/// Marks a control whose content needs mending, or takes the mark away.
void setProblem(QWidget& control, bool problem);

} // namespace setfolio
