// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/term.h"

#include "ui/wording/markwords.h"

#include <algorithm>

namespace setfolio::sheet {

namespace {

constexpr double changeGap = 0.3; // between S and its numbers, em
constexpr double noteGap = 0.45;  // between a mark and its note, of a full-size mark
constexpr double barRoom = 2.2;   // for the double bar

MeasuredMark::Form formOf(const Mark& mark) {
    using Form = MeasuredMark::Form;
    switch (mark.shape) {
    case MarkShape::Ring:
        return Form::Ring;
    case MarkShape::Triangle:
        return Form::Triangle;
    case MarkShape::Square:
        return Form::Square;
    case MarkShape::None:
        break;
    }
    if (std::holds_alternative<SubstitutionMark>(mark.content))
        return Form::Change;
    if (std::holds_alternative<ExitScore>(mark.content))
        return Form::Exit;
    const bool letter =
        std::holds_alternative<TimeOutMark>(mark.content) || std::holds_alternative<PenaltyLetter>(mark.content);
    return letter ? Form::Word : Form::Number;
}

bool isPenalty(const MeasuredMark& mark) {
    return std::holds_alternative<PenaltyLetter>(mark.mark->content);
}

double ownWidth(const MeasuredMark& mark, const MarkSize& size) {
    switch (mark.form) {
    case MeasuredMark::Form::Number:
        return mark.letterEm * millimetres(size.numberPoints);
    case MeasuredMark::Form::Word:
    case MeasuredMark::Form::Exit:
        return mark.letterEm * millimetres(size.wordPoints);
    case MeasuredMark::Form::Change:
        return (mark.letterEm + changeGap + mark.numbersEm) * millimetres(size.changePoints);
    case MeasuredMark::Form::Ring:
        return size.ring;
    case MeasuredMark::Form::Triangle:
        return size.triangleBase;
    case MeasuredMark::Form::Square:
        return size.square;
    }
    Q_UNREACHABLE();
}

double noteWidth(const MeasuredMark& mark, const MarkSize& size) {
    return mark.note ? noteGap * size.line + mark.noteEm * millimetres(size.notePoints) : 0;
}

double gapBetween(const MeasuredMark& left, const MeasuredMark& right, const MarkSize& size) {
    using Form = MeasuredMark::Form;
    if (isPenalty(left))
        return size.gap * (right.isText() ? 1 : 0.7);
    if (left.isText() || right.isText())
        return size.gap * 1.55;
    const bool triangles = left.form == Form::Triangle && right.form == Form::Triangle;
    return size.gap * (triangles && !left.note ? 0.2 : 1);
}

/// Marks first to last, one after another; returns where the line ends.
double placeLine(const MeasuredMarks& marks, std::size_t first, std::size_t last, int line, const MarkSize& size,
                 std::vector<PlacedMark>& placedMarks) {
    double x = 0;
    for (std::size_t i = first; i < last; ++i) {
        if (i > first)
            x += gapBetween(marks[i - 1], marks[i], size);
        const double width = ownWidth(marks[i], size);
        placedMarks.push_back({&marks[i], x, width, line});
        x += width + noteWidth(marks[i], size);
    }
    return x;
}

double lineWidth(const MeasuredMarks& marks, std::size_t first, std::size_t last, const MarkSize& size) {
    double width = 0;
    for (std::size_t i = first; i < last; ++i)
        width += ownWidth(marks[i], size) + noteWidth(marks[i], size) +
                 (i > first ? gapBetween(marks[i - 1], marks[i], size) : 0);
    return width;
}

/// Where the second line begins so that the longer of the two is as short as can be.
std::size_t evenBreak(const MeasuredMarks& marks, const MarkSize& size) {
    std::size_t best = marks.size();
    double shortest = lineWidth(marks, 0, marks.size(), size);
    for (std::size_t i = 1; i < marks.size(); ++i) {
        if (marks[i].bound)
            continue;
        const double longer = std::max(lineWidth(marks, 0, i, size), lineWidth(marks, i, marks.size(), size));
        if (longer < shortest) {
            shortest = longer;
            best = i;
        }
    }
    return best;
}

/// One number beside the second of two bound marks tells of both.
void leaveNoteToNext(MeasuredMark& mark) {
    mark.note = 0;
    mark.noteEm = 0;
}

/// Two lines in a row. Type cannot shrink with the marks, so that triangles are wide for their height.
MarkSize foldedSize(bool medium) {
    MarkSize size;
    size.ring = medium ? 3.9 : 3.7;
    size.square = 0.96 * size.ring;
    size.triangleBase = medium ? 7.0 : 6.8;
    size.triangleHeight = 4.1;
    size.gap = medium ? 0.6 : 0.5;
    size.line = 0.72;
    size.triangleLine = 0.6;
    size.lineShift = 0.244 * 8.6;
    size.numberPoints = medium ? 6.3 : smallestPoints;
    size.wordPoints = size.changePoints = size.trianglePoints = size.notePoints = smallestPoints;
    size.underTriangle = 0.2;
    return size;
}

} // namespace

MarkSize markSize(SizeStep step) {
    if (step.isFolded())
        return foldedSize(step == foldedMedium);
    const double f = step.scale();
    MarkSize size;
    size.ring = 6.2 * f;
    size.square = 0.96 * size.ring;
    size.triangleBase = 9.2 * f;
    size.triangleHeight = 7.3 * f;
    size.gap = 0.95 * f;
    size.line = size.triangleLine = std::max(0.8, f);
    size.numberPoints = 10.2 * f;
    size.wordPoints = 9.0 * f;
    size.changePoints = size.trianglePoints = 8.4 * f;
    size.underTriangle = 0.5 * f;
    size.notePoints = std::max(smallestPoints, 6.2 * f);
    return size;
}

MeasuredMarks measured(const Draft& draft, const std::vector<const Mark*>& marks, const InkStyle& ink) {
    const auto em = [&draft](const QString& words, FontWeight weight) {
        return words.isEmpty() ? 0 : draft.fonts().shape(words, weight)->advance;
    };
    MeasuredMarks result;
    for (const Mark* mark : marks) {
        MeasuredMark m;
        m.mark = mark;
        m.form = formOf(*mark);
        m.letter = markLetters(mark->content);
        m.numbers = markNumbers(mark->content);
        m.letterEm = em(m.letter, m.isText() ? FontWeight::Bold : ink.digits);
        m.numbersEm = em(m.numbers, FontWeight::Medium);
        m.note = mark->note;
        m.bound = !result.empty() && isPenalty(result.back());
        if (m.bound && result.back().note == m.note)
            leaveNoteToNext(result.back());
        m.noteEm = m.note ? em(QString::number(m.note), FontWeight::Bold) : 0;
        result.push_back(m);
    }
    return result;
}

PlacedTerm placed(const MeasuredMarks& marks, SizeStep step) {
    const MarkSize size = markSize(step);
    PlacedTerm term;
    const std::size_t second = step.isFolded() ? evenBreak(marks, size) : marks.size();
    term.width = term.lastEnd = placeLine(marks, 0, second, 0, size, term.marks);
    if (second < marks.size()) {
        term.lines = 2;
        term.lastEnd = placeLine(marks, second, marks.size(), 1, size, term.marks);
        term.width = std::max(term.width, term.lastEnd);
    }
    return term;
}

double needOf(const MeasuredMarks& marks, TermEnd end, SizeStep step) {
    const MarkSize size = markSize(step);
    const PlacedTerm term = placed(marks, step);
    double last = term.lastEnd;
    if (end == TermEnd::DoubleBar)
        last += barRoom;
    if (end == TermEnd::Ghost)
        last += size.ring + (marks.empty() ? 0 : 1.55 * size.gap);
    return 2 * cellPadding + std::max(term.width, last);
}

} // namespace setfolio::sheet
