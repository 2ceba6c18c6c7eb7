// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the match's rulebook makes of an entry: the answers that the fold needs.
#pragma once

#include "core/match/state.h"

namespace setfolio {

/// Whether a card for misconduct brings the opponents a point and the serve.
[[nodiscard]] bool bringsPoint(const Rulebook& rulebook, SanctionLevel level);
/// Whether a substitution of this kind is one of the team's limited number, of which it has
/// `used` so many.
[[nodiscard]] bool countsAsSubstitution(const Rulebook& rulebook, int used, SubstitutionKind kind);
/// Who stood lawfully in a slot before a substitution that was ruled illegal; none unless who came in by it stands
/// there. Her coming back puts it right, and is no request and no substitution that counts. Source: FIVB Official
/// Volleyball Rules 2025-2028, 15.9.2.
[[nodiscard]] std::optional<ShirtNumber> replacedUnlawfully(const TeamInSet& team, Slot slot);
/// Whether the contact of a serve stands for the rally between two replacements of liberos, decided or not.
[[nodiscard]] bool contactIsLiberoRally(const Rulebook& rulebook);
/// Whether the teams change sides after set `number`, which is not followed by the deciding one.
[[nodiscard]] bool changesSidesAfter(const Rulebook& rulebook, int number);
/// Whether a time-out lets both teams ask for substitutions again in the same interruption.
[[nodiscard]] bool timeOutRenewsRequests(const Rulebook& rulebook);

/// The number of the set that a sanction or a point given now counts in: once the score decides a set, that of the next
/// one, if there is to be one. Sources: FIVB Official Volleyball Rules 2025-2028, 16.2.4 and 21.5.
[[nodiscard]] int setThatCounts(const MatchState& state);

/// Whether an entry counts in the set that follows the present one, and stands on its sheet: what is given once the
/// score has decided the present one.
[[nodiscard]] bool countsInNextSet(const MatchState& state, const Entry& entry);
/// Whether an entry belongs to the match as a whole and stands on the sheet of no set.
[[nodiscard]] bool isOfMatch(const Entry& entry);
/// The place among the sets, from 0, of the one with that number that has ended and counts; none if there is none.
[[nodiscard]] std::optional<std::size_t> placeOfEnded(const MatchState& state, int number);
/// The most points of a set that a team may keep which forfeits it afterwards: all it has, but no more than a loser can
/// have.
[[nodiscard]] int mostKept(const Rulebook& rulebook, const SetState& set, Team team);
/// The place among the sets, from 0, of the one on whose sheet an entry stands that is recorded in this state; that of
/// the set to come may be one more than there are. A match must be opened.
[[nodiscard]] std::size_t placeOfEntry(const MatchState& state, const Entry& entry);
/// The number of that set.
[[nodiscard]] int setOfEntry(const MatchState& state, const Entry& entry);

/// The sanction that keeps someone out of the present set: an expulsion in it, a disqualification in the match.
[[nodiscard]] std::optional<SanctionLevel> sentOffBy(const MatchState& state, Team team, const Member& who);

/// Whether a number has been given up as a libero and may not come back: in the set, or in the match where liberos are
/// named for it (FIVB Official Volleyball Rules 2025-2028, 19.4).
[[nodiscard]] bool isGivenUpAsLibero(const MatchState& state, Team team, ShirtNumber number);
/// The liberos whom a team has named for the match, where they are named for it: by its roster and in the sets before.
/// Empty where they are named for the set, or nobody has been named yet.
[[nodiscard]] std::vector<ShirtNumber> liberosOfMatch(const MatchState& state, Team team);

} // namespace setfolio
