// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What is looked over before a set or a match is signed: score, service, interruptions, sanctions, and all that was
/// put right or let pass. Each part has the entry that leads to its mark.
#pragma once

#include "core/record/record.h"
#include "core/rules/judge.h"

#include <span>

namespace setfolio {

/// A substitution that stands, with the score at that moment.
struct ReviewedSubstitution {
    ShirtNumber in;
    ShirtNumber out;
    SubstitutionKind kind = SubstitutionKind::Regular;
    PerTeam<int> score;
    EntryNumber entry;
    bool operator==(const ReviewedSubstitution&) const = default;
};

/// The one slot in which a libero has served in the set.
struct ReviewedLibero {
    Slot slot;
    ShirtNumber libero; ///< who served in it last
    EntryNumber entry;  ///< the first point or loss of her serve; 0 while there is none
    bool operator==(const ReviewedLibero&) const = default;
};

struct TeamReview {
    std::array<std::vector<Standing>, 6> slots; ///< who has stood in slot I to VI; empty before the line-up
    EntryNumber lineUp;                         ///< 0 before it
    std::vector<ReviewedSubstitution> substitutions;
    std::vector<TimeOutTaken> timeOuts;
    std::optional<ReviewedLibero> libero;
    std::vector<RunningPoint> takenBack;
    bool operator==(const TeamReview&) const = default;
};

struct SetReview {
    int number = 1;
    std::size_t sheet = 0; ///< its place among the sets of the record
    bool cancelled = false;
    PerTeam<int> score;
    std::optional<SetResult> result;
    EntryNumber end; ///< the entry that decided it, or ended it; 0 before
    PerTeam<TeamReview> teams;
    std::vector<SanctionLine> sanctions;
    std::vector<EntryFinding> overruled; ///< stands on the referee's word
    std::vector<EntryFinding> open;      ///< against the rulebook, and nobody has let it stand
    std::vector<Note> corrections;       ///< what was struck, changed or put in
    std::vector<Note> remarks;           ///< all the others
    bool operator==(const SetReview&) const = default;
};

struct SignOffReview {
    std::optional<int> set; ///< none: the match
    PerTeam<int> setsWon;
    std::optional<Team> winner; ///< of the match, once it has one
    std::vector<SetReview> sets;
    /// What belongs to no sheet of a set: said when the match is reviewed.
    std::vector<EntryFinding> overruled;
    std::vector<EntryFinding> open;
    bool operator==(const SignOffReview&) const = default;
};

/// The review of a set, or of the whole match; `record` is written up from `entries`. Of a set that was cancelled and
/// played again both sheets are reviewed. O(n).
[[nodiscard]] SignOffReview reviewFor(std::span<const Recorded> entries, const MatchRecord& record,
                                      std::optional<int> set);

} // namespace setfolio
