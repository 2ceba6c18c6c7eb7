// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A ladder of sanctions: which levels it has, which cards are shown at each, and whether the opponents get a point.
#pragma once

#include "ui/dialogs/settingeditor.h"

#include <vector>

class QComboBox;
class QGridLayout;
class QPushButton;

namespace setfolio {

class LadderField : public SettingEditor {
    Q_OBJECT

public:
    explicit LadderField(const std::vector<CardStep>& ladder, QWidget* parent = nullptr);

private:
    struct Rung {
        QPushButton* level;
        QComboBox* cards;
        QPushButton* point;
    };
    void addRung(QGridLayout& grid, SanctionLevel level, const std::vector<CardStep>& ladder);
    void collect();
    void review();

    std::vector<Rung> m_rungs; ///< by level
};

} // namespace setfolio
