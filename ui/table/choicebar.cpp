// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/choicebar.h"

#include "ui/table/numberfield.h"

#include <QHBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

ChoiceBar::ChoiceBar(QWidget* parent) : InlineBar(parent) {
    setObjectName(u"choiceBar"_s);
    m_field = new NumberField(this);
    m_field->setObjectName(u"choiceNumber"_s);
    m_row = new QHBoxLayout;
    m_row->setSpacing(4);
    m_row->addWidget(m_field);
    m_row->addStretch(1);
    addRow(m_row);
}

void ChoiceBar::setLook(const Look& look) {
    InlineBar::setLook(look);
    m_field->setLook(look);
}

void ChoiceBar::ask(const QString& title, const QString& sentence, const std::vector<ShirtNumber>& numbers,
                    std::function<void(ShirtNumber)> chosen) {
    m_chosen = std::move(chosen);
    setTitle(title);
    setSentence(sentence, Tone::Plain);
    m_field->clear();
    m_field->setAccessibleName(sentence);
    for (NumberButton* button : m_buttons)
        delete button;
    m_buttons.clear();
    for (const ShirtNumber number : numbers) {
        auto* button = new NumberButton(number, {}, look(), this);
        button->setObjectName(u"choice"_s + QString::number(number.value));
        // Later, because the button is deleted when the bar asks again.
        connect(
            button, &NumberButton::clicked, this, [this, number] { choose(number); }, Qt::QueuedConnection);
        m_row->insertWidget(m_row->count() - 1, button);
        button->show();
        m_buttons.push_back(button);
    }
    show();
    Q_EMIT grown();
    m_field->setFocus(Qt::ShortcutFocusReason);
}

void ChoiceBar::recordPressed() {
    if (const auto number = m_field->number())
        choose(*number);
    else
        m_field->setFocus(Qt::ShortcutFocusReason);
}

void ChoiceBar::choose(ShirtNumber number) {
    const auto chosen = std::move(m_chosen);
    m_chosen = nullptr;
    dismiss();
    if (chosen)
        chosen(number);
}

} // namespace setfolio
