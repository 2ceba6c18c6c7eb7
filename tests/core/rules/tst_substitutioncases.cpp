// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/core/rules/caseplay.h"

using namespace setfolio;
using namespace setfolio::testing;
using namespace setfolio::testing::families;

namespace {

constexpr auto eoa = "Scoring & Libero Tracking, EOA Volleyball Officials Clinic, citing NFHS Rule 5-6";

/// International: six substitutions, so that none is left; 1 is on the bench.
const std::string sixUsed = "h sub 7 1; h sub 8 2; h sub 11 3; h sub 12 4; h sub 13 5; h sub 14 6; rally h; ";
/// High school: eighteen substitutions, so that none is left; 1 is on court.
const std::string eighteenUsed = times(9, "h sub 7 1; h sub 1 7; ");

/// One substitution, a rally, the other way round, and a rally.
const std::string backAndForth = "h sub 7 1; rally h; h sub 1 7; rally v; ";

const std::string slips = "h slip 1 2 3 4 5 6 / 9 10; v slip 1 2 3 4 5 6 / 9 10; ";

} // namespace

class TestSubstitutionCases : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void whoMayComeIn_data();
    void whoMayComeIn() { checkFindings(); }
    void howManyAndWhen_data();
    void howManyAndWhen() { checkFindings(); }
    void whoIsOut_data();
    void whoIsOut() { checkFindings(); }
    void exceptionalSubstitutions_data();
    void exceptionalSubstitutions() { checkFindings(); }
    void timeOutsAndRepeatedServes_data();
    void timeOutsAndRepeatedServes() { checkFindings(); }
};

// clang-format off
void TestSubstitutionCases::whoMayComeIn_data() {
    addCaseColumns();
    caseRow(hs, "h sub 7 1",                                                "",                         eoa);
    caseRow(hs, "h sub 7 1; h sub 1 7",                                     "",                         eoa);
    caseRow(hs, "h sub 7 1; h sub 1 7; h sub 7 1",                          "",                         eoa);
    caseRow(hs, "h sub 7 1; h sub 1 7; h sub 7 2",                          "wrong-slot",               eoa);
    caseRow(hs, "h sub 7 1; h sub 8 2; h sub 1 8",                          "wrong-slot",               eoa);
    caseRow(hs, "h sub 7 1; h sub 7 2",                                     "substitute-on-court",      eoa);
    caseRow(hs, "h sub 20 1",                                               "substitute-not-on-roster", eoa);
    caseRow(hs, "v sub 20 1",                                               "",                         eoa);
    caseRow(in, "h sub 0 1",                                                "substitute-not-on-roster, number-not-allowed", "FIVB Rules 2025-2028, 4.3.3");
    caseRow(hs, "h sub 7 8",                                                "not-on-court",             "sense");
    caseRow(hs, "h sub 9 1",                                                "substitute-is-libero",     "NFHS Rules Interpretations 2016-17, 7-1-4");
    caseRow(cw, "h sub 9 1",                                                "substitute-is-libero",     "NCAA Women's Volleyball 2012 and 2013 Rules, 10.1.1.3");
    caseRow(in, "h sub 9 1",                                                "substitute-is-libero",     "FIVB Rules 2025-2028, 19.3.2");
    caseRow(hs, "h sub 7 1; h sub 8 7; h sub 11 8; h sub 12 11",            "",                         "common practice, five in a slot");
    caseRow(hs, "h sub 7 1; h sub 8 7; h sub 11 8; h sub 12 11; h sub 13 12", "players-per-slot",       "common practice, five in a slot");
    caseRow(hs, "h sub 7 1; h sub 8 7; h sub 11 8; h sub 12 11; h sub 1 12", "",                        "common practice, five in a slot");
    caseRow(cw, "h sub 7 1; rally h; h sub 8 7; rally h; h sub 11 8; rally h; h sub 12 11; rally h; h sub 13 12", "",                       "from memory");
    caseRow(cl, "h sub 7 1; h sub 1 7; h sub 7 2",                          "wrong-slot",               "from memory");
    caseRow(in, "h sub 7 1; rally h; h sub 1 7",                            "",                         "FIVB Rules 2025-2028, 15.6");
    caseRow(in, "h sub 7 1; rally h; h sub 8 7",                            "not-her-partner",          "FIVB Rules 2025-2028, 15.6");
    caseRow(in, "h sub 7 1; rally h; h sub 1 7; rally h; h sub 7 1",        "slot-used-up",             "FIVB Rules 2025-2028, 15.6");
    caseRow(in, "h sub 7 1; rally h; h sub 1 7; rally h; h sub 8 1",        "slot-used-up",             "FIVB Rules 2025-2028, 15.6");
    caseRow(in, "h sub 7 1; rally h; h sub 1 7; rally h; h sub 7 2",        "wrong-slot",               "FIVB Rules 2025-2028, 15.6");
    caseRow(in, "h sub 7 1; rally h; h sub 1 2",                            "wrong-slot",               "FIVB Rules 2025-2028, 15.6");
    caseRow(in, "h sub 7 1; win h; h sub 8 1",                              "",                         "FIVB Rules 2025-2028, 15.6, set by set");
    caseRow(cw, "h sub 7 5; h libero 9 7; rally h; h sub 5 7",              "out-off-for-libero",       "NCAA and PAVO interpretations of August 2002, 2");
    caseRow(in, "h libero 9 5; rally h; h sub 7 5",                         "out-off-for-libero",       "FIVB Rules 2025-2028, 19.3.2.2");
    caseRow(in, "h libero 9 5; rally h; h libero-out 9; h sub 7 5",         "",                         "FIVB Rules 2025-2028, 19.3.2.2");
}

void TestSubstitutionCases::howManyAndWhen_data() {
    addCaseColumns();
    caseRow(hs, times(8, "h sub 7 1; h sub 1 7; ") + "h sub 7 1; h sub 1 7", "",                        eoa);
    caseRow(hs, eighteenUsed + "h sub 7 1",                                 "substitution-limit",       eoa);
    caseRow(hs, eighteenUsed + "win h; h sub 7 1",                          "",                         eoa);
    caseRow(cw, times(7, backAndForth) + "h sub 7 1",           "",                         "from memory, 15");
    caseRow(cw, times(7, backAndForth) + "h sub 7 1; rally h; h sub 1 7", "substitution-limit",      "from memory, 15");
    caseRow(cl, times(5, backAndForth) + "h sub 7 1; rally h; h sub 1 7", "",                        "from memory, 12");
    caseRow(cl, times(6, backAndForth) + "h sub 7 1",           "substitution-limit",       "from memory, 12");
    caseRow(in, "h sub 7 1; h sub 8 2; h sub 11 3; h sub 12 4; h sub 13 5; h sub 14 6", "",             "FIVB Rules 2025-2028, 15.1, 15.2.2");
    caseRow(in, sixUsed + "h sub 1 7",                                      "substitution-limit",       "FIVB Rules 2025-2028, 15.1, 15.11.1.4");
    caseRow(in, "h sub 7 1; h sub 8 2",                                     "",                         "FIVB Rules 2025-2028, 15.10.4");
    caseRow(in, "h sub 7 1; v sub 7 1",                                     "",                         "FIVB Rules 2025-2028, 15.2.2");
    caseRow(in, "h sub 7 1; v sub 7 1; h sub 8 2",                          "second-request",           "FIVB Rules 2025-2028, 15.2.2, 15.2.3");
    caseRow(in, "h sub 7 1; h time-out; h sub 8 2",                         "second-request",           "FIVB Rules 2025-2028, 15.2.2, 15.2.3");
    caseRow(in, "h time-out; h sub 8 2",                                    "",                         "FIVB Rules 2025-2028, 15.2.2");
    caseRow(in, "h sub 7 1; rally h; h sub 8 2",                            "",                         "FIVB Rules 2025-2028, 15.2.3");
    caseRow(in, "h sub 7 1; rally sr; v sub 7 1; h sub 8 2",                "second-request",           "FIVB Rules 2025-2028, 15.2.3, 6.1.3, derived: a replay completes no rally");
    caseRow(in, "h sub 7 1; v sub 7 1; h card 3 expulsion; h sub 8 3",      "",                         "FIVB Rules 2025-2028, 15.2.3, 15.8");
    caseRow(cw, "h sub 7 1; v sub 7 1; h sub 8 2",                          "second-request",           "from memory");
    caseRow(cw, "h sub 7 1; v time-out; h sub 8 2",                         "",                         "from memory, a time-out of either team renews it");
    caseRow(cl, "h sub 7 1; h time-out; h sub 8 2",                         "second-request",           "from memory, as FIVB");
    caseRow(hs, "h sub 7 1; v sub 7 1; h sub 8 2",                          "",                         "from memory");
    caseRow(in, "rally h; h sub 7 2; h sub 2 7",                            "second-request",           "FIVB Rules 2025-2028, 15.2.3: out and back needs a rally between");
    caseRow(in, "rally h; h sub 7 2; h sub 8 3; h sub 2 7",                 "second-request",           "FIVB Rules 2025-2028, 15.2.3: out and back needs a rally between");
    caseRow(in, "rally h; h sub 7 2; rally h; h sub 2 7",                   "",                         "FIVB Rules 2025-2028, 15.2.3, 15.6");
    caseRow(cl, "rally h; h sub 7 2; h sub 8 7",                            "second-request",           "from memory, as FIVB");
    caseRow(cw, "rally h; h sub 7 2; v time-out; h sub 2 7",                "",                         "from memory, a time-out of either team renews it");
    caseRow(hs, "rally h; h sub 7 2; h sub 2 7",                            "",                         "from memory");
    caseRow(in, "h sub 7 1; rally sr; h sub 8 2",                           "second-request",           "FIVB Rules 2025-2028, 15.2.3, 6.1.3, derived: a replay completes no rally");
    caseRow(hs, "h delay warning; h sub 7 1",                               "substitution-barred",      "NFHS Rules Interpretations 2018-19, 10-2");
    caseRow(hs, "h delay warning; v sub 7 1",                               "",                         "NFHS Rules Interpretations 2018-19, 10-2");
    caseRow(hs, "h delay warning; rally h; h sub 7 1",                      "",                         "NFHS Rules Interpretations 2018-19, 10-2");
    caseRow(in, "h delay warning; h sub 7 1",                               "substitution-barred",      "FIVB Rules 2025-2028, 15.2.4");
    caseRow(in, "h delay warning; rally sr; h sub 7 1",                     "substitution-barred",      "FIVB Rules 2025-2028, 15.2.4, 6.1.3");
    caseRow(in, "h delay warning; v card 7 penalty; h sub 8 1",             "",                         "FIVB Rules 2025-2028, 15.2.4, 6.1.3: a penalty completes a rally");
    caseRow(hs, "end h; " + slips + "h sub 7 1",                            "",                         "NFHS release of January 2010");
    caseRow(cw, "end h; " + slips + "h sub 7 1",                            "",                         "NCAA Women's Volleyball 2012 and 2013 Rules, 10.1.1.7");
    caseRow(in, "end h; " + slips + "h sub 7 1",                            "",                         "FIVB Rules 2025-2028, 15.3.2");
    caseRow(in, "rally s; h sub 7 1",                                       "rally-undecided",          "FIVB Rules 2025-2028, 15.3, when the ball is out of play");
    caseRow(in, "h delay warning; rally s; again injury; h sub 8 3",            "",                         "FIVB Rules 2025-2028, 15.2.3: but for an injury");
    caseRow(in, "h delay warning; rally s; again interference; h sub 8 3",      "substitution-barred",      "FIVB Rules 2025-2028, 15.2.4");
    caseRow(hs, "h delay warning; rally s; again injury; h sub 8 3",            "",                         "derived from CVVOA Interpreter's Report of September 2015, situation 1: she is replaced within 30 seconds");
}

void TestSubstitutionCases::whoIsOut_data() {
    addCaseColumns();
    caseRow(in, "h card 7 expulsion; h sub 7 1",                            "sent-off",                 "FIVB Rules 2025-2028, 21.3");
    caseRow(in, "h card 7 expulsion; win h; h sub 7 1",                     "",                         "FIVB Rules 2025-2028, 21.3: for the set");
    caseRow(in, "h card 7 disqualification; win h; h sub 7 1",              "sent-off",                 "FIVB Rules 2025-2028, 21.3: for the match");
    caseRow(in, "h card 7 penalty; h sub 7 1",                              "",                         "FIVB Rules 2025-2028, 21.3");
    caseRow(in, "v card 7 expulsion; h sub 7 1",                            "",                         "FIVB Rules 2025-2028, 21.3: the other team's number");
    caseRow(in, "end h; h card 7 expulsion; " + slips + "h sub 7 1",        "sent-off",                 "FIVB Rules 2025-2028, 21.5: counts in the next set");
    caseRow(in, "h sub 7 1; h card 1 expulsion; rally h; h sub 1 7",        "sent-off",                 "FIVB Rules 2025-2028, 21.3, 15.8");
    caseRow(hs, "h card 7 disqualification; h sub 7 1",                     "sent-off",                 "from memory");
    caseRow(cw, "h card 7 expulsion; h sub 7 1",                            "sent-off",                 "NCAA Women's Volleyball 2012 and 2013 Rules, 8.1.2.3");
    caseRow(cw, "h card 7 expulsion; win h; h sub 7 1",                     "",                         "from memory: for the set");
    caseRow(cl, "h card 7 disqualification; win h; h sub 7 1",              "sent-off",                 "from memory, as FIVB");
    caseRow(in, "h card 3 disqualification; end h; h slip 1 2 3 4 5 6 / 9 10", "sent-off",              "FIVB Rules 2025-2028, 21.3");
    caseRow(in, "h card 3 expulsion; end h; h slip 1 2 3 4 5 6 / 9 10",     "",                         "FIVB Rules 2025-2028, 21.3");
    caseRow(in, "h card 3 expulsion; rally s",                              "sent-off-on-court",        "FIVB Rules 2025-2028, 15.8, 21.3");
    caseRow(in, "h libero 9 5; rally h; h card 5 expulsion; h sub 7 5",     "",                         "FIVB Rules 2025-2028, 15.8: the player the libero replaced");
    caseRow(in, "h libero 9 5; rally h; h card 5 expulsion; h libero-out 9", "sent-off",                "FIVB Rules 2025-2028, 15.8, 21.3");
    caseRow(in, "h libero 9 5; h card 9 expulsion; rally s",                "sent-off-on-court",        "FIVB Rules 2025-2028, 19.5, 21.3");
    caseRow(in, "h libero 9 5; h card 9 expulsion; h exchange 10 9; rally s", "",                       "FIVB Rules 2025-2028, 19.5");
    caseRow(in, "h libero 9 5; h card 9 expulsion; h libero-out 9",         "",                         "FIVB Rules 2025-2028, 19.5, derived: no rally to wait for");
    caseRow(in, "h card 3 expulsion; h sub 7 3; rally s",                   "",                         "FIVB Rules 2025-2028, 15.8, 21.3");
}

void TestSubstitutionCases::exceptionalSubstitutions_data() {
    addCaseColumns();
    caseRow(in, "h exceptional 7 1",                                        "regular-substitute-left",  "FIVB Rules 2025-2028, 15.7");
    caseRow(in, sixUsed + "h exceptional 1 14",                             "",                         "FIVB Rules 2025-2028, 15.7");
    caseRow(in, sixUsed + "h exceptional 9 14",                             "substitute-is-libero",     "FIVB Rules 2025-2028, 15.7");
    caseRow(in, sixUsed + "h exceptional 13 14",                            "substitute-on-court",      "FIVB Rules 2025-2028, 15.7");
    caseRow(in, "h sub 7 1; h sub 8 2; h sub 11 3; h sub 12 4; h sub 14 6; rally h; h sub 1 7; h libero 9 5; h exceptional 5 1",
                                                                            "substitute-off-for-libero", "FIVB Rules 2025-2028, 15.7");
    caseRow(in, sixUsed + "h exceptional 1 14; win h; h sub 14 1",          "replaced-for-good",        "FIVB Rules 2025-2028, 15.7: for the match");
    caseRow(in, "h sub 7 1; rally h; h sub 1 7; rally h; v sub 7 1; h exceptional 8 1", "",             "FIVB Rules 2025-2028, 15.7, 15.2.3");
    caseRow(hs, "h exceptional 7 1",                                        "regular-substitute-left",  "from memory: a lawful substitute first");
    caseRow(hs, eighteenUsed + "h exceptional 7 2",                         "",                         eoa);
    caseRow(hs, eighteenUsed + "h exceptional 9 2",                         "libero-comes-last",        "from memory");
    caseRow(hs, eighteenUsed + "h card 2 disqualification; h exceptional 9 2", "libero-for-sent-off",   "from memory: no libero for a disqualified player");
    caseRow(cw, times(15, backAndForth) + "h card 2 disqualification; h exceptional 9 2", "libero-comes-last", "from memory");
    caseRow(in, "h sub 7 1; rally h; h sub 1 7; rally h; h exceptional 7 1", "",                        "FIVB Rules 2025-2028, 15.6, 15.7: she is off court, and no regular one is left");
    caseRow(in, sixUsed + "h exceptional 1 14; rally h; h exceptional 14 8", "replaced-for-good",       "FIVB Rules 2025-2028, 15.7");
    caseRow(hs, eighteenUsed + "h exceptional 7 2; rally h; h exceptional 2 3", "replaced-for-good",    eoa);
    caseRow(hs, eighteenUsed + "h exceptional 7 2; end h; h slip 1 2 3 4 5 6 / 9 10", "",               eoa);
    caseRow(cl, times(6, backAndForth) + "h exceptional 7 2; end h; h slip 1 2 3 4 5 6 / 9 10", "replaced-for-good", "from memory, as FIVB");
    caseRow(in, "h vacate 1",                                               "fewer-than-six-not-allowed, substitute-left", "FIVB Rules 2025-2028, 6.4.3, 7.3.1");
    caseRow(hs, "h vacate 1",                                               "substitute-left",          "from memory");
    caseRow(hs, eighteenUsed + "h vacate 1",                                "substitute-left",          "from memory: an exceptional one is left");
    caseRow(hs, "h card 7 disqualification; h card 8 disqualification; h card 11 disqualification; h card 12 disqualification; "
                "h card 13 disqualification; h card 14 disqualification; h card 9 disqualification; h card 10 disqualification; h vacate 1",
                                                                            "",                         "from memory; a vacant place: NFHS Rules Interpretations 2018-19, situation 1");
    caseRow(hs, "h vacate 7",                                               "not-on-court",             "sense");
    caseRow(hs, "h vacate 1; rally h; h sub 7 1",                           "",                         "from memory");
}

void TestSubstitutionCases::timeOutsAndRepeatedServes_data() {
    addCaseColumns();
    caseRow(hs, "h time-out; h time-out",                                   "",                         "NFHS 2003 rule changes");
    caseRow(hs, "h time-out; h time-out; h time-out",                       "time-out-limit",           "NFHS Rules Interpretations 2016-17, 11-2 Penalty 2");
    caseRow(hs, "h time-out; h time-out; win h; h time-out",                "",                         "NFHS 2003 rule changes");
    caseRow(cw, "h time-out; h time-out; h time-out",                       "time-out-limit",           "from memory");
    caseRow(cl, "h time-out; h time-out; h time-out",                       "time-out-limit",           "from memory");
    caseRow(in, "h time-out; h time-out; v time-out",                       "",                         "FIVB Rules 2025-2028, 15.1");
    caseRow(in, "h time-out; h time-out; h time-out",                       "time-out-limit",           "FIVB Rules 2025-2028, 15.1, 15.11");
    caseRow(hs, "rally sr; v sub 7 1",                                      "request-before-repeat",    "CVVOA Interpreter's Report of September 2015, situation 1");
    caseRow(hs, "rally sr; v time-out",                                     "request-before-repeat",    "CVVOA Interpreter's Report of September 2015, situation 1");
    caseRow(hs, "rally srsv; v time-out",                                   "",                         "CVVOA Interpreter's Report of September 2015, situation 1");
    caseRow(hs, "rally e; h sub 7 1",                                       "request-before-repeat",    "from memory");
    caseRow(in, "rally sr; h sub 7 1",                                      "",                         "from memory");
}
// clang-format on

QTEST_APPLESS_MAIN(TestSubstitutionCases)
#include "tst_substitutioncases.moc"
