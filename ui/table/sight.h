// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include <cstdint>

namespace setfolio {

/// How much of the sheet is seen in the table's window.
enum class Sight : std::uint8_t {
    LiveBand,  ///< both teams' blocks, moving down with the score
    PageWidth, ///< the page from side to side
    WholePage,
    Enlarged, ///< at a scale of the scorer's choice; an entry's mark comes into sight when it is made
};

} // namespace setfolio
