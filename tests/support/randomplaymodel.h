// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A match as a spectator with a rule book would keep it in mind: a model of its own, beside the fold and the judge.
#pragma once

#include "core/match/entry.h"
#include "core/match/state.h"

#include <array>
#include <set>
#include <vector>

namespace setfolio::testing {

using Numbers = std::vector<ShirtNumber>;

[[nodiscard]] bool holds(const Numbers& numbers, ShirtNumber number);

/// A card that somebody has had, and the set it counts in.
struct CardHad {
    Member who;
    SanctionLevel level = SanctionLevel::Warning;
    int set = 1;
};

/// A team as the model sees it. Slots are counted from 0.
struct ModelTeam {
    // of the match
    Numbers players; ///< all who may play, liberos among them
    Numbers liberosOfMatch;
    ShirtNumber captain;
    std::set<ShirtNumber> outOfMatch;
    std::set<ShirtNumber> replacedForGood; ///< by exceptional substitutions, as long as it counts
    std::set<ShirtNumber> givenUp;         ///< liberos who could not go on, likewise
    std::vector<CardHad> cards;
    std::vector<int> delays; ///< the set each counts in
    int improperRequests = 0;
    int lateReplacements = 0;

    // of the set
    LineUp lineUp;
    bool lineUpGiven = false;
    Numbers liberos;
    std::set<ShirtNumber> outOfSet;
    std::array<Numbers, 6> stood;        ///< by slot; the last is on court, an invalid number is a vacancy
    std::array<bool, 6> exceptional{};   ///< a slot that an exceptional substitution has been made in
    std::array<std::size_t, 6> places{}; ///< by court position from 0: the slot that stands there
    int points = 0;
    int substitutions = 0;
    int timeOuts = 0;
    int rotations = 0;
    int reServes = 0;
    std::optional<LiberoOnCourt> libero;      ///< where replacements are kept
    int liberoMovedAfter = -1;                ///< completed rallies when she was last replaced or came in
    std::optional<std::size_t> liberoServes;  ///< the one slot she has served in
    int liberoServesSince = 0;                ///< the term in which she first did
    std::optional<ShirtNumber> liberoServing; ///< where only her serve is kept
    bool redesignated = false;
    bool requested = false; ///< she has had a substitution request in this interruption
    bool barred = false;    ///< no substitution before a completed rally

    [[nodiscard]] ShirtNumber inSlot(std::size_t slot) const; ///< of the six; invalid where vacant
    [[nodiscard]] std::optional<std::size_t> boundTo(ShirtNumber number) const;
    [[nodiscard]] std::optional<std::size_t> standsIn(ShirtNumber number) const;
    [[nodiscard]] std::size_t positionOf(std::size_t slot) const; ///< from 0
    [[nodiscard]] bool isFrontRow(std::size_t slot) const;
    [[nodiscard]] bool liberoIn(std::size_t slot) const;
    [[nodiscard]] bool isOut(ShirtNumber number) const;
    [[nodiscard]] ShirtNumber atPosition(std::size_t position) const; ///< the libero where she stands
};

/// A point, and the term of service of the set it was won in.
struct ModelPoint {
    Team team = Team::Home;
    std::uint32_t entry = 0;
    bool ownServe = false;
    int term = 0;
};

/// What must be true after an entry, for the fold to be held against.
struct Expected {
    Phase phase = Phase::NotOpened;
    int set = 1;
    bool started = false;
    Team serving = Team::Home;
    std::optional<Team> left;
    ShirtNumber server;
    PerTeam<std::array<ShirtNumber, 6>> court; ///< by position, liberos among them
    PerTeam<int> points, substitutions, timeOuts, rotations, setsWon;
};

class Model {
public:
    explicit Model(Rulebook rulebook) : rules(std::move(rulebook)) {}

    Rulebook rules;
    PerTeam<ModelTeam> teams;
    Phase phase = Phase::NotOpened;
    int bestOf = 5;
    int set = 1;
    PerTeam<int> setsWon;
    std::optional<Team> servesFirst;
    std::optional<Team> left;
    Team serving = Team::Home;
    int term = 0;
    int completed = 0;
    bool afterReplay = false; ///< a serve is to be repeated
    bool wrongSeen = false;
    bool sidesChanged = false;
    bool forfeited = false;   ///< the set
    bool playedAgain = false; ///< the set, with the same line-ups
    std::vector<ModelPoint> points;
    std::vector<Team> due; ///< points for what was sanctioned before the set

    [[nodiscard]] bool deciding() const { return bestOf > 1 && set == bestOf; }
    [[nodiscard]] int needed() const { return deciding() ? rules.decidingSetPoints : rules.setPoints; }
    [[nodiscard]] std::optional<Team> leader() const; ///< who has won the set at this score
    [[nodiscard]] ShirtNumber server() const;
    /// The set that a sanction given now counts in.
    [[nodiscard]] int countsIn() const { return set + (phase == Phase::SetWon ? 1 : 0); }
    [[nodiscard]] Expected expected() const;

    // What the entries do.
    void placePlayers();
    void place(Team team); ///< the six of the line-up into their slots, once it is known who serves first
    void start(std::uint32_t entry);
    void award(Team team, bool rally, std::uint32_t entry);
    void serveMade();
    /// A ruling on a wrong server of a term: unless a point won on serve in it stands, no libero has served in it.
    void ruledWrong(Team team, int inTerm);
    void takeBack(Team team, std::uint32_t from);
    void decide();
    void enter(Team team, std::size_t slot, ShirtNumber in, SubstitutionKind kind);
    void moveLibero(Team team, std::optional<LiberoOnCourt> libero);
    void penaltyFor(Team team, std::uint32_t entry); ///< a point for the opponents of `team`, now or with the start
    void endSet();
    void playAgain();
    void forfeitSet(Team by);
    void nextSet();

private:
    void clearSet();
};

} // namespace setfolio::testing
