// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The rows of a roster as a table to type in. Empty rows wait at the end, until the list is full.
#pragma once

#include "ui/dialogs/rosterrows.h"

#include <QAbstractTableModel>

#include <vector>

namespace setfolio {

class RosterModel : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Number, Name, Captain, Libero, ColumnCount };

    explicit RosterModel(QObject* parent = nullptr);

    [[nodiscard]] const std::vector<RosterRow>& rows() const { return m_rows; }
    void setRows(std::vector<RosterRow> rows);
    /// What numbers are lawful; marks the rows anew.
    void setRulebook(const Rulebook& rulebook);
    [[nodiscard]] const std::vector<RosterProblem>& problems() const { return m_problems; }
    void removeRow(int row);

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

Q_SIGNALS:
    void changed(); ///< rows or problems

private:
    void setText(RosterRow& row, int column, const QString& text);
    void setMark(std::size_t row, int column, bool marked);
    void keepEmptyRowLast();
    void review();
    [[nodiscard]] bool hasProblem(int row) const;

    std::vector<RosterRow> m_rows; ///< the empty ones at the end included
    Rulebook m_rulebook;
    std::vector<RosterProblem> m_problems;
};

} // namespace setfolio
