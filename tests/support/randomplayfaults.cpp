// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplayfaults.h"

namespace setfolio::testing {

ShirtNumber Scene::stranger() const {
    for (;;) {
        const ShirtNumber number(model().rules.lowestNumber + dice.below(90));
        if (!holds(own().players, number))
            return number;
    }
}

std::optional<std::size_t> Scene::anySlot() const {
    return slotWhere([this](std::size_t slot) { return own().inSlot(slot).isValid() && !own().liberoIn(slot); });
}

std::optional<std::size_t> Scene::slotOfRow(bool front) const {
    return slotWhere([this, front](std::size_t slot) {
        return own().inSlot(slot).isValid() && !own().liberoIn(slot) && own().isFrontRow(slot) == front;
    });
}

std::optional<ShirtNumber> Scene::fresh() const {
    return oneWhere(play.bench(team), [this](ShirtNumber number) { return !own().boundTo(number); });
}

std::optional<ShirtNumber> Scene::someLibero() const {
    return oneWhere(own().liberos, [this](ShirtNumber number) { return !own().standsIn(number); });
}

std::vector<Fault> allFaults() {
    std::vector<Fault> all;
    for (const auto& faults :
         {lineUpFaults(), substitutionFaults(), serveFaults(), liberoFaults(), sanctionFaults(), frameFaults()})
        all.insert(all.end(), faults.begin(), faults.end());
    return all;
}

Entries playTo(const Fault& fault, RandomPlay& play, Dice& dice, int most) {
    for (int steps = dice.below(most); steps > 0 && play.step(); --steps) {
    }
    do {
        const Team team = dice.anyTeam();
        for (const Team each : {team, opponentsOf(team)}) {
            Entries entries = fault.make({play, dice, each});
            if (!entries.empty())
                return entries;
        }
    } while (play.step());
    return {};
}

} // namespace setfolio::testing
