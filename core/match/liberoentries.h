// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Entries about the libero: her replacements, which are no substitutions, and her serve.
#pragma once

#include "core/match/ids.h"

#include <QString>

#include <optional>

namespace setfolio {

enum class LiberoServing : std::uint8_t { Begins, Ends };

/// The libero serves in the place of the player whose term it is: from now to the end of the term, or until it ends
/// earlier. For a table that keeps no libero record, this is all that is written of her.
struct LiberoServe {
    Team team = Team::Home;
    ShirtNumber libero;
    LiberoServing serving = LiberoServing::Begins;
    bool operator==(const LiberoServe&) const = default;
};

/// A libero comes on for a player of the back row. Not a substitution, and not counted.
struct LiberoIn {
    Team team = Team::Home;
    ShirtNumber libero;
    ShirtNumber replaced; ///< the player whose place she takes
    bool operator==(const LiberoIn&) const = default;
};

/// The libero leaves and the player whose place she took comes back.
struct LiberoOut {
    Team team = Team::Home;
    ShirtNumber libero;
    bool operator==(const LiberoOut&) const = default;
};

/// One libero leaves and the other takes over, for the same player.
struct LiberoExchange {
    Team team = Team::Home;
    ShirtNumber in;
    ShirtNumber out;
    bool operator==(const LiberoExchange&) const = default;
};

/// A libero who cannot play on is given up, and another player may take her part for as long as the rulebook says.
struct LiberoRedesignated {
    Team team = Team::Home;
    ShirtNumber former;
    std::optional<ShirtNumber> libero; ///< none: the team goes on with the liberos that are left
    QString reason;
    bool operator==(const LiberoRedesignated&) const = default;
};

/// A replacement of a libero between the whistle and the contact of the serve was let pass, and the team told of it:
/// its next one will not be. The replacement is recorded by itself.
/// Source: FIVB Official Volleyball Rules 2025-2028, 19.3.2.5 and 19.3.2.6.
struct LateReplacement {
    Team team = Team::Home;
    bool operator==(const LateReplacement&) const = default;
};

} // namespace setfolio
