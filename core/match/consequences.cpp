// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/consequences.h"

namespace setfolio {

bool bringsPoint(const Rulebook&, SanctionLevel level) {
    return level == SanctionLevel::Penalty;
}

bool countsAsSubstitution(const Rulebook& rulebook, int used, SubstitutionKind kind) {
    return kind == SubstitutionKind::Regular || used < rulebook.substitutionLimit;
}

bool timeOutRenewsRequests(const Rulebook&) {
    return true;
}

} // namespace setfolio
