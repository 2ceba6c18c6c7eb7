// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/positionfield.h"

#include "core/record/shown.h"
#include "ui/dialogs/shirtfield.h"
#include "ui/look/appearance.h"
#include "ui/look/plate.h"
#include "ui/wording/names.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

PositionField::PositionField(CourtPosition position, const Roster& roster, QWidget* parent)
    : QFrame(parent),
      m_roster(roster),
      m_slot(new QLabel),
      m_field(new ShirtField(roster)),
      m_name(new QLabel) {
    setObjectName(u"place"_s);
    auto* numeral = new QLabel(QString::number(position.value));
    numeral->setFont(windowFont(13, QFont::Bold));
    m_slot->setFont(windowFont(12));
    m_slot->setProperty("secondary", true);
    m_slot->setAlignment(Qt::AlignRight);
    m_field->setObjectName(u"position%1"_s.arg(position.value));
    m_field->setAccessibleName(tr("Number in court position %1").arg(position.value));
    m_field->setFont(windowFont(24, QFont::Bold));
    m_name->setFont(windowFont(12));
    m_name->setTextFormat(Qt::PlainText);
    m_name->setProperty("secondary", true);
    m_name->setAlignment(Qt::AlignCenter);
    m_name->setMinimumWidth(textScale() == 1 ? 10 : scaled(170));
    auto* head = new QHBoxLayout;
    head->addWidget(numeral);
    head->addWidget(m_slot, 1);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(8, 4, 8, 4);
    column->setSpacing(1);
    column->addLayout(head);
    column->addWidget(m_field);
    column->addWidget(m_name);
    connect(m_field, &QLineEdit::textChanged, this, &PositionField::showName);
}

void PositionField::setSlot(std::optional<Slot> slot) {
    m_slot->setText(slot ? tr("slot %1").arg(roman(*slot)) : QString());
}

void PositionField::showName() {
    const ShirtNumber number = m_field->number();
    const auto player = std::ranges::find(m_roster.players, number, &RosterPlayer::number);
    const QString name = player == m_roster.players.end() ? QString() : asShown(player->name);
    m_name->setText(m_name->fontMetrics().elidedText(name, Qt::ElideRight, std::max(40, width() - 16)));
    m_field->setAccessibleDescription(name);
}

} // namespace setfolio
