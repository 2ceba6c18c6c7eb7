// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Which sheets of a match are printed: the kinds, and the sets of those that belong to a set.
#pragma once

#include "core/record/record.h"
#include "ui/sheet/sheets.h"

#include <QWidget>

class QBoxLayout;
class QButtonGroup;

namespace setfolio {

class SheetChooser : public QWidget {
    Q_OBJECT

public:
    /// Begins with `first`; all sets of the match when it names none.
    SheetChooser(const MatchRecord& record, const SheetChoice& first, QWidget* parent = nullptr);

    /// Never without a kind and a set: there would be nothing to print.
    [[nodiscard]] const SheetChoice& choice() const { return m_choice; }

    void leaveNamesOut(bool leftOut);

Q_SIGNALS:
    void changed();

private:
    void addKinds(QBoxLayout& column);
    void addSets(QBoxLayout& column, const MatchRecord& record);
    void choose();

    SheetChoice m_choice;
    QButtonGroup* m_kinds;
    QButtonGroup* m_sets;
};

} // namespace setfolio
