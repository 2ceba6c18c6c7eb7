// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rulebooktable.h"

#include "ui/look/appearance.h"
#include "ui/look/colours.h"
#include "ui/look/plate.h"

#include <QHeaderView>
#include <QPainter>
#include <QStyledItemDelegate>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr int settingHeight = 54;
constexpr int groupHeight = 36;
constexpr int valueWidth = 178;
constexpr int titleWidth = 340;
constexpr int padding = 10;
constexpr int above = 7;         ///< over the name of a setting
constexpr int sourceHeight = 18; ///< its line is under the name
constexpr int wrapping = Qt::AlignVCenter | Qt::AlignLeft | Qt::TextWordWrap;

QFont nameFont() {
    return windowFont(14, QFont::Medium);
}

/// How high words are in a column of that width.
int heightIn(int width, const QFont& font, const QString& words) {
    return QFontMetrics(font).boundingRect(QRect(0, 0, width - 2 * padding, 1), wrapping, words).height();
}

/// Draws a row: the colours say nothing that its words do not.
class RowPainter : public QStyledItemDelegate {
public:
    using QStyledItemDelegate::QStyledItemDelegate;

    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        painter->save();
        const bool isGroup = !(index.flags() & Qt::ItemIsEnabled);
        const bool isChosen = option.state & QStyle::State_Selected;
        const Colours& colours = coloursOf(themeOf(option.palette));
        painter->fillRect(option.rect, isChosen ? amber() : isGroup ? colours.panel : colours.button);
        painter->setPen(colours.rule);
        painter->drawLine(option.rect.bottomLeft(), option.rect.bottomRight());
        const Inks inks{isChosen ? onAmber() : colours.text, isChosen ? onAmber() : colours.secondary,
                        isChosen ? onAmber() : colours.problem};
        const QRect place = option.rect.adjusted(padding, 0, -padding, 0);
        if (isGroup)
            line(*painter, place, windowFont(14, QFont::Bold), inks.quiet, index.data().toString());
        else if (index.column() == RulebookRows::Title)
            paintTitle(*painter, place, inks, index);
        else
            paintValue(*painter, place, inks, index);
        painter->restore();
    }

private:
    struct Inks {
        QColor strong, quiet, mark;
    };

    static void line(QPainter& painter, const QRect& place, const QFont& font, const QColor& ink, const QString& words,
                     Qt::Alignment side = Qt::AlignLeft) {
        painter.setFont(font);
        painter.setPen(ink);
        painter.drawText(place, static_cast<int>(Qt::AlignVCenter | side),
                         QFontMetrics(font).elidedText(words, Qt::ElideRight, place.width()));
    }

    static QString markOf(const QModelIndex& index) {
        if (index.data(RulebookRows::DiffersRole).toBool())
            return RulebookTable::tr("changed");
        return index.data(RulebookRows::OpenRole).toBool() ? RulebookTable::tr("look it up") : QString();
    }

    static void paintTitle(QPainter& painter, const QRect& place, const Inks& inks, const QModelIndex& index) {
        const QString mark = markOf(index);
        const QFont markFont = windowFont(12, QFont::Bold);
        const int taken = mark.isEmpty() ? 0 : QFontMetrics(markFont).horizontalAdvance(mark) + padding;
        const QString name = index.data().toString();
        const QRect upper(place.left(), place.top() + scaled(above), place.width(),
                          heightIn(place.width() + 2 * padding, nameFont(), name));
        const QRect lower(place.left(), upper.bottom() + 1, place.width(), scaled(sourceHeight));
        painter.setFont(nameFont());
        painter.setPen(inks.strong);
        painter.drawText(upper, wrapping, name);
        line(painter, lower.adjusted(0, 0, -taken, 0), windowFont(12), inks.quiet,
             index.data(RulebookRows::SourceRole).toString()); // the whole of it is beside the table
        line(painter, lower, markFont, inks.mark, mark, Qt::AlignRight);
    }

    static void paintValue(QPainter& painter, const QRect& place, const Inks& inks, const QModelIndex& index) {
        const bool isPublished = index.column() == RulebookRows::Published;
        const bool differs = index.data(RulebookRows::DiffersRole).toBool();
        painter.setFont(windowFont(13, differs && !isPublished ? QFont::Bold : QFont::Normal));
        painter.setPen(isPublished ? inks.quiet : inks.strong);
        painter.drawText(place, wrapping, index.data().toString());
    }
};

} // namespace

RulebookTable::RulebookTable(RulebookRows& rows, QWidget* parent) : QTableView(parent), m_rows(rows) {
    setObjectName(u"settings"_s);
    setAccessibleName(tr("Settings of the rulebook"));
    setModel(&rows);
    setItemDelegate(new RowPainter(this));
    setSelectionBehavior(SelectRows);
    setSelectionMode(SingleSelection);
    setTabKeyNavigation(false);
    setShowGrid(false);
    setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    setVerticalScrollMode(ScrollPerPixel);
    verticalHeader()->hide();
    verticalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    verticalHeader()->setDefaultSectionSize(scaled(settingHeight));
    horizontalHeader()->setSectionsClickable(false);
    horizontalHeader()->setHighlightSections(false);
    horizontalHeader()->setDefaultAlignment(Qt::AlignLeft | Qt::AlignVCenter);
    horizontalHeader()->setSectionResizeMode(QHeaderView::Fixed);
    horizontalHeader()->setSectionResizeMode(RulebookRows::Title, QHeaderView::Stretch);
    if (textScale() > 1) { // there is no room for all columns at once
        setHorizontalScrollBarPolicy(Qt::ScrollBarAsNeeded);
        horizontalHeader()->setSectionResizeMode(RulebookRows::Title, QHeaderView::Fixed);
        setColumnWidth(RulebookRows::Title, scaled(titleWidth));
    }
    setColumnWidth(RulebookRows::Published, scaled(valueWidth));
    setColumnWidth(RulebookRows::Own, scaled(valueWidth));
    connect(&rows, &QAbstractItemModel::modelReset, this, &RulebookTable::layOutRows);
    connect(horizontalHeader(), &QHeaderView::sectionResized, this, &RulebookTable::fitRows,
            Qt::QueuedConnection); // once all columns have their width
    layOutRows();
}

QString RulebookTable::key() const {
    return m_rows.keyAt(currentIndex().row());
}

bool RulebookTable::choose(const QString& key) {
    const int row = m_rows.rowOf(key);
    if (row < 0)
        return false;
    setCurrentIndex(m_rows.index(row, RulebookRows::Title));
    return true;
}

void RulebookTable::chooseNext() {
    for (int row = currentIndex().row() + 1; row < m_rows.rowCount(); ++row)
        if (!m_rows.isGroup(row)) {
            choose(m_rows.keyAt(row));
            return;
        }
}

void RulebookTable::currentChanged(const QModelIndex& current, const QModelIndex& previous) {
    QTableView::currentChanged(current, previous);
    Q_EMIT chosen(m_rows.keyAt(current.row()));
}

/// Names and values wrap in columns of another width.
void RulebookTable::fitRows() {
    layOutRows();
    scrollTo(currentIndex());
}

int RulebookTable::heightFor(int row) const {
    const QString name = m_rows.index(row, RulebookRows::Title).data().toString();
    int height = heightIn(columnWidth(RulebookRows::Title), nameFont(), name) + scaled(2 * above + sourceHeight);
    for (const int column : {RulebookRows::Published, RulebookRows::Own})
        height = std::max(height, heightIn(columnWidth(column), windowFont(13, QFont::Bold),
                                           m_rows.index(row, column).data().toString()) +
                                      scaled(above));
    return std::max(height, scaled(settingHeight));
}

void RulebookTable::layOutRows() {
    clearSpans();
    for (int row = 0; row < m_rows.rowCount(); ++row) {
        const bool isGroup = m_rows.isGroup(row);
        setRowHeight(row, isGroup ? scaled(groupHeight) : heightFor(row));
        if (isGroup)
            setSpan(row, 0, 1, RulebookRows::ColumnCount);
    }
}

} // namespace setfolio
