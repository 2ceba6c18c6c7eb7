// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "ui/sheet/compose.h"

#include <span>

namespace setfolio {

/// The list of entries as they were recorded: number, time, words. What a correction has struck is shown struck, with
/// the correction that did it; what was recorded against a finding has the finding and the referee's reason.
[[nodiscard]] std::vector<Page> composeEntries(const MatchHeading& heading, std::span<const Recorded> entries,
                                               const SheetOptions& options);

} // namespace setfolio
