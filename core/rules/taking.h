// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Which points a ruling may take back.
#pragma once

#include "core/match/state.h"

#include <optional>

namespace setfolio {

/// The points a team won in the present term of service, or, while it does not serve, in its last.
struct TermPoints {
    EntryNumber first; ///< the entry of the first; 0 when there is none
    int count = 0;
    bool operator==(const TermPoints&) const = default;
};

[[nodiscard]] TermPoints pointsOfTerm(const SetState& set, Team team);
/// The points of a team from one of this set on; none of them if the entry brought it no point.
[[nodiscard]] int pointsFrom(const SetState& set, Team team, EntryNumber first);

/// The entry that brought the first of the team's last `count` points; none when it has not won as many.
[[nodiscard]] std::optional<EntryNumber> firstOfLast(const SetState& set, Team team, int count);

/// What a rulebook says of it, and in which settings.
struct TakingRule {
    TakenBack points = TakenBack::PresentTerm;
    TakenBackUntil until = TakenBackUntil::NextServeContact;
    const char* pointsSetting = "";
    const char* untilSetting = "";
};
[[nodiscard]] TakingRule takingRuleOf(const Rulebook& rulebook, const WrongServer& ruling);
[[nodiscard]] TakingRule takingRuleOf(const Rulebook& rulebook, const IllegalPlayer& ruling);

/// Whether the rulebook still lets points be taken back from the team: it serves, or the opponents have not contacted
/// their next serve, or the moment of the fault is all that counts.
[[nodiscard]] bool mayStillTakeBack(const MatchState& state, Team team, const TakingRule& rule);

/// The first time-out or substitution, of either team, between the first of these points and now; a substitution that
/// was forced on a team is none.
[[nodiscard]] std::optional<EntryNumber> firstRequestSince(const SetState& set, const TakenBackPoints& taken);

/// The slot that served, or should have, when the team last had the serve; the present one while it has.
[[nodiscard]] Slot slotLastAtServe(const SetState& set, Team team);

} // namespace setfolio
