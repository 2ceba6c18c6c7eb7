// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplayfaults.h"

namespace setfolio::testing {
namespace {

Entries comesInFor(const Scene& scene, std::optional<ShirtNumber> libero, std::optional<std::size_t> slot) {
    if (!scene.ready() || !libero || !slot)
        return {};
    return {LiberoIn{scene.team, *libero, scene.own().inSlot(*slot)}};
}

Entries notALibero(const Scene& scene) {
    return scene.own().libero ? Entries{} : comesInFor(scene, scene.fresh(), scene.slotOfRow(false));
}

Entries alreadyOnCourt(const Scene& scene) {
    return scene.own().libero ? comesInFor(scene, scene.someLibero(), scene.slotOfRow(false)) : Entries{};
}

Entries forFrontRow(const Scene& scene) {
    return scene.own().libero ? Entries{} : comesInFor(scene, scene.someLibero(), scene.slotOfRow(true));
}

bool mayMove(const Scene& scene) {
    return scene.ready() && scene.play.keepsLiberoRecord() && !scene.model().afterReplay &&
           scene.own().liberoMovedAfter < scene.model().completed;
}

/// In and out again, or out and in again, in one dead ball; not in position 1, where she might come in to serve.
Entries withoutRallyBetween(const Scene& scene) {
    if (!mayMove(scene))
        return {};
    const auto place = scene.slotWhere([&](std::size_t slot) {
        return scene.own().positionOf(slot) >= 4 && scene.own().inSlot(slot).isValid() && !scene.own().liberoIn(slot);
    });
    if (!scene.own().libero) {
        Entries entries = comesInFor(scene, scene.someLibero(), place);
        if (!entries.empty())
            entries.push_back(LiberoOut{scene.team, std::get<LiberoIn>(entries.front()).libero});
        return entries;
    }
    const ShirtNumber libero = scene.own().libero->libero;
    if (!place)
        return {};
    return {LiberoOut{scene.team, libero}, LiberoIn{scene.team, libero, scene.own().inSlot(*place)}};
}

Entries comesInForSentOff(const Scene& scene) {
    const auto slot = scene.own().libero || !scene.farFromTheEnd() ? std::nullopt : scene.slotOfRow(false);
    Entries entries = comesInFor(scene, scene.someLibero(), slot);
    if (!entries.empty())
        entries.insert(entries.begin(),
                       Sanction{scene.team, scene.own().inSlot(*slot), SanctionLevel::Disqualification, {}});
    return entries;
}

Entries lateReplacementIsDelay(const Scene& scene) {
    if (!scene.ready())
        return {};
    const bool letPass = scene.model().rules.liberoLateReplacement != LateReplacementRule::DelayOrFault &&
                         scene.own().lateReplacements == 0;
    return Entries(letPass ? 2 : 1, LateReplacement{scene.team});
}

Entries exchangeNotAllowed(const Scene& scene) {
    const auto& libero = scene.own().libero;
    if (!scene.ready() || !libero)
        return {};
    const auto other = scene.oneWhere(scene.own().liberos, [&](ShirtNumber n) { return n != libero->libero; });
    return other ? Entries{LiberoExchange{scene.team, *other, libero->libero}} : Entries{};
}

Entries redesignated(const Scene& scene, std::optional<ShirtNumber> libero) {
    const auto former = scene.ready() ? scene.someLibero() : std::nullopt;
    return former && libero ? Entries{LiberoRedesignated{scene.team, *former, libero, {}}} : Entries{};
}

Entries redesignationNotAllowed(const Scene& scene) {
    return redesignated(scene, scene.fresh());
}

Entries newLiberoOnCourt(const Scene& scene) {
    const auto slot = scene.ready() ? scene.anySlot() : std::nullopt;
    return slot ? redesignated(scene, scene.own().inSlot(*slot)) : Entries{};
}

} // namespace

std::vector<Fault> liberoFaults() {
    return {
        {SETFOLIO_FAULT(NotALibero), notALibero},
        {SETFOLIO_FAULT(LiberoAlreadyOnCourt), alreadyOnCourt},
        {SETFOLIO_FAULT(LiberoForFrontRow), forFrontRow},
        {SETFOLIO_FAULT(LiberoRallyBetween), withoutRallyBetween},
        {SETFOLIO_FAULT(LiberoExchangeNotAllowed), exchangeNotAllowed,
         [](Rulebook& rules) { rules.liberoReplacedBy = LiberoReplacedBy::SamePlayer; }},
        {SETFOLIO_FAULT(RedesignationNotAllowed), redesignationNotAllowed,
         [](Rulebook& rules) { rules.liberoRedesignation = Redesignation::NoRedesignation; }},
        {SETFOLIO_FAULT(NewLiberoOnCourt), newLiberoOnCourt},
        {SETFOLIO_FAULT(LiberoForSentOff), comesInForSentOff},
        {SETFOLIO_FAULT(LateReplacementIsDelay), lateReplacementIsDelay},
    };
}

} // namespace setfolio::testing
