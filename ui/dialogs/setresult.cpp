// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/setresult.h"

namespace setfolio {

namespace {

int minutesBetween(QTime from, QTime to) {
    constexpr int day = 24 * 60;
    if (!from.isValid() || !to.isValid())
        return -1;
    return (from.secsTo(to) / 60 + day) % day;
}

} // namespace

std::vector<SetResultRow> setResults(const MatchState& state) {
    std::vector<SetResultRow> rows;
    for (const SetState& set : state.sets) {
        if (!set.started)
            continue;
        rows.push_back({.number = set.number,
                        .points = {set.teams.home.points, set.teams.visitors.points},
                        .winner = set.winner,
                        .from = set.startedAt,
                        .to = set.endedAt,
                        .minutes = minutesBetween(set.startedAt, set.endedAt)});
    }
    return rows;
}

std::optional<Team> leaderIn(const MatchState& state) {
    const PerTeam<int> won = setsWon(state);
    if (won.home == won.visitors)
        return std::nullopt;
    return won.home > won.visitors ? Team::Home : Team::Visitors;
}

} // namespace setfolio
