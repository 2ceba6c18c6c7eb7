// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include <QSizeF>

namespace setfolio {

/// The papers a sheet can be printed on, always on its long side.
enum class Paper { Letter, A4 };

/// Width and height in millimetres.
[[nodiscard]] QSizeF paperSize(Paper paper);

} // namespace setfolio
