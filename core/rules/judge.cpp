// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/judge.h"

#include "core/rules/lineupjudge.h"

#include <algorithm>

namespace setfolio {
namespace {

Finding refused(FindingKind kind, std::optional<Team> team = std::nullopt, ShirtNumber number = {}) {
    return {.kind = kind, .gravity = Gravity::Refused, .team = team, .number = number};
}

Finding unlawful(FindingKind kind, const char* setting, Team team, ShirtNumber number = {}) {
    return {.kind = kind,
            .gravity = Gravity::Unlawful,
            .setting = QString::fromLatin1(setting),
            .team = team,
            .number = number};
}

Finding beyondLimit(FindingKind kind, const char* setting, Team team, int count, int limit) {
    Finding finding = unlawful(kind, setting, team);
    finding.count = count;
    finding.limit = limit;
    return finding;
}

/// Judges an entry in a state whose match is opened and not closed; each kind is one overload.
class Judge {
public:
    explicit Judge(const MatchState& state) : m_state(state), m_phase(phaseOf(state)) {}

    Findings operator()(const MatchOpened&) const { return {refused(FindingKind::MatchAlreadyOpened)}; }
    Findings operator()(const Roster& roster) const { return judgeRoster(m_state.rulebook(), roster); }
    Findings operator()(const Officials&) const { return {}; }
    Findings operator()(const Remark&) const { return {}; }
    Findings operator()(const Strike&) const { return {}; } // judgeStrike's
    Findings operator()(const MatchClosed&) const;
    Findings operator()(const Forfeit&) const;
    Findings operator()(const Suspended&) const;
    Findings operator()(const Resumed&) const;
    Findings operator()(const SidesChanged&) const { return deadBall(); }
    Findings operator()(const ServerSeen&) const { return inPlay(); }
    Findings operator()(const WrongServer&) const;
    Findings operator()(const PlaceVacated& vacated) const { return substitutionMoment(vacated.team); }
    Findings operator()(const LiberoIn&) const { return deadBall(); }
    Findings operator()(const LiberoOut&) const { return deadBall(); }
    Findings operator()(const LiberoExchange&) const { return deadBall(); }
    Findings operator()(const LiberoRedesignated&) const { return deadBall(); }
    Findings operator()(const CaptainNamed&) const { return deadBall(); }
    Findings operator()(const Sanction&) const { return {}; }
    Findings operator()(const DelaySanction&) const { return {}; }
    Findings operator()(const ImproperRequest&) const { return {}; }
    Findings operator()(const SheetCompared&) const { return {}; }
    Findings operator()(const Toss&) const { return beforeSet(); }
    Findings operator()(const LineUp& lineUp) const;
    Findings operator()(const SetStarted&) const;
    Findings operator()(const SetEnded&) const;
    Findings operator()(const ServeContacted&) const { return serve(); }
    Findings operator()(const NoServe&) const { return serve(); }
    Findings operator()(const RallyWon&) const { return inPlay(); }
    Findings operator()(const Replay& replay) const;
    Findings operator()(const Substitution& substitution) const;
    Findings operator()(const TimeOut& timeOut) const;
    Findings operator()(const LiberoServe& serve) const;
    Findings operator()(const PenaltyPoint&) const { return deadBall(); }

private:
    [[nodiscard]] Findings beforeSet() const;
    [[nodiscard]] Findings inPlay() const;
    [[nodiscard]] Findings deadBall() const;
    [[nodiscard]] Findings serve() const;
    [[nodiscard]] Findings substitutionMoment(Team team) const;
    void judgeEntering(Findings& findings, const Substitution& substitution, Slot asked) const;

    [[nodiscard]] const TeamInSet& teamOf(Team team) const { return m_state.set().teams[team]; }

    const MatchState& m_state;
    Phase m_phase;
};

Findings Judge::beforeSet() const {
    if (m_phase == Phase::MatchWon)
        return {refused(FindingKind::MatchAlreadyWon)};
    if (m_phase == Phase::Suspended)
        return {refused(FindingKind::MatchIsSuspended)};
    if (m_phase != Phase::BeforeSet)
        return {refused(FindingKind::SetAlreadyStarted)};
    return {};
}

Findings Judge::inPlay() const {
    switch (m_phase) {
    case Phase::BeforeSet:
        return {refused(FindingKind::SetNotStarted)};
    case Phase::SetWon:
        return {refused(FindingKind::SetAlreadyWon)};
    case Phase::MatchWon:
        return {refused(FindingKind::MatchAlreadyWon)};
    case Phase::Suspended:
        return {refused(FindingKind::MatchIsSuspended)};
    case Phase::ReadyToServe:
    case Phase::Rally:
        return {};
    case Phase::NotOpened:
    case Phase::MatchClosed:
        break;
    }
    Q_UNREACHABLE();
}

Findings Judge::deadBall() const {
    return m_phase == Phase::Rally ? Findings{refused(FindingKind::RallyUndecided)} : inPlay();
}

Findings Judge::serve() const {
    return m_phase == Phase::Rally ? Findings{refused(FindingKind::ServeAlreadyContacted)} : inPlay();
}

Findings Judge::operator()(const MatchClosed&) const {
    return m_phase == Phase::MatchWon ? Findings{} : Findings{refused(FindingKind::MatchNotWon)};
}

Findings Judge::operator()(const Forfeit&) const {
    return m_phase == Phase::MatchWon ? Findings{refused(FindingKind::MatchAlreadyWon)} : Findings{};
}

Findings Judge::operator()(const Suspended&) const {
    if (m_phase == Phase::Suspended)
        return {refused(FindingKind::MatchIsSuspended)};
    return m_phase == Phase::MatchWon ? Findings{refused(FindingKind::MatchAlreadyWon)} : Findings{};
}

Findings Judge::operator()(const Resumed&) const {
    return m_phase == Phase::Suspended ? Findings{} : Findings{refused(FindingKind::NotSuspended)};
}

Findings Judge::operator()(const WrongServer&) const {
    return m_phase == Phase::SetWon ? Findings{} : inPlay();
}

Findings Judge::operator()(const LineUp& lineUp) const {
    Findings findings = beforeSet();
    return findings.empty() ? judgeLineUp(m_state, lineUp) : findings;
}

Findings Judge::operator()(const SetStarted&) const {
    Findings findings = beforeSet();
    if (!findings.empty())
        return findings;
    if (!m_state.set().servesFirst)
        findings.push_back(refused(FindingKind::TossMissing));
    for (const Team team : bothTeams)
        if (!teamOf(team).lineUp)
            findings.push_back(refused(FindingKind::LineUpMissing, team));
    return findings;
}

Findings Judge::operator()(const SetEnded&) const {
    return m_phase == Phase::SetWon ? Findings{} : Findings{refused(FindingKind::SetNotWon)};
}

Findings Judge::operator()(const Replay& replay) const {
    Findings findings = inPlay();
    if (!findings.empty() || replay.again == Again::Replay)
        return findings;
    const Team serving = m_state.set().serving;
    const int count = teamOf(serving).reServes + 1;
    const int limit = m_state.rulebook().reServesPerTerm;
    if (count > limit)
        findings.push_back(beyondLimit(FindingKind::ReServeLimit, "re-serves-per-term", serving, count, limit));
    return findings;
}

/// A substitution needs both line-ups in their slots and a dead ball; it may come before the set starts (NFHS release
/// of January 2010; FIVB Official Volleyball Rules 2025-2028, 15.3.2).
Findings Judge::substitutionMoment(Team team) const {
    if (m_phase != Phase::BeforeSet)
        return deadBall();
    if (!teamOf(team).lineUp)
        return {refused(FindingKind::LineUpMissing, team)};
    if (!m_state.set().servesFirst)
        return {refused(FindingKind::TossMissing)};
    return {};
}

void Judge::judgeEntering(Findings& findings, const Substitution& substitution, Slot asked) const {
    const TeamInSet& team = teamOf(substitution.team);
    const ShirtNumber in = substitution.in;
    const bool hasRoster = !m_state.rosters[substitution.team].players.empty();
    if (hasRoster && !playerOf(m_state, substitution.team, in))
        findings.push_back(unlawful(FindingKind::SubstituteNotOnRoster, "substitution-roster", substitution.team, in));
    if (std::ranges::find(liberosOf(team), in) != liberosOf(team).end())
        findings.push_back(unlawful(FindingKind::SubstituteIsLibero, "line-up-libero", substitution.team, in));
    const std::optional<Slot> own = slotOf(team, in);
    if (!own)
        return;
    const bool stands = onCourt(team, *own) == in;
    if (!stands && *own == asked)
        return;
    Finding finding = unlawful(stands ? FindingKind::SubstituteOnCourt : FindingKind::WrongSlot, "substitution-slot",
                               substitution.team, in);
    finding.slot = *own;
    finding.other = asked;
    findings.push_back(finding);
}

Findings Judge::operator()(const Substitution& substitution) const {
    Findings findings = substitutionMoment(substitution.team);
    if (!findings.empty())
        return findings;
    for (const ShirtNumber number : {substitution.in, substitution.out})
        if (!number.isValid())
            return {refused(FindingKind::NumberImpossible, substitution.team, number)};
    const TeamInSet& team = teamOf(substitution.team);
    const std::optional<Slot> asked = slotOf(team, substitution.out);
    if (!asked || onCourt(team, *asked) != substitution.out)
        return {refused(FindingKind::NotOnCourt, substitution.team, substitution.out)};
    judgeEntering(findings, substitution, *asked);
    const int count = team.substitutions + 1;
    const int limit = m_state.rulebook().substitutionLimit;
    if (count > limit)
        findings.push_back(
            beyondLimit(FindingKind::SubstitutionLimit, "substitution-limit", substitution.team, count, limit));
    return findings;
}

Findings Judge::operator()(const TimeOut& timeOut) const {
    Findings findings = deadBall();
    if (!findings.empty())
        return findings;
    const int count = static_cast<int>(teamOf(timeOut.team).timeOuts.size()) + 1;
    const int limit = m_state.rulebook().timeOuts;
    if (count > limit)
        findings.push_back(beyondLimit(FindingKind::TimeOutLimit, "time-outs", timeOut.team, count, limit));
    return findings;
}

Findings Judge::operator()(const LiberoServe& serve) const {
    Findings findings = inPlay();
    if (!findings.empty())
        return findings;
    const TeamInSet& team = teamOf(serve.team);
    if (m_state.set().serving != serve.team)
        return {refused(FindingKind::NotServing, serve.team, serve.libero)};
    if (serve.serving == LiberoServing::Ends)
        return team.liberoServing ? findings : Findings{refused(FindingKind::LiberoNotServing, serve.team)};
    if (std::ranges::find(liberosOf(team), serve.libero) == liberosOf(team).end())
        findings.push_back(unlawful(FindingKind::ServerIsNotLibero, "libero-serve", serve.team, serve.libero));
    if (m_state.rulebook().liberoServe == LiberoServeRule::Never)
        findings.push_back(unlawful(FindingKind::LiberoMayNotServe, "libero-serve", serve.team, serve.libero));
    else if (team.liberoSlot && *team.liberoSlot != team.nextServer) {
        Finding second = unlawful(FindingKind::LiberoSecondSlot, "libero-serve", serve.team, serve.libero);
        second.slot = team.liberoSlot;
        second.other = team.nextServer;
        findings.push_back(second);
    }
    return findings;
}

Findings judgeOpening(const MatchOpened& opened) {
    Findings findings;
    const bool possible = opened.bestOf > 0 && opened.bestOf % 2 == 1;
    const std::vector<int>& offered = opened.rulebook.bestOf;
    if (possible && std::ranges::find(offered, opened.bestOf) != offered.end())
        return findings;
    findings.push_back({.kind = FindingKind::BestOfImpossible,
                        .gravity = possible ? Gravity::Unlawful : Gravity::Refused,
                        .setting = u"best-of"_qs,
                        .count = opened.bestOf});
    return findings;
}

} // namespace

Findings judge(const MatchState& state, const Entry& entry) {
    const auto* opening = std::get_if<MatchOpened>(&entry);
    if (!state.opened)
        return opening ? judgeOpening(*opening) : Findings{refused(FindingKind::MatchNotOpened)};
    if (state.closed && !std::holds_alternative<Strike>(entry))
        return {refused(FindingKind::MatchIsClosed)};
    return std::visit(Judge(state), entry);
}

Findings judgeStrike(std::span<const Recorded> entries, const Strike& strike) {
    const std::size_t target = strike.target.value;
    Finding missing{.kind = FindingKind::NoSuchEntry, .count = static_cast<int>(target)};
    if (target < 1 || target > entries.size())
        return {missing};
    const Recorded& struck = entries[target - 1];
    if (std::holds_alternative<MatchOpened>(struck.entry))
        return {refused(FindingKind::CannotBeStruck)};
    return standsIn(entries, strike.target) ? Findings{} : Findings{missing};
}

namespace {

/// The state in which an entry that is to be placed will be folded in.
MatchState stateAt(std::span<const Recorded> entries, const Placed& placed) {
    MatchState state;
    for (const TimelineItem& item : timelineOf(entries)) {
        if (item.recorded->number == placed.target)
            break;
        if (item.stands())
            state = apply(std::move(state), *item.recorded);
    }
    return state;
}

} // namespace

Findings judgeNext(std::span<const Recorded> entries, const MatchState& state, const Entry& entry,
                   const std::optional<Placed>& placed) {
    if (const auto* strike = std::get_if<Strike>(&entry))
        return judgeStrike(entries, *strike);
    if (!placed)
        return judge(state, entry);
    if (Findings findings = judgeStrike(entries, {placed->target, {}}); !findings.empty())
        return findings;
    return judge(stateAt(entries, *placed), entry);
}

std::vector<EntryFinding> review(std::span<const Recorded> entries) {
    std::vector<EntryFinding> found;
    const auto note = [&found](const Recorded& recorded, const Findings& findings) {
        for (const Finding& finding : findings)
            found.push_back({recorded.number, finding, recorded.overruled});
    };
    MatchState state;
    for (const TimelineItem& item : timelineOf(entries)) {
        if (!item.stands())
            continue;
        note(*item.recorded, judge(state, item.recorded->entry));
        state = apply(std::move(state), *item.recorded);
    }
    for (std::size_t index = 0; index < entries.size(); ++index)
        if (const auto* strike = std::get_if<Strike>(&entries[index].entry))
            note(entries[index], judgeStrike(entries.first(index), *strike));
    std::ranges::stable_sort(found, {}, &EntryFinding::entry);
    return found;
}

std::optional<ShirtNumber> proposedOut(const TeamInSet& team, ShirtNumber in) {
    const std::optional<Slot> own = slotOf(team, in);
    if (!own || onCourt(team, *own) == in)
        return std::nullopt;
    return onCourt(team, *own);
}

} // namespace setfolio
