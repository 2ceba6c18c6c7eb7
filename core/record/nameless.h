// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A match without anybody's name, for whoever needs the play and not the people.
#pragma once

#include "core/match/entry.h"

#include <span>
#include <vector>

namespace setfolio {

/// Whose names are printed, exported or saved.
enum class Names : std::uint8_t {
    Given,   ///< as the match has them
    LeftOut, ///< numbers only
};

/// The entries with every name left out, and the strokes of signatures; seals are those of the original, and the
/// opening says so. Names that the match knows are also taken out of reasons and remarks, each as a whole and word by
/// word; what else is written there stays. Numbers, order and times are the same. Nothing changes the second time.
[[nodiscard]] std::vector<Recorded> withoutNames(std::span<const Recorded> entries);

/// Whether anybody is named: in a roster, among officials, or by a signature.
[[nodiscard]] bool holdNames(std::span<const Recorded> entries);

} // namespace setfolio
