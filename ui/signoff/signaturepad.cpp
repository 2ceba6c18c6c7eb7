// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/signoff/signaturepad.h"

#include "core/ledger/limits.h"
#include "ui/look/colours.h"
#include "ui/look/plate.h"

#include <QMouseEvent>
#include <QPainter>
#include <QPainterPath>
#include <QTabletEvent>
#include <QTouchEvent>

#include <algorithm>
#include <cmath>

namespace setfolio {

namespace {

constexpr int unit = limits::strokeExtent; ///< of the recorded points, to the width of the pad
constexpr double leastStep = 1.2;          ///< in pixels: nearer points say nothing
constexpr double penPixels = 2.6;
constexpr double baseline = 0.72; ///< of the height

/// Leaves out every second point between the ends of each stroke until no more than the limit are left.
void thin(std::vector<PenStroke>& strokes) {
    const auto count = [&] {
        std::size_t points = 0;
        for (const PenStroke& stroke : strokes)
            points += stroke.size();
        return points;
    };
    for (std::size_t before = 0; count() > static_cast<std::size_t>(limits::strokePoints) && count() != before;) {
        before = count();
        for (PenStroke& stroke : strokes) {
            PenStroke thinner;
            for (std::size_t i = 0; i < stroke.size(); ++i)
                if (i % 2 == 0 || i + 1 == stroke.size())
                    thinner.push_back(stroke[i]);
            stroke = std::move(thinner);
        }
    }
    while (count() > static_cast<std::size_t>(limits::strokePoints)) // nothing but dots
        strokes.pop_back();
}

} // namespace

SignaturePad::SignaturePad(QWidget* parent) : QWidget(parent) {
    setObjectName(QStringLiteral("signaturePad"));
    setAccessibleName(tr("Sign here by finger, pen or mouse"));
    setAttribute(Qt::WA_AcceptTouchEvents);
    setCursor(Qt::CrossCursor);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    setMinimumSize(320, 140);
}

std::vector<PenStroke> SignaturePad::strokes() const {
    std::vector<PenStroke> strokes;
    if (isEmpty())
        return strokes;
    const quint64 first = m_strokes.front().front().time;
    int last = 0;
    for (const std::vector<Touch>& drawn : m_strokes) {
        PenStroke stroke;
        for (const Touch& touch : drawn) {
            const auto since = static_cast<qint64>(touch.time) - static_cast<qint64>(first);
            last = static_cast<int>(std::clamp<qint64>(since, last, limits::strokeMilliseconds));
            stroke.push_back({std::clamp(qRound(touch.at.x() * unit), 0, unit),
                              std::clamp(qRound(touch.at.y() * unit), 0, unit), last});
        }
        strokes.push_back(std::move(stroke));
    }
    thin(strokes);
    return strokes;
}

void SignaturePad::clear() {
    m_strokes.clear();
    m_drawing = false;
    m_finger.reset();
    update();
    Q_EMIT changed();
}

QSize SignaturePad::sizeHint() const {
    return {720, 240};
}

bool SignaturePad::event(QEvent* event) {
    switch (event->type()) {
    case QEvent::TouchBegin:
    case QEvent::TouchUpdate:
    case QEvent::TouchEnd:
        if (isEnabled() && touch(*static_cast<QTouchEvent*>(event)))
            return true;
        break;
    case QEvent::TouchCancel:
        end();
        return true;
    default:
        break;
    }
    return QWidget::event(event);
}

void SignaturePad::mousePressEvent(QMouseEvent* event) {
    if (event->button() == Qt::LeftButton)
        begin(event->position(), event->timestamp());
}

void SignaturePad::mouseMoveEvent(QMouseEvent* event) {
    draw(event->position(), event->timestamp());
}

void SignaturePad::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton)
        return;
    draw(event->position(), event->timestamp());
    end();
}

void SignaturePad::tabletEvent(QTabletEvent* event) {
    if (event->type() == QEvent::TabletPress && event->button() == Qt::LeftButton)
        begin(event->position(), event->timestamp());
    else if (event->type() == QEvent::TabletMove)
        draw(event->position(), event->timestamp());
    else if (event->type() == QEvent::TabletRelease)
        end();
    event->accept(); // else Qt makes a mouse event of it, and the stroke would be drawn twice
}

bool SignaturePad::touch(const QTouchEvent& event) {
    for (const QEventPoint& point : event.points()) {
        if (point.state() == QEventPoint::Pressed && !m_finger) {
            m_finger = point.id();
            begin(point.position(), event.timestamp());
        } else if (m_finger == point.id()) {
            draw(point.position(), event.timestamp());
            if (point.state() == QEventPoint::Released)
                end();
        }
    }
    return true;
}

void SignaturePad::begin(QPointF pixel, quint64 time) {
    if (m_drawing)
        return;
    m_drawing = true;
    m_strokes.push_back({touchOf(pixel, time)});
    update();
}

void SignaturePad::draw(QPointF pixel, quint64 time) {
    if (!m_drawing)
        return;
    const Touch next = touchOf(pixel, time);
    std::vector<Touch>& stroke = m_strokes.back();
    if (QLineF(stroke.back().at, next.at).length() * width() < leastStep)
        return;
    stroke.push_back(next);
    update();
}

void SignaturePad::end() {
    m_finger.reset();
    if (std::exchange(m_drawing, false))
        Q_EMIT changed();
}

SignaturePad::Touch SignaturePad::touchOf(QPointF pixel, quint64 time) const {
    const QPointF inside(std::clamp(pixel.x(), 0.0, double(width())), std::clamp(pixel.y(), 0.0, double(height())));
    return {inside / std::max(1, width()), time};
}

void SignaturePad::paintEvent(QPaintEvent*) {
    const Colours& onPaper = coloursOf(Theme::Light);
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(coloursOf(themeOf(palette())).edge, 1, isEnabled() ? Qt::SolidLine : Qt::DashLine));
    painter.setBrush(isEnabled() ? Qt::white : palette().color(QPalette::Window));
    painter.drawRoundedRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5), 7, 7);
    painter.setPen(QPen(onPaper.edge, 1));
    painter.drawLine(QPointF(24, height() * baseline), QPointF(width() - 24, height() * baseline));
    if (isEnabled() && isEmpty()) {
        painter.setPen(onPaper.secondary);
        painter.setFont(windowFont(15));
        painter.drawText(QRectF(24, height() * baseline, width() - 48, height() * (1 - baseline)), Qt::AlignCenter,
                         tr("Sign here by finger, pen or mouse"));
    }
    painter.setPen(QPen(onPaper.text, penPixels, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.setBrush(Qt::NoBrush);
    for (const std::vector<Touch>& stroke : m_strokes) {
        QPainterPath path(stroke.front().at * width());
        for (const Touch& touch : stroke)
            path.lineTo(touch.at * width());
        painter.drawPath(path);
    }
}

} // namespace setfolio
