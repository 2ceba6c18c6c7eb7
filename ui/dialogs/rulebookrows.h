// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The settings of an adapted rulebook as rows of a table, by group: title and source, published value, own value.
#pragma once

#include "ui/dialogs/rulebookdraft.h"

#include <QAbstractTableModel>

#include <vector>

namespace setfolio {

class RulebookRows : public QAbstractTableModel {
    Q_OBJECT

public:
    enum Column { Title, Published, Own, ColumnCount };
    enum Role { SourceRole = Qt::UserRole, OpenRole, DiffersRole };
    enum class Show : std::uint8_t { All, Differing, Open };

    /// Reads the draft, which must outlive it.
    explicit RulebookRows(const RulebookDraft& draft, QObject* parent = nullptr);

    /// The rows to be shown: all, or those that now differ or are open; of these, the ones whose title, value or source
    /// holds the words. A group without any is left out. They stay until shown anew, whatever is changed meanwhile.
    void show(Show which, const QString& words);
    /// The values or sources have changed.
    void refresh();

    /// The setting or statement of a row; empty for the title of a group.
    [[nodiscard]] QString keyAt(int row) const;
    /// -1 if it is not shown.
    [[nodiscard]] int rowOf(const QString& key) const;
    [[nodiscard]] bool isGroup(int row) const { return keyAt(row).isEmpty(); }

    [[nodiscard]] int rowCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] int columnCount(const QModelIndex& parent = {}) const override;
    [[nodiscard]] QVariant data(const QModelIndex& index, int role) const override;
    [[nodiscard]] QVariant headerData(int section, Qt::Orientation orientation, int role) const override;
    [[nodiscard]] Qt::ItemFlags flags(const QModelIndex& index) const override;

private:
    struct Row {
        QString key;
        QString title;
    };
    [[nodiscard]] bool isWanted(const Row& row, Show which, const QString& words) const;
    [[nodiscard]] QString textOf(const Row& row, int column) const;
    [[nodiscard]] QString spoken(const Row& row) const;

    const RulebookDraft& m_draft;
    std::vector<Row> m_rows;
};

} // namespace setfolio
