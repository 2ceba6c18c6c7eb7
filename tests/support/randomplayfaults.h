// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// For each kind of finding that the referee may overrule, a way to put such an entry into a lawful match.
#pragma once

#include "core/rules/findingkind.h"
#include "tests/support/randomplay.h"

#include <algorithm>
#include <chrono>

namespace setfolio::testing {

using Entries = std::vector<Entry>;

/// A moment of a match, seen from one of the teams.
struct Scene {
    RandomPlay& play;
    Dice& dice;
    Team team = Team::Home;

    [[nodiscard]] const Model& model() const { return play.model(); }
    [[nodiscard]] const ModelTeam& own() const { return model().teams[team]; }
    [[nodiscard]] bool ready() const { return model().phase == Phase::ReadyToServe; }
    [[nodiscard]] bool beforeSet() const { return model().phase == Phase::BeforeSet; }
    [[nodiscard]] bool serving() const { return ready() && model().serving == team; }
    /// No set can end by a point or two.
    [[nodiscard]] bool farFromTheEnd() const {
        const auto& teams = model().teams;
        return std::max(teams.home.points, teams.visitors.points) < model().needed() - 3;
    }

    /// A number that nobody of the team wears.
    [[nodiscard]] ShirtNumber stranger() const;
    /// Slots that hold what is asked of them, in any order; a slot's player is on court unless `free` is false.
    template <typename Holds>
    [[nodiscard]] std::optional<std::size_t> slotWhere(Holds&& holds) const {
        std::array<std::size_t, 6> slots{0, 1, 2, 3, 4, 5};
        dice.shuffle(slots);
        const auto slot = std::ranges::find_if(slots, holds);
        return slot == slots.end() ? std::nullopt : std::optional(*slot);
    }
    /// A slot whose player stands on court herself.
    [[nodiscard]] std::optional<std::size_t> anySlot() const;
    /// The same in the back row (false) or in the front row (true).
    [[nodiscard]] std::optional<std::size_t> slotOfRow(bool front) const;
    /// A number of the list that holds what is asked.
    template <typename Holds>
    [[nodiscard]] std::optional<ShirtNumber> oneWhere(const Numbers& numbers, Holds&& holds) const {
        Numbers fit;
        std::ranges::copy_if(numbers, std::back_inserter(fit), holds);
        return fit.empty() ? std::nullopt : std::optional(dice.oneOf(fit));
    }
    /// Somebody of the bench who has not stood in any slot.
    [[nodiscard]] std::optional<ShirtNumber> fresh() const;
    [[nodiscard]] std::optional<ShirtNumber> someLibero() const;
};

/// Changes a rulebook so that the kind can be met in it.
using Adapt = void (*)(Rulebook&);
/// Entries of which only the last is unlawful; none if such an entry has no place in the scene.
using MakeFault = Entries (*)(const Scene&);

struct Fault {
    FindingKind kind = FindingKind::NumberNotAllowed;
    const char* name = ""; ///< the enumerator's
    MakeFault make = nullptr;
    Adapt adapt = nullptr;            ///< none: every published rulebook has it
    std::chrono::hours beforeLast{0}; ///< the unlawful entry comes so much later than the one before it
};

[[nodiscard]] std::vector<Fault> lineUpFaults();
[[nodiscard]] std::vector<Fault> substitutionFaults();
[[nodiscard]] std::vector<Fault> serveFaults();
[[nodiscard]] std::vector<Fault> liberoFaults();
[[nodiscard]] std::vector<Fault> sanctionFaults();
[[nodiscard]] std::vector<Fault> frameFaults();
[[nodiscard]] std::vector<Fault> allFaults();

/// Plays a match up to `most` steps, and on to the first moment that has a place for the fault; its entries, not yet
/// put in, or none.
[[nodiscard]] Entries playTo(const Fault& fault, RandomPlay& play, Dice& dice, int most);

} // namespace setfolio::testing

/// A row of a table of faults: kind and name in one.
#define SETFOLIO_FAULT(kind) setfolio::FindingKind::kind, #kind
