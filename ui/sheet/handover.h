// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "core/record/tracking.h"
#include "ui/sheet/compose.h"

namespace setfolio {

/// The page that goes with the sheet of a set in play to a table that goes on by pen: score, who serves next and after
/// her, who stands where, what each team has left, the order of service. No page for a set that is not in play.
[[nodiscard]] std::vector<Page> composeHandOver(const MatchHeading& heading, const SetRecord& set,
                                                const PerTeam<TrackedTeam>& tracked, const SheetOptions& options);

} // namespace setfolio
