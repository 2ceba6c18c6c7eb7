// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Tables that go on from column to column and from page to page.
#pragma once

#include "ui/sheet/compose.h"
#include "ui/sheet/masthead.h"
#include "ui/sheet/table.h"

#include <functional>

namespace setfolio::sheet {

inline constexpr double bodyBottom = liveBottom;
/// Two columns of the body.
inline constexpr double columnGap = 4;
inline constexpr double halfWidth = (ladderRight - columnGap) / 2;

/// Bodies of pages, one after another; the heads come last, when it is known how many pages there are.
class Bodies {
public:
    explicit Bodies(const SheetFonts& fonts) : m_fonts(fonts) {}

    /// A new page; it stays where it is.
    Draft& add();
    [[nodiscard]] int count() const { return static_cast<int>(m_drafts.size()); }
    /// Writes what is left of the tables into two columns of as many pages as it takes.
    void flow(std::vector<TablePen> tables);
    /// The pages, each under the masthead.
    [[nodiscard]] std::vector<Page> pages(const MatchOpened& opened, const SheetOptions& options,
                                          const Masthead& masthead);

private:
    const SheetFonts& m_fonts;
    std::vector<std::unique_ptr<Draft>> m_drafts;
};

} // namespace setfolio::sheet
