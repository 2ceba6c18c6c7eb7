// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplay.h"

#include <algorithm>

namespace setfolio::testing {

RandomPlay::RandomPlay(std::uint32_t seed, Rulebook rulebook, Habits habits)
    : m_model(std::move(rulebook)),
      m_dice(seed),
      m_habits(habits) {
    m_rosters = !m_dice.chance(habits.noRoster);
    m_liberoRecord = m_dice.chance(habits.liberoRecord);
}

bool RandomPlay::step() {
    switch (m_model.phase) {
    case Phase::NotOpened:
        open();
        return true;
    case Phase::BeforeSet:
        prepareSet();
        return true;
    case Phase::ReadyToServe:
        interruption();
        if (ready())
            serve();
        return true;
    case Phase::SetWon:
        endSet();
        return true;
    case Phase::MatchWon:
        m_model.phase = Phase::MatchClosed;
        add(MatchClosed{});
        return true;
    case Phase::MatchClosed:
        return false;
    case Phase::Rally:
    case Phase::Suspended:
        break; // no step ends there
    }
    Q_UNREACHABLE();
}

void RandomPlay::playMatch() {
    while (step()) {
    }
}

void RandomPlay::force(const Entry& entry) {
    const QDateTime time = QDateTime(QDate(2026, 10, 10), QTime(9, 0), Qt::UTC).addSecs(next() + m_waited.count());
    m_entries.push_back({EntryNumber(next()), time, entry, std::nullopt, std::nullopt});
}

void RandomPlay::add(const Entry& entry) {
    force(entry);
    m_expected.push_back(m_model.expected());
}

void RandomPlay::open() {
    MatchOpened opened;
    opened.bestOf = m_model.bestOf = m_dice.oneOf(m_model.rules.bestOf);
    opened.teams.home = {QStringLiteral("Saltmarsh Herons"), QStringLiteral("SAL"), {}};
    opened.teams.visitors = {QStringLiteral("Quarry Ridge Larks"), QStringLiteral("QRL"), {}};
    opened.rulebook = m_model.rules;
    m_model.phase = Phase::BeforeSet;
    add(opened);
    for (const Team team : bothTeams) {
        gather(team);
        if (m_rosters && m_dice.chance(50))
            add(Roster{team, {}, {}}); // a later one takes its place
        if (m_rosters)
            add(rosterOf(team));
    }
    if (m_dice.chance(500))
        add(Officials{{{Role::FirstReferee, QStringLiteral("Ada Reeve")}, {Role::Scorer, QStringLiteral("Bo Finch")}}});
    if (m_dice.chance(4 * m_habits.forfeit))
        forfeit({m_dice.anyTeam(), ForfeitKind::Default, Scope::Match, QStringLiteral("did not appear")});
}

void RandomPlay::gather(Team team) {
    const int highest = std::min(m_model.rules.highestNumber, 99);
    Numbers numbers;
    for (int number = m_model.rules.lowestNumber; number <= highest; ++number)
        numbers.push_back(ShirtNumber(number));
    m_dice.shuffle(numbers);
    const int kind = m_dice.below(10);
    const int size = kind < 6 ? 12 + m_dice.below(3) : kind < 9 ? 8 + m_dice.below(4) : 6 + m_dice.below(2);
    its(team).players.assign(numbers.begin(), numbers.begin() + size);
    const int liberos = std::min({m_dice.below(m_model.rules.maximumLiberos + 1), size - 6});
    its(team).liberosOfMatch.assign(its(team).players.begin(), its(team).players.begin() + liberos);
    its(team).captain = its(team).players.back();
}

Roster RandomPlay::rosterOf(Team team) {
    Roster roster{team, {}, QStringLiteral("Coach of the team")};
    for (const ShirtNumber number : its(team).players)
        roster.players.push_back({number, {}, number == its(team).captain, holds(its(team).liberosOfMatch, number)});
    return roster;
}

void RandomPlay::prepareSet() {
    for (const Team team : bothTeams)
        if (!hasSix(team))
            return forfeit({team, ForfeitKind::Incomplete, Scope::Match, QStringLiteral("fewer than six")});
    if (m_dice.chance(20))
        delay(m_dice.anyTeam());
    if (m_dice.chance(20))
        give({m_dice.anyTeam(), BenchRole::AssistantCoach, SanctionLevel::Warning, {}});
    if (!m_model.servesFirst && m_dice.chance(800))
        return toss();
    if (m_model.set > 1 && !m_model.deciding() && m_dice.chance(20)) // it says what is so without it
        add(Toss{*m_model.servesFirst, *m_model.left});
    for (const Team team : bothTeams)
        if (!its(team).lineUpGiven)
            return handIn(team);
    if (!m_model.servesFirst)
        return toss();
    startSet();
}

void RandomPlay::toss() {
    m_model.servesFirst = m_dice.anyTeam();
    m_model.left = m_dice.anyTeam();
    m_model.placePlayers();
    add(Toss{*m_model.servesFirst, *m_model.left});
}

bool RandomPlay::hasSix(Team team) const {
    const auto plays = [&](ShirtNumber n) { return !its(team).isOut(n) && !holds(its(team).liberosOfMatch, n); };
    return std::ranges::count_if(its(team).players, plays) >= 6;
}

LineUp RandomPlay::anyLineUp(Team team) {
    const ModelTeam& own = its(team);
    Numbers six;
    for (const ShirtNumber number : own.players)
        if (!own.isOut(number) && !holds(own.liberosOfMatch, number))
            six.push_back(number);
    m_dice.shuffle(six);
    LineUp lineUp{team, {}, std::nullopt, {}};
    std::copy_n(six.begin(), 6, lineUp.positions.begin());
    if (m_dice.chance(700))
        lineUp.captain = m_dice.oneOf(lineUp.positions);
    for (const ShirtNumber libero : own.liberosOfMatch)
        if (!own.isOut(libero))
            lineUp.liberos.push_back(libero);
    const bool anew = m_model.rules.liberoNamedFor == Scope::Set;
    if (anew && six.size() > 6 && lineUp.liberos.size() < 2 && m_dice.chance(200))
        lineUp.liberos.push_back(six[6]);
    if (anew && !lineUp.liberos.empty() && m_dice.chance(200))
        lineUp.liberos.pop_back();
    return lineUp;
}

void RandomPlay::handIn(Team team) {
    its(team).lineUp = anyLineUp(team);
    its(team).lineUpGiven = true;
    m_model.place(team);
    add(its(team).lineUp);
}

void RandomPlay::startSet() {
    if (m_model.rules.substitutionBeforeStart && m_dice.chance(50))
        substitutions(m_dice.anyTeam());
    if (m_dice.chance(20) && !m_model.playedAgain)
        if (const Team team = m_dice.anyTeam(); !its(team).requested)
            handIn(team);
    m_model.start(next());
    add(SetStarted{QTime(18, 30)});
}

void RandomPlay::endSet() {
    const auto goneOnCourt = [this](Team team) { // the set was won by the point for sending her off
        return std::ranges::any_of(its(team).stood,
                                   [&](const Numbers& n) { return !n.empty() && its(team).isOut(n.back()); });
    };
    const bool closed = m_model.forfeited || std::ranges::any_of(bothTeams, goneOnCourt);
    if (!closed && m_dice.chance(5 * m_habits.wrongServer))
        wrongServerFound();
    if (m_model.phase != Phase::SetWon)
        return;
    const bool last = m_model.setsWon[*m_model.leader()] + 1 > m_model.bestOf / 2;
    if (m_dice.chance(m_habits.remark))
        add(Remark{QStringLiteral("the net was mended")});
    if (!last && m_dice.chance(5))
        delay(m_dice.anyTeam());
    if (!last && m_dice.chance(10))
        give({m_dice.anyTeam(), BenchRole::Coach, SanctionLevel::Penalty, {}});
    m_model.endSet();
    add(SetEnded{QTime(19, 0)});
}

void RandomPlay::forfeit(Forfeit forfeit) {
    if (forfeit.reach == Scope::Set) {
        m_model.forfeitSet(forfeit.by);
        return add(forfeit);
    }
    if (forfeit.kind == ForfeitKind::Incomplete && ready())
        m_model.forfeitSet(forfeit.by);
    if (forfeit.kind == ForfeitKind::Default)
        m_model.setsWon[forfeit.by] = 0;
    m_model.setsWon[opponentsOf(forfeit.by)] = m_model.bestOf / 2 + 1;
    m_model.phase = Phase::MatchWon;
    add(forfeit);
}

} // namespace setfolio::testing
