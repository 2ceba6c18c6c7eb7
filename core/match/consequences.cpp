// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/consequences.h"

#include <algorithm>

namespace setfolio {

bool bringsPoint(const Rulebook& rulebook, SanctionLevel level) {
    const std::vector<CardStep>& ladder = rulebook.conductLadder;
    const auto step = std::ranges::find(ladder, level, &CardStep::level);
    // A level that this rulebook does not know is the referee's word: what most rulebooks make of it.
    return step == ladder.end() ? level == SanctionLevel::Penalty : step->point;
}

bool countsAsSubstitution(const Rulebook& rulebook, int used, SubstitutionKind kind) {
    if (kind == SubstitutionKind::Regular)
        return true;
    return rulebook.exceptionalCount == ExceptionalCount::WhileAnyLeft && used < rulebook.substitutionLimit;
}

bool timeOutRenewsRequests(const Rulebook& rulebook) {
    return rulebook.secondRequest == SecondRequest::AfterRallyOrTimeOut;
}

} // namespace setfolio
