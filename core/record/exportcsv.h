// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The entries as a table for a spreadsheet: RFC 4180, UTF-8, a line an entry in the order of play.
#pragma once

#include "core/match/fold.h"

#include <QByteArray>

#include <span>

namespace setfolio {

/// A cell by RFC 4180. What a spreadsheet would take for a formula, because it begins with =, +, -, @, a tab or a
/// carriage return, gets an apostrophe before it.
[[nodiscard]] QString csvCell(const QString& text);

/// Every entry, those struck among them. The columns are described in the manual page.
[[nodiscard]] QByteArray csvOf(std::span<const Recorded> entries);

} // namespace setfolio
