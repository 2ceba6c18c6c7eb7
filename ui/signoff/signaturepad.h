// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Where one signs: by finger, pen or mouse.
#pragma once

#include "core/match/signoffentries.h"

#include <QWidget>

#include <optional>

class QTouchEvent;

namespace setfolio {

/// Takes strokes as vectors with their times; the times are those of the events. Paper is white in every theme.
class SignaturePad : public QWidget {
    Q_OBJECT

public:
    explicit SignaturePad(QWidget* parent = nullptr);

    /// What has been drawn, in the unit and within the limits of a recorded signature; empty for nothing.
    [[nodiscard]] std::vector<PenStroke> strokes() const;
    [[nodiscard]] bool isEmpty() const { return m_strokes.empty(); }
    void clear();

    [[nodiscard]] QSize sizeHint() const override;

Q_SIGNALS:
    /// A stroke has ended, or all is cleared.
    void changed();

protected:
    bool event(QEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;
    void mouseMoveEvent(QMouseEvent* event) override;
    void mouseReleaseEvent(QMouseEvent* event) override;
    void tabletEvent(QTabletEvent* event) override;
    void paintEvent(QPaintEvent* event) override;

private:
    /// A place of the pen, in parts of the pad's width, and when it was there, in milliseconds of the events' clock.
    struct Touch {
        QPointF at;
        quint64 time = 0;
    };

    bool touch(const QTouchEvent& event);
    void begin(QPointF pixel, quint64 time);
    void draw(QPointF pixel, quint64 time);
    void end();
    [[nodiscard]] Touch touchOf(QPointF pixel, quint64 time) const;

    std::vector<std::vector<Touch>> m_strokes;
    bool m_drawing = false;
    std::optional<int> m_finger; ///< the one that draws; others do not count
};

} // namespace setfolio
