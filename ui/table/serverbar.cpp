// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/serverbar.h"

#include "core/rules/taking.h"
#include "core/rules/ways.h"
#include "ui/table/bench.h"
#include "ui/table/numberfield.h"
#include "ui/table/picks.h"
#include "ui/wording/barwords.h"
#include "ui/wording/fill.h"
#include "ui/wording/names.h"

#include <QCoreApplication>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

constexpr int noted = 0; // the options' indices
constexpr int ruled = 1;

/// Whether the serve has just gone over, so that the term before it may be in question.
bool hasJustGoneOver(const SetState& set) {
    return !set.points.empty() && set.points.back().by == PointBy::OpponentsServe && !set.contacted;
}

} // namespace

ServerBar::ServerBar(Recorder& recorder, QWidget* parent)
    : EntryBar(recorder, parent),
      m_number(addNumbers(Table::tr("Number"), u"seenNumber"_s, u"seen"_s)),
      m_ruled(addOptions({}, u"ruled"_s)),
      m_team(addOptions({}, u"ruledTeam"_s)),
      m_back(addNumbers(Table::tr("Points"), u"pointsBack"_s, u"back"_s)) {
    setObjectName(u"serverBar"_s);
    addReason(u"serverReason"_s);
    m_back->field().setAccessibleName(Table::tr("Points taken back"));
    connect(m_number, &NumberPick::changed, this, &ServerBar::showDraft);
    connect(m_ruled, &OptionPick::changed, this, &ServerBar::ruledChanged);
    connect(m_team, &OptionPick::changed, this, [this] {
        teamChanged();
        showDraft();
    });
    connect(m_back, &NumberPick::changed, this, &ServerBar::showDraft);
}

void ServerBar::open() {
    const SetState& set = state().set();
    const bool isWrong = set.seen && *set.seen != serverOf(set);
    m_number->setNumber(set.seen);
    offerRuling();
    m_ruled->choose(set.winner || (set.contacted && isWrong) ? ruled : noted);
    m_team->choose(set.winner && hasJustGoneOver(set) ? 1 : 0);
    teamChanged();
    ruledChanged();
    present(this);
    goToMissing();
}

void ServerBar::offerRuling() {
    const SetState& set = state().set();
    m_ruled->offer({{Table::tr("Only note it"), set.contacted ? QString() : Table::tr("say nothing yet"), Qt::Key_O},
                    {Table::tr("Ruling: wrong server"), Table::tr("point and serve lost"), Qt::Key_R}});
    std::vector<Option> teams{{fill(Table::tr("%1 serves"), {codeOf(state(), set.serving)}), {}, Qt::Key_A}};
    if (hasJustGoneOver(set))
        teams.push_back(
            {fill(Table::tr("%1 served before"), {codeOf(state(), opponentsOf(set.serving))}), {}, Qt::Key_B});
    m_team->offer(std::move(teams));
}

void ServerBar::teamChanged() {
    const TeamInSet& own = state().set().teams[team()];
    setTitle(fill(Table::tr("Who is at the line? %1 %2 should serve"),
                  {codeOf(state(), team()), QString::number(expected().value)}));
    std::vector<OfferedNumber> numbers;
    for (const BenchPlayer& player : sixOf(state(), team()))
        numbers.push_back({player.number, roman(*player.slot)});
    for (const ShirtNumber libero : liberosOf(own))
        numbers.push_back({libero, Table::tr("libero")});
    m_number->offer(std::move(numbers));
    offerPoints();
}

Team ServerBar::team() const {
    const Team serving = state().set().serving;
    return m_team->chosen() == 1 ? opponentsOf(serving) : serving;
}

bool ServerBar::isRuling() const {
    return m_ruled->chosen() == ruled;
}

/// Of the term that has just ended, the player of its slot.
ShirtNumber ServerBar::expected() const {
    const SetState& set = state().set();
    if (team() == set.serving)
        return serverOf(set);
    return onCourt(set.teams[team()], slotLastAtServe(set, team()));
}

void ServerBar::offerPoints() {
    const std::optional<PointsToTakeBack> back = pointsToTakeBack(state(), team());
    m_back->offer(countsUpTo(pointsOfTerm(state().set(), team()).count));
    m_back->setNumber(ShirtNumber(back ? back->count : 0));
}

void ServerBar::ruledChanged() {
    if (!isRuling() && m_team->chosen() == 1) {
        m_team->choose(0);
        teamChanged();
    }
    setShown(m_back, isRuling());
    setShown(m_team, isRuling() && hasJustGoneOver(state().set()));
    showDraft();
    goToMissing();
}

std::optional<EntryNumber> ServerBar::takenBackFrom() const {
    return firstOfLast(state().set(), team(), m_back->number().value_or(ShirtNumber(0)).value);
}

std::optional<Entry> ServerBar::drafted() const {
    if (!m_number->number())
        return std::nullopt;
    const ShirtNumber number = *m_number->number();
    if (isRuling())
        return WrongServer{team(), number, takenBackFrom()};
    const std::optional<ShirtNumber> before = state().set().seen;
    const bool tellsNothing = before == number || (!before && number == expected());
    return tellsNothing ? std::nullopt : std::optional<Entry>(ServerSeen{number});
}

QString ServerBar::prompt() const {
    if (!m_number->number())
        return Table::tr("Which number stands there?");
    if (isRuling())
        return wrongServerMeans(state(), std::get<WrongServer>(*drafted()),
                                m_back->number().value_or(ShirtNumber(0)).value);
    if (m_number->number() == expected())
        return Table::tr("She is the right server.");
    return serverSeenMeans(state(), *m_number->number());
}

void ServerBar::goToMissing() {
    (m_number->number() && isRuling() ? m_back : m_number)->field().setFocus(Qt::ShortcutFocusReason);
}

void ServerBar::settled(const Entry& entry) {
    if (std::holds_alternative<ServerSeen>(entry) && state().set().contacted)
        open();
    else
        dismiss();
}

} // namespace setfolio
