// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/paint.h"

#include "core/match/entry.h"
#include "ui/sheet/palette.h"

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

/// Paints shapes on a painter whose unit is the millimetre.
class ShapePainter {
public:
    explicit ShapePainter(QPainter& painter) : m_painter(painter), m_millimetres(painter.transform()) {}

    void operator()(const TextShape& text);
    void operator()(const LineShape& line);
    void operator()(const RectShape& rect);
    void operator()(const RingShape& ring);
    void operator()(const PolygonShape& polygon);

private:
    QPainter& m_painter;
    QTransform m_millimetres;
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
    m_painter.setPen(penOf(ring.stroke));
    m_painter.setBrush(Qt::NoBrush);
    m_painter.drawEllipse(ring.centre, ring.radius, ring.radius);
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
    const double dot = polygon.stroke.width / 2;
    m_painter.setPen(Qt::NoPen);
    m_painter.setBrush(QColor::fromRgba(polygon.stroke.colour));
    for (const QPointF& corner : polygon.corners)
        m_painter.drawEllipse(corner, dot, dot);
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
