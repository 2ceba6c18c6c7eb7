// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/consequences.h"

#include <algorithm>

namespace setfolio {

bool bringsPoint(const Rulebook& rulebook, SanctionLevel level) {
    const std::vector<CardStep>& ladder = rulebook.conductLadder;
    const auto step = std::ranges::find(ladder, level, &CardStep::level);
    // A level that this rulebook does not know is the referee's word: what most rulebooks make of it.
    return step == ladder.end() ? level == SanctionLevel::Penalty : step->point;
}

bool countsAsSubstitution(const Rulebook& rulebook, int used, SubstitutionKind kind) {
    if (kind == SubstitutionKind::Regular)
        return true;
    return rulebook.exceptionalCount == ExceptionalCount::WhileAnyLeft && used < rulebook.substitutionLimit;
}

std::optional<ShirtNumber> replacedUnlawfully(const TeamInSet& team, Slot slot) {
    const std::vector<Standing>& stood = team.slots[slot.index()];
    if (stood.empty() || !isRuledIllegal(team, stood.back()))
        return std::nullopt;
    const auto lawful = std::find_if_not(stood.rbegin(), stood.rend(),
                                         [&](const Standing& standing) { return isRuledIllegal(team, standing); });
    return lawful != stood.rend() && lawful->number.isValid() ? std::optional(lawful->number) : std::nullopt;
}

bool contactIsLiberoRally(const Rulebook& rulebook) {
    return rulebook.sources.contains(QStringLiteral("libero-after-contact"));
}

bool changesSidesAfter(const Rulebook& rulebook, int number) {
    switch (rulebook.changeSides) {
    case SideChange::EachSet:
    case SideChange::EachSetButDeciding:
        return true;
    case SideChange::AfterSecondSet:
        return number == 2;
    case SideChange::NoChange:
        return false;
    }
    Q_UNREACHABLE();
}

bool timeOutRenewsRequests(const Rulebook& rulebook) {
    return rulebook.secondRequest == SecondRequest::AfterRallyOrTimeOut;
}

int setThatCounts(const MatchState& state) {
    const SetState& set = state.set();
    const bool decided =
        set.winner && !set.ended && !set.inVain && !state.forfeit; // play may be broken off all the same
    if (!decided || setsWon(state)[*set.winner] + 1 == setsNeeded(*state.opened))
        return set.number;
    return set.number + 1;
}

bool countsInNextSet(const MatchState& state, const Entry& entry) {
    const bool given = std::holds_alternative<Sanction>(entry) || std::holds_alternative<DelaySanction>(entry) ||
                       std::holds_alternative<PenaltyPoint>(entry);
    return given && !state.sets.empty() && setThatCounts(state) > state.set().number;
}

bool isOfMatch(const Entry& entry) {
    return std::holds_alternative<MatchOpened>(entry) || std::holds_alternative<Roster>(entry) ||
           std::holds_alternative<Officials>(entry) || std::holds_alternative<MatchClosed>(entry);
}

std::optional<std::size_t> placeOfEnded(const MatchState& state, int number) {
    const auto ended = std::ranges::find_if(
        state.sets, [number](const SetState& set) { return set.number == number && set.ended && !set.cancelled; });
    if (ended == state.sets.end() || !ended->winner)
        return std::nullopt;
    return static_cast<std::size_t>(ended - state.sets.begin());
}

int mostKept(const Rulebook& rulebook, const SetState& set, Team team) {
    const int points = set.teams[team].points;
    return rulebook.cap ? std::min(points, *rulebook.cap - 1) : points;
}

std::size_t placeOfEntry(const MatchState& state, const Entry& entry) {
    const std::size_t present = state.sets.size() - 1;
    if (countsInNextSet(state, entry))
        return present + 1;
    const auto* forfeit = std::get_if<Forfeit>(&entry);
    return forfeit && forfeit->earlier ? placeOfEnded(state, forfeit->earlier->number).value_or(present) : present;
}

int setOfEntry(const MatchState& state, const Entry& entry) {
    const std::size_t place = placeOfEntry(state, entry);
    return place < state.sets.size() ? state.sets[place].number : state.set().number + 1;
}

std::optional<SanctionLevel> sentOffBy(const MatchState& state, Team team, const Member& who) {
    std::optional<SanctionLevel> out;
    for (const SanctionGiven& given : state.sanctions) {
        const auto* level = std::get_if<SanctionLevel>(&given.level);
        if (!level || given.team != team || given.who != who)
            continue;
        const bool forTheSet = *level == SanctionLevel::Expulsion && given.set == state.set().number;
        if (forTheSet || *level == SanctionLevel::Disqualification)
            out = std::max(out.value_or(*level), *level);
    }
    return out;
}

namespace {

bool contains(const std::vector<ShirtNumber>& numbers, ShirtNumber number) {
    return std::ranges::find(numbers, number) != numbers.end();
}

void addNew(std::vector<ShirtNumber>& numbers, ShirtNumber number) {
    if (!contains(numbers, number))
        numbers.push_back(number);
}

} // namespace

bool isGivenUpAsLibero(const MatchState& state, Team team, ShirtNumber number) {
    const bool inMatch = state.rulebook().liberoNamedFor == Scope::Match;
    return std::ranges::any_of(state.sets, [&](const SetState& set) {
        return (inMatch || set.number == state.set().number) && contains(set.teams[team].liberosGivenUp, number);
    });
}

std::vector<ShirtNumber> liberosOfMatch(const MatchState& state, Team team) {
    std::vector<ShirtNumber> liberos;
    if (state.rulebook().liberoNamedFor == Scope::Set)
        return liberos;
    for (const RosterPlayer& player : state.rosters[team].players)
        if (player.libero)
            addNew(liberos, player.number);
    for (const SetState& set : state.sets)
        if (&set != &state.sets.back())
            for (const ShirtNumber libero : set.teams[team].liberos)
                addNew(liberos, libero);
    std::erase_if(liberos, [&](ShirtNumber libero) { return isGivenUpAsLibero(state, team, libero); });
    return liberos;
}

} // namespace setfolio
