// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/entrywords.h"
#include "core/ledger/textforms.h"
#include "core/record/exportparts.h"

#include <algorithm>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

int inkNumber(int round, int inks) {
    return static_cast<int>(inkOfRound(round, inks)) + 1;
}

QString runningWord(RunningMark mark) {
    switch (mark) {
    case RunningMark::Ring:
        return u"ring"_s;
    case RunningMark::Slash:
        return u"slash"_s;
    case RunningMark::Triangle:
        return u"triangle"_s;
    case RunningMark::Square:
        return u"square"_s;
    }
    Q_UNREACHABLE();
}

QJsonObject toExport(const Standing& standing) {
    QJsonObject json{{u"entry"_s, setfolio::toExport(standing.since)}};
    if (standing.number.isValid())
        json.insert(u"number"_s, setfolio::toExport(standing.number));
    return json;
}

QJsonObject toExport(const Term& term, int inks) {
    QJsonObject json{{u"slot"_s, exportWord(term.slot)},
                     {u"round"_s, term.round},
                     {u"ink"_s, inkNumber(term.round, inks)},
                     {u"marks"_s, listOf(term.marks)}};
    if (term.crossed)
        json.insert(u"crossed"_s, true);
    return json;
}

QJsonObject toExport(const TimeOutTaken& timeOut) {
    return {
        {u"own"_s, timeOut.own}, {u"opponents"_s, timeOut.opponents}, {u"entry"_s, setfolio::toExport(timeOut.entry)}};
}

QJsonObject toExport(const CountedSubstitution& counted, int inks) {
    return {{u"round"_s, counted.round},
            {u"ink"_s, inkNumber(counted.round, inks)},
            {u"entry"_s, setfolio::toExport(counted.entry)}};
}

QString moveWord(LiberoMove::How how) {
    switch (how) {
    case LiberoMove::How::In:
        return u"in"_s;
    case LiberoMove::How::Out:
        return u"out"_s;
    case LiberoMove::How::Exchange:
        return u"exchange"_s;
    }
    Q_UNREACHABLE();
}

QJsonObject toExport(const LiberoMove& move) {
    QJsonObject json{{u"how"_s, moveWord(move.how)},
                     {u"libero"_s, setfolio::toExport(move.libero)},
                     {u"slot"_s, exportWord(move.slot)},
                     {u"score"_s, setfolio::toExport(move.score)},
                     {u"entry"_s, setfolio::toExport(move.entry)}};
    if (move.other.isValid())
        json.insert(u"other"_s, setfolio::toExport(move.other));
    return json;
}

template <typename Values, typename... Inks>
QJsonArray list(const Values& values, Inks... inks) {
    QJsonArray array;
    for (const auto& value : values)
        array.append(toExport(value, inks...));
    return array;
}

QJsonArray slotsOf(const TeamRecord& team) {
    QJsonArray rows;
    for (const Slot slot : allSlots) {
        const SlotRecord& row = team.slots[slot.index()];
        QJsonObject json{{u"slot"_s, exportWord(slot)}, {u"numbers"_s, list(row.stood)}};
        if (row.libero)
            json.insert(u"libero"_s, setfolio::toExport(*row.libero));
        rows.append(json);
    }
    return rows;
}

QJsonObject teamOf(const TeamRecord& team, int inks) {
    QJsonObject json{{u"line-up-given"_s, team.lineUpGiven}, {u"slots"_s, slotsOf(team)},
                     {u"liberos"_s, listOf(team.liberos)},   {u"terms"_s, list(team.terms, inks)},
                     {u"time-outs"_s, list(team.timeOuts)},  {u"substitutions"_s, list(team.substitutions, inks)}};
    if (!team.liberoMoves.empty())
        json.insert(u"libero-moves"_s, list(team.liberoMoves));
    if (team.captain)
        json.insert(u"captain"_s, setfolio::toExport(*team.captain));
    return json;
}

QJsonObject runningPoint(Team team, const RunningPoint& point, int inks) {
    QJsonObject json{{u"team"_s, entryWord(team)},
                     {u"total"_s, point.total},
                     {u"opponents"_s, point.opponents},
                     {u"mark"_s, runningWord(point.mark)},
                     {u"round"_s, point.round},
                     {u"ink"_s, inkNumber(point.round, inks)},
                     {u"entry"_s, setfolio::toExport(point.entry)}};
    if (point.penalty)
        json.insert(u"penalty"_s, true);
    if (point.takenBack)
        json.insert(u"taken-back"_s, true);
    return json;
}

/// Both running scores in one, in the order of play.
QJsonArray runningOf(const PerTeam<TeamRecord>& teams, int inks) {
    std::vector<std::pair<int, QJsonObject>> points;
    for (const Team team : bothTeams)
        for (const RunningPoint& point : teams[team].running)
            points.emplace_back(point.place, runningPoint(team, point, inks));
    std::ranges::stable_sort(points, {}, &std::pair<int, QJsonObject>::first);
    QJsonArray running;
    for (const auto& [place, point] : points)
        running.append(point);
    return running;
}

QJsonObject liveOf(const LivePlace& live) {
    return {{u"serving"_s, entryWord(live.serving)},
            {u"slot"_s, exportWord(live.slot)},
            {u"round"_s, live.round},
            {u"next-slot-of-others"_s, exportWord(live.nextOfOthers)},
            {u"contacted"_s, live.contacted}};
}

void putWhatIsKnown(QJsonObject& json, const SetRecord& set) {
    if (set.servesFirst)
        json.insert(u"serves-first"_s, entryWord(*set.servesFirst));
    if (set.left)
        json.insert(u"left"_s, entryWord(*set.left));
    if (set.startedAt.isValid())
        json.insert(u"started-at"_s, timeOfDayText(set.startedAt));
    if (set.endedAt.isValid())
        json.insert(u"ended-at"_s, timeOfDayText(set.endedAt));
    if (set.live)
        json.insert(u"live"_s, liveOf(*set.live));
    if (set.cancelled)
        json.insert(u"cancelled"_s, true);
    if (!set.sanctions.empty())
        json.insert(u"sanctions"_s, listOf(set.sanctions));
    if (set.result)
        json.insert(u"winner"_s, entryWord(set.result->winner));
}

} // namespace

QJsonObject toExport(const SetRecord& set) {
    const auto team = [&set](const TeamRecord& record) { return teamOf(record, set.inks); };
    QJsonObject json{{u"number"_s, set.number},
                     {u"started"_s, set.started},
                     {u"finished"_s, set.result && set.result->confirmed},
                     {u"score"_s, toExport(set.score)},
                     {u"teams"_s, ofBoth<TeamRecord>(set.teams, team)},
                     {u"running"_s, runningOf(set.teams, set.inks)},
                     {u"notes"_s, listOf(set.notes)}};
    putWhatIsKnown(json, set);
    return json;
}

} // namespace setfolio
