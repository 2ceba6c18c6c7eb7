// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/timefield.h"

#include "ui/dialogs/clocktext.h"
#include "ui/look/controls.h"
#include "ui/look/plainfield.h"

namespace setfolio {

TimeField::TimeField(QTime proposed, const QLocale& locale, bool mayBeEmpty, QWidget* parent)
    : QLineEdit(textOfTime(proposed, locale), parent),
      m_mayBeEmpty(mayBeEmpty) {
    setPlaceholderText(textOfTime(QTime(18, 30), locale));
    setMaxLength(12);
    takePlainWords(*this);
    connect(this, &QLineEdit::textChanged, this, &TimeField::showWhetherGood);
    showWhetherGood();
}

QTime TimeField::time() const {
    return timeFromText(text());
}

bool TimeField::isGood() const {
    return time().isValid() || (m_mayBeEmpty && text().trimmed().isEmpty());
}

void TimeField::showWhetherGood() {
    setProblem(*this, !isGood());
}

} // namespace setfolio
