// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/formbar.h"

#include "ui/table/numberfield.h"

#include <QLineEdit>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

FormBar::FormBar(Recorder& recorder, QWidget* parent)
    : EntryBar(recorder, parent),
      m_first(addOptions({}, u"formFirst"_s)),
      m_second(addOptions({}, u"formSecond"_s)),
      m_number(addNumbers(u" "_s, u"formNumber"_s, u"number"_s)),
      m_other(addNumbers(u" "_s, u"formOther"_s, u"other"_s)),
      m_line(addLine(u" "_s, u"formLine"_s)) {
    setObjectName(u"formBar"_s);
    addReason(u"formReason"_s);
    connect(m_first, &OptionPick::changed, this, &FormBar::firstChanged);
    connect(m_second, &OptionPick::changed, this, &FormBar::secondChanged);
    for (NumberPick* pick : {m_number, m_other})
        connect(pick, &NumberPick::changed, this, &FormBar::showDraft);
    connect(m_line, &QLineEdit::textChanged, this, &FormBar::showDraft);
}

void FormBar::ask(Form form) {
    m_form = std::move(form);
    setTitle(m_form.title);
    m_first->offer(m_form.first);
    m_first->choose(m_form.begins.first);
    m_second->offer(m_form.second);
    m_second->choose(m_form.begins.second);
    m_number->setLabel(m_form.numberLabel);
    m_number->offer(m_form.numbers);
    m_number->setNumber(m_form.begins.number);
    m_other->setLabel(m_form.otherLabel);
    m_other->offer(m_form.others);
    m_other->setNumber(m_form.begins.other);
    m_line->setText(m_form.begins.line);
    m_line->setPlaceholderText(m_form.line);
    m_line->setAccessibleName(m_form.line);
    setShown(m_first, !m_form.first.empty());
    setShown(m_second, !m_form.second.empty());
    showNumbers();
    setShown(m_line, !m_form.line.isEmpty());
    showDraft();
    present(this);
    goToMissing();
}

FormAnswers FormBar::answers() const {
    return {m_first->chosen(), m_second->chosen(), m_number->number(), m_other->number(), m_line->text().simplified()};
}

std::optional<Entry> FormBar::drafted() const {
    return m_form.entry(answers());
}

QString FormBar::prompt() const {
    return m_form.prompt(answers());
}

void FormBar::firstChanged() {
    if (m_form.otherFor)
        m_other->setNumber(m_form.otherFor(answers()));
    showDraft();
    if (m_form.choiceRecords)
        recordPressed();
}

void FormBar::showNumbers() {
    const bool asked = !m_form.asksNumbers || m_form.asksNumbers(answers());
    setShown(m_number, asked && !m_form.numberLabel.isEmpty());
    setShown(m_other, asked && !m_form.otherLabel.isEmpty());
}

void FormBar::secondChanged() {
    showNumbers();
    showDraft();
    if (m_form.asksNumbers)
        goToMissing();
}

void FormBar::goToMissing() {
    QWidget* missing = this;
    if (m_number->isVisibleTo(this) && !m_number->number())
        missing = &m_number->field();
    else if (m_other->isVisibleTo(this) && !m_other->number())
        missing = &m_other->field();
    else if (m_line->isVisibleTo(this) && m_line->text().isEmpty() && !m_first->isVisibleTo(this))
        missing = m_line;
    missing->setFocus(Qt::ShortcutFocusReason);
}

} // namespace setfolio
