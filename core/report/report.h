// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Figures for the coach: what was won and lost in each rotation, on serve and on receive, by each server, and how the
/// score went. Points taken back after a wrong server are in none of them.
#pragma once

#include "core/match/entry.h"
#include "core/match/state.h"

#include <span>
#include <vector>

namespace setfolio {

/// Rallies of one team in one rotation; points without a rally are not among them.
struct RotationFigures {
    int serveWon = 0;
    int serveLost = 0;
    int receiveWon = 0; ///< side-outs
    int receiveLost = 0;

    [[nodiscard]] int served() const { return serveWon + serveLost; }
    [[nodiscard]] int received() const { return receiveWon + receiveLost; }
    [[nodiscard]] int difference() const { return serveWon + receiveWon - serveLost - receiveLost; }
    RotationFigures& operator+=(const RotationFigures& other);
    bool operator==(const RotationFigures&) const = default;
};

/// A server's terms of service in which a rally was decided.
struct ServerFigures {
    ShirtNumber number; ///< the libero's own, where she served
    int terms = 0;
    int won = 0; ///< rallies won on her serve
    int lost = 0;
    int longest = 0; ///< most rallies won in one term
    bool operator==(const ServerFigures&) const = default;
};

/// Points of one team without one of the other between them.
struct Run {
    int length = 0;
    PerTeam<int> from; ///< the score before it
    PerTeam<int> to;   ///< and after it
    bool operator==(const Run&) const = default;
};

struct TeamFigures {
    std::array<RotationFigures, 6> rotations; ///< by the slot that stands in court position 1
    std::vector<ServerFigures> servers;       ///< in the order in which they came to serve
    int penalties = 0;                        ///< points for a sanction of the opponents
    int given = 0;                            ///< points given for the opponents' forfeit
    std::vector<Run> runs;                    ///< all of them, in the order of play

    [[nodiscard]] RotationFigures sum() const;
    [[nodiscard]] Run longestRun() const; ///< the first of several
    bool operator==(const TeamFigures&) const = default;
};

/// A substitution or a time-out, in its place.
struct Change {
    Team team = Team::Home;
    std::optional<Substitution> substitution; ///< none: a time-out
    PerTeam<int> score;
    EntryNumber entry;
    bool operator==(const Change&) const = default;
};

struct SetFigures {
    int number = 1;
    bool cancelled = false;
    PerTeam<TeamFigures> teams;
    PerTeam<int> score;
    std::vector<Team> course; ///< who won each point, in the order of play
    std::vector<Change> changes;
    bool operator==(const SetFigures&) const = default;
};

/// The sets of the match in order: as many as the state has.
[[nodiscard]] std::vector<SetFigures> figuresOf(std::span<const Recorded> entries);

/// A team's servers over several sets, by number; sets that were cancelled are left out.
[[nodiscard]] std::vector<ServerFigures> serversOver(std::span<const SetFigures> sets, Team team);

} // namespace setfolio
