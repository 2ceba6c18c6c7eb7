// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Who stood in each slot of a set, libero replacements among the substitutions: what the assistant scorer tracks.
#pragma once

#include "core/match/entry.h"
#include "core/match/state.h"

#include <span>
#include <vector>

namespace setfolio {

/// How a number came to stand in a slot.
enum class Arrival : std::uint8_t {
    Substitution, ///< of any kind; an invalid number: the place has become vacant
    LiberoIn,     ///< she has taken the place of the player before her, or of the other libero
    LiberoOut,    ///< the libero has left, the player of the six stands here again
};

struct TrackedArrival {
    Arrival how = Arrival::Substitution;
    ShirtNumber number;
    PerTeam<int> score; ///< at that moment
    EntryNumber entry;
    bool operator==(const TrackedArrival&) const = default;
};

/// A slot: who began in it, and who came after her, in the order of play.
struct TrackedSlot {
    ShirtNumber starter; ///< invalid before the line-up
    std::vector<TrackedArrival> arrivals;
    bool operator==(const TrackedSlot&) const = default;
};

struct TrackedTeam {
    std::array<TrackedSlot, 6> slots;
    bool kept = false; ///< whether replacements of a libero were recorded at all
    bool operator==(const TrackedTeam&) const = default;
};

/// The sets of the match in order, those cancelled and played again among them: as many as the state has.
[[nodiscard]] std::vector<PerTeam<TrackedTeam>> trackSets(std::span<const Recorded> entries);

} // namespace setfolio
