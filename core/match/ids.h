// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The small values of the trade, each a type of its own so that a slot can never be passed for a court position.
#pragma once

#include <array>
#include <compare>
#include <cstdint>

namespace setfolio {

/// The two teams of a match: the first listed (home) and the second listed (visitors).
enum class Team : std::uint8_t { Home, Visitors };
inline constexpr std::array<Team, 2> bothTeams{Team::Home, Team::Visitors};

/// The team on the other side of the net.
[[nodiscard]] constexpr Team opponentsOf(Team team) {
    return team == Team::Home ? Team::Visitors : Team::Home;
}

/// A side of the court as seen from the scorer's table.
enum class Side : std::uint8_t { Left, Right };

/// Two values, one for each team, indexed by Team.
template <typename T>
struct PerTeam {
    T home{};
    T visitors{};

    [[nodiscard]] constexpr T& operator[](Team team) { return team == Team::Home ? home : visitors; }
    [[nodiscard]] constexpr const T& operator[](Team team) const { return team == Team::Home ? home : visitors; }
    bool operator==(const PerTeam&) const = default;
};

/// The number on a player's shirt, 0 to 99 (which of them a rulebook allows is the rulebook's affair).
struct ShirtNumber {
    int value = -1;

    constexpr ShirtNumber() = default;
    constexpr explicit ShirtNumber(int number) : value(number) {}
    [[nodiscard]] constexpr bool isValid() const { return value >= 0 && value <= 99; }
    auto operator<=>(const ShirtNumber&) const = default;
};

/// A place in the serving order, 1 to 6, written I to VI: the place a player and those who come in for her keep all
/// set.
struct Slot {
    int value = 1;

    constexpr Slot() = default;
    constexpr explicit Slot(int slot) : value(slot) {}
    [[nodiscard]] constexpr std::size_t index() const { return static_cast<std::size_t>(value - 1); }
    /// The slot that serves after this one.
    [[nodiscard]] constexpr Slot next() const { return Slot(value % 6 + 1); }
    auto operator<=>(const Slot&) const = default;
};
inline constexpr std::array<Slot, 6> allSlots{Slot(1), Slot(2), Slot(3), Slot(4), Slot(5), Slot(6)};

/// A place on the court, 1 to 6: 1 is back right (the server), 2 front right, 3 front centre, 4 front left, 5 back
/// left, 6 back centre (FIVB Official Volleyball Rules 2025-2028, 7.4.1).
struct CourtPosition {
    int value = 1;

    constexpr CourtPosition() = default;
    constexpr explicit CourtPosition(int position) : value(position) {}
    [[nodiscard]] constexpr std::size_t index() const { return static_cast<std::size_t>(value - 1); }
    [[nodiscard]] constexpr bool isFrontRow() const { return value >= 2 && value <= 4; }
    auto operator<=>(const CourtPosition&) const = default;
};

/// The place of an entry in its ledger, counted from 1; 0 means "no entry".
struct EntryNumber {
    std::uint32_t value = 0;

    constexpr EntryNumber() = default;
    constexpr explicit EntryNumber(std::uint32_t number) : value(number) {}
    auto operator<=>(const EntryNumber&) const = default;
};

} // namespace setfolio
