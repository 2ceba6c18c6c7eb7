// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/numberfield.h"

#include "ui/look/controls.h"
#include "ui/table/draw.h"
#include "ui/table/presskeys.h"

#include <QKeyEvent>
#include <QPainter>
#include <QRegularExpressionValidator>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

bool editsText(int key) {
    return key == Qt::Key_Backspace || key == Qt::Key_Delete || key == Qt::Key_Home || key == Qt::Key_End;
}

/// Qt leaves the words out of a centred field that has the keyboard.
void drawInMiddle(QLineEdit& field, const QString& words) {
    QPainter painter(&field);
    painter.setPen(field.palette().color(QPalette::PlaceholderText));
    painter.drawText(field.rect(), Qt::AlignCenter, words);
}

bool isDigit(int key) {
    return key >= Qt::Key_0 && key <= Qt::Key_9;
}

} // namespace

NumberField::NumberField(QWidget* parent) : QLineEdit(parent) {
    setValidator(new QRegularExpressionValidator(QRegularExpression(u"[0-9]{0,2}"_s), this));
    setMaxLength(2);
    setAlignment(Qt::AlignCenter);
}

void NumberField::setLook(const Look& look) {
    setStyleSheet(controlStyle(look.theme) + u"QLineEdit { padding: 0; }"_s);
    setFont(look.font(20, QFont::Bold));
    setFixedSize(look.whole(56), look.whole(44));
}

std::optional<ShirtNumber> NumberField::number() const {
    return text().isEmpty() ? std::nullopt : std::optional(ShirtNumber(text().toInt()));
}

void NumberField::setNumber(std::optional<ShirtNumber> number) {
    setText(number ? QString::number(number->value) : QString());
}

void NumberField::propose(std::optional<ShirtNumber> number) {
    m_proposed = number;
    setPlaceholderText(number ? QString::number(number->value) : QString());
}

bool NumberField::event(QEvent* event) {
    if (event->type() != QEvent::ShortcutOverride) {
        const bool handled = QLineEdit::event(event);
        if (event->type() == QEvent::Paint && m_proposed && hasFocus() && text().isEmpty())
            drawInMiddle(*this, placeholderText());
        return handled;
    }
    const auto& press = *static_cast<QKeyEvent*>(event);
    const bool plain = !(press.modifiers() & (Qt::ControlModifier | Qt::AltModifier | Qt::MetaModifier));
    const bool isEnter = press.key() == Qt::Key_Return || press.key() == Qt::Key_Enter;
    const bool isTyping = !text().isEmpty() || m_holdsKeys;
    event->setAccepted(plain && (isEnter || isDigit(press.key()) || editsText(press.key()) || isTyping));
    return true;
}

void NumberField::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Backspace && text().isEmpty())
        Q_EMIT emptiedBack();
    else
        QLineEdit::keyPressEvent(event);
}

NumberButton::NumberButton(ShirtNumber number, const QString& word, const Look& look, QWidget* parent)
    : QAbstractButton(parent),
      m_number(number),
      m_word(word),
      m_look(look) {
    setText(QString::number(number.value));
    setAccessibleName(word.isEmpty() ? text() : text() + u", "_s + word);
    setFocusPolicy(Qt::TabFocus);
    setFixedSize(look.whole(numberButtonWidth), look.whole(44));
}

bool NumberButton::event(QEvent* event) {
    return claimsPressKey(event) || QAbstractButton::event(event);
}

void NumberButton::keyPressEvent(QKeyEvent* event) {
    if (!pressByKey(*this, *event))
        QAbstractButton::keyPressEvent(event);
}

void NumberButton::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const bool chosen = isChecked();
    const Colours& colours = m_look.colours;
    painter.setPen(QPen(colours.edge, 1));
    painter.setBrush(chosen ? colours.text : isDown() ? m_look.pressed : colours.button);
    const QRectF box = QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5);
    painter.drawRoundedRect(box, m_look.px(7), m_look.px(7));
    const double shift = m_word.isEmpty() ? 0 : m_look.px(7);
    draw::text(painter, box.center() - QPointF(0, shift), text(), m_look.font(17, QFont::Bold),
               chosen ? colours.ground : colours.text, draw::From::Centre);
    if (!m_word.isEmpty())
        draw::text(painter, box.center() + QPointF(0, m_look.px(12)), m_word, m_look.font(11),
                   chosen ? colours.ground : colours.secondary, draw::From::Centre);
    if (hasFocus())
        draw::focusRing(painter, box, m_look.px(7), m_look);
}

} // namespace setfolio
