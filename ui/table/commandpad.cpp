// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/commandpad.h"

#include <QGridLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Place {
    TableCommand command;
    int row;
    int column;
    int columns;
};
constexpr std::array<Place, 7> places{{
    {TableCommand::ServeContacted, 0, 0, 2},
    {TableCommand::Replay, 1, 0, 1},
    {TableCommand::ReServe, 1, 1, 1},
    {TableCommand::NoServe, 2, 0, 1},
    {TableCommand::Remark, 2, 1, 1},
    {TableCommand::Undo, 3, 0, 1},
    {TableCommand::GoToLive, 3, 1, 1},
}};

} // namespace

CommandPad::CommandPad(QWidget* parent) : QWidget(parent) {
    setObjectName(u"commandPad"_s);
    m_grid = new QGridLayout(this);
    m_grid->setContentsMargins(0, 0, 0, 0);
    for (const Place& place : places) {
        auto* button = new KeyButton(place.command, this);
        connect(button, &KeyButton::clicked, this, [this, button] { Q_EMIT commanded(button->command()); });
        m_grid->addWidget(button, place.row, place.column, 1, place.columns);
        m_buttons.push_back(button);
    }
    setLook(Look::of(Theme::Light, 1));
}

void CommandPad::setLook(const Look& look) {
    m_grid->setHorizontalSpacing(look.whole(10));
    m_grid->setVerticalSpacing(look.whole(6));
    for (KeyButton* button : m_buttons) {
        button->setLook(look);
        button->setFixedHeight(look.whole(44));
    }
}

void CommandPad::setSituation(const Situation& situation) {
    for (KeyButton* button : m_buttons)
        button->setEnabled(mayBeAsked(button->command(), situation));
    m_buttons.front()->setPrimary(situation.phase == Phase::ReadyToServe);
    m_buttons.front()->setEnabled(m_buttons.front()->isEnabled() && situation.phase == Phase::ReadyToServe);
}

} // namespace setfolio
