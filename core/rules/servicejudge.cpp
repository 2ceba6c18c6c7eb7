// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/servicejudge.h"

#include "core/match/consequences.h"
#include "core/rules/eligibility.h"
#include "core/rules/liberojudge.h"
#include "core/rules/makefinding.h"
#include "core/rules/momentjudge.h"

#include <algorithm>

namespace setfolio {
namespace {

Findings againstVacantServer(const SetState& set) {
    const TeamInSet& team = set.teams[set.serving];
    if (!isVacant(team, team.nextServer) || liberoAtServe(set))
        return {};
    Finding vacant = unlawful(FindingKind::VacantServer, "fewer-than-six", set.serving);
    vacant.slot = team.nextServer;
    return {vacant};
}

/// Against a player whose substitution was ruled illegal, as long as it stands: it is put right before play goes on.
/// Source: FIVB Official Volleyball Rules 2025-2028, 15.9.2.
std::optional<Finding> againstRuledIllegal(const TeamInSet& own, Team team) {
    for (const Slot slot : allSlots) {
        const std::vector<Standing>& stood = own.slots[slot.index()];
        if (stood.empty() || !isRuledIllegal(own, stood.back()))
            continue;
        Finding stays =
            unlawful(FindingKind::IllegalPlayerStays, "illegal-substitution-counts", team, stood.back().number);
        stays.slot = slot;
        stays.count = static_cast<int>(stood.back().since.value);
        stays.lawful = replacedUnlawfully(own, slot).value_or(ShirtNumber());
        return stays;
    }
    return std::nullopt;
}

/// Against those on court when a serve is contacted.
Findings againstSix(const MatchState& state, Team team) {
    Findings findings;
    const TeamInSet& own = state.set().teams[team];
    for (const Slot slot : allSlots)
        if (const auto level = sentOffBy(state, team, standsIn(own, slot))) {
            Finding out = unlawful(FindingKind::SentOffOnCourt, "conduct-ladder", team, standsIn(own, slot));
            out.level = *level;
            findings.push_back(out);
        }
    append(findings, againstRuledIllegal(own, team));
    if (own.libero && positionOf(state.set(), team, own.libero->slot).isFrontRow()) {
        Finding front = unlawful(FindingKind::LiberoInFrontRow, "libero-back-row", team, own.libero->libero);
        front.slot = own.libero->slot;
        findings.push_back(front);
    }
    return findings;
}

/// A libero who serves because she stands in the slot that has the serve.
Findings againstLiberoOnCourt(const MatchState& state) {
    const TeamInSet& team = state.set().teams[state.set().serving];
    const bool servesInRecord = team.libero && team.libero->slot == team.nextServer && !team.liberoServing;
    return servesInRecord ? againstLiberoAtServe(state, team.libero->libero) : Findings{};
}

Findings againstServe(const MatchState& state) {
    Findings findings = againstVacantServer(state.set());
    for (const Team team : bothTeams)
        append(findings, againstSix(state, team));
    append(findings, againstLiberoOnCourt(state));
    return findings;
}

} // namespace

Findings judgeContact(const MatchState& state) {
    Findings findings = momentToServe(state);
    return findings.empty() ? againstServe(state) : findings;
}

Findings judgeNoServe(const MatchState& state) {
    return momentToServe(state);
}

Findings judgeRally(const MatchState& state) {
    Findings findings = momentInPlay(state);
    if (!findings.empty())
        return findings;
    if (!state.set().contacted)
        append(findings, againstServe(state));
    const std::optional<ShirtNumber> seen = state.set().seen;
    if (!seen || *seen == serverOf(state.set()))
        return findings;
    Finding unruled = unlawful(FindingKind::WrongServerUnruled, "wrong-server-point", state.set().serving, *seen);
    unruled.lawful = serverOf(state.set());
    findings.push_back(unruled);
    return findings;
}

Findings judgeReplay(const MatchState& state, const Replay& replay) {
    Findings findings = momentInPlay(state);
    if (!findings.empty() || replay.again == Again::Replay)
        return findings;
    const Team serving = state.set().serving;
    const int count = state.set().teams[serving].reServes + 1;
    const int limit = state.rulebook().reServesPerTerm;
    if (count > limit)
        findings.push_back(beyondLimit(FindingKind::ReServeLimit, "re-serves-per-term", serving, count, limit));
    return findings;
}

Findings judgeServerSeen(const MatchState& state, const ServerSeen& seen) {
    Findings findings = momentInPlay(state);
    if (!findings.empty())
        return findings;
    const Team serving = state.set().serving;
    if (!seen.number.isValid())
        return {refused(FindingKind::NumberImpossible, serving, seen.number)};
    if (!isOfTeam(state, serving, seen.number))
        findings.push_back(unlawful(FindingKind::ServerNotOnRoster, "line-up-numbers", serving, seen.number));
    return findings;
}

Findings judgeLiberoServe(const MatchState& state, const LiberoServe& serve) {
    Findings findings = momentInPlay(state);
    if (!findings.empty())
        return findings;
    const TeamInSet& team = state.set().teams[serve.team];
    if (state.set().serving != serve.team)
        return {refused(FindingKind::NotServing, serve.team, serve.libero)};
    if (serve.serving == LiberoServing::Ends)
        return team.liberoServing ? findings : Findings{refused(FindingKind::LiberoNotServing, serve.team)};
    if (!isLibero(team, serve.libero))
        findings.push_back(unlawful(FindingKind::ServerIsNotLibero, "libero-serve", serve.team, serve.libero));
    append(findings, keptOut(state, serve.team, serve.libero));
    // Where her replacements are recorded she serves in the place she has taken.
    if (team.libero && team.libero->slot != team.nextServer) {
        Finding elsewhere = unlawful(FindingKind::LiberoAlreadyOnCourt, "libero-replaced-by", serve.team, serve.libero);
        elsewhere.lawful = team.libero->libero;
        findings.push_back(elsewhere);
    }
    append(findings, againstLiberoAtServe(state, serve.libero));
    return findings;
}

} // namespace setfolio
