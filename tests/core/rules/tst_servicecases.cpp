// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/core/rules/caseplay.h"

using namespace setfolio;
using namespace setfolio::testing;
using namespace setfolio::testing::families;

/// After "fiveToThree" home leads 5-3 and has the serve, number 2 being its server.
static const std::string fiveToThree = "rally hhhhvvvh; ";

class TestServiceCases : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whoServes_data();
    void whoServes() { checkScore(); }
    void wrongServersCost_data();
    void wrongServersCost() { checkScore(); }
    void wrongServersAreRuledOn_data();
    void wrongServersAreRuledOn() { checkFindings(); }
    void servesAndReplays_data();
    void servesAndReplays() { checkFindings(); }
    void pointsAreTakenBackFromAPointOnly();
};

// clang-format off
void TestServiceCases::whoServes_data() {
    addCaseColumns();
    caseRow(in, "",                                                  "0:0 h 1",   "FIVB Rules 2025-2028, 12.2.1, 7.4.1");
    caseRow(in, "rally h",                                           "1:0 h 1",   "FIVB Rules 2025-2028, 12.2.2.1");
    caseRow(in, "rally v",                                           "0:1 v 2",   "FIVB Rules 2025-2028, 12.2.2.2");
    caseRow(in, "rally vh",                                          "1:1 h 2",   "FIVB Rules 2025-2028, 7.6.2");
    caseRow(in, "rally vhvhvhvhvhvh",                                "6:6 h 1",   "FIVB Rules 2025-2028, 7.6.2");
    caseRow(hs, "rally v",                                           "0:1 v 2",   "IHSAA Volleyball Scorekeeping Narrative; IHSA Rally Scoring Sample Game");
    caseRow(hs, "rally vh",                                          "1:1 h 2",   "IHSAA Volleyball Scorekeeping Narrative");
    caseRow(cw, "rally v",                                           "0:1 v 2",   "NCAA Women's Volleyball 2012 and 2013 Rules, explanation of scorekeeping example");
    caseRow(cw, "rally vh",                                          "1:1 h 2",   "NCAA Women's Volleyball 2012 and 2013 Rules, 8.1.3.1.2");
    caseRow(cl, "rally v",                                           "0:1 v 2",   "USA Volleyball, Scorer tips and reminders 2014, 6");
    caseRow(in, "win h",                                             "0:0 v 1",   "FIVB Rules 2025-2028, 12.1.2");
    caseRow(cw, "win h",                                             "0:0 v 1",   "NCAA Women's Volleyball 2012 and 2013 Rules, 13.1.2");
    caseRow(in, "rally n",                                           "0:1 v 2",   "FIVB Rules 2025-2028, 12.4.4, 6.1.3");
    caseRow(cw, "rally n",                                           "0:1 v 2",   "NCAA Women's Volleyball 2012 and 2013 Rules, 13.1.3.5");
    caseRow(hs, "rally n",                                           "0:1 v 2",   "from memory: five seconds");
    caseRow(in, "rally sr",                                          "0:0 h 1",   "FIVB Rules 2025-2028, 6.1.2.2, 17.1.1");
    caseRow(cw, "rally sr",                                          "0:0 h 1",   "NCAA Women's Volleyball 2012 and 2013 Rules, 8.1.1");
    caseRow(hs, "rally sr",                                          "0:0 h 1",   "CVVOA Interpreter's Report of September 2015");
    caseRow(hs, "rally e",                                           "0:0 h 1",   "GTCCVO, Ask the interpreter (NFHS 8-2-5)");
    caseRow(cw, "rally hvh; seen 4; rally sr",                       "2:1 h 2",   "from memory: play was dead before the contact");
    caseRow(in, times(24, "rally hv; "),                             "24:24 v 1", "FIVB Rules 2025-2028, 6.2: goes on at 24-24");
    caseRow(in, times(24, "rally hv; ") + "rally h",                 "25:24 h 1", "FIVB Rules 2025-2028, 6.2");
    caseRow(in, times(24, "rally hv; ") + "rally hh",                "26:24",     "FIVB Rules 2025-2028, 6.2");
    caseRow(cw, times(24, "rally hv; ") + "rally hh",                "26:24",     "NCAA Women's Volleyball 2012 and 2013 Rules, 8.2.1");
    caseRow(hs, times(30, "rally hv; ") + "rally h",                 "31:30 h 1", "NFHS 2003 rule changes: no cap");
    caseRow(in, "win h; win h; win v; win v; " + times(15, "rally h; "), "15:0",  "FIVB Rules 2025-2028, 6.3.2");
    caseRow(in, "win h; win h; win v; win v; " + times(14, "rally hv; ") + "rally h", "15:14 h 3", "FIVB Rules 2025-2028, 6.3.2");
    caseRow(hs, "h vacate 2; rally vhn",                             "1:2 v 3",   "from memory (NFHS 6-2-1, 6-2-2)");
}

void TestServiceCases::wrongServersCost_data() {
    addCaseColumns();
    caseRow(in, "rally hhs; h illegal 7 2",                          "0:1 v 2",   "FIVB Rules 2025-2028, 15.9.2: a point and the serve, the points since the fault go");
    caseRow(in, "rally hhv; h illegal 7 2",                          "0:1 v 2",   "FIVB Rules 2025-2028, 15.9.2, 7.7.1.1: a single point");
    caseRow(in, "rally hhvs; h illegal 7 2",                         "0:2 v 2",   "FIVB Rules 2025-2028, 15.9.2: the opponents' points stand, and the rally is theirs");
    caseRow(in, "rally hhs; v illegal 7",                            "3:0 h 1",   "FIVB Rules 2025-2028, 15.9.2: by the receiving team");
    caseRow(in, "rally hh; h illegal 7",                             "2:1 v 2",   "FIVB Rules 2025-2028, 15.9.2: the moment is not known");
    caseRow(in, fiveToThree + "rally hhh; h wrong 4 3",              "5:4 v 3",   "FIVB Rules 2025-2028, 7.7.2");
    caseRow(in, fiveToThree + "rally hhh; h wrong 4",                "8:4 v 3",   "FIVB Rules 2025-2028, 7.7.2: the moment is not known");
    caseRow(in, fiveToThree + "rally h; h wrong 4 1",                "5:4 v 3",   "FIVB Rules 2025-2028, 7.7.1.1");
    caseRow(in, fiveToThree + "rally v; h wrong 4",                  "5:4 v 3",   "FIVB Rules 2025-2028, 7.7.1.1");
    caseRow(in, fiveToThree + "rally s; h wrong 4",                  "5:4 v 3",   "FIVB Rules 2025-2028, 7.7.1.1");
    caseRow(in, fiveToThree + "rally hvv; h wrong 4 1",              "5:5 v 3",   "FIVB Rules 2025-2028, 7.7.2: the opponents' points stand");
    caseRow(hs, "rally hhhhhhhhh; h wrong 4 9",                      "0:1 v 2",   "from memory: the points of that term");
    caseRow(hs, "rally hhhv; h wrong 4 3",                           "0:1 v 2",   "from memory: until the opponents' next contact");
    caseRow(cw, "rally s; h wrong 4",                                "0:1 v 2",   "NCAA Women's Volleyball 2012 and 2013 Rules, Instructions for using the scoresheet");
    caseRow(cl, "rally s; h wrong 4",                                "0:1 v 2",   "GEVA Region scorekeeper clinic 2010");
    caseRow(hs, "rally s; h wrong 4",                                "0:1 v 2",   "Scoring & Libero Tracking, EOA Volleyball Officials Clinic");
    caseRow(in, "rally s; h wrong 4; rally h",                       "1:1 h 2",   "FIVB Rules 2025-2028, 7.7.1: the order is put right");
    caseRow(in, times(25, "rally h; ") + "h wrong 4 1",              "24:1 v 2",  "FIVB Rules 2025-2028, 7.7.1.1");
}

void TestServiceCases::wrongServersAreRuledOn_data() {
    addCaseColumns();
    caseRow(in, "seen 4; rally s",                                   "",                       "FIVB Rules 2025-2028, 27.2.2.2: silent until the serve");
    caseRow(in, "seen 4; rally h",                                   "wrong-server-unruled",   "FIVB Rules 2025-2028, 7.7.1.1");
    caseRow(in, "seen 4; rally sh",                                  "wrong-server-unruled",   "FIVB Rules 2025-2028, 7.7.1.1");
    caseRow(in, "rally s; seen 4; rally v",                          "wrong-server-unruled",   "FIVB Rules 2025-2028, 7.7.1.1");
    caseRow(cw, "seen 4; rally h",                                   "wrong-server-unruled",   "NCAA Women's Volleyball 2012 and 2013 Rules, Instructions for using the scoresheet");
    caseRow(in, "seen 44",                                           "server-not-on-roster",   "sense");
    caseRow(in, "rally s; h wrong 44",                               "server-not-on-roster",   "sense");
    caseRow(in, "seen 1; rally h",                                   "",                       "FIVB Rules 2025-2028, 7.7.1");
    caseRow(cw, "seen 4; seen 1; rally h",                           "",                       "NCAA Women's Volleyball 2012 and 2013 Rules, 13.1.3.5: the right server steps in");
    caseRow(cl, "seen 4; rally sr; rally h",                         "",                       "from memory: a replay takes it away");
    caseRow(hs, "h serves 9; seen 9; rally h",                       "",                       "Libero Serving 2013");
    caseRow(hs, "h serves 9; seen 1; rally h",                       "wrong-server-unruled",   "Libero Serving 2013");
    caseRow(hs, "h sub 7 1; seen 7; rally h",                        "",                       "Scoring & Libero Tracking, EOA Volleyball Officials Clinic");
    caseRow(in, "seen 4; rally s; h wrong 4",                        "",                       "FIVB Rules 2025-2028, 7.7.1.1");
    caseRow(in, "h wrong 4",                                         "not-served-yet",         "FIVB Rules 2025-2028, 27.2.2.2: after the service");
    caseRow(cw, "h wrong 4",                                         "not-served-yet",         "NCAA Women's Volleyball 2012 and 2013 Rules, Instructions for using the scoresheet");
    caseRow(cl, "h wrong 4",                                         "not-served-yet",         "GEVA Region scorekeeper clinic 2010");
    caseRow(in, "rally hhvh; h wrong 4",                             "not-served-yet",         "FIVB Rules 2025-2028, 27.2.2.2: a new term");
    caseRow(in, "rally hhvh; h wrong 4 3",                           "",                       "FIVB Rules 2025-2028, 7.7.2: an earlier term");
    caseRow(in, "rally h; v wrong 4",                                "never-served",           "sense");
    caseRow(in, "rally s; h wrong 1",                                "served-rightly",         "FIVB Rules 2025-2028, 7.7.1");
    caseRow(in, "rally v; h wrong 1",                                "served-rightly",         "FIVB Rules 2025-2028, 7.7.1");
    caseRow(in, "rally v; h wrong 2",                                "",                       "FIVB Rules 2025-2028, 7.7.1");
    caseRow(in, "rally vh; v wrong 2",                               "served-rightly",         "FIVB Rules 2025-2028, 7.7.1");
    caseRow(hs, "rally hhvvhhh; h wrong 4 2",                        "",                       "from memory: the present term");
    caseRow(hs, "rally hhvvhhh; h wrong 4 3",                        "taken-back-too-much",    "from memory: the point that won the serve is not of the term");
    caseRow(hs, "rally hhvvhhh; h wrong 4 5",                        "taken-back-too-much",    "from memory: the present term");
    caseRow(in, "rally hhvvhhh; h wrong 4 5",                        "",                       "FIVB Rules 2025-2028, 7.7.2: since the fault");
    caseRow(hs, "rally hhhv; h wrong 4 3",                           "",                       "from memory: before the opponents' next contact");
    caseRow(hs, "rally hhhvse; h wrong 4 3",                         "",                       "GTCCVO, Ask the interpreter (NFHS 8-2-5): a dropped toss is no contact");
    caseRow(hs, "rally hhhvses; h wrong 4 3",                        "taken-back-too-late",    "from memory: after the opponents' next contact");
    caseRow(hs, "rally hhhvsr; h wrong 4 3",                         "taken-back-too-late",    "from memory: it was contacted, though it is replayed");
    caseRow(hs, "rally hhhvs; h wrong 4 3",                          "taken-back-too-late",    "from memory: after the opponents' next contact");
    caseRow(hs, "rally hhhvh; h wrong 4 3",                          "taken-back-too-much",    "from memory: another term");
    caseRow(in, "rally hhhvs; h wrong 4 3",                          "",                       "FIVB Rules 2025-2028, 7.7.2: whenever it is established");
    caseRow(cl, "rally hhhvs; h wrong 4 3",                          "taken-back-too-late",    "from memory");
    caseRow(hs, "rally hh; v time-out; rally hs; h wrong 4 3",       "requests-go-too",        "from memory: requests of the time go too");
    caseRow(hs, "rally hh; v sub 7 1; rally h; h wrong 4 2",         "requests-go-too",        "from memory: requests of the time go too");
    caseRow(hs, "v time-out; rally hhs; h wrong 4 2",                "",                       "from memory: before the first of the points");
    caseRow(hs, "rally hh; v time-out; rally hs; h wrong 4 1",       "",                       "from memory: before the first of the points");
    caseRow(cw, "rally hh; v time-out; rally hs; h wrong 4 3",       "",                       "from memory: they stand");
    caseRow(in, "rally hh; v time-out; rally hs; h wrong 4 3",       "",                       "from memory: they stand");
    caseRow(in, "rally hhs; h illegal 7 2",                          "",                       "FIVB Rules 2025-2028, 15.9.2");
    caseRow(in, "rally hhv; v illegal 7",                            "",                       "FIVB Rules 2025-2028, 15.9.2: the moment is not known");
    caseRow(in, "h illegal 7",                                       "play-not-resumed",       "FIVB Rules 2025-2028, 15.9.2: after play was resumed");
    caseRow(in, "rally hhhvs; h illegal 7 3",                        "",                       "FIVB Rules 2025-2028, 15.9.2: whenever it is established");
    caseRow(hs, "rally hhhv; h illegal 7 3",                         "",                       "from memory: before the opponents' next contact");
    caseRow(hs, "rally hhhvs; h illegal 7 3",                        "taken-back-too-late",    "from memory: after the opponents' next contact");
    caseRow(hs, "rally hhvhh; h illegal 7 4",                        "taken-back-too-much",    "from memory: the present term");
    caseRow(in, "h sub 7 3; rally hs; h illegal 7; rally s",          "illegal-player-stays",   "FIVB Rules 2025-2028, 15.9.2: it is put right");
    caseRow(in, "h sub 7 3; rally hs; h illegal 7; rally v",          "illegal-player-stays",   "FIVB Rules 2025-2028, 15.9.2: it is put right");
    caseRow(hs, "h sub 7 3; rally hs; h illegal 7; rally s",          "illegal-player-stays",   "Scoring & Libero Tracking, EOA Volleyball Officials Clinic: never counts");
    caseRow(in, "h sub 7 3; rally hs; h illegal 7; h sub 3 7; rally s", "",                     "FIVB Rules 2025-2028, 15.9.2: it is put right");
    caseRow(in, "h sub 7 3; rally hs; h illegal 7; h sub 3 7",        "",                       "FIVB Rules 2025-2028, 15.9.2: whom she replaced comes back");
    caseRow(in, "h sub 7 3; rally hs; h illegal 7; h sub 3 7; rally h; h sub 8 3", "",          "FIVB Rules 2025-2028, 15.9.2, 15.6: the illegal one was none");
    caseRow(in, "h sub 7 3; rally hs; h illegal 7; h sub 3 7; h sub 8 2", "",                   "FIVB Rules 2025-2028, 15.9.2: what is put right is no request");
    caseRow(hs, "h sub 7 2; rally h; h sub 2 3; rally hs; h illegal 2; h sub 3 2; rally h; h sub 2 7", "", "Scoring & Libero Tracking, EOA Volleyball Officials Clinic: only in the original position");
    caseRow(hs, "h sub 7 2; rally h; h sub 2 3; rally hs; h illegal 2; h sub 3 2; rally h; h sub 2 4", "wrong-slot", "Scoring & Libero Tracking, EOA Volleyball Officials Clinic: only in the original position");
    caseRow(hs, "h sub 7 3; rally hs; h illegal 7; " + times(3, "h sub 3 7; h sub 7 3; ") + "rally s", "", "sense: after she is put right she may come in as others do");
    caseRow(hs, times(9, "h sub 7 1; h sub 1 7; ") + "h sub 8 2; rally hs; h illegal 8; h sub 2 8", "", "Scoring & Libero Tracking, EOA Volleyball Officials Clinic: never counts");
    caseRow(hs, times(9, "h sub 7 1; h sub 1 7; ") + "h sub 8 2; rally hs; h illegal 8; h sub 2 8; rally h; h sub 8 2", "substitution-limit", "Scoring & Libero Tracking, EOA Volleyball Officials Clinic: eighteen");
    caseRow(hs, times(8, "h sub 7 1; h sub 1 7; ") + "h sub 7 1; h sub 8 2; rally hs; h illegal 8; h sub 2 8; rally h; h sub 1 7", "", "Scoring & Libero Tracking, EOA Volleyball Officials Clinic: never counts");
    caseRow(in, "h exceptional 7 3; rally hs; h illegal 7; h sub 3 7", "",                      "FIVB Rules 2025-2028, 15.9.2: she is not out for good");
    caseRow(in, "rally hs; h illegal 3; rally s",                     "",                       "sense: nobody came in for whom she could go");
    caseRow(in, "rally hhvhh; h illegal-libero 9 4",                 "",                       "FIVB Rules 2025-2028, 19.3.2.9: as an illegal substitution");
    caseRow(cw, "rally hhvhh; h illegal-libero 9 4",                 "taken-back-too-much",    "from memory: as a wrong server");
}

void TestServiceCases::servesAndReplays_data() {
    addCaseColumns();
    caseRow(hs, "rally e",                                           "",                       "GTCCVO, Ask the interpreter (NFHS 8-2-5)");
    caseRow(hs, "rally ee",                                          "re-serve-limit",         "GTCCVO, Ask the interpreter (NFHS 8-2-5)");
    caseRow(hs, "rally evhe",                                        "",                       "GTCCVO, Ask the interpreter (NFHS 8-2-5): a new term");
    caseRow(hs, "rally ehe",                                         "re-serve-limit",         "GTCCVO, Ask the interpreter (NFHS 8-2-5): the same term");
    caseRow(cw, "rally e",                                           "re-serve-limit",         "NCAA Women's Volleyball 2012 and 2013 Rules, 13.1.3.2");
    caseRow(cl, "rally e",                                           "re-serve-limit",         "GEVA Region scorekeeper clinic 2010");
    caseRow(in, "rally e",                                           "re-serve-limit",         "FIVB Rules 2025-2028, 12.4.2");
    caseRow(hs, "h vacate 2; rally vhs",                             "vacant-server",          "from memory (NFHS 6-2-1, 6-2-2)");
    caseRow(hs, "h vacate 2; rally vhh",                             "vacant-server",          "from memory (NFHS 6-2-1, 6-2-2)");
    caseRow(hs, "h vacate 2; rally vhn",                             "",                       "from memory (NFHS 6-2-1, 6-2-2)");
    caseRow(hs, "h vacate 2; rally vh; h sub 7 2; rally s",          "",                       "from memory");
    caseRow(in, "rally ss",                                          "serve-already-contacted", "sense");
    caseRow(in, "rally sn",                                          "serve-already-contacted", "sense");
}
// clang-format on

void TestServiceCases::pointsAreTakenBackFromAPointOnly() {
    const CasePlay play(QString::fromLatin1(in), QStringLiteral("rally hhv"));
    const EntryNumber ofVisitors = play.match().last();
    const Findings findings = play.match().judge(WrongServer{Team::Home, ShirtNumber(4), ofVisitors});
    QCOMPARE(findings.size(), std::size_t(1));
    QCOMPARE(findings[0].kind, FindingKind::NoSuchPoint);
    QCOMPARE(findings[0].gravity, Gravity::Refused);
}

QTEST_APPLESS_MAIN(TestServiceCases)
#include "tst_servicecases.moc"
