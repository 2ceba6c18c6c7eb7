// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/moment.h"

namespace setfolio {

Moment momentOf(const MatchState& state) {
    if (!state.sets.empty())
        return momentAt(state, state.sets.size() - 1);
    Moment moment;
    moment.phase = phaseOf(state);
    return moment;
}

Moment momentAt(const MatchState& state, std::size_t place) {
    Moment moment;
    const SetState& set = state.sets[place];
    moment.phase = &set == &state.set() ? phaseOf(state) : Phase::SetWon;
    moment.sheet = static_cast<int>(place) + 1;
    moment.serving = set.serving;
    moment.contacted = set.contacted;
    moment.rally = set.rallies + 1;
    moment.server = serverOf(set);
    moment.liberoServes = liberoAtServe(set).has_value();
    moment.pointsDue = state.pointsDue;
    for (const Team team : bothTeams) {
        moment.nextServer[team] = servingSlot(set, team);
        moment.termsBegun[team] = set.teams[team].termsBegun;
        moment.points[team] = set.teams[team].points;
        moment.liberos[team] = set.teams[team].libero;
    }
    return moment;
}

Moment momentOfNextSet(const MatchState& state) {
    Moment moment;
    moment.sheet = static_cast<int>(state.sets.size()) + 1;
    moment.phase = Phase::BeforeSet;
    moment.pointsDue = state.pointsDue;
    return moment;
}

Moment afterPenaltyPoint(Moment moment, Team team) {
    ++moment.points[team];
    if (team == moment.serving)
        return moment;
    moment.nextServer[moment.serving] = moment.nextServer[moment.serving].next();
    ++moment.termsBegun[team];
    moment.serving = team;
    moment.liberoServes = false;
    return moment;
}

} // namespace setfolio
