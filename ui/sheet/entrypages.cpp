// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/entrypages.h"

#include "core/match/fold.h"
#include "core/rules/judge.h"
#include "ui/sheet/pageflow.h"
#include "ui/wording/entrylog.h"
#include "ui/wording/findingwords.h"
#include "ui/wording/pagewords.h"

#include <map>

namespace setfolio {

namespace {

using namespace sheet;

using FindingsOf = std::map<EntryNumber, QStringList>;

FindingsOf findingsIn(std::span<const Recorded> entries) {
    const MatchState state = fold(entries);
    FindingsOf findings;
    for (const EntryFinding& found : review(entries))
        findings[found.entry] += sentence(found.finding, state);
    return findings;
}

/// For each struck entry, the correction that struck it.
std::map<EntryNumber, EntryNumber> strikesIn(std::span<const Recorded> entries) {
    std::map<EntryNumber, EntryNumber> strikes;
    for (const TimelineItem& item : timelineOf(entries))
        if (!item.stands())
            strikes[item.recorded->number] = item.struckBy->number;
    return strikes;
}

QString reasonOf(const Recorded& recorded) {
    const auto* strike = std::get_if<Strike>(&recorded.entry);
    return strike ? strike->reason : recorded.placed ? recorded.placed->reason : QString();
}

/// What stands under the words of an entry.
QStringList tellsOf(const Recorded& recorded, const QStringList& findings, EntryNumber struckBy) {
    QStringList tells;
    if (recorded.placed)
        tells += placedWords(*recorded.placed);
    if (const QString reason = reasonOf(recorded); !reason.trimmed().isEmpty())
        tells += reasonWords(reason.simplified());
    tells += findings;
    if (recorded.overruled)
        tells += overruledWords(recorded.overruled->simplified());
    if (struckBy.value > 0)
        tells += struckByWords(struckBy);
    return tells;
}

QString timeOf(const Recorded& recorded, int offset) {
    return recorded.time.isValid() ? recorded.time.toUTC().addSecs(offset).toString(QStringLiteral("HH:mm:ss"))
                                   : QString();
}

} // namespace

std::vector<Page> composeEntries(const MatchHeading& heading, std::span<const Recorded> entries,
                                 const SheetOptions& options) {
    const FindingsOf findings = findingsIn(entries);
    const std::map<EntryNumber, EntryNumber> strikes = strikesIn(entries);
    EntryLog log;
    log.follow(entries);
    Table table;
    table.pitch = 3.7;
    table.columns = {{words(SheetLabel::RemarkNumber), 8, false, TextAlign::Right},
                     {words(PageLabel::Time), 15},
                     {words(PageLabel::Rally), 11, false, TextAlign::Right},
                     {words(SheetLabel::TeamHead), 11},
                     {words(PageLabel::EntryHead), halfWidth - 45, true}};
    for (const LoggedEntry& line : log.lines()) {
        const Recorded& recorded = entries[line.number.value - 1];
        const EntryWords& said = line.words;
        TableRow row{{QString::number(line.number.value), timeOf(recorded, options.utcOffset),
                      said.rally > 0 ? QString::number(said.rally) : QString(),
                      said.team ? heading.opened.teams[*said.team].code : QString(), said.words.simplified()}};
        row.entry = line.number;
        row.team = said.team;
        row.struck = line.struck;
        table.rows.push_back(row);
        const auto found = findings.find(line.number);
        const auto struck = strikes.find(line.number);
        for (const QString& told : tellsOf(recorded, found == findings.end() ? QStringList() : found->second,
                                           struck == strikes.end() ? EntryNumber() : struck->second)) {
            TableRow under{{{}, {}, {}, {}, told}};
            under.entry = line.number;
            table.rows.push_back(under);
        }
    }
    Bodies bodies(options.fonts);
    const Draft measure(options.fonts);
    if (table.rows.empty())
        bodies.add();
    std::vector<TablePen> tables;
    tables.emplace_back(measure, std::move(table));
    bodies.flow(std::move(tables));
    return bodies.pages(heading.opened, options, mastheadOfMatch(heading, words(PageLabel::EntryPage)));
}

} // namespace setfolio
