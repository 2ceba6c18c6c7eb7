// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/fold.h"

#include "core/match/applier.h"

namespace setfolio {

MatchState apply(MatchState state, const Recorded& entry) {
    std::visit(Applier(state, entry), entry.entry);
    state.last = entry.number;
    return state;
}

} // namespace setfolio
