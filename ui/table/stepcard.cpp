// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/stepcard.h"

#include "ui/look/controls.h"
#include "ui/table/draw.h"
#include "ui/table/keybutton.h"

#include <QCoreApplication>
#include <QHBoxLayout>
#include <QPainter>
#include <QTimeEdit>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

} // namespace

StepCard::StepCard(QWidget* parent) : QWidget(parent) {
    setObjectName(u"stepCard"_s);
    m_time = new QTimeEdit(this);
    m_time->setObjectName(u"stepTime"_s);
    m_time->setAccessibleName(Table::tr("Time of day"));
    m_time->setDisplayFormat(u"HH:mm"_s);
    m_time->setButtonSymbols(QAbstractSpinBox::NoButtons);
    connect(m_time, &QTimeEdit::timeChanged, this, [this] { m_timeIsWritten = true; });
    m_button = new KeyButton(TableCommand::NextStep, this);
    m_button->setPrimary(true);
    connect(m_button, &KeyButton::clicked, this, &StepCard::pressed);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addStretch(1);
    m_row = new QHBoxLayout;
    m_row->addWidget(m_time);
    m_row->addWidget(m_button, 1);
    column->addLayout(m_row);
}

void StepCard::setLook(const Look& look) {
    m_look = look;
    m_row->setContentsMargins(look.whole(12), 0, look.whole(12), look.whole(12));
    m_row->setSpacing(look.whole(8));
    m_time->setStyleSheet(controlStyle(look.theme));
    m_time->setFont(look.font(15, QFont::DemiBold));
    m_time->setFixedWidth(look.whole(80));
    m_button->setLook(look);
    m_button->setFixedHeight(look.whole(46));
    update();
}

void StepCard::setStep(const StepWords& words, bool withTime) {
    m_words = words;
    m_button->setWords(words.button);
    if (m_time->isVisibleTo(this) != withTime)
        m_timeIsWritten = false;
    m_time->setVisible(withTime);
    setAccessibleName(words.title + u". "_s + words.sentence);
    update();
}

void StepCard::setTimeOfDay(QTime now) {
    if (m_timeIsWritten || m_time->hasFocus())
        return;
    m_time->setTime(QTime(now.hour(), now.minute()));
    m_timeIsWritten = false;
}

void StepCard::setCountdown(const QString& words) {
    if (words == m_countdown)
        return;
    m_countdown = words;
    setAccessibleDescription(words);
    update();
}

void StepCard::setEnabledStep(bool enabled) {
    m_button->setEnabled(enabled);
    m_time->setEnabled(enabled);
}

QTime StepCard::time() const {
    return m_time->time();
}

void StepCard::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    draw::card(painter, QRectF(rect()), m_look);
    draw::amberHead(painter, QRectF(rect()), m_words.title, m_countdown, m_look);
    const double margin = m_look.px(14);
    draw::paragraph(painter, QRectF(margin, m_look.px(44), width() - 2 * margin, m_look.px(60)), m_words.sentence,
                    m_look.font(15, QFont::DemiBold), m_look.colours.text);
}

} // namespace setfolio
