// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The serving order that a line-up gives, slot I to VI, as it will stand on the sheet.
#pragma once

#include "core/match/ids.h"

#include <QWidget>

#include <array>
#include <optional>

namespace setfolio {

class OrderStrip : public QWidget {
    Q_OBJECT

public:
    explicit OrderStrip(QWidget* parent = nullptr);

    /// None: who serves first is not known yet.
    void setOrder(const std::optional<std::array<ShirtNumber, 6>>& order, bool servesFirst);
    [[nodiscard]] QSize sizeHint() const override;

protected:
    void paintEvent(QPaintEvent* event) override;

private:
    void paintCell(QPainter& painter, const QRectF& place, Slot slot) const;

    std::optional<std::array<ShirtNumber, 6>> m_order;
    bool m_servesFirst = false;
};

} // namespace setfolio
