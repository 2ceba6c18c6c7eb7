// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "tests/ui/table/opentable.h"
#include "ui/table/tabledialogs.h"

namespace setfolio::testing {

/// The dialogs of the program itself, by the clock of the table.
inline TableDialogs realDialogs(const OpenTable& table) {
    auto fonts = SheetFonts::load();
    if (!fonts)
        qFatal("the sheet's typeface is missing");
    return standardDialogs(*fonts, Clock{[&table] { return table.now; }, [&table] { return table.timeOfDay; }});
}

} // namespace setfolio::testing
