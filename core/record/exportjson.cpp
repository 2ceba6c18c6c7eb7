// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/exportjson.h"

#include "core/ledger/entryjson.h"
#include "core/ledger/entrywords.h"
#include "core/match/consequences.h"
#include "core/record/exportparts.h"
#include "core/record/nameless.h"
#include "core/record/writeup.h"
#include "core/rules/judge.h"

#include <QMap>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

/// An entry's members without those that the export says otherwise.
QJsonObject membersOf(const Entry& entry, std::initializer_list<QLatin1StringView> left) {
    QJsonObject json = toJson(entry);
    for (const QLatin1StringView key : left)
        json.remove(key);
    return json;
}

QJsonObject matchOf(const MatchHeading& heading, bool closed) {
    QJsonObject json = membersOf(heading.opened, {"kind"_L1, "format"_L1});
    json.insert(u"officials"_s, toJson(Officials{heading.officials}).value(u"officials"_s));
    json.insert(u"rosters"_s, ofBoth<Roster>(heading.rosters, [](const Roster& roster) {
                    return membersOf(roster, {"kind"_L1, "team"_L1});
                }));
    json.insert(u"sets-won"_s, toExport(heading.setsWon));
    json.insert(u"closed"_s, closed);
    return json;
}

/// The set in which each standing entry was recorded; none for those that belong to the match as a whole.
QMap<std::uint32_t, int> setsOfEntries(std::span<const Recorded> entries) {
    QMap<std::uint32_t, int> numbers;
    MatchState state;
    for (const TimelineItem& item : timelineOf(entries)) {
        if (!item.stands())
            continue;
        const Entry& entry = item.recorded->entry;
        if (!isOfMatch(entry) && !state.sets.empty())
            numbers.insert(item.recorded->number.value, setOfEntry(state, entry));
        state = apply(std::move(state), *item.recorded);
    }
    return numbers;
}

void putSource(QJsonObject& json, const QString& setting, const Rulebook& rulebook) {
    if (setting.isEmpty())
        return;
    json.insert(u"setting"_s, setting);
    json.insert(u"source"_s, rulebook.sources.value(setting).text);
}

void putWhatItIsAbout(QJsonObject& json, const Finding& finding) {
    if (finding.team)
        json.insert(u"team"_s, entryWord(*finding.team));
    if (finding.number != ShirtNumber())
        json.insert(u"number"_s, toExport(finding.number));
    if (finding.slot)
        json.insert(u"slot"_s, exportWord(*finding.slot));
    if (finding.other)
        json.insert(u"other-slot"_s, exportWord(*finding.other));
    if (finding.count != 0)
        json.insert(u"count"_s, finding.count);
    if (finding.limit != 0)
        json.insert(u"limit"_s, finding.limit);
    if (finding.lawful != ShirtNumber())
        json.insert(u"lawful-number"_s, toExport(finding.lawful));
    if (const auto* role = finding.who ? std::get_if<BenchRole>(&*finding.who) : nullptr)
        json.insert(u"role"_s, entryWord(*role));
    if (finding.level)
        json.insert(u"level"_s, std::visit([](auto level) { return entryWord(level); }, *finding.level));
}

QJsonObject findingOf(const EntryFinding& found, const Rulebook& rulebook) {
    QJsonObject json{{u"entry"_s, toExport(found.entry)},
                     {u"kind"_s, exportWord(found.finding.kind)},
                     {u"gravity"_s, found.finding.gravity == Gravity::Refused ? u"refused"_s : u"unlawful"_s}};
    putSource(json, found.finding.setting, rulebook);
    putWhatItIsAbout(json, found.finding);
    if (found.overruled)
        json.insert(u"overruled"_s, *found.overruled);
    return json;
}

QJsonArray findingsOf(std::span<const Recorded> entries, const Rulebook& rulebook) {
    const QMap<std::uint32_t, int> sets = setsOfEntries(entries);
    QJsonArray findings;
    for (const EntryFinding& found : review(entries)) {
        QJsonObject json = findingOf(found, rulebook);
        if (sets.contains(found.entry.value))
            json.insert(u"set"_s, sets.value(found.entry.value));
        findings.append(json);
    }
    return findings;
}

} // namespace

QJsonObject exportOf(std::span<const Recorded> entries) {
    const MatchRecord record = writeUp(entries);
    const MatchState state = fold(entries);
    Q_ASSERT(state.opened);
    return {{u"setfolio-export"_s, exportFormat},
            {u"names"_s, state.opened->namesLeftOut ? u"left-out"_s
                         : holdNames(entries)       ? u"given"_s
                                                    : u"none"_s},
            {u"match"_s, matchOf(record.heading, state.closed)},
            {u"sets"_s, listOf(record.sets)},
            {u"sign-offs"_s, listOf(record.signOffs)},
            {u"findings"_s, findingsOf(entries, state.rulebook())}};
}

} // namespace setfolio
