// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A paint device that notes what is drawn on it, and a widget that draws the same plainly.
#pragma once

#include <QGlyphRun>
#include <QPaintDevice>
#include <QPaintEngine>
#include <QPaintEvent>
#include <QPainter>
#include <QPainterPath>
#include <QTextLayout>
#include <QWidget>

#include <vector>

namespace setfolio::bench {

/// One call of QPainter: what kind of thing, where, and for a text which.
struct DrawnCall {
    enum class Kind { Line, Box, Ring, Text };
    Kind kind = Kind::Box;
    QRectF where;            ///< in pixels of the window; a line runs from corner to corner
    QList<QGlyphRun> glyphs; ///< of a text, shaped beforehand
};
using DrawnCalls = std::vector<DrawnCall>;

/// A text whose baseline begins at a point.
inline DrawnCall textCall(const QString& text, const QFont& font, QPointF at) {
    QTextLayout layout(text, font);
    layout.beginLayout();
    const QTextLine line = layout.createLine();
    layout.endLayout();
    return {DrawnCall::Kind::Text, QRectF(at - QPointF(0, line.ascent()), line.naturalTextRect().size()),
            layout.glyphRuns()};
}

/// Notes lines, texts, and by its bounding box everything that is filled or outlined. Pictures count as boxes.
class NotingEngine : public QPaintEngine {
public:
    explicit NotingEngine(DrawnCalls& calls) : QPaintEngine(AllFeatures), m_calls(calls) {}

    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    Type type() const override { return User; }
    void updateState(const QPaintEngineState& now) override {
        if (now.state() & DirtyTransform)
            m_transform = now.transform();
    }
    void drawLines(const QLineF* lines, int count) override {
        for (int i = 0; i < count; ++i)
            note(DrawnCall::Kind::Line, QRectF(lines[i].p1(), lines[i].p2()));
    }
    void drawRects(const QRectF* rects, int count) override {
        for (int i = 0; i < count; ++i)
            note(DrawnCall::Kind::Box, rects[i]);
    }
    void drawEllipse(const QRectF& rect) override { note(DrawnCall::Kind::Ring, rect); }
    void drawPath(const QPainterPath& path) override { note(DrawnCall::Kind::Box, path.boundingRect()); }
    void drawPolygon(const QPointF* points, int count, PolygonDrawMode) override {
        note(DrawnCall::Kind::Box, QPolygonF(QList<QPointF>(points, points + count)).boundingRect());
    }
    void drawPixmap(const QRectF& rect, const QPixmap&, const QRectF&) override { note(DrawnCall::Kind::Box, rect); }
    void drawTextItem(const QPointF& point, const QTextItem& item) override {
        m_calls.push_back(textCall(item.text(), item.font(), m_transform.map(point)));
    }

private:
    void note(DrawnCall::Kind kind, const QRectF& rect) { m_calls.push_back({kind, m_transform.mapRect(rect), {}}); }

    DrawnCalls& m_calls;
    QTransform m_transform;
};

class NotingDevice : public QPaintDevice {
public:
    NotingDevice(QSize size, DrawnCalls& calls) : m_size(size), m_engine(calls) {}
    ~NotingDevice() override = default;
    QPaintEngine* paintEngine() const override { return const_cast<NotingEngine*>(&m_engine); }

protected:
    int metric(PaintDeviceMetric metric) const override {
        switch (metric) {
        case PdmWidth:
            return m_size.width();
        case PdmHeight:
            return m_size.height();
        case PdmDepth:
            return 32;
        case PdmDevicePixelRatio:
            return 1;
        case PdmDevicePixelRatioScaled:
            return static_cast<int>(devicePixelRatioFScale());
        default:
            return 96;
        }
    }

private:
    QSize m_size;
    NotingEngine m_engine;
};

/// A window without state, layout or children that draws a list of calls.
class BareWindow : public QWidget {
public:
    explicit BareWindow(QSize size) {
        setAttribute(Qt::WA_OpaquePaintEvent);
        resize(size);
        show();
    }
    void draw(const DrawnCalls& calls, const QRegion& region) {
        m_calls = &calls;
        repaint(region);
        m_calls = nullptr;
    }

protected:
    void paintEvent(QPaintEvent* event) override {
        QPainter painter(this);
        painter.setRenderHint(QPainter::Antialiasing);
        for (const QRect& part : event->region())
            painter.fillRect(part, Qt::white);
        if (!m_calls)
            return;
        painter.setPen(QPen(Qt::black, 1));
        for (const DrawnCall& call : *m_calls)
            drawOne(painter, call);
    }

private:
    static void drawOne(QPainter& painter, const DrawnCall& call) {
        switch (call.kind) {
        case DrawnCall::Kind::Line:
            painter.drawLine(call.where.topLeft(), call.where.bottomRight());
            return;
        case DrawnCall::Kind::Box:
            painter.drawRect(call.where);
            return;
        case DrawnCall::Kind::Ring:
            painter.drawEllipse(call.where);
            return;
        case DrawnCall::Kind::Text:
            for (const QGlyphRun& run : call.glyphs)
                painter.drawGlyphRun(call.where.topLeft(), run);
            return;
        }
    }

    const DrawnCalls* m_calls = nullptr;
};

} // namespace setfolio::bench
