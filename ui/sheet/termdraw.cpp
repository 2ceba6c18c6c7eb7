// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/term.h"

#include <algorithm>
#include <cmath>

namespace setfolio::sheet {

namespace {

constexpr double dashPitch = 1.5; // of a broken line at full size

/// One mark after another into one cell.
class TermPen {
public:
    TermPen(Draft& draft, const Tag& tag, CellPlace place, SizeStep step, const InkStyle& ink)
        : m_draft(draft),
          m_tag(tag),
          m_place(place),
          m_size(markSize(step)),
          m_ink(ink),
          m_line(m_size.line * ink.line) {}

    void write(const PlacedMark& placed, int lines);
    void ghost(double x, int lines);
    void doubleBar(double x, int lines);

private:
    struct Spot {
        double left = 0;
        double right = 0;
        double centre = 0; ///< of the line
        [[nodiscard]] QPointF middle() const { return {(left + right) / 2, centre}; }
    };

    [[nodiscard]] double centreOf(int line, int lines) const {
        return m_place.centre + (lines == 1 ? 0 : line == 0 ? -m_size.lineShift : m_size.lineShift);
    }
    [[nodiscard]] double x(double inLine) const { return m_place.left + cellPadding + inLine; }
    [[nodiscard]] TextStyle inMark(double points) const {
        return TextStyle{points, m_ink.digits, m_ink.colour}.centred();
    }
    [[nodiscard]] double pitch() const { return dashPitch * m_size.line; }

    void cross(const Tag& tag, const Spot& spot);
    void ring(const Tag& tag, const Spot& spot, const QString& words);
    void triangle(const Tag& tag, const Spot& spot, const QString& words);
    void square(const Tag& tag, const Spot& spot, const QString& words);
    void change(const Tag& tag, const Spot& spot, const MeasuredMark& mark);
    void exit(const Tag& tag, const Spot& spot, const MeasuredMark& mark);
    void word(const Tag& tag, const Spot& spot, const QString& words, double points);
    void note(const Tag& tag, const Spot& spot, int number);
    void content(const Tag& tag, QPointF middle, const QString& words, double room, double points);

    Draft& m_draft;
    Tag m_tag;
    CellPlace m_place;
    MarkSize m_size;
    const InkStyle& m_ink;
    double m_line;
};

void TermPen::write(const PlacedMark& placed, int lines) {
    const MeasuredMark& mark = *placed.mark;
    const Tag tag = m_tag.of(mark.mark->entry);
    const Spot spot{x(placed.left), x(placed.left + placed.width), centreOf(placed.line, lines)};
    switch (mark.form) {
    case MeasuredMark::Form::Number:
        word(tag.as(ItemRole::OpeningNumber), spot, mark.letter, m_size.numberPoints);
        break;
    case MeasuredMark::Form::Word:
        word(tag.as(ItemRole::TermWord), spot, mark.letter, m_size.wordPoints);
        break;
    case MeasuredMark::Form::Change:
        change(tag.as(ItemRole::TermWord), spot, mark);
        break;
    case MeasuredMark::Form::Exit:
        exit(tag, spot, mark);
        break;
    case MeasuredMark::Form::Ring:
        ring(tag, spot, mark.letter);
        break;
    case MeasuredMark::Form::Triangle:
        triangle(tag, spot, mark.letter);
        break;
    case MeasuredMark::Form::Square:
        square(tag, spot, mark.letter);
        break;
    }
    if (mark.mark->struck)
        drawStrike(m_draft, tag.as(ItemRole::MarkStrike), spot.left - 0.4, spot.right + 0.4, spot.centre,
                   0.2 * m_size.ring, 0.3, m_ink.colour);
    if (mark.mark->takenBack)
        cross(tag.as(ItemRole::MarkCross), spot);
    if (mark.note)
        note(tag.as(ItemRole::NoteNumber), spot, mark.note);
}

/// Two strokes through the corners of the mark, which stays legible; over a number alone no higher than it is, so that
/// they keep off the number of the remark.
void TermPen::cross(const Tag& tag, const Spot& spot) {
    const double whole = 0.46 * m_size.ring;
    const double across = std::min(whole, (spot.right - spot.left) / 2 + 0.5);
    const QPointF reach(across, across < whole ? 0.32 * m_size.ring : whole);
    const QPointF mirrored(reach.x(), -reach.y());
    const Stroke stroke{m_ink.colour, 0.3, {}, true};
    m_draft.line(tag, spot.middle() - reach, spot.middle() + reach, stroke);
    m_draft.line(tag, spot.middle() - mirrored, spot.middle() + mirrored, stroke);
}

void TermPen::content(const Tag& tag, QPointF middle, const QString& words, double room, double points) {
    TextStyle style =
        inMark(words.size() > 1 && !words.at(0).isDigit() ? std::max(smallestPoints, points * 0.94) : points);
    const double wanted = m_draft.width(words, style);
    if (wanted > room)
        style.points = std::max(smallestPoints, style.points * room / wanted);
    m_draft.textAt(tag.as(ItemRole::ServeContent), middle, words, style);
}

void TermPen::ring(const Tag& tag, const Spot& spot, const QString& words) {
    const double radius = (m_size.ring - m_line) / 2;
    m_draft.ring(tag.as(ItemRole::ServeMark), spot.middle(), radius, strokeRound(m_ink, m_line, radius, pitch()));
    content(tag, spot.middle(), words, 2 * radius - m_line, m_size.numberPoints);
}

void TermPen::triangle(const Tag& tag, const Spot& spot, const QString& words) {
    const QPointF bottom = spot.middle() + QPointF(0, m_size.triangleHeight / 2);
    const double line = m_size.triangleLine * m_ink.line;
    m_draft.polygon(tag.as(ItemRole::ServeMark),
                    triangleWithin(bottom, m_size.triangleBase, m_size.triangleHeight, line), m_ink, line, pitch());
    const double baseline = bottom.y() - line - m_size.underTriangle;
    content(tag, {bottom.x(), baseline - halfCap(m_size.trianglePoints)}, words, m_size.triangleBase,
            m_size.trianglePoints);
}

void TermPen::square(const Tag& tag, const Spot& spot, const QString& words) {
    const double half = (m_size.square - m_line) / 2;
    const QPointF m = spot.middle();
    const QPolygonF corners{
        {m + QPointF(-half, -half), m + QPointF(half, -half), m + QPointF(half, half), m + QPointF(-half, half)}};
    m_draft.polygon(tag.as(ItemRole::ServeMark), corners, m_ink, m_line, pitch());
    content(tag, m, words, 2 * half - m_line, m_size.numberPoints);
}

void TermPen::change(const Tag& tag, const Spot& spot, const MeasuredMark& mark) {
    const TextStyle letter{m_size.changePoints, FontWeight::Bold, m_ink.colour};
    const TextStyle numbers{m_size.changePoints, FontWeight::Medium, m_ink.colour};
    m_draft.textAt(tag, {spot.left, spot.centre}, mark.letter, letter);
    m_draft.textAt(tag, {spot.right, spot.centre}, mark.numbers, numbers.fromRight());
}

/// A total, underlined as totals are; twice when nothing is to follow it.
void TermPen::exit(const Tag& tag, const Spot& spot, const MeasuredMark& mark) {
    word(tag.as(ItemRole::ExitScore), spot, mark.letter, m_size.wordPoints);
    double y = spot.centre + halfCap(m_size.wordPoints) + 0.45 * m_size.line;
    for (int line = 0; line < (mark.last ? 2 : 1); ++line) {
        m_draft.ruleAcross(tag.as(ItemRole::ExitLine), spot.left - 0.2, spot.right + 0.2, y, 0.25, m_ink.colour);
        y += 0.55 * m_size.line;
    }
}

void TermPen::word(const Tag& tag, const Spot& spot, const QString& words, double points) {
    m_draft.textAt(tag, {spot.left, spot.centre}, words, {points, FontWeight::Bold, m_ink.colour});
}

void TermPen::note(const Tag& tag, const Spot& spot, int number) {
    // In a folded term there is less room above a line than a raised note would take.
    const double raised = m_size.lineShift > 0 ? 0.35 : 0.25 * m_size.ring;
    const QPointF anchor(spot.right + 0.45 * m_size.line, spot.centre - raised);
    m_draft.text(tag, anchor, QString::number(number), {m_size.notePoints, FontWeight::Bold, soot});
}

void TermPen::ghost(double inLine, int lines) {
    const double radius = (m_size.ring - 0.2) / 2;
    const QPointF centre(x(inLine) + m_size.ring / 2, centreOf(lines - 1, lines));
    Stroke dotted = strokeRound(styleOf(Ink::Third, InkSet::BlackOnly), 0.2, radius, 0.9);
    dotted.colour = rule;
    m_draft.ring(m_tag.as(ItemRole::GhostMark), centre, radius, dotted);
}

void TermPen::doubleBar(double inLine, int lines) {
    const double half = (lines == 1 ? 0.58 : 0.5) * m_size.ring;
    const double centre = centreOf(lines - 1, lines);
    const Tag tag = m_tag.as(ItemRole::DoubleBar);
    m_draft.ruleDown(tag, x(inLine) + 1.1, centre - half, centre + half, 0.2, soot);
    m_draft.ruleDown(tag, x(inLine) + 1.85, centre - half, centre + half, 0.6, soot);
}

} // namespace

void drawTerm(Draft& draft, const Tag& tag, CellPlace place, const MeasuredMarks& marks, TermEnd end, SizeStep step,
              const InkStyle& ink) {
    TermPen pen(draft, tag, place, step, ink);
    const PlacedTerm term = placed(marks, step);
    for (const PlacedMark& mark : term.marks)
        pen.write(mark, term.lines);
    if (end == TermEnd::DoubleBar)
        pen.doubleBar(term.lastEnd, term.lines);
    if (end == TermEnd::Ghost)
        pen.ghost(term.lastEnd + (marks.empty() ? 0 : (marks.back().isText() ? 1.55 : 1) * markSize(step).gap),
                  term.lines);
}

QPolygonF triangleWithin(QPointF bottomCentre, double base, double height, double lineWidth) {
    const double side = std::hypot(base / 2, height);
    const double inradius = base * height / (base + 2 * side);
    const double shrink = (inradius - lineWidth / 2) / inradius;
    const QPointF middle = bottomCentre - QPointF(0, inradius);
    const auto corner = [&](double x, double y) { return middle + shrink * (bottomCentre + QPointF(x, y) - middle); };
    return {{corner(0, -height), corner(base / 2, 0), corner(-base / 2, 0)}};
}

void drawStrike(Draft& draft, const Tag& tag, double left, double right, double centre, double rise, double width,
                QRgb colour) {
    draft.line(tag, {left, centre + rise / 2}, {right, centre - rise / 2}, {colour, width, {}, true});
}

} // namespace setfolio::sheet
