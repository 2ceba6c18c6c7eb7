// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A bar for what is recorded seldom: up to two choices, two numbers and a line, as the caller asks.
#pragma once

#include "ui/table/entrybar.h"
#include "ui/table/picks.h"

#include <functional>

namespace setfolio {

/// What has been answered so far.
struct FormAnswers {
    int first = -1; ///< the index of the choice, -1 for none
    int second = -1;
    std::optional<ShirtNumber> number;
    std::optional<ShirtNumber> other;
    QString line;
};

/// A choice or a number that is not asked for has nothing to offer and no label.
struct Form {
    QString title;
    std::vector<Option> first{};
    std::vector<Option> second{};
    QString numberLabel{};
    std::vector<OfferedNumber> numbers{};
    QString otherLabel{};
    std::vector<OfferedNumber> others{};
    QString line{};             ///< what is asked in the line; empty for no line
    FormAnswers begins{};       ///< what is chosen at first
    bool choiceRecords = false; ///< the first choice, once made, is recorded at once
    /// The second number to be proposed when the first choice changes; empty: it stays.
    std::function<std::optional<ShirtNumber>(const FormAnswers&)> otherFor{};
    /// Whether the numbers are asked for; empty: always. The second choice may say that they are.
    std::function<bool(const FormAnswers&)> asksNumbers{};
    std::function<std::optional<Entry>(const FormAnswers&)> entry;
    std::function<QString(const FormAnswers&)> prompt;
};

class FormBar : public EntryBar {
    Q_OBJECT

public:
    explicit FormBar(Recorder& recorder, QWidget* parent = nullptr);

    void ask(Form form);

protected:
    [[nodiscard]] std::optional<Entry> drafted() const override;
    [[nodiscard]] QString prompt() const override;
    void goToMissing() override;

private:
    [[nodiscard]] FormAnswers answers() const;
    void firstChanged();
    void secondChanged();
    void showNumbers();

    Form m_form;
    OptionPick* m_first;
    OptionPick* m_second;
    NumberPick* m_number;
    NumberPick* m_other;
    QLineEdit* m_line;
};

} // namespace setfolio
