// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Strokes on a signature pad, by each kind of pointer, through the events that Qt makes of a real one.
#pragma once

#include "ui/signoff/signaturepad.h"

#include <QPointingDevice>
#include <QTabletEvent>
#include <QTest>

namespace setfolio::testing {

/// Places of a wave across the middle of a pad.
inline std::vector<QPoint> wave(const QWidget& pad, int points = 30, double from = 0.2, double to = 0.8) {
    std::vector<QPoint> places;
    for (int i = 0; i < points; ++i) {
        const double along = from + (to - from) * i / (points - 1);
        places.emplace_back(qRound(along * pad.width()), qRound((0.5 + (i % 4 - 1.5) * 0.1) * pad.height()));
    }
    return places;
}

inline void drawByMouse(SignaturePad& pad, const std::vector<QPoint>& places) {
    QTest::mousePress(&pad, Qt::LeftButton, {}, places.front());
    for (const QPoint& place : places)
        QTest::mouseMove(&pad, place, 2);
    QTest::mouseRelease(&pad, Qt::LeftButton, {}, places.back());
}

inline void drawByFinger(SignaturePad& pad, const std::vector<QPoint>& places) {
    static QPointingDevice* screen = QTest::createTouchDevice();
    QTest::touchEvent(&pad, screen).press(1, places.front());
    for (const QPoint& place : places) {
        QTest::qWait(2);
        QTest::touchEvent(&pad, screen).move(1, place);
    }
    QTest::touchEvent(&pad, screen).release(1, places.back());
}

inline void drawByPen(SignaturePad& pad, const std::vector<QPoint>& places) {
    static QPointingDevice pen(QStringLiteral("pen"), 77, QInputDevice::DeviceType::Stylus,
                               QPointingDevice::PointerType::Pen,
                               QInputDevice::Capability::Position | QInputDevice::Capability::Pressure, 1, 3);
    quint64 time = 1000;
    const auto send = [&](QEvent::Type type, QPoint at, Qt::MouseButton button, Qt::MouseButtons buttons) {
        QTabletEvent event(type, &pen, at, pad.mapToGlobal(QPointF(at)), 0.5, 0, 0, 0, 0, 0, {}, button, buttons);
        event.setTimestamp(time += 8);
        QCoreApplication::sendEvent(&pad, &event);
    };
    send(QEvent::TabletPress, places.front(), Qt::LeftButton, Qt::LeftButton);
    for (const QPoint& place : places)
        send(QEvent::TabletMove, place, Qt::NoButton, Qt::LeftButton);
    send(QEvent::TabletRelease, places.back(), Qt::LeftButton, Qt::NoButton);
}

} // namespace setfolio::testing
