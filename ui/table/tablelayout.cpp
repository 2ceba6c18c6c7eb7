// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/tablelayout.h"

#include "ui/table/deck.h"
#include "ui/table/noticeband.h"
#include "ui/table/panel.h"
#include "ui/table/sheetview.h"

#include <QGridLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>

namespace setfolio {

namespace {

constexpr double lowestSheet = 260; ///< of the drawing: the live band of both teams

} // namespace

TableLayout::TableLayout(QWidget& ground, const TableParts& parts, bool stacked)
    : m_parts(parts),
      m_stacked(stacked),
      m_bands(new QVBoxLayout) {
    m_bands->addWidget(parts.band);
    stacked ? stack(ground) : layOut(ground);
}

void TableLayout::setLook(const Look& look) {
    m_bands->setSpacing(look.whole(10));
    if (m_stacked) {
        m_grid->setContentsMargins(look.whole(6), look.whole(6), look.whole(6), look.whole(6));
        m_grid->setHorizontalSpacing(look.whole(7));
        m_grid->setVerticalSpacing(look.whole(7));
        m_parts.sheet->setMinimumHeight(look.whole(lowestSheet));
        return;
    }
    m_column->setContentsMargins(look.whole(10), look.whole(9), look.whole(10), look.whole(10));
    m_column->setSpacing(look.whole(10));
    m_upper->setSpacing(look.whole(9));
}

void TableLayout::addBand(QWidget& band) {
    m_bands->insertWidget(1, &band);
    band.show();
}

void TableLayout::layOut(QWidget& ground) {
    m_bands->addWidget(m_parts.sheet, 1); // a band takes its height from the sheet, so that the window needs no more
    m_upper = new QHBoxLayout;
    m_upper->addLayout(m_bands, 1);
    m_upper->addWidget(m_parts.panel);
    m_column = new QVBoxLayout(&ground);
    m_column->addLayout(m_upper, 1);
    m_column->addWidget(m_parts.deck);
}

/// The bands; the server beside the court; the teams; the newest entries and the other buttons beside the sheet.
void TableLayout::stack(QWidget& ground) {
    m_grid = new QGridLayout(&ground);
    m_grid->addLayout(m_bands, 0, 0, 1, 2);
    m_grid->addWidget(m_parts.panel, 1, 0);
    m_grid->addWidget(&m_parts.deck->middle(), 1, 1);
    m_grid->addWidget(m_parts.deck, 2, 0, 1, 2);
    m_grid->addWidget(&m_parts.panel->detachLower(), 3, 0);
    m_grid->addWidget(m_parts.sheet, 3, 1);
    m_grid->setColumnStretch(1, 1);
    m_grid->setRowStretch(3, 1);
}

} // namespace setfolio
