// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Composes the sheet of a set: the record in, pages of items out.
#pragma once

#include "core/record/record.h"
#include "ui/sheet/page.h"
#include "ui/wording/inkset.h"

#include <QLocale>

#include <optional>
#include <vector>

namespace setfolio {

struct SheetOptions {
    SheetFonts fonts;
    PaperSize paper = PaperSize::Letter;
    bool screen = false;           ///< the cell that is being served in stands out
    QLocale locale = QLocale::c(); ///< for the date and the times of day
    /// On the screen, the flow of the page as it was shown last: then columns and sizes change only when they must.
    std::optional<Flow> former;
    InkSet inks = InkSet::CobaltAndRust;
    /// When a set in play was printed, local time of day: its sheet says that this is how it stands. Invalid: it does
    /// not say so.
    QTime standsAt = {};
    int leastColumns = 3; ///< rounds that there is a column for, written or not
    bool named = false;   ///< the head says that persons are named
    int utcOffset = 0;    ///< seconds from UTC to the local time of the match, for times of entries
};

/// At least one page. What does not fit on one goes on to the next under the same header; nothing is written smaller
/// than 6 pt, and nothing is left out. The same arguments give the same pages.
[[nodiscard]] std::vector<Page> composeSet(const MatchHeading& heading, const SetRecord& set,
                                           const SheetOptions& options);

} // namespace setfolio
