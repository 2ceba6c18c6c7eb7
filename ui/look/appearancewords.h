// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The names of the looks, wherever they are offered.
#pragma once

#include "ui/look/appearance.h"

#include <QString>

namespace setfolio {

[[nodiscard]] QString nameOf(LookChoice look);

} // namespace setfolio
