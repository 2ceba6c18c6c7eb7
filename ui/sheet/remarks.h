// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The remarks of a set, broken into lines and shared out over the pages.
#pragma once

#include "ui/sheet/scene.h"

namespace setfolio::sheet {

/// A line of the remarks.
struct RemarkLine {
    int number = 0; ///< of the note that begins here; 0 where one goes on
    QString text;
    EntryNumber entry;
    bool struck = false;
};
using RemarkLines = std::vector<RemarkLine>;

/// What stands where.
struct RemarkPlan {
    RemarkLines foot;  ///< for the feet of the sheets, one after another
    RemarkLines after; ///< for pages of nothing but remarks, broken anew for their wider columns
    int pages = 0;     ///< how many such pages
};
[[nodiscard]] RemarkPlan planRemarks(const Draft& draft, const Scene& scene, int sheets);

/// Writes the next of the lines, as many as fit into the foot of a page, and takes them from the plan. On a page after
/// which more follows, the last line says so.
void drawRemarks(Draft& draft, RemarkPlan& plan, PageNumber page);
/// A page's body of nothing but remarks, in four columns.
void drawRemarksPage(Draft& draft, RemarkPlan& plan);

} // namespace setfolio::sheet
