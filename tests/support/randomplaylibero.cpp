// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplay.h"

#include <algorithm>

namespace setfolio::testing {

bool RandomPlay::mayServeAsLibero(Team team) const {
    const ModelTeam& own = its(team);
    return m_model.rules.liberoServe == LiberoServeRule::OneSlot && m_model.serving == team &&
           own.liberoServes.value_or(own.places[0]) == own.places[0] && own.inSlot(own.places[0]).isValid();
}

void RandomPlay::liberos() {
    if (!m_liberoRecord)
        return markServe();
    for (const Team team : bothTeams) {
        mustLeave(team);
        if (!m_model.afterReplay && m_dice.chance(m_habits.libero))
            moveLibero(team);
    }
}

/// Before she stands in the front row; in the same dead ball she may come back only to serve.
void RandomPlay::mustLeave(Team team) {
    ModelTeam& own = its(team);
    if (!own.libero || !own.isFrontRow(own.libero->slot.index()))
        return;
    const ShirtNumber libero = own.libero->libero;
    m_model.moveLibero(team, std::nullopt);
    add(LiberoOut{team, libero});
    if (m_dice.chance(500))
        comeToServe(team);
}

void RandomPlay::moveLibero(Team team) {
    ModelTeam& own = its(team);
    if (m_dice.chance(5))
        return redesignate(team);
    const bool rallyBetween = !m_model.rules.liberoRallyBetween || own.liberoMovedAfter < m_model.completed;
    if (!rallyBetween)
        return;
    if (!own.libero)
        return comeIn(team, static_cast<std::size_t>(m_dice.oneOf(std::array{0, 4, 5})));
    const ShirtNumber out = own.libero->libero;
    const bool other = m_model.rules.liberoReplacedBy == LiberoReplacedBy::SamePlayerOrLibero && own.liberos.size() > 1;
    if (other && m_dice.chance(300)) {
        const ShirtNumber in = own.liberos[0] == out ? own.liberos[1] : own.liberos[0];
        m_model.moveLibero(team, LiberoOnCourt{in, own.libero->slot});
        return add(LiberoExchange{team, in, out});
    }
    if (m_dice.chance(500)) {
        m_model.moveLibero(team, std::nullopt);
        add(LiberoOut{team, out});
        if (m_dice.chance(300))
            comeToServe(team);
    }
}

void RandomPlay::comeIn(Team team, std::size_t position) {
    ModelTeam& own = its(team);
    const std::size_t slot = own.places[position];
    const bool mayStand = position != 0 || m_model.serving != team || mayServeAsLibero(team);
    if (own.liberos.empty() || !own.inSlot(slot).isValid() || !mayStand)
        return;
    const ShirtNumber libero = m_dice.oneOf(own.liberos);
    m_model.moveLibero(team, LiberoOnCourt{libero, Slot(static_cast<int>(slot) + 1)});
    add(LiberoIn{team, libero, own.inSlot(slot)});
}

void RandomPlay::comeToServe(Team team) {
    if (mayServeAsLibero(team))
        comeIn(team, 0);
}

/// A libero who cannot play on.
void RandomPlay::redesignate(Team team) {
    ModelTeam& own = its(team);
    if (own.liberos.empty() || own.libero)
        return;
    const ShirtNumber former = own.liberos.front();
    const bool ofMatch = m_model.rules.liberoNamedFor == Scope::Match;
    Numbers free;
    for (const ShirtNumber number : bench(team))
        if (!own.boundTo(number))
            free.push_back(number);
    const bool lastOne = own.liberos.size() == 1;
    const bool mayName = m_model.rules.liberoRedesignation == Redesignation::WhenUnable ||
                         (m_model.rules.liberoRedesignation == Redesignation::WhenNoneLeft && lastOne);
    std::optional<ShirtNumber> libero;
    if (mayName && !free.empty() && m_dice.chance(700))
        libero = m_dice.oneOf(free);
    for (Numbers* list : {&own.liberos, ofMatch ? &own.liberosOfMatch : &own.liberos}) {
        std::erase(*list, former);
        if (libero && !holds(*list, *libero))
            list->push_back(*libero);
    }
    (ofMatch ? own.outOfMatch : own.outOfSet).insert(former);
    own.givenUp.insert(former);
    own.redesignated = true;
    add(LiberoRedesignated{team, former, libero, QStringLiteral("a twisted ankle")});
}

/// At a table that keeps no record of replacements.
void RandomPlay::markServe() {
    const Team team = m_model.serving;
    ModelTeam& own = its(team);
    if (own.liberoServing && m_dice.chance(50)) {
        const ShirtNumber libero = *own.liberoServing;
        own.liberoServing.reset();
        return add(LiberoServe{team, libero, LiberoServing::Ends});
    }
    if (own.liberoServing || own.liberos.empty() || !mayServeAsLibero(team) || !m_dice.chance(m_habits.libero))
        return;
    own.liberoServing = m_dice.oneOf(own.liberos);
    add(LiberoServe{team, *own.liberoServing, LiberoServing::Begins});
}

} // namespace setfolio::testing
