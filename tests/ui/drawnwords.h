// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The words that a widget draws, caught on their way to the screen.
#pragma once

#include <QRectF>
#include <QString>
#include <QWidget>

#include <vector>

namespace setfolio::testing {

struct DrawnWords {
    QString text;
    QRectF place; ///< in the widget
};

/// Without those of its children.
[[nodiscard]] std::vector<DrawnWords> wordsDrawnBy(QWidget& widget);

} // namespace setfolio::testing
