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

bool changesSidesAfter(const Rulebook& rulebook, int number) {
    switch (rulebook.changeSides) {
    case SideChange::EachSet:
    case SideChange::EachSetButDeciding:
        return true;
    case SideChange::AfterSecondSet:
        return number == 2;
    case SideChange::NoChange:
        return false;
    }
    Q_UNREACHABLE();
}

bool timeOutRenewsRequests(const Rulebook& rulebook) {
    return rulebook.secondRequest == SecondRequest::AfterRallyOrTimeOut;
}

std::optional<SanctionLevel> sentOffBy(const MatchState& state, Team team, const Member& who) {
    std::optional<SanctionLevel> out;
    for (const SanctionGiven& given : state.sanctions) {
        const auto* level = std::get_if<SanctionLevel>(&given.level);
        if (!level || given.team != team || given.who != who)
            continue;
        const bool forTheSet = *level == SanctionLevel::Expulsion && given.set == state.set().number;
        if (forTheSet || *level == SanctionLevel::Disqualification)
            out = std::max(out.value_or(*level), *level);
    }
    return out;
}

} // namespace setfolio
