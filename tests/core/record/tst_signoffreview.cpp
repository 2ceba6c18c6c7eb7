// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/signoffreview.h"
#include "tests/support/signoffs.h"

#include <QtTest>

#include <functional>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

QString text(const PerTeam<int>& score) {
    return u"%1-%2"_s.arg(score.home).arg(score.visitors);
}

QString entryText(EntryNumber entry) {
    return u"@%1"_s.arg(entry.value);
}

/// A team's part in a line: "H order 1 2 3/7 … sub 7/3 2-1 @9; T 1-2 @12; libero II 9 @14; back 5 @20".
QString inWords(const TeamReview& team, const QString& name) {
    QStringList words;
    for (const ReviewedSubstitution& made : team.substitutions)
        words += u"%1 sub %2/%3 %4 %5"_s.arg(name)
                     .arg(made.in.value)
                     .arg(made.out.value)
                     .arg(text(made.score), entryText(made.entry));
    for (const TimeOutTaken& taken : team.timeOuts)
        words += u"%1 T %2-%3 %4"_s.arg(name).arg(taken.own).arg(taken.opponents).arg(entryText(taken.entry));
    if (team.libero)
        words += u"%1 libero %2 in %3 %4"_s.arg(name)
                     .arg(team.libero->libero.value)
                     .arg(team.libero->slot.value)
                     .arg(entryText(team.libero->entry));
    for (const RunningPoint& point : team.takenBack)
        words += u"%1 back %2 %3"_s.arg(name).arg(point.total).arg(entryText(point.entry));
    return words.join(u", "_s);
}

/// All of a review but the order of service, the parts joined by commas.
QString inWords(const SetReview& set) {
    QStringList words;
    for (const Team team : bothTeams)
        words += inWords(set.teams[team], team == Team::Home ? u"H"_s : u"V"_s);
    for (const SanctionLine& line : set.sanctions)
        words += (line.struck ? u"struck card "_s : u"card "_s) + entryText(line.entry);
    for (const EntryFinding& found : set.overruled)
        words += u"overruled "_s + entryText(found.entry);
    for (const EntryFinding& found : set.open)
        words += u"open "_s + entryText(found.entry);
    for (const Note& note : set.corrections)
        words += u"corrected "_s + entryText(note.entry);
    for (const Note& note : set.remarks)
        words += u"remark "_s + entryText(note.entry);
    words.removeAll(QString());
    return words.join(u", "_s);
}

using Play = std::function<void(MatchBuilder&)>; ///< from entry 6, the first after the start of the set

Sanction warningOf(int number) {
    return {Team::Home, Member{ShirtNumber(number)}, SanctionLevel::Warning, u"words"_s};
}

SetReview reviewOfSet(const MatchBuilder& match, int set = 1) {
    return reviewFor(match.entries(), match.record(), set).sets.front();
}

} // namespace

Q_DECLARE_METATYPE(Play)

/// What the referee looks over before signing.
class TestSignOffReview : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void eachPartLeadsToItsEntry_data() {
        QTest::addColumn<Play>("play");
        QTest::addColumn<QString>("told");
        const auto row = [](const char* name, Play play, const char* told) {
            QTest::newRow(name) << std::move(play) << QString::fromLatin1(told);
        };
        // clang-format off
        row("nothing but rallies",          [](auto& m) { m.play("hvh"); },                                        "");
        row("a substitution",               [](auto& m) { m.play("hh").substitute(Team::Home, 7, 2); },            "H sub 7/2 2-0 @8");
        row("her return",                   [](auto& m) { m.substitute(Team::Visitors, 17, 12).play("v").substitute(Team::Visitors, 12, 17); },
                                                                                                                   "V sub 17/12 0-0 @6, V sub 12/17 0-1 @8");
        row("a substitution undone",        [](auto& m) { m.substitute(Team::Home, 7, 2).undo(); },                "corrected @6");
        row("time-outs, own score first",   [](auto& m) { m.play("vv").add(TimeOut{Team::Home}).add(TimeOut{Team::Visitors}); },
                                                                                                                   "H T 0-2 @8, V T 2-0 @9");
        row("the libero's serving slot",    [](auto& m) { m.add(LiberoServe{Team::Home, ShirtNumber(9), {}}).play("hh"); }, "H libero 9 in 1 @7");
        row("points taken back",            [](auto& m) { m.play("hh").add(WrongServer{Team::Home, ShirtNumber(4), EntryNumber(6)}); },
                                                                                                                   "H back 1 @6, H back 2 @7, remark @8");
        row("a card",                       [](auto& m) { m.add(warningOf(4)); },                                  "card @6");
        row("a card undone",                [](auto& m) { m.add(warningOf(4)).undo(); },                           "struck card @6");
        row("overruled",                    [](auto& m) { m.substitute(Team::Home, 7, 2).play("h").add(Substitution{Team::Home, ShirtNumber(7), ShirtNumber(3)}, u"referee"_s); },
                                                                                                                   "H sub 7/2 0-0 @6, H sub 7/3 1-0 @8, overruled @8");
        row("open: nobody has let it stand", [](auto& m) { for (int i = 0; i < 4; ++i) m.add(TimeOut{Team::Visitors}); },
                                                                                                                   "V T 0-0 @6, V T 0-0 @7, V T 0-0 @8, V T 0-0 @9, open @8, open @9");
        row("a rally of the other team",    [](auto& m) { m.play("h").place(RallyWon{Team::Visitors}, Placed::How::InsteadOf, EntryNumber(6)); }, "corrected @6");
        row("a time-out put in",            [](auto& m) { m.play("h").place(TimeOut{Team::Home}, Placed::How::Before, EntryNumber(6)); },
                                                                                                                   "H T 0-0 @7, corrected @7");
        row("a remark",                     [](auto& m) { m.add(Remark{u"net lowered"_s}); },                      "remark @6");
        // clang-format on
    }
    void eachPartLeadsToItsEntry() {
        QFETCH(Play, play);
        MatchBuilder match;
        match.started();
        play(match);
        QTEST(inWords(reviewOfSet(match)), "told");
    }

    void theOrderOfServiceIsWhoHasStoodInEachSlot() {
        MatchBuilder match;
        match.started().play("h").substitute(Team::Home, 7, 2);
        const TeamReview home = reviewOfSet(match).teams.home;
        QCOMPARE(home.lineUp, EntryNumber(3));
        QCOMPARE(home.slots[1].size(), std::size_t(2));
        QCOMPARE(home.slots[1].front().number, ShirtNumber(2));
        QCOMPARE(home.slots[1].back(), (Standing{ShirtNumber(7), EntryNumber(7)}));
        QCOMPARE(home.slots[5].front().number, ShirtNumber(6));
    }

    void aSetHasItsScoreItsWinnerAndTheEntryThatDecidedIt() {
        const MatchBuilder match = oneSetPlayed();
        const SetReview set = reviewOfSet(match);
        QCOMPARE(set.score, (PerTeam<int>{25, 0}));
        QCOMPARE(set.result, (std::optional(SetResult{Team::Home, true})));
        QCOMPARE(set.end, EntryNumber(match.last().value - 1)); // the rally, which its confirmation follows
    }

    void aSetKeepsToItself() {
        MatchBuilder match = oneSetSealed();
        match.lineUp(Team::Home, {1, 2, 3, 4, 5, 6}).lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).start();
        match.add(TimeOut{Team::Visitors});
        QCOMPARE(inWords(reviewOfSet(match, 1)), QString());
        QCOMPARE(inWords(reviewOfSet(match, 2)), u"V T 0-0 "_s + entryText(match.last()));
    }

    void theMatchHasAllItsSetsAndWhatBelongsToNone() {
        MatchBuilder match = matchSealed();
        SignOffReview review = reviewFor(match.entries(), match.record(), std::nullopt);
        QCOMPARE(review.sets.size(), std::size_t(2));
        QCOMPARE(review.setsWon, (PerTeam<int>{2, 0}));
        QCOMPARE(review.winner, std::optional(Team::Home));
        QVERIFY(review.open.empty());
        MatchBuilder unplayed;
        unplayed.open().add(Roster{Team::Home, {{ShirtNumber(4), {}}, {ShirtNumber(4), {}}}, {}});
        review = reviewFor(unplayed.entries(), unplayed.record(), std::nullopt);
        QVERIFY(review.sets.empty());
        QVERIFY(!review.winner);
        QCOMPARE(review.open.size(), std::size_t(1));
        QCOMPARE(review.open.front().entry, EntryNumber(2));
    }

    void aSetPlayedAgainIsReviewedWithTheSheetThatWasCancelled() {
        MatchBuilder match;
        match.started().play("hh").add(Suspended{u"lights"_s}).add(Resumed{GoOn::SetAgain}).start().play("v");
        const SignOffReview review = reviewFor(match.entries(), match.record(), 1);
        QCOMPARE(review.sets.size(), std::size_t(2));
        QVERIFY(review.sets.front().cancelled);
        QCOMPARE(review.sets.front().score, (PerTeam<int>{2, 0}));
        QCOMPARE(review.sets.back().score, (PerTeam<int>{0, 1}));
    }

    // FIVB Official Volleyball Rules 2025-2028, 7.3.5.4
    void whatIsSaidAgainstAForfeitOfAnEarlierSetIsSaidInItsReview() {
        MatchBuilder match = oneSetPlayed();
        match.add(Forfeit{Team::Home, ForfeitKind::Incomplete, Scope::Set, {}, EarlierSet{1, 99}});
        const SignOffReview review = reviewFor(match.entries(), match.record(), 1);
        QCOMPARE(review.sets.front().open.size(), std::size_t(1));
        QCOMPARE(review.sets.front().open.front().finding.kind, FindingKind::KeepsTooMuch);
    }
};

QTEST_APPLESS_MAIN(TestSignOffReview)
#include "tst_signoffreview.moc"
