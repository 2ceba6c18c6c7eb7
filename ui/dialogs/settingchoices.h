// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Settings whose value is chosen by pressing buttons: one of some words, some of some numbers, people in an order.
#pragma once

#include "ui/dialogs/settingeditor.h"

#include <vector>

class QPushButton;

namespace setfolio {

/// One of some values, each with its words.
class OneOfWords : public SettingEditor {
    Q_OBJECT

public:
    struct Choice {
        QString words;
        QJsonValue value;
    };
    OneOfWords(const std::vector<Choice>& choices, const QJsonValue& chosen, QWidget* parent = nullptr);
};

/// Any of the numbers of a range.
class NumberToggles : public SettingEditor {
    Q_OBJECT

public:
    NumberToggles(const ListSetting& list, const QJsonValue& chosen, QWidget* parent = nullptr);

private:
    void collect();

    std::vector<QPushButton*> m_toggles;
    ListSetting m_list;
};

/// Who signs, in the order in which they are pressed.
class SignersField : public SettingEditor {
    Q_OBJECT

public:
    explicit SignersField(std::vector<Signer> chosen, QWidget* parent = nullptr);

private:
    void press(Signer signer);
    void showOrder();

    std::vector<QPushButton*> m_buttons; ///< by signer
    std::vector<Signer> m_chosen;
};

} // namespace setfolio
