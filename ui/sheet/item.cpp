// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/item.h"

#include "core/match/entry.h"

#include <cmath>
#include <tuple>

namespace setfolio {

namespace {

QRectF grown(const QRectF& rect, double by) {
    return rect.adjusted(-by, -by, by, by);
}

/// A line with flat ends is no longer than from end to end.
QRectF boxOf(const LineShape& line) {
    const QRectF ends = QRectF(line.from, line.to).normalized();
    const double half = line.stroke.width / 2;
    const double length = std::hypot(ends.width(), ends.height());
    if (line.stroke.round || length == 0)
        return grown(ends, half);
    const double across = half * ends.height() / length;
    const double down = half * ends.width() / length;
    return ends.adjusted(-across, -down, across, down);
}

QRectF boxOf(const StrokesShape& strokes) {
    QRectF box;
    for (const QPolygonF& line : strokes.lines) {
        const double half = strokes.stroke.width / 2; // before they are joined: a dot has no size of its own
        box |= grown(line.boundingRect(), half);
    }
    return box;
}

} // namespace

double TextShape::left() const {
    switch (align) {
    case TextAlign::Left:
        return anchor.x();
    case TextAlign::Centre:
        return anchor.x() - shaped->advance * em() / 2;
    case TextAlign::Right:
        return anchor.x() - shaped->advance * em();
    }
    Q_UNREACHABLE();
}

QRectF TextShape::ink() const {
    const QRectF& ink = shaped->ink;
    return {left() + ink.x() * em(), anchor.y() + ink.y() * em(), ink.width() * em(), ink.height() * em()};
}

bool operator==(const TextShape& left, const TextShape& right) {
    const auto looks = [](const TextShape& text) {
        return std::tie(text.anchor, text.points, text.colour, text.align, text.shaped->text, text.shaped->weight,
                        text.shaped->tracking);
    };
    return looks(left) == looks(right);
}

QRectF boundingBox(const Item& item) {
    return std::visit(
        Overloaded{
            [](const TextShape& text) { return text.ink(); },
            [](const LineShape& line) { return boxOf(line); },
            [](const RectShape& rect) { return grown(rect.rect, rect.outline.width / 2); },
            [](const RingShape& ring) {
                const QPointF corner(ring.radius, ring.radius);
                return grown(QRectF(ring.centre - corner, ring.centre + corner), ring.stroke.width / 2);
            },
            [](const PolygonShape& polygon) { return grown(polygon.corners.boundingRect(), polygon.stroke.width / 2); },
            [](const StrokesShape& strokes) { return boxOf(strokes); },
            [](const SquaresShape& squares) {
                const auto side = squares.size * static_cast<double>(squares.dark.size());
                return QRectF(squares.corner, QSizeF(side, side));
            },
        },
        item.shape);
}

void translate(Item& item, QPointF by) {
    std::visit(Overloaded{
                   [by](TextShape& text) { text.anchor += by; },
                   [by](LineShape& line) {
                       line.from += by;
                       line.to += by;
                   },
                   [by](RectShape& rect) { rect.rect.translate(by); },
                   [by](RingShape& ring) { ring.centre += by; },
                   [by](PolygonShape& polygon) { polygon.corners.translate(by); },
                   [by](StrokesShape& strokes) {
                       for (QPolygonF& line : strokes.lines)
                           line.translate(by);
                   },
                   [by](SquaresShape& squares) { squares.corner += by; },
               },
               item.shape);
}

} // namespace setfolio
