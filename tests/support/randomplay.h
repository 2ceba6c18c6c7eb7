// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Whole lawful matches from a seed and a rulebook, played by a model that asks neither the fold nor the judge. The
/// same seed gives the same match on every machine.
#pragma once

#include "tests/support/randomplaymodel.h"

#include <random>

namespace setfolio::testing {

/// The dice of a random match.
class Dice {
public:
    explicit Dice(std::uint32_t seed) : m_random(seed) {}
    [[nodiscard]] int below(int limit) { return static_cast<int>(m_random() % static_cast<std::uint32_t>(limit)); }
    [[nodiscard]] bool chance(int thousandths) { return below(1000) < thousandths; }
    [[nodiscard]] Team anyTeam() { return below(2) ? Team::Home : Team::Visitors; }
    template <typename List>
    [[nodiscard]] const auto& oneOf(const List& list) {
        return list[static_cast<std::size_t>(below(static_cast<int>(list.size())))];
    }
    template <typename List>
    void shuffle(List& list) {
        for (std::size_t i = list.size(); i > 1; --i)
            std::swap(list[i - 1], list[static_cast<std::size_t>(below(static_cast<int>(i)))]);
    }

private:
    std::mt19937 m_random;
};

/// How lively a match is: chances in thousandths, before each rally unless said otherwise.
struct Habits {
    int substitution = 120;
    int timeOut = 40;
    int libero = 350; ///< that a team thinks of its libero
    int replay = 25;
    int noServe = 12;
    int wrongServer = 8;
    int card = 5;
    int delay = 5;
    int improper = 3;
    int illegal = 2;
    int late = 3;
    int penalty = 2;
    int hurt = 4;
    int captain = 10;
    int remark = 10;
    int compared = 10;
    int suspended = 1;
    int forfeit = 1;
    int contact = 500;      ///< that the contact is recorded by itself
    int ownServe = 400;     ///< that the serving team wins the rally
    int noRoster = 100;     ///< of a match: no rosters are handed in
    int liberoRecord = 650; ///< of a match: the replacements are kept, and not only her serves
};

/// Plays one match. Each step() is a moment of it: a list handed in, a rally with what comes before it, the end of a
/// set.
class RandomPlay {
public:
    RandomPlay(std::uint32_t seed, Rulebook rulebook, Habits habits = {});

    /// Plays on; false once the match is closed.
    bool step();
    void playMatch();
    /// Records an entry that the model knows nothing of.
    void force(const Entry& entry);
    /// What is recorded next comes so much later.
    void wait(std::chrono::hours pause) { m_waited += pause; }

    [[nodiscard]] const std::vector<Recorded>& entries() const { return m_entries; }
    /// For each entry what must be true after it.
    [[nodiscard]] const std::vector<Expected>& expected() const { return m_expected; }
    [[nodiscard]] const Model& model() const { return m_model; }
    [[nodiscard]] bool keepsLiberoRecord() const { return m_liberoRecord; }
    [[nodiscard]] bool hasRosters() const { return m_rosters; }

    [[nodiscard]] bool hasSix(Team team) const; ///< for a line-up
    [[nodiscard]] LineUp anyLineUp(Team team);

    // Who may lawfully come in; also of use to those who look for the unlawful.
    [[nodiscard]] Numbers bench(Team team) const; ///< neither on court nor replaced by a libero, nor libero, nor out
    [[nodiscard]] Numbers regularFor(Team team, std::size_t slot) const;
    [[nodiscard]] Numbers exceptionalFor(Team team, std::size_t slot) const;
    /// Whether the rules leave no doubt about who comes in for a player who must leave.
    [[nodiscard]] bool isAnswered(Team team, std::size_t slot, bool sentOff) const;
    [[nodiscard]] bool mayRequest(Team team) const;
    [[nodiscard]] std::optional<SanctionLevel> nextCard(Team team, const Member& who) const;
    [[nodiscard]] int delaysCounted(Team team) const;
    [[nodiscard]] bool mayServeAsLibero(Team team) const; ///< whoever stands in position 1

private:
    // randomplay.cpp: the match and its frame
    void add(const Entry& entry);
    [[nodiscard]] std::uint32_t next() const { return static_cast<std::uint32_t>(m_entries.size()) + 1; }
    [[nodiscard]] bool ready() const { return m_model.phase == Phase::ReadyToServe; }
    ModelTeam& its(Team team) { return m_model.teams[team]; }
    [[nodiscard]] const ModelTeam& its(Team team) const { return m_model.teams[team]; }
    void open();
    void gather(Team team);
    [[nodiscard]] Roster rosterOf(Team team);
    void prepareSet();
    void toss();
    void handIn(Team team);
    void startSet();
    void endSet();
    void forfeit(Forfeit forfeit);

    // randomplaydeadball.cpp: what comes before a serve
    void interruption();
    void requests();
    void substitutions(Team team);
    void substitute(Team team, std::size_t slot, ShirtNumber in, SubstitutionKind kind);
    void hurt();
    void leaves(Team team, std::size_t slot, bool sentOff);
    void timeOut(Team team);
    void card(Team team);
    void give(const Sanction& sanction);
    void delay(Team team);
    void improper(Team team);
    void illegalFound();
    void lateReplacement(Team team);
    /// Whether an entry of one of these kinds stands from that number on.
    template <typename... Kinds>
    [[nodiscard]] bool isRecordedSince(std::uint32_t number) const {
        return std::ranges::any_of(m_entries, [number](const Recorded& recorded) {
            return recorded.number.value >= number && (std::holds_alternative<Kinds>(recorded.entry) || ...);
        });
    }
    void notes();
    void suspend();

    // randomplaylibero.cpp
    void liberos();
    void mustLeave(Team team);
    void moveLibero(Team team);
    void comeIn(Team team, std::size_t position);
    void comeToServe(Team team);
    void redesignate(Team team);
    void markServe();

    // randomplayrally.cpp
    void serve();
    void rally();
    void replay();
    bool wrongServerSeen();
    void wrongServerFound();
    [[nodiscard]] bool isRequestedSince(std::uint32_t entry) const;
    void changeSides();

    Model m_model;
    Dice m_dice;
    Habits m_habits;
    bool m_rosters = true;
    bool m_liberoRecord = true;
    std::vector<Recorded> m_entries;
    std::chrono::seconds m_waited{0};
    std::vector<Expected> m_expected;
};

} // namespace setfolio::testing
