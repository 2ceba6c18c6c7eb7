// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/handover.h"

#include "ui/sheet/pageflow.h"
#include "ui/wording/markwords.h"
#include "ui/wording/names.h"
#include "ui/wording/pagewords.h"

namespace setfolio {

namespace {

using namespace sheet;

constexpr double courtLeft = 68, courtTop = 26, courtWidth = 128, courtHeight = 64;
constexpr double courtRight = courtLeft + courtWidth;
constexpr double serverTop = 96;
constexpr double orderTop = 117;
constexpr double panelWidth = 62;
constexpr Tag body{Zone::Body, ItemRole::Label, {}, {}};

class HandOverPen {
public:
    HandOverPen(Draft& draft, const MatchHeading& heading, const SetRecord& set, const PerTeam<TrackedTeam>& tracked)
        : m_draft(draft),
          m_heading(heading),
          m_set(set),
          m_tracked(tracked),
          m_live(*set.live),
          m_left(set.left.value_or(Team::Home)) {}

    void panel(Team team);
    void court();
    void servers();
    void order(Team team);

private:
    [[nodiscard]] const TeamName& name(Team team) const { return m_heading.opened.teams[team]; }
    /// The slot that serves now, or next once the team wins the serve.
    [[nodiscard]] Slot serverSlot(Team team) const {
        return team == m_live.serving ? m_live.slot : m_live.nextOfOthers;
    }
    /// The team that receives has not rotated yet: its next server stands in position 2.
    [[nodiscard]] int positionOf(Team team, Slot slot) const {
        const int ahead = (slot.value - serverSlot(team).value + 6) % 6;
        return (ahead + (team == m_live.serving ? 0 : 1)) % 6 + 1;
    }
    /// Who stands in a slot: the libero in her player's place.
    [[nodiscard]] QString standing(Team team, Slot slot) const;
    [[nodiscard]] QPointF placeOf(Team team, int position) const;
    double field(double left, double y, PageLabel head, const QString& value);
    void server(double left, PageLabel head, Team team);
    [[nodiscard]] QString stoodBefore(Team team, Slot slot) const;

    Draft& m_draft;
    const MatchHeading& m_heading;
    const SetRecord& m_set;
    const PerTeam<TrackedTeam>& m_tracked;
    LivePlace m_live;
    Team m_left;
};

QString HandOverPen::standing(Team team, Slot slot) const {
    const std::vector<TrackedArrival>& arrivals = m_tracked[team].slots[slot.index()].arrivals;
    if (!arrivals.empty() && arrivals.back().how == Arrival::LiberoIn)
        return liberoLetter() + QChar(0x2009) + shirtWords(arrivals.back().number);
    const std::vector<Standing>& stood = m_set.teams[team].slots[slot.index()].stood;
    return stood.empty() ? QString() : shirtWords(stood.back().number);
}

/// As the scorer sees the court: each team faces the net, its right hand is where position 1 and 2 stand.
QPointF HandOverPen::placeOf(Team team, int position) const {
    static constexpr std::array<int, 6> across{0, 0, 1, 2, 2, 1}; // from the right hand: 1 and 2, 6 and 3, 5 and 4
    const bool front = position >= 2 && position <= 4;
    const double back = courtWidth / 2 * 0.22, near = courtWidth / 2 * 5 / 6; // the middle of the front zone
    const double fromEnd = front ? near : back;
    const double along = courtHeight * (across.at(static_cast<std::size_t>(position - 1)) + 0.5) / 3;
    return team == m_left ? QPointF(courtLeft + fromEnd, courtTop + courtHeight - along)
                          : QPointF(courtRight - fromEnd, courtTop + along);
}

double HandOverPen::field(double left, double y, PageLabel head, const QString& value) {
    m_draft.fitted(body, {left, y}, words(head), labelStyle, panelWidth);
    m_draft.fitted(body.as(ItemRole::Value), {left, y + 4.6}, value, {9.5, FontWeight::SemiBold}, panelWidth);
    m_draft.ruleAcross(body.as(ItemRole::Rule), left, left + panelWidth, y + 6.4, 0.15, paleRule);
    return y + 9.6;
}

void HandOverPen::panel(Team team) {
    const Tag tag{Zone::Body, ItemRole::Label, team, {}};
    const double left = team == m_left ? 0 : ladderRight - panelWidth;
    const TeamRecord& record = m_set.teams[team];
    const Rulebook& rulebook = m_heading.opened.rulebook;
    drawPlate(m_draft, tag, {left, blockTop, 18, stripHeight}, name(team), 13);
    m_draft.ruleAcross(tag.as(ItemRole::Rule), left, left + panelWidth, blockTop, 0.5, soot);
    m_draft.named(tag.as(ItemRole::Value), {left + 20.5, blockTop + 6.4}, name(team).name, {10, FontWeight::SemiBold},
                  panelWidth - 21);
    m_draft.text(tag.as(ItemRole::Score), {left, blockTop + 24}, QString::number(m_set.score[team]),
                 {40, FontWeight::Bold});
    m_draft.text(tag, {left + 32, blockTop + 18}, words(PageLabel::SetsWon), labelStyle);
    m_draft.text(tag.as(ItemRole::Value), {left + 32, blockTop + 23.4}, QString::number(m_heading.setsWon[team]),
                 {13, FontWeight::SemiBold});
    double y = blockTop + 30.6;
    const int substitutions = static_cast<int>(record.substitutions.size());
    const int timeOuts = static_cast<int>(record.timeOuts.size());
    QStringList at;
    for (const TimeOutTaken& taken : record.timeOuts)
        at += scoreWords(taken.own, taken.opponents);
    y = field(left, y, PageLabel::SubstitutionsLeft, leftWords(rulebook.substitutionLimit, substitutions));
    y = field(left, y, PageLabel::TimeOutsLeft,
              at.isEmpty()
                  ? leftWords(rulebook.timeOuts, timeOuts)
                  : leftWords(rulebook.timeOuts, timeOuts) + QStringLiteral("   ") + at.join(QStringLiteral(", ")));
    QStringList liberos;
    for (const ShirtNumber libero : record.liberos)
        liberos += shirtWords(libero);
    y = field(left, y, PageLabel::Liberos, liberos.join(QStringLiteral(", ")));
    field(left, y, PageLabel::Captain, record.captain ? shirtWords(*record.captain) : QString());
}

void HandOverPen::court() {
    const Tag lines = body.as(ItemRole::Court);
    const QRectF area(courtLeft, courtTop, courtWidth, courtHeight);
    m_draft.fitted(body, {courtLeft, courtTop - 2}, words(PageLabel::OnCourtNow), labelStyle, courtWidth);
    m_draft.rect(lines, area, std::nullopt, {soot, 0.4, {}, false});
    const double net = area.center().x();
    m_draft.line(lines, {net, courtTop}, {net, area.bottom()}, {soot, 0.9, {}, false});
    for (const double x : {net - courtWidth / 6, net + courtWidth / 6})
        m_draft.line(lines, {x, courtTop}, {x, area.bottom()}, {rule, 0.25, {}, false});
    for (const Team team : bothTeams)
        for (const Slot slot : allSlots) {
            const int position = positionOf(team, slot);
            const bool serves = team == m_live.serving && slot == m_live.slot;
            const QPointF place = placeOf(team, position);
            const Tag tag{Zone::Body, ItemRole::SlotNumber, team, {}};
            m_draft.textAt(tag, place, standing(team, slot), {15, FontWeight::Bold, soot, TextAlign::Centre});
            if (serves)
                m_draft.ring(tag.as(ItemRole::LegendMark), place, 6.6, {soot, 0.5, {}, false});
            m_draft.textAt(tag.as(ItemRole::Label), place + QPointF(0, 8.2),
                           QString::number(position) + QStringLiteral(" · ") + roman(slot),
                           TextStyle(labelStyle).sized(6.4).centred());
        }
}

void HandOverPen::server(double left, PageLabel head, Team team) {
    const QRectF box(left, serverTop, 62, 16);
    const Slot slot = serverSlot(team);
    m_draft.rect(body.as(ItemRole::Box), box, std::nullopt,
                 {soot, head == PageLabel::NextServer ? 0.7 : 0.25, {}, false});
    m_draft.fitted(body, box.topLeft() + QPointF(2, 3.6), words(head), labelStyle, 58);
    m_draft.textAt(body.as(ItemRole::SlotNumber), box.topLeft() + QPointF(2, 9.8), standing(team, slot),
                   {20, FontWeight::Bold});
    m_draft.fitted(body.as(ItemRole::Value), box.topLeft() + QPointF(26, 11.4),
                   slotOfTeam(name(team).code, roman(slot)), {9.5, FontWeight::SemiBold}, 34);
}

void HandOverPen::servers() {
    server(courtLeft, PageLabel::NextServer, m_live.serving);
    server(courtRight - 62, PageLabel::IfLost, opponentsOf(m_live.serving));
}

QString HandOverPen::stoodBefore(Team team, Slot slot) const {
    QStringList numbers;
    const std::vector<Standing>& stood = m_set.teams[team].slots[slot.index()].stood;
    for (const Standing& standing : stood)
        numbers += shirtWords(standing.number);
    return numbers.join(QStringLiteral(", "));
}

/// The order of service from who serves next on, with all who have stood in the slot: a number is bound to its slot.
void HandOverPen::order(Team team) {
    const double width = 130, left = team == m_left ? 0 : ladderRight - width;
    Table table;
    table.title = orderTitle(name(team).code);
    table.pitch = 5;
    table.points = 9;
    table.columns = {{words(SheetLabel::Slot), 14},
                     {words(PageLabel::OnCourtNow), 26},
                     {words(PageLabel::HaveStood), width - 40, true}};
    Slot slot = serverSlot(team);
    for (int turn = 0; turn < 6; ++turn, slot = slot.next()) {
        TableRow row{{roman(slot), standing(team, slot), stoodBefore(team, slot)}};
        row.team = team;
        row.strong = turn == 0;
        table.rows.push_back(row);
    }
    TablePen(m_draft, std::move(table))
        .draw(m_draft, Zone::Body, {left, orderTop, width, liveBottom - orderTop}, false);
}

} // namespace

std::vector<Page> composeHandOver(const MatchHeading& heading, const SetRecord& set,
                                  const PerTeam<TrackedTeam>& tracked, const SheetOptions& options) {
    if (!set.live)
        return {};
    Bodies bodies(options.fonts);
    Draft& draft = bodies.add();
    HandOverPen pen(draft, heading, set, tracked);
    for (const Team team : bothTeams)
        pen.panel(team);
    pen.court();
    pen.servers();
    for (const Team team : bothTeams)
        pen.order(team);
    Masthead masthead{words(SheetLabel::Set), QString::number(set.number), words(PageLabel::HandOver), {}};
    masthead.fields = {
        {words(SheetLabel::Started), timeWords(set.startedAt, options.locale), 17},
        {words(PageLabel::StandsAt),
         standsAtWords(timeWords(options.standsAt, options.locale), scoreWords(set.score.home, set.score.visitors)),
         40}};
    return bodies.pages(heading.opened, options, masthead);
}

} // namespace setfolio
