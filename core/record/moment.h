// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the pen must know of the moment before an entry.
#pragma once

#include "core/match/state.h"

#include <optional>
#include <vector>

namespace setfolio {

struct Moment {
    int sheet = 0; ///< the place of the set among the sheets, from 1; 0 when no match is open
    Phase phase = Phase::NotOpened;
    Team serving = Team::Home;
    PerTeam<Slot> nextServer;
    PerTeam<int> termsBegun;
    PerTeam<int> points;
    bool liberoServes = false;
    bool contacted = false;
    int rally = 0;               ///< the number of the rally that is played or comes next
    ShirtNumber server;          ///< who is to serve; invalid where the place is vacant
    std::vector<Team> pointsDue; ///< points that come with the start of the set
    PerTeam<std::optional<LiberoOnCourt>> liberos;
};

[[nodiscard]] Moment momentOf(const MatchState& state);
/// The moment before what changes the set at that place, from 0: the present one, or one that has ended.
[[nodiscard]] Moment momentAt(const MatchState& state, std::size_t place);
/// The moment before the set that follows a present one which the score has decided.
[[nodiscard]] Moment momentOfNextSet(const MatchState& state);
/// The moment after `team` has been given a point without a rally.
[[nodiscard]] Moment afterPenaltyPoint(Moment moment, Team team);

} // namespace setfolio
