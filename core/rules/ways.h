// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The lawful ways: what may be recorded next without a finding, for whoever asks before the judge has to speak.
#pragma once

#include "core/match/state.h"

#include <optional>
#include <span>
#include <vector>

namespace setfolio {

// Substitutions. Whether the team may ask now is the judge's to say; these say for whom.

/// Who may come in for a number on court, or into the place it left vacant; of the roster, in its order, or of those
/// that have played where there is none.
[[nodiscard]] std::vector<ShirtNumber> mayComeIn(const MatchState& state, Team team, ShirtNumber out);
/// For whom a number may come in, slot by slot.
[[nodiscard]] std::vector<ShirtNumber> mayGoOut(const MatchState& state, Team team, ShirtNumber in);
/// Who may come in by an exceptional substitution; nobody while someone may come in by a regular one.
[[nodiscard]] std::vector<ShirtNumber> mayComeInExceptionally(const MatchState& state, Team team, ShirtNumber out);

// Sanctions.

/// The lowest sanction that someone's next misconduct brings; none when nothing is left above what she has had.
[[nodiscard]] std::optional<CardStep> nextCard(const MatchState& state, Team team, const Member& who);
/// The sanction that a team's next delay brings.
[[nodiscard]] DelayLevel nextDelay(const MatchState& state, Team team);

/// Whether the team's next improper request is let pass and only recorded; else it is a delay.
[[nodiscard]] bool isImproperRequestLetPass(const MatchState& state, Team team);
/// Whether the team's next late replacement of a libero is let pass and recorded as such; else it is a delay.
[[nodiscard]] bool mayLetLateReplacementPass(const MatchState& state, Team team);

// The serve.

/// Who must serve next, or serves now.
struct ServerDue {
    Team team = Team::Home;
    Slot slot;
    ShirtNumber number; ///< invalid: the place is vacant, and the rally is lost
    bool operator==(const ServerDue&) const = default;
};
/// None while no serve is awaited or played, and before it is known who serves first.
[[nodiscard]] std::optional<ServerDue> mustServe(const MatchState& state);

/// The points that a ruling on a wrong server of the team would take back when the fault began with its present term of
/// service, or with its last while the opponents serve: what to put into WrongServer::takenBackFrom, and how many
/// points that is. None when the rulebook takes none back, or no more.
struct PointsToTakeBack {
    EntryNumber from;
    int count = 0;
    bool operator==(const PointsToTakeBack&) const = default;
};
[[nodiscard]] std::optional<PointsToTakeBack> pointsToTakeBack(const MatchState& state, Team team);
/// Likewise for a player who came on court illegally in this way: for IllegalPlayer::takenBackFrom.
[[nodiscard]] std::optional<PointsToTakeBack> pointsToTakeBack(const MatchState& state, Team team, IllegalBy by);

/// Whether the point of a rally stands, though the referees gave it to the wrong team: the next serve has been
/// contacted, and the rulebook puts it right only until then. A slip of the table's own is not meant. O(n). Source: the
/// rulebook's wrong-point-until.
[[nodiscard]] bool isPointSettled(std::span<const Recorded> entries, EntryNumber rally);

// The libero.

/// Every replacement of a libero that is lawful now: LiberoIn, LiberoOut and LiberoExchange entries.
[[nodiscard]] std::vector<Entry> liberoMoves(const MatchState& state, Team team);

} // namespace setfolio
