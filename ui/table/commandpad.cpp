// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/commandpad.h"

#include <QCoreApplication>
#include <QGridLayout>
#include <QHBoxLayout>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

struct Place {
    TableCommand command;
    int row;
    int column;
};
constexpr std::array<Place, 6> places{{
    {TableCommand::Replay, 1, 0},
    {TableCommand::ReServe, 1, 1},
    {TableCommand::NoServe, 2, 0},
    {TableCommand::Remark, 2, 1},
    {TableCommand::Undo, 3, 0},
    {TableCommand::Correct, 3, 1},
}};

} // namespace

CommandPad::CommandPad(QWidget* parent) : QWidget(parent) {
    setObjectName(u"commandPad"_s);
    m_column = new QVBoxLayout(this);
    m_column->setContentsMargins(0, 0, 0, 0);
    m_first = new QHBoxLayout;
    m_first->addWidget(makeButton(TableCommand::ServeContacted), 1);
    m_first->addWidget(makeButton(TableCommand::WhoServes));
    m_buttons.back()->setWords(Table::tr("Server?"));
    m_column->addLayout(m_first);
    m_grid = new QGridLayout;
    for (const Place& place : places)
        m_grid->addWidget(makeButton(place.command), place.row - 1, place.column);
    m_column->addLayout(m_grid);
    setLook(Look::of(Theme::Light, 1));
}

KeyButton* CommandPad::makeButton(TableCommand command) {
    auto* button = new KeyButton(command, this);
    connect(button, &KeyButton::clicked, this, [this, button] { Q_EMIT commanded(button->command()); });
    m_buttons.push_back(button);
    return button;
}

void CommandPad::setLook(const Look& look) {
    m_first->setSpacing(look.whole(8));
    m_grid->setHorizontalSpacing(look.whole(10));
    m_grid->setVerticalSpacing(look.whole(6));
    m_column->setSpacing(look.whole(6));
    for (KeyButton* button : m_buttons) {
        button->setLook(look);
        button->setFixedHeight(look.whole(44));
    }
    m_buttons[1]->setFixedWidth(look.whole(100));
}

void CommandPad::setSituation(const Situation& situation) {
    for (KeyButton* button : m_buttons)
        button->setEnabled(mayBeAsked(button->command(), situation));
    m_buttons.front()->setPrimary(situation.phase == Phase::ReadyToServe);
    m_buttons.front()->setEnabled(m_buttons.front()->isEnabled() && situation.phase == Phase::ReadyToServe);
}

} // namespace setfolio
