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

/// A value that is too long to stand beside its label.
bool isSentence(const QString& value) {
    return value.size() > 14;
}

/// Three rows of the grid: the label with its value beside it, a long value under it, the source.
void addSetting(QGridLayout& grid, int at, const SettingWords& setting) {
    const int row = 3 * at;
    const bool beside = !setting.value.isEmpty() && !isSentence(setting.value);
    grid.addWidget(wrapped(setting.label, windowFont(14, QFont::Medium)), row, 0, 1, beside ? 1 : 2);
    if (!setting.value.isEmpty()) {
        auto* value = wrapped(setting.value, windowFont(14, QFont::Bold));
        value->setWordWrap(!beside);
        value->setAlignment(beside ? Qt::AlignRight | Qt::AlignTop : Qt::AlignLeft | Qt::AlignTop);
        grid.addWidget(value, beside ? row : row + 1, beside ? 1 : 0, 1, beside ? 1 : 2);
    }
    auto* source = wrapped(sourceWords(setting), windowFont(12));
    source->setProperty("secondary", true);
    source->setContentsMargins(0, 0, 0, 8);
    grid.addWidget(source, row + 2, 0, 1, 2);
}

} // namespace

RulebookView::RulebookView(QWidget* parent) : QScrollArea(parent) {
    setObjectName(u"rulebookSays"_s);
    setAccessibleName(tr("What the rulebook says, with its sources"));
    setWidgetResizable(true);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
}

void RulebookView::setRulebook(const Rulebook& rulebook, bool onlyOpen) {
    auto* list = new QWidget;
    auto* grid = new QGridLayout(list);
    grid->setContentsMargins(14, 10, 14, 10);
    grid->setHorizontalSpacing(12);
    grid->setVerticalSpacing(0);
    grid->setColumnStretch(0, 1);
    int row = 0;
    for (const SettingWords& setting : wordsFor(rulebook))
        if (setting.open || !onlyOpen)
            addSetting(*grid, row++, setting);
    grid->setRowStretch(3 * row, 1);
    setWidget(list);
}

} // namespace setfolio
