// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Questions about what is signed and sealed. In each, `set` is the number of a set, none for the match.
#pragma once

#include "core/match/state.h"

namespace setfolio {

/// Everybody who signs by the rulebook, in its order; captains and coaches the home team's first.
[[nodiscard]] std::vector<Signatory> signatoriesOf(const Rulebook& rulebook);
/// The sign-off that is in force, sealed or being signed; nullptr if there is none.
[[nodiscard]] const SignOff* signOffOf(const MatchState& state, std::optional<int> set);
/// Whether the set, or the match as a whole, stands under a seal in force; the match's seal covers each set.
[[nodiscard]] bool isSealed(const MatchState& state, std::optional<int> set);
/// Whether it can be signed: the set has ended, the match is closed.
[[nodiscard]] bool canBeSigned(const MatchState& state, std::optional<int> set);
/// Who has neither signed nor been left unsigned, in the rulebook's order.
[[nodiscard]] std::vector<Signatory> signaturesDue(const MatchState& state, std::optional<int> set);
/// The name that stands at the head of the match for somebody who signs; empty where none does.
[[nodiscard]] QString printedNameOf(const std::vector<Official>& officials, const PerTeam<Roster>& rosters,
                                    const Signatory& who);
/// Whether the rulebook asks for it, it can be signed, and it is not sealed.
[[nodiscard]] bool isSignOffDue(const MatchState& state, std::optional<int> set);

/// A set or the match, as far as signing goes.
struct SignedPart {
    std::optional<int> set; ///< none: the match
    bool operator==(const SignedPart&) const = default;
};
/// What is to be signed next: the sets in order, then the match; none while nothing is due.
[[nodiscard]] std::optional<SignedPart> firstSignOffDue(const MatchState& state);
/// What was sealed last and still is; none where no seal is in force.
[[nodiscard]] std::optional<SignedPart> newestSealed(const MatchState& state);

} // namespace setfolio
