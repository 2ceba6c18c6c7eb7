// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

class QListWidget;

namespace setfolio {

/// Lets the lines of a list wrap at its width, each high enough for a finger.
void wrapLines(QListWidget& list);

} // namespace setfolio
