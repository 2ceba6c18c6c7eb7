// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/servingcard.h"

#include "ui/table/draw.h"

#include <QPainter>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

ServingCard::ServingCard(QWidget* parent) : QWidget(parent) {
    setObjectName(u"servingCard"_s);
}

void ServingCard::setLook(const Look& look) {
    m_look = look;
    update();
}

void ServingCard::setView(const ServingView& view, const QString& title) {
    if (view == m_view && title == m_title)
        return;
    m_view = view;
    m_title = title;
    setAccessibleName(u"%1: %2 %3, %4. %5: %6 %7"_s.arg(
        title, view.code, QString::number(view.number.value), serverPlace(view.slot, view.captain, view.replaced),
        ifRallyIsLost(), view.otherCode, QString::number(view.nextNumber.value)));
    update();
}

void ServingCard::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    draw::card(painter, QRectF(rect()), m_look);
    draw::amberHead(painter, QRectF(rect()), m_title, rallyWord(m_view.rally), m_look);
    paintServer(painter);
    painter.setPen(QPen(m_look.colours.rule, 1));
    const double rule = m_look.px(102);
    painter.drawLine(QPointF(m_look.px(14), rule), QPointF(width() - m_look.px(14), rule));
    paintNext(painter);
}

void ServingCard::paintServer(QPainter& painter) const {
    const double left = m_look.px(14);
    const double used = draw::text(painter, {left, m_look.px(65)}, QString::number(m_view.number.value),
                                   m_look.font(58, QFont::Bold), m_look.colours.text);
    const double x = left + used + m_look.px(16);
    draw::plate(painter, QRectF(x, m_look.px(45), m_look.px(56), m_look.px(22)), m_view.team, m_view.code, m_look);
    draw::text(painter, {x, m_look.px(81)}, serverPlace(m_view.slot, m_view.captain, m_view.replaced),
               m_look.font(15, QFont::DemiBold), m_look.colours.text, draw::From::Left, width() - x - left);
}

void ServingCard::paintNext(QPainter& painter) const {
    const double left = m_look.px(14);
    const double middle = m_look.px(145);
    draw::text(painter, {left, m_look.px(118)}, ifRallyIsLost(), m_look.font(12.5), m_look.colours.secondary);
    draw::plate(painter, QRectF(left, middle - m_look.px(11), m_look.px(48), m_look.px(22)), opponentsOf(m_view.team),
                m_view.otherCode, m_look);
    double x = left + m_look.px(58);
    x += draw::text(painter, {x, middle}, QString::number(m_view.nextNumber.value), m_look.font(20, QFont::Bold),
                    m_look.colours.text);
    draw::text(painter, {x + m_look.px(12), middle}, slotWord(m_view.nextSlot), m_look.font(14), m_look.colours.text);
    draw::text(painter, {width() - left, middle}, thenServes(m_view.code, m_view.thenNumber), m_look.font(13),
               m_look.colours.secondary, draw::From::Right);
}

} // namespace setfolio
