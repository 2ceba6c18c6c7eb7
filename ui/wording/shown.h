// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace setfolio {

/// A text from a file as it is shown: a character that would turn the order of words round stands as a box (Unicode
/// Standard Annex 9, 2.1 to 2.4: embeddings, overrides, isolates).
[[nodiscard]] QString asShown(const QString& text);

} // namespace setfolio
