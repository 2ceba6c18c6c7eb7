// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplayfaults.h"

namespace setfolio::testing {
namespace {

/// Whether sanctions are given at all now.
bool inTheMatch(const Scene& scene) {
    return scene.ready() || scene.beforeSet();
}

bool counts(const Scene& scene, const CardHad& card) {
    return scene.model().rules.conductScope == Scope::Match || card.set == scene.model().countsIn();
}

Entries levelNotOnLadder(const Scene& scene) {
    if (!inTheMatch(scene))
        return {};
    return {Sanction{scene.team, BenchRole::Doctor, SanctionLevel::Expulsion, {}}};
}

Entries sanctionNotHigher(const Scene& scene) {
    Entries entries;
    for (const CardHad& card : scene.own().cards)
        if (inTheMatch(scene) && counts(scene, card) && card.level <= SanctionLevel::Penalty &&
            scene.play.nextCard(scene.team, card.who))
            entries = {Sanction{scene.team, card.who, card.level, {}}};
    return entries;
}

Entries teamWarnedAlready(const Scene& scene) {
    const bool warned = std::ranges::any_of(scene.own().cards, [&](const CardHad& card) {
        return counts(scene, card) && card.level == SanctionLevel::Warning;
    });
    const bool other = std::ranges::none_of(scene.own().cards,
                                            [](const CardHad& card) { return card.who == Member(BenchRole::Other); });
    if (!inTheMatch(scene) || !warned || !other)
        return {};
    return {Sanction{scene.team, BenchRole::Other, SanctionLevel::Warning, {}}};
}

Entries sentOffAlready(const Scene& scene) {
    Entries entries;
    for (const CardHad& card : scene.own().cards)
        if (inTheMatch(scene) && card.level == SanctionLevel::Disqualification)
            entries = {Sanction{scene.team, card.who, scene.dice.oneOf(scene.model().rules.conductLadder).level, {}}};
    return entries;
}

Entries sanctionedStranger(const Scene& scene) {
    if (!inTheMatch(scene) || !scene.play.hasRosters())
        return {};
    return {Sanction{scene.team, scene.stranger(), SanctionLevel::Penalty, {}}};
}

Entries delayNotNext(const Scene& scene) {
    if (!inTheMatch(scene) || scene.own().lateReplacements > 0) // after one let pass a penalty comes at once
        return {};
    const bool warned = scene.play.delaysCounted(scene.team) > 0;
    return {DelaySanction{scene.team, warned ? DelayLevel::Warning : DelayLevel::Penalty, {}}};
}

Entries improperRequestIsDelay(const Scene& scene) {
    if (!scene.ready())
        return {};
    const bool letPass =
        scene.model().rules.improperRequest == ImproperRequestRule::RecordedFirst && scene.own().improperRequests == 0;
    return Entries(letPass ? 2 : 1, ImproperRequest{scene.team, {}});
}

} // namespace

std::vector<Fault> sanctionFaults() {
    return {
        {SETFOLIO_FAULT(LevelNotOnLadder), levelNotOnLadder,
         [](Rulebook& rules) {
             std::erase_if(rules.conductLadder, [](const CardStep& s) { return s.level == SanctionLevel::Expulsion; });
         }},
        {SETFOLIO_FAULT(SanctionNotHigher), sanctionNotHigher},
        {SETFOLIO_FAULT(TeamWarnedAlready), teamWarnedAlready,
         [](Rulebook& rules) { rules.conductWarnedOnce = WarnedOnce::Team; }},
        {SETFOLIO_FAULT(SentOffAlready), sentOffAlready},
        {SETFOLIO_FAULT(SanctionedStranger), sanctionedStranger},
        {SETFOLIO_FAULT(DelayNotNext), delayNotNext},
        {SETFOLIO_FAULT(ImproperRequestIsDelay), improperRequestIsDelay},
    };
}

} // namespace setfolio::testing
