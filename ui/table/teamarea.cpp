// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/teamarea.h"

#include "ui/table/commands.h"
#include "ui/table/draw.h"
#include "ui/table/presskeys.h"

#include <QKeyEvent>
#include <QPainter>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

TeamArea::TeamArea(Side side, QWidget* parent) : QAbstractButton(parent), m_side(side) {
    setObjectName(side == Side::Left ? u"teamAreaLeft"_s : u"teamAreaRight"_s);
    setFocusPolicy(Qt::TabFocus);
    setSizePolicy(QSizePolicy::Preferred, QSizePolicy::Expanding);
}

QSize TeamArea::sizeHint() const {
    return {m_look.whole(402), m_look.whole(125)};
}

void TeamArea::setLook(const Look& look) {
    m_look = look;
    update();
}

void TeamArea::setView(const TeamAreaView& view) {
    if (view == m_view && !accessibleName().isEmpty())
        return;
    m_view = view;
    setAccessibleName(u"%1 %2 %3%4"_s.arg(view.name, QString::number(view.points), callOf(view.call),
                                          view.serves ? u", "_s + servesWord() : QString()));
    update();
}

bool TeamArea::event(QEvent* event) {
    return claimsPressKey(event) || QAbstractButton::event(event);
}

void TeamArea::keyPressEvent(QKeyEvent* event) {
    if (!pressByKey(*this, *event))
        QAbstractButton::keyPressEvent(event);
}

void TeamArea::mouseDoubleClickEvent(QMouseEvent* event) {
    event->accept();
}

void TeamArea::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    paintGround(painter);
    paintScore(painter);
    const double scoreRoom = draw::widthOf(QString::number(m_view.points), scoreFont());
    paintWords(painter, width() - scoreRoom - (m_look.stacked ? m_look.px(16 + 18 + 8) : m_look.px(20 + 38 + 18)));
    paintFoot(painter);
    if (hasFocus())
        draw::focusRing(painter, QRectF(rect()), m_look.px(10), m_look);
}

void TeamArea::paintGround(QPainter& painter) const {
    const double line = m_look.px(isSolid() ? 1.5 : 3);
    QColor ground = isSolid() ? plateDark() : plateLight();
    if (isDown())
        ground = isSolid() ? QColor(0x2A, 0x2E, 0x34) : QColor(0xE9, 0xEB, 0xEC);
    painter.setPen(QPen(isSolid() ? QColor(0x8B, 0x94, 0x9D) : onAmber(), line));
    painter.setBrush(ground);
    painter.drawRoundedRect(QRectF(rect()).adjusted(line / 2, line / 2, -line / 2, -line / 2), m_look.px(10),
                            m_look.px(10));
    if (!m_view.serves)
        return;
    const double barWidth = m_look.px(6);
    const double left = m_side == Side::Left ? m_look.px(5) : width() - m_look.px(5) - barWidth;
    painter.setPen(Qt::NoPen);
    painter.setBrush(amber());
    painter.drawRoundedRect(QRectF(left, m_look.px(12), barWidth, height() - m_look.px(24)), barWidth / 2,
                            barWidth / 2);
}

/// The score is large enough to give the words some of its room.
QFont TeamArea::scoreFont() const {
    return m_look.font(m_look.stacked ? 64 : 84, QFont::Bold);
}

void TeamArea::paintScore(QPainter& painter) const {
    const double inner = m_look.px(m_look.stacked ? 18 : 38);
    draw::text(painter, {m_side == Side::Left ? width() - inner : inner, height() / 2.0},
               QString::number(m_view.points), scoreFont(), ink(),
               m_side == Side::Left ? draw::From::Right : draw::From::Left);
}

void TeamArea::paintWords(QPainter& painter, double room) const {
    const auto from = m_side == Side::Left ? draw::From::Left : draw::From::Right;
    const double x = fromOuter(m_look.px(m_look.stacked ? 16 : 20));
    draw::text(painter, {x, height() * 0.21}, m_view.name, m_look.font(17, QFont::DemiBold), ink(), from, room);
    draw::text(painter, {x, height() * 0.45}, callOf(m_view.call), m_look.font(22, QFont::Bold), ink(), from, room);
}

void TeamArea::paintFoot(QPainter& painter) const {
    const bool pressable = m_view.call == AreaCall::WinsTheRally && isEnabled();
    const double capWidth = m_look.px(44);
    const double middle = height() * 0.76;
    const double outer = m_look.px(20);
    const double capLeft = m_side == Side::Left ? outer : width() - outer - capWidth;
    if (pressable)
        paintArrow(painter, QRectF(capLeft, middle - m_look.px(16), capWidth, m_look.px(32)));
    if (!m_view.serves)
        return;
    const QFont font = m_look.font(13, QFont::DemiBold);
    const double pillWidth = draw::widthOf(servesWord(), font) + m_look.px(18);
    const double distance = pressable ? outer + capWidth + m_look.px(12) : outer;
    const double pillLeft = m_side == Side::Left ? distance : width() - distance - pillWidth;
    const QRectF pill(pillLeft, middle - m_look.px(12), pillWidth, m_look.px(24));
    painter.setPen(QPen(onAmber(), isSolid() ? 0 : 1));
    painter.setBrush(amber());
    painter.drawRoundedRect(pill, pill.height() / 2, pill.height() / 2);
    draw::text(painter, pill.center(), servesWord(), font, onAmber(), draw::From::Centre);
}

void TeamArea::paintArrow(QPainter& painter, const QRectF& box) const {
    painter.setPen(QPen(isSolid() ? QColor(0x8B, 0x94, 0x9D) : QColor(0x6B, 0x73, 0x7B), 1));
    painter.setBrush(isSolid() ? QColor(0x2A, 0x2E, 0x34) : QColor(0xF1, 0xF3, 0xF4));
    painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), m_look.px(5), m_look.px(5));
    const QString cap = keyCapOf(m_side == Side::Left ? TableCommand::LeftWins : TableCommand::RightWins);
    if (cap != (m_side == Side::Left ? u"←"_s : u"→"_s)) {
        draw::text(painter, box.center(), cap, m_look.font(13, QFont::DemiBold), ink(), draw::From::Centre,
                   box.width());
        return;
    }
    const double direction = m_side == Side::Left ? -1 : 1;
    const QPointF tip = box.center() + QPointF(direction * m_look.px(11), 0);
    painter.setPen(QPen(ink(), m_look.px(2.2)));
    painter.drawLine(box.center() - QPointF(direction * m_look.px(10), 0), tip - QPointF(direction * m_look.px(4), 0));
    painter.setPen(Qt::NoPen);
    painter.setBrush(ink());
    const QPointF back = tip - QPointF(direction * m_look.px(7), 0);
    painter.drawPolygon(QPolygonF{tip, back + QPointF(0, m_look.px(5)), back - QPointF(0, m_look.px(5))});
}

double TeamArea::fromOuter(double measure) const {
    return m_side == Side::Left ? measure : width() - measure;
}

QColor TeamArea::ink() const {
    return isSolid() ? plateLight() : onAmber();
}

} // namespace setfolio
