// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rulebookrows.h"

#include "core/record/shown.h"
#include "core/rules/rulebooksettings.h"
#include "ui/wording/fill.h"
#include "ui/wording/rulebooklabels.h"
#include "ui/wording/rulebookwords.h"

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

/// Settings in their order, then the statements.
QStringList allKeys(const Rulebook& rulebook) {
    QStringList keys;
    for (const Setting& setting : rulebookSettings())
        keys << QString::fromLatin1(setting.key);
    for (const QString& key : rulebook.sources.keys())
        if (!settingOf(key))
            keys << key;
    return keys;
}

/// "NFHS 2003 rule changes (win by two) · A"
QString sourceLine(const Source& source) {
    return source.grade.isEmpty() ? asShown(source.text) : fill(u"%1 · %2"_s, {source.text, source.grade});
}

} // namespace

RulebookRows::RulebookRows(const RulebookDraft& draft, QObject* parent) : QAbstractTableModel(parent), m_draft(draft) {
    show(Show::All, {});
}

void RulebookRows::show(Show which, const QString& words) {
    beginResetModel();
    m_rows.clear();
    QString group;
    bool amongStatements = false;
    for (const QString& key : allKeys(m_draft.own())) {
        const bool isStatement = !settingOf(key);
        const QString begun = groupBeginningWith(isStatement && !amongStatements ? QString() : key);
        amongStatements = isStatement;
        if (!begun.isEmpty())
            group = begun;
        const Row row{key, settingLabel(key)};
        if (!isWanted(row, which, words))
            continue;
        if (!group.isEmpty())
            m_rows.push_back({{}, group});
        group.clear();
        m_rows.push_back(row);
    }
    endResetModel();
}

void RulebookRows::refresh() {
    if (!m_rows.empty())
        Q_EMIT dataChanged(index(0, 0), index(rowCount() - 1, ColumnCount - 1));
}

QString RulebookRows::keyAt(int row) const {
    return row < 0 || row >= rowCount() ? QString() : m_rows[static_cast<std::size_t>(row)].key;
}

int RulebookRows::rowOf(const QString& key) const {
    const auto found = std::ranges::find(m_rows, key, &Row::key);
    return key.isEmpty() || found == m_rows.end() ? -1 : static_cast<int>(found - m_rows.begin());
}

int RulebookRows::rowCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : static_cast<int>(m_rows.size());
}

int RulebookRows::columnCount(const QModelIndex& parent) const {
    return parent.isValid() ? 0 : ColumnCount;
}

QVariant RulebookRows::data(const QModelIndex& index, int role) const {
    if (!index.isValid() || index.row() >= rowCount())
        return {};
    const Row& row = m_rows[static_cast<std::size_t>(index.row())];
    switch (role) {
    case Qt::DisplayRole:
        return textOf(row, index.column());
    case Qt::AccessibleTextRole:
        return index.column() == Title ? spoken(row) : textOf(row, index.column());
    case SourceRole:
        return sourceLine(m_draft.own().sources.value(row.key));
    case OpenRole:
        return m_draft.isOpen(row.key);
    case DiffersRole:
        return m_draft.differs(row.key);
    default:
        return {};
    }
}

QVariant RulebookRows::headerData(int section, Qt::Orientation orientation, int role) const {
    if (orientation != Qt::Horizontal || role != Qt::DisplayRole)
        return {};
    return QStringList{tr("Setting, and where its value comes from"), tr("Published"), tr("Here")}.value(section);
}

Qt::ItemFlags RulebookRows::flags(const QModelIndex& index) const {
    return isGroup(index.row()) ? Qt::NoItemFlags : Qt::ItemIsEnabled | Qt::ItemIsSelectable;
}

bool RulebookRows::isWanted(const Row& row, Show which, const QString& words) const {
    if ((which == Show::Differing && !m_draft.differs(row.key)) || (which == Show::Open && !m_draft.isOpen(row.key)))
        return false;
    const QString all = row.title + u'\n' + textOf(row, Own) + u'\n' + m_draft.own().sources.value(row.key).text;
    return all.contains(words.simplified(), Qt::CaseInsensitive);
}

QString RulebookRows::textOf(const Row& row, int column) const {
    if (column == Title)
        return row.title;
    return valueWords(row.key, column == Published ? m_draft.published() : m_draft.own());
}

QString RulebookRows::spoken(const Row& row) const {
    QStringList parts{row.title};
    if (m_draft.differs(row.key))
        parts << tr("changed");
    if (m_draft.isOpen(row.key))
        parts << tr("look it up before the season");
    return parts.join(u", "_s);
}

} // namespace setfolio
