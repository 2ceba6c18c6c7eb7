// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

class QWidget;

namespace setfolio {

/// Gives the words in the empty fields of a window the ink of labels, from when it is shown: a style sheet would give
/// them half of the text's ink, which is too little to read.
void inkPlaceholders(QWidget& window);

} // namespace setfolio
