// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/nextsanction.h"

#include <algorithm>

namespace setfolio {

namespace {

bool isRemembered(const MatchState& state, Scope scope, int set) {
    return scope == Scope::Match || set == state.set().number;
}

/// The index of a level on the ladder, -1 for one that the ladder does not have.
int rungOf(const std::vector<CardStep>& ladder, SanctionLevel level) {
    const auto found = std::ranges::find(ladder, level, &CardStep::level);
    return found == ladder.end() ? -1 : static_cast<int>(found - ladder.begin());
}

} // namespace

SanctionLevel nextConductLevel(const MatchState& state, Team team, const Member& who) {
    const Rulebook& rulebook = state.rulebook();
    const std::vector<CardStep>& ladder = rulebook.conductLadder;
    int highest = -1;
    for (const SanctionGiven& given : state.sanctions) {
        const auto* level = std::get_if<SanctionLevel>(&given.level);
        if (!level || given.team != team || !isRemembered(state, rulebook.conductScope, given.set))
            continue;
        if (given.who == who && rulebook.conductStepsUp)
            highest = std::max(highest, rungOf(ladder, *level));
        else if (rulebook.conductWarnedOnce == WarnedOnce::Team && *level == SanctionLevel::Warning)
            highest = std::max(highest, rungOf(ladder, *level));
    }
    if (ladder.empty())
        return SanctionLevel::Warning;
    return ladder[static_cast<std::size_t>(std::min(highest + 1, static_cast<int>(ladder.size()) - 1))].level;
}

DelayLevel nextDelayLevel(const MatchState& state, Team team) {
    const bool delayed = std::ranges::any_of(state.sanctions, [&](const SanctionGiven& given) {
        return given.team == team && std::holds_alternative<DelayLevel>(given.level) &&
               isRemembered(state, state.rulebook().delayScope, given.set);
    });
    return delayed ? DelayLevel::Penalty : DelayLevel::Warning;
}

bool improperRequestIsFirst(const MatchState& state, Team team) {
    return state.rulebook().improperRequest == ImproperRequestRule::RecordedFirst &&
           std::ranges::find(state.improperRequests, team, &ImproperRequestMade::team) == state.improperRequests.end();
}

} // namespace setfolio
