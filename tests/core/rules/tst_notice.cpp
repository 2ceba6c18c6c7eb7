// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/notice.h"
#include "tests/core/rules/caseplay.h"

using namespace setfolio;
using namespace setfolio::testing;
using namespace setfolio::testing::families;

namespace {

QString kinds(const MatchBuilder& match) {
    static const char* const names[] = {"substitutions",       "last-time-out",     "set-point",
                                        "match-point",         "set-won",           "sides-change",
                                        "wrong-server-silent", "wrong-server-told", "vacant-server",
                                        "libero-must-leave",   "improper-request"};
    QStringList words;
    for (const Notice& notice : noticesFor(match.state(), match.entries().back().entry))
        words += QStringLiteral("%1 %2").arg(QLatin1String(names[int(notice.kind)]),
                                             QLatin1String(notice.team == Team::Home ? "home" : "visitors"));
    return words.join(QStringLiteral(", "));
}

} // namespace

class TestNotice : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theSecondRefereeIsToldOfSetPointAndMatchPoint_data() {
        QTest::addColumn<int>("home");
        QTest::addColumn<int>("visitors");
        QTest::addColumn<QString>("notices");
        // Scoring & Libero Tracking, EOA Volleyball Officials Clinic: set and match point are announced to the second
        // referee.
        // clang-format off
        QTest::newRow("23-23 nothing yet")          << 23 << 23 << "";
        QTest::newRow("24-23")                      << 24 << 23 << "set-point home";
        QTest::newRow("24-24 not any more")         << 24 << 24 << "";
        QTest::newRow("25-24 again")                << 25 << 24 << "set-point home";
        QTest::newRow("20-24")                      << 20 << 24 << "set-point visitors";
        QTest::newRow("25-20 won: to be confirmed") << 25 << 20 << "set-won home";
        // clang-format on
    }
    void theSecondRefereeIsToldOfSetPointAndMatchPoint() {
        QFETCH(int, home);
        QFETCH(int, visitors);
        MatchBuilder match;
        match.started();
        const int level = std::min(home, visitors);
        for (int i = 0; i < level; ++i)
            match.play("hv");
        match.play(QByteArray(home - level, 'h').constData()).play(QByteArray(visitors - level, 'v').constData());
        QCOMPARE(match.set().score, (PerTeam<int>{home, visitors}));
        QTEST(kinds(match), "notices");
    }

    void matchPointIsTheSetPointOfTheLastSetNeeded() {
        MatchBuilder match;
        match.open(3);
        for (int set = 0; set < 2; ++set) {
            match.toss(Team::Home)
                .lineUp(Team::Home, {1, 2, 3, 4, 5, 6})
                .lineUp(Team::Visitors, {11, 12, 13, 14, 15, 16})
                .start()
                .play(QByteArray(24, 'h').constData());
            QCOMPARE(kinds(match), set ? QStringLiteral("match-point home") : QStringLiteral("set-point home"));
            match.play("h").add(SetEnded{});
        }
    }

    void substitutionsFifteenToEighteenAreTold() {
        // Scoring & Libero Tracking, EOA Volleyball Officials Clinic: the 15th, 16th, 17th and 18th.
        MatchBuilder match;
        match.started();
        for (int count = 1; count <= 18; ++count) {
            match.substitute(Team::Home, count % 2 ? 7 : 1, count % 2 ? 1 : 7);
            QCOMPARE(kinds(match), count >= 15 ? QStringLiteral("substitutions home") : QString());
        }
        match.play("h");
        QCOMPARE(kinds(match), QString());
    }

    void whatThePlayCallsFor_data() {
        addCaseColumns();
        const std::string decidingSet = "win h; win h; win v; win v; ";
        // clang-format off
        caseRow(in, decidingSet + times(7, "rally h; "),           "",                           "FIVB Rules 2025-2028, 18.2.2, 27.2.2");
        caseRow(in, decidingSet + times(8, "rally h; "),           "sides-change home",          "FIVB Rules 2025-2028, 18.2.2, 27.2.2: the eighth point");
        caseRow(in, decidingSet + times(8, "rally v; "),           "sides-change visitors",      "FIVB Rules 2025-2028, 18.2.2, 27.2.2: the eighth point");
        caseRow(in, decidingSet + times(9, "rally h; "),           "sides-change home",          "FIVB Rules 2025-2028, 18.2.2: as long as it is missed");
        caseRow(in, decidingSet + times(8, "rally h; ") + "sides", "",                           "FIVB Rules 2025-2028, 18.2.2");
        caseRow(hs, decidingSet + times(8, "rally h; "),           "",                           "from memory: none");
        caseRow(in, times(8, "rally h; "),                         "",                           "FIVB Rules 2025-2028, 18.2.2: the deciding set only");
        caseRow(in, "seen 4",                                      "wrong-server-silent home",   "FIVB Rules 2025-2028, 27.2.2.2");
        caseRow(cw, "seen 4",                                      "wrong-server-silent home",   "NCAA Women's Volleyball 2012 and 2013 Rules, Instructions for using the scoresheet");
        caseRow(cl, "seen 4",                                      "wrong-server-silent home",   "GEVA Region scorekeeper clinic 2010");
        caseRow(in, "seen 4; rally s",                             "wrong-server-told home",     "FIVB Rules 2025-2028, 27.2.2.2");
        caseRow(cw, "seen 4; rally s",                             "wrong-server-told home",     "NCAA Women's Volleyball 2012 and 2013 Rules, Instructions for using the scoresheet");
        caseRow(in, "seen 1",                                      "",                           "FIVB Rules 2025-2028, 27.2.2.2");
        caseRow(in, "seen 4; seen 1",                              "",                           "FIVB Rules 2025-2028, 27.2.2.2");
        caseRow(in, "seen 4; rally s; h wrong 4",                  "",                           "FIVB Rules 2025-2028, 7.7.1.1");
        // It is told as long as nobody has ruled: until the rally or the serve is done with, or the right number is seen.
        caseRow(in, "seen 4; rally s; seen 1",                     "",                           "sense: the right one after all");
        caseRow(in, "seen 4; rally s; seen 5",                     "wrong-server-told home",     "sense: another wrong one");
        caseRow(in, "seen 4; h time-out",                          "wrong-server-silent home",   "sense: she may still stand there after it");
        caseRow(in, "seen 4; rally sr",                            "",                           "FIVB Rules 2025-2028, 17.1.1, 17.2: the serve is repeated, by whom is seen then");
        caseRow(in, "seen 4; rally sh",                            "",                           "common practice: the referees have let the rally stand");
        caseRow(in, "seen 4; rally sv",                            "",                           "FIVB Rules 2025-2028, 7.7.1.1: the opponents have the point and the serve");
        caseRow(in, "seen 4; h card 7 penalty",                    "",                           "FIVB Rules 2025-2028, 21.3.1: the serve has gone over");
        caseRow(hs, "h vacate 2; rally vh",                        "vacant-server home",         "from memory (NFHS 6-2-1, 6-2-2)");
        caseRow(hs, "h vacate 3; rally vh",                        "",                           "from memory (NFHS 6-2-1, 6-2-2)");
        caseRow(in, "h libero 9 5; rally v",                       "",                           "FIVB Rules 2025-2028, 19.3.1");
        caseRow(in, "h libero 9 5; rally vh",                      "libero-must-leave home",     "FIVB Rules 2025-2028, 19.3.1");
        caseRow(in, "h libero 9 5; rally vh; h libero-out 9",      "",                           "FIVB Rules 2025-2028, 19.3.1");
        caseRow(in, "h improper",                                  "improper-request home",      "FIVB Rules 2025-2028, 15.11.2, 15.11.3");
        caseRow(in, "h improper; rally h",                         "",                           "FIVB Rules 2025-2028, 15.11.2, 15.11.3");
        // clang-format on
    }
    void whatThePlayCallsFor() {
        QFETCH(QString, rulebook);
        QFETCH(QString, play);
        QTEST(kinds(CasePlay(rulebook, play).match()), "expected");
    }

    void whatIsToldIsTheRulebooksAffair() {
        const Notice setPoint{NoticeKind::SetPoint, Team::Home, 25, 0};
        const Notice matchPoint{NoticeKind::MatchPoint, Team::Home, 25, 0};
        const Notice sides{NoticeKind::SidesChangeDue, Team::Home, 8, 0};
        const Notice silent{NoticeKind::WrongServerSilent, Team::Home, 0, 0};
        Rulebook book = highSchool();
        // Scoring & Libero Tracking, EOA Volleyball Officials Clinic: set and match point are announced.
        QVERIFY(isToBeTold(book, setPoint) && isToBeTold(book, matchPoint));
        QVERIFY(!isToBeTold(book, sides) && !isToBeTold(book, silent));
        book.setPointNotice = false;
        QVERIFY(!isToBeTold(book, setPoint) && isToBeTold(book, matchPoint));
        book.matchPointNotice = false;
        QVERIFY(!isToBeTold(book, matchPoint));
        // FIVB Rules 2025-2028, 27.2.2: the eighth point of a deciding set is told, the fifth and sixth substitution
        // too.
        book = publishedRulebook(QStringLiteral("international")).value();
        QVERIFY(isToBeTold(book, sides));
        QVERIFY(!isToBeTold(book, {NoticeKind::SubstitutionsUsed, Team::Home, 4, 6}));
        QVERIFY(isToBeTold(book, {NoticeKind::SubstitutionsUsed, Team::Home, 5, 6}));
    }

    void theLastTimeOutIsTold() {
        MatchBuilder match; // common practice
        match.started().add(TimeOut{Team::Visitors});
        QCOMPARE(kinds(match), QString());
        match.add(TimeOut{Team::Visitors});
        QCOMPARE(kinds(match), QStringLiteral("last-time-out visitors"));
    }
};

QTEST_APPLESS_MAIN(TestNotice)
#include "tst_notice.moc"
