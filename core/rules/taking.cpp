// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/taking.h"

#include <algorithm>
#include <ranges>

namespace setfolio {

TermPoints pointsOfTerm(const SetState& set, Team team) {
    TermPoints points;
    for (const Point& point : set.points) {
        if (point.team != team || point.serving != team || point.term != set.teams[team].termsBegun)
            continue;
        if (points.count++ == 0)
            points.first = point.entry;
    }
    return points;
}

int pointsFrom(const SetState& set, Team team, EntryNumber first) {
    const auto fault = std::ranges::find_if(
        set.points, [&](const Point& point) { return point.team == team && point.entry == first; });
    return static_cast<int>(
        std::count_if(fault, set.points.end(), [team](const Point& point) { return point.team == team; }));
}

std::optional<EntryNumber> firstOfLast(const SetState& set, Team team, int count) {
    int found = 0;
    for (const Point& point : set.points | std::views::reverse)
        if (point.team == team && ++found == count)
            return point.entry;
    return std::nullopt;
}

TakingRule takingRuleOf(const Rulebook& rulebook, const WrongServer&) {
    return {rulebook.wrongServerPoints, rulebook.wrongServerUntil, "wrong-server-points", "wrong-server-until"};
}

TakingRule takingRuleOf(const Rulebook& rulebook, const IllegalPlayer& ruling) {
    const bool asWrongServer = ruling.by == IllegalBy::LiberoReplacement &&
                               rulebook.liberoIllegalReplacement == IllegalReplacement::AlignmentFault;
    if (asWrongServer)
        return takingRuleOf(rulebook, WrongServer{});
    return {rulebook.illegalSubstitutionPoints, rulebook.illegalSubstitutionUntil, "illegal-substitution-points",
            "illegal-substitution-until"};
}

std::optional<EntryNumber> firstRequestSince(const SetState& set, const TakenBackPoints& taken) {
    const auto fault = std::ranges::find_if(
        set.points, [&](const Point& point) { return point.team == taken.team && point.entry == taken.first; });
    if (fault == set.points.end())
        return std::nullopt;
    const auto request = std::ranges::find_if(
        set.requests, [&](const RequestGranted& granted) { return granted.completed >= fault->completed; });
    return request == set.requests.end() ? std::nullopt : std::optional(request->entry);
}

bool mayStillTakeBack(const MatchState& state, Team team, const TakingRule& rule) {
    switch (rule.until) {
    case TakenBackUntil::NextServeContact:
        return state.set().serving == team || state.set().termContacts == 0;
    case TakenBackUntil::WheneverEstablished:
        return true;
    }
    Q_UNREACHABLE();
}

Slot slotLastAtServe(const SetState& set, Team team) {
    const Slot next = set.teams[team].nextServer;
    return set.serving == team || set.teams[team].termsBegun == 0 ? next : Slot((next.value + 4) % 6 + 1);
}

} // namespace setfolio
