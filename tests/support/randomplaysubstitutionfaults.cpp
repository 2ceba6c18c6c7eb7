// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplayfaults.h"

namespace setfolio::testing {
namespace {

Entries pair(const Scene& scene, std::optional<ShirtNumber> in, std::optional<std::size_t> slot,
             SubstitutionKind kind = SubstitutionKind::Regular) {
    if (!scene.ready() || !in || !slot)
        return {};
    return {Substitution{scene.team, *in, scene.own().inSlot(*slot), kind}};
}

std::optional<ShirtNumber> anyOfBench(const Scene& scene) {
    return scene.oneWhere(scene.play.bench(scene.team), [](ShirtNumber) { return true; });
}

/// A lawful pair of this moment.
Entries lawfulPair(const Scene& scene) {
    if (!scene.ready() || !scene.play.mayRequest(scene.team) || scene.own().requested)
        return {};
    const auto slot = scene.slotWhere([&](std::size_t each) {
        return !scene.own().liberoIn(each) && !scene.play.regularFor(scene.team, each).empty();
    });
    return slot ? pair(scene, scene.dice.oneOf(scene.play.regularFor(scene.team, *slot)), slot) : Entries{};
}

std::optional<ShirtNumber> sentOff(const Scene& scene) {
    Numbers numbers;
    for (const CardHad& card : scene.own().cards)
        if (const auto* number = std::get_if<ShirtNumber>(&card.who);
            number && (card.level == SanctionLevel::Disqualification ||
                       (card.level == SanctionLevel::Expulsion && card.set == scene.model().set)))
            numbers.push_back(*number);
    return scene.oneWhere(numbers, [&](ShirtNumber number) { return !scene.own().standsIn(number); });
}

Entries sentOffComesIn(const Scene& scene) {
    return pair(scene, sentOff(scene), scene.anySlot());
}

Entries replacedForGoodComesIn(const Scene& scene) {
    const auto& out = scene.own().replacedForGood;
    const std::optional<ShirtNumber> off = sentOff(scene);
    return pair(scene, scene.oneWhere(Numbers(out.begin(), out.end()), [&](ShirtNumber) { return !off; }),
                scene.anySlot());
}

Entries givenUpComesIn(const Scene& scene) {
    const auto& out = scene.own().givenUp;
    return pair(scene, scene.oneWhere(Numbers(out.begin(), out.end()), [](ShirtNumber) { return true; }),
                scene.anySlot());
}

Entries substituteNotOnRoster(const Scene& scene) {
    return scene.play.hasRosters() ? pair(scene, scene.stranger(), scene.anySlot()) : Entries{};
}

Entries substituteOnCourt(const Scene& scene) {
    const auto slot = scene.ready() ? scene.anySlot() : std::nullopt;
    const auto other = scene.slotWhere([&](std::size_t each) {
        return each != slot && scene.own().inSlot(each).isValid() && !scene.own().liberoIn(each);
    });
    return slot && other ? pair(scene, scene.own().inSlot(*other), slot) : Entries{};
}

Entries substituteIsLibero(const Scene& scene) {
    return pair(scene, scene.someLibero(), scene.anySlot());
}

Entries substituteOffForLibero(const Scene& scene) {
    if (!scene.ready() || !scene.own().libero)
        return {};
    return pair(scene, scene.own().inSlot(scene.own().libero->slot.index()), scene.anySlot());
}

Entries outOffForLibero(const Scene& scene) {
    if (!scene.ready() || !scene.own().libero)
        return {};
    return pair(scene, anyOfBench(scene), scene.own().libero->slot.index());
}

Entries wrongSlot(const Scene& scene) {
    const auto bound = scene.oneWhere(scene.play.bench(scene.team),
                                      [&](ShirtNumber number) { return scene.own().boundTo(number).has_value(); });
    return pair(scene, bound, scene.slotWhere([&](std::size_t slot) {
        return bound && scene.own().boundTo(*bound) != slot && scene.own().inSlot(slot).isValid() &&
               !scene.own().liberoIn(slot) && !scene.own().exceptional[slot];
    }));
}

Entries notHerPartner(const Scene& scene) {
    return pair(scene, scene.fresh(), scene.slotWhere([&](std::size_t slot) {
        const Numbers& stood = scene.own().stood[slot];
        return stood.size() == 2 && !scene.own().exceptional[slot] && !scene.own().liberoIn(slot) &&
               holds(scene.play.bench(scene.team), stood.front());
    }));
}

Entries slotUsedUp(const Scene& scene) {
    return pair(scene, scene.fresh(), scene.slotWhere([&](std::size_t slot) {
        return scene.own().stood[slot].size() == 3 && scene.own().inSlot(slot).isValid() &&
               !scene.own().exceptional[slot] && !scene.own().liberoIn(slot);
    }));
}

Entries playersPerSlot(const Scene& scene) {
    return pair(scene, scene.fresh(), scene.slotWhere([&](std::size_t slot) {
        const Numbers& stood = scene.own().stood[slot];
        return std::set<ShirtNumber>(stood.begin(), stood.end()).size() == 2 && scene.own().inSlot(slot).isValid() &&
               !scene.own().liberoIn(slot);
    }));
}

Entries substitutionLimit(const Scene& scene) {
    const bool used = scene.own().substitutions >= scene.model().rules.substitutionLimit;
    return used ? pair(scene, anyOfBench(scene), scene.anySlot()) : Entries{};
}

Entries secondRequest(const Scene& scene) {
    Entries entries = lawfulPair(scene);
    if (entries.empty() || scene.own().timeOuts >= scene.model().rules.timeOuts)
        return {};
    const Entry again = entries.front();
    entries.push_back(TimeOut{scene.team});
    const auto& first = std::get<Substitution>(again);
    entries.push_back(Substitution{scene.team, first.out, first.in});
    return entries;
}

Entries substitutionBarred(const Scene& scene) {
    const Entries lawful = lawfulPair(scene);
    if (lawful.empty() || scene.play.delaysCounted(scene.team) > 0)
        return {};
    return {DelaySanction{scene.team, DelayLevel::Warning, {}}, lawful.front()};
}

Entries substitutionBeforeStart(const Scene& scene) {
    const auto& teams = scene.model().teams;
    if (!scene.beforeSet() || !scene.model().servesFirst || !teams.home.lineUpGiven || !teams.visitors.lineUpGiven)
        return {};
    const auto in = anyOfBench(scene);
    return in ? Entries{Substitution{scene.team, *in, scene.own().lineUp.positions[3]}} : Entries{};
}

Entries requestBeforeRepeat(const Scene& scene) {
    if (!scene.ready() || scene.own().timeOuts >= scene.model().rules.timeOuts)
        return {};
    return {Replay{Again::Replay}, TimeOut{scene.team}};
}

Entries regularSubstituteLeft(const Scene& scene) {
    const auto slot = scene.slotWhere([&](std::size_t each) {
        return !scene.own().liberoIn(each) && !scene.play.regularFor(scene.team, each).empty();
    });
    return pair(scene, anyOfBench(scene), slot, SubstitutionKind::Exceptional);
}

Entries liberoComesLast(const Scene& scene) {
    return anyOfBench(scene) ? pair(scene, scene.someLibero(), scene.anySlot(), SubstitutionKind::Exceptional)
                             : Entries{};
}

Entries vacated(const Scene& scene, std::optional<std::size_t> slot) {
    return scene.ready() && slot ? Entries{PlaceVacated{scene.team, scene.own().inSlot(*slot), {}}} : Entries{};
}

Entries fewerThanSixNotAllowed(const Scene& scene) {
    return vacated(scene, scene.anySlot());
}

Entries substituteLeft(const Scene& scene) {
    return vacated(scene, scene.slotWhere([&](std::size_t slot) {
        return !scene.own().liberoIn(slot) && !scene.play.regularFor(scene.team, slot).empty();
    }));
}

void onceOutOnceBack(Rulebook& rules) {
    rules.substitutionRule = SubstitutionRule::OnceOutOnceBack;
}

} // namespace

std::vector<Fault> substitutionFaults() {
    return {
        {SETFOLIO_FAULT(SentOff), sentOffComesIn},
        {SETFOLIO_FAULT(ReplacedForGood), replacedForGoodComesIn},
        {SETFOLIO_FAULT(GivenUpAsLibero), givenUpComesIn},
        {SETFOLIO_FAULT(SubstituteNotOnRoster), substituteNotOnRoster},
        {SETFOLIO_FAULT(SubstituteOnCourt), substituteOnCourt},
        {SETFOLIO_FAULT(SubstituteIsLibero), substituteIsLibero},
        {SETFOLIO_FAULT(SubstituteOffForLibero), substituteOffForLibero},
        {SETFOLIO_FAULT(OutOffForLibero), outOffForLibero},
        {SETFOLIO_FAULT(WrongSlot), wrongSlot},
        {SETFOLIO_FAULT(NotHerPartner), notHerPartner, onceOutOnceBack},
        {SETFOLIO_FAULT(SlotUsedUp), slotUsedUp, onceOutOnceBack},
        {SETFOLIO_FAULT(PlayersPerSlot), playersPerSlot,
         [](Rulebook& rules) {
             rules.substitutionRule = SubstitutionRule::OwnSlot;
             rules.playersPerSlot = 2;
         }},
        {SETFOLIO_FAULT(SubstitutionLimit), substitutionLimit},
        {SETFOLIO_FAULT(SecondRequest), secondRequest,
         [](Rulebook& rules) { rules.secondRequest = SecondRequest::AfterRally; }},
        {SETFOLIO_FAULT(SubstitutionBarred), substitutionBarred},
        {SETFOLIO_FAULT(SubstitutionBeforeStart), substitutionBeforeStart,
         [](Rulebook& rules) { rules.substitutionBeforeStart = false; }},
        {SETFOLIO_FAULT(RequestBeforeRepeat), requestBeforeRepeat,
         [](Rulebook& rules) { rules.requestsInReplay = rules.requestsInReServe = false; }},
        {SETFOLIO_FAULT(RegularSubstituteLeft), regularSubstituteLeft},
        {SETFOLIO_FAULT(LiberoComesLast), liberoComesLast,
         [](Rulebook& rules) { rules.exceptionalLibero = ExceptionalLibero::Last; }},
        {SETFOLIO_FAULT(FewerThanSixNotAllowed), fewerThanSixNotAllowed,
         [](Rulebook& rules) { rules.fewerThanSix = FewerThanSix::Incomplete; }},
        {SETFOLIO_FAULT(SubstituteLeft), substituteLeft},
    };
}

} // namespace setfolio::testing
