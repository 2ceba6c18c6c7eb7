// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Who can come in and who can go out, as the numbers to be tapped.
#pragma once

#include "core/match/state.h"

#include <optional>
#include <vector>

namespace setfolio {

/// A player and the slot she belongs to: the one she stands in, or is bound to because she has stood there.
struct BenchPlayer {
    ShirtNumber number;
    std::optional<Slot> slot;
    bool operator==(const BenchPlayer&) const = default;
};

/// The roster without the six on court and the liberos of the set, and those who have left the court, by number.
[[nodiscard]] std::vector<BenchPlayer> benchOf(const MatchState& state, Team team);
/// The six on court, slot I to VI; empty before the line-up.
[[nodiscard]] std::vector<BenchPlayer> sixOf(const MatchState& state, Team team);

} // namespace setfolio
