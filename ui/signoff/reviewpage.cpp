// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/signoff/reviewpage.h"

#include "ui/look/controls.h"
#include "ui/look/plate.h"
#include "ui/signoff/scorehead.h"
#include "ui/signoff/sheetpane.h"
#include "ui/signoff/wrappedlines.h"

#include <QHBoxLayout>
#include <QListWidget>
#include <QVBoxLayout>

namespace setfolio {

ReviewPage::ReviewPage(const SignOffReview& review, const MatchRecord& record, const MatchState& state,
                       SheetFonts fonts, QWidget* parent)
    : QWidget(parent),
      m_lines(linesOf(review, state)),
      m_list(new QListWidget(this)),
      m_sheet(new SheetPane(record, std::move(fonts), this)) {
    m_list->setObjectName(QStringLiteral("reviewLines"));
    m_list->setAccessibleName(tr("What stands on the sheet"));
    wrapLines(*m_list);
    for (const ReviewLine& line : m_lines)
        addLine(line);
    auto* left = new QVBoxLayout;
    left->setSpacing(10);
    left->addWidget(makeScoreHead(review, state));
    left->addWidget(m_list, 1);
    auto* row = new QHBoxLayout(this);
    row->setContentsMargins(0, 0, 0, 0);
    row->setSpacing(12);
    row->addLayout(left, 5);
    row->addWidget(m_sheet, 6);
    connect(m_list, &QListWidget::currentRowChanged, this, &ReviewPage::showMark);
    m_sheet->show(review.sets.empty() ? 0 : review.sets.back().sheet, {});
    setFocusProxy(m_list);
}

void ReviewPage::addLine(const ReviewLine& line) {
    auto* item = new QListWidgetItem(line.words, m_list);
    switch (line.kind) {
    case ReviewLine::Kind::Heading:
        item->setFont(windowFont(14, QFont::DemiBold));
        item->setFlags(Qt::NoItemFlags);
        break;
    case ReviewLine::Kind::Fact:
        item->setFont(windowFont(17));
        break;
    case ReviewLine::Kind::Attention:
        item->setFont(windowFont(17, QFont::Bold));
        break;
    }
}

void ReviewPage::showMark(int row) {
    if (row < 0)
        return;
    const ReviewLine& line = m_lines[static_cast<std::size_t>(row)];
    m_sheet->show(line.sheet, line.entry);
}

} // namespace setfolio
