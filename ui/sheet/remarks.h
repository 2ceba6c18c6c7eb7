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

[[nodiscard]] RemarkLines remarkLines(const Draft& draft, const Scene& scene);

/// The first of the lines still to be written, those that fit into the foot of a page; the rest stays in `rest`. On a
/// page after which more follows, the last line says so.
void drawRemarks(Draft& draft, RemarkLines& rest, PageNumber page);
/// How many pages of their own the lines need after `sheets` pages with a foot.
[[nodiscard]] int remarkPages(std::size_t lines, int sheets);
/// A page's body of nothing but remarks, in three columns.
void drawRemarksPage(Draft& draft, RemarkLines& rest);

} // namespace setfolio::sheet
