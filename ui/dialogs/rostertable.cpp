// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rostertable.h"

#include "ui/dialogs/rostermodel.h"
#include "ui/look/appearance.h"
#include "ui/look/colours.h"
#include "ui/look/controls.h"
#include "ui/look/plainfield.h"
#include "ui/look/plate.h"

#include <QClipboard>
#include <QGuiApplication>
#include <QHeaderView>
#include <QKeyEvent>
#include <QLineEdit>
#include <QPainter>

namespace setfolio {

namespace {

constexpr int numberWidth = 86;
constexpr int markWidth = 84;
constexpr int nameWidth = 200;

/// A box with a tick, drawn so that it reads in both themes and without colour.
void paintMark(QPainter& painter, const QRectF& cell, bool marked, const QColor& colour) {
    const QRectF box(cell.center().x() - 10, cell.center().y() - 10, 20, 20);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(colour, 1.4));
    painter.setBrush(Qt::NoBrush);
    painter.drawRoundedRect(box, 4, 4);
    if (!marked)
        return;
    painter.setPen(QPen(colour, 2.6, Qt::SolidLine, Qt::RoundCap, Qt::RoundJoin));
    painter.drawPolyline(QPolygonF{box.topLeft() + QPointF(4.5, 10.5), box.topLeft() + QPointF(8.5, 14.5),
                                   box.topLeft() + QPointF(15.5, 5.5)});
}

} // namespace

RosterTable::RosterTable(RosterModel& model, QWidget* parent) : QTableView(parent), m_model(model) {
    setModel(&model);
    auto* delegate = new RosterDelegate(this);
    setItemDelegate(delegate);
    setEditTriggers(DoubleClicked | SelectedClicked | AnyKeyPressed | EditKeyPressed);
    setSelectionMode(SingleSelection);
    setTabKeyNavigation(false); // Tab leaves the table; within a cell that is edited it goes to the next one
    verticalHeader()->setDefaultSectionSize(scaled(targetHeight));
    verticalHeader()->setFixedWidth(scaled(44));
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setSectionResizeMode(RosterModel::Name, QHeaderView::Stretch);
    horizontalHeader()->setFixedHeight(scaled(36));
    horizontalHeader()->setHighlightSections(false);
    for (const int column : {RosterModel::Number, RosterModel::Captain, RosterModel::Libero}) {
        horizontalHeader()->setSectionResizeMode(column, QHeaderView::Fixed);
        setColumnWidth(column, scaled(column == RosterModel::Number ? numberWidth : markWidth));
    }
    if (textScale() > 1) { // there is no room for all columns at once
        horizontalHeader()->setSectionResizeMode(RosterModel::Name, QHeaderView::Fixed);
        setColumnWidth(RosterModel::Name, scaled(nameWidth));
        setHorizontalScrollMode(ScrollPerPixel);
    }
    setVerticalScrollMode(ScrollPerPixel);
    setCurrentIndex(model.index(0, 0));
    connect(delegate, &RosterDelegate::pasteWanted, this, &RosterTable::pasteWanted);
    connect(this, &QTableView::clicked, this, [this](const QModelIndex& index) {
        if (index.flags().testFlag(Qt::ItemIsEditable) && state() != EditingState)
            edit(index);
    });
}

QModelIndex RosterTable::moveCursor(CursorAction action, Qt::KeyboardModifiers modifiers) {
    if (action == MoveNext || action == MovePrevious)
        return textCellAfter(currentIndex(), action == MoveNext ? 1 : -1);
    return QTableView::moveCursor(action, modifiers);
}

void RosterTable::closeEditor(QWidget* editor, QAbstractItemDelegate::EndEditHint hint) {
    const QModelIndex from = currentIndex();
    QTableView::closeEditor(editor, hint);
    if (hint != QAbstractItemDelegate::SubmitModelCache || from.row() + 1 >= m_model.rowCount())
        return;
    // Enter goes down a column of numbers, and from a name to the next line's number
    const QModelIndex next = m_model.index(from.row() + 1, RosterModel::Number);
    setCurrentIndex(next);
    edit(next);
}

void RosterTable::keyPressEvent(QKeyEvent* event) {
    if (event->matches(QKeySequence::Paste))
        return Q_EMIT pasteWanted();
    if (event->matches(QKeySequence::Delete))
        return removeCurrentRow();
    if (event->key() == Qt::Key_Return || event->key() == Qt::Key_Enter) {
        if (state() != EditingState && currentIndex().flags().testFlag(Qt::ItemIsEditable))
            edit(currentIndex());
        return;
    }
    QTableView::keyPressEvent(event);
}

QModelIndex RosterTable::textCellAfter(const QModelIndex& from, int step) const {
    const int cell = from.row() * 2 + (from.column() == RosterModel::Number ? 0 : 1) + step;
    if (cell < 0 || cell >= m_model.rowCount() * 2)
        return from;
    return m_model.index(cell / 2, cell % 2 == 0 ? RosterModel::Number : RosterModel::Name);
}

void RosterTable::removeCurrentRow() {
    const QModelIndex current = currentIndex();
    m_model.removeRow(current.row());
    setCurrentIndex(m_model.index(std::min(current.row(), m_model.rowCount() - 1), current.column()));
}

QWidget* RosterDelegate::createEditor(QWidget* parent, const QStyleOptionViewItem& option,
                                      const QModelIndex& index) const {
    QWidget* editor = QStyledItemDelegate::createEditor(parent, option, index);
    if (auto* line = qobject_cast<QLineEdit*>(editor)) {
        const bool number = index.column() == RosterModel::Number;
        line->setMaxLength(number ? 4 : 120);
        takePlainWords(*line);
        line->setAlignment(number ? Qt::AlignCenter : Qt::AlignLeft);
        line->setFont(number ? windowFont(16, QFont::Bold) : windowFont(15));
        line->setAccessibleName(index.model()->headerData(index.column(), Qt::Horizontal, Qt::DisplayRole).toString());
    }
    return editor;
}

void RosterDelegate::updateEditorGeometry(QWidget* editor, const QStyleOptionViewItem& option,
                                          const QModelIndex&) const {
    editor->setGeometry(option.rect);
}

bool RosterDelegate::eventFilter(QObject* editor, QEvent* event) {
    if (event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->matches(QKeySequence::Paste)) {
        const QString text = QGuiApplication::clipboard()->text();
        if (text.trimmed().contains(u'\n') || text.contains(u'\t')) {
            Q_EMIT closeEditor(qobject_cast<QWidget*>(editor), RevertModelCache);
            Q_EMIT pasteWanted();
            return true;
        }
    }
    return QStyledItemDelegate::eventFilter(editor, event);
}

void RosterDelegate::paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const {
    if (index.column() == RosterModel::Number || index.column() == RosterModel::Name)
        return QStyledItemDelegate::paint(painter, option, index);
    painter->save();
    const bool selected = option.state.testFlag(QStyle::State_Selected);
    if (selected)
        painter->fillRect(option.rect, amber());
    const Colours& colours = coloursOf(themeOf(option.palette));
    paintMark(*painter, option.rect, index.data(Qt::CheckStateRole).toInt() == Qt::Checked,
              selected ? onAmber() : colours.text);
    painter->restore();
}

bool RosterDelegate::editorEvent(QEvent* event, QAbstractItemModel* model, const QStyleOptionViewItem& option,
                                 const QModelIndex& index) {
    if (!index.flags().testFlag(Qt::ItemIsUserCheckable))
        return QStyledItemDelegate::editorEvent(event, model, option, index);
    // the whole cell is the target, not only the box
    // a second tap soon after the first comes as a double click, and its release not at all
    const bool clicked = event->type() == QEvent::MouseButtonRelease || event->type() == QEvent::MouseButtonDblClick;
    const bool pressed = event->type() == QEvent::KeyPress && static_cast<QKeyEvent*>(event)->key() == Qt::Key_Space;
    if (!clicked && !pressed)
        return false;
    const bool marked = index.data(Qt::CheckStateRole).toInt() == Qt::Checked;
    return model->setData(index, marked ? Qt::Unchecked : Qt::Checked, Qt::CheckStateRole);
}

} // namespace setfolio
