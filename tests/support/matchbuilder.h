// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Writes matches for tests in few words. Header only, so that every test may use it.
#pragma once

#include "core/match/fold.h"
#include "core/record/writeup.h"
#include "core/rules/judge.h"

#include <chrono>
#include <functional>
#include <initializer_list>

namespace setfolio::testing {

/// The published high-school rulebook; a test that cannot read it stops.
inline Rulebook highSchool() {
    const auto rulebook = publishedRulebook(QStringLiteral("high-school"));
    Q_ASSERT(rulebook);
    return *rulebook;
}

inline std::array<ShirtNumber, 6> six(std::initializer_list<int> numbers) {
    std::array<ShirtNumber, 6> positions;
    std::size_t index = 0;
    for (const int number : numbers)
        positions[index++] = ShirtNumber(number);
    return positions;
}

/// A list of entries that grows; every entry gets the next number and a time a second later.
class MatchBuilder {
public:
    /// Changes the words of every entry of all matches; none unless a test sets it.
    static inline std::function<void(Recorded&)> dressing;

    /// Opens the match. Home Saltmarsh Herons (SAL), visitors Quarry Ridge Larks (QRL); no rosters unless given.
    MatchBuilder& open(int bestOf = 5, Rulebook rulebook = highSchool()) {
        MatchOpened opened;
        opened.bestOf = bestOf;
        opened.teams.home = {QStringLiteral("Saltmarsh Herons"), QStringLiteral("SAL"), {}};
        opened.teams.visitors = {QStringLiteral("Quarry Ridge Larks"), QStringLiteral("QRL"), {}};
        opened.rulebook = std::move(rulebook);
        return add(opened);
    }
    MatchBuilder& toss(Team servesFirst, Team left = Team::Home) { return add(Toss{servesFirst, left}); }
    /// Numbers by court position 1 to 6.
    MatchBuilder& lineUp(Team team, std::initializer_list<int> positions, std::vector<ShirtNumber> liberos = {}) {
        return add(LineUp{team, six(positions), std::nullopt, std::move(liberos)});
    }
    MatchBuilder& start() { return add(SetStarted{}); }
    /// A set ready for the first serve. Home 1 to 6 with libero 9, visitors 11 to 16 with libero 19, by court position.
    MatchBuilder& started(Team servesFirst = Team::Home) {
        return open()
            .toss(servesFirst)
            .lineUp(Team::Home, {1, 2, 3, 4, 5, 6}, {ShirtNumber(9)})
            .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}, {ShirtNumber(19)})
            .start();
    }
    /// Rallies in short: h and v for the team that wins, s for the serve contacted, r replay, e re-serve, n no serve.
    MatchBuilder& play(const char* rallies) {
        for (; *rallies; ++rallies)
            add(rallyOf(*rallies));
        return *this;
    }
    MatchBuilder& substitute(Team team, int in, int out) {
        return add(Substitution{team, ShirtNumber(in), ShirtNumber(out)});
    }
    MatchBuilder& add(Entry entry, std::optional<QString> overruled = std::nullopt) {
        const auto number = static_cast<std::uint32_t>(m_entries.size()) + 1;
        m_entries.push_back({EntryNumber(number), nextTime(), std::move(entry), std::move(overruled), std::nullopt});
        if (dressing)
            dressing(m_entries.back());
        return *this;
    }
    /// The next entry comes so much later.
    MatchBuilder& wait(std::chrono::seconds pause) {
        m_waited += pause;
        return *this;
    }
    /// A correction: an entry put in before another, or in its place.
    MatchBuilder& place(Entry entry, Placed::How how, EntryNumber target, QString reason = {}) {
        add(std::move(entry));
        m_entries.back().placed = Placed{how, target, std::move(reason)};
        if (dressing)
            dressing(m_entries.back());
        return *this;
    }
    /// Strikes the newest standing entry.
    MatchBuilder& undo() { return add(Strike{newestStanding(m_entries).value(), {}}); }

    [[nodiscard]] const std::vector<Recorded>& entries() const { return m_entries; }
    [[nodiscard]] EntryNumber last() const { return m_entries.back().number; }
    [[nodiscard]] MatchState state() const { return fold(m_entries); }
    [[nodiscard]] MatchRecord record() const { return writeUp(m_entries); }
    /// The record of the newest set.
    [[nodiscard]] SetRecord set() const { return record().sets.back(); }
    [[nodiscard]] Findings judge(const Entry& entry) const { return setfolio::judge(state(), entry, nextTime()); }

    /// One rally of play().
    static Entry rallyOf(char letter) {
        switch (letter) {
        case 'h':
            return RallyWon{Team::Home};
        case 'v':
            return RallyWon{Team::Visitors};
        case 's':
            return ServeContacted{};
        case 'r':
            return Replay{Again::Replay};
        case 'e':
            return Replay{Again::ReServe};
        case 'n':
            return NoServe{};
        }
        qFatal("play: unknown letter %c", letter);
    }

private:
    [[nodiscard]] QDateTime nextTime() const {
        const QDateTime opened(QDate(2026, 10, 10), QTime(18, 0, 1), Qt::UTC);
        return opened.addSecs(static_cast<qint64>(m_entries.size()) + m_waited.count());
    }

    std::vector<Recorded> m_entries;
    std::chrono::seconds m_waited{0};
};

/// A term of service in one line, as the sheet would be read aloud: "3 (4) (5) S 7/10 (R)". Ring (), triangle <>,
/// square [], struck marks between ~, those taken back between x, with their note after #.
inline QString inWords(const Mark& mark) {
    const QString content = std::visit(
        Overloaded{[](const Awaiting&) { return QStringLiteral(" "); },
                   [](const ServedPoint& point) { return QString::number(point.total); },
                   [](const OpeningPoint& point) { return QString::number(point.total); },
                   [](const RallyLost&) { return QStringLiteral("R"); },
                   [](const ServedAgain&) { return QStringLiteral("RS"); },
                   [](const PenaltyLetter&) { return QStringLiteral("P"); },
                   [](const SubstitutionMark& s) {
                       return QStringLiteral("%1 %2/%3")
                                  .arg(s.opponents ? QStringLiteral("Sx") : QStringLiteral("S"))
                                  .arg(s.in.value)
                                  .arg(s.out.value) +
                              (s.score ? QStringLiteral(" %1-%2").arg(s.score->own).arg(s.score->opponents)
                                       : QString());
                   },
                   [](const TimeOutMark& t) { return t.opponents ? QStringLiteral("Tx") : QStringLiteral("T"); },
                   [](const ExitScore& exit) { return QStringLiteral("exit %1").arg(exit.total); }},
        mark.content);
    QString text = content;
    switch (mark.shape) {
    case MarkShape::None:
        break;
    case MarkShape::Ring:
        text = QStringLiteral("(%1)").arg(content);
        break;
    case MarkShape::Triangle:
        text = QStringLiteral("<%1>").arg(content);
        break;
    case MarkShape::Square:
        text = QStringLiteral("[%1]").arg(content);
        break;
    }
    if (mark.takenBack)
        text = QStringLiteral("x%1x").arg(text);
    if (mark.struck)
        text = QStringLiteral("~%1~").arg(text);
    return mark.note ? QStringLiteral("%1#%2").arg(text).arg(mark.note) : text;
}

inline QString inWords(const Term& term) {
    QStringList marks;
    for (const Mark& mark : term.marks)
        marks += inWords(mark);
    return marks.join(u' ');
}

/// All terms of a team: "I: (1) (R) | II: 3 (R)".
inline QString inWords(const TeamRecord& team) {
    static const char* const numerals[] = {"I", "II", "III", "IV", "V", "VI"};
    QStringList terms;
    for (const Term& term : team.terms)
        terms += QStringLiteral("%1: %2").arg(QLatin1String(numerals[term.slot.index()]), inWords(term));
    return terms.join(QStringLiteral(" | "));
}

} // namespace setfolio::testing
