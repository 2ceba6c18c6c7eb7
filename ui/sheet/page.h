// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "ui/sheet/flow.h"
#include "ui/sheet/item.h"

#include <QSizeF>

#include <vector>

namespace setfolio {

/// The papers a sheet can be printed on, always on the long side: US Letter 11 x 8.5 inches, A4 by ISO 216.
enum class PaperSize : std::uint8_t { Letter, A4 };

/// Width and height in millimetres.
[[nodiscard]] QSizeF sizeOf(PaperSize paper);

/// The part of every paper that is drawn on, in millimetres: the same drawing on both, centred.
inline constexpr QSizeF liveArea{264, 195};

/// A page of the sheet, composed: a plain value that is ready to be painted.
struct Page {
    PaperSize paper = PaperSize::Letter;
    double widthMm = 0;
    double heightMm = 0;
    QPointF live; ///< top left of the live area on the paper
    int number = 1;
    int of = 1;
    std::vector<Item> items; ///< in the order they are painted
    Flow flow;               ///< how the terms of the whole set were laid out

    [[nodiscard]] QRectF zone(Zone zone) const; ///< where a zone lies on the paper
};

} // namespace setfolio
