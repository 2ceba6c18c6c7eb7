// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A match as a file for others.
#pragma once

#include "core/ledger/ledgererror.h"
#include "core/match/entry.h"

#include <QByteArray>

#include <tl/expected.hpp>

#include <array>
#include <span>

namespace setfolio {

enum class ExportForm : std::uint8_t {
    Json,      ///< what stands on the sheets; exportjson.h
    Csv,       ///< the entries as a table; exportcsv.h
    MatchFile, ///< the entries as a ledger; without names it is a match file of its own
};
inline constexpr std::array allExportForms{ExportForm::MatchFile, ExportForm::Csv, ExportForm::Json};

/// The bytes of such a file. In JSON control and format characters stand as escapes. A ledger has the bytes of the one
/// that the entries come from if Setfolio wrote it, unless names were left out of them; the error is that of an entry
/// that cannot be recorded.
[[nodiscard]] tl::expected<QByteArray, LedgerError> exported(std::span<const Recorded> entries, ExportForm form);

/// "setfolio", "csv", "json": how the names of such files end.
[[nodiscard]] QString endingOf(ExportForm form);

} // namespace setfolio
