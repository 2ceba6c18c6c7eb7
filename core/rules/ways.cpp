// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/ways.h"

#include "core/match/fold.h"
#include "core/rules/judge.h"
#include "core/rules/sanctionjudge.h"
#include "core/rules/substitutes.h"
#include "core/rules/taking.h"

#include <algorithm>

namespace setfolio {

std::vector<ShirtNumber> mayComeIn(const MatchState& state, Team team, ShirtNumber out) {
    return state.sets.empty() ? std::vector<ShirtNumber>() : regularSubstitutes(state, team, out);
}

std::vector<ShirtNumber> mayGoOut(const MatchState& state, Team team, ShirtNumber in) {
    std::vector<ShirtNumber> numbers;
    if (state.sets.empty() || !in.isValid())
        return numbers;
    const TeamInSet& own = state.set().teams[team];
    for (const Slot slot : allSlots) {
        const ShirtNumber out = toLeave(own, slot);
        if (out.isValid() && againstRegular(state, {team, in, out, slot}).empty())
            numbers.push_back(out);
    }
    return numbers;
}

std::vector<ShirtNumber> mayComeInExceptionally(const MatchState& state, Team team, ShirtNumber out) {
    return state.sets.empty() ? std::vector<ShirtNumber>() : exceptionalSubstitutes(state, team, out);
}

std::optional<CardStep> nextCard(const MatchState& state, Team team, const Member& who) {
    return state.opened ? nextCardOf(state, team, who) : std::nullopt;
}

bool isImproperRequestLetPass(const MatchState& state, Team team) {
    return state.opened && isRequestLetPass(state, team);
}

bool mayLetLateReplacementPass(const MatchState& state, Team team) {
    return state.opened && isLateReplacementLetPass(state, team);
}

DelayLevel nextDelay(const MatchState& state, Team team) {
    return state.opened ? nextDelayOf(state, team) : DelayLevel::Warning;
}

std::optional<ServerDue> mustServe(const MatchState& state) {
    const Phase phase = phaseOf(state);
    const bool isAwaited = phase == Phase::BeforeSet || phase == Phase::ReadyToServe || phase == Phase::Rally;
    if (!isAwaited || !state.set().servesFirst || !state.set().teams[state.set().serving].lineUp)
        return std::nullopt;
    const SetState& set = state.set();
    return ServerDue{set.serving, set.teams[set.serving].nextServer, serverOf(set)};
}

namespace {

std::optional<PointsToTakeBack> pointsBy(const MatchState& state, Team team, const TakingRule& rule) {
    if (rule.points == TakenBack::NoPoints || !mayStillTakeBack(state, team, rule))
        return std::nullopt;
    const TermPoints term = pointsOfTerm(state.set(), team);
    return term.count == 0 ? std::nullopt : std::optional(PointsToTakeBack{term.first, term.count});
}

} // namespace

std::optional<PointsToTakeBack> pointsToTakeBack(const MatchState& state, Team team) {
    if (state.sets.empty())
        return std::nullopt;
    return pointsBy(state, team, takingRuleOf(state.rulebook(), WrongServer{}));
}

std::optional<PointsToTakeBack> pointsToTakeBack(const MatchState& state, Team team, IllegalBy by) {
    if (state.sets.empty())
        return std::nullopt;
    return pointsBy(state, team, takingRuleOf(state.rulebook(), IllegalPlayer{.by = by}));
}

bool isPointSettled(std::span<const Recorded> entries, EntryNumber rally) {
    const auto* opened = entries.empty() ? nullptr : std::get_if<MatchOpened>(&entries.front().entry);
    if (!opened || opened->rulebook.wrongPointUntil == TakenBackUntil::WheneverEstablished)
        return false;
    const std::vector<TimelineItem> timeline = timelineOf(entries);
    const auto won = std::ranges::find_if(timeline, [&](const TimelineItem& item) {
        return item.recorded->number == rally && item.stands() &&
               std::holds_alternative<RallyWon>(item.recorded->entry);
    });
    if (won == timeline.end())
        return false;
    bool contacted = false; // by the serve that is looked at; a dropped toss is taken again
    for (const TimelineItem& item : std::ranges::subrange(std::next(won), timeline.end())) {
        if (!item.stands())
            continue;
        const auto* replay = std::get_if<Replay>(&item.recorded->entry);
        const bool dropped = replay && replay->again == Again::ReServe;
        if ((contacted && !dropped) || std::holds_alternative<RallyWon>(item.recorded->entry))
            return true;
        contacted = std::holds_alternative<ServeContacted>(item.recorded->entry);
    }
    return contacted;
}

std::vector<Entry> liberoMoves(const MatchState& state, Team team) {
    std::vector<Entry> moves;
    if (state.sets.empty())
        return moves;
    const auto offer = [&](const Entry& move) {
        if (judge(state, move).empty())
            moves.push_back(move);
    };
    const TeamInSet& own = state.set().teams[team];
    if (own.libero)
        offer(LiberoOut{team, own.libero->libero});
    for (const ShirtNumber libero : liberosOf(own)) {
        if (own.libero)
            offer(LiberoExchange{team, libero, own.libero->libero});
        for (const Slot slot : allSlots)
            offer(LiberoIn{team, libero, onCourt(own, slot)});
    }
    return moves;
}

} // namespace setfolio
