// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The numbers of a roster, to be tapped in place of typing.
#pragma once

#include "core/match/entry.h"

#include <QScrollArea>

#include <vector>

class QPushButton;

namespace setfolio {

class NumberChips : public QScrollArea {
    Q_OBJECT

public:
    explicit NumberChips(const Roster& roster, QWidget* parent = nullptr);

    /// Marks the numbers that have been used.
    void setUsed(const std::vector<ShirtNumber>& used);

Q_SIGNALS:
    void picked(setfolio::ShirtNumber number);

private:
    struct Chip {
        ShirtNumber number;
        QPushButton* button;
    };
    std::vector<Chip> m_chips;
};

} // namespace setfolio
