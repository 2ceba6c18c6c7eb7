// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the program `recorder` records, so that a test that kills it knows what must be there.
#pragma once

#include "tests/core/ledger/everykind.h"

namespace setfolio::testing {

/// The entry of a number: the opening, then long remarks and short entries in turn.
inline Entry recordedEntry(std::uint32_t number) {
    if (number == 1)
        return everyKind().front();
    if (number % 5 == 0)
        return Remark{QString(static_cast<qsizetype>(number * 37 % 900), u'r')};
    return number % 2 == 0 ? Entry(ServeContacted{}) : Entry(RallyWon{number % 3 == 0 ? Team::Home : Team::Visitors});
}

} // namespace setfolio::testing
