// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/tracking.h"

#include "core/match/fold.h"

namespace setfolio {
namespace {

/// Who stands in a slot now: a libero in the place of its player, or the player.
struct OnPlace {
    ShirtNumber number;
    bool libero = false;
    bool operator==(const OnPlace&) const = default;
};

OnPlace standingIn(const TeamInSet& team, Slot slot) {
    if (team.libero && team.libero->slot == slot)
        return {team.libero->libero, true};
    return {onCourt(team, slot), false};
}

Arrival arrivalOf(const OnPlace& before, const OnPlace& now) {
    if (now.libero)
        return Arrival::LiberoIn;
    return before.libero ? Arrival::LiberoOut : Arrival::Substitution;
}

void takeSlot(TrackedSlot& slot, const OnPlace& before, const OnPlace& now, const PerTeam<int>& score,
              EntryNumber entry) {
    if (before == now)
        return;
    slot.arrivals.push_back({arrivalOf(before, now), now.number, score, entry});
}

/// A line-up or a toss writes the slots anew: nothing that stood in them before counts.
void begin(TrackedTeam& team, const TeamInSet& now) {
    for (const Slot slot : allSlots)
        team.slots[slot.index()] = {onCourt(now, slot), {}};
}

bool writesSlots(const Entry& entry) {
    return std::holds_alternative<LineUp>(entry) || std::holds_alternative<Toss>(entry);
}

bool bringsLibero(const Entry& entry, Team team) {
    const auto* in = std::get_if<LiberoIn>(&entry);
    return in && in->team == team;
}

void take(std::vector<PerTeam<TrackedTeam>>& sets, const MatchState& before, const MatchState& now,
          const Recorded& recorded) {
    if (now.sets.empty())
        return;
    const bool sameSet = before.sets.size() == now.sets.size();
    sets.resize(now.sets.size());
    if (now.sets.size() < before.sets.size()) // one that was not begun is not due any more
        return;
    const SetState& set = now.set();
    const PerTeam<int> score{set.teams.home.points, set.teams.visitors.points};
    for (const Team team : bothTeams) {
        TrackedTeam& tracked = sets.back()[team];
        if (!sameSet || writesSlots(recorded.entry)) {
            begin(tracked, set.teams[team]);
            continue;
        }
        for (const Slot slot : allSlots)
            takeSlot(tracked.slots[slot.index()], standingIn(before.set().teams[team], slot),
                     standingIn(set.teams[team], slot), score, recorded.number);
        tracked.kept |= bringsLibero(recorded.entry, team);
    }
}

} // namespace

std::vector<PerTeam<TrackedTeam>> trackSets(std::span<const Recorded> entries) {
    std::vector<PerTeam<TrackedTeam>> sets;
    MatchState state;
    for (const TimelineItem& item : timelineOf(entries)) {
        if (!item.stands())
            continue;
        MatchState now = apply(state, *item.recorded);
        take(sets, state, now, *item.recorded);
        state = std::move(now);
    }
    return sets;
}

} // namespace setfolio
