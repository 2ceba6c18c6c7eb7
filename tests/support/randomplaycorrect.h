// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The same match as a scorer who makes mistakes would have recorded it: entries too many, wrong ones and missing ones,
/// each put right by a correction later on.
#pragma once

#include "tests/support/randomplay.h"

namespace setfolio::testing {

/// How often, in thousandths of the entries.
struct Mistakes {
    int struckLater = 15;   ///< an entry too many, struck
    int redone = 5;         ///< an entry undone, and the undoing undone
    int instead = 15;       ///< a wrong entry, and the right one in its place
    int insteadTwice = 250; ///< of those, another wrong one in the place first
    int forgotten = 15;     ///< an entry put in before a later one
    int within = 8;         ///< the correction comes at most so many entries later
};

struct Corrected {
    std::vector<Recorded> entries;
    /// For each entry, the number it has in the ledger without mistakes; 0 for what is not in it.
    std::vector<std::uint32_t> rightNumbers;
    int corrections = 0;
};

/// Adds up to the same match as `right`, which holds no corrections.
[[nodiscard]] Corrected withMistakes(const std::vector<Recorded>& right, std::uint32_t seed, Mistakes mistakes = {});

/// The state with every entry number put through `rightNumbers`, so that two ledgers of one match can be compared.
[[nodiscard]] MatchState renumbered(MatchState state, const std::vector<std::uint32_t>& rightNumbers);

} // namespace setfolio::testing
