// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/bench.h"

#include <algorithm>
#include <set>

namespace setfolio {

std::vector<BenchPlayer> benchOf(const MatchState& state, Team team) {
    const TeamInSet& own = state.set().teams[team];
    std::set<ShirtNumber> numbers;
    for (const RosterPlayer& player : state.rosters[team].players)
        numbers.insert(player.number);
    for (const Slot slot : allSlots)
        for (const Standing& standing : own.slots[slot.index()])
            numbers.insert(standing.number);
    for (const ShirtNumber libero : liberosOf(own))
        numbers.erase(libero);
    for (const Slot slot : allSlots)
        numbers.erase(onCourt(own, slot));
    std::vector<BenchPlayer> bench;
    for (const ShirtNumber number : numbers)
        bench.push_back({number, slotOf(own, number)});
    return bench;
}

std::vector<BenchPlayer> sixOf(const MatchState& state, Team team) {
    const TeamInSet& own = state.set().teams[team];
    std::vector<BenchPlayer> six;
    for (const Slot slot : allSlots)
        if (onCourt(own, slot).isValid())
            six.push_back({onCourt(own, slot), slot});
    return six;
}

} // namespace setfolio
