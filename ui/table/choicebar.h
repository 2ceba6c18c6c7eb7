// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A bar that asks which of a few numbers: typed and Enter, or tapped.
#pragma once

#include "core/match/ids.h"
#include "ui/table/inlinebar.h"

#include <functional>
#include <vector>

namespace setfolio {

class NumberField;
class NumberButton;

class ChoiceBar : public InlineBar {
    Q_OBJECT

public:
    explicit ChoiceBar(QWidget* parent = nullptr);

    void setLook(const Look& look) override;
    /// Asks; `chosen` is called with the number once the bar has closed.
    void ask(const QString& title, const QString& sentence, const std::vector<ShirtNumber>& numbers,
             std::function<void(ShirtNumber)> chosen);

protected:
    void recordPressed() override;

private:
    void choose(ShirtNumber number);

    QHBoxLayout* m_row;
    NumberField* m_field;
    std::vector<NumberButton*> m_buttons;
    std::function<void(ShirtNumber)> m_chosen;
};

} // namespace setfolio
