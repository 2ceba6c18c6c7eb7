// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/print/sheetchooser.h"

#include "ui/dialogs/pieces.h"
#include "ui/print/sheetpages.h"

#include <QGridLayout>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>
#include <iterator>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr int kindsInARow = 2;
constexpr int setsInARow = 5;
constexpr int space = 6;

QPushButton* chip(const QString& text, const QString& name) {
    auto* button = pieces::toggle(text, name);
    button->setProperty("chip", true);
    return button;
}

QGridLayout* grid() {
    auto* layout = new QGridLayout;
    layout->setSpacing(space);
    return layout;
}

QString words(SheetKind kind) {
    switch (kind) {
    case SheetKind::Match:
        return SheetChooser::tr("Match");
    case SheetKind::Set:
        return SheetChooser::tr("Sets");
    case SheetKind::HandOver:
        return SheetChooser::tr("Hand-over");
    case SheetKind::Libero:
        return SheetChooser::tr("Liberos");
    case SheetKind::Coach:
        return SheetChooser::tr("For the coach");
    case SheetKind::Entries:
        return SheetChooser::tr("Entries");
    case SheetKind::Slips:
        return SheetChooser::tr("Line-up slips");
    case SheetKind::BlankSlips:
        return SheetChooser::tr("Blank slips");
    case SheetKind::BlankSet:
        return SheetChooser::tr("Blank set");
    }
    Q_UNREACHABLE();
}

/// The buttons pressed in; where none is, those that were before are pressed in again.
std::set<int> pressedIn(const std::map<int, QPushButton*>& buttons, const std::set<int>& before) {
    std::set<int> pressed;
    for (const auto& [id, button] : buttons)
        if (button->isChecked())
            pressed.insert(id);
    if (!pressed.empty())
        return pressed;
    for (const int id : before)
        if (const auto button = buttons.find(id); button != buttons.end())
            button->second->setChecked(true);
    return before;
}

} // namespace

SheetChooser::SheetChooser(const MatchRecord& record, const SheetChoice& first, QWidget* parent)
    : QWidget(parent),
      m_choice(first) {
    if (m_choice.sets.empty())
        std::ranges::copy(printableSets(record), std::inserter(m_choice.sets, m_choice.sets.end()));
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(space);
    addKinds(*column);
    addSets(*column, record);
    choose();
    for (const auto* buttons : {&m_kinds, &m_sets})
        for (const auto& [id, button] : *buttons)
            connect(button, &QPushButton::clicked, this, &SheetChooser::choose);
}

void SheetChooser::leaveNamesOut(bool leftOut) {
    m_choice.names = leftOut ? Names::LeftOut : Names::Given;
    Q_EMIT changed();
}

void SheetChooser::addKinds(QBoxLayout& column) {
    column.addWidget(pieces::explanation(tr("Sheets")));
    auto* kinds = grid();
    int place = 0;
    for (const SheetKind kind : allSheetKinds) {
        auto* button = chip(words(kind), nameOf(kind) + u"Sheet"_s);
        button->setChecked(m_choice.kinds.contains(kind));
        m_kinds.emplace(static_cast<int>(kind), button);
        kinds->addWidget(button, place / kindsInARow, place % kindsInARow);
        ++place;
    }
    column.addLayout(kinds);
}

void SheetChooser::addSets(QBoxLayout& column, const MatchRecord& record) {
    column.addWidget(pieces::explanation(tr("Of the sets")));
    auto* sets = grid();
    int place = 0;
    for (const int number : printableSets(record)) {
        auto* button = chip(QString::number(number), u"set%1"_s.arg(number));
        button->setAccessibleName(tr("Set %1").arg(number));
        button->setChecked(m_choice.sets.contains(number));
        m_sets.emplace(number, button);
        sets->addWidget(button, place / setsInARow, place % setsInARow);
        ++place;
    }
    column.addLayout(sets);
}

void SheetChooser::choose() {
    std::set<int> kinds;
    for (const SheetKind kind : m_choice.kinds)
        kinds.insert(static_cast<int>(kind));
    kinds = pressedIn(m_kinds, kinds);
    m_choice.kinds.clear();
    for (const int kind : kinds)
        m_choice.kinds.insert(static_cast<SheetKind>(kind));
    m_choice.sets = pressedIn(m_sets, m_choice.sets);
    const bool ofSets = std::ranges::any_of(m_choice.kinds, isOfASet);
    for (const auto& [id, button] : m_sets)
        button->setEnabled(ofSets);
    Q_EMIT changed();
}

} // namespace setfolio
