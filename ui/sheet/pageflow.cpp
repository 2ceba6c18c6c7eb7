// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/pageflow.h"

#include "ui/sheet/frame.h"

namespace setfolio::sheet {

namespace {

constexpr double tableGap = 4;

} // namespace

Draft& Bodies::add() {
    m_drafts.push_back(std::make_unique<Draft>(m_fonts));
    return *m_drafts.back();
}

void Bodies::flow(std::vector<TablePen> tables) {
    Draft* draft = nullptr;
    int column = 1;
    double y = bodyBottom; // the first table begins a page
    for (TablePen& table : tables) {
        while (!table.isDone()) {
            if (y + table.leastHeight() > bodyBottom) {
                column = 1 - column;
                draft = column == 0 || !draft ? &add() : draft;
                y = blockTop;
            }
            const double left = column * (halfWidth + columnGap);
            y = table.draw(*draft, Zone::Body, {QPointF(left, y), QPointF(left + halfWidth, bodyBottom)}, true);
            y = table.isDone() ? y + tableGap : bodyBottom;
        }
    }
}

std::vector<Page> Bodies::pages(const MatchOpened& opened, const SheetOptions& options, const Masthead& masthead) {
    std::vector<Page> pages;
    for (int number = 1; number <= count(); ++number) {
        Draft& draft = *m_drafts[static_cast<std::size_t>(number - 1)];
        drawMasthead(draft, opened, options, masthead, {number, count()});
        pages.push_back(framed(draft, options, {number, count()}));
    }
    return pages;
}

} // namespace setfolio::sheet
