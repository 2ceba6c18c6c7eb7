// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplay.h"

#include <algorithm>

namespace setfolio::testing {

std::optional<SanctionLevel> RandomPlay::nextCard(Team team, const Member& who) const {
    const Rulebook& rules = m_model.rules;
    std::optional<SanctionLevel> last;
    bool warned = false;
    for (const CardHad& card : its(team).cards) {
        const bool gone = card.level == SanctionLevel::Disqualification ||
                          (card.level == SanctionLevel::Expulsion && card.set >= m_model.set);
        if (card.who == who && gone)
            return std::nullopt;
        if (rules.conductScope == Scope::Set && card.set != m_model.countsIn())
            continue;
        warned = warned || card.level == SanctionLevel::Warning;
        if (card.who == who)
            last = std::max(last.value_or(card.level), card.level);
    }
    if (!last && !(warned && rules.conductWarnedOnce == WarnedOnce::Team))
        return rules.conductLadder.front().level;
    const SanctionLevel below = last.value_or(SanctionLevel::Warning);
    const auto higher = std::ranges::find_if(rules.conductLadder, [&](const CardStep& s) { return s.level > below; });
    return higher == rules.conductLadder.end() ? std::nullopt : std::optional(higher->level);
}

int RandomPlay::delaysCounted(Team team) const {
    const std::vector<int>& delays = its(team).delays;
    if (m_model.rules.delayScope == Scope::Match)
        return static_cast<int>(delays.size());
    return static_cast<int>(std::ranges::count(delays, m_model.countsIn()));
}

void RandomPlay::card(Team team) {
    const ShirtNumber number = m_dice.oneOf(its(team).players);
    const bool ofBench = m_dice.chance(300);
    const Member who = ofBench ? Member(m_dice.chance(700) ? BenchRole::Coach : BenchRole::Therapist) : Member(number);
    const std::optional<SanctionLevel> next = nextCard(team, who);
    if (!next || (!ofBench && its(team).isOut(number)))
        return;
    SanctionLevel level = *next;
    if (m_dice.chance(200)) // what is grave enough is not warned of first
        level = std::max(level, m_dice.oneOf(m_model.rules.conductLadder).level);
    const bool sendsOff = level >= SanctionLevel::Expulsion;
    const bool libero = holds(its(team).liberos, number) || holds(its(team).liberosOfMatch, number) ||
                        holds(its(team).lineUp.liberos, number);
    const std::optional<std::size_t> slot = its(team).standsIn(number);
    // Who is sent off is replaced even after the team's request (FIVB Official Volleyball Rules 2025-2028, 15.2.3).
    const bool settled = !its(team).barred && !m_model.afterReplay && !(slot && its(team).liberoIn(*slot));
    const bool answered = !slot || isAnswered(team, *slot, true);
    if (ofBench || !sendsOff || (!libero && settled && answered))
        give({team, who, level, QStringLiteral("words to the referee")});
}

void RandomPlay::give(const Sanction& sanction) {
    const std::optional<SanctionLevel> lowest = nextCard(sanction.team, sanction.who);
    if (!lowest || sanction.level < *lowest)
        return;
    ModelTeam& own = its(sanction.team);
    own.cards.push_back({sanction.who, sanction.level, m_model.countsIn()});
    const auto rung = std::ranges::find(m_model.rules.conductLadder, sanction.level, &CardStep::level);
    if (rung->point)
        m_model.penaltyFor(sanction.team, next());
    add(sanction);
    const auto* number = std::get_if<ShirtNumber>(&sanction.who);
    if (!number || sanction.level < SanctionLevel::Expulsion)
        return;
    (sanction.level == SanctionLevel::Expulsion ? own.outOfSet : own.outOfMatch).insert(*number);
    if (const auto slot = own.standsIn(*number); slot && ready())
        leaves(sanction.team, *slot, true);
}

void RandomPlay::delay(Team team) {
    const DelayLevel level = delaysCounted(team) > 0 ? DelayLevel::Penalty : DelayLevel::Warning;
    its(team).delays.push_back(m_model.countsIn());
    its(team).barred = true;
    if (level == DelayLevel::Penalty)
        m_model.penaltyFor(team, next());
    add(DelaySanction{team, level, QStringLiteral("slow to the court")});
}

} // namespace setfolio::testing
