// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/sheetsight.h"

#include "ui/sheet/page.h"

#include <algorithm>
#include <cmath>

namespace setfolio {

namespace {

constexpr double margin = 1.5; ///< of paper round the live area
constexpr double step = 1.25;
constexpr double largest = 40; ///< pixels of a millimetre: a mark fills the height of the window
// The live band: both teams' blocks and the ladder beside them.
constexpr double bandTop = 18;
constexpr double bandHeight = 134;

QRectF whole() {
    return QRectF(QPointF(), liveArea).adjusted(-margin, -margin, margin, margin);
}

/// `value` kept so that a window of `room` over `from` to `to` shows nothing beyond; in the middle where all is shown.
double kept(double value, double room, double from, double to) {
    return room >= to - from ? (from + to - room) / 2 : std::clamp(value, from, to - room);
}

} // namespace

void SheetSight::setSight(Sight sight) {
    const QRectF seen = source();
    if (sight == Sight::Enlarged)
        m_scale = scale();
    m_sight = sight;
    m_scrolled = 0;
    m_topLeft = seen.topLeft();
    keepInside();
}

void SheetSight::setRoom(QSizeF pixels) {
    m_room = pixels.expandedTo({1, 1});
    keepInside();
}

void SheetSight::setFollowed(double millimetres) {
    m_followed = std::clamp(millimetres, 0.0, liveArea.height() + margin - bandTop - bandHeight);
}

void SheetSight::zoom(int direction, QPointF at) {
    enlarge(scale() * (direction > 0 ? step : 1 / step), at);
}

void SheetSight::stretch(double factor, QPointF at) {
    enlarge(scale() * factor, at);
}

void SheetSight::pan(QPointF pixels) {
    if (m_sight == Sight::LiveBand) {
        const double room = liveArea.height() + margin - bandTop - m_room.height() / scale();
        m_scrolled = std::clamp(m_scrolled - pixels.y() / scale(), -bandTop - margin - m_followed,
                                std::max(0.0, room - m_followed));
        return;
    }
    m_topLeft -= pixels / scale();
    keepInside();
}

bool SheetSight::reveal(QPointF place) {
    const QRectF seen = source();
    if (m_sight == Sight::LiveBand || m_sight == Sight::WholePage || seen.contains(place))
        return false;
    m_topLeft = place - QPointF(seen.width(), seen.height()) / 2;
    keepInside();
    return source() != seen;
}

void SheetSight::begin() {
    m_scrolled = 0;
}

QRectF SheetSight::source() const {
    switch (m_sight) {
    case Sight::LiveBand:
        return {-margin, bandTop + m_followed + m_scrolled, whole().width(), bandHeight};
    case Sight::WholePage:
        return whole();
    case Sight::PageWidth:
    case Sight::Enlarged:
        return {m_topLeft, m_room / scale()};
    }
    Q_UNREACHABLE();
}

double SheetSight::scale() const {
    switch (m_sight) {
    case Sight::LiveBand:
        return std::min(widthScale(), m_room.height() / bandHeight);
    case Sight::WholePage:
        return wholeScale();
    case Sight::PageWidth:
        return widthScale();
    case Sight::Enlarged:
        return m_scale;
    }
    Q_UNREACHABLE();
}

QPointF SheetSight::pixelOf(QPointF place) const {
    const QRectF part = source();
    const double left = (m_room.width() - part.width() * scale()) / 2;
    const double top = m_sight == Sight::WholePage ? (m_room.height() - part.height() * scale()) / 2 : 0;
    // Whole pixels, so that a part drawn again meets the rest.
    return QPointF(std::round(left) + 1, std::round(top) + 1) + (place - part.topLeft()) * scale();
}

QPointF SheetSight::placeOf(QPointF pixels) const {
    return (pixels - pixelOf({0, 0})) / scale();
}

double SheetSight::widthScale() const {
    return m_room.width() / whole().width();
}

double SheetSight::wholeScale() const {
    return std::min(widthScale(), m_room.height() / whole().height());
}

void SheetSight::enlarge(double scale, QPointF at) {
    const QPointF held = placeOf(at);
    m_scale = std::clamp(scale, wholeScale(), std::max(largest, wholeScale()));
    m_sight = Sight::Enlarged;
    m_topLeft = held - (at - QPointF(1, 1)) / m_scale;
    keepInside();
}

void SheetSight::keepInside() {
    const QSizeF room = m_room / scale();
    const QRectF paper = whole();
    m_topLeft = {kept(m_topLeft.x(), room.width(), paper.left(), paper.right()),
                 kept(m_topLeft.y(), room.height(), paper.top(), paper.bottom())};
}

} // namespace setfolio
