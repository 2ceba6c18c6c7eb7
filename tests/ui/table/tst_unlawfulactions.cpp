// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplayfaults.h"
#include "tests/support/signoffs.h"
#include "tests/ui/table/draftinghand.h"
#include "ui/table/numberfield.h"
#include "ui/table/repairbar.h"
#include "ui/wording/findingwords.h"

#include <QRegularExpression>

#include <map>

using namespace setfolio;
using namespace setfolio::testing;
using namespace Qt::Literals::StringLiterals;

namespace {

/// A match in which much happens that is rare.
constexpr Habits eventful{.substitution = 250, .libero = 500, .card = 25, .hurt = 20, .ownServe = 450};
constexpr std::uint32_t mostSeeds = 60;

/// What the window never lets a hand ask for, and why.
const std::map<QString, const char*>& outOfReach() {
    static const std::map<QString, const char*> kinds{
        {u"TooManyLiberos"_s, "the line-up has as many fields for liberos as the rulebook allows"},
        {u"TakenBackTooLate"_s, "the team that served before is offered until the next serve is contacted"},
        {u"LiberoMayNotServe"_s, "the libero's serve is not offered where the rulebook has none"},
        {u"LiberoAlreadyOnCourt"_s, "while a libero is on court, the bar offers out and exchange"},
        {u"LevelNotOnLadder"_s, "the bar offers the levels of the rulebook's ladder"},
        {u"DefaultIsOfMatch"_s, "the form offers a default of the match only"},
        {u"LateReplacementIsDelay"_s, "a late replacement is offered only while one is let pass"},
        {u"PlayNotResumed"_s, "the bar of an illegal player says so: tst_tableforms"},
        {u"SignedOutOfOrder"_s, "signatures are taken in a window of their own: tst_signoffdialog"},
    };
    return kinds;
}

/// A lawful match up to a moment at which the fault can happen, and the fault.
struct Occasion {
    std::vector<Recorded> before;
    Entry unlawful;
    QDateTime at;
};

std::optional<Occasion> momentFor(const Fault& fault, const QString& id, std::uint32_t seed) {
    Rulebook rulebook = *publishedRulebook(id);
    if (fault.adapt)
        fault.adapt(rulebook);
    RandomPlay play(seed, rulebook, eventful);
    Dice dice(seed * 7919U);
    const Entries entries = playTo(fault, play, dice, 60);
    if (entries.empty())
        return std::nullopt;
    for (std::size_t i = 0; i + 1 < entries.size(); ++i)
        play.force(entries[i]);
    const QDateTime last = play.entries().back().time;
    return Occasion{play.entries(), entries.back(), last.addSecs(3600 * fault.beforeLast.count() + 5)};
}

/// The sentence of the kind, if the judge has it against the entry.
QString sentenceOf(const OpenTable& table, FindingKind kind, const Findings& findings) {
    const auto found = std::ranges::find(findings, kind, &Finding::kind);
    return found == findings.end() ? QString() : sentence(*found, table.state());
}

/// Short, and without a word that only the code knows.
bool isPlain(const QString& words) {
    static const QRegularExpression code(u"[_{}<>]|::|[a-z][A-Z]"_s);
    return words.endsWith(u'.') && words.split(u' ').size() <= 45 && !code.match(words).hasMatch();
}

bool isRecordedAs(OpenTable& table, std::size_t before, const Entry& entry, const QString& reason) {
    const auto entries = table.window().file().ledger().entries();
    return std::ranges::any_of(entries.subspan(before), [&](const Recorded& recorded) {
        const bool same = std::holds_alternative<Roster>(entry) ? std::holds_alternative<Roster>(recorded.entry)
                                                                : recorded.entry == entry; // a roster keeps its names
        return same && recorded.overruled == std::optional(reason);
    });
}

enum class Went { NoPlace, NoWay, NotSaid, NotAllowed, Done };

Went tryThrough(const Fault& fault, const Occasion& moment, QString& words) {
    OpenTable table(std::span<const Recorded>(moment.before), QSize(1366, 768));
    table.now = moment.at;
    const QString expected =
        sentenceOf(table, fault.kind, table.window().file().judge(moment.unlawful, std::nullopt, moment.at));
    if (expected.isEmpty())
        return Went::NoPlace;
    DraftingHand hand(table);
    const std::size_t before = table.recorded();
    const std::optional<QString> heard = hand.hear(moment.unlawful);
    if (table.recorded() != before)
        qFatal("recorded before it was said");
    if (!heard)
        return Went::NoWay;
    words = expected;
    if (!heard->contains(expected))
        return Went::NotSaid;
    hand.allow(u"as the referee says"_s);
    return isRecordedAs(table, before, moment.unlawful, u"as the referee says"_s) ? Went::Done : Went::NotAllowed;
}

} // namespace

class TestUnlawfulActions : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whatIsUnlawfulIsSaidAndMayBeAllowed_data();
    void whatIsUnlawfulIsSaidAndMayBeAllowed();
    void whatMakesNoSenseIsSaid_data();
    void whatMakesNoSenseIsSaid();
    void cleanupTestCase();

private:
    int m_driven = 0;
    int m_refused = 0;
};

void TestUnlawfulActions::whatIsUnlawfulIsSaidAndMayBeAllowed_data() {
    QTest::addColumn<int>("fault");
    const std::vector<Fault> faults = allFaults();
    for (std::size_t i = 0; i < faults.size(); ++i)
        QTest::newRow(faults[i].name) << static_cast<int>(i);
}

void TestUnlawfulActions::whatIsUnlawfulIsSaidAndMayBeAllowed() {
    QFETCH(int, fault);
    const Fault tried = allFaults().at(static_cast<std::size_t>(fault));
    const bool reachable = !outOfReach().contains(QLatin1String(tried.name));
    Went outcome = Went::NoPlace;
    QString words;
    int found = 0;
    const QStringList ids{u"high-school"_s, u"international"_s, u"college-women"_s};
    for (std::uint32_t seed = 1; seed <= mostSeeds && outcome != Went::Done && (reachable || found < 1); ++seed) {
        const std::optional<Occasion> moment = momentFor(tried, ids.at(static_cast<int>(seed) % 3), seed);
        if (!moment)
            continue;
        ++found;
        const Went now = tryThrough(tried, *moment, words);
        outcome = std::max(outcome, now);
        if (now == Went::NotSaid || now == Went::NotAllowed)
            break;
    }
    QVERIFY2(found > 0, "no match has a place for it");
    if (!reachable) {
        QVERIFY2(outcome < Went::NotSaid, "there is a way to it after all");
        return;
    }
    QVERIFY2(outcome != Went::NoWay, "the window has no way to it");
    QVERIFY2(outcome != Went::NotSaid, qPrintable(u"not said: "_s + words));
    QVERIFY2(outcome != Went::NotAllowed, qPrintable(u"cannot be allowed: "_s + words));
    QVERIFY2(outcome == Went::Done, "it was never unlawful");
    QVERIFY2(isPlain(words), qPrintable(words));
    qInfo("%s", qPrintable(words));
    ++m_driven;
}

namespace {

using Keys = void (*)(OpenTable&);

struct Refusal {
    FindingKind kind;
    const char* name;
    MatchBuilder match;
    Keys keys;
    std::optional<Entry> drafted = {}; ///< drawn up in a dialog in place of keys
};

MatchBuilder changedBeforeTheStart() {
    MatchBuilder match;
    match.open().toss(Team::Home).lineUp(Team::Home, {1, 2, 3, 4, 5, 6});
    return match.lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16}).substitute(Team::Home, 7, 2);
}

MatchBuilder firstSetWon() {
    MatchBuilder match;
    match.started();
    for (int rally = 0; rally < 25; ++rally)
        match.play("h");
    return match;
}

MatchBuilder firstSetSealed() {
    MatchBuilder match;
    match.open(3, signedBySet()).toss(Team::Home);
    return signOff(playSet(match, Team::Home), 1);
}

Entry otherLineUp() {
    LineUp lineUp{Team::Home, {}, {}, {}};
    for (std::size_t place = 0; place < lineUp.positions.size(); ++place)
        lineUp.positions.at(place) = ShirtNumber(6 - static_cast<int>(place));
    return lineUp;
}

/// A rally put in before the first entry of a kind.
template <typename Kind>
void putRallyInBefore(OpenTable& table) {
    const auto entries = table.window().file().ledger().entries();
    const auto at = std::ranges::find_if(
        entries, [](const Recorded& recorded) { return std::holds_alternative<Kind>(recorded.entry); });
    table.press(Qt::Key_C);
    auto* bar = table.find<RepairBar>("repairBar");
    while (bar->target() > at->number)
        table.press(Qt::Key_Down);
    table.press(Qt::Key_B);
    table.press(Qt::Key_Left);
}

std::vector<Refusal> refusals() {
    return {
        {SETFOLIO_FAULT(RallyUndecided), MatchBuilder().started().add(ServeContacted{}),
         [](OpenTable& table) { table.press(Qt::Key_D); }},
        {SETFOLIO_FAULT(ServeAlreadyContacted), MatchBuilder().started().add(ServeContacted{}),
         [](OpenTable& table) { table.press(Qt::Key_Space); }},
        {SETFOLIO_FAULT(NotOnCourt), MatchBuilder().started(),
         [](OpenTable& table) {
             table.press(Qt::Key_S);
             table.type("10");
             table.type("33");
         }},
        {SETFOLIO_FAULT(MatchIsSuspended), MatchBuilder().started().add(Suspended{}).add(Resumed{}),
         putRallyInBefore<Resumed>},
        {SETFOLIO_FAULT(SetNotStarted), MatchBuilder().started().play("h"), putRallyInBefore<SetStarted>},
        {SETFOLIO_FAULT(SetAlreadyWon), firstSetWon().add(SetEnded{}), putRallyInBefore<SetEnded>},
        {SETFOLIO_FAULT(KeepsTooMuch), firstSetWon().add(SetEnded{}),
         [](OpenTable& table) {
             table.window().perform(TableCommand::Forfeit);
             table.press(Qt::Key_F);
             table.press(Qt::Key_E);
             table.type("26");
         }},
        {SETFOLIO_FAULT(SetNotEnded), firstSetWon().add(SetEnded{}),
         [](OpenTable& table) {
             table.window().perform(TableCommand::Forfeit);
             table.press(Qt::Key_F);
             table.press(Qt::Key_E);
             table.find<NumberField>("formNumber")->setFocus(Qt::TabFocusReason);
             table.press(Qt::Key_Backspace);
             table.type("2");
         }},
        {SETFOLIO_FAULT(IsSealed), firstSetSealed(),
         [](OpenTable& table) {
             putRallyInBefore<SetEnded>(table);
             table.press(Qt::Key_X);
         }},
        {SETFOLIO_FAULT(ChangedSinceLineUp), changedBeforeTheStart(), nullptr, otherLineUp()},
    };
}

/// The others that make no sense, and why the window never comes to them.
struct Unreachable {
    const char* name;
    const char* why;
};
constexpr std::array unreachable{
    Unreachable{"MatchNotOpened", "a window has a match that is opened"},
    Unreachable{"MatchAlreadyOpened", "a new match gets a file of its own"},
    Unreachable{"MatchAlreadyWon", "once the match is won, the commands of play are off"},
    Unreachable{"MatchIsClosed", "commands that record are off"},
    Unreachable{"MatchNotWon", "the close is offered when the match is won"},
    Unreachable{"NotSuspended", "going on is offered while play is suspended"},
    Unreachable{"SetAlreadyStarted", "toss and line-ups are off once the set has started"},
    Unreachable{"SetNotWon", "the end is offered when the set is won"},
    Unreachable{"TossMissing", "the toss is the step before"},
    Unreachable{"LineUpMissing", "the line-ups are the step before"},
    Unreachable{"NoSuchEntry", "the list of entries shows what there is"},
    Unreachable{"CannotBeStruck", "the opening is not in the list of what can be struck"},
    Unreachable{"BestOfImpossible", "the number of sets is chosen from the possible ones"},
    Unreachable{"NumberImpossible", "fields take one or two digits"},
    Unreachable{"LiberoNotServing", "the end of her serve is offered while she serves"},
    Unreachable{"NotServing", "her serve is offered to the team that serves"},
    Unreachable{"LiberoNotOnCourt", "out is offered while she is on court"},
    Unreachable{"NoSuchPoint", "points are counted, and the bar finds their entry"},
    Unreachable{"NeverServed", "the team that served before is offered when there is one"},
    Unreachable{"NotSealed", "the sign-off window offers only what is due"},
    Unreachable{"SignedTooEarly", "the sign-off window offers only what is due"},
    Unreachable{"SignaturesMissing", "the sign-off window offers only what is due"},
    Unreachable{"ReasonMissing", "the sign-off window offers only what is due"},
};

} // namespace

void TestUnlawfulActions::whatMakesNoSenseIsSaid_data() {
    QTest::addColumn<int>("refusal");
    const std::vector<Refusal> rows = refusals();
    for (std::size_t i = 0; i < rows.size(); ++i)
        QTest::newRow(rows[i].name) << static_cast<int>(i);
}

void TestUnlawfulActions::whatMakesNoSenseIsSaid() {
    QFETCH(int, refusal);
    const Refusal row = refusals().at(static_cast<std::size_t>(refusal));
    OpenTable table(row.match);
    const std::size_t before = table.recorded();
    if (row.keys)
        row.keys(table);
    DraftingHand hand(table);
    const QString said = row.drafted ? hand.hear(*row.drafted).value_or(QString()) : hand.said();
    QCOMPARE(table.recorded(), before);
    // Of a refusal the sentence depends on nothing but its kind, the names of the match and the numbers in it.
    QString start = sentence(Finding{.kind = row.kind}, table.state());
    start = start.left(std::max<qsizetype>(8, start.indexOf(QRegularExpression(u"[0-9(%]"_s))));
    QVERIFY2(!said.simplified().isEmpty(), "nothing is said");
    QVERIFY2(said.contains(start) || row.kind == FindingKind::NotOnCourt, qPrintable(said + u" | "_s + start));
    QVERIFY2(isPlain(said.simplified()), qPrintable(said));
    if (row.drafted)
        hand.allow(u"as the referee says"_s); // and no reason gets by
    else
        table.press(Qt::Key_Return); // nor does Enter
    QCOMPARE(table.recorded(), before);
    qInfo("%s", qPrintable(said.simplified()));
    ++m_refused;
}

void TestUnlawfulActions::cleanupTestCase() {
    const std::size_t kinds = static_cast<std::size_t>(m_driven + m_refused) + outOfReach().size() + unreachable.size();
    qInfo(
        "%d kinds that the referee may allow and %d that make no sense, tried through the window; %d of %d out of its "
        "reach:",
        m_driven, m_refused, static_cast<int>(outOfReach().size() + unreachable.size()),
        static_cast<int>(findingKindCount));
    for (const auto& [name, why] : outOfReach())
        qInfo("%s: %s", qPrintable(name), why);
    for (const Unreachable& kind : unreachable)
        qInfo("%s: %s", kind.name, kind.why);
    QCOMPARE(kinds, findingKindCount);
}

QTEST_MAIN(TestUnlawfulActions)
#include "tst_unlawfulactions.moc"
