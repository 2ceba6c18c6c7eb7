// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Where the parts of the table's window stand: the sheet over the deck with the panel beside it; or, with larger
/// words, above one another in the order of what is looked at most, for the window to scroll.
#pragma once

#include "ui/table/look.h"

#include <QWidget>

class QBoxLayout;
class QGridLayout;

namespace setfolio {

class Deck;
class NoticeBand;
class Panel;
class SheetView;

struct TableParts {
    NoticeBand* band;
    SheetView* sheet;
    Panel* panel;
    Deck* deck;
};

class TableLayout {
public:
    /// Puts the parts into `ground`, which takes them over with the layouts.
    TableLayout(QWidget& ground, const TableParts& parts, bool stacked);

    void setLook(const Look& look);
    /// A band of somebody else's, under the notices.
    void addBand(QWidget& band);

private:
    void layOut(QWidget& ground);
    void stack(QWidget& ground);

    TableParts m_parts;
    bool m_stacked;
    QBoxLayout* m_bands; ///< with the sheet, which gives them their height, or above everything
    QBoxLayout* m_upper = nullptr;
    QBoxLayout* m_column = nullptr;
    QGridLayout* m_grid = nullptr;
};

} // namespace setfolio
