// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/eligibility.h"

#include "core/match/consequences.h"
#include "core/rules/makefinding.h"

#include <algorithm>

namespace setfolio {
namespace {

bool contains(const std::vector<ShirtNumber>& numbers, ShirtNumber number) {
    return std::ranges::find(numbers, number) != numbers.end();
}

/// The sets whose bans hold in the present one: itself, or all so far. A set that was broken off is the present one
/// begun anew.
bool holdsNow(const MatchState& state, const SetState& set, Scope scope) {
    return scope == Scope::Match || set.number == state.set().number;
}

bool replacedForGood(const MatchState& state, Team team, ShirtNumber number) {
    return std::ranges::any_of(state.sets, [&](const SetState& set) {
        const std::vector<ExceptionalOut>& outs = set.teams[team].exceptionalOuts;
        return holdsNow(state, set, state.rulebook().exceptionalOutFor) &&
               std::ranges::find(outs, number, &ExceptionalOut::out) != outs.end();
    });
}

void addNew(std::vector<ShirtNumber>& numbers, ShirtNumber number) {
    if (number.isValid() && !contains(numbers, number))
        numbers.push_back(number);
}

} // namespace

std::optional<Finding> keptOut(const MatchState& state, Team team, ShirtNumber number) {
    if (const auto level = sentOffBy(state, team, number)) {
        Finding out = unlawful(FindingKind::SentOff, "conduct-ladder", team, number);
        out.level = *level;
        return out;
    }
    if (replacedForGood(state, team, number))
        return unlawful(FindingKind::ReplacedForGood, "exceptional-out-for", team, number);
    if (isGivenUpAsLibero(state, team, number))
        return unlawful(FindingKind::GivenUpAsLibero, "libero-unable", team, number);
    return std::nullopt;
}

bool isLibero(const TeamInSet& team, ShirtNumber number) {
    return contains(liberosOf(team), number);
}

bool isOfTeam(const MatchState& state, Team team, ShirtNumber number) {
    return state.rosters[team].players.empty() || playerOf(state, team, number);
}

ShirtNumber standsIn(const TeamInSet& team, Slot slot) {
    return team.libero && team.libero->slot == slot ? team.libero->libero : onCourt(team, slot);
}

std::vector<ShirtNumber> offCourtOf(const MatchState& state, Team team) {
    const TeamInSet& own = state.set().teams[team];
    std::vector<ShirtNumber> known;
    for (const RosterPlayer& player : state.rosters[team].players)
        addNew(known, player.number);
    if (known.empty()) {
        for (const std::vector<Standing>& stood : own.slots)
            for (const Standing& standing : stood)
                addNew(known, standing.number);
        for (const ShirtNumber libero : liberosOf(own))
            addNew(known, libero);
    }
    std::erase_if(known, [&](ShirtNumber number) { return slotToLeave(own, number).has_value(); });
    return known;
}

} // namespace setfolio
