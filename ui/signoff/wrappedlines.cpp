// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/signoff/wrappedlines.h"

#include "ui/look/controls.h"

#include <QListWidget>
#include <QPainter>
#include <QStyledItemDelegate>

#include <algorithm>

namespace setfolio {

namespace {

constexpr int besideText = 28; ///< pixels of a line's width that its words do not get
constexpr int roundText = 14;  ///< and of its height

class WrappedLines : public QStyledItemDelegate {
public:
    explicit WrappedLines(QListWidget& list) : QStyledItemDelegate(&list), m_list(list) {}

    [[nodiscard]] QSize sizeHint(const QStyleOptionViewItem&, const QModelIndex& index) const override {
        const QVariant font = index.data(Qt::FontRole);
        const QFontMetrics metrics(font.isValid() ? font.value<QFont>() : m_list.font());
        const int width = std::max(80, m_list.viewport()->width() - besideText);
        const QRect words = metrics.boundingRect(QRect(0, 0, width, 10000), Qt::TextWordWrap, index.data().toString());
        const bool isHeading = !(index.flags() & Qt::ItemIsSelectable);
        return {width, std::max(words.height() + roundText, isHeading ? 0 : targetHeight)};
    }

    /// The words stand off the edge; what is chosen is marked from edge to edge.
    void paint(QPainter* painter, const QStyleOptionViewItem& option, const QModelIndex& index) const override {
        if (option.state & QStyle::State_Selected)
            painter->fillRect(option.rect, option.palette.highlight());
        QStyleOptionViewItem inner = option;
        inner.rect.adjust(besideText / 2, 0, -besideText / 2, 0);
        QStyledItemDelegate::paint(painter, inner, index);
    }

private:
    QListWidget& m_list;
};

} // namespace

void wrapLines(QListWidget& list) {
    list.setItemDelegate(new WrappedLines(list));
    list.setWordWrap(true);
    list.setResizeMode(QListView::Adjust);
    list.setHorizontalScrollBarPolicy(Qt::ScrollBarAlwaysOff);
    list.setVerticalScrollMode(QAbstractItemView::ScrollPerPixel);
}

} // namespace setfolio
