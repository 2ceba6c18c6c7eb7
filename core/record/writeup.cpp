// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/writeup.h"

#include "core/record/setwriter.h"
#include "core/record/signoffs.h"

namespace setfolio {
namespace {

/// The record of the set at place `sheet` (from 1) of the state's sets, begun if it is not there yet.
SetRecord& recordOf(MatchRecord& record, const MatchState& state, int sheet) {
    while (static_cast<int>(record.sets.size()) < sheet) {
        record.sets.emplace_back();
        record.sets.back().number = state.sets[record.sets.size() - 1].number;
    }
    return record.sets[static_cast<std::size_t>(sheet - 1)];
}

/// Whether the sheet of a set is begun: someone has said who serves, or handed in a line-up.
bool isBegun(const SetState& set) {
    return set.started || set.teams.home.lineUp || set.teams.visitors.lineUp || (set.number == 1 && set.servesFirst);
}

void copyTeam(TeamRecord& record, const MatchState& state, Team which) {
    const TeamInSet& team = state.set().teams[which];
    record.lineUpGiven = team.lineUp.has_value();
    for (const Slot slot : allSlots) {
        SlotRecord& row = record.slots[slot.index()];
        if (row.stood.size() != team.slots[slot.index()].size() || row.stood != team.slots[slot.index()])
            row.stood = team.slots[slot.index()];
    }
    record.captain = captainOf(state, team, which);
    record.liberos = liberosOf(team);
    record.timeOuts = team.timeOuts;
    if (team.liberoSlot)
        record.slots[team.liberoSlot->index()].libero = team.liberoServed;
}

std::optional<LivePlace> livePlaceOf(const MatchState& state) {
    const Phase phase = phaseOf(state);
    if (phase != Phase::ReadyToServe && phase != Phase::Rally)
        return std::nullopt;
    const SetState& set = state.set();
    const Team others = opponentsOf(set.serving);
    const int round = roundOfTerm(state.rulebook(), set.servesFirst == set.serving, set.teams[set.serving].termsBegun);
    return LivePlace{set.serving, servingSlot(set, set.serving), round, servingSlot(set, others), set.contacted};
}

/// The part of a set's record that the state says by itself.
void copySet(SetRecord& record, const MatchState& state, const SetState& set) {
    record.servesFirst = set.servesFirst;
    record.left = set.left;
    record.started = set.started;
    record.startedAt = set.startedAt;
    record.endedAt = set.endedAt;
    record.score = {set.teams.home.points, set.teams.visitors.points};
    record.result = set.winner ? std::optional(SetResult{*set.winner, set.ended}) : std::nullopt;
    record.cancelled = set.cancelled;
    record.live = &set == &state.set() ? livePlaceOf(state) : std::nullopt;
    if (&set == &state.set())
        for (const Team team : bothTeams)
            copyTeam(record.teams[team], state, team);
}

bool concernsHeading(const Entry& entry) {
    return std::holds_alternative<MatchOpened>(entry) || std::holds_alternative<Roster>(entry) ||
           std::holds_alternative<Officials>(entry) || std::holds_alternative<SetEnded>(entry) ||
           std::holds_alternative<Forfeit>(entry);
}

bool concernsSignOff(const Entry& entry) {
    return std::holds_alternative<Signed>(entry) || std::holds_alternative<LeftUnsigned>(entry) ||
           std::holds_alternative<Sealed>(entry) || std::holds_alternative<Reopened>(entry);
}

void copyHeading(MatchHeading& heading, const MatchState& state) {
    if (state.opened)
        heading.opened = *state.opened;
    heading.officials = state.officials.officials;
    heading.rosters = state.rosters;
    heading.setsWon = setsWon(state);
    heading.setScores = setScores(state);
    heading.forfeit = state.forfeit;
}

} // namespace

void RecordWriter::take(const TimelineItem& item) {
    const Moment before = momentOf(m_state);
    const Recorded& recorded = *item.recorded;
    if (!item.stands()) {
        if (before.sheet > 0)
            SetWriter(recordOf(m_record, m_state, before.sheet), before, m_state.rulebook())
                .writeStruck(recorded, *item.struckBy);
        return;
    }
    m_state = apply(std::move(m_state), recorded);
    if (concernsHeading(recorded.entry))
        copyHeading(m_record.heading, m_state);
    if (concernsSignOff(recorded.entry))
        return writeSignOff(m_record, m_state, recorded);
    if (before.sheet == 0)
        return;
    const std::size_t index = static_cast<std::size_t>(before.sheet - 1);
    if (m_record.sets.size() <= index && !isBegun(m_state.sets[index]))
        return;
    SetRecord& record = recordOf(m_record, m_state, before.sheet);
    copySet(record, m_state, m_state.sets[index]);
    SetWriter(record, before, m_state.rulebook()).write(recorded);
}

MatchRecord writeUp(std::span<const Recorded> entries) {
    RecordWriter writer;
    for (const TimelineItem& item : timelineOf(entries))
        writer.take(item);
    return writer.record();
}

} // namespace setfolio
