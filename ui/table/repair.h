// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What a correction will change, before it is recorded.
#pragma once

#include "core/match/statebefore.h"
#include "core/rules/judge.h"
#include "ui/wording/entrylog.h"

#include <QString>

#include <span>

namespace setfolio {

/// What is entered to correct another entry: a Strike, or an entry with its place.
struct Repair {
    Entry entry;
    std::optional<Placed> placed;
};

/// A repair's effect: where play stands before and after it, and what becomes questionable that was not.
struct RepairPreview {
    PerTeam<int> scoreBefore;
    PerTeam<int> scoreAfter;
    QString serverBefore; ///< "SAL 9"; empty while nobody serves
    QString serverAfter;
    std::vector<EntryFinding> questionable; ///< later entries that would not be lawful any more
    bool settled = false;                   ///< the point it changes stands, unless the slip was the table's own
    MatchState after;
};

/// O(n) in the entries.
[[nodiscard]] RepairPreview previewOf(std::span<const Recorded> entries, const MatchState& now, const Repair& repair);
/// The preview in sentences; `log` has the words of the entries.
[[nodiscard]] QString sentence(const RepairPreview& preview, const EntryLog& log);

/// Where a correction is to be placed: "Before “rally to SAL”".
[[nodiscard]] QString placeWords(const Placed& placed, const EntryLog& log);
/// And what is to stand there: "Before “point 4, own serve”: QRL time-out". `then` is the state at that place.
[[nodiscard]] QString drawnUpWords(const Placed& placed, const Entry& entry, const MatchState& then,
                                   const EntryLog& log);
/// What to do now that the table stands there.
[[nodiscard]] QString atThePlace(const Placed& placed, const EntryLog& log);

} // namespace setfolio
