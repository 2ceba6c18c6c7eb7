// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/lineupdraft.h"

#include "core/match/fold.h"
#include "core/rules/judge.h"
#include "ui/dialogs/rosterrows.h"

#include <algorithm>

namespace setfolio {

bool isFilled(const LineUp& lineUp) {
    return std::ranges::all_of(lineUp.positions, &ShirtNumber::isValid);
}

bool isWholeNumber(const QString& text, const Roster& roster) {
    if (!numberFromText(text).isValid())
        return false;
    if (text.size() == 2)
        return true;
    if (roster.players.empty())
        return false;
    return std::ranges::none_of(roster.players, [&text](const RosterPlayer& player) {
        const QString number = QString::number(player.number.value);
        return number.size() > text.size() && number.startsWith(text);
    });
}

Findings findingsFor(const MatchState& state, const LineUp& lineUp) {
    Findings findings = judge(state, withoutEmptyLiberos(lineUp));
    std::erase_if(findings, [](const Finding& finding) {
        const bool aboutFields =
            finding.kind == FindingKind::NumberImpossible || finding.kind == FindingKind::DoubledInLineUp;
        return aboutFields && !finding.number.isValid();
    });
    return findings;
}

std::optional<std::array<ShirtNumber, 6>> servingOrder(const MatchState& state, const LineUp& lineUp) {
    if (state.sets.empty() || !state.set().servesFirst)
        return std::nullopt;
    const MatchState given = apply(state, Recorded{{}, {}, lineUp, {}});
    std::array<ShirtNumber, 6> order;
    for (const Slot slot : allSlots)
        order.at(slot.index()) = onCourt(given.set().teams[lineUp.team], slot);
    return order;
}

std::optional<EarlierLineUp> earlierLineUp(const MatchState& state, Team team) {
    for (auto set = state.sets.rbegin(); set != state.sets.rend(); ++set) {
        if (set != state.sets.rbegin() && set->teams[team].lineUp)
            return EarlierLineUp{set->number, *set->teams[team].lineUp};
    }
    return std::nullopt;
}

std::vector<ShirtNumber> rosterLiberos(const MatchState& state, Team team) {
    std::vector<ShirtNumber> liberos;
    for (const RosterPlayer& player : state.rosters[team].players) {
        if (player.libero && std::ssize(liberos) < state.rulebook().maximumLiberos)
            liberos.push_back(player.number);
    }
    return liberos;
}

std::optional<ShirtNumber> rosterCaptain(const MatchState& state, Team team) {
    const auto& players = state.rosters[team].players;
    const auto captain = std::ranges::find_if(players, &RosterPlayer::captain);
    return captain == players.end() ? std::nullopt : std::optional(captain->number);
}

LineUp withoutEmptyLiberos(LineUp lineUp) {
    std::erase_if(lineUp.liberos, [](ShirtNumber libero) { return !libero.isValid(); });
    return lineUp;
}

} // namespace setfolio
