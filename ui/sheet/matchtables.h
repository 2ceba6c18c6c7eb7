// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The tables of the page of the match, for a width in millimetres.
#pragma once

#include "ui/sheet/scene.h"
#include "ui/sheet/table.h"

namespace setfolio::sheet {

/// Number, name, captain and libero; where no roster was handed in, rows to write in.
[[nodiscard]] Table rosterTable(const MatchRecord& record, Team team, double width);
/// Every set to be played, with the points as the result of the match states them; their sum.
[[nodiscard]] Table resultTable(const MatchRecord& record, const QLocale& locale, double width);
[[nodiscard]] Table officialsTable(const MatchRecord& record, double width);
[[nodiscard]] Table sanctionsTable(const MatchRecord& record, double width);
/// The remarks of all sets, each with its set and its number on the sheet of that set.
[[nodiscard]] Table remarksTable(const MatchRecord& record, double width);

} // namespace setfolio::sheet
