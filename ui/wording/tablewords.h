// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the table window says beside the sheet: to the second referee, on the deck, about the file.
#pragma once

#include "core/match/state.h"
#include "core/rules/countdown.h"
#include "core/rules/notice.h"

#include <QString>

#include <optional>

namespace setfolio {

// to the second referee

/// A notice as one sentence; a set point in two words and the team.
[[nodiscard]] QString sentence(const Notice& notice, const MatchState& state);
[[nodiscard]] QString substitutionRecorded(const Substitution& substitution, const MatchState& state);

// on the deck

/// What pressing a team's area means now.
enum class AreaCall : std::uint8_t { None, LineUpAwaited, LineUpStands, WinsTheRally, WinsTheSet, WinsTheMatch };
[[nodiscard]] QString callOf(AreaCall call);
[[nodiscard]] QString servesWord();
[[nodiscard]] QString substitutionsUsed(int count, int limit); ///< "6 of 18"
[[nodiscard]] QString timeOutsLeft(int left);                  ///< "1 left"
[[nodiscard]] QString sanctionsGiven(int count);               ///< "2 given"
/// "2 on", "2 serves", "in III" for the slot she serves in, "not on", "none".
[[nodiscard]] QString liberoState(const TeamInSet& team, LiberoServeRule rule);
/// "Set 2 of at most 5   SAL 1–0 QRL in sets".
[[nodiscard]] QString matchLine(const MatchState& state);
/// "Estuary and Uplands Schools League · Set 2, best of 5".
[[nodiscard]] QString tableTitle(const MatchState& state);
/// The same without the competition: "Set 2, best of 5".
[[nodiscard]] QString tableSet(const MatchState& state);

// in the panel

[[nodiscard]] QString rallyWord(int rally); ///< "Rally 29"
/// "Slot IV · captain", "Slot III · libero for 12".
[[nodiscard]] QString serverPlace(Slot slot, bool captain, std::optional<ShirtNumber> replaced);
[[nodiscard]] QString ifRallyIsLost();
[[nodiscard]] QString slotWord(Slot slot);                                 ///< "slot IV"
[[nodiscard]] QString thenServes(const QString& code, ShirtNumber number); ///< "then SAL 15"
[[nodiscard]] QString clockWord(int seconds);                              ///< "0:43"
[[nodiscard]] QString intervalWord(int seconds);                           ///< "Interval 2:31"
/// "Line-ups due 1:31", "Line-ups late", "Interval 2:31", "Warm-up 2:31".
[[nodiscard]] QString countdownWords(const Countdown& countdown);

// about the file

[[nodiscard]] QString savedAt(QTime time); ///< "Saved 19:01:22"
[[nodiscard]] QString notSaved();
[[nodiscard]] QString savedWord();
[[nodiscard]] QString readOnlyWord();
[[nodiscard]] QString notRecorded(const QString& why); ///< the band after a failed append
[[nodiscard]] QString readOnlyBecause(const QString& holder);

} // namespace setfolio
