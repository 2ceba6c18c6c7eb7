// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rulebookview.h"

#include "ui/dialogs/pieces.h"
#include "ui/look/plate.h"
#include "ui/wording/rulebookwords.h"

#include <QGridLayout>
#include <QLabel>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

QLabel* wrapped(const QString& text, const QFont& font) {
    auto* label = new QLabel(text);
    label->setFont(font);
    label->setTextFormat(Qt::PlainText);
    label->setWordWrap(true);
    return label;
}

void addSetting(QGridLayout& grid, int row, const SettingWords& setting) {
    auto* value = wrapped(setting.value, windowFont(14, QFont::Bold));
    value->setWordWrap(false);
    value->setAlignment(Qt::AlignRight | Qt::AlignTop);
    auto* source = wrapped(setting.source, windowFont(12));
    source->setProperty("secondary", true);
    source->setContentsMargins(0, 0, 0, 8);
    const bool alone = setting.value.isEmpty();
    grid.addWidget(wrapped(setting.label, windowFont(14, QFont::Medium)), 2 * row, 0, 1, alone ? 2 : 1);
    if (!alone)
        grid.addWidget(value, 2 * row, 1);
    grid.addWidget(source, 2 * row + 1, 0, 1, 2);
}

} // namespace

RulebookView::RulebookView(QWidget* parent) : QScrollArea(parent) {
    setObjectName(u"rulebookSays"_s);
    setAccessibleName(tr("What the rulebook says, with its sources"));
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

void RulebookView::setRulebook(const Rulebook& rulebook) {
    auto* list = new QWidget;
    auto* grid = new QGridLayout(list);
    grid->setContentsMargins(14, 10, 14, 10);
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(0);
    grid->setColumnStretch(0, 1);
    int row = 0;
    for (const SettingWords& setting : wordsFor(rulebook))
        addSetting(*grid, row++, setting);
    setWidget(list);
}

} // namespace setfolio
