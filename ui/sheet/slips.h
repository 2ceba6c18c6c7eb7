// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "ui/sheet/compose.h"

namespace setfolio {

/// Line-up slips for the benches, four to a page, to be cut apart: for each set still to be begun one a team, with the
/// team, its roster and the set; all sets when none is left. The six places are as the coach sees them, net in front.
[[nodiscard]] std::vector<Page> composeSlips(const MatchRecord& record, const SheetOptions& options);

/// A page of four slips with nothing filled in but the competition.
[[nodiscard]] std::vector<Page> composeBlankSlips(const MatchHeading& heading, const SheetOptions& options);

} // namespace setfolio
