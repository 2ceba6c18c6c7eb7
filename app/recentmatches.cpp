// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "app/recentmatches.h"

#include "core/ledger/ledger.h"
#include "core/match/fold.h"
#include "ui/wording/openwords.h"

#include <QSettings>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

const QString key = u"recent-matches"_s;

/// What a file holds, as far as it is whole; an empty state if it holds no match.
MatchState stateIn(const QString& path) {
    const auto content = readLedgerFile(path);
    return content ? fold(content->entries) : MatchState();
}

} // namespace

QStringList withNewest(const QStringList& paths, const QString& path) {
    QStringList list{path};
    for (const QString& other : paths)
        if (other != path && list.size() < recentAtMost)
            list += other;
    return list;
}

QStringList recentPaths() {
    return QSettings().value(key).toStringList();
}

void rememberMatch(const QString& path) {
    QSettings().setValue(key, withNewest(recentPaths(), path));
}

std::vector<RecentMatch> recentMatches(const QStringList& paths, const QLocale& locale) {
    std::vector<RecentMatch> matches;
    for (const QString& path : paths)
        if (const MatchState state = stateIn(path); state.opened)
            matches.push_back({path, matchTitle(state), matchDetail(state, locale)});
    return matches;
}

MatchState newestMatch(const QStringList& paths) {
    for (const QString& path : paths)
        if (MatchState state = stateIn(path); state.opened)
            return state;
    return {};
}

} // namespace setfolio
