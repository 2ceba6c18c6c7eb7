// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/liberosheet.h"

#include "ui/sheet/pageflow.h"
#include "ui/sheet/term.h"
#include "ui/wording/markwords.h"
#include "ui/wording/names.h"
#include "ui/wording/pagewords.h"

#include <algorithm>

namespace setfolio {

namespace {

using namespace sheet;

constexpr double servesRight = 29.6;
constexpr double cellsLeft = 30;
constexpr int cellsInRow = 20;
constexpr double cellWidth = (ladderRight - cellsLeft) / cellsInRow;
constexpr Tag body{Zone::Body, ItemRole::Label, {}, {}};

/// Draws a team's band on one page of the sheet.
class TrackPen {
public:
    TrackPen(Draft& draft, const MatchHeading& heading, const SetRecord& set, const TrackedTeam& tracked, Team team,
             int page)
        : m_draft(draft),
          m_heading(heading),
          m_set(set),
          m_tracked(tracked),
          m_team(team),
          m_page(page),
          m_tag{Zone::Body, ItemRole::Label, team, {}} {}

    void strip();
    void rules();
    void slot(Slot slot);

private:
    void cell(const TrackedSlot& slot, std::size_t index, double centre);
    void triangle(ShirtNumber libero, double centre);
    [[nodiscard]] double top() const { return topOf(m_team); }
    [[nodiscard]] Tag rule() const { return m_tag.as(ItemRole::Rule); }

    Draft& m_draft;
    const MatchHeading& m_heading;
    const SetRecord& m_set;
    const TrackedTeam& m_tracked;
    Team m_team;
    int m_page;
    Tag m_tag;
};

void TrackPen::strip() {
    const TeamName& name = m_heading.opened.teams[m_team];
    drawPlate(m_draft, m_tag, {0, top(), 18, stripHeight}, name, 13);
    m_draft.ruleAcross(rule(), 0, ladderRight, top(), 0.5, soot);
    drawTeamName(m_draft, m_tag, {20.5, top()}, teamWords(m_team, m_set.servesFirst, name.colour), name.name, 74);
    m_draft.text(m_tag, {97, top() + 3}, words(PageLabel::Liberos), labelStyle);
    QStringList liberos;
    for (const ShirtNumber libero : m_set.teams[m_team].liberos)
        liberos += QString::number(libero.value);
    m_draft.fitted(m_tag.as(ItemRole::Value), {97, top() + 7.1}, liberos.join(QStringLiteral("   ")),
                   {9.5, FontWeight::SemiBold}, 40);
    const bool known = m_tracked.kept || !m_set.teams[m_team].lineUpGiven;
    m_draft.fitted(m_tag, {ladderRight, top() + 7.1},
                   known ? words(PageLabel::Replacements) : words(PageLabel::LiberoNotKept),
                   TextStyle(labelStyle).fromRight(), 122);
}

void TrackPen::rules() {
    const double rows = rowsTop(m_team), bottom = top() + blockHeight;
    const double heads = top() + stripHeight + 2.1;
    const TextStyle style = TextStyle(labelStyle).sized(6.2);
    m_draft.textAt(m_tag, {1.2, heads}, words(SheetLabel::Slot), style);
    m_draft.textAt(m_tag, {9.4, heads}, words(SheetLabel::Starter), style);
    m_draft.textAt(m_tag, {19.6, heads}, words(PageLabel::Serves), style);
    m_draft.textAt(m_tag, {cellsLeft + 1, heads}, words(SheetLabel::Then), style);
    m_draft.ruleAcross(rule(), 0, ladderRight, rows, 0.25, sheet::rule);
    for (int row = 1; row < 6; ++row)
        m_draft.ruleAcross(rule(), 0, ladderRight, rows + rowHeight * row, 0.15, paleRule);
    for (const double x : {numeralRight, starterRight, servesRight})
        m_draft.ruleDown(rule(), x, rows, bottom, 0.2, sheet::rule);
    for (int cell = 1; cell < cellsInRow; ++cell)
        m_draft.ruleDown(rule(), cellsLeft + cellWidth * cell, rows, bottom, 0.12, paleRule);
    m_draft.ruleAcross(rule(), 0, ladderRight, bottom, 0.3, soot);
}

void TrackPen::triangle(ShirtNumber libero, double centre) {
    constexpr double base = 8.4, height = 5.4, line = 0.24;
    const QPointF bottom((starterRight + servesRight) / 2, centre + height / 2);
    m_draft.filledPolygon(m_tag.as(ItemRole::LiberoTriangle), triangleWithin(bottom, base, height, line), std::nullopt,
                          {soot, line, {}, false});
    m_draft.text(m_tag.as(ItemRole::LiberoNumber), bottom - QPointF(0, line + 0.4), QString::number(libero.value),
                 {7, FontWeight::SemiBold, soot, TextAlign::Centre});
}

void TrackPen::slot(Slot slot) {
    const double centre = rowCentre(m_team, slot);
    const TrackedSlot& tracked = m_tracked.slots[slot.index()];
    m_draft.textAt(m_tag.as(ItemRole::SlotNumeral), {4, centre}, roman(slot),
                   {8, FontWeight::SemiBold, sheet::label, TextAlign::Centre});
    if (const auto& libero = m_set.teams[m_team].slots[slot.index()].libero)
        triangle(*libero, centre);
    if (!tracked.starter.isValid())
        return;
    constexpr TextStyle style{13, FontWeight::Bold, soot, TextAlign::Centre};
    const QString number = QString::number(tracked.starter.value);
    m_draft.textAt(m_tag.as(ItemRole::SlotNumber), {13.4, centre}, number, style);
    if (!m_tracked.kept)
        return;
    if (!tracked.arrivals.empty()) {
        const double half = m_draft.width(number, style) / 2 + 0.7;
        drawStrike(m_draft, m_tag.as(ItemRole::SlotStrike), 13.4 - half, 13.4 + half, centre, 1.2, 0.34, soot);
    }
    const auto first = static_cast<std::size_t>(m_page * cellsInRow);
    for (std::size_t i = first; i < std::min(tracked.arrivals.size(), first + cellsInRow); ++i)
        cell(tracked, i, centre);
}

void TrackPen::cell(const TrackedSlot& slot, std::size_t index, double centre) {
    const TrackedArrival& arrival = slot.arrivals[index];
    const bool last = index + 1 == slot.arrivals.size();
    const bool libero = arrival.how == Arrival::LiberoIn;
    const double x = cellsLeft + cellWidth * (static_cast<double>(index % cellsInRow) + 0.5);
    const QString shirt = shirtWords(arrival.number);
    const QString text = libero ? liberoLetter() + QChar(0x2009) + shirt : shirt;
    const TextStyle style{9.2, last || libero ? FontWeight::Bold : FontWeight::Medium, soot, TextAlign::Centre};
    const Tag tag = m_tag.of(arrival.entry);
    const double half = m_draft.width(text, style) / 2 + 0.45;
    const double y = centre - 1.35;
    m_draft.textAt(tag.as(ItemRole::SlotNumber), {x, y}, text, style);
    if (!last)
        drawStrike(m_draft, tag.as(ItemRole::SlotStrike), x - half, x + half, y, 1.0, 0.28, soot);
    m_draft.textAt(tag, {x, centre + 2.6}, scoreWords(arrival.score[m_team], arrival.score[opponentsOf(m_team)]),
                   TextStyle(labelStyle).centred());
}

/// The foot: what the cells mean, lines for the pen, and who signs.
void drawFoot(Draft& draft, const MatchHeading& heading) {
    const auto title = [&draft](double left, double right, const QString& words) {
        draft.ruleAcross(body.as(ItemRole::Rule), left, right, footTop, 0.5, soot);
        draft.fitted(body.as(ItemRole::Title), {left, footTop + 3.4}, words, {7.2, FontWeight::Bold}, right - left);
    };
    title(0, 78, words(PageLabel::LiberoHowTitle));
    double y = footTop + 8.6;
    for (const auto& [sample, explained] : {std::pair{QStringLiteral("L 2"), PageLabel::LiberoHow},
                                            std::pair{QStringLiteral("12"), PageLabel::LiberoHowOut},
                                            std::pair{QStringLiteral("9–7"), PageLabel::LiberoHowScore}}) {
        draft.text(body.as(ItemRole::LegendContent), {0, y}, sample, {7.6, FontWeight::Bold});
        draft.fitted(body.as(ItemRole::LegendText), {11, y}, words(explained), {7.2, FontWeight::Medium, label}, 67);
        y += 5;
    }
    draft.filledPolygon(body.as(ItemRole::LegendMark), triangleWithin({4, y + 0.6}, 7.4, 4.6, 0.22), std::nullopt,
                        {soot, 0.22, {}, false});
    draft.fitted(body.as(ItemRole::LegendText), {11, y}, words(PageLabel::LiberoServesHere),
                 {7.2, FontWeight::Medium, label}, 67);
    title(82, 190, words(SheetLabel::Remarks));
    for (int line = 1; line <= 5; ++line)
        draft.ruleAcross(body.as(ItemRole::Rule), 82, 190, footTop + 5 + 6.6 * line, 0.15, paleRule);
    title(194, ladderRight, roleWords(Role::AssistantScorer, 0));
    const auto assistant = std::ranges::find(heading.officials, Role::AssistantScorer, &Official::role);
    if (assistant != heading.officials.end())
        draft.named(body.as(ItemRole::OfficialName), {194, footTop + 8.6}, assistant->name.simplified(),
                    {7.8, FontWeight::Medium}, ladderRight - 194);
    draft.ruleAcross(body.as(ItemRole::SignatureLine), 194, ladderRight, footTop + 21, 0.2, soot);
    draft.text(body, {194, footTop + 24}, words(SheetLabel::Signature), labelStyle);
}

int pagesFor(const PerTeam<TrackedTeam>& tracked) {
    std::size_t most = 1;
    for (const Team team : bothTeams)
        if (tracked[team].kept)
            for (const TrackedSlot& slot : tracked[team].slots)
                most = std::max(most, slot.arrivals.size());
    return (static_cast<int>(most) + cellsInRow - 1) / cellsInRow;
}

} // namespace

std::vector<Page> composeLibero(const MatchHeading& heading, const SetRecord& set, const PerTeam<TrackedTeam>& tracked,
                                const SheetOptions& options) {
    Bodies bodies(options.fonts);
    for (int page = 0; page < pagesFor(tracked); ++page) {
        Draft& draft = bodies.add();
        for (const Team team : bothTeams) {
            TrackPen pen(draft, heading, set, tracked[team], team, page);
            pen.strip();
            pen.rules();
            for (const Slot slot : allSlots)
                pen.slot(slot);
        }
        drawFoot(draft, heading);
    }
    Masthead masthead{words(SheetLabel::Set),
                      set.number > 0 ? QString::number(set.number) : QString(),
                      words(PageLabel::LiberoSheet),
                      {}};
    masthead.fields = {{words(SheetLabel::Started), timeWords(set.startedAt, options.locale), 17},
                       {words(SheetLabel::Finished), timeWords(set.endedAt, options.locale), 17}};
    return bodies.pages(heading.opened, options, masthead);
}

} // namespace setfolio
