// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/fold.h"
#include "core/rules/judge.h"
#include "ui/dialogs/clocktext.h"
#include "ui/dialogs/matchdraft.h"

#include <QSet>
#include <QTest>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

MatchDraft wholeDraft() {
    MatchDraft draft;
    draft.opened.competition = u"Estuary and Uplands Schools League"_s;
    draft.opened.division = u"Varsity girls"_s;
    draft.opened.matchNumber = u"17"_s;
    draft.opened.venue = u"Saltmarsh Field House"_s;
    draft.opened.date = QDate(2026, 10, 10);
    draft.opened.scheduled = QTime(18, 30);
    draft.opened.teams = {{u"Saltmarsh Herons"_s, u"SAL"_s, u"navy"_s}, {u"Quarry Ridge Larks"_s, u"QRL"_s, {}}};
    draft.rosters.home = {{u"4"_s, u"Ada Lund"_s, true, false}, {}, {u"2"_s, {}, false, true}};
    draft.rosters.visitors = {{u"12"_s, u"Bea Moss"_s, false, false}};
    draft.coaches.home = u"M. Aldous"_s;
    draft.officials = {{Role::FirstReferee, u"P. Quill"_s}, {Role::Scorer, u"R. Vane"_s}, {Role::Timer, u" "_s}};
    return draft;
}

using Code = DraftProblem::Code;

} // namespace

class MatchDraftTest : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void aNameGivesACode_data();
    void aNameGivesACode();
    void aWholeDraftHasNoProblems();
    void whatIsMissingIsNamed_data();
    void whatIsMissingIsNamed();
    void aDraftGivesTheFourEntriesThatOpenAMatch();
    void theEntriesAreLawful();
    void textsAreMadeFitForTheLedger();
    void theNextMatchKeepsWhatStaysTheSame();
    void theFileIsNamedByDateAndTeams_data();
    void theFileIsNamedByDateAndTeams();
    void aTakenFileNameIsCountedOn();
    void timesAreReadAsTyped_data();
    void timesAreReadAsTyped();
    void aTimeIsReadBackAsTheLocaleWritesIt_data();
    void aTimeIsReadBackAsTheLocaleWritesIt();
};

void MatchDraftTest::aNameGivesACode_data() {
    QTest::addColumn<QString>("name");
    QTest::addColumn<QString>("taken");
    QTest::addColumn<QString>("code");
    // clang-format off
    QTest::newRow("two words")          << u"Saltmarsh Herons"_s          << QString() << u"SAL"_s;
    QTest::newRow("three words")        << u"Quarry Ridge Larks"_s        << QString() << u"QRL"_s;
    QTest::newRow("one word")           << u"Larks"_s                     << QString() << u"LAR"_s;
    QTest::newRow("seven words")        << u"A B C D E F G"_s             << QString() << u"ABCDE"_s;
    QTest::newRow("abbreviation")       << u"St. Olave's Owls"_s          << QString() << u"SOO"_s;
    QTest::newRow("hyphen")             << u"North-East Mere"_s           << QString() << u"NEM"_s;
    QTest::newRow("lower case")         << u"tern bay"_s                  << QString() << u"TER"_s;
    QTest::newRow("accents")            << u"Žofin"_s                     << QString() << u"ŽOF"_s;
    QTest::newRow("two letters")        << u"Ox"_s                        << QString() << u"OX"_s;
    QTest::newRow("one letter")         << u"X"_s                         << QString() << u"X"_s;
    QTest::newRow("digits")             << u"Team 2"_s                    << QString() << u"TEA"_s;
    QTest::newRow("nothing")            << QString()                      << QString() << QString();
    QTest::newRow("signs only")         << u"-- !"_s                      << QString() << QString();
    QTest::newRow("taken, two words")   << u"Salt Pans"_s                 << u"SAL"_s  << u"SAP"_s;
    QTest::newRow("taken, three words") << u"Quiet River Lions"_s         << u"QRL"_s  << u"QUI"_s;
    QTest::newRow("taken, same name")   << u"Larks"_s                     << u"LAR"_s  << u"LARKS"_s;
    // clang-format on
}

void MatchDraftTest::aNameGivesACode() {
    QFETCH(QString, name);
    QFETCH(QString, taken);
    QFETCH(QString, code);
    QCOMPARE(codeFor(name, taken), code);
}

void MatchDraftTest::aWholeDraftHasNoProblems() {
    QVERIFY(problemsOf(wholeDraft()).empty());
}

void MatchDraftTest::whatIsMissingIsNamed_data() {
    QTest::addColumn<QString>("homeName");
    QTest::addColumn<QString>("homeCode");
    QTest::addColumn<QString>("visitorsCode");
    QTest::addColumn<int>("code");
    QTest::addColumn<int>("team");
    const int home = static_cast<int>(Team::Home);
    const int visitors = static_cast<int>(Team::Visitors);
    // clang-format off
    QTest::newRow("no name")           << QString()    << u"SAL"_s    << u"QRL"_s << int(Code::NameMissing) << home;
    QTest::newRow("blank name")        << u" \t"_s     << u"SAL"_s    << u"QRL"_s << int(Code::NameMissing) << home;
    QTest::newRow("no code")           << u"Herons"_s  << QString()   << u"QRL"_s << int(Code::CodeUnfit)   << home;
    QTest::newRow("one letter")        << u"Herons"_s  << u"S"_s      << u"QRL"_s << int(Code::CodeUnfit)   << home;
    QTest::newRow("six letters")       << u"Herons"_s  << u"SALTMA"_s << u"QRL"_s << int(Code::CodeUnfit)   << home;
    QTest::newRow("signs in the code") << u"Herons"_s  << u"S-L"_s    << u"QRL"_s << int(Code::CodeUnfit)   << home;
    QTest::newRow("the same code")     << u"Herons"_s  << u"SAL"_s    << u"SAL"_s << int(Code::SameCode)    << visitors;
    // clang-format on
}

void MatchDraftTest::whatIsMissingIsNamed() {
    QFETCH(QString, homeName);
    QFETCH(QString, homeCode);
    QFETCH(QString, visitorsCode);
    QFETCH(int, code);
    QFETCH(int, team);
    MatchDraft draft = wholeDraft();
    draft.opened.teams.home.name = homeName;
    draft.opened.teams.home.code = homeCode;
    draft.opened.teams.visitors.code = visitorsCode;
    const auto problems = problemsOf(draft);
    QCOMPARE(problems.size(), 1U);
    QCOMPARE(static_cast<int>(problems.front().code), code);
    QCOMPARE(static_cast<int>(problems.front().team), team);
}

void MatchDraftTest::aDraftGivesTheFourEntriesThatOpenAMatch() {
    const MatchDraft draft = wholeDraft();
    const std::vector<Entry> entries = entriesOf(draft);
    QCOMPARE(entries.size(), 4U);
    QCOMPARE(std::get<MatchOpened>(entries[0]), draft.opened);
    QCOMPARE(std::get<Roster>(entries[1]),
             (Roster{Team::Home,
                     {{ShirtNumber(4), u"Ada Lund"_s, true, false}, {ShirtNumber(2), {}, false, true}},
                     u"M. Aldous"_s}));
    QCOMPARE(std::get<Roster>(entries[2]),
             (Roster{Team::Visitors, {{ShirtNumber(12), u"Bea Moss"_s, false, false}}, {}}));
    QCOMPARE(std::get<Officials>(entries[3]),
             (Officials{{{Role::FirstReferee, u"P. Quill"_s}, {Role::Scorer, u"R. Vane"_s}}}));
}

void MatchDraftTest::theEntriesAreLawful() {
    MatchState state;
    std::uint32_t number = 0;
    for (const Entry& entry : entriesOf(wholeDraft())) {
        QVERIFY(judge(state, entry).empty());
        state = apply(state, Recorded{EntryNumber(++number), {}, entry, {}});
    }
    QCOMPARE(state.rosters.home.players.size(), 2U);
}

void MatchDraftTest::textsAreMadeFitForTheLedger() {
    MatchDraft draft = wholeDraft();
    draft.opened.venue = u"Salt\u0007marsh \t Field"_s + QChar(0xD800);
    draft.rosters.home[0].name = u" Ada\u0000 Lund\n"_s;
    const auto entries = entriesOf(draft);
    QCOMPARE(std::get<MatchOpened>(entries[0]).venue, u"Saltmarsh Field"_s);
    QCOMPARE(std::get<Roster>(entries[1]).players[0].name, u"Ada Lund"_s);
}

void MatchDraftTest::theNextMatchKeepsWhatStaysTheSame() {
    MatchState last;
    for (const Entry& entry : entriesOf(wholeDraft()))
        last = apply(last, Recorded{{}, {}, entry, {}});
    const MatchDraft next = draftAfter(last);
    QCOMPARE(next.opened.competition, last.opened->competition);
    QCOMPARE(next.opened.venue, last.opened->venue);
    QCOMPARE(next.opened.teams.home, last.opened->teams.home);
    QCOMPARE(playersOf(next.rosters.home), last.rosters.home.players);
    QCOMPARE(next.coaches.home, u"M. Aldous"_s);
    QCOMPARE(next.officials, (std::vector<Official>{{Role::Scorer, u"R. Vane"_s}}));
    QVERIFY(!next.opened.date.isValid() && !next.opened.scheduled.isValid());
    QVERIFY(next.opened.matchNumber.isEmpty() && next.opened.id.isEmpty());
    QCOMPARE(next.opened.teams.visitors, TeamName());
    QVERIFY(next.rosters.visitors.empty());
}

void MatchDraftTest::theFileIsNamedByDateAndTeams_data() {
    QTest::addColumn<QDate>("date");
    QTest::addColumn<QString>("home");
    QTest::addColumn<QString>("visitors");
    QTest::addColumn<QString>("name");
    // clang-format off
    QTest::newRow("usual")                    << QDate(2026, 10, 10) << u"SAL"_s  << u"QRL"_s << u"2026-10-10-SAL-QRL.setfolio"_s;
    QTest::newRow("no date")                  << QDate()             << u"SAL"_s  << u"QRL"_s << u"SAL-QRL.setfolio"_s;
    QTest::newRow("no codes")                 << QDate(2026, 1, 2)   << QString() << u" "_s   << u"2026-01-02-home-visitors.setfolio"_s;
    QTest::newRow("signs of paths are dropped")<< QDate(2026, 1, 2)  << u"../A"_s << u"B:\\"_s<< u"2026-01-02-A-B.setfolio"_s;
    // clang-format on
}

void MatchDraftTest::theFileIsNamedByDateAndTeams() {
    QFETCH(QDate, date);
    QFETCH(QString, home);
    QFETCH(QString, visitors);
    QFETCH(QString, name);
    MatchOpened opened;
    opened.date = date;
    opened.teams.home.code = home;
    opened.teams.visitors.code = visitors;
    QCOMPARE(fileNameFor(opened), name);
}

void MatchDraftTest::aTakenFileNameIsCountedOn() {
    QSet<QString> there;
    const auto isThere = [&there](const QString& path) { return there.contains(path); };
    QCOMPARE(freePath(u"matches"_s, u"a.setfolio"_s, isThere), u"matches/a.setfolio"_s);
    there << u"matches/a.setfolio"_s << u"matches/a-2.setfolio"_s;
    QCOMPARE(freePath(u"matches"_s, u"a.setfolio"_s, isThere), u"matches/a-3.setfolio"_s);
}

void MatchDraftTest::timesAreReadAsTyped_data() {
    QTest::addColumn<QString>("text");
    QTest::addColumn<QTime>("time");
    // clang-format off
    QTest::newRow("colon")             << u"19:04"_s     << QTime(19, 4);
    QTest::newRow("point")             << u"19.04"_s     << QTime(19, 4);
    QTest::newRow("four digits")       << u"1904"_s      << QTime(19, 4);
    QTest::newRow("three digits")      << u"704"_s       << QTime(7, 4);
    QTest::newRow("hour")              << u"19"_s        << QTime(19, 0);
    QTest::newRow("after noon")        << u"7:04 pm"_s   << QTime(19, 4);
    QTest::newRow("before noon")       << u"7:04am"_s    << QTime(7, 4);
    QTest::newRow("with points")       << u"7:04 p.m."_s << QTime(19, 4);
    QTest::newRow("hour after noon")   << u"7 PM"_s      << QTime(19, 0);
    QTest::newRow("noon")              << u"12:30 pm"_s  << QTime(12, 30);
    QTest::newRow("after midnight")    << u"12:30 am"_s  << QTime(0, 30);
    QTest::newRow("midnight")          << u"0:00"_s      << QTime(0, 0);
    QTest::newRow("hour 25")           << u"25:00"_s     << QTime();
    QTest::newRow("minute 60")         << u"19:60"_s     << QTime();
    QTest::newRow("hour 13 of 12")     << u"13:00 pm"_s  << QTime();
    QTest::newRow("no hour 0 of 12")   << u"0:30 am"_s   << QTime();
    QTest::newRow("half a time")       << u"19:"_s       << QTime();
    QTest::newRow("one minute digit")  << u"19:4"_s      << QTime();
    QTest::newRow("words")             << u"soon"_s      << QTime();
    QTest::newRow("nothing")           << QString()      << QTime();
    // clang-format on
}

void MatchDraftTest::timesAreReadAsTyped() {
    QFETCH(QString, text);
    QFETCH(QTime, time);
    QCOMPARE(timeFromText(text), time);
}

void MatchDraftTest::aTimeIsReadBackAsTheLocaleWritesIt_data() {
    QTest::addColumn<QLocale>("locale");
    QTest::newRow("United States") << QLocale(QLocale::English, QLocale::UnitedStates);
    QTest::newRow("United Kingdom") << QLocale(QLocale::English, QLocale::UnitedKingdom);
    QTest::newRow("Germany") << QLocale(QLocale::German, QLocale::Germany);
    QTest::newRow("Finland") << QLocale(QLocale::Finnish, QLocale::Finland);
    QTest::newRow("C") << QLocale::c();
}

void MatchDraftTest::aTimeIsReadBackAsTheLocaleWritesIt() {
    QFETCH(QLocale, locale);
    for (int minute = 0; minute < 24 * 60; minute += 7) {
        const QTime time = QTime(0, 0).addSecs(minute * 60);
        QCOMPARE(timeFromText(textOfTime(time, locale)), time);
    }
    QCOMPARE(textOfTime(QTime(), locale), QString());
}

} // namespace setfolio

QTEST_APPLESS_MAIN(setfolio::MatchDraftTest)
#include "tst_matchdraft.moc"
