// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The judge advises, the referee decides: what is not lawful about an entry before it is recorded.
#pragma once

#include "core/match/fold.h"
#include "core/rules/finding.h"

#include <span>

namespace setfolio {

/// What is to be said against `entry` in this state, under the rulebook the state carries; empty when it is lawful.
/// Pure. A Strike is judged by judgeStrike, which needs the entries. `time` is when it is recorded, UTC; what depends
/// on it is not judged without.
[[nodiscard]] Findings judge(const MatchState& state, const Entry& entry, const QDateTime& time = {});

/// Likewise for a correction, which looks back at what was recorded.
[[nodiscard]] Findings judgeStrike(std::span<const Recorded> entries, const Strike& strike);

/// What is to be said against an entry that is to be recorded after `entries`, which add up to `state`: a Strike looks
/// back, an entry that is placed is judged where it is to stand, and without the time.
[[nodiscard]] Findings judgeNext(std::span<const Recorded> entries, const MatchState& state, const Entry& entry,
                                 const std::optional<Placed>& placed, const QDateTime& time = {});

/// A finding about a recorded entry, met when a whole ledger is read again.
struct EntryFinding {
    EntryNumber entry;
    Finding finding;
    std::optional<QString> overruled; ///< the reason, if it was recorded as overruled
    bool operator==(const EntryFinding&) const = default;
};

/// Every finding over all standing entries, in the order of play.
[[nodiscard]] std::vector<EntryFinding> review(std::span<const Recorded> entries);

/// A substitution's proposal: who goes out for `in`, when there is only one lawful answer (she is bound to a slot).
[[nodiscard]] std::optional<ShirtNumber> proposedOut(const TeamInSet& team, ShirtNumber in);

} // namespace setfolio
