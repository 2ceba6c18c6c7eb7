// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/fold.h"

namespace setfolio {
namespace {

/// Writes the line-up into slots I to VI once it is known who serves first.
void assignSlots(const MatchState& state, SetState& set, Team team, EntryNumber since) {
    TeamInSet& side = set.teams[team];
    if (!side.lineUp || !set.servesFirst)
        return;
    const bool serves = *set.servesFirst == team;
    const bool byFloor = state.rulebook().writtenOrder == WrittenOrder::Floor;
    const std::size_t first = serves || byFloor ? 0 : 1; // the receiving team's first server stands in position 2
    for (const Slot slot : allSlots)
        side.slots[slot.index()] = {{side.lineUp->positions[(slot.index() + first) % 6], since}};
    side.nextServer = Slot(!serves && byFloor ? 2 : 1);
}

SetState nextSet(const MatchState& state, const SetState& previous) {
    SetState set;
    set.number = previous.number + 1;
    if (isDecidingSet(state, set.number))
        return set;
    if (previous.servesFirst)
        set.servesFirst = set.serving = opponentsOf(*previous.servesFirst);
    if (previous.left)
        set.left = opponentsOf(*previous.left);
    return set;
}

/// Folds one entry into a state that is its own; each kind is one overload.
class Applier {
public:
    Applier(MatchState& state, EntryNumber number) : m_state(state), m_number(number) {}

    void operator()(const MatchOpened& opened) {
        m_state.opened = opened;
        m_state.sets.assign(1, SetState());
    }
    void operator()(const Roster& roster) { m_state.rosters[roster.team] = roster; }
    void operator()(const Officials& officials) { m_state.officials = officials; }
    void operator()(const MatchClosed&) { m_state.closed = phaseOf(m_state) == Phase::MatchWon; }
    void operator()(const Toss& toss);
    void operator()(const LineUp& lineUp);
    void operator()(const SetStarted& started);
    void operator()(const SetEnded& ended);
    void operator()(const ServeContacted&);
    void operator()(const RallyWon& rally);
    void operator()(const Replay& replay);
    void operator()(const NoServe&);
    void operator()(const Substitution& substitution);
    void operator()(const TimeOut& timeOut);
    void operator()(const LiberoServe& serve);
    void operator()(const PenaltyPoint& penalty);
    void operator()(const Remark&) {}
    void operator()(const Strike&) {}

private:
    [[nodiscard]] bool inPlay() const {
        const Phase phase = phaseOf(m_state);
        return phase == Phase::ReadyToServe || phase == Phase::Rally;
    }
    [[nodiscard]] SetState& set() { return m_state.sets.back(); }
    void serveMade();
    void award(Team team, PointBy by);
    void giveServeTo(Team team);

    MatchState& m_state;
    EntryNumber m_number;
};

void Applier::operator()(const Toss& toss) {
    if (phaseOf(m_state) != Phase::BeforeSet)
        return;
    set().servesFirst = set().serving = toss.servesFirst;
    set().left = toss.left;
    for (const Team team : bothTeams)
        assignSlots(m_state, set(), team, m_number);
}

void Applier::operator()(const LineUp& lineUp) {
    if (phaseOf(m_state) != Phase::BeforeSet)
        return;
    set().teams[lineUp.team].lineUp = lineUp;
    assignSlots(m_state, set(), lineUp.team, m_number);
}

void Applier::operator()(const SetStarted& started) {
    if (phaseOf(m_state) != Phase::BeforeSet || !set().servesFirst)
        return;
    set().started = true;
    set().startedAt = started.at;
    set().teams[set().serving].termsBegun = 1;
}

void Applier::operator()(const SetEnded& ended) {
    if (phaseOf(m_state) != Phase::SetWon)
        return;
    set().ended = true;
    set().endedAt = ended.at;
    const PerTeam<int> won = setsWon(m_state);
    const int needed = m_state.opened->bestOf / 2 + 1;
    if (won.home < needed && won.visitors < needed) {
        SetState next = nextSet(m_state, set());
        m_state.sets.push_back(std::move(next));
    }
}

void Applier::operator()(const ServeContacted&) {
    if (inPlay())
        serveMade();
}

void Applier::operator()(const RallyWon& rally) {
    if (!inPlay())
        return;
    serveMade();
    award(rally.by, rally.by == set().serving ? PointBy::OwnServe : PointBy::OpponentsServe);
}

void Applier::operator()(const Replay& replay) {
    if (!inPlay())
        return;
    set().contacted = false;
    if (replay.again == Again::ReServe)
        ++set().teams[set().serving].reServes;
}

void Applier::operator()(const NoServe&) {
    if (inPlay())
        award(opponentsOf(set().serving), PointBy::OpponentsServe);
}

void Applier::operator()(const Substitution& substitution) {
    if (m_state.sets.empty())
        return;
    TeamInSet& team = set().teams[substitution.team];
    for (const Slot slot : allSlots) {
        if (!onCourt(team, slot).isValid() || onCourt(team, slot) != substitution.out)
            continue;
        team.slots[slot.index()].push_back({substitution.in, m_number});
        ++team.substitutions;
        return;
    }
}

void Applier::operator()(const TimeOut& timeOut) {
    if (!inPlay())
        return;
    const PerTeam<TeamInSet>& teams = set().teams;
    const TimeOutTaken taken{teams[timeOut.team].points, teams[opponentsOf(timeOut.team)].points, m_number};
    set().teams[timeOut.team].timeOuts.push_back(taken);
}

void Applier::operator()(const LiberoServe& serve) {
    if (!inPlay() || set().serving != serve.team)
        return;
    TeamInSet& team = set().teams[serve.team];
    team.liberoServing = serve.serving == LiberoServing::Begins ? std::optional(serve.libero) : std::nullopt;
    if (set().contacted)
        serveMade();
}

void Applier::operator()(const PenaltyPoint& penalty) {
    if (inPlay())
        award(penalty.to, PointBy::Penalty);
}

void Applier::serveMade() {
    set().contacted = true;
    TeamInSet& team = set().teams[set().serving];
    if (team.liberoServing && !team.liberoSlot)
        team.liberoSlot = team.nextServer;
}

void Applier::award(Team team, PointBy by) {
    set().contacted = false;
    if (by != PointBy::Penalty)
        ++set().rallies;
    ++set().teams[team].points;
    set().points.push_back({team, by, m_number});
    if (team != set().serving)
        giveServeTo(team);
    const PerTeam<int> points{set().teams.home.points, set().teams.visitors.points};
    set().winner = winnerAt(m_state.rulebook(), pointsToWin(m_state, set().number), points);
}

void Applier::giveServeTo(Team team) {
    TeamInSet& losing = set().teams[opponentsOf(team)];
    losing.nextServer = losing.nextServer.next();
    losing.liberoServing.reset();
    TeamInSet& gaining = set().teams[team];
    ++gaining.termsBegun;
    gaining.reServes = 0;
    set().serving = team;
}

} // namespace

MatchState apply(MatchState state, const Recorded& entry) {
    std::visit(Applier(state, entry.number), entry.entry);
    state.last = entry.number;
    return state;
}

} // namespace setfolio
