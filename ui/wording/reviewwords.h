// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The review before signing, line by line.
#pragma once

#include "core/record/signoffreview.h"

#include <QString>

#include <vector>

namespace setfolio {

/// A line of the review. A press on it shows the mark of its entry.
struct ReviewLine {
    enum class Kind : std::uint8_t {
        Heading,   ///< what follows, or that there is nothing of it
        Fact,      ///< as it stands on the sheet
        Attention, ///< to be looked at before signing
    };
    Kind kind = Kind::Fact;
    QString words;
    EntryNumber entry;     ///< 0: it leads to no mark
    std::size_t sheet = 0; ///< the place of the mark's sheet among the sets of the record
    bool operator==(const ReviewLine&) const = default;
};

/// "SAL wins set 2", "SAL wins the match": who has won what is signed; empty while nobody has.
[[nodiscard]] QString winnerWords(const SignOffReview& review, const MatchState& state);
/// What needs the referee's eye comes first. Only names are read from `state`.
[[nodiscard]] std::vector<ReviewLine> linesOf(const SignOffReview& review, const MatchState& state);

} // namespace setfolio
