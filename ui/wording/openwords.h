// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What is said while a match is chosen, opened or begun.
#pragma once

#include "core/match/state.h"

#include <QLocale>
#include <QString>

namespace setfolio {

/// "Saltmarsh Herons – Quarry Ridge Larks"
[[nodiscard]] QString matchTitle(const MatchState& state);
[[nodiscard]] QString matchTitle(const MatchOpened& opened);
/// "14 October 2026, SAL 1–1 QRL in sets"; without the date where none is known.
[[nodiscard]] QString matchDetail(const MatchState& state, const QLocale& locale);

[[nodiscard]] QString fileStaysAsItIs();
[[nodiscard]] QString saveGoodPartWord();
[[nodiscard]] QString saveGoodPartTitle();
/// The name proposed for the copy: "a-whole.setfolio" for "a.setfolio".
[[nodiscard]] QString goodPartName(const QString& fileName);
[[nodiscard]] QString openMatchTitle();
[[nodiscard]] QString matchFilesFilter();

} // namespace setfolio
