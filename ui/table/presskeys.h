// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// How the table's own buttons are pressed by the keyboard: with Enter, because Space and the arrow keys record rallies
/// whatever has the focus.
#pragma once

class QAbstractButton;
class QEvent;
class QKeyEvent;

namespace setfolio {

/// True when the event asks whether a focused button wants Enter for itself, before it becomes a command; accepts it.
[[nodiscard]] bool claimsPressKey(QEvent* event);
/// Presses the button if the event is Enter, once however long the key is held. False if it is another key.
[[nodiscard]] bool pressByKey(QAbstractButton& button, const QKeyEvent& event);

} // namespace setfolio
