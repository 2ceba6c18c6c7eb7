// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/writeup.h"

#include "core/match/consequences.h"
#include "core/record/setwriter.h"
#include "core/record/signoffs.h"

#include <algorithm>

namespace setfolio {
namespace {

/// The set at place `sheet` (from 1) of the state's sets; nullptr for one that comes after the present set.
const SetState* setAt(const MatchState& state, int sheet) {
    const std::size_t index = static_cast<std::size_t>(sheet - 1);
    return index < state.sets.size() ? &state.sets[index] : nullptr;
}

/// The record of the set at place `sheet`, begun if it is not there yet.
SetRecord& recordOf(MatchRecord& record, const MatchState& state, int sheet) {
    while (static_cast<int>(record.sets.size()) < sheet) {
        const SetState* set = setAt(state, static_cast<int>(record.sets.size()) + 1);
        SetRecord begun;
        begun.number = set ? set->number : state.set().number + 1;
        record.sets.push_back(std::move(begun));
    }
    return record.sets[static_cast<std::size_t>(sheet - 1)];
}

/// Whether the sheet of a set is begun: someone has said who serves, or handed in a line-up, or what happened before
/// the set stands on it.
bool isBegun(const SetRecord& set) {
    return set.started || set.teams.home.lineUpGiven || set.teams.visitors.lineUpGiven ||
           (set.number == 1 && set.servesFirst) || !set.notes.empty() || !set.sanctions.empty();
}

/// The round that is being written: that of the serving team.
int roundNow(const MatchState& state) {
    const SetState& set = state.set();
    return roundOfTerm(state.rulebook(), set.servesFirst == set.serving,
                       std::max(set.teams[set.serving].termsBegun, 1));
}

/// A substitution crosses the next number of the counter; one that was ruled illegal may count no longer.
void copyCounter(TeamRecord& record, const TeamInSet& team, int round) {
    std::vector<CountedSubstitution>& crossed = record.substitutions;
    if (crossed.size() > team.counted.size())
        std::erase_if(crossed, [&](const CountedSubstitution& each) {
            return std::ranges::find(team.counted, each.entry) == team.counted.end();
        });
    for (std::size_t index = crossed.size(); index < team.counted.size(); ++index)
        crossed.push_back({round, team.counted[index]});
}

void copyTeam(TeamRecord& record, const MatchState& state, Team which) {
    const TeamInSet& team = state.set().teams[which];
    copyCounter(record, team, roundNow(state));
    record.lineUpGiven = team.lineUp.has_value();
    for (const Slot slot : allSlots) {
        SlotRecord& row = record.slots[slot.index()];
        if (row.stood.size() != team.slots[slot.index()].size() || row.stood != team.slots[slot.index()])
            row.stood = team.slots[slot.index()];
    }
    record.captain = captainOf(state, team, which);
    record.liberos = liberosOf(team);
    record.timeOuts = team.timeOuts;
    for (const Slot slot : allSlots)
        record.slots[slot.index()].libero =
            team.liberoSlot == slot && state.rulebook().liberoSlotMarked ? team.liberoServed : std::nullopt;
}

std::optional<LivePlace> livePlaceOf(const MatchState& state) {
    const Phase phase = phaseOf(state);
    if (phase != Phase::ReadyToServe && phase != Phase::Rally)
        return std::nullopt;
    const SetState& set = state.set();
    const Team others = opponentsOf(set.serving);
    return LivePlace{set.serving, servingSlot(set, set.serving), roundNow(state), servingSlot(set, others),
                     set.contacted};
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
    record.inVain = set.inVain;
    record.inks = state.rulebook().inks;
    record.live = &set == &state.set() ? livePlaceOf(state) : std::nullopt;
    if (&set == &state.set())
        for (const Team team : bothTeams)
            copyTeam(record.teams[team], state, team);
}

Moment momentBefore(const MatchState& state, const Entry& entry) {
    if (state.sets.empty())
        return momentOf(state);
    const std::size_t place = placeOfEntry(state, entry);
    return place < state.sets.size() ? momentAt(state, place) : momentOfNextSet(state);
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
    const Recorded& recorded = *item.recorded;
    const Moment before = momentBefore(m_state, recorded.entry);
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
    if (before.sheet > 0)
        write(recorded, before);
}

void RecordWriter::write(const Recorded& recorded, const Moment& before) {
    SetRecord& record = recordOf(m_record, m_state, before.sheet);
    if (const SetState* set = setAt(m_state, before.sheet))
        copySet(record, m_state, *set);
    for (std::size_t later = static_cast<std::size_t>(before.sheet); later < m_record.sets.size(); ++later)
        if (const SetState* set = setAt(m_state, static_cast<int>(later) + 1)) // it may count no more
            copySet(m_record.sets[later], m_state, *set);
        else if (phaseOf(m_state) == Phase::MatchWon) // begun by a card or a remark alone
            m_record.sets[later].cancelled = m_record.sets[later].inVain = true;
    SetWriter(record, before, m_state.rulebook()).write(recorded);
    if (!isBegun(record))
        m_record.sets.pop_back();
}

MatchRecord writeUp(std::span<const Recorded> entries) {
    RecordWriter writer;
    for (const TimelineItem& item : timelineOf(entries))
        writer.take(item);
    return writer.record();
}

} // namespace setfolio
