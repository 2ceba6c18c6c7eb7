// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/liberojudge.h"

#include "core/match/consequences.h"
#include "core/rules/eligibility.h"
#include "core/rules/makefinding.h"
#include "core/rules/momentjudge.h"
#include "core/rules/substitutionjudge.h"

#include <algorithm>

namespace setfolio {
namespace {

const TeamInSet& teamOf(const MatchState& state, Team team) {
    return state.set().teams[team];
}

/// Whether the slot has the serve.
bool isAtServe(const MatchState& state, Team team, Slot slot) {
    return state.set().serving == team && teamOf(state, team).nextServer == slot;
}

bool isInFrontRow(const MatchState& state, Team team, Slot slot) {
    return positionOf(state.set(), team, slot).isFrontRow();
}

/// Against the moment of a replacement, whoever it is about.
Findings againstMoment(const MatchState& state, Team team) {
    Findings findings = momentToChangeSix(state, team);
    if (findings.empty() && isAgain(state.set(), Again::ReServe))
        append(findings, againstRequestBeforeRepeat(state, team));
    return findings;
}

/// Whether the rulebook lets a rally that was broken off stand for a completed one: for an injury, or for what nobody
/// has said.
bool breakStandsForRally(const MatchState& state) {
    const std::optional<Replay>& again = state.set().again;
    return isAgain(state.set(), Again::Replay) && again->cause.value_or(ReplayCause::Injury) == ReplayCause::Injury &&
           state.rulebook().sources.contains(QStringLiteral("libero-after-replay"));
}

/// A completed rally lies between two replacements.
bool lacksRally(const MatchState& state, Team team) {
    return state.rulebook().liberoRallyBetween && teamOf(state, team).liberoMoved == state.set().completed &&
           !breakStandsForRally(state);
}

/// A libero goes in between two rallies of her own only to serve, where she may.
std::optional<Finding> againstRallyBetween(const MatchState& state, Team team, ShirtNumber libero, Slot slot) {
    const bool toServe = isAtServe(state, team, slot) && againstLiberoAtServe(state, libero).empty();
    if (toServe || !lacksRally(state, team))
        return std::nullopt;
    return unlawful(FindingKind::LiberoRallyBetween, "libero-rally-between", team, libero);
}

/// Against a libero who is one of the six already, after an exceptional substitution.
std::optional<Finding> againstOneOfTheSix(const TeamInSet& own, Team team, ShirtNumber libero) {
    const std::optional<Slot> slot = slotOnCourt(own, libero);
    if (!slot)
        return std::nullopt;
    Finding finding = unlawful(FindingKind::SubstituteOnCourt, "line-up-numbers", team, libero);
    finding.slot = slot;
    return finding;
}

/// Against a libero coming on in a slot, for a player or for another libero.
Findings againstComingOn(const MatchState& state, Team team, ShirtNumber libero, Slot slot) {
    Findings findings;
    if (!isLibero(teamOf(state, team), libero))
        findings.push_back(unlawful(FindingKind::NotALibero, "libero-named-for", team, libero));
    append(findings, keptOut(state, team, libero));
    append(findings, againstOneOfTheSix(teamOf(state, team), team, libero));
    if (isInFrontRow(state, team, slot))
        findings.push_back(
            unlawful(FindingKind::LiberoForFrontRow, "libero-back-row", team, onCourt(teamOf(state, team), slot)));
    if (isAtServe(state, team, slot))
        append(findings, againstLiberoAtServe(state, libero));
    return findings;
}

Finding alreadyOnCourt(Team team, ShirtNumber libero, ShirtNumber onCourt) {
    Finding finding = unlawful(FindingKind::LiberoAlreadyOnCourt, "libero-replaced-by", team, libero);
    finding.lawful = onCourt;
    return finding;
}

} // namespace

Findings judgeLiberoIn(const MatchState& state, const LiberoIn& in) {
    Findings findings = againstMoment(state, in.team);
    if (isRefused(findings))
        return findings;
    for (const ShirtNumber number : {in.libero, in.replaced})
        if (!number.isValid())
            return {refused(FindingKind::NumberImpossible, in.team, number)};
    const TeamInSet& team = teamOf(state, in.team);
    const std::optional<Slot> slot = slotOnCourt(team, in.replaced);
    if (!slot)
        return {refused(FindingKind::NotOnCourt, in.team, in.replaced)};
    if (sentOffBy(state, in.team, in.replaced)) {
        Finding finding = unlawful(FindingKind::LiberoForSentOff, "exceptional-substitution", in.team, in.libero);
        finding.lawful = in.replaced;
        findings.push_back(finding);
    }
    if (team.libero)
        findings.push_back(alreadyOnCourt(in.team, in.libero, team.libero->libero));
    append(findings, againstComingOn(state, in.team, in.libero, *slot));
    append(findings, againstRallyBetween(state, in.team, in.libero, *slot));
    return findings;
}

Findings judgeLiberoOut(const MatchState& state, const LiberoOut& out) {
    Findings findings = againstMoment(state, out.team);
    if (isRefused(findings))
        return findings;
    const TeamInSet& team = teamOf(state, out.team);
    if (!team.libero || team.libero->libero != out.libero)
        return {refused(FindingKind::LiberoNotOnCourt, out.team, out.libero)};
    const ShirtNumber back = onCourt(team, team.libero->slot);
    if (back.isValid())
        append(findings, keptOut(state, out.team, back));
    // She must leave the front row whenever she comes there, and nobody sent off stays to wait for a rally.
    const bool mustLeave =
        isInFrontRow(state, out.team, team.libero->slot) || keptOut(state, out.team, out.libero).has_value();
    if (!mustLeave && lacksRally(state, out.team))
        findings.push_back(unlawful(FindingKind::LiberoRallyBetween, "libero-rally-between", out.team, out.libero));
    return findings;
}

Findings judgeLiberoExchange(const MatchState& state, const LiberoExchange& exchange) {
    Findings findings = againstMoment(state, exchange.team);
    if (isRefused(findings))
        return findings;
    if (!exchange.in.isValid())
        return {refused(FindingKind::NumberImpossible, exchange.team, exchange.in)};
    const TeamInSet& team = teamOf(state, exchange.team);
    if (!team.libero || team.libero->libero != exchange.out)
        return {refused(FindingKind::LiberoNotOnCourt, exchange.team, exchange.out)};
    if (exchange.in == exchange.out)
        findings.push_back(alreadyOnCourt(exchange.team, exchange.in, exchange.out));
    if (state.rulebook().liberoReplacedBy == LiberoReplacedBy::SamePlayer) {
        Finding finding =
            unlawful(FindingKind::LiberoExchangeNotAllowed, "libero-replaced-by", exchange.team, exchange.in);
        finding.lawful = onCourt(team, team.libero->slot);
        findings.push_back(finding);
    }
    append(findings, againstComingOn(state, exchange.team, exchange.in, team.libero->slot));
    if (!keptOut(state, exchange.team, exchange.out))
        append(findings, againstRallyBetween(state, exchange.team, exchange.in, team.libero->slot));
    return findings;
}

namespace {

/// Whether the rulebook lets the team name a new libero for the former one.
std::optional<Finding> againstNewLibero(const MatchState& state, const LiberoRedesignated& redesignated) {
    const Rulebook& rulebook = state.rulebook();
    const bool othersLeft = std::ranges::any_of(liberosOf(teamOf(state, redesignated.team)), [&](ShirtNumber libero) {
        return libero != redesignated.former && !keptOut(state, redesignated.team, libero);
    });
    const auto notAllowed = [&](const char* setting) {
        return unlawful(FindingKind::RedesignationNotAllowed, setting, redesignated.team, redesignated.former);
    };
    if (sentOffBy(state, redesignated.team, redesignated.former)) {
        const bool mayRename = rulebook.liberoDisqualified == LiberoDisqualified::OtherOrRedesignated && !othersLeft;
        return mayRename ? std::nullopt : std::optional(notAllowed("libero-disqualified"));
    }
    switch (rulebook.liberoRedesignation) {
    case Redesignation::NoRedesignation:
        return notAllowed("libero-redesignation");
    case Redesignation::WhenUnable:
        return std::nullopt;
    case Redesignation::WhenNoneLeft:
        return othersLeft ? std::optional(notAllowed("libero-redesignation")) : std::nullopt;
    }
    Q_UNREACHABLE();
}

} // namespace

Findings judgeRedesignation(const MatchState& state, const LiberoRedesignated& redesignated) {
    Findings findings = momentToChangeSix(state, redesignated.team);
    if (!findings.empty())
        return findings;
    const Team team = redesignated.team;
    if (!isLibero(teamOf(state, team), redesignated.former))
        findings.push_back(unlawful(FindingKind::NotALibero, "libero-named-for", team, redesignated.former));
    if (!redesignated.libero)
        return findings;
    const ShirtNumber libero = *redesignated.libero;
    if (!libero.isValid())
        return {refused(FindingKind::NumberImpossible, team, libero)};
    append(findings, againstNewLibero(state, redesignated));
    if (!isOfTeam(state, team, libero))
        findings.push_back(unlawful(FindingKind::LiberoNotOnRoster, "line-up-numbers", team, libero));
    if (slotOnCourt(teamOf(state, team), libero))
        findings.push_back(unlawful(FindingKind::NewLiberoOnCourt, "libero-unable", team, libero));
    append(findings, keptOut(state, team, libero));
    return findings;
}

Findings againstLiberoAtServe(const MatchState& state, ShirtNumber libero) {
    const Team serving = state.set().serving;
    const TeamInSet& team = teamOf(state, serving);
    if (state.rulebook().liberoServe == LiberoServeRule::Never)
        return {unlawful(FindingKind::LiberoMayNotServe, "libero-serve", serving, libero)};
    if (!team.liberoSlot || *team.liberoSlot == team.nextServer)
        return {};
    Finding second = unlawful(FindingKind::LiberoSecondSlot, "libero-serve", serving, libero);
    second.slot = team.liberoSlot;
    second.other = team.nextServer;
    return {second};
}

} // namespace setfolio
