// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What runs against the clock: a time-out, the interval between two sets.
#pragma once

#include "core/match/fold.h"

#include <optional>
#include <span>

namespace setfolio {

/// The newest standing time-out, as long as nothing but substitutions and the like has followed it; nullptr if none
/// runs.
[[nodiscard]] const Recorded* runningTimeOut(std::span<const Recorded> entries);
/// When the present interval began: the end of the last set, while the next one has not started.
[[nodiscard]] std::optional<QDateTime> intervalBegan(std::span<const Recorded> entries);

} // namespace setfolio
