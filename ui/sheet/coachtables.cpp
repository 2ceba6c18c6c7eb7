// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/coachtables.h"

#include "ui/wording/markwords.h"
#include "ui/wording/names.h"
#include "ui/wording/pagewords.h"
#include "ui/wording/sheetwords.h"

#include <algorithm>

namespace setfolio::sheet {

namespace {

constexpr double setColumn = 13;
constexpr double figureColumn = 12;
constexpr int runsShown = 6; ///< the longest of both teams

/// The columns of figures after the first one.
std::vector<TableColumn> figureColumns(const QString& first, double width) {
    const double each = (width - setColumn) / 7;
    const auto column = [each](const QString& head, double share = 1) {
        return TableColumn{head, share * each, false, TextAlign::Right};
    };
    return {{first, setColumn},
            column(wonOnServe()),
            column(lostOnServe()),
            column(wonOnReceive()),
            column(lostOnReceive()),
            column(words(PageLabel::SideOut)),
            column(words(PageLabel::NoRally), 1.25),
            column(words(PageLabel::Difference), 0.75)};
}

QString signedWords(int number) {
    return number > 0   ? u'+' + QString::number(number)
           : number < 0 ? QChar(0x2212) + QString::number(-number)
                        : QStringLiteral("0");
}

/// The percentage of side-outs: rallies won of those received.
QString sideOutOf(const RotationFigures& figures) {
    return figures.received() > 0 ? percentWords(qRound(100.0 * figures.receiveWon / figures.received())) : QString();
}

TableRow rowOf(const QString& first, const RotationFigures& figures, const QString& noRally, bool sum) {
    TableRow row{{first, QString::number(figures.serveWon), QString::number(figures.serveLost),
                  QString::number(figures.receiveWon), QString::number(figures.receiveLost), sideOutOf(figures),
                  noRally, signedWords(figures.difference())}};
    row.strong = sum;
    return row;
}

QString nameOf(const Roster& roster, ShirtNumber number) {
    const auto player = std::ranges::find(roster.players, number, &RosterPlayer::number);
    return player == roster.players.end() ? QString() : player->name.simplified();
}

} // namespace

Table rotationTable(const TeamFigures& team, const QString& title, double width) {
    Table table;
    table.title = title;
    table.columns = figureColumns(words(PageLabel::Rotation), width);
    for (const Slot slot : allSlots)
        table.rows.push_back(rowOf(roman(slot), team.rotations[slot.index()], {}, false));
    table.rows.push_back(
        rowOf(words(PageLabel::Total), team.sum(), QString::number(team.penalties + team.given), true));
    return table;
}

Table setsTable(std::span<const SetFigures> sets, Team team, const QString& title, double width) {
    Table table;
    table.title = title;
    table.columns = figureColumns(words(SheetLabel::SetHead), width);
    RotationFigures sum;
    int noRally = 0;
    for (const SetFigures& set : sets) {
        if (set.cancelled)
            continue;
        const TeamFigures& figures = set.teams[team];
        sum += figures.sum();
        noRally += figures.penalties + figures.given;
        table.rows.push_back(rowOf(setWithScore(set.number, set.score[team], set.score[opponentsOf(team)]),
                                   figures.sum(), QString::number(figures.penalties + figures.given), false));
    }
    table.rows.push_back(rowOf(words(PageLabel::Total), sum, QString::number(noRally), true));
    return table;
}

Table serverTable(const std::vector<ServerFigures>& servers, const Roster& roster, double width) {
    const auto column = [](PageLabel head) { return TableColumn{words(head), figureColumn, false, TextAlign::Right}; };
    Table table;
    table.title = words(PageLabel::Servers);
    table.columns = {{words(PageLabel::Number), 9, false, TextAlign::Right},
                     {words(PageLabel::Player), width - 9 - 4 * figureColumn, true},
                     column(PageLabel::Terms),
                     column(PageLabel::Won),
                     column(PageLabel::Lost),
                     column(PageLabel::LongestRun)};
    for (const ServerFigures& server : servers)
        table.rows.push_back(
            {{shirtWords(server.number), nameOf(roster, server.number), QString::number(server.terms),
              QString::number(server.won), QString::number(server.lost), QString::number(server.longest)}});
    return table;
}

Table runsTable(const SetFigures& set, const PerTeam<TeamName>& teams, double width) {
    struct Of {
        Team team;
        Run run;
    };
    std::vector<Of> all;
    for (const Team team : bothTeams)
        for (const Run& run : set.teams[team].runs)
            all.push_back({team, run});
    std::ranges::stable_sort(all, std::ranges::greater(), [](const Of& of) { return of.run.length; });
    all.resize(std::min<std::size_t>(all.size(), runsShown));
    Table table;
    table.title = words(PageLabel::LongestRuns);
    table.columns = {{words(SheetLabel::TeamHead), 14},
                     {words(PageLabel::PointsInARow), 16, false, TextAlign::Right},
                     {words(PageLabel::FromTo), width - 30, false, TextAlign::Right}};
    for (const Of& of : all)
        table.rows.push_back({{teams[of.team].code, QString::number(of.run.length),
                               fromToWords(scoreWords(of.run.from.home, of.run.from.visitors),
                                           scoreWords(of.run.to.home, of.run.to.visitors))},
                              {},
                              of.team});
    return table;
}

Table changesTable(const SetFigures& set, const PerTeam<TeamName>& teams, double width) {
    Table table;
    table.title = words(PageLabel::Changes);
    table.pitch = 3.7;
    table.columns = {
        {words(SheetLabel::Score), 14}, {words(SheetLabel::TeamHead), 14}, {words(PageLabel::What), width - 28}};
    for (const Change& change : set.changes)
        table.rows.push_back(
            {{scoreWords(change.score.home, change.score.visitors), teams[change.team].code,
              change.substitution ? substitutionWords(*change.substitution) : words(SheetLabel::TimeOut)},
             change.entry,
             change.team});
    return table;
}

} // namespace setfolio::sheet
