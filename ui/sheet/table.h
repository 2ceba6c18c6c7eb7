// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Tables of the pages: a title, heads, ruled rows. What does not fit goes on in another place; nothing is left out.
#pragma once

#include "ui/sheet/draft.h"

#include <vector>

namespace setfolio::sheet {

struct TableColumn {
    QString head;
    double width = 10;  ///< millimetres, the gap after it included
    bool wraps = false; ///< long words take several lines; else they are written smaller, then in several lines
    TextAlign align = TextAlign::Left;
};

struct TableRow {
    std::vector<QString> cells;
    EntryNumber entry;
    std::optional<Team> team;
    bool struck = false;
    bool strong = false; ///< written bold: sums
};

struct Table {
    QString title;
    std::vector<TableColumn> columns;
    std::vector<TableRow> rows;
    std::size_t leastRows = 0; ///< ruled, filled or not: to write in by pen
    double pitch = 4.4;        ///< of the rows, millimetres
    double points = 7.2;
};

/// Where a table goes on: the row, and the line in it.
struct TablePlace {
    std::size_t row = 0;
    std::size_t line = 0;
    bool operator==(const TablePlace&) const = default;
};

/// A table whose words have been broken into lines, and where it goes on. One place after another takes what it has
/// room for.
class TablePen {
public:
    TablePen(const Draft& measure, Table table);

    /// Nothing is left to be written.
    [[nodiscard]] bool isDone() const { return m_place.row >= m_table.rows.size(); }
    [[nodiscard]] std::size_t rowsLeft() const { return m_table.rows.size() - m_place.row; }
    /// The room that the heads and one row take.
    [[nodiscard]] double leastHeight() const { return headHeight() + m_table.pitch; }
    /// The room that all that is left takes, heads included.
    [[nodiscard]] double heightLeft() const;

    /// Writes rows into the area from its top as far as they fit; returns where they end. A row that is too high for
    /// the rest of the area stays whole, unless `splits` and it would be too high for the whole area.
    double draw(Draft& draft, Zone zone, const QRectF& area, bool splits);
    /// The same for a first page with a fixed place for each table: if not all fits, the last line says on which page
    /// the rest is.
    void drawFixed(Draft& draft, Zone zone, const QRectF& area, int continuedOn);

private:
    /// Of what has been written, from left to right.
    struct Extent {
        double from = 0;
        double to = 0;
        [[nodiscard]] bool isEmpty() const { return from >= to; }
        void add(const Extent& other) {
            from = isEmpty() ? other.from : from;
            to = other.to;
        }
    };
    /// The words of a cell, broken into lines.
    struct CellLines {
        QStringList lines;
        double points = 0;
    };
    [[nodiscard]] static CellLines broken(const Draft& measure, const QString& words, const TableColumn& column,
                                          const TextStyle& style);
    [[nodiscard]] double headHeight() const;
    [[nodiscard]] double heightOf(std::size_t lines) const;
    [[nodiscard]] std::size_t linesOf(std::size_t row) const;
    [[nodiscard]] std::size_t headLines() const;
    void drawHead(Draft& draft, Zone zone, const QRectF& area) const;
    void drawRow(Draft& draft, const Tag& tag, double left, double top, std::size_t lines) const;
    Extent drawWords(Draft& draft, const Tag& tag, QPointF start, std::size_t line, std::size_t column) const;
    void strike(Draft& draft, const Tag& tag, const Extent& words, double tableLeft, double centre) const;
    [[nodiscard]] TextStyle styleOf(const TableRow& row) const;

    Table m_table;
    std::vector<std::vector<CellLines>> m_cells; ///< of each row
    std::vector<QStringList> m_heads;            ///< of each column
    TablePlace m_place;
    bool m_begun = false; ///< its title has been written once
};

} // namespace setfolio::sheet
