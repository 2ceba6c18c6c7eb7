// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the entries add up to: a plain value, made only by fold.h.
#pragma once

#include "core/match/entry.h"

#include <array>
#include <optional>
#include <vector>

namespace setfolio {

/// Where the match stands, from the scorer's point of view.
enum class Phase : std::uint8_t {
    NotOpened,    ///< no entry yet
    BeforeSet,    ///< toss and line-ups are awaited
    ReadyToServe, ///< dead ball: the next serve is awaited
    Rally,        ///< the serve has been contacted, the result is awaited
    SetWon,       ///< the score decides the set; the second referee's confirmation is awaited
    MatchWon,     ///< the last set has ended; closing the match is awaited
    MatchClosed,
};

/// How a point came.
enum class PointBy : std::uint8_t { OwnServe, OpponentsServe, Penalty };

/// A point: whose, how, and the entry that brought it.
struct Point {
    Team team = Team::Home;
    PointBy by = PointBy::OwnServe;
    EntryNumber entry;
    bool operator==(const Point&) const = default;
};

/// A time-out taken, with the score at that moment.
struct TimeOutTaken {
    int own = 0;
    int opponents = 0;
    EntryNumber entry;
    bool operator==(const TimeOutTaken&) const = default;
};

/// A number that has stood in a slot, and since which entry (the line-up's or the substitution's).
struct Standing {
    ShirtNumber number;
    EntryNumber since;
    bool operator==(const Standing&) const = default;
};

/// A team in one set.
struct TeamInSet {
    std::optional<LineUp> lineUp;
    std::array<std::vector<Standing>, 6>
        slots; ///< who has stood in slot I to VI, in order; the last is on court. Empty before the line-up
    int points = 0;
    int substitutions = 0;
    std::vector<TimeOutTaken> timeOuts;
    int termsBegun = 0; ///< terms of service begun, this one included
    Slot
        nextServer; ///< while the team serves: the server's slot; else the slot that serves when it wins the serve back
    int reServes = 0;                         ///< in the present term
    std::optional<ShirtNumber> liberoServing; ///< the libero who serves the present term in the slot player's place
    std::optional<Slot> liberoSlot;           ///< the one slot a libero has served in during this set
    bool operator==(const TeamInSet&) const = default;
};

/// One set.
struct SetState {
    int number = 1;
    std::optional<Team> servesFirst; ///< unknown until the toss where there is one
    std::optional<Team> left;        ///< the team left of the scorer, likewise
    PerTeam<TeamInSet> teams;
    bool started = false;
    QTime startedAt;
    Team serving = Team::Home; ///< who serves next, or now; has a meaning once servesFirst is known
    bool contacted = false;    ///< the serve of the present rally has been contacted
    int rallies = 0;           ///< rallies decided or replayed
    std::vector<Point> points;
    std::optional<Team> winner; ///< as the score says, whether confirmed or not
    bool ended = false;
    QTime endedAt;
    bool operator==(const SetState&) const = default;
};

struct MatchState {
    std::optional<MatchOpened> opened;
    PerTeam<Roster> rosters{{Team::Home, {}, {}}, {Team::Visitors, {}, {}}};
    Officials officials;
    std::vector<SetState> sets; ///< the last one is the present set; none before the match is opened
    bool closed = false;
    EntryNumber last; ///< the newest entry that was folded in
    bool operator==(const MatchState&) const = default;

    [[nodiscard]] const Rulebook& rulebook() const; ///< the match must be opened
    [[nodiscard]] const SetState& set() const;      ///< the present set; the match must be opened
};

// Questions to a state; each is O(1) or O(6).

[[nodiscard]] Phase phaseOf(const MatchState& state);
/// Sets won so far; a set counts when it has been ended.
[[nodiscard]] PerTeam<int> setsWon(const MatchState& state);
/// Whether set `number` is the last one possible.
[[nodiscard]] bool isDecidingSet(const MatchState& state, int number);
/// Points needed to win set `number`, the margin apart.
[[nodiscard]] int pointsToWin(const MatchState& state, int number);
/// The winner of a set that stands at this score, if the rulebook says it is won. Source: the rulebook's settings.
[[nodiscard]] std::optional<Team> winnerAt(const Rulebook& rulebook, int pointsToWin, const PerTeam<int>& points);

/// The number on court in a slot (a libero in her place not counted); invalid before the line-up.
[[nodiscard]] ShirtNumber onCourt(const TeamInSet& team, Slot slot);
/// The slot a number is bound to, because it stands or has stood there in this set.
[[nodiscard]] std::optional<Slot> slotOf(const TeamInSet& team, ShirtNumber number);
/// The number on court in a court position now.
[[nodiscard]] CourtPosition positionOf(const SetState& set, Team team, Slot slot);
[[nodiscard]] Slot slotAt(const SetState& set, Team team, CourtPosition position);
/// Who serves now or next: the libero where she serves in the slot player's place.
[[nodiscard]] ShirtNumber serverOf(const SetState& set);
/// The slot that serves now or next for `team`, whether or not it has the serve.
[[nodiscard]] Slot servingSlot(const SetState& set, Team team);
/// The round, from 1, in which a team's term number `term` (from 1) is written.
[[nodiscard]] int roundOfTerm(const Rulebook& rulebook, bool servesFirst, int term);
/// The playing captain of the set: the line-up's, else the roster's; none when neither names one.
[[nodiscard]] std::optional<ShirtNumber> captainOf(const MatchState& state, const TeamInSet& team, Team which);
/// The liberos of the set, as the line-up names them.
[[nodiscard]] const std::vector<ShirtNumber>& liberosOf(const TeamInSet& team);
/// The roster's line for a number; nullptr if it has none.
[[nodiscard]] const RosterPlayer* playerOf(const MatchState& state, Team team, ShirtNumber number);

} // namespace setfolio
