// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "ui/sheet/compose.h"

namespace setfolio {

/// The page of the match: teams and rosters, officials, the result by set, sanctions, remarks by set, and the places to
/// be signed and sealed. What has no room on the first page goes on to the next.
[[nodiscard]] std::vector<Page> composeMatch(const MatchRecord& record, const SheetOptions& options);

} // namespace setfolio
