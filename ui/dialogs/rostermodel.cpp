// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rostermodel.h"

#include "ui/look/colours.h"
#include "ui/look/plate.h"

#include <QGuiApplication>

#include <algorithm>

namespace setfolio {

namespace {

constexpr std::size_t shownAtFirst = 12; ///< as many lines as a slip of paper would have

} // namespace

RosterModel::RosterModel(QObject* parent) : QAbstractTableModel(parent) {
    setRows({});
}

void RosterModel::setRows(std::vector<RosterRow> rows) {
    beginResetModel();
    m_rows = std::move(rows);
    for (RosterRow& row : m_rows) { // what is shown is what will be recorded
        row.number = plainLine(row.number);
        row.name = plainLine(row.name);
    }
    while (!m_rows.empty() && m_rows.back().isEmpty())
        m_rows.pop_back();
    m_rows.resize(std::clamp(m_rows.size() + 1, shownAtFirst, std::size_t(mostRosterLines)));
    endResetModel();
    review();
}

void RosterModel::setRulebook(const Rulebook& rulebook) {
    if (rulebook == m_rulebook)
        return;
    m_rulebook = rulebook;
    review();
}

void RosterModel::removeRow(int row) {
    if (row < 0 || row >= rowCount())
        return;
    std::vector<RosterRow> rows = m_rows;
    rows.erase(rows.begin() + row);
    setRows(std::move(rows));
}

int RosterModel::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int RosterModel::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(ColumnCount);
}

QVariant RosterModel::data(const QModelIndex& index, int role) const {
    const RosterRow& row = m_rows.at(static_cast<std::size_t>(index.row()));
    const bool isText = index.column() == Number || index.column() == Name;
    if (isText && (role == Qt::DisplayRole || role == Qt::EditRole))
        return index.column() == Number ? row.number : row.name;
    if (!isText && role == Qt::CheckStateRole)
        return (index.column() == Captain ? row.captain : row.libero) ? Qt::Checked : Qt::Unchecked;
    if (role == Qt::AccessibleTextRole && !isText)
        return headerData(index.column(), Qt::Horizontal, Qt::DisplayRole);
    if (role == Qt::FontRole && index.column() == Number)
        return windowFont(16, QFont::Bold);
    if (role == Qt::ForegroundRole && isText && hasProblem(index.row()))
        return coloursOf(themeOf(QGuiApplication::palette())).problem;
    if (role == Qt::TextAlignmentRole && index.column() == Number)
        return static_cast<int>(Qt::AlignCenter);
    return {};
}

QVariant RosterModel::headerData(int section, Qt::Orientation orientation, int role) const {
    if (role != Qt::DisplayRole)
        return {};
    if (orientation == Qt::Vertical)
        return section + 1;
    switch (static_cast<Column>(section)) {
    case Number:
        return tr("Number");
    case Name:
        return tr("Name (may be empty)");
    case Captain:
        return tr("Captain");
    case Libero:
        return tr("Libero");
    case ColumnCount:
        break;
    }
    return {};
}

Qt::ItemFlags RosterModel::flags(const QModelIndex& index) const {
    const Qt::ItemFlags base = Qt::ItemIsEnabled | Qt::ItemIsSelectable;
    const bool isText = index.column() == Number || index.column() == Name;
    return base | (isText ? Qt::ItemIsEditable : Qt::ItemIsUserCheckable);
}

bool RosterModel::setData(const QModelIndex& index, const QVariant& value, int role) {
    const auto row = static_cast<std::size_t>(index.row());
    if (role == Qt::EditRole)
        setText(m_rows.at(row), index.column(), value.toString());
    else if (role == Qt::CheckStateRole)
        setMark(row, index.column(), value.toInt() == Qt::Checked);
    else
        return false;
    keepEmptyRowLast();
    review();
    return true;
}

void RosterModel::setText(RosterRow& row, int column, const QString& text) {
    (column == Number ? row.number : row.name) = plainLine(text);
}

void RosterModel::setMark(std::size_t row, int column, bool marked) {
    if (column == Libero) {
        m_rows.at(row).libero = marked;
        return;
    }
    for (RosterRow& other : m_rows) // a team has one captain: the mark moves
        other.captain = false;
    m_rows.at(row).captain = marked;
}

void RosterModel::keepEmptyRowLast() {
    if (m_rows.back().isEmpty() || std::ssize(m_rows) >= mostRosterLines)
        return;
    beginInsertRows({}, rowCount(), rowCount());
    m_rows.emplace_back();
    endInsertRows();
}

void RosterModel::review() {
    m_problems = problemsOf(m_rows, m_rulebook);
    Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
    Q_EMIT changed();
}

bool RosterModel::hasProblem(int row) const {
    return std::ranges::any_of(m_problems, [row](const RosterProblem& problem) {
        return problem.line == row + 1 || problem.other == row + 1;
    });
}

} // namespace setfolio
