// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/shirtfield.h"

#include "ui/dialogs/lineupdraft.h"
#include "ui/dialogs/rosterrows.h"

#include <QKeyEvent>
#include <QRegularExpressionValidator>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

ShirtField::ShirtField(const Roster& roster, QWidget* parent) : QLineEdit(parent), m_roster(roster) {
    setValidator(new QRegularExpressionValidator(QRegularExpression(u"\\d{0,2}"_s), this));
    setInputMethodHints(Qt::ImhDigitsOnly);
    setAlignment(Qt::AlignCenter);
    connect(this, &QLineEdit::textEdited, this, [this](const QString& typed) {
        // whoever comes back to type the same digit again means a longer number, one that the roster does not have
        const bool goesOn = typed.size() == 1 && typed == m_stood;
        if (!goesOn && isWholeNumber(typed, m_roster))
            Q_EMIT filled();
    });
}

ShirtNumber ShirtField::number() const {
    return numberFromText(text());
}

void ShirtField::setNumber(ShirtNumber number) {
    setText(number.isValid() ? QString::number(number.value) : QString());
}

void ShirtField::keyPressEvent(QKeyEvent* event) {
    const int key = event->key();
    const bool onwards = key == Qt::Key_Space || key == Qt::Key_Return || key == Qt::Key_Enter;
    if (onwards && !text().isEmpty())
        return Q_EMIT filled();
    if (key == Qt::Key_Backspace && text().isEmpty())
        return Q_EMIT emptiedBack();
    QLineEdit::keyPressEvent(event);
}

void ShirtField::focusInEvent(QFocusEvent* event) {
    QLineEdit::focusInEvent(event);
    m_stood = text();
    selectAll();
    Q_EMIT entered();
}

} // namespace setfolio
