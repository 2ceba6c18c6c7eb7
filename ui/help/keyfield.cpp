// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/help/keyfield.h"

#include <QKeyEvent>

namespace setfolio {

namespace {

bool leavesTheField(const QKeyEvent& event) {
    return event.key() == Qt::Key_Tab || event.key() == Qt::Key_Backtab || event.key() == Qt::Key_Escape;
}

bool isModifier(int key) {
    return key == Qt::Key_Shift || key == Qt::Key_Control || key == Qt::Key_Alt || key == Qt::Key_Meta ||
           key == Qt::Key_AltGr || key == Qt::Key_CapsLock || key == Qt::Key_unknown || key == 0;
}

/// As the table of commands writes it: a sign that needs Shift on this keyboard is the sign alone.
QKeySequence sequenceOf(const QKeyEvent& event) {
    Qt::KeyboardModifiers modifiers = event.modifiers() & ~Qt::KeypadModifier;
    const int key = event.key();
    const bool isSign = key > Qt::Key_Space && key <= Qt::Key_AsciiTilde && (key < Qt::Key_A || key > Qt::Key_Z);
    if (isSign)
        modifiers &= ~Qt::ShiftModifier;
    return QKeySequence(QKeyCombination(modifiers, static_cast<Qt::Key>(key)));
}

} // namespace

KeyField::KeyField(QWidget* parent) : QLineEdit(parent) {
    setReadOnly(true);
}

bool KeyField::event(QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && !leavesTheField(*static_cast<QKeyEvent*>(event))) {
        event->accept();
        return true;
    }
    return QLineEdit::event(event);
}

void KeyField::keyPressEvent(QKeyEvent* event) {
    if (leavesTheField(*event))
        return event->ignore();
    event->accept();
    if (!isModifier(event->key()) && !event->isAutoRepeat())
        Q_EMIT keyPressed(sequenceOf(*event));
}

} // namespace setfolio
