// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/scorepicture.h"

#include "ui/wording/pagewords.h"

#include <algorithm>

namespace setfolio::sheet {

namespace {

constexpr Tag body{Zone::Body, ItemRole::Label, {}, {}};
constexpr double axisRoom = 8;  ///< for the numbers at the left
constexpr double codeRoom = 20; ///< for the teams' codes at the right
constexpr double eventRoom = 6; ///< above and below

class PicturePen {
public:
    PicturePen(Draft& draft, const QRectF& area, const PerTeam<TeamName>& teams, const SetFigures& set)
        : m_draft(draft),
          m_teams(teams),
          m_set(set),
          m_plot(area.adjusted(axisRoom, eventRoom, -codeRoom, -eventRoom)),
          m_most(std::max({5, set.score.home, set.score.visitors})),
          m_step(m_plot.width() / std::max<double>(10, double(set.course.size()))) {}

    void grid();
    void line(Team team);
    void changes();
    void ends();

private:
    [[nodiscard]] double x(std::size_t points) const { return m_plot.left() + m_step * double(points); }
    [[nodiscard]] double y(int score) const { return m_plot.bottom() - m_plot.height() * score / m_most; }
    [[nodiscard]] static Stroke strokeOf(Team team) {
        return team == Team::Home ? Stroke{soot, 0.8, {}, true} : Stroke{soot, 0.3, {}, true};
    }

    Draft& m_draft;
    const PerTeam<TeamName>& m_teams;
    const SetFigures& m_set;
    QRectF m_plot;
    int m_most;
    double m_step;
};

void PicturePen::grid() {
    for (int score = 0; score <= m_most; score += 5) {
        m_draft.line(body.as(ItemRole::Court), {m_plot.left(), y(score)}, {m_plot.right(), y(score)},
                     {paleRule, score == 0 ? 0.25 : 0.12, {}, false});
        m_draft.textAt(body, {m_plot.left() - 1.6, y(score)}, QString::number(score),
                       TextStyle(labelStyle).fromRight());
    }
}

void PicturePen::line(Team team) {
    const Tag tag{Zone::Body, ItemRole::ScoreLine, team, {}};
    int score = 0;
    QPointF at(x(0), y(0));
    for (std::size_t i = 0; i < m_set.course.size(); ++i) {
        score += m_set.course[i] == team ? 1 : 0;
        const QPointF next(x(i + 1), y(score));
        m_draft.line(tag, at, next, strokeOf(team));
        at = next;
    }
}

void PicturePen::changes() {
    for (const Change& change : m_set.changes) {
        const bool above = change.team == Team::Home;
        // Points that were taken back later were on the board then, but are no part of the course.
        const auto points = static_cast<std::size_t>(change.score.home + change.score.visitors);
        const double at = x(std::min(points, m_set.course.size()));
        const Tag tag{Zone::Body, ItemRole::ScoreEvent, change.team, change.entry};
        const double edge = above ? m_plot.top() - 1.4 : m_plot.bottom() + 1.4;
        const double out = above ? -1 : 1;
        if (change.substitution) {
            m_draft.line(tag, {at, edge}, {at, edge + 1.5 * out}, {soot, 0.25, {}, false});
            continue;
        }
        const QPolygonF mark{
            {QPointF(at, edge - 0.4 * out), QPointF(at - 1.1, edge + 2.4 * out), QPointF(at + 1.1, edge + 2.4 * out)}};
        m_draft.filledPolygon(tag, mark, soot, {});
    }
}

/// Code and points of each team at the end of its line; kept apart where the lines end close together.
void PicturePen::ends() {
    PerTeam<double> place{y(m_set.score.home), y(m_set.score.visitors)};
    const auto labelOf = [&](Team team) { return m_teams[team].code + u' ' + QString::number(m_set.score[team]); };
    const auto isWide = [&](Team team) {
        return m_draft.width(labelOf(team), {smallestPoints, FontWeight::Bold}) > codeRoom - 1.6;
    };
    const double apart = std::ranges::any_of(bothTeams, isWide) ? 4.8 : 4; // wide ones take two lines
    if (std::abs(place.home - place.visitors) < apart) {
        const Team upper = m_set.score.home >= m_set.score.visitors ? Team::Home : Team::Visitors;
        const double middle =
            std::clamp((place.home + place.visitors) / 2, m_plot.top() + apart / 2, m_plot.bottom() - apart / 2);
        place[upper] = middle - apart / 2;
        place[opponentsOf(upper)] = middle + apart / 2;
    }
    for (const Team team : bothTeams) {
        const TextStyle style{8, team == Team::Home ? FontWeight::Bold : FontWeight::Medium};
        m_draft.named(body.as(ItemRole::Value), {m_plot.right() + 1.6, place[team] + halfCap(8)}, labelOf(team), style,
                      codeRoom - 1.6, {2, -1.1, 2.15});
    }
}

} // namespace

void drawScorePicture(Draft& draft, const QRectF& area, const PerTeam<TeamName>& teams, const SetFigures& set) {
    PicturePen pen(draft, area, teams, set);
    pen.grid();
    for (const Team team : {Team::Visitors, Team::Home})
        pen.line(team);
    pen.changes();
    pen.ends();
}

} // namespace setfolio::sheet
