// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The cells of both teams and the columns they stand in.
#pragma once

#include "ui/sheet/scene.h"
#include "ui/sheet/term.h"

namespace setfolio::sheet {

/// A round's column; a term too long for a page goes on in further parts of its round.
struct Column {
    int round = 1;
    int part = 1;
};

/// Of the cross in a cell that a team has passed over. Marks may come into the cell after all, when players have served
/// in the wrong order: they stand after it.
inline constexpr double crossSide = 4.4;
inline constexpr double crossRoom = 5.6;

/// What stands in the row of a slot and the column of a round.
struct Cell {
    Team team = Team::Home;
    Slot slot;
    int column = 0; ///< index into the columns
    int round = 1;
    bool crossed = false;
    bool live = false; ///< being served in, and to be shown so
    MeasuredMarks marks;
    TermEnd end = TermEnd::None;
    std::size_t place = 0; ///< of its size in Flow::steps

    /// From the left end of the cell's own room.
    [[nodiscard]] double marksLeft() const { return crossed ? crossRoom : 0; }
};

struct Cells {
    std::vector<Cell> cells;
    std::vector<Column> columns; ///< at least three rounds
    std::vector<FlowTerm> terms; ///< one for each place in Flow::steps; a place is kept while a set is written
};

[[nodiscard]] Cells cellsOf(const Draft& draft, const Scene& scene);

/// A team's block: strip, slots, and the rounds of one page.
void drawBlock(Draft& draft, const Scene& scene, Team team, const Cells& cells, const Flow& flow, const FlowPage& page);

} // namespace setfolio::sheet
