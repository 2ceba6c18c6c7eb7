// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Lawful random matches from a seed: the same seed gives the same match on every machine.
#pragma once

#include "tests/support/matchbuilder.h"

#include <random>

namespace setfolio::testing {

/// How lively a random set is. Chances are in thousandths before each rally.
struct Liveliness {
    int substitution = 120;
    int timeOut = 40;
    int libero = 300; ///< that the libero serves a term she may serve
    int replay = 30;
    int noServe = 15;
    int penalty = 10;
    int undo = 25;
    int contact = 500;  ///< that the contact is recorded by itself
    int ownServe = 400; ///< that the serving team wins the rally
};

/// Plays one set at random, asking the judge before each entry, so that the match stays lawful.
class RandomMatch {
public:
    explicit RandomMatch(std::uint32_t seed, Liveliness lively = {}) : m_random(seed), m_lively(lively) {
        m_match.open();
        for (const Team team : bothTeams)
            addRoster(team);
    }

    /// One set from its toss to the end, or to `points` points when that comes first (0: to the end).
    RandomMatch& playSet(int points = 0) {
        begin();
        while (!m_state.set().winner && (points == 0 || total() < points))
            playRally();
        if (m_state.set().winner)
            add(SetEnded{QTime(19, 0)});
        return *this;
    }
    /// Sets until the match is won and closed.
    RandomMatch& playMatch() {
        while (phaseOf(m_state) != Phase::MatchWon)
            playSet();
        add(MatchClosed{});
        return *this;
    }

    [[nodiscard]] const MatchBuilder& match() const { return m_match; }
    [[nodiscard]] const MatchState& state() const { return m_state; }

private:
    bool chance(int thousandths) { return below(1000) < thousandths; }
    int below(int limit) { return static_cast<int>(m_random() % static_cast<std::uint32_t>(limit)); }
    Team anyTeam() { return below(2) ? Team::Home : Team::Visitors; }
    [[nodiscard]] int total() const { return m_state.set().teams.home.points + m_state.set().teams.visitors.points; }

    void add(const Entry& entry) {
        m_match.add(entry);
        m_state = std::holds_alternative<Strike>(entry) ? m_match.state()
                                                        : apply(std::move(m_state), m_match.entries().back());
    }
    /// Adds an entry if it is lawful.
    bool tryAdd(const Entry& entry) {
        const bool lawful = judge(m_state, entry).empty();
        if (lawful)
            add(entry);
        return lawful;
    }

    void addRoster(Team team) {
        Roster roster{team, {}, {}};
        for (int i = 0; i < 14; ++i)
            roster.players.push_back({ShirtNumber(team == Team::Home ? 2 * i + 1 : 3 * i + 2), {}, i == 2, i > 11});
        m_state = m_match.state();
        add(roster);
    }
    [[nodiscard]] ShirtNumber player(Team team, int index) const {
        return m_state.rosters[team].players[static_cast<std::size_t>(index)].number;
    }

    void begin() {
        if (!m_state.set().servesFirst)
            add(Toss{anyTeam(), anyTeam()});
        for (const Team team : bothTeams) {
            LineUp lineUp{team, {}, player(team, 2), {player(team, 12), player(team, 13)}};
            const int first = below(3);
            for (std::size_t i = 0; i < 6; ++i)
                lineUp.positions[i] = player(team, first + static_cast<int>(i));
            add(lineUp);
        }
        add(SetStarted{QTime(18, 30)});
    }

    void playRally() {
        const Team serving = m_state.set().serving;
        if (chance(m_lively.substitution))
            tryAdd(Substitution{anyTeam(), player(anyTeam(), below(12)), player(anyTeam(), below(12))});
        if (chance(m_lively.substitution))
            substitute(anyTeam());
        if (chance(m_lively.timeOut))
            tryAdd(TimeOut{anyTeam()});
        if (chance(m_lively.libero))
            tryAdd(LiberoServe{serving, player(serving, 12), LiberoServing::Begins});
        if (chance(m_lively.penalty) && tryAdd(PenaltyPoint{anyTeam(), QStringLiteral("a second unnecessary delay")}))
            return;
        if (chance(m_lively.noServe) && tryAdd(NoServe{}))
            return;
        if (chance(m_lively.contact)) // an undone result may have left the contact standing
            tryAdd(ServeContacted{});
        if (chance(m_lively.replay) && tryAdd(Replay{chance(500) ? Again::Replay : Again::ReServe}))
            return;
        add(RallyWon{chance(m_lively.ownServe) ? serving : opponentsOf(serving)});
        if (chance(m_lively.undo))
            add(Strike{m_match.last(), chance(500) ? QStringLiteral("wrong side") : QString()});
    }
    void substitute(Team team) {
        const ShirtNumber in = player(team, below(12));
        const auto bound = proposedOut(m_state.set().teams[team], in);
        const Slot slot(below(6) + 1);
        tryAdd(Substitution{team, in, bound.value_or(onCourt(m_state.set().teams[team], slot))});
    }

    std::mt19937 m_random;
    Liveliness m_lively;
    MatchBuilder m_match;
    MatchState m_state;
};

} // namespace setfolio::testing
