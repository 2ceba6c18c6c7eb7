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
    return std::ranges::any_of(
        state.sets, [&](const SetState& played) { return played.number == *set && played.ended && !played.cancelled; });
}

std::vector<Signatory> signaturesDue(const MatchState& state, std::optional<int> set) {
    std::vector<Signatory> due = signatoriesOf(state.rulebook());
    if (const SignOff* signOff = signOffOf(state, set))
        std::erase_if(due, [&](const Signatory& who) {
            return std::ranges::find(signOff->signatures, who, &SignatureGiven::who) != signOff->signatures.end();
        });
    return due;
}

QString printedNameOf(const std::vector<Official>& officials, const PerTeam<Roster>& rosters, const Signatory& who) {
    const auto official = [&](Role role) {
        const auto found = std::ranges::find(officials, role, &Official::role);
        return found == officials.end() ? QString() : found->name.simplified();
    };
    const Roster& roster = rosters[who.team.value_or(Team::Home)];
    const auto captain = std::ranges::find(roster.players, true, &RosterPlayer::captain);
    switch (who.role) {
    case Signer::Scorer:
        return official(Role::Scorer);
    case Signer::AssistantScorer:
        return official(Role::AssistantScorer);
    case Signer::SecondReferee:
        return official(Role::SecondReferee);
    case Signer::FirstReferee:
        return official(Role::FirstReferee);
    case Signer::Captains:
        return captain == roster.players.end() ? QString() : captain->name.simplified();
    case Signer::Coaches:
        return roster.coach.simplified();
    }
    Q_UNREACHABLE();
}

bool isSignOffDue(const MatchState& state, std::optional<int> set) {
    const bool asked = !set || state.rulebook().signedFor == Scope::Set;
    return asked && canBeSigned(state, set) && !isSealed(state, set);
}

std::optional<SignedPart> firstSignOffDue(const MatchState& state) {
    for (const SetState& set : state.sets)
        if (!set.cancelled && isSignOffDue(state, set.number))
            return SignedPart{set.number};
    return state.opened && isSignOffDue(state, std::nullopt) ? std::optional(SignedPart{}) : std::nullopt;
}

std::optional<SignedPart> newestSealed(const MatchState& state) {
    std::optional<SignedPart> newest;
    EntryNumber seal;
    for (const SignOff& signOff : state.signOffs)
        if (signOff.seal && !signOff.reopened && *signOff.seal > seal) {
            newest = SignedPart{signOff.set};
            seal = *signOff.seal;
        }
    return newest;
}

} // namespace setfolio
