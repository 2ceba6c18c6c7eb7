// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/consequences.h"
#include "core/match/fold.h"
#include "core/rules/judge.h"
#include "tests/core/properties/manymatches.h"

#include <set>

using namespace setfolio;
using namespace setfolio::testing;

namespace {

/// Who stands in a court position by the fold, the libero in her place.
ShirtNumber standingAt(const SetState& set, Team team, CourtPosition position) {
    const Slot slot = slotAt(set, team, position);
    const std::optional<LiberoOnCourt>& libero = set.teams[team].libero;
    return libero && libero->slot == slot ? libero->libero : onCourt(set.teams[team], slot);
}

/// What differs between the fold and the model; empty when nothing does.
QString differs(const MatchState& state, const Expected& expected) {
    if (phaseOf(state) != expected.phase)
        return QStringLiteral("phase %1, not %2").arg(int(phaseOf(state))).arg(int(expected.phase));
    if (setsWon(state) != expected.setsWon)
        return QStringLiteral("sets won");
    const SetState& set = state.set();
    if (expected.phase == Phase::MatchWon || expected.phase == Phase::MatchClosed)
        return {};
    if (set.number != expected.set)
        return QStringLiteral("set %1, not %2").arg(set.number).arg(expected.set);
    if (set.left != expected.left)
        return QStringLiteral("sides");
    for (const Team team : bothTeams) {
        const TeamInSet& its = set.teams[team];
        const int firstTerm = set.started && set.servesFirst == team ? 1 : 0;
        if (its.points != expected.points[team])
            return QStringLiteral("points %1, not %2").arg(its.points).arg(expected.points[team]);
        if (substitutionsOf(its) != expected.substitutions[team])
            return QStringLiteral("substitutions");
        if (static_cast<int>(its.timeOuts.size()) != expected.timeOuts[team])
            return QStringLiteral("time-outs");
        if (its.termsBegun - firstTerm != expected.rotations[team])
            return QStringLiteral("rotations %1, not %2").arg(its.termsBegun - firstTerm).arg(expected.rotations[team]);
        for (std::size_t position = 0; position < 6 && expected.started; ++position)
            if (standingAt(set, team, CourtPosition(int(position) + 1)) != expected.court[team][position])
                return QStringLiteral("court position %1").arg(position + 1);
    }
    if (expected.started && (set.serving != expected.serving || serverOf(set) != expected.server))
        return QStringLiteral("server %1, not %2").arg(serverOf(set).value).arg(expected.server.value);
    return {};
}

/// Goes through a match entry by entry, with the state before and after each, to the first failure.
template <typename Look>
void entryByEntry(const std::vector<Recorded>& entries, Look&& look) {
    MatchState state;
    for (const Recorded& recorded : entries) {
        const MatchState before = state;
        state = apply(std::move(state), recorded);
        look(before, recorded, state);
        if (QTest::currentTestFailed())
            return tell(QStringLiteral("this entry fails"), entries, recorded.number.value);
    }
}

bool inPlay(const MatchState& state) {
    const Phase phase = phaseOf(state);
    return phase == Phase::ReadyToServe || phase == Phase::Rally;
}

/// Whether the serve is struck in this entry, by itself or by the rally it brings.
bool isContact(const Recorded& recorded) {
    return std::holds_alternative<ServeContacted>(recorded.entry) || std::holds_alternative<RallyWon>(recorded.entry);
}

bool isExceptional(const std::vector<Recorded>& entries, EntryNumber number) {
    const auto* substitution = std::get_if<Substitution>(&entries[number.value - 1].entry);
    return substitution && substitution->kind == SubstitutionKind::Exceptional;
}

/// Six different players or a vacancy; and a number that comes in as a regular substitute is bound to one slot.
void checkSix(const std::vector<Recorded>& entries, const SetState& set, Team team) {
    std::set<ShirtNumber> court;
    std::set<ShirtNumber> bound;
    int vacant = 0;
    for (const Slot slot : allSlots) {
        vacant += isVacant(set.teams[team], slot) ? 1 : 0;
        court.insert(standingAt(set, team, positionOf(set, team, slot)));
        std::set<ShirtNumber> here;
        for (const Standing& standing : set.teams[team].slots[slot.index()])
            if (standing.number.isValid() && !isExceptional(entries, standing.since))
                here.insert(standing.number);
        for (const ShirtNumber number : here)
            QVERIFY2(bound.insert(number).second, qPrintable(QString::number(number.value)));
        QCOMPARE(slotAt(set, team, positionOf(set, team, slot)), slot);
    }
    QCOMPARE(static_cast<int>(court.size()), vacant > 0 ? 7 - vacant : 6);
}

/// After a forfeit of an earlier set: that set is lost, the match won by as many sets as it takes or not at all.
void checkLostSet(const MatchState& before, const MatchState& after, const Forfeit& forfeit, const Findings& findings) {
    const PerTeam<int> won = setsWon(after);
    const int needed = setsNeeded(*after.opened);
    QVERIFY(won.home <= needed && won.visitors <= needed && won.home + won.visitors < 2 * needed);
    const bool isOver = phaseOf(after) == Phase::MatchWon || phaseOf(after) == Phase::MatchClosed;
    QCOMPARE(won.home == needed || won.visitors == needed, isOver);
    if (isRefused(findings)) {
        QCOMPARE(after.sets, before.sets);
        return;
    }
    const SetState& lost = after.sets[placeOfEnded(before, forfeit.earlier->number).value()];
    const PerTeam<int> points{lost.teams.home.points, lost.teams.visitors.points};
    QCOMPARE(lost.winner, std::optional(opponentsOf(forfeit.by)));
    QCOMPARE(points[forfeit.by], *forfeit.earlier->keeps);
    QCOMPARE(winnerAt(after.rulebook(), pointsToWin(after, lost.number), points), lost.winner);
    for (const Team team : bothTeams)
        QCOMPARE(int(std::ranges::count(lost.points, team, &Point::team)), points[team]);
    QVERIFY(setScores(after).size() >= std::size_t(won.home + won.visitors));
}

} // namespace

/// What must hold of every lawful match, held against a model of its own and against the entries alone.
class TestProperties : public QObject {
    Q_OBJECT

    static constexpr int matches = 200;

    template <typename Check>
    static void forMatches(Check&& check) {
        QFETCH(QString, rulebook);
        overMatches(rulebookOf(rulebook), seedsToPlay(matches), check);
    }

private Q_SLOTS:
    void theFoldAgreesWithTheModelAfterEachEntry_data() { eachRulebook(); }
    void theFoldAgreesWithTheModelAfterEachEntry() {
        forMatches([](const RandomPlay& play, std::uint32_t) {
            MatchState state;
            for (std::size_t i = 0; i < play.entries().size(); ++i) {
                state = apply(std::move(state), play.entries()[i]);
                const QString what = differs(state, play.expected()[i]);
                if (!what.isEmpty())
                    tell(what, play.entries(), static_cast<std::uint32_t>(i) + 1);
                QVERIFY(what.isEmpty());
            }
        });
    }

    // FIVB Official Volleyball Rules 2025-2028, 7.6.2 and 12.2.2: only a team that wins the serve back rotates, and the
    // slots serve in turn.
    void slotsServeInTurnAndOnlyWinningTheServeBackRotates_data() { eachRulebook(); }
    void slotsServeInTurnAndOnlyWinningTheServeBackRotates() {
        forMatches([](const RandomPlay& play, std::uint32_t) {
            entryByEntry(play.entries(),
                         [](const MatchState& before, const Recorded& recorded, const MatchState& after) {
                             if (!inPlay(before) || !inPlay(after) || std::holds_alternative<Resumed>(recorded.entry))
                                 return;
                             for (const Team team : bothTeams) {
                                 const SetState& was = before.set();
                                 const SetState& is = after.set();
                                 const bool wonBack = was.serving != team && is.serving == team;
                                 const bool lost = was.serving == team && is.serving != team;
                                 QCOMPARE(is.teams[team].termsBegun - was.teams[team].termsBegun, wonBack ? 1 : 0);
                                 const Slot next = was.teams[team].nextServer;
                                 QCOMPARE(is.teams[team].nextServer, lost ? next.next() : next);
                                 for (const Slot slot : allSlots)
                                     QCOMPARE(positionOf(is, team, slot) == positionOf(was, team, slot), !wonBack);
                             }
                         });
        });
    }

    void pointsAreRalliesAndPenaltiesLessThoseTakenBack_data() { eachRulebook(); }
    void pointsAreRalliesAndPenaltiesLessThoseTakenBack() {
        forMatches([](const RandomPlay& play, std::uint32_t) {
            PerTeam<int> sum; // over the match, sets played again among them
            entryByEntry(play.entries(),
                         [&](const MatchState& before, const Recorded& recorded, const MatchState& after) {
                             countPoints(before, recorded, after, sum);
                             for (const Team team : bothTeams) {
                                 int points = 0;
                                 for (const SetState& set : after.sets)
                                     points += set.teams[team].points;
                                 QCOMPARE(points, sum[team]);
                             }
                         });
        });
    }

    // FIVB Official Volleyball Rules 2025-2028, 7.3.5.4: whichever set is lost afterwards, at whatever moment.
    void anEarlierSetIsLostAtAnyMoment_data() { eachRulebook(); }
    void anEarlierSetIsLostAtAnyMoment() {
        forMatches([](const RandomPlay& play, std::uint32_t seed) {
            Dice dice(seed * 104729U);
            entryByEntry(play.entries(), [&](const MatchState&, const Recorded& recorded, const MatchState& state) {
                if (state.sets.size() < 2 || !dice.chance(20))
                    return;
                const Team by = dice.anyTeam();
                const int number = state.sets[static_cast<std::size_t>(dice.below(int(state.sets.size())))].number;
                const Forfeit forfeit{by, ForfeitKind::Incomplete, Scope::Set, {}, EarlierSet{number, dice.below(20)}};
                const Findings findings = judge(state, forfeit);
                const MatchState after = apply(state, {EntryNumber(recorded.number.value + 1), {}, forfeit, {}, {}});
                checkLostSet(state, after, forfeit, findings);
            });
        });
    }

    void limitsAreKept_data() { eachRulebook(); }
    void limitsAreKept() {
        forMatches([](const RandomPlay& play, std::uint32_t) {
            const Rulebook& rules = play.model().rules;
            entryByEntry(play.entries(), [&](const MatchState&, const Recorded&, const MatchState& after) {
                for (const Team team : bothTeams) {
                    const TeamInSet& its = after.set().teams[team];
                    QVERIFY(substitutionsOf(its) <= rules.substitutionLimit);
                    QVERIFY(static_cast<int>(its.timeOuts.size()) <= rules.timeOuts);
                    QVERIFY(its.reServes <= rules.reServesPerTerm);
                    QVERIFY(static_cast<int>(its.liberos.size()) <= rules.maximumLiberos);
                }
            });
        });
    }

    void sixDifferentPlayersStandInTheirOwnSlots_data() { eachRulebook(); }
    void sixDifferentPlayersStandInTheirOwnSlots() {
        forMatches([](const RandomPlay& play, std::uint32_t) {
            entryByEntry(play.entries(), [&](const MatchState&, const Recorded&, const MatchState& after) {
                if (inPlay(after))
                    for (const Team team : bothTeams)
                        checkSix(play.entries(), after.set(), team);
            });
        });
    }

    // FIVB Official Volleyball Rules 2025-2028, 19.3.1; NCAA Women's Volleyball 2012 and 2013 Rules, 12.1.2.3 (one
    // place in the order).
    void noLiberoStandsInTheFrontRowAtAContactOrServesInASecondSlot_data() { eachRulebook(); }
    void noLiberoStandsInTheFrontRowAtAContactOrServesInASecondSlot() {
        forMatches([](const RandomPlay& play, std::uint32_t) {
            const bool serves = play.model().rules.liberoServe == LiberoServeRule::OneSlot;
            entryByEntry(play.entries(), [&](const MatchState& before, const Recorded& recorded, const MatchState&) {
                if (!isContact(recorded))
                    return;
                const SetState& set = before.set();
                for (const Team team : bothTeams)
                    if (const auto& libero = set.teams[team].libero)
                        QVERIFY(!positionOf(set, team, libero->slot).isFrontRow());
                if (!liberoAtServe(set))
                    return;
                const TeamInSet& its = set.teams[set.serving];
                QVERIFY(serves && its.liberoSlot.value_or(its.nextServer) == its.nextServer);
            });
        });
    }

    void aSetEndsExactlyWhenTheRulebookSays_data() { eachRulebook(); }
    void aSetEndsExactlyWhenTheRulebookSays() {
        forMatches([](const RandomPlay& play, std::uint32_t) {
            entryByEntry(play.entries(), [&](const MatchState&, const Recorded&, const MatchState& after) {
                if (after.sets.empty() || !after.set().started)
                    return;
                const SetState& set = after.set();
                const int home = set.teams.home.points;
                const int visitors = set.teams.visitors.points;
                const bool deciding = set.number == after.opened->bestOf;
                // All four rulebooks: 25 points, 15 in the deciding set, a margin of two, no cap.
                const bool over = std::max(home, visitors) >= (deciding ? 15 : 25) && std::abs(home - visitors) >= 2;
                QCOMPARE(set.winner.has_value(), over);
                QVERIFY(!over || set.winner == (home > visitors ? Team::Home : Team::Visitors));
            });
            QCOMPARE(phaseOf(fold(play.entries())), Phase::MatchClosed);
        });
    }

    void everyKindOfEntryIsPlayed_data() { eachRulebook(); }
    void everyKindOfEntryIsPlayed() {
        QFETCH(QString, rulebook);
        const Rulebook rules = rulebookOf(rulebook);
        QMap<QString, int> kinds;
        overMatches(rules, {1, 1500}, [&kinds](const RandomPlay& play, std::uint32_t) {
            for (const Recorded& recorded : play.entries())
                ++kinds[kindOf(recorded.entry)];
        });
        // Strikes are for corrected ledgers, and nobody signs; what a rulebook does not know is not played.
        std::size_t expected = std::variant_size_v<Entry> - 1;
        expected -= 4; // signed, left unsigned, sealed, reopened
        expected -= rules.liberoServe == LiberoServeRule::Never ? 1 : 0;
        expected -= rules.fewerThanSix == FewerThanSix::Incomplete ? 1 : 0;
        expected -= rules.improperRequest == ImproperRequestRule::DelayAtOnce ? 1 : 0;
        expected -= rules.decidingSetSideChange ? 0 : 1;
        expected -= rules.liberoLateReplacement == LateReplacementRule::DelayOrFault ? 1 : 0;
        QString text;
        for (auto kind = kinds.begin(); kind != kinds.end(); ++kind)
            text += QStringLiteral(" %1 %2").arg(kind.key()).arg(kind.value());
        qInfo().noquote() << text;
        QCOMPARE(static_cast<std::size_t>(kinds.size()), expected);
    }

private:
    /// What an entry adds to a team's points by its words alone.
    static void countPoints(const MatchState& before, const Recorded& recorded, const MatchState& after,
                            PerTeam<int>& sum) {
        if (!before.opened)
            return;
        const SetState& set = before.set();
        const bool play = inPlay(before);
        const auto penalty = [&](Team to) { sum[to] += play ? 1 : 0; };
        if (const auto* rally = std::get_if<RallyWon>(&recorded.entry))
            ++sum[rally->by];
        else if (std::holds_alternative<NoServe>(recorded.entry))
            ++sum[opponentsOf(set.serving)];
        else if (const auto* point = std::get_if<PenaltyPoint>(&recorded.entry))
            penalty(point->to);
        else if (const auto* delay = std::get_if<DelaySanction>(&recorded.entry);
                 delay && delay->level == DelayLevel::Penalty)
            penalty(opponentsOf(delay->team));
        else if (const auto* card = std::get_if<Sanction>(&recorded.entry))
            countCard(before.rulebook(), *card, penalty);
        else if (const auto* ruling = std::get_if<WrongServer>(&recorded.entry))
            countRuling(set, *ruling, sum);
        else if (const auto* illegal = std::get_if<IllegalPlayer>(&recorded.entry))
            sum[opponentsOf(illegal->team)] += set.serving == illegal->team || set.contacted ? 1 : 0;
        else if (std::holds_alternative<SetStarted>(recorded.entry))
            for (const Team team : before.pointsDue)
                ++sum[team];
        else if (const auto* forfeit = std::get_if<Forfeit>(&recorded.entry)) // of the present set or the match
            for (const Point& given : after.set().points)
                sum[opponentsOf(forfeit->by)] += given.by == PointBy::Forfeit && given.entry == recorded.number ? 1 : 0;
    }
    template <typename Penalty>
    static void countCard(const Rulebook& rulebook, const Sanction& card, Penalty&& penalty) {
        for (const CardStep& step : rulebook.conductLadder)
            if (step.level == card.level && step.point)
                penalty(opponentsOf(card.team));
    }
    static void countRuling(const SetState& set, const WrongServer& ruling, PerTeam<int>& sum) {
        bool taken = false;
        for (const Point& point : set.points) {
            taken = taken || (ruling.takenBackFrom && point.entry == *ruling.takenBackFrom);
            sum[ruling.team] -= taken && point.team == ruling.team ? 1 : 0;
        }
        sum[opponentsOf(ruling.team)] += set.serving == ruling.team ? 1 : 0;
    }
};

QTEST_APPLESS_MAIN(TestProperties)
#include "tst_properties.moc"
