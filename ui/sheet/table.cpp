// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/table.h"

#include "ui/sheet/term.h"
#include "ui/wording/pagewords.h"
#include "ui/wording/sheetwords.h"

#include <algorithm>
#include <numeric>

namespace setfolio::sheet {

namespace {

constexpr double cellGap = 1.2; ///< after the words of a column
constexpr double titleHeight = 4.6;
constexpr double headsHeight = 3.4;
constexpr double headStep = 2.35; ///< from line to line of the heads

/// How much of a column's room lies before the place from which its words are set.
double shareBefore(TextAlign align) {
    return align == TextAlign::Left ? 0 : align == TextAlign::Right ? 1 : 0.5;
}

/// From line to line within a row.
double lineStep(double points) {
    return 1.26 * millimetres(points);
}

} // namespace

TablePen::TablePen(const Draft& measure, Table table) : m_table(std::move(table)) {
    for (const TableColumn& column : m_table.columns)
        m_heads.push_back(wrapped(measure, column.head, labelStyle, column.width - cellGap));
    for (const TableRow& row : m_table.rows) {
        std::vector<CellLines> cells;
        for (std::size_t i = 0; i < m_table.columns.size(); ++i)
            cells.push_back(
                broken(measure, i < row.cells.size() ? row.cells[i] : QString(), m_table.columns[i], styleOf(row)));
        m_cells.push_back(std::move(cells));
    }
}

TablePen::CellLines TablePen::broken(const Draft& measure, const QString& words, const TableColumn& column,
                                     const TextStyle& style) {
    const double room = column.width - cellGap;
    if (column.wraps)
        return {wrapped(measure, words, style, room), style.points};
    const double wanted = measure.width(words, style);
    const double points = wanted > room ? std::max(smallestPoints, style.points * room / wanted) : style.points;
    return {wrapped(measure, words, style.sized(points), room * (1 + 1e-9)), points};
}

TextStyle TablePen::styleOf(const TableRow& row) const {
    return {m_table.points, row.strong ? FontWeight::Bold : FontWeight::Medium};
}

std::size_t TablePen::headLines() const {
    qsizetype most = 0;
    for (const QStringList& head : m_heads)
        most = std::max(most, head.size());
    return static_cast<std::size_t>(most);
}

double TablePen::headHeight() const {
    const std::size_t lines = headLines();
    return (m_table.title.isEmpty() ? 0.6 : titleHeight) +
           (lines > 0 ? headsHeight + headStep * static_cast<double>(lines - 1) : 0);
}

std::size_t TablePen::linesOf(std::size_t row) const {
    qsizetype most = 1;
    for (const CellLines& cell : m_cells[row])
        most = std::max(most, cell.lines.size());
    return static_cast<std::size_t>(most);
}

double TablePen::heightOf(std::size_t lines) const {
    return m_table.pitch + static_cast<double>(lines - 1) * lineStep(m_table.points);
}

double TablePen::heightLeft() const {
    double height = headHeight();
    for (std::size_t row = m_place.row; row < m_table.rows.size(); ++row)
        height += heightOf(linesOf(row) - (row == m_place.row ? m_place.line : 0));
    const std::size_t blank =
        m_begun || m_table.leastRows < m_table.rows.size() ? 0 : m_table.leastRows - m_table.rows.size();
    return height + static_cast<double>(blank) * m_table.pitch;
}

void TablePen::drawHead(Draft& draft, Zone zone, const QRectF& area) const {
    const Tag tag{zone, ItemRole::Label, {}, {}};
    draft.ruleAcross(tag.as(ItemRole::Rule), area.left(), area.right(), area.top(), 0.5, soot);
    double y = area.top();
    if (!m_table.title.isEmpty()) {
        const QString title = m_begun ? continuedTitle(m_table.title) : m_table.title;
        draft.fitted(tag.as(ItemRole::Title), {area.left(), y + 3.4}, title, {7.2, FontWeight::Bold}, area.width());
        y += titleHeight - 0.6;
    }
    double x = area.left();
    for (std::size_t i = 0; i < m_table.columns.size(); ++i) {
        const TableColumn& column = m_table.columns[i];
        const double room = column.width - cellGap;
        double baseline =
            y + 2.9 + headStep * static_cast<double>(headLines() - static_cast<std::size_t>(m_heads[i].size()));
        for (const QString& line : m_heads[i]) {
            draft.text(tag, {x + room * shareBefore(column.align), baseline}, line,
                       {labelStyle.points, labelStyle.weight, label, column.align});
            baseline += headStep;
        }
        x += column.width;
    }
    const double bottom = area.top() + headHeight();
    if (headLines() > 0)
        draft.ruleAcross(tag.as(ItemRole::Rule), area.left(), area.right(), bottom, 0.15, paleRule);
}

/// A little beyond the words on both sides, but not over the edge of the table: it may be that of the page.
void TablePen::strike(Draft& draft, const Tag& tag, const Extent& words, double tableLeft, double centre) const {
    constexpr double beyond = 0.4, width = 0.25;
    drawStrike(draft, tag.as(ItemRole::MarkStrike), std::max(words.from - beyond, tableLeft + width / 2),
               words.to + beyond, centre, 0.3, width, soot);
}

/// Cell after cell, so that the words of a cell follow each other for whoever reads the page as text.
void TablePen::drawRow(Draft& draft, const Tag& tag, double left, double top, std::size_t lines) const {
    const TableRow& row = m_table.rows[m_place.row];
    const auto baselineOf = [&](std::size_t line) {
        return top + m_table.pitch / 2 + halfCap(m_table.points) + lineStep(m_table.points) * double(line);
    };
    std::vector<Extent> written(lines);
    double x = left;
    for (std::size_t i = 0; i < m_table.columns.size(); ++i) {
        for (std::size_t line = 0; line < lines; ++line)
            if (m_place.line + line < static_cast<std::size_t>(m_cells[m_place.row][i].lines.size()))
                written[line].add(drawWords(draft, tag, {x, baselineOf(line)}, m_place.line + line, i));
        x += m_table.columns[i].width;
    }
    for (std::size_t line = 0; row.struck && line < lines; ++line)
        if (!written[line].isEmpty())
            strike(draft, tag, written[line], left, baselineOf(line) - halfCap(m_table.points));
}

/// A line of a cell whose column begins at `start`. The lines of one that is written from the right end under each
/// other.
TablePen::Extent TablePen::drawWords(Draft& draft, const Tag& tag, QPointF start, std::size_t line,
                                     std::size_t column) const {
    const auto& [lines, points] = m_cells[m_place.row][column];
    const QString words = lines.at(static_cast<qsizetype>(line));
    TextStyle style = styleOf(m_table.rows[m_place.row]).sized(points);
    style.align = m_table.columns[column].align;
    const double share = shareBefore(style.align);
    const double width = draft.width(words, style);
    double at = start.x() + (m_table.columns[column].width - cellGap) * share;
    if (style.align == TextAlign::Left && lines.first().isRightToLeft()) {
        double widest = 0;
        for (const QString& other : lines)
            widest = std::max(widest, draft.width(other, style));
        at += widest - width;
    }
    draft.text(tag, {at, start.y()}, words, style);
    return {at - width * share, at + width * (1 - share)};
}

double TablePen::draw(Draft& draft, Zone zone, const QRectF& area, bool splits) {
    drawHead(draft, zone, area);
    m_begun = true;
    const double width = std::accumulate(m_table.columns.begin(), m_table.columns.end(), 0.0,
                                         [](double sum, const TableColumn& column) { return sum + column.width; });
    const Tag rules{zone, ItemRole::Rule, {}, {}};
    constexpr double rounding = 1e-6;
    const double top = area.top() + headHeight();
    double y = top;
    while (!isDone()) {
        const TableRow& row = m_table.rows[m_place.row];
        std::size_t lines = linesOf(m_place.row) - m_place.line;
        const bool whole = y + heightOf(lines) <= area.bottom() + rounding;
        if (!whole) {
            const bool tooHigh = splits && heightOf(lines) > area.height() - headHeight();
            if (!tooHigh || y + heightOf(1) > area.bottom() + rounding)
                break;
            while (y + heightOf(lines) > area.bottom() + rounding)
                --lines;
        }
        drawRow(draft, {zone, ItemRole::Value, row.team, row.entry}, area.left(), y, lines);
        y += heightOf(lines);
        draft.ruleAcross(rules, area.left(), area.left() + width, y, 0.15, paleRule);
        m_place = whole ? TablePlace{m_place.row + 1, 0} : TablePlace{m_place.row, m_place.line + lines};
    }
    for (std::size_t blank = m_table.rows.size();
         blank < m_table.leastRows && y + m_table.pitch <= area.bottom() + rounding; ++blank) {
        y += m_table.pitch;
        draft.ruleAcross(rules, area.left(), area.left() + width, y, 0.15, paleRule);
    }
    return y;
}

void TablePen::drawFixed(Draft& draft, Zone zone, const QRectF& area, int continuedOn) {
    const bool all = heightLeft() <= area.height() + 1e-6 || m_table.rows.size() <= m_place.row;
    const double bottom = all ? area.bottom() : area.bottom() - m_table.pitch;
    draw(draft, zone, {area.topLeft(), QPointF(area.right(), bottom)}, false);
    if (!isDone())
        draft.text({zone, ItemRole::Label, {}, {}}, {area.right(), area.bottom() - 1.4}, continuedWords(continuedOn),
                   TextStyle{7.2, FontWeight::Medium, label, TextAlign::Right});
}

} // namespace setfolio::sheet
