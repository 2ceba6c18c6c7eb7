// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/applier.h"

#include <algorithm>

namespace setfolio {

void Applier::operator()(const LiberoServe& serve) {
    if (!inPlay() || set().serving != serve.team)
        return;
    TeamInSet& team = set().teams[serve.team];
    team.liberoServing = serve.serving == LiberoServing::Begins ? std::optional(serve.libero) : std::nullopt;
    if (set().contacted)
        serveMade();
}

void Applier::moveLibero(TeamInSet& team, std::optional<LiberoOnCourt> libero) {
    team.libero = libero;
    team.liberoMoved = set().completed;
    team.liberoServing.reset(); // who serves follows from who is on court
}

void Applier::operator()(const LiberoIn& in) {
    if (m_state.sets.empty())
        return;
    TeamInSet& team = set().teams[in.team];
    if (const auto slot = slotOnCourt(team, in.replaced))
        moveLibero(team, LiberoOnCourt{in.libero, *slot});
}

void Applier::operator()(const LiberoOut& out) {
    if (m_state.sets.empty())
        return;
    TeamInSet& team = set().teams[out.team];
    if (team.libero && team.libero->libero == out.libero)
        moveLibero(team, std::nullopt);
}

void Applier::operator()(const LiberoExchange& exchange) {
    if (m_state.sets.empty())
        return;
    TeamInSet& team = set().teams[exchange.team];
    if (team.libero && team.libero->libero == exchange.out)
        moveLibero(team, LiberoOnCourt{exchange.in, team.libero->slot});
}

void Applier::operator()(const LiberoRedesignated& redesignated) {
    if (m_state.sets.empty())
        return;
    TeamInSet& team = set().teams[redesignated.team];
    std::erase(team.liberos, redesignated.former);
    team.liberosGivenUp.push_back(redesignated.former);
    if (redesignated.libero)
        team.liberos.push_back(*redesignated.libero);
    if (team.libero && team.libero->libero == redesignated.former) {
        team.libero.reset();
        lieRallyBehind(team); // she could not go on, and another libero need not wait for a rally
        team.liberoServing.reset();
    }
}

void Applier::operator()(const LateReplacement& late) {
    if (!m_state.sets.empty())
        m_state.lateReplacements.push_back({late.team, set().number, m_number});
}

} // namespace setfolio
