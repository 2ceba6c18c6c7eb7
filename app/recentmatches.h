// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The matches opened last, as the start page lists them.
#pragma once

#include "core/match/state.h"
#include "ui/dialogs/startpage.h"

#include <QLocale>
#include <QStringList>

#include <optional>
#include <vector>

namespace setfolio {

inline constexpr qsizetype recentAtMost = 8;

/// The list with `path` at its head, once, and no longer than that.
[[nodiscard]] QStringList withNewest(const QStringList& paths, const QString& path);

/// Kept in the user's settings.
[[nodiscard]] QStringList recentPaths();
void rememberMatch(const QString& path);

/// Those of the paths that can still be read, with their names and results.
[[nodiscard]] std::vector<RecentMatch> recentMatches(const QStringList& paths, const QLocale& locale);
/// The newest of them, for a new match to be begun from; an empty state if there is none.
[[nodiscard]] MatchState newestMatch(const QStringList& paths);

} // namespace setfolio
