// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Entries that begin, frame and end a set.
#pragma once

#include "core/match/ids.h"

#include <QTime>

#include <array>
#include <optional>
#include <vector>

namespace setfolio {

/// Who serves first in the coming set and who stands left of the scorer. Due before the first and the deciding set;
/// in the other sets the first serve alternates and the sides change of themselves, and a Toss says otherwise.
struct Toss {
    Team servesFirst = Team::Home;
    Team left = Team::Home;
    bool operator==(const Toss&) const = default;
};

/// A line-up as the slip gives it: by court position 1 to 6. A later one takes the place of the earlier until the set
/// starts.
struct LineUp {
    Team team = Team::Home;
    std::array<ShirtNumber, 6> positions; ///< index 0 is court position 1
    std::optional<ShirtNumber> captain;
    std::vector<ShirtNumber> liberos;
    bool operator==(const LineUp&) const = default;
};

/// The whistle for the first serve. `at` is the local time of day written on the sheet.
struct SetStarted {
    QTime at;
    bool operator==(const SetStarted&) const = default;
};

/// The second referee has confirmed that the set is won. `at` is the local time of day written on the sheet.
struct SetEnded {
    QTime at;
    bool operator==(const SetEnded&) const = default;
};

/// The teams have changed sides in the middle of a set: in a deciding set, or because someone saw it late. The score
/// stands as it is.
struct SidesChanged {
    bool operator==(const SidesChanged&) const = default;
};

} // namespace setfolio
