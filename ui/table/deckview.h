// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What deck and panel show, as a plain value made from the state: who stands where, who serves, what a press means.
#pragma once

#include "core/match/state.h"
#include "ui/wording/tablewords.h"

#include <optional>
#include <vector>

namespace setfolio {

/// Two values, one for each side of the table, indexed by Side.
template <typename T>
struct PerSide {
    T left{};
    T right{};

    [[nodiscard]] T& operator[](Side side) { return side == Side::Left ? left : right; }
    [[nodiscard]] const T& operator[](Side side) const { return side == Side::Left ? left : right; }
    bool operator==(const PerSide&) const = default;
};
inline constexpr std::array<Side, 2> bothSides{Side::Left, Side::Right};

/// A team's area on the deck and the buttons under it.
struct TeamAreaView {
    Team team = Team::Home;
    QString name;
    QString code;
    int points = 0;
    bool serves = false;
    AreaCall call = AreaCall::None;
    int substitutions = 0;
    int substitutionLimit = 0;
    int timeOutsLeft = 0;
    QString liberoState;
    bool hasLiberos = false;
    int sanctions = 0; ///< cards and delays in the match
    bool operator==(const TeamAreaView&) const = default;
};

/// A player in the picture of the court.
struct CourtPlayer {
    Team team = Team::Home;
    Side side = Side::Left;
    CourtPosition position;
    ShirtNumber number;
    bool captain = false;
    bool libero = false; ///< she serves in the place of the slot's player
    bool server = false;
    bool operator==(const CourtPlayer&) const = default;
};

/// The server, and who serves if the rally is lost.
struct ServingView {
    Team team = Team::Home;
    QString code;
    ShirtNumber number;
    Slot slot;
    bool captain = false;
    std::optional<ShirtNumber> replaced; ///< the slot's player, when a libero serves for her
    int rally = 1;
    bool contacted = false;
    QString otherCode;
    ShirtNumber nextNumber; ///< of the opponents, if the rally is lost
    Slot nextSlot;
    ShirtNumber thenNumber; ///< of the serving team, when it has won the serve back
    bool operator==(const ServingView&) const = default;
};

struct DeckView {
    PerSide<TeamAreaView> areas;
    std::vector<CourtPlayer> court;     ///< at most twelve
    std::optional<ServingView> serving; ///< once both line-ups are known
    bool operator==(const DeckView&) const = default;
};

/// The match must be opened. Before it is known who stands where, the home team is shown on the left.
[[nodiscard]] DeckView deckViewOf(const MatchState& state);
[[nodiscard]] Team teamOn(const MatchState& state, Side side);
[[nodiscard]] Side sideOf(const MatchState& state, Team team);

/// Where a court position lies in its half: the distance from the net, 0 (front row) or 1 (back row), and the row as
/// the scorer sees it, 0 (far side line) to 2 (near side line).
struct CourtPlace {
    int depth = 0;
    int row = 0;
    bool operator==(const CourtPlace&) const = default;
};
[[nodiscard]] CourtPlace placeOf(CourtPosition position, Side side);

} // namespace setfolio
