// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What a learner's sheet of a set has otherwise than the right one, mark by mark.
#pragma once

#include "core/record/record.h"

#include <optional>
#include <variant>
#include <vector>

namespace setfolio {

/// A mark in a term of service. What she has struck does not count: putting a slip right is no mistake.
struct MarkDiffers {
    Team team = Team::Home; ///< whose term
    Slot slot;
    int round = 1;
    std::optional<Mark> right; ///< none: she has a mark too many
    std::optional<Mark> hers;  ///< none: she has missed one
    bool operator==(const MarkDiffers&) const = default;
};
/// The numbers that have stood in a slot.
struct SlotDiffers {
    Team team = Team::Home;
    Slot slot;
    std::vector<ShirtNumber> right;
    std::vector<ShirtNumber> hers;
    bool operator==(const SlotDiffers&) const = default;
};
/// The slot in which the libero has served.
struct LiberoSlotDiffers {
    Team team = Team::Home;
    std::optional<Slot> right;
    std::optional<Slot> hers;
    bool operator==(const LiberoSlotDiffers&) const = default;
};
enum class Counted : std::uint8_t { Points, Substitutions, TimeOuts, LiberoReplacements };
/// What a team's counters say at the end.
struct CountDiffers {
    Team team = Team::Home;
    Counted what = Counted::Points;
    int right = 0;
    int hers = 0;
    bool operator==(const CountDiffers&) const = default;
};
/// A card, a delay or an improper request.
struct SanctionDiffers {
    std::optional<SanctionLine> right;
    std::optional<SanctionLine> hers;
    bool operator==(const SanctionDiffers&) const = default;
};
using Difference = std::variant<MarkDiffers, SlotDiffers, LiberoSlotDiffers, CountDiffers, SanctionDiffers>;

/// None where the two sheets say the same. First the marks, term by term in the order of play: what comes first is
/// where the sheets part, and the rest may follow from it. Who is captain, times and remarks are not compared.
[[nodiscard]] std::vector<Difference> differencesOf(const SetRecord& right, const SetRecord& hers);

/// How many marks of the right sheet she has, and how many there are: those in the terms of service that stand.
struct MarksRight {
    int right = 0;
    int of = 0;
    bool operator==(const MarksRight&) const = default;
};
[[nodiscard]] MarksRight marksRight(const SetRecord& right, const SetRecord& hers);

} // namespace setfolio
