// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/presskeys.h"

#include <QAbstractButton>
#include <QKeyEvent>

namespace setfolio {

namespace {

bool isPressKey(const QKeyEvent& event) {
    return event.key() == Qt::Key_Return || event.key() == Qt::Key_Enter;
}

} // namespace

bool claimsPressKey(QEvent* event) {
    if (event->type() != QEvent::ShortcutOverride || !isPressKey(*static_cast<QKeyEvent*>(event)))
        return false;
    event->accept();
    return true;
}

bool pressByKey(QAbstractButton& button, const QKeyEvent& event) {
    if (!isPressKey(event))
        return false;
    if (!event.isAutoRepeat() && button.isEnabled())
        button.click();
    return true;
}

} // namespace setfolio
