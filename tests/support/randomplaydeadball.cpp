// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplay.h"

#include <algorithm>

namespace setfolio::testing {

Numbers RandomPlay::bench(Team team) const {
    const ModelTeam& own = its(team);
    const Numbers none;
    const Numbers& named = m_model.rules.liberoNamedFor == Scope::Match ? own.liberosOfMatch : none;
    Numbers numbers;
    for (const ShirtNumber number : own.players)
        if (!own.standsIn(number) && !own.isOut(number) && !holds(own.liberos, number) && !holds(named, number) &&
            !holds(own.lineUp.liberos, number))
            numbers.push_back(number);
    return numbers;
}

Numbers RandomPlay::regularFor(Team team, std::size_t slot) const {
    const ModelTeam& own = its(team);
    const Rulebook& rules = m_model.rules;
    const Numbers& stood = own.stood[slot];
    if (own.substitutions >= rules.substitutionLimit || !own.inSlot(slot).isValid())
        return {};
    Numbers lawful;
    if (rules.substitutionRule == SubstitutionRule::OnceOutOnceBack) {
        if (own.exceptional[slot] || stood.size() > 2)
            return {};
        if (stood.size() == 2)
            return holds(bench(team), stood.front()) ? Numbers{stood.front()} : Numbers{};
    }
    const std::size_t different = std::set<ShirtNumber>(stood.begin(), stood.end()).size();
    const bool full = rules.playersPerSlot && static_cast<int>(different) >= *rules.playersPerSlot;
    for (const ShirtNumber number : bench(team)) {
        const std::optional<std::size_t> bound = own.boundTo(number);
        if (bound ? *bound == slot && rules.substitutionRule == SubstitutionRule::OwnSlot : !full)
            lawful.push_back(number);
    }
    return lawful;
}

Numbers RandomPlay::exceptionalFor(Team team, std::size_t slot) const {
    if (!regularFor(team, slot).empty())
        return {};
    Numbers lawful;
    for (const ShirtNumber number : bench(team)) {
        const bool partner =
            m_model.rules.substitutionRule == SubstitutionRule::OnceOutOnceBack && its(team).boundTo(number) == slot;
        if (!partner)
            lawful.push_back(number);
    }
    return lawful;
}

bool RandomPlay::isAnswered(Team team, std::size_t slot, bool sentOff) const {
    if (!regularFor(team, slot).empty() || !exceptionalFor(team, slot).empty())
        return true;
    // Open: whether her own substitute may come in exceptionally, and a libero for a player who is sent off.
    return bench(team).empty() && (!sentOff || its(team).liberos.empty());
}

bool RandomPlay::mayRequest(Team team) const {
    const bool again = m_model.rules.secondRequest == SecondRequest::Allowed;
    return !its(team).barred && (again || !its(team).requested) &&
           (!m_model.afterReplay || (m_model.rules.requestsInReplay && m_model.rules.requestsInReServe));
}

void RandomPlay::interruption() {
    notes();
    if (m_dice.chance(m_habits.wrongServer))
        wrongServerFound();
    if (ready() && m_dice.chance(m_habits.illegal))
        illegalFound();
    if (ready() && m_dice.chance(m_habits.late))
        lateReplacement(m_dice.anyTeam());
    if (ready() && m_dice.chance(m_habits.card))
        card(m_dice.anyTeam());
    if (ready() && m_dice.chance(m_habits.delay))
        delay(m_dice.anyTeam());
    if (ready() && m_dice.chance(m_habits.improper))
        improper(m_dice.anyTeam());
    if (ready() && m_dice.chance(m_habits.penalty)) {
        const Team team = m_dice.anyTeam();
        m_model.penaltyFor(opponentsOf(team), next());
        add(PenaltyPoint{team, QStringLiteral("given by the first referee")});
    }
    changeSides();
    if (ready() && m_dice.chance(m_habits.hurt))
        hurt();
    if (ready() && m_dice.chance(m_habits.suspended))
        suspend();
    if (ready() && m_dice.chance(m_habits.forfeit) && m_dice.chance(100))
        forfeit({m_dice.anyTeam(), ForfeitKind::Incomplete, m_dice.chance(500) ? Scope::Set : Scope::Match,
                 QStringLiteral("fewer than six")});
    if (ready())
        requests();
    if (ready())
        liberos();
}

void RandomPlay::requests() {
    for (int turn = 0; turn < 2; ++turn) {
        const Team team = m_dice.anyTeam();
        if (m_dice.chance(m_habits.substitution))
            substitutions(team);
        if (m_dice.chance(m_habits.timeOut))
            timeOut(m_dice.anyTeam());
    }
}

/// One request: one pair after another.
void RandomPlay::substitutions(Team team) {
    if (!mayRequest(team))
        return;
    const bool twice = m_model.rules.secondRequest == SecondRequest::Allowed; // else a place is changed once a request
    std::set<std::size_t> changed;
    for (int pairs = 1 + m_dice.below(3); pairs > 0; --pairs) {
        const auto slot = static_cast<std::size_t>(m_dice.below(6));
        const Numbers lawful = regularFor(team, slot);
        if (lawful.empty() || its(team).liberoIn(slot) || (!twice && changed.contains(slot)))
            continue;
        changed.insert(slot);
        substitute(team, slot, m_dice.oneOf(lawful), SubstitutionKind::Regular);
    }
}

void RandomPlay::substitute(Team team, std::size_t slot, ShirtNumber in, SubstitutionKind kind) {
    const Substitution substitution{team, in, its(team).inSlot(slot), kind};
    m_model.enter(team, slot, in, kind);
    add(substitution);
    if (its(team).captain == substitution.out && m_dice.chance(300))
        add(CaptainNamed{team, in});
}

void RandomPlay::hurt() {
    const Team team = m_dice.anyTeam();
    const auto slot = static_cast<std::size_t>(m_dice.below(6));
    const bool untouched = its(team).inSlot(slot).isValid() && !its(team).liberoIn(slot);
    if (untouched && mayRequest(team) && !its(team).requested && isAnswered(team, slot, false))
        leaves(team, slot, false);
}

/// A player who cannot, or may not, play on.
void RandomPlay::leaves(Team team, std::size_t slot, bool sentOff) {
    if (const Numbers regular = regularFor(team, slot); !regular.empty())
        return substitute(team, slot, m_dice.oneOf(regular), SubstitutionKind::Regular);
    if (const Numbers others = exceptionalFor(team, slot); !others.empty())
        return substitute(team, slot, m_dice.oneOf(others), SubstitutionKind::Exceptional);
    const ExceptionalLibero rule = m_model.rules.exceptionalLibero;
    const bool liberoMay = rule == ExceptionalLibero::Last || (rule == ExceptionalLibero::LastForHurt && !sentOff);
    const bool spare = liberoMay && !its(team).liberos.empty() && !its(team).libero && !its(team).liberoServing;
    if (spare) {
        const ShirtNumber libero = its(team).liberos.back();
        its(team).liberos.pop_back();
        return substitute(team, slot, libero, SubstitutionKind::Exceptional);
    }
    const bool hers = its(team).libero || !its(team).liberos.empty();
    if (m_model.rules.fewerThanSix == FewerThanSix::VacantPlace && !(hers && liberoMay)) {
        const ShirtNumber out = its(team).inSlot(slot);
        its(team).outOfSet.insert(out);
        its(team).stood[slot].push_back(ShirtNumber());
        return add(PlaceVacated{team, out, QStringLiteral("nobody may come in")});
    }
    forfeit({team, ForfeitKind::Incomplete, m_dice.chance(700) ? Scope::Set : Scope::Match,
             QStringLiteral("fewer than six")});
}

void RandomPlay::timeOut(Team team) {
    if (its(team).timeOuts >= m_model.rules.timeOuts ||
        (m_model.afterReplay && !(m_model.rules.requestsInReplay && m_model.rules.requestsInReServe)))
        return;
    ++its(team).timeOuts;
    if (m_model.rules.secondRequest == SecondRequest::AfterRallyOrTimeOut)
        for (const Team each : bothTeams)
            its(each).requested = false;
    add(TimeOut{team});
}

void RandomPlay::improper(Team team) {
    if (m_model.rules.improperRequest != ImproperRequestRule::RecordedFirst || its(team).improperRequests > 0)
        return;
    ++its(team).improperRequests;
    add(ImproperRequest{team, QStringLiteral("asked after the whistle")});
}

void RandomPlay::lateReplacement(Team team) {
    if (m_model.rules.liberoLateReplacement == LateReplacementRule::DelayOrFault || its(team).lateReplacements > 0)
        return;
    ++its(team).lateReplacements;
    add(LateReplacement{team});
}

void RandomPlay::notes() {
    if (m_dice.chance(m_habits.remark))
        add(Remark{QStringLiteral("the light over court two flickers")});
    if (m_dice.chance(m_habits.compared))
        add(SheetCompared{m_dice.chance(900) ? QString() : QStringLiteral("the board shows one more")});
    if (m_dice.chance(m_habits.captain)) {
        const Team team = m_dice.anyTeam();
        const auto slot = static_cast<std::size_t>(m_dice.below(6));
        if (its(team).inSlot(slot).isValid() && !its(team).liberoIn(slot))
            add(CaptainNamed{team, its(team).inSlot(slot)});
    }
}

void RandomPlay::suspend() {
    m_model.phase = Phase::Suspended;
    add(Suspended{QStringLiteral("the lights went out")});
    if (m_dice.chance(300))
        add(Remark{QStringLiteral("twenty minutes")});
    bool again = m_model.rules.resumedElsewhere == Resumption::SetReplayed && m_dice.chance(500);
    for (const Team team : bothTeams) {
        again = again && !its(team).redesignated;
        for (const ShirtNumber number : its(team).lineUp.positions)
            again = again && !its(team).isOut(number);
    }
    m_model.phase = Phase::ReadyToServe;
    if (again)
        m_model.playAgain();
    add(Resumed{again ? GoOn::SetAgain : GoOn::AsItStood});
}

} // namespace setfolio::testing
