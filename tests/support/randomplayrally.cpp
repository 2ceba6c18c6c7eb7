// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplay.h"

#include <algorithm>

namespace setfolio::testing {

void RandomPlay::serve() {
    const Team serving = m_model.serving;
    const bool vacant = !m_model.server().isValid();
    if (vacant || m_dice.chance(m_habits.noServe)) {
        m_model.award(opponentsOf(serving), true, next());
        add(NoServe{});
        return changeSides();
    }
    if (m_dice.chance(m_habits.wrongServer) && wrongServerSeen())
        return changeSides();
    if (m_dice.chance(m_habits.replay))
        return replay();
    rally();
}

void RandomPlay::rally() {
    const Team serving = m_model.serving;
    m_model.serveMade();
    if (m_dice.chance(m_habits.contact)) {
        m_model.phase = Phase::Rally;
        add(ServeContacted{});
    }
    const Team winner = m_dice.chance(m_habits.ownServe) ? serving : opponentsOf(serving);
    m_model.award(winner, true, next());
    add(RallyWon{winner});
    changeSides();
}

void RandomPlay::replay() {
    const Team serving = m_model.serving;
    if (its(serving).reServes < m_model.rules.reServesPerTerm && m_dice.chance(500)) {
        ++its(serving).reServes;
        m_model.afterReplay = true;
        return add(Replay{Again::ReServe});
    }
    m_model.serveMade();
    m_model.phase = Phase::Rally;
    add(ServeContacted{});
    m_model.phase = Phase::ReadyToServe;
    m_model.afterReplay = true;
    add(Replay{Again::Replay});
}

/// A wrong number steps up, and it is told as soon as she has served; or she is sent back before.
bool RandomPlay::wrongServerSeen() {
    const Team team = m_model.serving;
    const auto position = static_cast<std::size_t>(1 + m_dice.below(5));
    const ShirtNumber wrong = its(team).inSlot(its(team).places[position]);
    if (!wrong.isValid() || its(team).liberoIn(its(team).places[position]) || its(team).libero)
        return false;
    m_model.wrongSeen = true;
    add(ServerSeen{wrong});
    if (m_dice.chance(200)) { // she is sent back in time
        m_model.wrongSeen = false;
        add(ServerSeen{m_model.server()});
        rally();
        return true;
    }
    if (m_dice.chance(200)) { // the whistle was another's: play is dead, and the right server serves
        m_model.wrongSeen = false;
        m_model.afterReplay = true;
        add(Replay{Again::Replay});
        return true;
    }
    m_model.serveMade();
    m_model.phase = Phase::Rally;
    add(ServeContacted{});
    m_model.ruledWrong(team, m_model.term);
    m_model.award(opponentsOf(team), true, next());
    add(WrongServer{team, wrong, std::nullopt});
    return true;
}

bool RandomPlay::isRequestedSince(std::uint32_t entry) const {
    return std::any_of(m_entries.begin() + entry, m_entries.end(), [](const Recorded& recorded) {
        return std::holds_alternative<TimeOut>(recorded.entry) || std::holds_alternative<Substitution>(recorded.entry);
    });
}

/// It comes to light between rallies: points of the term are taken back, and the serve is lost if it still was hers.
void RandomPlay::wrongServerFound() {
    const std::vector<ModelPoint>& points = m_model.points;
    if (points.empty() || m_model.rules.wrongServerPoints == TakenBack::NoPoints)
        return;
    const bool served = points.back().term == m_model.term; // in the present term
    const bool after = !served && m_dice.chance(600); // she has lost the serve since, the others have not served yet
    const Team team = after ? opponentsOf(m_model.serving) : m_model.serving;
    const int term = m_model.term - (after ? 1 : 0);
    // Since the fault: it may have begun terms ago.
    const bool everything = m_model.rules.wrongServerPoints == TakenBack::SinceFault && m_dice.chance(200);
    std::vector<std::uint32_t> won;
    for (const ModelPoint& point : points)
        if (point.team == team && (everything || (point.term == term && point.ownServe)))
            won.push_back(point.entry);
    const std::size_t right = its(team).places[0];
    const ShirtNumber wrong = its(team).inSlot(its(team).places[3]);
    if (won.empty() || m_model.afterReplay || !wrong.isValid() || !its(team).inSlot(right).isValid())
        return;
    const std::uint32_t from = m_dice.oneOf(won);
    if (m_model.rules.wrongServerRequests && isRequestedSince(from))
        return; // the requests would have to be struck first
    m_model.takeBack(team, from);
    m_model.ruledWrong(team, term);
    m_model.decide();
    if (!after)
        m_model.award(opponentsOf(team), true, next());
    add(WrongServer{team, wrong, EntryNumber(from)});
}

/// Somebody is on court who has no right to be there, and play has been resumed since: the serve is lost.
void RandomPlay::illegalFound() {
    const ShirtNumber wrong = its(m_model.serving).inSlot(its(m_model.serving).places[3]);
    if (!wrong.isValid() || m_model.afterReplay || !m_model.server().isValid() || m_model.points.empty() ||
        !isRecordedSince<RallyWon>(m_model.points.front().entry))
        return;
    const Team team = m_model.serving;
    // One who came in would have to go before the next serve; nobody knows how a starter came to be illegal.
    const bool starter = its(team).stood[its(team).places[3]].size() == 1;
    m_model.award(opponentsOf(team), true, next());
    add(IllegalPlayer{
        team, wrong, starter && m_dice.chance(500) ? IllegalBy::Substitution : IllegalBy::LiberoReplacement, {}});
}

/// Within the deciding set, as soon as a team has the points for it.
void RandomPlay::changeSides() {
    const std::optional<int>& at = m_model.rules.decidingSetSideChange;
    if (!ready() || !at || !m_model.deciding() || m_model.sidesChanged)
        return;
    const bool due = std::max(its(Team::Home).points, its(Team::Visitors).points) >= *at;
    if (!due || m_dice.chance(30)) // someone sees it a rally later
        return;
    m_model.sidesChanged = true;
    m_model.left = opponentsOf(*m_model.left);
    add(SidesChanged{});
}

} // namespace setfolio::testing
