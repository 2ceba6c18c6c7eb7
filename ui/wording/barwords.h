// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the bars of the table say: what an entry that is being made will mean.
#pragma once

#include "core/match/state.h"

#include <QString>

namespace setfolio {

/// With a capital at its beginning.
[[nodiscard]] QString capitalised(const QString& words);

// substitutions

/// "Exceptional: anybody but a libero may come in. 3 stays out for the rest of the set."
[[nodiscard]] QString exceptionalMeans(const MatchState& state, ShirtNumber out);
[[nodiscard]] QString exceptionalRemark(const MatchState& state, const Substitution& substitution, const QString& why);
[[nodiscard]] QString placeStaysVacant(const MatchState& state, Team team);
[[nodiscard]] QString placeVacatedRecorded(const MatchState& state, Team team);

// the libero

/// "8 on court for 4", "not on court".
[[nodiscard]] QString liberoStands(const MatchState& state, Team team);
/// "4 comes back"; a libero must be on court.
[[nodiscard]] QString liberoOutMeans(const TeamInSet& team);

// the server

/// What to do about a wrong number at the line, before or after the contact.
[[nodiscard]] QString serverSeenMeans(const MatchState& state, ShirtNumber seen);
/// What a ruling will do that takes back `points`.
[[nodiscard]] QString wrongServerMeans(const MatchState& state, const WrongServer& ruling, int points);

// sanctions

/// Likewise for an illegal player of the team.
[[nodiscard]] QString illegalPlayerMeans(const MatchState& state, Team team, int points);
[[nodiscard]] QString cardsWords(CardsShown cards);
/// The level, its cards and what it brings.
[[nodiscard]] QString sanctionMeans(const MatchState& state, Team team, SanctionLevel level);
[[nodiscard]] QString delayMeans(const MatchState& state, Team team, DelayLevel level);

// forfeits

[[nodiscard]] QString forfeitMeans(const MatchState& state, const Forfeit& forfeit);

} // namespace setfolio
