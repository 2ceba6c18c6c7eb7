// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/proposals.h"

#include "core/match/consequences.h"
#include "core/rules/judge.h"

#include <algorithm>
#include <ranges>

namespace setfolio {

namespace {

constexpr CourtPosition serverPlace(1);
constexpr CourtPosition justInFront(4);

/// Whom a number changed with last in a slot of this list.
std::optional<ShirtNumber> partnerIn(const std::vector<Standing>& slot, ShirtNumber number) {
    for (std::size_t place = slot.size(); place-- > 1;) {
        if (slot[place].number == number)
            return slot[place - 1].number;
        if (slot[place - 1].number == number)
            return slot[place].number;
    }
    return std::nullopt;
}

/// Of this set first, then of those before, the newest first.
std::optional<ShirtNumber> partnerOf(const MatchState& state, Team team, ShirtNumber number) {
    for (const SetState& set : state.sets | std::views::reverse)
        for (const std::vector<Standing>& slot : set.teams[team].slots)
            if (const auto partner = partnerIn(slot, number); partner && partner->isValid())
                return partner;
    return std::nullopt;
}

bool isChangedNow(const SetState& set, const std::vector<Standing>& slot) {
    const EntryNumber lastPoint = set.points.empty() ? EntryNumber() : set.points.back().entry;
    return slot.size() > 1 && slot.back().since > lastPoint;
}

/// None where it would not be lawful.
std::optional<Substitution> changeIn(const MatchState& state, Team team, CourtPosition position) {
    const SetState& set = state.set();
    const TeamInSet& own = set.teams[team];
    const Slot slot = slotAt(set, team, position);
    const std::vector<Standing>& stood = own.slots[slot.index()];
    const ShirtNumber out = onCourt(own, slot);
    if (!out.isValid() || isChangedNow(set, stood) || (position == justInFront && stood.size() < 2))
        return std::nullopt;
    const std::optional<ShirtNumber> in = partnerOf(state, team, out);
    if (!in)
        return std::nullopt;
    const Substitution change{team, *in, out};
    return judge(state, change).empty() ? std::optional(change) : std::nullopt;
}

/// Back for a player whose substitution was ruled illegal.
std::optional<Substitution> changeBack(const MatchState& state, Team team) {
    const TeamInSet& own = state.set().teams[team];
    for (const Slot slot : allSlots)
        if (const auto back = replacedUnlawfully(own, slot)) {
            const Substitution change{team, *back, onCourt(own, slot)};
            return judge(state, change).empty() ? std::optional(change) : std::nullopt;
        }
    return std::nullopt;
}

bool isUnderWay(const MatchState& state) {
    return phaseOf(state) == Phase::ReadyToServe && state.set().teams.home.lineUp && state.set().teams.visitors.lineUp;
}

} // namespace

std::optional<Substitution> proposedSubstitution(const MatchState& state, Team team) {
    if (!isUnderWay(state))
        return std::nullopt;
    if (const auto back = changeBack(state, team))
        return back;
    const bool serves = state.set().serving == team;
    const auto forServer = serves ? changeIn(state, team, serverPlace) : std::nullopt;
    return forServer ? forServer : changeIn(state, team, justInFront);
}

std::optional<LiberoIn> proposedReplacement(const MatchState& state, Team team) {
    if (!isUnderWay(state))
        return std::nullopt;
    const SetState& set = state.set();
    const TeamInSet& own = set.teams[team];
    if (liberosOf(own).empty() || own.libero)
        return std::nullopt;
    const Slot slot = slotAt(set, team, serverPlace);
    const bool servesElsewhere = set.serving == team && own.liberoSlot && *own.liberoSlot != slot;
    const bool stillLibero = own.liberoServed && std::ranges::count(liberosOf(own), *own.liberoServed) > 0;
    const ShirtNumber libero = stillLibero ? *own.liberoServed : liberosOf(own).front();
    const LiberoIn in{team, libero, onCourt(own, slot)};
    return servesElsewhere || !judge(state, in).empty() ? std::nullopt : std::optional(in);
}

} // namespace setfolio
