// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/cells.h"

namespace setfolio::sheet {

namespace {

class BlockPen {
public:
    BlockPen(Draft& draft, const Scene& scene, Team team, const Cells& cells, const Flow& flow, const FlowPage& page)
        : m_draft(draft),
          m_scene(scene),
          m_team(team),
          m_cells(cells),
          m_flow(flow),
          m_page(page),
          m_headTop(topOf(team) + stripHeight),
          m_rowsTop(rowsTop(team)),
          m_bottom(topOf(team) + blockHeight),
          m_tag{blockOf(team), ItemRole::Label, team, {}} {}

    void rounds();
    void heads();
    void rules();
    void terms();

private:
    struct Span {
        double left = 0;
        double width = 0;
        Column column;
    };
    [[nodiscard]] std::vector<Span> spans() const;
    void round(const Span& span);
    void cross(const Cell& cell, double left);
    [[nodiscard]] Tag rule() const { return m_tag.as(ItemRole::Rule); }

    Draft& m_draft;
    const Scene& m_scene;
    Team m_team;
    const Cells& m_cells;
    const Flow& m_flow;
    const FlowPage& m_page;
    double m_headTop;
    double m_rowsTop;
    double m_bottom;
    Tag m_tag;
};

std::vector<BlockPen::Span> BlockPen::spans() const {
    std::vector<Span> result;
    double left = roundsLeft;
    for (std::size_t i = 0; i < m_page.widths.size(); ++i) {
        const Column& column = m_cells.columns[static_cast<std::size_t>(m_page.firstColumn) + i];
        result.push_back({left, m_page.widths[i], column});
        left += m_page.widths[i];
    }
    return result;
}

void BlockPen::round(const Span& span) {
    const InkStyle& ink = m_scene.inkOf(span.column.round);
    if (ink.tint)
        m_draft.rect(m_tag.as(ItemRole::Tint), {span.left, m_headTop, span.width, m_bottom - m_headTop}, ink.tint);
    const double centre = m_headTop + 2.1;
    constexpr double diameter = 2.5;
    const double radius = (diameter - ink.line) / 2;
    m_draft.ring(m_tag.as(ItemRole::LegendMark), {span.left + 2.8, centre}, radius,
                 strokeRound(ink, ink.line, radius, 0.95));
    m_draft.textAt(m_tag, {span.left + 5.1, centre}, roundWords(span.column.round, span.column.part > 1),
                   {6.8, FontWeight::SemiBold, ink.colour});
    constexpr double headRuleBottom = 0.12; // just over the edge of the rows
    const double y = m_rowsTop + headRuleBottom - ink.headRule / 2;
    m_draft.line(rule(), {span.left, y}, {span.left + span.width, y}, strokeAlong(ink, ink.headRule, span.width, 3.5));
}

void BlockPen::rounds() {
    for (const Span& span : spans())
        round(span);
}

void BlockPen::heads() {
    const TextStyle style = TextStyle(labelStyle).sized(6.2);
    const double centre = m_headTop + 2.1;
    m_draft.textAt(m_tag, {1.2, centre}, words(SheetLabel::Slot), style);
    m_draft.textAt(m_tag, {9.4, centre}, words(SheetLabel::Starter), style);
    m_draft.textAt(m_tag, {20.6, centre}, words(SheetLabel::Then), style);
    m_draft.ruleAcross(rule(), 0, roundsLeft, m_rowsTop, 0.25, sheet::rule);
}

void BlockPen::rules() {
    for (int row = 1; row < 6; ++row)
        m_draft.ruleAcross(rule(), 0, mainRight, m_rowsTop + rowHeight * row, 0.15, paleRule);
    for (const double x : {numeralRight, starterRight})
        m_draft.ruleDown(rule(), x, m_rowsTop, m_bottom, 0.15, paleRule);
    for (const Span& span : spans())
        m_draft.ruleDown(rule(), span.left, m_headTop, m_bottom, 0.2, sheet::rule);
    m_draft.ruleAcross(rule(), 0, mainRight, m_bottom, 0.3, soot);
}

void BlockPen::cross(const Cell& cell, double left) {
    const InkStyle& ink = m_scene.inkOf(cell.round);
    constexpr double half = crossSide / 2;
    const QPointF middle(left + cellPadding + half + 0.4, rowCentre(m_team, cell.slot));
    for (const double slope : {1.0, -1.0})
        m_draft.line(m_tag.as(ItemRole::CellCross), middle - QPointF(half, half * slope),
                     middle + QPointF(half, half * slope), {ink.colour, 0.3, {}, true});
}

void BlockPen::terms() {
    const std::vector<Span> columns = spans();
    for (const Cell& cell : m_cells.cells) {
        const int column = cell.column - m_page.firstColumn;
        if (cell.team != m_team || column < 0 || column >= static_cast<int>(columns.size()))
            continue;
        const Span& span = columns[static_cast<std::size_t>(column)];
        const CellPlace place{span.left + cell.marksLeft(), rowCentre(m_team, cell.slot)};
        if (cell.live)
            m_draft.rect(m_tag.as(ItemRole::LiveCell),
                         QRectF(span.left, place.centre - rowHeight / 2, span.width, rowHeight)
                             .adjusted(0.25, 0.25, -0.25, -0.25),
                         sheet::live, {soot, 0.5, {}, false});
        if (cell.crossed)
            cross(cell, span.left);
        drawTerm(m_draft, m_tag, place, cell.marks, cell.end, m_flow.steps[cell.place], m_scene.inkOf(cell.round));
    }
}

} // namespace

void drawBlock(Draft& draft, const Scene& scene, Team team, const Cells& cells, const Flow& flow,
               const FlowPage& page) {
    BlockPen pen(draft, scene, team, cells, flow, page);
    drawStrip(draft, scene, team);
    pen.rounds();
    pen.heads();
    pen.rules();
    drawSlots(draft, scene, team);
    pen.terms();
}

} // namespace setfolio::sheet
