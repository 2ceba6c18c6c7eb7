// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The learner's sheet beside the right one, mark by mark.
#pragma once

#include "core/match/state.h"
#include "core/practice/differences.h"

#include <QDialog>

class QTableWidget;

namespace setfolio {

/// Both sheets of the set, as far as it has been told.
struct Compared {
    SetRecord right;
    SetRecord hers;
    MatchState state; ///< for the names of the teams
};

class ComparisonDialog : public QDialog {
    Q_OBJECT

public:
    explicit ComparisonDialog(const Compared& compared, QWidget* parent = nullptr);

Q_SIGNALS:
    void rightSheetAsked();
    void printAsked(); ///< of her own sheet

private:
    [[nodiscard]] QTableWidget* makeTable(const std::vector<Difference>& differences, const MatchState& state);
};

} // namespace setfolio
