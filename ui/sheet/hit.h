// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Where on a page something is, and where two pages differ.
#pragma once

#include "ui/sheet/page.h"

#include <vector>

namespace setfolio {

/// What a click at this place of the paper means: of the items that tell of an entry, the one whose middle is nearest,
/// if the place lies in it or within half a millimetre of it; none elsewhere.
[[nodiscard]] const Item* itemAt(const Page& page, QPointF mm);

/// The rectangles of the paper that must be painted again when one page takes the place of the other, with a little
/// room for the edges; the whole paper where the pages are of different size. Few, and together close to the least
/// area.
[[nodiscard]] std::vector<QRectF> changedRects(const Page& before, const Page& after);

} // namespace setfolio
