// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/consequences.h"

namespace setfolio {

bool bringsPoint(const Rulebook&, SanctionLevel level) {
    return level == SanctionLevel::Penalty;
}

bool countsAsSubstitution(const Rulebook& rulebook, const TeamInSet& team, SubstitutionKind kind) {
    return kind == SubstitutionKind::Regular || team.substitutions < rulebook.substitutionLimit;
}

bool timeOutRenewsRequests(const Rulebook&) {
    return true;
}

} // namespace setfolio
