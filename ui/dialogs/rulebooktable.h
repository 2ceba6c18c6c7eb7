// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The table of a rulebook's settings, a line of the keyboard or a finger's width high; one is chosen at a time.
#pragma once

#include "ui/dialogs/rulebookrows.h"

#include <QTableView>

namespace setfolio {

class RulebookTable : public QTableView {
    Q_OBJECT

public:
    /// Shows the rows, which must outlive it.
    explicit RulebookTable(RulebookRows& rows, QWidget* parent = nullptr);

    /// The chosen setting or statement; empty if none is.
    [[nodiscard]] QString key() const;
    /// Chooses it; false if it is not shown.
    bool choose(const QString& key);
    /// Chooses the next one, if there is one.
    void chooseNext();

Q_SIGNALS:
    void chosen(const QString& key);

protected:
    void currentChanged(const QModelIndex& current, const QModelIndex& previous) override;

private:
    [[nodiscard]] int heightFor(int row) const;
    void layOutRows();
    void fitRows();

    RulebookRows& m_rows;
};

} // namespace setfolio
