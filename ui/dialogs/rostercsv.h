// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A roster as a CSV file (RFC 4180), for a spreadsheet.
#pragma once

#include "ui/dialogs/rosterrows.h"

#include <QByteArray>

namespace setfolio {

/// UTF-8 with a byte order mark, which spreadsheets ask for; lines end in CRLF. The headings are those that
/// rosterFromText() knows, so that a file comes back as it went out.
[[nodiscard]] QByteArray rosterCsv(std::span<const RosterRow> rows);

/// A cell that a spreadsheet would run as a formula, with an apostrophe before it, and before each part of it that one
/// with another separator would take for a cell; and without them again.
[[nodiscard]] QString harmlessCell(const QString& text);
[[nodiscard]] QString plainCell(const QString& text);

} // namespace setfolio
