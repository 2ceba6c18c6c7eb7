// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The sheet beside the review: a whole page, or the part of it in which a mark stands, ringed.
#pragma once

#include "ui/sheet/compose.h"

#include <QWidget>

namespace setfolio {

class SheetPane : public QWidget {
    Q_OBJECT

public:
    /// `record` must live on and stay as it is.
    SheetPane(const MatchRecord& record, SheetFonts fonts, QWidget* parent = nullptr);

    /// Shows the sheet at this place among the sets of the record, and on it the mark of an entry; with entry 0, or one
    /// without a mark, the whole of its first page.
    void show(std::size_t sheet, EntryNumber entry);
    /// Where the mark lies in the widget; empty where none is shown.
    [[nodiscard]] QRectF marked() const;

protected:
    void paintEvent(QPaintEvent* event) override;
    void mousePressEvent(QMouseEvent* event) override;

private:
    struct Sight {
        double scale = 1; ///< pixels of a millimetre
        QPointF corner;   ///< of the widget, in millimetres of the page
    };

    void compose(std::size_t sheet);
    void find(EntryNumber entry);
    [[nodiscard]] Sight sight() const;

    const MatchRecord& m_record;
    SheetFonts m_fonts;
    std::optional<std::size_t> m_sheet;
    std::vector<Page> m_pages;
    std::size_t m_page = 0;
    QRectF m_mark; ///< in millimetres of the page
    bool m_whole = true;
};

} // namespace setfolio
