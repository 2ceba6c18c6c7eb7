// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/paint.h"

#include "core/match/entry.h"
#include "ui/sheet/palette.h"

#include <QPaintEngine>
#include <QPainterPath>
#include <QtMath>

#include <numbers>

namespace setfolio {

namespace {

QPen penOf(const Stroke& stroke) {
    if (stroke.width <= 0)
        return Qt::NoPen;
    QPen pen(QColor::fromRgba(stroke.colour), stroke.width, Qt::SolidLine, stroke.round ? Qt::RoundCap : Qt::FlatCap,
             Qt::RoundJoin);
    if (stroke.dash.on > 0) {
        pen.setDashPattern({stroke.dash.on / stroke.width, stroke.dash.off / stroke.width});
        pen.setDashOffset(stroke.dash.start / stroke.width);
    }
    return pen;
}

QBrush brushOf(const std::optional<QRgb>& fill) {
    return fill ? QBrush(QColor::fromRgba(*fill)) : QBrush(Qt::NoBrush);
}

/// Points on a circle, closed. Qt's rasterizer takes some ten times as long for curves as for the polygon that looks
/// the same.
class Circle {
public:
    /// So many points that the polygon is nowhere further than a twentieth of a pixel from the curve.
    Circle(double radiusMm, double pixelsPerMm)
        : m_points(qBound(8, qCeil(std::numbers::pi * std::sqrt(radiusMm * pixelsPerMm / 0.1)), 200)) {}

    [[nodiscard]] int points() const { return m_points; }
    /// From `begin` to `end`, in whole turns; backwards where `end` is less.
    void add(QPolygonF& polygon, QPointF centre, double radius, double begin, double end) const {
        const int steps = std::max(1, qCeil(std::abs(end - begin) * m_points));
        for (int i = 0; i <= steps; ++i) {
            const double angle = 2 * std::numbers::pi * (begin + (end - begin) * i / steps);
            polygon << centre + radius * QPointF(std::cos(angle), -std::sin(angle));
        }
    }

private:
    int m_points;
};

/// Paints shapes on a painter whose unit is the millimetre.
class ShapePainter {
public:
    explicit ShapePainter(QPainter& painter)
        : m_painter(painter),
          m_millimetres(painter.transform()),
          m_pixels(std::sqrt(std::abs(painter.deviceTransform().determinant()))),
          m_raster(painter.paintEngine()->type() == QPaintEngine::Raster) {}

    void operator()(const TextShape& text);
    void operator()(const LineShape& line);
    void operator()(const RectShape& rect);
    void operator()(const RingShape& ring);
    void operator()(const PolygonShape& polygon);
    void operator()(const StrokesShape& strokes);
    void operator()(const SquaresShape& squares);

private:
    void rasterRing(const RingShape& ring);
    void dot(QPointF centre, double radius);

    QPainter& m_painter;
    QTransform m_millimetres;
    double m_pixels; ///< of the device to a millimetre
    bool m_raster;
};

void ShapePainter::operator()(const TextShape& text) {
    const double scale = text.em() / ShapedText::pixels;
    QTransform place = m_millimetres;
    place.translate(text.left(), text.anchor.y());
    place.scale(scale, scale);
    m_painter.setTransform(place);
    m_painter.setPen(QColor::fromRgba(text.colour));
    for (const QGlyphRun& run : text.shaped->runs)
        m_painter.drawGlyphRun({}, run);
    m_painter.setTransform(m_millimetres);
}

void ShapePainter::operator()(const LineShape& line) {
    m_painter.setPen(penOf(line.stroke));
    m_painter.drawLine(line.from, line.to);
}

void ShapePainter::operator()(const RectShape& rect) {
    if (rect.fill && rect.outline.width <= 0) {
        m_painter.fillRect(rect.rect, QColor::fromRgba(*rect.fill));
        return;
    }
    QPen pen = penOf(rect.outline);
    pen.setJoinStyle(Qt::MiterJoin);
    m_painter.setPen(pen);
    m_painter.setBrush(brushOf(rect.fill));
    m_painter.drawRect(rect.rect);
}

void ShapePainter::operator()(const RingShape& ring) {
    if (m_raster)
        return rasterRing(ring);
    m_painter.setPen(penOf(ring.stroke));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawEllipse(ring.centre, ring.radius, ring.radius);
}

void ShapePainter::rasterRing(const RingShape& ring) {
    const double outer = ring.radius + ring.stroke.width / 2;
    const double inner = ring.radius - ring.stroke.width / 2;
    const Dash& dash = ring.stroke.dash;
    const double girth = 2 * std::numbers::pi * ring.radius;
    const int dashes = dash.on > 0 ? qRound(girth / (dash.on + dash.off)) : 1;
    const double part = dash.on > 0 ? dash.on / girth : 1;
    const Circle circle(outer, m_pixels);
    QPainterPath path;
    for (int i = 0; i < dashes; ++i) {
        const double begin = double(i) / dashes;
        QPolygonF area;
        circle.add(area, ring.centre, outer, begin, begin + part);
        circle.add(area, ring.centre, inner, begin + part, begin);
        path.addPolygon(area);
        path.closeSubpath();
    }
    m_painter.fillPath(path, QColor::fromRgba(ring.stroke.colour));
}

void ShapePainter::dot(QPointF centre, double radius) {
    if (!m_raster) {
        m_painter.drawEllipse(centre, radius, radius);
        return;
    }
    QPolygonF area;
    Circle(radius, m_pixels).add(area, centre, radius, 0, 1);
    m_painter.drawPolygon(area);
}

void ShapePainter::operator()(const PolygonShape& polygon) {
    m_painter.setBrush(brushOf(polygon.fill));
    if (polygon.sides.empty()) {
        m_painter.setPen(penOf(polygon.stroke));
        m_painter.drawPolygon(polygon.corners);
        return;
    }
    Stroke side = polygon.stroke;
    for (std::size_t i = 0; i < polygon.sides.size(); ++i) {
        const auto corner = static_cast<qsizetype>(i);
        side.dash = polygon.sides[i];
        m_painter.setPen(penOf(side));
        m_painter.drawLine(polygon.corners.at(corner), polygon.corners.at((corner + 1) % polygon.corners.size()));
    }
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(QColor::fromRgba(polygon.stroke.colour));
    for (const QPointF& corner : polygon.corners)
        this->dot(corner, polygon.stroke.width / 2);
}

void ShapePainter::operator()(const StrokesShape& strokes) {
    m_painter.setPen(penOf(strokes.stroke));
    m_painter.setBrush(Qt::NoBrush);
    for (const QPolygonF& line : strokes.lines)
        if (line.size() == 1)
            m_painter.drawPoint(line.first());
        else
            m_painter.drawPolyline(line);
}

/// One path for all of them, so that no seam shows between neighbours.
void ShapePainter::operator()(const SquaresShape& squares) {
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    for (std::size_t row = 0; row < squares.dark.size(); ++row)
        for (std::size_t column = 0; column < squares.dark[row].size(); ++column)
            if (squares.dark[row][column])
                path.addRect(QRectF(squares.corner + QPointF(double(column), double(row)) * squares.size,
                                    QSizeF(squares.size, squares.size)));
    m_painter.fillPath(path, QColor::fromRgba(squares.colour));
}

} // namespace

void paint(const Page& page, QPainter& painter, const PaintOptions& options) {
    painter.save();
    painter.setRenderHints(QPainter::Antialiasing | QPainter::TextAntialiasing);
    const QRectF whole(0, 0, page.widthMm, page.heightMm);
    const QRectF clip = options.clipMm.isEmpty() ? whole : options.clipMm;
    if (options.paperFill)
        painter.fillRect(clip & whole, QColor::fromRgba(sheet::paper));
    ShapePainter shapes(painter);
    for (const Item& item : page.items)
        if (clip.intersects(boundingBox(item)))
            std::visit(shapes, item.shape);
    painter.restore();
}

} // namespace setfolio
