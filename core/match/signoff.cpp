// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/signoff.h"

#include <algorithm>

namespace setfolio {

std::vector<Signatory> signatoriesOf(const Rulebook& rulebook) {
    std::vector<Signatory> signatories;
    for (const Signer role : rulebook.signingOrder) {
        if (role != Signer::Captains && role != Signer::Coaches)
            signatories.push_back({role, std::nullopt});
        else
            for (const Team team : bothTeams)
                signatories.push_back({role, team});
    }
    return signatories;
}

const SignOff* signOffOf(const MatchState& state, std::optional<int> set) {
    const auto found = std::find_if(state.signOffs.rbegin(), state.signOffs.rend(),
                                    [&](const SignOff& signOff) { return signOff.set == set && !signOff.reopened; });
    return found == state.signOffs.rend() ? nullptr : &*found;
}

bool isSealed(const MatchState& state, std::optional<int> set) {
    const SignOff* own = signOffOf(state, set);
    return (own && own->seal) || (set && isSealed(state, std::nullopt));
}

bool canBeSigned(const MatchState& state, std::optional<int> set) {
    if (!set)
        return state.closed;
    return std::ranges::any_of(state.sets,
                               [&](const SetState& played) { return played.number == *set && played.ended; });
}

std::vector<Signatory> signaturesDue(const MatchState& state, std::optional<int> set) {
    std::vector<Signatory> due = signatoriesOf(state.rulebook());
    if (const SignOff* signOff = signOffOf(state, set))
        std::erase_if(due, [&](const Signatory& who) {
            return std::ranges::find(signOff->signatures, who, &SignatureGiven::who) != signOff->signatures.end();
        });
    return due;
}

bool isSignOffDue(const MatchState& state, std::optional<int> set) {
    const bool asked = !set || state.rulebook().signedFor == Scope::Set;
    return asked && canBeSigned(state, set) && !isSealed(state, set);
}

} // namespace setfolio
