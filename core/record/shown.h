// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace setfolio {

/// Whether a character, without ink of its own, would turn the order of words round (Unicode Standard Annex 9, 2.1 to
/// 2.4: embeddings, overrides, isolates), break a line, or is a control character other than a line feed and a tab.
[[nodiscard]] bool steersWords(QChar character);

/// A text from a file as it is shown: a box for each character that steers.
[[nodiscard]] QString asShown(const QString& text);

/// A text as a field takes it in, typed, pasted or from a file: on one line, and without what steers. Names in Arabic
/// or Hebrew need nothing of it: their letters have their direction.
[[nodiscard]] QString asTaken(const QString& text);

/// The text with every control and format character as an escape, \u001b: nothing is lost, and a name in a file cannot
/// do anything to a terminal. Line feeds and tabs too.
[[nodiscard]] QString withEscapes(const QString& text);

} // namespace setfolio
