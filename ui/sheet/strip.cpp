// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/scene.h"

namespace setfolio::sheet {

namespace {

constexpr double labelDown = 3.0; // baselines, from the top of the block
constexpr double valueDown = 7.1;
constexpr double boxDown = 3.7;
constexpr double boxHeight = 4.1;
constexpr double captainLeft = 68;
constexpr double liberosLeft = 81;
constexpr double timeOutsLeft = 103;
constexpr Stroke boxLine{rule, 0.2, {}, false};

class StripPen {
public:
    StripPen(Draft& draft, const Scene& scene, Team team)
        : m_draft(draft),
          m_scene(scene),
          m_team(team),
          m_record(scene.team(team)),
          m_top(topOf(team)),
          m_tag{blockOf(team), ItemRole::Label, team, {}} {}

    void name();
    void captain();
    void liberos();
    void timeOuts();
    void substitutions();

private:
    /// The cells of the substitution counter: all that the rulebook allows, and any beyond; of very many the last.
    struct Counter {
        int first = 1;
        int last = 0;
        double width = 5.15; ///< of a cell
        [[nodiscard]] double left() const { return mainRight - width * (last - first + 1); }
    };
    [[nodiscard]] Counter counter() const;
    [[nodiscard]] bool captainApart() const {
        return m_scene.heading.opened.rulebook.captainMark == CaptainMark::OwnPlace;
    }
    void label(double x, const QString& text, double room) {
        m_draft.fitted(m_tag, {x, m_top + labelDown}, text, labelStyle, room);
    }
    void drawTimeOut(int number, const QRectF& box);
    void counterCell(int number, const QRectF& cell);

    Draft& m_draft;
    const Scene& m_scene;
    Team m_team;
    const TeamRecord& m_record;
    double m_top;
    Tag m_tag;
};

void StripPen::name() {
    const TeamName& name = m_scene.name(m_team);
    drawPlate(m_draft, m_tag, {0, m_top, 18, stripHeight}, name, 13);
    m_draft.ruleAcross(m_tag.as(ItemRole::Rule), 0, mainRight, m_top, 0.5, soot);
    drawTeamName(m_draft, m_tag, {20.5, m_top}, teamWords(m_team, m_scene.set.servesFirst, name.colour), name.name,
                 captainApart() ? captainLeft - 22 : 58);
}

/// Where the rulebook gives her number a place of its own.
void StripPen::captain() {
    if (!captainApart())
        return;
    label(captainLeft, words(SheetLabel::Captain), liberosLeft - captainLeft - 1);
    if (m_record.captain)
        m_draft.text(m_tag.as(ItemRole::Value), {captainLeft, m_top + valueDown},
                     QString::number(m_record.captain->value), {9.5, FontWeight::SemiBold});
}

void StripPen::liberos() {
    label(liberosLeft, words(SheetLabel::Libero), timeOutsLeft - liberosLeft - 1);
    const double pitch =
        std::min(7.4, (timeOutsLeft - liberosLeft) / std::max<double>(1, double(m_record.liberos.size())));
    double x = liberosLeft;
    for (const ShirtNumber libero : m_record.liberos) {
        m_draft.fitted(m_tag.as(ItemRole::Value), {x, m_top + valueDown}, QString::number(libero.value),
                       {9.5, FontWeight::SemiBold}, pitch - 1);
        x += pitch;
    }
}

void StripPen::timeOuts() {
    const int taken = static_cast<int>(m_record.timeOuts.size());
    const int boxes = std::max({1, m_scene.heading.opened.rulebook.timeOuts, taken});
    const double room = counter().left() - 2 - timeOutsLeft;
    const double pitch = std::min(17.0, (room + 1.4) / boxes);
    label(timeOutsLeft, words(SheetLabel::TimeOuts), room);
    for (int i = 0; i < boxes; ++i)
        drawTimeOut(i + 1, {timeOutsLeft + pitch * i, m_top + boxDown, pitch - (pitch < 8 ? 0.4 : 1.4), boxHeight});
}

void StripPen::drawTimeOut(int number, const QRectF& box) {
    const auto index = static_cast<std::size_t>(number - 1);
    const bool taken = index < m_record.timeOuts.size();
    const Tag tag = m_tag.of(taken ? m_record.timeOuts[index].entry : EntryNumber());
    const bool roomy = box.width() > 13;
    m_draft.rect(tag.as(ItemRole::Box), box, white, boxLine);
    if (roomy)
        m_draft.textAt(tag, {box.left() + 1, box.center().y()}, timeOutBox(number), labelStyle.sized(6.2));
    const double left = box.left() + (roomy ? 4.6 : 0.3);
    const QPointF middle((left + box.right()) / 2, box.center().y());
    if (taken) {
        const TimeOutTaken& score = m_record.timeOuts[index];
        const TextStyle style{8.5, FontWeight::SemiBold, soot, TextAlign::Centre};
        const double points =
            8.5 * (box.right() - left - 0.4) / m_draft.width(scoreWords(score.own, score.opponents), style);
        m_draft.textAt(tag.as(ItemRole::TimeOutScore), middle, scoreWords(score.own, score.opponents),
                       style.sized(std::clamp(points, smallestPoints, 8.5)));
    } else if (m_scene.isOver()) {
        const double half = std::min(4.25, (box.right() - left) / 2 - 1);
        m_draft.ruleAcross(tag.as(ItemRole::TimeOutUnused), middle.x() - half, middle.x() + half, middle.y(), 0.3,
                           soot);
    }
}

StripPen::Counter StripPen::counter() const {
    constexpr double room = 92.5;
    constexpr int most = 33; // cells that hold a number of 6 pt
    const int used = static_cast<int>(m_record.substitutions.size());
    const int limit = std::clamp(m_scene.heading.opened.rulebook.substitutionLimit, 0, most);
    Counter counter{std::max(1, used - most + 1), std::max(limit, used)};
    counter.width = std::min(5.15, room / std::max(1, counter.last - counter.first + 1));
    return counter;
}

void StripPen::substitutions() {
    const int used = static_cast<int>(m_record.substitutions.size());
    const Counter counter = this->counter();
    const QString head = substitutionsWords(used, m_scene.heading.opened.rulebook.substitutionLimit);
    label(std::min(counter.left(), mainRight - m_draft.width(head, labelStyle)), head, 92.5);
    for (int number = counter.first; number <= counter.last; ++number)
        counterCell(number, {counter.left() + counter.width * (number - counter.first), m_top + boxDown, counter.width,
                             boxHeight});
}

void StripPen::counterCell(int number, const QRectF& cell) {
    const auto index = static_cast<std::size_t>(number - 1);
    const bool used = index < m_record.substitutions.size();
    const Tag tag = m_tag.of(used ? m_record.substitutions[index].entry : EntryNumber());
    m_draft.rect(tag.as(ItemRole::Box), cell, white, boxLine);
    const TextStyle style{cell.width() < 3.7 ? 6.0 : 7.2, FontWeight::Medium, used ? soot : sheet::label,
                          TextAlign::Centre};
    m_draft.textAt(tag.as(ItemRole::CounterNumber), cell.center(), QString::number(number), style);
    if (!used)
        return;
    const InkStyle& ink = m_scene.inkOf(m_record.substitutions[index].round);
    const QLineF cross(cell.left() + 0.7, cell.bottom() - 0.45, cell.right() - 0.7, cell.top() + 0.45);
    m_draft.line(tag.as(ItemRole::CounterCross), cross.p1(), cross.p2(),
                 strokeAlong(ink, ink.cross, cross.length(), 1.5));
}

} // namespace

void drawStrip(Draft& draft, const Scene& scene, Team team) {
    StripPen pen(draft, scene, team);
    pen.name();
    pen.captain();
    pen.liberos();
    pen.timeOuts();
    pen.substitutions();
}

} // namespace setfolio::sheet
