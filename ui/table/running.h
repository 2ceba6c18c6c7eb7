// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What runs against the clock: a time-out.
#pragma once

#include "core/match/fold.h"

#include <span>

namespace setfolio {

/// The newest standing time-out, as long as nothing but substitutions and the like has followed it; nullptr if none
/// runs.
[[nodiscard]] const Recorded* runningTimeOut(std::span<const Recorded> entries);

} // namespace setfolio
