// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "core/record/tracking.h"
#include "ui/sheet/compose.h"

namespace setfolio {

/// The libero tracking sheet of a set: for each slot who began in it and who came, the liberos among them, each with
/// the score; and the slot a libero has served in. Of a team whose replacements were not recorded the starters alone
/// are written, and the cells are left to the pen. Where a slot has no room for all, another page follows.
[[nodiscard]] std::vector<Page> composeLibero(const MatchHeading& heading, const SetRecord& set,
                                              const PerTeam<TrackedTeam>& tracked, const SheetOptions& options);

} // namespace setfolio
