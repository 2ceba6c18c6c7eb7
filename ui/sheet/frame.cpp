// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/frame.h"

namespace setfolio::sheet {

Page framed(Draft& draft, PaperSize size, PageNumber number) {
    const QSizeF whole = sizeOf(size);
    const QSizeF margins = (whole - liveArea) / 2;
    Page page{size,          whole.width(), whole.height(), {margins.width(), margins.height()},
              number.number, number.of,     draft.take(),   {}};
    for (Item& item : page.items)
        translate(item, page.live);
    return page;
}

} // namespace setfolio::sheet
