// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/frame.h"

#include "ui/sheet/grey.h"

namespace setfolio::sheet {

Page framed(Draft& draft, const SheetOptions& options, PageNumber number) {
    const QSizeF whole = sizeOf(options.paper);
    const QSizeF margins = (whole - liveArea) / 2;
    Page page{options.paper, whole.width(), whole.height(), {margins.width(), margins.height()},
              number.number, number.of,     draft.take(),   {}};
    for (Item& item : page.items) {
        translate(item, page.live);
        if (options.inks == InkSet::Greys)
            turnGrey(item);
    }
    return page;
}

} // namespace setfolio::sheet
