// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The sanctions at the foot of a sheet.
#pragma once

#include "ui/sheet/scene.h"

#include <span>

namespace setfolio::sheet {

inline constexpr std::size_t sanctionLines = 5; ///< in the foot

/// Title, heads and lines.
void drawSanctions(Draft& draft, const Scene& scene);

/// The sanctions that the foot has no line for: they are told among the remarks.
[[nodiscard]] std::span<const SanctionLine> sanctionsBeyondFoot(const SetRecord& set);

} // namespace setfolio::sheet
