// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "core/report/report.h"
#include "ui/sheet/compose.h"

#include <span>

namespace setfolio {

/// The coach's pages: one a set, with a picture of the score as it went, what was won and lost in each rotation, the
/// servers, the longest runs and the changes in their place; of more than one set, a page of the whole match first.
[[nodiscard]] std::vector<Page> composeCoach(const MatchHeading& heading, std::span<const SetFigures> sets,
                                             const SheetOptions& options);

} // namespace setfolio
