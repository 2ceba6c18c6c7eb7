// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A roster out of a text that was pasted from a spreadsheet or read from a CSV file.
#pragma once

#include "ui/dialogs/rosterrows.h"

namespace setfolio {

struct RosterText {
    std::vector<RosterRow> rows;
    std::vector<RosterProblem> problems; ///< of the text itself; problemsOf() finds those of the rows
};

/// Reads number, name, captain, libero. A first row of headings gives the order of the columns, unknown ones are passed
/// over; without headings the columns are in this order, or name before number. A line with nothing but a number, or
/// with "7 Ada Lund" in one column, is a player too. "C" and "L" mark captain and libero in any column after the name,
/// and in brackets behind the name.
[[nodiscard]] RosterText rosterFromText(const QString& text);

} // namespace setfolio
