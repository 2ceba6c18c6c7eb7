// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/numberchips.h"

#include "core/record/shown.h"
#include "ui/dialogs/pieces.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"

#include <QGridLayout>
#include <QPushButton>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr int columns = 11;
constexpr int side = 44;
constexpr int gap = 4;
constexpr int mostRows = 2; ///< beyond, it scrolls

} // namespace

NumberChips::NumberChips(const Roster& roster, QWidget* parent) : QScrollArea(parent) {
    auto* ground = new QWidget;
    auto* grid = new QGridLayout(ground);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(gap);
    std::vector<RosterPlayer> players = roster.players;
    std::ranges::sort(players, {}, &RosterPlayer::number);
    for (const RosterPlayer& player : players) {
        auto* chip = pieces::button(QString::number(player.number.value), u"chip%1"_s.arg(player.number.value));
        chip->setProperty("chip", true);
        chip->setFixedSize(scaled(side), scaled(side));
        chip->setFocusPolicy(Qt::NoFocus); // the keyboard stays in the field that the number goes into
        chip->setToolTip(plainTip(asShown(player.name)));
        chip->setAccessibleName(player.name.isEmpty() ? chip->text()
                                                      : u"%1 %2"_s.arg(chip->text(), asShown(player.name)));
        connect(chip, &QPushButton::clicked, this, [this, number = player.number] { Q_EMIT picked(number); });
        const int place = static_cast<int>(m_chips.size());
        grid->addWidget(chip, place / columns, place % columns);
        m_chips.push_back({player.number, chip});
    }
    grid->setColumnStretch(columns, 1);
    grid->setRowStretch(static_cast<int>(m_chips.size()) / columns + 1, 1);
    setWidget(ground);
    setWidgetResizable(true);
    setFrameShape(QFrame::NoFrame);
    setFocusPolicy(Qt::NoFocus);
    setProperty("bare", true);
    if (textScale() == 1)
        setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    const int rows = std::clamp((static_cast<int>(m_chips.size()) + columns - 1) / columns, 1, mostRows);
    setFixedHeight(rows * (scaled(side) + gap) - gap + 2);
    setObjectName(u"chips"_s);
}

void NumberChips::setUsed(const std::vector<ShirtNumber>& used) {
    for (const Chip& chip : m_chips)
        chip.button->setEnabled(std::ranges::find(used, chip.number) == used.end());
}

} // namespace setfolio
