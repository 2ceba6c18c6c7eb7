// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/settingchoices.h"

#include "core/rules/settingwords.h"
#include "ui/dialogs/pieces.h"
#include "ui/look/appearance.h"
#include "ui/look/controls.h"
#include "ui/wording/rulebooklabels.h"

#include <QButtonGroup>
#include <QGridLayout>
#include <QJsonArray>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr int gap = 4;
constexpr int togglesInRow = 8;
constexpr int signersInRow = 2;

QString wordOf(Signer signer) {
    return QLatin1String(wordsOf<Signer>[static_cast<std::size_t>(signer)]);
}

QGridLayout* gridOn(QWidget& widget) {
    auto* grid = new QGridLayout(&widget);
    grid->setContentsMargins(0, 0, 0, 0);
    grid->setSpacing(gap);
    return grid;
}

} // namespace

OneOfWords::OneOfWords(const std::vector<Choice>& choices, const QJsonValue& chosen, QWidget* parent)
    : SettingEditor(parent) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->setSpacing(gap);
    auto* group = new QButtonGroup(this);
    for (const Choice& choice : choices) {
        QPushButton* button = pieces::button(choice.words, u"choice%1"_s.arg(group->buttons().size()));
        button->setCheckable(true);
        button->setChecked(choice.value == chosen);
        group->addButton(button);
        column->addWidget(button);
        if (button->isChecked())
            setFirst(button);
        connect(button, &QPushButton::toggled, this, [this, value = choice.value](bool on) {
            if (on)
                Q_EMIT changed(value);
        });
    }
}

NumberToggles::NumberToggles(const ListSetting& list, const QJsonValue& chosen, QWidget* parent)
    : SettingEditor(parent),
      m_list(list) {
    QGridLayout* grid = gridOn(*this);
    for (int number = list.lowest; number <= list.highest; number += list.step) {
        const auto place = static_cast<int>(m_toggles.size());
        QPushButton* toggle = pieces::button(QString::number(number), u"number%1"_s.arg(number));
        toggle->setProperty("chip", true);
        toggle->setCheckable(true);
        toggle->setChecked(chosen.toArray().contains(number));
        toggle->setFixedSize(scaled(targetHeight), scaled(targetHeight));
        grid->addWidget(toggle, place / togglesInRow, place % togglesInRow);
        m_toggles.push_back(toggle);
        connect(toggle, &QPushButton::clicked, this, &NumberToggles::collect);
    }
    grid->setColumnStretch(togglesInRow, 1);
    setFirst(m_toggles.front());
}

void NumberToggles::collect() {
    QJsonArray numbers;
    for (std::size_t place = 0; place < m_toggles.size(); ++place)
        if (m_toggles[place]->isChecked())
            numbers.append(m_list.lowest + static_cast<int>(place) * m_list.step);
    Q_EMIT changed(numbers);
}

SignersField::SignersField(std::vector<Signer> chosen, QWidget* parent)
    : SettingEditor(parent),
      m_chosen(std::move(chosen)) {
    QGridLayout* grid = gridOn(*this);
    for (int place = 0; place < static_cast<int>(wordsOf<Signer>.size()); ++place) {
        const auto signer = static_cast<Signer>(place);
        QPushButton* button = pieces::button({}, wordOf(signer));
        button->setCheckable(true);
        grid->addWidget(button, place / signersInRow, place % signersInRow);
        m_buttons.push_back(button);
        connect(button, &QPushButton::clicked, this, [this, signer] { press(signer); });
    }
    grid->addWidget(pieces::explanation(tr("In the order in which they are pressed.")), grid->rowCount(), 0, 1,
                    signersInRow);
    setFirst(m_buttons.front());
    showOrder();
}

void SignersField::press(Signer signer) {
    if (std::erase(m_chosen, signer) == 0)
        m_chosen.push_back(signer);
    showOrder();
    QJsonArray words;
    for (const Signer one : m_chosen)
        words.append(wordOf(one));
    Q_EMIT changed(words);
}

void SignersField::showOrder() {
    for (std::size_t place = 0; place < m_buttons.size(); ++place) {
        const auto signer = static_cast<Signer>(place);
        const auto found = std::ranges::find(m_chosen, signer);
        const QString words = settingPhrase(wordOf(signer));
        const bool signs = found != m_chosen.end();
        m_buttons[place]->setText(signs ? u"%1. %2"_s.arg(found - m_chosen.begin() + 1).arg(words) : words);
        m_buttons[place]->setChecked(signs);
    }
}

} // namespace setfolio
