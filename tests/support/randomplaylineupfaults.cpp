// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplayfaults.h"

namespace setfolio::testing {
namespace {

bool lineUpIsDue(const Scene& scene) {
    return scene.beforeSet() && scene.play.hasSix(scene.team);
}

/// A line-up with one thing changed.
template <typename Change>
Entries lineUpWith(const Scene& scene, Change&& change) {
    if (!lineUpIsDue(scene))
        return {};
    LineUp lineUp = scene.play.anyLineUp(scene.team);
    change(lineUp);
    return {lineUp};
}

Entries rosterWith(const Scene& scene, std::initializer_list<ShirtNumber> numbers) {
    if (!scene.ready() && !scene.beforeSet())
        return {};
    Roster roster{scene.team, {}, {}};
    for (const ShirtNumber number : scene.own().players)
        roster.players.push_back({number, {}});
    for (const ShirtNumber number : numbers)
        roster.players.push_back({number, {}});
    return {roster};
}

Entries numberNotAllowed(const Scene& scene) {
    return rosterWith(scene, {ShirtNumber(0)});
}

Entries doubledInRoster(const Scene& scene) {
    return rosterWith(scene, {scene.dice.oneOf(scene.own().players)});
}

Entries rosterSettled(const Scene& scene) {
    const bool begun = std::ranges::any_of(scene.play.entries(), [](const Recorded& recorded) {
        return std::holds_alternative<SetStarted>(recorded.entry);
    });
    return begun && scene.play.hasRosters() ? rosterWith(scene, {scene.stranger()}) : Entries{};
}

Entries tooManyLiberos(const Scene& scene) {
    return lineUpWith(scene, [&](LineUp& lineUp) {
        while (static_cast<int>(lineUp.liberos.size()) <= scene.model().rules.maximumLiberos)
            lineUp.liberos.push_back(scene.stranger());
    });
}

Entries doubledInLineUp(const Scene& scene) {
    return lineUpWith(scene, [&](LineUp& lineUp) {
        const auto place = static_cast<std::size_t>(scene.dice.below(6));
        lineUp.positions[place] = lineUp.positions[(place + 1 + static_cast<std::size_t>(scene.dice.below(5))) % 6];
    });
}

Entries strangerInLineUp(const Scene& scene) {
    return scene.play.hasRosters()
               ? lineUpWith(scene,
                            [&](LineUp& lineUp) {
                                lineUp.positions[static_cast<std::size_t>(scene.dice.below(6))] = scene.stranger();
                            })
               : Entries{};
}

Entries liberoInLineUp(const Scene& scene) {
    return lineUpWith(scene, [&](LineUp& lineUp) { lineUp.liberos = {scene.dice.oneOf(lineUp.positions)}; });
}

Entries liberoNotOnRoster(const Scene& scene) {
    return scene.play.hasRosters() ? lineUpWith(scene, [&](LineUp& lineUp) { lineUp.liberos = {scene.stranger()}; })
                                   : Entries{};
}

Entries liberoNotOfMatch(const Scene& scene) {
    const std::optional<ShirtNumber> other = lineUpIsDue(scene) ? scene.fresh() : std::nullopt;
    if (!other || scene.model().set < 2 || scene.own().liberosOfMatch.empty())
        return {};
    return lineUpWith(scene, [&](LineUp& lineUp) {
        std::ranges::replace(lineUp.positions, *other, scene.stranger());
        lineUp.liberos = {*other};
    });
}

Entries captainNotInTeam(const Scene& scene) {
    return scene.play.hasRosters() ? lineUpWith(scene, [&](LineUp& lineUp) { lineUp.captain = scene.stranger(); })
                                   : Entries{};
}

Entries captainNotOnCourt(const Scene& scene) {
    const auto other =
        scene.ready() ? scene.oneWhere(scene.play.bench(scene.team), [](ShirtNumber) { return true; }) : std::nullopt;
    return other ? Entries{CaptainNamed{scene.team, *other}} : Entries{};
}

Entries captainIsLibero(const Scene& scene) {
    const auto libero = scene.ready() ? scene.someLibero() : std::nullopt;
    return libero ? Entries{CaptainNamed{scene.team, *libero}} : Entries{};
}

} // namespace

std::vector<Fault> lineUpFaults() {
    return {
        {SETFOLIO_FAULT(NumberNotAllowed), numberNotAllowed, [](Rulebook& rules) { rules.lowestNumber = 1; }},
        {SETFOLIO_FAULT(DoubledInRoster), doubledInRoster},
        {SETFOLIO_FAULT(RosterSettled), rosterSettled,
         [](Rulebook& rules) { rules.rosterChange = RosterChange::NotAllowed; }},
        {SETFOLIO_FAULT(RosterChangeCosts), rosterSettled,
         [](Rulebook& rules) { rules.rosterChange = RosterChange::PenaltyPoint; }},
        {SETFOLIO_FAULT(TooManyLiberos), tooManyLiberos},
        {SETFOLIO_FAULT(DoubledInLineUp), doubledInLineUp},
        {SETFOLIO_FAULT(StrangerInLineUp), strangerInLineUp},
        {SETFOLIO_FAULT(LiberoInLineUp), liberoInLineUp},
        {SETFOLIO_FAULT(LiberoNotOnRoster), liberoNotOnRoster},
        {SETFOLIO_FAULT(LiberoNotOfMatch), liberoNotOfMatch,
         [](Rulebook& rules) { rules.liberoNamedFor = Scope::Match; }},
        {SETFOLIO_FAULT(NoLiberoThisSet), liberoNotOnRoster,
         [](Rulebook& rules) { rules.liberoNumberWrong = LiberoNumberWrong::NoLibero; }},
        {SETFOLIO_FAULT(CaptainNotInTeam), captainNotInTeam},
        {SETFOLIO_FAULT(CaptainNotOnCourt), captainNotOnCourt},
        {SETFOLIO_FAULT(CaptainIsLibero), captainIsLibero, [](Rulebook& rules) { rules.liberoCaptain = false; }},
    };
}

} // namespace setfolio::testing
