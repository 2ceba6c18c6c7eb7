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

/// What stands where. A remark that a page can hold is never divided between two.
struct RemarkPlan {
    std::vector<RemarkLines> feet;  ///< of the sheets, one after another
    std::vector<RemarkLines> pages; ///< of nothing but remarks, broken for their wider columns

    /// The page on which those go on that follow a sheet's foot; none where nothing follows.
    [[nodiscard]] std::optional<int> pageAfter(int sheet) const;
};
/// The names that their places have no room for, the sanctions that the foot has no line for, the numbers that a slot
/// has no room for, and the notes of the set.
[[nodiscard]] RemarkPlan planRemarks(const Draft& draft, const Scene& scene, const QStringList& cutShort, int sheets);

/// The remarks in the foot of a sheet; the last line says where they go on.
void drawRemarks(Draft& draft, const RemarkPlan& plan, int sheet);
/// A page's body of nothing but remarks, in four columns.
void drawRemarksPage(Draft& draft, const RemarkLines& lines);

} // namespace setfolio::sheet
