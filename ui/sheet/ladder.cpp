// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/scene.h"

#include "ui/sheet/term.h"
#include "ui/wording/markwords.h"

#include <algorithm>
#include <array>

namespace setfolio::sheet {

namespace {

constexpr double axis = 250.5;
constexpr double railWidth = 8.7;
constexpr double dashPitch = 1.5;
constexpr double rungsTop = ladderTop + 0.15; // clear of the heavy rule above them
constexpr double ringLine = 0.77;             ///< of the line in a term: figures stand clear of it

/// +1 for what lies right of the axis, -1 for its mirror image.
constexpr double handOf(Team team) {
    return team == Team::Home ? -1 : 1;
}
constexpr double railCentre(Team team) {
    return axis + handOf(team) * railWidth / 2;
}
constexpr double railOuter(Team team) {
    return axis + handOf(team) * railWidth;
}
constexpr double opponentsCentre(Team team) {
    return axis + handOf(team) * 11.1;
}

class LadderPen {
public:
    LadderPen(Draft& draft, const Scene& scene, Rungs rungs)
        : m_draft(draft),
          m_scene(scene),
          m_rungs(rungs),
          m_pitch((ladderBottom - rungsTop) / rungs.count),
          m_points(m_pitch > 4.5 ? 7.8 : 6.1) {}

    void head();
    void rules();
    void rail(Team team);
    void closeOff(Team team);

private:
    [[nodiscard]] Tag tag(ItemRole role, std::optional<Team> team = {}) const { return {Zone::Ladder, role, team, {}}; }
    [[nodiscard]] double bottomOf(int total) const { return rungsTop + m_pitch * (total - m_rungs.first + 1); }
    [[nodiscard]] double centreOf(int total) const { return bottomOf(total) - m_pitch / 2; }
    [[nodiscard]] int last() const { return m_rungs.first + m_rungs.count - 1; }
    void point(Team team, const RunningPoint& point);
    void mark(const Tag& entry, QPointF centre, const RunningPoint& point, const InkStyle& ink);
    void wonAgain(Team team, const RunningPoint& point); ///< the small cross of one taken back
    void square(const Tag& tag, QPointF centre, const InkStyle& ink);
    void cross(const Tag& tag, QPointF centre, const InkStyle& ink);
    void ring(const Tag& tag, QPointF centre, const InkStyle& ink);
    void slash(const Tag& tag, QPointF centre, const InkStyle& ink);
    void triangle(const Tag& tag, QPointF centre, int total, const InkStyle& ink);
    void number(const Tag& tag, QPointF centre, int total, const InkStyle& ink, double points);

    Draft& m_draft;
    const Scene& m_scene;
    Rungs m_rungs;
    double m_pitch;
    double m_points;
};

void LadderPen::head() {
    const Tag head{Zone::LadderHead, ItemRole::Label, {}, {}};
    for (const Team team : bothTeams) {
        const double room = 2 * (ladderRight - axis - 11.1);
        m_draft.fitted(head, {opponentsCentre(team), 17.4}, words(SheetLabel::Opponents),
                       TextStyle(labelStyle).centred(), room);
    }
    m_draft.fitted(head, {axis, 17.4}, words(SheetLabel::Points), TextStyle(labelStyle).centred(), 2 * railWidth);
    m_draft.ruleAcross({Zone::Ladder, ItemRole::Rule, {}, {}}, ladderLeft, ladderRight, ladderTop, 0.5, soot);
}

void LadderPen::rules() {
    const Tag line = tag(ItemRole::Rule);
    for (int total = m_rungs.first; total < last(); ++total) {
        if (total == m_scene.target())
            m_draft.ruleAcross(line, ladderLeft, ladderRight, bottomOf(total), 0.35, soot);
        else if (total % 5 == 0)
            m_draft.ruleAcross(line, ladderLeft, ladderRight, bottomOf(total), 0.25, rule);
        else
            m_draft.ruleAcross(line, ladderLeft, ladderRight, bottomOf(total), 0.12, paleRule);
    }
    m_draft.ruleDown(line, axis, ladderTop, ladderBottom, 0.25, rule);
    for (const Team team : bothTeams)
        m_draft.ruleDown(line, railOuter(team), ladderTop, ladderBottom, 0.12, paleRule);
    m_draft.ruleAcross(line, ladderLeft, ladderRight, ladderBottom, 0.3, soot);
}

/// Whether the number of a point taken back was won again.
bool isWonAgain(const std::vector<RunningPoint>& running, const RunningPoint& point) {
    return point.takenBack && std::ranges::any_of(running, [&point](const RunningPoint& other) {
               return other.place > point.place && other.total == point.total;
           });
}

void LadderPen::rail(Team team) {
    const std::vector<RunningPoint>& running = m_scene.team(team).running;
    for (const RunningPoint& each : running) {
        if (each.total < m_rungs.first || each.total > last())
            continue;
        if (isWonAgain(running, each))
            wonAgain(team, each);
        else
            point(team, each);
    }
    const int reached = running.empty() ? 0 : std::ranges::max(running, {}, &RunningPoint::total).total;
    const TextStyle unused{std::max(smallestPoints, m_points - 0.6), FontWeight::Regular, label, TextAlign::Centre};
    for (int total = std::max(m_rungs.first, reached + 1); total <= last(); ++total)
        m_draft.textAt(tag(ItemRole::RunningNumber, team), {railCentre(team), centreOf(total)}, QString::number(total),
                       unused);
}

void LadderPen::point(Team team, const RunningPoint& point) {
    const InkStyle& ink = m_scene.inkOf(point.round);
    const QPointF centre(railCentre(team), centreOf(point.total));
    const Tag entry = tag(ItemRole::RunningNumber, team).of(point.entry);
    mark(entry, centre, point, ink);
    m_draft.textAt(entry.as(ItemRole::RunningOpponents), {opponentsCentre(team), centre.y()},
                   QString::number(point.opponents), {6.2, FontWeight::Regular, label, TextAlign::Centre});
    if (point.penalty)
        m_draft.textAt(entry.as(ItemRole::RunningPenalty), centre + QPointF(3.35, -m_pitch * 0.22),
                       markLetters(PenaltyLetter()), {6, FontWeight::Bold, ink.colour, TextAlign::Centre});
    if (point.takenBack)
        cross(entry.as(ItemRole::RunningCross), centre, ink);
}

void LadderPen::mark(const Tag& entry, QPointF centre, const RunningPoint& point, const InkStyle& ink) {
    switch (point.mark) {
    case RunningMark::Ring:
        ring(entry.as(ItemRole::RunningMark), centre, ink);
        return number(entry, centre, point.total, ink, m_points);
    case RunningMark::Slash:
        number(entry, centre, point.total, ink, m_points);
        return slash(entry.as(ItemRole::RunningSlash), centre, ink);
    case RunningMark::Triangle:
        return triangle(entry, centre, point.total, ink);
    case RunningMark::Square:
        square(entry.as(ItemRole::RunningMark), centre, ink);
        return number(entry, centre, point.total, ink, m_points);
    }
    Q_UNREACHABLE();
}

/// Where the small crosses of one rung stand, from the middle of its number: across in millimetres, down in pitches. A
/// number may be taken back, won again, and taken back again: its second cross stands under the first.
QPointF crossPlace(std::ptrdiff_t cross, std::ptrdiff_t of) {
    constexpr double beside = 3.35;
    if (of <= 2)
        return {-beside, cross == 0 ? -0.22 : 0.22};
    constexpr std::array places{QPointF(-beside, -0.3), QPointF(-beside, 0), QPointF(-beside, 0.3),
                                QPointF(beside, 0.22), QPointF(beside, -0.22)};
    return places[static_cast<std::size_t>(std::min<std::ptrdiff_t>(cross, places.size() - 1))];
}

void LadderPen::wonAgain(Team team, const RunningPoint& point) {
    const InkStyle& ink = m_scene.inkOf(point.round);
    const std::vector<RunningPoint>& running = m_scene.team(team).running;
    const auto isBeside = [&](const RunningPoint& other) {
        return other.total == point.total && isWonAgain(running, other);
    };
    const auto own = std::ranges::find(running, point.place, &RunningPoint::place);
    const QPointF from =
        crossPlace(std::count_if(running.begin(), own, isBeside), std::ranges::count_if(running, isBeside));
    const QPointF place(railCentre(team) + from.x(), centreOf(point.total) + m_pitch * from.y());
    m_draft.textAt(tag(ItemRole::RunningCross, team).of(point.entry), place, QStringLiteral("\u00d7"),
                   {6.5, FontWeight::Bold, ink.colour, TextAlign::Centre});
}

void LadderPen::number(const Tag& tag, QPointF centre, int total, const InkStyle& ink, double points) {
    m_draft.textAt(tag, centre, QString::number(total), {points, ink.digits, ink.colour, TextAlign::Centre});
}

void LadderPen::ring(const Tag& tag, QPointF centre, const InkStyle& ink) {
    const double diameter = std::min(4.7, m_pitch - 0.18);
    const double width = (m_pitch > 4.5 ? ringLine : 0.85 * ringLine) * ink.line * diameter / 4.7;
    const double radius = (diameter - width) / 2;
    m_draft.ring(tag, centre, radius, strokeRound(ink, width, radius, dashPitch));
}

void LadderPen::square(const Tag& tag, QPointF centre, const InkStyle& ink) {
    const double width = 0.6 * ringLine * ink.line;
    const QPointF half(std::min(2.3, m_pitch / 2 - 0.1) - width / 2, std::min(2.2, m_pitch / 2 - 0.15) - width / 2);
    const QPointF mirrored(half.x(), -half.y());
    m_draft.polygon(tag, {{centre - half, centre + mirrored, centre + half, centre - mirrored}}, ink, width, dashPitch);
}

void LadderPen::cross(const Tag& tag, QPointF centre, const InkStyle& ink) {
    const QPointF reach(0.45 * m_pitch, 0.4 * m_pitch);
    const QPointF mirrored(reach.x(), -reach.y());
    m_draft.line(tag, centre - reach, centre + reach, {ink.colour, 0.3, {}, true});
    m_draft.line(tag, centre - mirrored, centre + mirrored, {ink.colour, 0.3, {}, true});
}

void LadderPen::slash(const Tag& tag, QPointF centre, const InkStyle& ink) {
    const QLineF line(centre + QPointF(-0.441, 0.42) * m_pitch, centre + QPointF(0.441, -0.42) * m_pitch);
    m_draft.line(tag, line.p1(), line.p2(), strokeAlong(ink, ink.slash, line.length(), dashPitch));
}

void LadderPen::triangle(const Tag& tag, QPointF centre, int total, const InkStyle& ink) {
    const double height = m_pitch - 0.2;
    const double width = 0.6 * ink.line * height / 4.7; // its figures have the least room
    const double points = m_pitch > 4.5 ? 6.6 : smallestPoints;
    const QPointF bottom = centre + QPointF(0, height / 2);
    m_draft.polygon(tag.as(ItemRole::RunningMark), triangleWithin(bottom, m_pitch > 4.5 ? 8.0 : 7.3, height, width),
                    ink, width, dashPitch);
    number(tag, bottom - QPointF(0, width + 0.06 * height + halfCap(points)), total, ink, points);
}

/// Nothing can be added to a score that is final: a rule under its last number and a line through the rest.
void LadderPen::closeOff(Team team) {
    if (!m_scene.isOver())
        return;
    const int reached = m_scene.set.score[team];
    if (reached > last())
        return;
    const Tag close = tag(ItemRole::CloseOff, team);
    const bool here = reached >= m_rungs.first - 1;
    const double top = here ? bottomOf(reached) : rungsTop;
    if (here)
        m_draft.ruleAcross(close, axis, railOuter(team), top, 0.55, soot);
    if (reached < last())
        m_draft.line(close, {axis + handOf(team) * 7.9, top + 0.9}, {axis + handOf(team) * 0.8, ladderBottom - 0.9},
                     {soot, 0.3, {}, false});
}

} // namespace

std::vector<Rungs> rungsOf(const SetRecord& set) {
    constexpr int roomy = 36, close = 44;
    const int most = std::max(set.score.home, set.score.visitors);
    if (most > roomy && most <= close)
        return {{1, close}};
    std::vector<Rungs> pages{{1, roomy}};
    while (pages.back().first + roomy - 1 < most)
        pages.push_back({pages.back().first + roomy, roomy});
    return pages;
}

void drawScore(Draft& draft, const Scene& scene) {
    for (const Team team : bothTeams) {
        const Tag tag{Zone::LadderHead, ItemRole::Score, team, {}};
        drawPlate(draft, tag, {team == Team::Home ? ladderLeft : axis, 0, 13.5, 5}, scene.name(team), 8.5);
        if (scene.set.number == 0) // a blank sheet: the pen writes it
            continue;
        const bool lost = scene.set.result && scene.set.result->winner != team;
        draft.text(tag, {axis + handOf(team) * 6.75, 13.3}, QString::number(scene.set.score[team]),
                   {23, lost ? FontWeight::Medium : FontWeight::Bold, soot, TextAlign::Centre});
    }
    draft.ruleDown({Zone::LadderHead, ItemRole::Rule, {}, {}}, axis, 6.4, 14.6, 0.2, rule);
}

void drawLadder(Draft& draft, const Scene& scene, Rungs rungs) {
    LadderPen pen(draft, scene, rungs);
    pen.head();
    pen.rules();
    for (const Team team : bothTeams) {
        pen.rail(team);
        pen.closeOff(team);
    }
}

} // namespace setfolio::sheet
