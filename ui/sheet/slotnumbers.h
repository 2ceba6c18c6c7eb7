// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The shirt numbers that have stood in a slot, and how those after the starter are set.
#pragma once

#include "ui/sheet/draft.h"
#include "ui/sheet/scene.h"

#include <span>

namespace setfolio::sheet {

/// Columns of a slot's row.
inline constexpr double laterLeft = 20.6;
inline constexpr double laterRight = 41.8;
inline constexpr double triangleLeft = 34.9; ///< of the libero's small triangle

/// Stands before the numbers where older ones are told among the remarks.
[[nodiscard]] QString olderMark();

/// How numbers are written: the largest type that holds them.
struct SlotHand {
    double points = 9.2;
    int lines = 1;
    double pitch = 0; ///< from line to line

    [[nodiscard]] double gap() const { return 0.64 * millimetres(points); }
    [[nodiscard]] double overshoot() const { return std::min(0.45, gap() / 2 - 0.1); } ///< of the lines through them
    [[nodiscard]] TextStyle style(bool onCourt) const {
        return {points, onCourt ? FontWeight::Bold : FontWeight::Medium};
    }
};

/// The numbers of one slot.
class SlotNumbers {
public:
    /// Indexes into `stood`, line by line.
    using Lines = std::vector<std::vector<std::size_t>>;
    struct Fitted {
        SlotHand hand;
        Lines lines;
        std::size_t first = 1; ///< older ones, the starter apart, do not fit
    };

    SlotNumbers(const Draft& draft, const Scene& scene, Team team, Slot slot);

    /// The numbers after the starter; of more than the row holds, the newest.
    [[nodiscard]] Fitted fitted() const;
    [[nodiscard]] bool isRinged(std::size_t index) const;
    [[nodiscard]] bool hasLetter(std::size_t index) const;
    /// The middles of the lines, downwards from the middle of the row.
    [[nodiscard]] std::vector<double> middles(const Fitted& fitted) const;
    /// With the captain's ring or letter.
    [[nodiscard]] double widthOf(std::size_t index, const SlotHand& hand) const;

private:
    [[nodiscard]] CaptainMark captainMark() const { return m_scene.heading.opened.rulebook.captainMark; }
    [[nodiscard]] bool isCaptain(std::size_t index) const;
    [[nodiscard]] Lines broken(std::size_t first, const SlotHand& hand, double room) const;
    [[nodiscard]] double heightOf(const std::vector<std::size_t>& line, const SlotHand& hand) const;
    [[nodiscard]] Lines evened(std::size_t first, const SlotHand& hand) const;

    const Draft& m_draft;
    const Scene& m_scene;
    const TeamRecord& m_record;
    const SlotRecord& m_row;
    double m_room;
};

/// Of a ring that clears figures of that width.
inline constexpr double captainLine = 0.2;
[[nodiscard]] double captainRingRadius(double width, double points);

/// Those who stood in the slot after the starter and whom its row has no room for, the oldest first.
[[nodiscard]] std::span<const Standing> beyondRow(const Draft& draft, const Scene& scene, Team team, Slot slot);

} // namespace setfolio::sheet
