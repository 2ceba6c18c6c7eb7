// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

class QWidget;

namespace setfolio {

/// Gives a window that is not shown yet the place and size in which a window of this name was closed last, in the
/// settings of the user, and keeps them again when it closes. The first time it fills the screen.
void keepPlace(QWidget& window, const QString& name);

} // namespace setfolio
