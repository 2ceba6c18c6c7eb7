// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The table in which a roster is typed: number, Tab, name, Enter, and on to the next line. A roster that is pasted
/// goes into the table whole.
#pragma once

#include <QStyledItemDelegate>
#include <QTableView>

namespace setfolio {

class RosterModel;

class RosterTable : public QTableView {
    Q_OBJECT

public:
    explicit RosterTable(RosterModel& model, QWidget* parent = nullptr);

Q_SIGNALS:
    void pasteWanted();

protected:
    QModelIndex moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) override;
    void closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) override;
    void keyPressEvent(QKeyEvent* event) override;

private:
    [[nodiscard]] QModelIndex textCellAfter(const QModelIndex& from, int step) const;
    void removeCurrentRow();

    RosterModel& m_model;
};

/// Edits a cell, and tells when what is pasted into it is more than a cell.
class RosterDelegate : public QStyledItemDelegate {
    Q_OBJECT

public:
    using QStyledItemDelegate::QStyledItemDelegate;
    QWidget* createEditor(QWidget* parent, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    void updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                              const QModelIndex& index) const override;
    bool eventFilter(QObject* editor, QEvent* event) override;

Q_SIGNALS:
    void pasteWanted();

protected:
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override;
    bool editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                     const QModelIndex& index) override;
};

} // namespace setfolio
