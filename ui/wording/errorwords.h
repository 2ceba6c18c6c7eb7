// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What went wrong with a file, said to the person who wanted it: which file, which line, and what to do.
#pragma once

#include "core/ledger/entryjson.h"
#include "core/ledger/ledger.h"
#include "core/rules/rulebook.h"

#include <QString>

namespace setfolio {

/// The file, the line where it is about one, and the way out; the system's own words in brackets.
[[nodiscard]] QString sentence(const LedgerError& error);
/// That the last line of `path` was cut short, that nothing recorded is lost, and where the rest of it went.
[[nodiscard]] QString sentence(const TornTail& torn, const QString& path);
/// Likewise for a file that is read or written whole, such as a printed sheet or an export.
[[nodiscard]] QString sentence(const FileError& error);
/// What is wrong with an entry; the caller says in which line.
[[nodiscard]] QString sentence(const EntryJsonError& error);
/// What is wrong with a rulebook, and at which setting.
[[nodiscard]] QString sentence(const RulebookError& error);

} // namespace setfolio
