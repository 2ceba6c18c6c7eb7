// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/deck.h"

#include "ui/table/courtpicture.h"
#include "ui/table/noticestrip.h"
#include "ui/table/teamarea.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

constexpr std::size_t liberoButton = 2;

/// The buttons of a side, from the outer edge in.
std::vector<TableCommand> buttonsOf(Side side) {
    if (side == Side::Left)
        return {TableCommand::LeftSubstitution, TableCommand::LeftTimeOut, TableCommand::LeftLibero,
                TableCommand::LeftCard};
    return {TableCommand::RightSubstitution, TableCommand::RightTimeOut, TableCommand::RightLibero,
            TableCommand::RightCard};
}

} // namespace

Deck::Deck(QWidget* parent) : QWidget(parent) {
    setObjectName(u"deck"_s);
    m_wings.left = makeWing(Side::Left);
    makeMiddle();
    m_wings.right = makeWing(Side::Right);
    m_row = new QHBoxLayout(this);
    m_row->addLayout(m_wings.left.column, 1);
    m_row->addWidget(m_middle, 1000);
    m_row->addLayout(m_wings.right.column, 1);
    setLook(Look::of(Theme::Light, 1));
}

Deck::Wing Deck::makeWing(Side side) {
    Wing wing;
    wing.column = new QVBoxLayout;
    wing.row = new QHBoxLayout;
    wing.area = new TeamArea(side, this);
    connect(wing.area, &TeamArea::clicked, this, [this, side] { pressed(side); });
    wing.column->addWidget(wing.area, 1);
    for (const TableCommand command : buttonsOf(side)) {
        auto* button = new KeyButton(command, this);
        connect(button, &KeyButton::clicked, this, [this, command] { Q_EMIT commanded(command); });
        button->setSizePolicy(QSizePolicy::Ignored, QSizePolicy::Fixed);
        wing.buttons.push_back(button);
        wing.row->insertWidget(side == Side::Left ? -1 : 0, button, 1);
    }
    wing.column->addLayout(wing.row);
    return wing;
}

void Deck::makeMiddle() {
    m_middle = new QWidget(this);
    m_middle->installEventFilter(this);
    m_strip = new NoticeStrip(m_middle);
    m_court = new CourtPicture(m_middle);
    connect(m_court, &CourtPicture::pressed, this, &Deck::playerPressed);
    m_centre = new QVBoxLayout(m_middle);
    m_centre->setContentsMargins(0, 0, 0, 0);
    m_centre->addWidget(m_strip);
    m_centre->addWidget(m_court, 1);
}

void Deck::setLook(const Look& look) {
    setFixedHeight(look.whole(182));
    m_row->setContentsMargins(0, 0, 0, 0);
    m_row->setSpacing(look.whole(11));
    m_centre->setSpacing(look.whole(5));
    m_strip->setLook(look);
    m_court->setLook(look);
    for (const Side side : bothSides) {
        const Wing& wing = m_wings[side];
        wing.column->setSpacing(look.whole(7));
        wing.row->setSpacing(look.whole(look.stacked ? 4 : 8));
        wing.area->setMinimumWidth(look.stacked ? 0 : look.whole(402));
        wing.area->setMaximumWidth(look.stacked ? QWIDGETSIZE_MAX : look.whole(402));
        wing.area->setLook(look);
        for (KeyButton* button : wing.buttons) {
            button->setLook(look);
            button->setFixedHeight(look.whole(50));
        }
    }
}

void Deck::setView(const DeckView& view, const Situation& situation) {
    for (const Side side : bothSides)
        showWing(m_wings[side], view.areas[side], situation);
    m_court->setPlayers(view.court);
}

bool Deck::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::Move || event->type() == QEvent::Resize)
        Q_EMIT placed();
    return QWidget::eventFilter(watched, event);
}

void Deck::moveEvent(QMoveEvent*) {
    Q_EMIT placed();
}

void Deck::showWing(const Wing& wing, const TeamAreaView& view, const Situation& situation) {
    wing.area->setView(view);
    const bool pressable = view.call == AreaCall::WinsTheRally || view.call == AreaCall::LineUpAwaited ||
                           view.call == AreaCall::LineUpStands;
    wing.area->setEnabled(pressable && !situation.readOnly);
    const std::array<QString, 4> words{Table::tr("Sub"), Table::tr("Time-out"), Table::tr("Libero"), Table::tr("Card")};
    const std::array<QString, 4> seconds{substitutionsUsed(view.substitutions, view.substitutionLimit),
                                         timeOutsLeft(view.timeOutsLeft), view.liberoState,
                                         sanctionsGiven(view.sanctions)};
    for (std::size_t i = 0; i < wing.buttons.size(); ++i) {
        wing.buttons[i]->setWords(words.at(i), seconds.at(i));
        wing.buttons[i]->setEnabled(mayBeAsked(wing.buttons[i]->command(), situation));
    }
    KeyButton* libero = wing.buttons.at(liberoButton);
    libero->setEnabled(libero->isEnabled() && view.hasLiberos);
}

void Deck::pressed(Side side) {
    const bool left = side == Side::Left;
    if (m_wings[side].area->view().call == AreaCall::WinsTheRally)
        Q_EMIT commanded(left ? TableCommand::LeftWins : TableCommand::RightWins);
    else
        Q_EMIT commanded(left ? TableCommand::LeftLineUp : TableCommand::RightLineUp);
}

} // namespace setfolio
