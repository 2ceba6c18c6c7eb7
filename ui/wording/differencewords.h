// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What a learner's sheet has otherwise than the right one, in words.
#pragma once

#include "core/practice/differences.h"

#include <QString>

namespace setfolio {

/// A row: where it is, what the right sheet has there, and what hers has.
struct DifferenceWords {
    QString where;
    QString right;
    QString hers;
    bool operator==(const DifferenceWords&) const = default;
};

[[nodiscard]] DifferenceWords wordsFor(const Difference& difference, const MatchState& state);

/// "39 of 41 marks are right." and, where all are, that the sheet is as it should be.
[[nodiscard]] QString resultOfPractice(const MarksRight& marks, std::size_t differences);

} // namespace setfolio
