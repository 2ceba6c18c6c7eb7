// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What is said about the sets that have been played, as rows for a table.
#pragma once

#include "core/match/state.h"

#include <optional>
#include <vector>

namespace setfolio {

struct SetResultRow {
    int number = 1;
    PerTeam<int> points;
    std::optional<Team> winner; ///< as the score says
    QTime from;
    QTime to;
    int minutes = -1; ///< from start to end, over midnight too; -1 when one of the times is not known
    bool operator==(const SetResultRow&) const = default;
};

/// The sets that have been started, in order.
[[nodiscard]] std::vector<SetResultRow> setResults(const MatchState& state);
/// The team that has won more sets than the other; none while they are level.
[[nodiscard]] std::optional<Team> leaderIn(const MatchState& state);

} // namespace setfolio
