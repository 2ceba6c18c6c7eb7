// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The entries as a table for a spreadsheet: RFC 4180, UTF-8, a line an entry in the order of play.
#pragma once

#include "core/match/fold.h"

#include <QByteArray>

#include <span>

namespace setfolio {

/// Whether a spreadsheet takes a cell that begins so for a formula: =, +, -, @, the same as wide signs, a tab, a
/// carriage return.
[[nodiscard]] bool runsInASpreadsheet(QChar first);

/// The text with an apostrophe before each place where a spreadsheet would begin a formula: at the start, and after
/// what separates cells in some country.
[[nodiscard]] QString harmless(const QString& text);

/// A cell by RFC 4180: in quotes where it needs them.
[[nodiscard]] QString quotedCell(QString text);

/// A harmless cell by RFC 4180, in which nothing turns the order of words round.
[[nodiscard]] QString csvCell(const QString& text);

/// Every entry, those struck among them. The columns are described in the manual page.
[[nodiscard]] QByteArray csvOf(std::span<const Recorded> entries);

} // namespace setfolio
