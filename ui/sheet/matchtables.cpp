// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/matchtables.h"

#include "ui/wording/markwords.h"
#include "ui/wording/notewords.h"
#include "ui/wording/pagewords.h"
#include "ui/wording/sanctionwords.h"
#include "ui/wording/sheetwords.h"

#include <algorithm>

namespace setfolio::sheet {

namespace {

constexpr std::size_t usualRoster = 14;

/// The letters beside a player's name.
QString standingOf(const RosterPlayer& player) {
    QStringList letters;
    if (player.captain)
        letters += captainLetter();
    if (player.libero)
        letters += liberoLetter();
    return letters.join(QStringLiteral(", "));
}

/// The sets of the table: those begun, and the rest of those that may be played.
std::vector<SetRecord> setsOf(const MatchRecord& record) {
    std::vector<SetRecord> sets = record.sets;
    for (int number = sets.empty() ? 1 : sets.back().number + 1; number <= record.heading.opened.bestOf; ++number)
        sets.emplace_back().number = number;
    return sets;
}

bool countsInResult(const MatchRecord& record, const SetRecord& set) {
    return !set.cancelled && static_cast<std::size_t>(set.number - 1) < record.heading.setScores.size();
}

/// The points of a set: a set that counts as the result of the match states it, for a forfeit may give it points that
/// nobody played; any other as it stands.
std::optional<PerTeam<int>> pointsOf(const MatchRecord& record, const SetRecord& set) {
    if (countsInResult(record, set))
        return record.heading.setScores[static_cast<std::size_t>(set.number - 1)];
    return set.started ? std::optional(set.score) : std::nullopt;
}

struct Sums {
    PerTeam<int> points;
    int minutes = 0;
};

TableRow rowOf(const MatchRecord& record, const SetRecord& set, const QLocale& locale, Sums& sums) {
    const std::optional<PerTeam<int>> points = pointsOf(record, set);
    const std::optional<int> minutes = minutesOf(set);
    TableRow row;
    row.cells.push_back(QString::number(set.number));
    for (const Team team : bothTeams) {
        row.cells.push_back(points ? QString::number((*points)[team]) : QString());
        if (points && countsInResult(record, set))
            sums.points[team] += (*points)[team];
    }
    row.cells.push_back(set.servesFirst ? record.heading.opened.teams[*set.servesFirst].code : QString());
    row.cells.push_back(timeWords(set.startedAt, locale));
    row.cells.push_back(timeWords(set.endedAt, locale));
    row.cells.push_back(minutes ? minutesWords(*minutes) : QString());
    sums.minutes += minutes.value_or(0);
    row.struck = set.cancelled;
    return row;
}

/// "2, 3" for what a sanction or remark of a set played again stands on.
QString setNumber(const SetRecord& set) {
    return QString::number(set.number);
}

QString levelOf(const SanctionLine& line) {
    if (!line.level)
        return improperWords();
    return std::visit(Overloaded{[](SanctionLevel level) { return levelWords(level); },
                                 [](DelayLevel level) { return delayWords(level); }},
                      *line.level);
}

} // namespace

Table rosterTable(const MatchRecord& record, Team team, double width) {
    const Roster& roster = record.heading.rosters[team];
    Table table;
    table.columns = {{words(PageLabel::Number), 9}, {words(PageLabel::Player), width - 19, true}, {{}, 10}};
    for (const RosterPlayer& player : roster.players)
        table.rows.push_back(
            {{QString::number(player.number.value), player.name.simplified(), standingOf(player)}, {}, team});
    table.leastRows = usualRoster;
    table.pitch = roster.players.empty() ? 5.6 : 4.1;
    return table;
}

Table resultTable(const MatchRecord& record, const QLocale& locale, double width) {
    const PerTeam<TeamName>& teams = record.heading.opened.teams;
    const double unit = width / 82;
    Table table;
    table.title = words(PageLabel::ResultBySet);
    table.columns = {{words(SheetLabel::SetHead), 8 * unit},  {teams.home.code, 10.5 * unit},
                     {teams.visitors.code, 10.5 * unit},      {words(SheetLabel::FirstServe), 16 * unit},
                     {words(SheetLabel::Started), 12 * unit}, {words(SheetLabel::Finished), 12 * unit},
                     {words(SheetLabel::Duration), 13 * unit}};
    Sums sums;
    for (const SetRecord& set : setsOf(record))
        table.rows.push_back(rowOf(record, set, locale, sums));
    const auto summed = [](int points) { return points > 0 ? QString::number(points) : QString(); };
    TableRow total{{words(PageLabel::Total),
                    summed(sums.points.home),
                    summed(sums.points.visitors),
                    {},
                    {},
                    {},
                    sums.minutes > 0 ? minutesWords(sums.minutes) : QString()}};
    total.strong = true;
    table.rows.push_back(total);
    return table;
}

Table officialsTable(const MatchRecord& record, double width) {
    Table table;
    table.title = words(SheetLabel::Officials);
    table.columns = {{words(PageLabel::Role), 33}, {words(PageLabel::Name), width - 33, true}};
    for (const Official& official : record.heading.officials)
        table.rows.push_back({{roleWords(official.role, 0), official.name.simplified()}});
    if (table.rows.empty())
        for (const Role role : {Role::FirstReferee, Role::SecondReferee, Role::Scorer, Role::AssistantScorer,
                                Role::Timer, Role::LineJudge, Role::LineJudge})
            table.rows.push_back({{roleWords(role, 0), {}}});
    table.pitch = 4.2;
    return table;
}

Table sanctionsTable(const MatchRecord& record, double width) {
    Table table;
    table.title = words(SheetLabel::Sanctions);
    table.columns = {{words(SheetLabel::SetHead), 7},    {words(SheetLabel::Score), 12},
                     {words(SheetLabel::TeamHead), 11},  {words(SheetLabel::Who), 10},
                     {words(PageLabel::What), 22, true}, {words(PageLabel::Reason), width - 62, true}};
    for (const SetRecord& set : record.sets)
        for (const SanctionLine& line : set.sanctions) {
            const QString score = scoreWords(line.score[line.team], line.score[opponentsOf(line.team)]);
            TableRow row{{setNumber(set), score, record.heading.opened.teams[line.team].code,
                          line.who ? memberLetters(*line.who) : QString(), levelOf(line), line.reason.simplified()}};
            row.entry = line.entry;
            row.team = line.team;
            row.struck = line.struck;
            table.rows.push_back(row);
        }
    table.leastRows = 5;
    return table;
}

Table remarksTable(const MatchRecord& record, double width) {
    Table table;
    table.title = words(PageLabel::RemarksOfSets);
    table.columns = {{words(SheetLabel::SetHead), 7},
                     {words(SheetLabel::RemarkNumber), 7},
                     {words(SheetLabel::RemarkText), width - 14, true}};
    const auto add = [&](bool reopenings) {
        for (const SetRecord& set : record.sets)
            for (const Note& note : set.notes) {
                if (std::holds_alternative<ReopenedNote>(note.content) != reopenings)
                    continue;
                TableRow row{
                    {setNumber(set), QString::number(note.number), sentence(note, record.heading.opened.teams)}};
                row.entry = note.entry;
                row.struck = note.struck;
                table.rows.push_back(row);
            }
    };
    add(true); // what was reopened after it was signed comes first: nobody should have to search for it
    add(false);
    table.leastRows = 5;
    return table;
}

} // namespace setfolio::sheet
