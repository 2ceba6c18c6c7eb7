// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Which part of a page a window shows, and how large: geometry without a widget. Places on the page are millimetres
/// from the top left of the live area, those on the screen are pixels.
#pragma once

#include "ui/table/sight.h"

#include <QPointF>
#include <QRectF>
#include <QSizeF>

namespace setfolio {

class SheetSight {
public:
    [[nodiscard]] Sight sight() const { return m_sight; }
    void setSight(Sight sight);
    void setRoom(QSizeF pixels);
    /// How far the live band has moved down with the score.
    void setFollowed(double millimetres);
    [[nodiscard]] double followed() const { return m_followed; }

    /// A larger (1) or smaller (-1) scale; what lies at `at` stays there.
    void zoom(int direction, QPointF at);
    /// The scale times a factor, as two fingers ask for it.
    void stretch(double factor, QPointF at);
    /// Moves the page under the window.
    void pan(QPointF pixels);
    /// Brings a place into sight: to the middle, unless it is in sight already. True if anything moved.
    bool reveal(QPointF place);
    /// Back to where the sight of its kind begins.
    void begin();

    [[nodiscard]] QRectF source() const; ///< the part that is shown
    [[nodiscard]] double scale() const;  ///< pixels of a millimetre
    [[nodiscard]] QPointF pixelOf(QPointF place) const;
    [[nodiscard]] QPointF placeOf(QPointF pixels) const;

private:
    [[nodiscard]] double widthScale() const;
    [[nodiscard]] double wholeScale() const;
    void enlarge(double scale, QPointF at);
    void keepInside();

    Sight m_sight = Sight::LiveBand;
    QSizeF m_room{1, 1};
    double m_followed = 0;
    double m_scrolled = 0; ///< of the live band, by the wheel
    double m_scale = 1;    ///< enlarged
    QPointF m_topLeft;     ///< of what is shown, where that is free
};

} // namespace setfolio
