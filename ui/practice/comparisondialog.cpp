// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/practice/comparisondialog.h"

#include "ui/dialogs/pieces.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/wording/differencewords.h"

#include <QHBoxLayout>
#include <QHeaderView>
#include <QPushButton>
#include <QTableWidget>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr QSize usual(860, 560);
constexpr int rowHeight = 44;

} // namespace

ComparisonDialog::ComparisonDialog(const Compared& compared, QWidget* parent) : QDialog(parent) {
    setObjectName(u"comparison"_s);
    setWindowTitle(tr("Your sheet and the right one"));
    dress(*this);
    const std::vector<Difference> differences = differencesOf(compared.right, compared.hers);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 16);
    column->setSpacing(12);
    column->addWidget(pieces::heading(windowTitle(), 22));
    auto* result = pieces::explanation(resultOfPractice(marksRight(compared.right, compared.hers), differences.size()));
    result->setObjectName(u"result"_s);
    column->addWidget(result);
    auto* notCompared = pieces::explanation(tr("Times of day, captains and remarks are not compared."));
    notCompared->setObjectName(u"notCompared"_s);
    column->addWidget(notCompared);
    if (!differences.empty())
        column->addWidget(makeTable(differences, compared.state), 1);
    auto* buttons = new QHBoxLayout;
    QPushButton* right = pieces::button(tr("Show the right sheet…"), u"rightSheet"_s);
    QPushButton* print = pieces::button(tr("Print your sheet…"), u"printHers"_s);
    QPushButton* close = pieces::button(tr("Go back to the table"), u"close"_s);
    makePrimary(*close);
    close->setDefault(true);
    buttons->addWidget(right);
    buttons->addWidget(print);
    buttons->addStretch();
    buttons->addWidget(close);
    column->addLayout(buttons);
    connect(right, &QPushButton::clicked, this, &ComparisonDialog::rightSheetAsked);
    connect(print, &QPushButton::clicked, this, &ComparisonDialog::printAsked);
    connect(close, &QPushButton::clicked, this, &QDialog::accept);
    giveRoom(*this, differences.empty() ? QSize(usual.width(), sizeHint().height()) : usual);
}

QTableWidget* ComparisonDialog::makeTable(const std::vector<Difference>& differences, const MatchState& state) {
    auto* table = new QTableWidget(static_cast<int>(differences.size()), 3);
    table->setObjectName(u"differences"_s);
    table->setAccessibleName(tr("What differs"));
    table->setHorizontalHeaderLabels({tr("Where"), tr("The right sheet"), tr("Your sheet")});
    table->horizontalHeader()->setSectionResizeMode(QHeaderView::Stretch);
    table->verticalHeader()->hide();
    table->verticalHeader()->setDefaultSectionSize(scaled(rowHeight));
    table->setEditTriggers(QAbstractItemView::NoEditTriggers);
    table->setSelectionBehavior(QAbstractItemView::SelectRows);
    table->setTabKeyNavigation(false);
    for (int row = 0; row < table->rowCount(); ++row) {
        const DifferenceWords words = wordsFor(differences[static_cast<std::size_t>(row)], state);
        int columnOf = 0;
        for (const QString& text : {words.where, words.right, words.hers})
            table->setItem(row, columnOf++, new QTableWidgetItem(text));
    }
    return table;
}

} // namespace setfolio
