// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Case plays in a few words, for tables. A play is a list of commands, parted by semicolons, after a start that all
/// plays share: home serves the first set with 1 to 6 in court positions 1 to 6, liberos 9 and 10, and 7, 8, 11 to 14
/// on the bench; the visitors have the same numbers and 20.
///
///     rally hhv           rallies as MatchBuilder::play writes them
///     h sub 7 1           7 in for 1; so are: h exceptional 7 1, h vacate 1
///     h libero 9 5        9 in for 5; so are: h libero-out 9, h exchange 10 9, h serves 9, h gives-up 9 [10]
///     h time-out, h captain 7, h improper, h point
///     h card 7 penalty    or: h card coach warning
///     h delay warning
///     again injury        the rally is replayed for it; so are: interference, double-fault, whistle, early-serve
///     h illegal 7 3       7 is found on court by an illegal substitution; the last three points are taken back
///     h illegal-libero 9  likewise by an illegal libero replacement
///     h late              a late libero replacement is let pass
///     after 5             hours pass
///     seen 4              at the service line
///     h wrong 4 3         4 has served; the last three points are taken back
///     h default set, h incomplete match, suspend, resume stood, resume again, sides
///     win h               h wins the set; the next one begins
///     end h               h wins the set; the next one is not begun
///     h slip 1 2 3 4 5 6 / 9 10, h toss v, start
#pragma once

#include "core/ledger/entrywords.h"
#include "core/record/exportparts.h"
#include "tests/support/matchbuilder.h"

#include <QStringList>
#include <QtTest>

#include <string>

namespace setfolio::testing {

class CasePlay {
public:
    CasePlay(const QString& rulebook, const QString& play) {
        m_match.open(5, publishedRulebook(rulebook).value());
        for (const Team team : bothTeams)
            addRoster(team);
        m_match.toss(Team::Home);
        begin();
        for (const QString& command : play.split(u';')) {
            m_words = command.simplified().split(u' ', Qt::SkipEmptyParts);
            if (m_words.isEmpty())
                continue;
            for (const Entry& entry : entriesOf())
                add(entry);
        }
    }

    /// What was to be said against the last entry.
    [[nodiscard]] const Findings& findings() const { return m_findings; }
    /// The kinds of the findings as the export writes them: "wrong-slot, substitution-limit".
    [[nodiscard]] QString kinds() const {
        QStringList kinds;
        for (const Finding& finding : m_findings)
            kinds += exportWord(finding.kind);
        return kinds.join(QStringLiteral(", "));
    }
    /// "5:4 v 3": points of home and visitors, who serves, and her number; a set that is won has no server.
    [[nodiscard]] QString score() const {
        const SetState set = m_match.state().set();
        const auto points = QStringLiteral("%1:%2").arg(set.teams.home.points).arg(set.teams.visitors.points);
        if (set.winner)
            return points;
        const auto server =
            QStringLiteral(" %1 %2").arg(set.serving == Team::Home ? QStringLiteral("h") : QStringLiteral("v"));
        return points + server.arg(serverOf(set).value);
    }
    [[nodiscard]] MatchState state() const { return m_match.state(); }
    [[nodiscard]] const MatchBuilder& match() const { return m_match; }

private:
    void add(const Entry& entry) {
        m_findings = m_match.judge(entry);
        m_match.add(entry);
    }
    void addRoster(Team team) {
        Roster roster{team, {}, {}};
        for (int number = 1; number <= 14; ++number)
            roster.players.push_back({ShirtNumber(number), {}, number == 2, number == 9 || number == 10});
        if (team == Team::Visitors)
            roster.players.push_back({ShirtNumber(20), {}, false, false});
        m_match.add(roster);
    }
    void begin() {
        for (const Team team : bothTeams)
            m_match.lineUp(team, {1, 2, 3, 4, 5, 6}, {ShirtNumber(9), ShirtNumber(10)});
        m_match.start();
    }
    void win(Team team, bool goOn) {
        while (!m_match.state().set().winner)
            m_match.play(team == Team::Home ? "h" : "v");
        m_match.add(SetEnded{});
        if (!goOn)
            return;
        if (!m_match.state().set().servesFirst)
            m_match.toss(Team::Home);
        begin();
    }

    [[nodiscard]] Team team() const { return m_words.first() == u"v" ? Team::Visitors : Team::Home; }
    [[nodiscard]] QString word(int place) const { return m_words.value(place); }
    [[nodiscard]] ShirtNumber number(int place) const { return ShirtNumber(word(place).toInt()); }
    [[nodiscard]] Member member(int place) const {
        return word(place) == u"coach" ? Member(BenchRole::Coach) : Member(number(place));
    }
    [[nodiscard]] SanctionLevel level(int place) const {
        static const QStringList levels{QStringLiteral("warning"), QStringLiteral("penalty"),
                                        QStringLiteral("expulsion"), QStringLiteral("disqualification")};
        return static_cast<SanctionLevel>(levels.indexOf(word(place)));
    }

    std::vector<Entry> entriesOf() {
        const QString verb = word(0);
        if (verb == u"win" || verb == u"end") {
            win(word(1) == u"v" ? Team::Visitors : Team::Home, verb == u"win");
            return {};
        }
        if (verb == u"rally")
            return ralliesOf();
        if (verb == u"again")
            return {Replay{Again::Replay, valueOfEntryWord<ReplayCause>(word(1))}};
        if (verb == u"after") {
            m_match.wait(std::chrono::hours(word(1).toInt()));
            return {};
        }
        if (verb == u"seen")
            return {ServerSeen{number(1)}};
        if (verb == u"sides")
            return {SidesChanged{}};
        if (verb == u"start")
            return {SetStarted{}};
        if (verb == u"suspend")
            return {Suspended{}};
        if (verb == u"resume")
            return {Resumed{word(1) == u"again" ? GoOn::SetAgain : GoOn::AsItStood}};
        return {ofTeam(word(1))};
    }
    [[nodiscard]] std::vector<Entry> ralliesOf() const {
        std::vector<Entry> rallies;
        for (const QChar rally : word(1))
            rallies.push_back(MatchBuilder::rallyOf(rally.toLatin1()));
        return rallies;
    }
    [[nodiscard]] Entry ofTeam(const QString& verb) const {
        if (verb == u"sub")
            return Substitution{team(), number(2), number(3)};
        if (verb == u"exceptional")
            return Substitution{team(), number(2), number(3), SubstitutionKind::Exceptional};
        if (verb == u"vacate")
            return PlaceVacated{team(), number(2), {}};
        if (verb == u"time-out")
            return TimeOut{team()};
        if (verb == u"captain")
            return CaptainNamed{team(), number(2)};
        if (verb == u"improper")
            return ImproperRequest{team(), {}};
        if (verb == u"point")
            return PenaltyPoint{team(), {}};
        if (verb == u"card")
            return Sanction{team(), member(2), level(3), {}};
        if (verb == u"delay")
            return DelaySanction{team(), word(2) == u"penalty" ? DelayLevel::Penalty : DelayLevel::Warning, {}};
        if (verb == u"forfeits")
            return Forfeit{team(), ForfeitKind::Incomplete, Scope::Set, {}, earlierSet()};
        if (verb == u"default" || verb == u"incomplete")
            return Forfeit{team(),
                           verb == u"default" ? ForfeitKind::Default : ForfeitKind::Incomplete,
                           word(2) == u"set" ? Scope::Set : Scope::Match,
                           {}};
        return ofLiberoOrOrder(verb);
    }
    [[nodiscard]] Entry ofLiberoOrOrder(const QString& verb) const {
        if (verb == u"libero")
            return LiberoIn{team(), number(2), number(3)};
        if (verb == u"libero-out")
            return LiberoOut{team(), number(2)};
        if (verb == u"exchange")
            return LiberoExchange{team(), number(2), number(3)};
        if (verb == u"serves")
            return LiberoServe{team(), number(2), LiberoServing::Begins};
        if (verb == u"gives-up")
            return LiberoRedesignated{
                team(), number(2), m_words.size() > 3 ? std::optional(number(3)) : std::nullopt, {}};
        if (verb == u"wrong")
            return WrongServer{team(), number(2), lastPoints(word(3).toInt())};
        if (verb == u"illegal" || verb == u"illegal-libero")
            return IllegalPlayer{team(), number(2),
                                 verb == u"illegal" ? IllegalBy::Substitution : IllegalBy::LiberoReplacement,
                                 lastPoints(word(3).toInt())};
        if (verb == u"late")
            return LateReplacement{team()};
        if (verb == u"toss")
            return Toss{team(), word(2) == u"v" ? Team::Visitors : Team::Home};
        if (verb == u"slip")
            return slip();
        qFatal("no such command: %s", qPrintable(m_words.join(u' ')));
    }
    /// "1" or "1 10": the set, and the points kept.
    [[nodiscard]] EarlierSet earlierSet() const {
        return {word(2).toInt(), m_words.size() > 3 ? std::optional(word(3).toInt()) : std::nullopt};
    }
    [[nodiscard]] LineUp slip() const {
        LineUp slip{team(), {}, std::nullopt, {}};
        for (int place = 0; place < 6; ++place)
            slip.positions[static_cast<std::size_t>(place)] = number(place + 2);
        for (int place = 9; place < m_words.size(); ++place)
            slip.liberos.push_back(number(place));
        return slip;
    }
    /// The entry of the first of the last `count` points of the team.
    [[nodiscard]] std::optional<EntryNumber> lastPoints(int count) const {
        std::optional<EntryNumber> first;
        const std::vector<Point> points = m_match.state().set().points;
        for (auto point = points.rbegin(); point != points.rend() && count > 0; ++point)
            if (point->team == team()) {
                first = point->entry;
                --count;
            }
        return first;
    }

    MatchBuilder m_match;
    QStringList m_words;
    Findings m_findings;
};

// What a table of case plays is made of: the rulebook, the play, what is found against its last entry (nothing when it
// is lawful), and the source.
namespace families {
inline constexpr auto hs = "high-school";
inline constexpr auto cw = "college-women";
inline constexpr auto cl = "club";
inline constexpr auto in = "international";
} // namespace families

inline void addCaseColumns() {
    QTest::addColumn<QString>("rulebook");
    QTest::addColumn<QString>("play");
    QTest::addColumn<QString>("expected");
}

inline void caseRow(const char* rulebook, const std::string& play, const char* expected, const char* source) {
    QTest::addRow("%s: %s (%s)", rulebook, play.c_str(), source)
        << QString::fromLatin1(rulebook) << QString::fromStdString(play) << QString::fromLatin1(expected);
}

/// A part of a play, so many times.
inline std::string times(int count, const std::string& part) {
    std::string all;
    while (count-- > 0)
        all += part;
    return all;
}

/// Compares the findings against the last entry of the row's play, and that each rests on a source of its rulebook.
inline void checkFindings() {
    QFETCH(QString, rulebook);
    QFETCH(QString, play);
    const CasePlay done(rulebook, play);
    QTEST(done.kinds(), "expected");
    for (const Finding& finding : done.findings())
        if (finding.gravity == Gravity::Unlawful)
            QVERIFY2(!done.state().rulebook().sources.value(finding.setting).text.isEmpty(),
                     qPrintable(finding.setting));
}

/// Compares the score and the server after the row's play.
inline void checkScore() {
    QFETCH(QString, rulebook);
    QFETCH(QString, play);
    const CasePlay done(rulebook, play);
    QTEST(done.score(), "expected");
}

} // namespace setfolio::testing
