// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A term of service as it is written: which marks stand in its cell, how wide they are in each size, and where.
#pragma once

#include "core/record/record.h"
#include "ui/sheet/draft.h"
#include "ui/sheet/flow.h"

namespace setfolio::sheet {

/// The measures of marks in one size, in millimetres; type in points.
struct MarkSize {
    double ring = 0; ///< diameter, line included
    double square = 0;
    double triangleBase = 0;
    double triangleHeight = 0;
    double gap = 0;
    double line = 1;         ///< factor on the ink's line
    double triangleLine = 1; ///< the same for triangles
    double lineShift = 0;    ///< of the two lines of a folded term, from the middle of the row
    double numberPoints = 0;
    double wordPoints = 0;     ///< T, P
    double changePoints = 0;   ///< S and its numbers
    double trianglePoints = 0; ///< in a triangle
    double underTriangle = 0;  ///< from the figures down to the line
    double notePoints = 0;
};
[[nodiscard]] MarkSize markSize(SizeStep step);

/// A mark that has been measured: advances in em, so that every size follows.
struct MeasuredMark {
    enum class Form : std::uint8_t { Number, Word, Change, Exit, Ring, Triangle, Square };

    const Mark* mark = nullptr;
    Form form = Form::Number;
    QString letter;  ///< the number, or the letter
    QString numbers; ///< "10/7" after S
    double letterEm = 0;
    double numbersEm = 0;
    int note = 0; ///< the number of its remark, where it is written beside it
    double noteEm = 0;
    bool bound = false; ///< to the mark before it: never at the head of a line
    bool last = false;  ///< an exit score that is the team's final one

    [[nodiscard]] bool isText() const { return form <= Form::Exit; }
};
using MeasuredMarks = std::vector<MeasuredMark>;

/// The marks of a cell, measured in the type of their ink.
[[nodiscard]] MeasuredMarks measured(const Draft& draft, const std::vector<const Mark*>& marks, const InkStyle& ink);

/// A mark's place in its cell.
struct PlacedMark {
    const MeasuredMark* mark = nullptr;
    double left = 0;  ///< from the left end of the line
    double width = 0; ///< of the mark itself, without its note
    int line = 0;
};
struct PlacedTerm {
    std::vector<PlacedMark> marks;
    int lines = 1;
    double width = 0;   ///< of the longest line
    double lastEnd = 0; ///< where the last line ends
};
/// In one line or, where the step is a folded one, in two of even length.
[[nodiscard]] PlacedTerm placed(const MeasuredMarks& marks, SizeStep step);

/// What is drawn after the last mark.
enum class TermEnd : std::uint8_t { None, DoubleBar, Ghost };

inline constexpr double cellPadding = 1.5;

/// The narrowest column that holds the marks and what comes after them.
[[nodiscard]] double needOf(const MeasuredMarks& marks, TermEnd end, SizeStep step);

struct CellPlace {
    double left = 0;   ///< of the column
    double centre = 0; ///< of the row
};
/// Writes the marks into their cell; the tag names the block and the team.
void drawTerm(Draft& draft, const Tag& tag, CellPlace place, const MeasuredMarks& marks, TermEnd end, SizeStep step,
              const InkStyle& ink);

/// A triangle of that base and height whose line of that width lies wholly inside it.
[[nodiscard]] QPolygonF triangleWithin(QPointF bottomCentre, double base, double height, double lineWidth);

/// The near-flat line of a correction through what lies from left to right.
void drawStrike(Draft& draft, const Tag& tag, double left, double right, double centre, double rise, double width,
                QRgb colour);

} // namespace setfolio::sheet
