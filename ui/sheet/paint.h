// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Paints a page: the same call for the screen, the preview, the printer and the PDF.
#pragma once

#include "ui/sheet/page.h"

#include <QPainter>

namespace setfolio {

struct PaintOptions {
    bool paperFill = false; ///< the tint of the paper, for the screen; never printed
    QRectF clipMm;          ///< only what lies in it need be painted; all of the page where it is empty
};

/// Paints with one unit of the painter to a millimetre and the paper's top left corner at 0, 0. Leaves the painter as
/// it was, and decides nothing.
void paint(const Page& page, QPainter& painter, const PaintOptions& options);

} // namespace setfolio
