// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/matchpage.h"

#include "ui/sheet/matchtables.h"
#include "ui/sheet/pageflow.h"
#include "ui/sheet/signatureplaces.h"
#include "ui/wording/pagewords.h"

#include <algorithm>

namespace setfolio {

namespace {

using namespace sheet;

constexpr Tag body{Zone::Body, ItemRole::Label, {}, {}};
constexpr double third = 86; ///< the width of a team's column, and of the one beside them
constexpr double pitch = 89; ///< from column to column
constexpr double rosterTop = blockTop + 17.4;
constexpr double upperBottom = 121;
constexpr double lowerTop = 123.6;
constexpr double lowerBottom = 161.6;

/// Makes the pages of one match.
class MatchPen {
public:
    MatchPen(const MatchRecord& record, const SheetOptions& options)
        : m_record(record),
          m_options(options),
          m_measure(options.fonts),
          m_bodies(options.fonts) {}

    std::vector<Page> compose() {
        Draft& draft = m_bodies.add();
        for (const Team team : bothTeams)
            drawTeam(draft, team);
        drawOutcome(draft);
        fixed(draft, sanctionsTable(m_record, third), sanctionsTable(m_record, halfWidth),
              {0, lowerTop, third, lowerBottom - lowerTop});
        fixed(draft, remarksTable(m_record, ladderRight - pitch), remarksTable(m_record, halfWidth),
              {pitch, lowerTop, ladderRight - pitch, lowerBottom - lowerTop});
        drawSignaturePlaces(draft, m_record);
        m_bodies.flow(std::move(m_rest));
        return m_bodies.pages(opened(), m_options, masthead());
    }

private:
    [[nodiscard]] const MatchOpened& opened() const { return m_record.heading.opened; }
    [[nodiscard]] Masthead masthead() const;
    /// A table in its place on the first page; what is left of it goes on later in the wider form.
    void fixed(Draft& draft, Table table, Table wider, const QRectF& area);
    void drawTeam(Draft& draft, Team team);
    void field(Draft& draft, QPointF top, PageLabel head, const QString& value, double room);
    void drawOutcome(Draft& draft);
    double drawWinner(Draft& draft, double top);
    [[nodiscard]] QString captainOf(Team team) const;
    [[nodiscard]] QString liberosOf(Team team) const;

    const MatchRecord& m_record;
    const SheetOptions& m_options;
    Draft m_measure;
    Bodies m_bodies;
    std::vector<TablePen> m_rest;
};

Masthead MatchPen::masthead() const {
    Masthead masthead = mastheadOfMatch(m_record.heading, words(PageLabel::MatchPage));
    const bool begun = !m_record.sets.empty();
    const auto code = [&](const std::optional<Team>& team) { return team ? opened().teams[*team].code : QString(); };
    masthead.fields = {
        {words(SheetLabel::Format), formatWords(opened().bestOf), 18},
        {words(PageLabel::Rulebook), opened().rulebook.name, 36},
        {words(SheetLabel::FirstServe), begun ? code(m_record.sets.front().servesFirst) : QString(), 15}};
    return masthead;
}

void MatchPen::fixed(Draft& draft, Table table, Table wider, const QRectF& area) {
    TablePen pen(m_measure, std::move(table));
    const std::size_t all = wider.rows.size();
    pen.drawFixed(draft, Zone::Body, area, 2);
    const std::size_t left = pen.rowsLeft();
    if (left == 0)
        return;
    wider.rows.erase(wider.rows.begin(), wider.rows.begin() + static_cast<std::ptrdiff_t>(all - left));
    wider.title = continuedTitle(wider.title);
    wider.leastRows = 0;
    m_rest.emplace_back(m_measure, std::move(wider));
}

QString MatchPen::captainOf(Team team) const {
    const auto& players = m_record.heading.rosters[team].players;
    const auto found = std::ranges::find(players, true, &RosterPlayer::captain);
    if (found != players.end())
        return QString::number(found->number.value);
    const std::optional<ShirtNumber> named =
        m_record.sets.empty() ? std::nullopt : m_record.sets.front().teams[team].captain;
    return named ? QString::number(named->value) : QString();
}

QString MatchPen::liberosOf(Team team) const {
    QStringList numbers;
    for (const RosterPlayer& player : m_record.heading.rosters[team].players)
        if (player.libero)
            numbers += QString::number(player.number.value);
    for (const SetRecord& set : m_record.sets)
        for (const ShirtNumber libero : set.teams[team].liberos)
            if (const QString number = QString::number(libero.value); !numbers.contains(number))
                numbers += number;
    return numbers.join(QStringLiteral(", "));
}

void MatchPen::field(Draft& draft, QPointF top, PageLabel head, const QString& value, double room) {
    draft.fitted(body, top + QPointF(0, 2.6), words(head), labelStyle, room);
    draft.named(body.as(ItemRole::Value), top + QPointF(0, 6.6), value, {8.6, FontWeight::Medium}, room, underLabel);
}

void MatchPen::drawTeam(Draft& draft, Team team) {
    const TeamName& name = opened().teams[team];
    const Tag tag{Zone::Body, ItemRole::Label, team, {}};
    const double left = team == Team::Home ? 0 : pitch;
    drawPlate(draft, tag, {left, blockTop, 18, stripHeight}, name, 13);
    draft.ruleAcross(tag.as(ItemRole::Rule), left, left + third, blockTop, 0.5, soot);
    drawTeamName(draft, tag, {left + 20.5, blockTop}, teamWords(team, std::nullopt, name.colour), name.name,
                 third - 21);
    const double top = blockTop + stripHeight;
    field(draft, {left, top}, PageLabel::Coach, m_record.heading.rosters[team].coach.simplified(), 44);
    field(draft, {left + 46, top}, PageLabel::Captain, captainOf(team), 13);
    field(draft, {left + 61, top}, PageLabel::Liberos, liberosOf(team), 24);
    Table wider = rosterTable(m_record, team, halfWidth);
    wider.title = name.name;
    fixed(draft, rosterTable(m_record, team, third), std::move(wider),
          {left, rosterTop, third, upperBottom - rosterTop});
}

void MatchPen::drawOutcome(Draft& draft) {
    const double left = 2 * pitch;
    TablePen results(m_measure, resultTable(m_record, m_options.locale, third));
    const double height = std::min(results.heightLeft(), 52.0);
    fixed(draft, resultTable(m_record, m_options.locale, third), resultTable(m_record, m_options.locale, halfWidth),
          {left, blockTop, third, height});
    const double below = drawWinner(draft, blockTop + height + 1.2);
    fixed(draft, officialsTable(m_record, third), officialsTable(m_record, halfWidth),
          {left, below + 2.4, third, upperBottom - below - 2.4});
}

double MatchPen::drawWinner(Draft& draft, double top) {
    const double left = 2 * pitch;
    const MatchHeading& heading = m_record.heading;
    const auto wins = [&](Team team) {
        return heading.setsWon[team] * 2 > heading.opened.bestOf || (heading.forfeit && heading.forfeit->by != team);
    };
    QString winner, score;
    for (const Team team : bothTeams)
        if (wins(team)) {
            winner = heading.opened.teams[team].name;
            score = scoreWords(heading.setsWon[team], heading.setsWon[opponentsOf(team)]);
        }
    draft.fitted(body, {left, top + 2.6}, words(SheetLabel::Winner), labelStyle, third);
    const double used = draft.fitted(body.as(ItemRole::Score), {left + third, top + 7.4}, score,
                                     {14, FontWeight::Bold, soot, TextAlign::Right}, 24);
    draft.named(body.as(ItemRole::Value), {left, top + 7.4}, winner, {11, FontWeight::Bold}, third - used - 2);
    double y = top + 9;
    if (heading.forfeit) {
        const QString how = forfeitWords(*heading.forfeit, heading.opened.teams[heading.forfeit->by].code);
        const TextStyle style{7.2, FontWeight::Medium};
        for (const QString& line : wrapped(draft, how, style, third).mid(0, 4)) {
            draft.fitted(body.as(ItemRole::RemarkText), {left, y + 2.8}, line, style, third);
            y += 3.4;
        }
    }
    draft.ruleAcross(body.as(ItemRole::Rule), left, left + third, y + 0.4, 0.15, paleRule);
    return y + 0.4;
}

} // namespace

std::vector<Page> composeMatch(const MatchRecord& record, const SheetOptions& options) {
    return MatchPen(record, options).compose();
}

} // namespace setfolio
