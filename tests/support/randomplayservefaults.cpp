// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplayfaults.h"

namespace setfolio::testing {
namespace {

Entries vacantServer(const Scene& scene) {
    return scene.ready() && !scene.model().server().isValid() ? Entries{ServeContacted{}} : Entries{};
}

Entries sentOffOnCourt(const Scene& scene) {
    const auto slot = scene.ready() && scene.farFromTheEnd() ? scene.anySlot() : std::nullopt;
    if (!slot || !scene.model().server().isValid())
        return {};
    return {Sanction{scene.team, scene.own().inSlot(*slot), SanctionLevel::Disqualification, {}}, ServeContacted{}};
}

Entries liberoInFrontRow(const Scene& scene) {
    const auto& libero = scene.own().libero;
    const bool front = scene.ready() && libero && scene.own().isFrontRow(libero->slot.index());
    return front ? Entries{ServeContacted{}} : Entries{};
}

Entries liberoServes(const Scene& scene) {
    const auto libero = scene.serving() ? scene.someLibero() : std::nullopt;
    return libero ? Entries{LiberoServe{scene.team, *libero, LiberoServing::Begins}} : Entries{};
}

Entries liberoSecondSlot(const Scene& scene) {
    const auto& served = scene.own().liberoServes;
    return served && *served != scene.own().places[0] ? liberoServes(scene) : Entries{};
}

Entries serverIsNotLibero(const Scene& scene) {
    const auto other =
        scene.serving() ? scene.oneWhere(scene.play.bench(scene.team), [](ShirtNumber) { return true; }) : std::nullopt;
    return other ? Entries{LiberoServe{scene.team, *other, LiberoServing::Begins}} : Entries{};
}

/// Somebody on court who is not to serve.
std::optional<ShirtNumber> notTheServer(const Scene& scene) {
    const auto slot = scene.slotWhere([&](std::size_t each) {
        return each != scene.own().places[0] && scene.own().inSlot(each).isValid() && !scene.own().liberoIn(each);
    });
    return slot ? std::optional(scene.own().inSlot(*slot)) : std::nullopt;
}

Entries wrongServerUnruled(const Scene& scene) {
    const auto other = scene.serving() ? notTheServer(scene) : std::nullopt;
    return other ? Entries{ServerSeen{*other}, RallyWon{scene.dice.anyTeam()}} : Entries{};
}

Entries servedRightly(const Scene& scene) {
    const bool there = scene.serving() && scene.model().server().isValid();
    return there ? Entries{WrongServer{scene.team, scene.model().server(), std::nullopt}} : Entries{};
}

Entries notServedYet(const Scene& scene) {
    const auto& points = scene.model().points;
    const bool opensTerm = points.empty() || points.back().term < scene.model().term;
    const auto other = scene.serving() && opensTerm && !scene.model().afterReplay ? notTheServer(scene) : std::nullopt;
    return other ? Entries{WrongServer{scene.team, *other, std::nullopt}} : Entries{};
}

/// A ruling that takes points back from a point of the team that `holds`.
template <typename Holds>
Entries takenBack(const Scene& scene, Holds&& holds) {
    std::vector<std::uint32_t> points;
    for (const ModelPoint& point : scene.model().points)
        if (point.team == scene.team && holds(point))
            points.push_back(point.entry);
    const auto other = scene.ready() ? notTheServer(scene) : std::nullopt;
    if (points.empty() || !other)
        return {};
    return {WrongServer{scene.team, *other, EntryNumber(scene.dice.oneOf(points))}};
}

Entries pointsStand(const Scene& scene) {
    return takenBack(scene, [](const ModelPoint&) { return true; });
}

Entries takenBackTooMuch(const Scene& scene) {
    return takenBack(scene, [&](const ModelPoint& point) { return point.term + 1 < scene.model().term; });
}

Entries takenBackTooLate(const Scene& scene) {
    const auto& points = scene.model().points;
    const bool served = !points.empty() && points.back().term == scene.model().term && points.back().ownServe &&
                        points.back().team != scene.team;
    return served && !scene.serving() ? takenBack(scene, [](const ModelPoint&) { return true; }) : Entries{};
}

/// A time-out in a term that is then taken back from its first point on.
Entries requestsGoToo(const Scene& scene) {
    const auto& points = scene.model().points;
    const bool won = !points.empty() && points.back().term == scene.model().term && points.back().ownServe;
    const bool timeOutLeft = scene.own().timeOuts < scene.model().rules.timeOuts;
    const auto other =
        scene.serving() && won && timeOutLeft && !scene.model().afterReplay ? notTheServer(scene) : std::nullopt;
    return other ? Entries{TimeOut{scene.team}, WrongServer{scene.team, *other, EntryNumber(points.back().entry)}}
                 : Entries{};
}

Entries playNotResumed(const Scene& scene) {
    const auto slot = scene.ready() && scene.model().points.empty() ? scene.anySlot() : std::nullopt;
    return slot ? Entries{IllegalPlayer{scene.team, scene.own().inSlot(*slot), {}, {}}} : Entries{};
}

Entries illegalPlayerStays(const Scene& scene) {
    const auto slot = scene.slotWhere([&](std::size_t each) {
        return scene.own().stood[each].size() > 1 && scene.own().inSlot(each) == scene.own().stood[each].back();
    });
    const bool played = scene.ready() && scene.farFromTheEnd() && !scene.model().points.empty();
    if (!played || !slot || !scene.own().inSlot(*slot).isValid())
        return {};
    return {IllegalPlayer{scene.team, scene.own().inSlot(*slot), IllegalBy::Substitution, {}}, ServeContacted{}};
}

Entries serverNotOnRoster(const Scene& scene) {
    return scene.serving() ? Entries{ServerSeen{scene.stranger()}} : Entries{};
}

Entries reServeLimit(const Scene& scene) {
    if (!scene.serving())
        return {};
    const int allowed = scene.model().rules.reServesPerTerm - scene.own().reServes;
    return Entries(static_cast<std::size_t>(allowed) + 1, Replay{Again::ReServe});
}

} // namespace

std::vector<Fault> serveFaults() {
    return {
        {SETFOLIO_FAULT(VacantServer), vacantServer,
         [](Rulebook& rules) { rules.fewerThanSix = FewerThanSix::VacantPlace; }},
        {SETFOLIO_FAULT(SentOffOnCourt), sentOffOnCourt},
        {SETFOLIO_FAULT(LiberoInFrontRow), liberoInFrontRow},
        {SETFOLIO_FAULT(LiberoMayNotServe), liberoServes,
         [](Rulebook& rules) { rules.liberoServe = LiberoServeRule::Never; }},
        {SETFOLIO_FAULT(LiberoSecondSlot), liberoSecondSlot,
         [](Rulebook& rules) { rules.liberoServe = LiberoServeRule::OneSlot; }},
        {SETFOLIO_FAULT(ServerIsNotLibero), serverIsNotLibero},
        {SETFOLIO_FAULT(WrongServerUnruled), wrongServerUnruled},
        {SETFOLIO_FAULT(ServedRightly), servedRightly},
        {SETFOLIO_FAULT(NotServedYet), notServedYet},
        {SETFOLIO_FAULT(PointsStand), pointsStand,
         [](Rulebook& rules) { rules.wrongServerPoints = TakenBack::NoPoints; }},
        {SETFOLIO_FAULT(TakenBackTooMuch), takenBackTooMuch,
         [](Rulebook& rules) { rules.wrongServerPoints = TakenBack::PresentTerm; }},
        {SETFOLIO_FAULT(TakenBackTooLate), takenBackTooLate,
         [](Rulebook& rules) { rules.wrongServerUntil = TakenBackUntil::NextServeContact; }},
        {SETFOLIO_FAULT(RequestsGoToo), requestsGoToo,
         [](Rulebook& rules) {
             rules.wrongServerRequests = true;
             rules.wrongServerPoints = TakenBack::PresentTerm;
         }},
        {SETFOLIO_FAULT(PlayNotResumed), playNotResumed},
        {SETFOLIO_FAULT(IllegalPlayerStays), illegalPlayerStays},
        {SETFOLIO_FAULT(ServerNotOnRoster), serverNotOnRoster},
        {SETFOLIO_FAULT(ReServeLimit), reServeLimit},
    };
}

} // namespace setfolio::testing
