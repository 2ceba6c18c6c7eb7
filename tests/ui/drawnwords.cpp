// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/ui/drawnwords.h"

#include <QPaintDevice>
#include <QPaintEngine>
#include <QPainter>

namespace setfolio::testing {

namespace {

/// Takes everything that is drawn and keeps the words.
class Catcher : public QPaintEngine {
public:
    Catcher() : QPaintEngine(AllFeatures) {}
    [[nodiscard]] std::vector<DrawnWords> caught() const { return m_caught; }

    bool begin(QPaintDevice*) override { return true; }
    bool end() override { return true; }
    void updateState(const QPaintEngineState&) override {}
    void drawPixmap(const QRectF&, const QPixmap&, const QRectF&) override {}
    void drawPath(const QPainterPath&) override {}
    void drawPolygon(const QPointF*, int, PolygonDrawMode) override {}
    void drawTextItem(const QPointF& at, const QTextItem& item) override {
        const QRectF place(at.x(), at.y() - item.ascent(), item.width(), item.ascent() + item.descent());
        m_caught.push_back({item.text(), painter()->combinedTransform().mapRect(place)});
    }
    [[nodiscard]] Type type() const override { return User; }

private:
    std::vector<DrawnWords> m_caught;
};

/// A device of the widget's size and resolution.
class Device : public QPaintDevice {
public:
    explicit Device(const QWidget& widget) : m_widget(widget) {}
    [[nodiscard]] QPaintEngine* paintEngine() const override { return &m_catcher; }
    [[nodiscard]] std::vector<DrawnWords> caught() const { return m_catcher.caught(); }

protected:
    [[nodiscard]] int metric(PaintDeviceMetric metric) const override {
        switch (metric) {
        case PdmWidth:
            return m_widget.width();
        case PdmHeight:
            return m_widget.height();
        case PdmDpiX:
        case PdmPhysicalDpiX:
            return m_widget.logicalDpiX();
        case PdmDpiY:
        case PdmPhysicalDpiY:
            return m_widget.logicalDpiY();
        case PdmDepth:
            return 32;
        case PdmNumColors:
            return 1 << 24;
        case PdmWidthMM:
        case PdmHeightMM:
        case PdmDevicePixelRatio:
            return 1;
        case PdmDevicePixelRatioScaled:
            return static_cast<int>(devicePixelRatioFScale());
        }
        return 0;
    }

private:
    const QWidget& m_widget;
    mutable Catcher m_catcher;
};

} // namespace

std::vector<DrawnWords> wordsDrawnBy(QWidget& widget) {
    Device device(widget);
    QPainter painter(&device);
    widget.render(&painter, {}, {}, {});
    painter.end();
    return device.caught();
}

} // namespace setfolio::testing
