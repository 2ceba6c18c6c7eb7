// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/keybutton.h"

#include "ui/table/draw.h"
#include "ui/table/presskeys.h"

#include <QKeyEvent>
#include <QPainter>

namespace setfolio {

KeyButton::KeyButton(TableCommand command, QWidget* parent)
    : QAbstractButton(parent),
      m_command(command),
      m_cap(keyCapOf(command)) {
    setObjectName(infoOf(command).id);
    setFocusPolicy(Qt::TabFocus);
    setWords(nameOf(command));
}

void KeyButton::setLook(const Look& look) {
    m_look = look;
    updateGeometry();
    update();
}

void KeyButton::setWords(const QString& words, const QString& second) {
    const QString name = second.isEmpty() ? words : words + QStringLiteral(", ") + second;
    if (text() == words && m_second == second && accessibleName() == name)
        return;
    setText(words);
    m_second = second;
    setAccessibleName(name);
    setAccessibleDescription(m_cap);
    update();
}

void KeyButton::setSign(const QString& sign) {
    m_sign = sign;
    update();
}

void KeyButton::setPrimary(bool primary) {
    m_primary = primary;
    update();
}

QSize KeyButton::sizeHint() const {
    return {m_look.whole(142), m_look.whole(49)};
}

QSize KeyButton::minimumSizeHint() const {
    return {m_look.whole(86), m_look.whole(44)};
}

bool KeyButton::event(QEvent* event) {
    return claimsPressKey(event) || QAbstractButton::event(event);
}

void KeyButton::keyPressEvent(QKeyEvent* event) {
    if (!pressByKey(*this, *event))
        QAbstractButton::keyPressEvent(event);
}

void KeyButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const QRectF box = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
    const double radius = m_look.px(7);
    setGround(painter);
    painter.drawRoundedRect(box.adjusted(0.5, 0.5, -0.5, -0.5), radius, radius);
    double capLeft = box.right() - m_look.px(6);
    if (!m_sign.isEmpty()) {
        const QColor ink = isEnabled() ? m_look.colours.text : m_look.colours.secondary;
        draw::text(painter, box.center(), m_sign, m_look.font(20, QFont::DemiBold), ink, draw::From::Centre);
    } else if (!m_cap.isEmpty()) {
        const double middle = m_second.isEmpty() ? box.center().y()
                              : capStandsAbove() ? box.top() + m_look.px(15)
                                                 : box.bottom() - m_look.px(17);
        const QPointF place(box.right() - m_look.px(m_look.stacked ? 4 : 8), middle);
        capLeft = draw::keyCap(painter, place, m_cap, m_look, isEnabled()).left();
    }
    if (m_sign.isEmpty())
        paintWords(painter, capLeft);
    if (hasFocus())
        draw::focusRing(painter, box, radius, m_look);
}

void KeyButton::setGround(QPainter& painter) const {
    const Colours& colours = m_look.colours;
    if (!isEnabled()) {
        painter.setPen(QPen(colours.edge, 1, Qt::DashLine));
        painter.setBrush(colours.ground);
    } else if (m_primary) {
        painter.setPen(QPen(onAmber(), 1));
        painter.setBrush(isDown() ? amber().darker(112) : amber());
    } else {
        painter.setPen(isChecked() ? QPen(colours.text, m_look.px(2)) : QPen(colours.edge, 1));
        painter.setBrush(isDown() ? m_look.pressed : isCheckable() && !isChecked() ? colours.bar : colours.button);
    }
}

/// Where room is short, the cap stands on the line with fewer words.
bool KeyButton::capStandsAbove() const {
    return m_look.stacked &&
           draw::widthOf(text(), m_look.font(13.5, QFont::DemiBold)) < draw::widthOf(m_second, m_look.font(12));
}

void KeyButton::paintWords(QPainter& painter, double capLeft) const {
    const QColor ink = !isEnabled() ? m_look.colours.secondary : m_primary ? onAmber() : m_look.colours.text;
    const QFont font = m_look.font(13.5, QFont::DemiBold);
    const double left = m_look.px(m_look.stacked ? 4 : 10);
    if (m_second.isEmpty()) {
        const double room = capLeft - left - m_look.px(4);
        const bool fits = draw::widthOf(text(), font) <= room;
        draw::text(painter, {left, height() / 2.0}, text(), fits ? font : m_look.font(12, QFont::DemiBold), ink,
                   draw::From::Left, room);
        return;
    }
    const double besideCap = capLeft - left - m_look.px(m_look.stacked ? 2 : 4);
    const double whole = width() - left - m_look.px(6);
    const bool above = capStandsAbove();
    draw::text(painter, {left, height() / 2.0 - m_look.px(9)}, text(), font, ink, draw::From::Left,
               above ? besideCap : whole);
    const double room = above ? whole : besideCap;
    const bool fits = draw::widthOf(m_second, m_look.font(12)) <= room;
    draw::text(painter, {left, height() / 2.0 + m_look.px(10)}, m_second, m_look.font(fits ? 12 : 11),
               m_look.colours.secondary, draw::From::Left, room);
}

} // namespace setfolio
