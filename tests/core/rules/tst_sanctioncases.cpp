// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/core/rules/caseplay.h"

using namespace setfolio;
using namespace setfolio::testing;
using namespace setfolio::testing::families;

namespace {

const std::string slips = "h slip 1 2 3 4 5 6 / 9 10; v slip 1 2 3 4 5 6 / 9 10; ";

} // namespace

class TestSanctionCases : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void theLadderOfMisconduct_data();
    void theLadderOfMisconduct() { checkFindings(); }
    void theLadderOfDelay_data();
    void theLadderOfDelay() { checkFindings(); }
    void whatTheyCost_data();
    void whatTheyCost() { checkScore(); }
};

// clang-format off
void TestSanctionCases::theLadderOfMisconduct_data() {
    addCaseColumns();
    caseRow(in, "h card 7 warning",                                   "",                      "FIVB Rules 2025-2028, diagram 9a: minor misconduct, stage 2");
    caseRow(in, "h card 7 penalty",                                   "",                      "FIVB Rules 2025-2028, diagram 9a: rude conduct");
    caseRow(in, "h card 7 expulsion",                                 "",                      "FIVB Rules 2025-2028, diagram 9a: offensive conduct");
    caseRow(in, "h card 7 disqualification",                          "",                      "FIVB Rules 2025-2028, diagram 9a: aggression");
    caseRow(in, "h card 7 warning; h card 8 warning",                 "team-warned-already",   "FIVB Rules 2025-2028, diagram 9a: any member of the team");
    caseRow(in, "h card 7 warning; v card 8 warning",                 "",                      "FIVB Rules 2025-2028, diagram 9a");
    caseRow(in, "h card 7 warning; win h; h card coach warning",      "team-warned-already",   "FIVB Rules 2025-2028, diagram 9a: the whole match");
    caseRow(in, "h card 7 warning; h card 8 penalty",                 "",                      "FIVB Rules 2025-2028, diagram 9a");
    caseRow(in, "h card 7 penalty; h card 7 penalty",                 "sanction-not-higher",   "FIVB Rules 2025-2028, 21.3, diagram 9a: the second time an expulsion");
    caseRow(in, "h card 7 penalty; h card 8 penalty",                 "",                      "FIVB Rules 2025-2028, 21.3, diagram 9a: the same member");
    caseRow(in, "h card coach penalty; h card coach expulsion",       "",                      "FIVB Rules 2025-2028, 21.3, diagram 9a");
    caseRow(in, "h card 7 penalty; h card 7 warning",                 "sanction-not-higher",   "FIVB Rules 2025-2028, 21.3, diagram 9a");
    caseRow(in, "h card 7 penalty; win h; h card 7 penalty",          "sanction-not-higher",   "FIVB Rules 2025-2028, diagram 9a: the whole match");
    caseRow(in, "h card 7 expulsion; win h; h card 7 disqualification", "",                    "FIVB Rules 2025-2028, diagram 9a");
    caseRow(in, "h card 7 expulsion; h card 7 disqualification",      "",                      "FIVB Rules 2025-2028, diagram 9a");
    caseRow(in, "h card 7 expulsion; h card 7 penalty",               "sent-off-already",      "FIVB Rules 2025-2028, diagram 9a");
    caseRow(in, "h card 7 disqualification; win h; h card 7 penalty", "sent-off-already",      "FIVB Rules 2025-2028, diagram 9a: the whole match");
    caseRow(hs, "h card 7 warning; h card 8 warning",                 "",                      "from memory: each person");
    caseRow(hs, "h card 7 warning; h card 7 warning",                 "sanction-not-higher",   "from memory: the second is a penalty");
    caseRow(hs, "h card 7 warning; h card 7 penalty",                 "",                      "from memory");
    caseRow(hs, "h card 7 penalty",                                   "",                      "Referee magazine, Case play of the day");
    caseRow(hs, "h card 7 expulsion",                                 "level-not-on-ladder",   "from memory: no such level");
    caseRow(hs, "h card 7 penalty; win h; h card 7 penalty",          "sanction-not-higher",   "from memory: the match");
    caseRow(cw, "h card 7 penalty; h card 7 penalty",                 "sanction-not-higher",   "from memory");
    caseRow(cw, "h card 7 penalty; win h; h card 7 penalty",          "",                      "Referee magazine, 5 rule differences: the current set only");
    caseRow(cw, "h card 7 warning; win h; h card 7 warning",          "",                      "Referee magazine, 5 rule differences: the current set only");
    caseRow(cl, "h card 7 warning; h card 8 warning",                 "team-warned-already",   "from memory, as FIVB");
    caseRow(hs, "h card 20 penalty",                                  "sanctioned-stranger",   "from memory: a number of the roster");
    caseRow(hs, "v card 20 penalty",                                  "",                      "from memory: a number of the roster");
    caseRow(hs, "h card coach penalty",                               "",                      "NFHS Comments on the Rules 2020-21, 12-2-6");
}

void TestSanctionCases::theLadderOfDelay_data() {
    addCaseColumns();
    caseRow(in, "h delay warning",                                    "",                      "FIVB Rules 2025-2028, 16.2.2, diagram 9b");
    caseRow(in, "h delay penalty",                                    "delay-not-next",        "FIVB Rules 2025-2028, diagram 9b: the first is a warning");
    caseRow(in, "h delay warning; h delay penalty",                   "",                      "FIVB Rules 2025-2028, 16.2.3, diagram 9b");
    caseRow(in, "h delay warning; h delay warning",                   "delay-not-next",        "FIVB Rules 2025-2028, 16.2.3, diagram 9b");
    caseRow(in, "h delay warning; v delay warning",                   "",                      "FIVB Rules 2025-2028, 16.2: a team");
    caseRow(in, "h delay warning; win h; win v; h delay penalty",     "",                      "FIVB Rules 2025-2028, 16.2.3");
    caseRow(in, "h delay warning; win h; win v; h delay warning",     "delay-not-next",        "FIVB Rules 2025-2028, 16.2.3: counted for the match");
    caseRow(in, "h delay warning; h delay penalty; h delay penalty",  "",                      "FIVB Rules 2025-2028, 16.2.3: and all later ones");
    caseRow(in, "h card 7 warning; h delay penalty",                  "delay-not-next",        "FIVB Rules 2025-2028, 16.2: apart from misconduct");
    caseRow(hs, "h delay warning; h delay penalty",                   "",                      "NFHS Comments on the Rules 2015, 9-9-1");
    caseRow(hs, "h delay warning; h delay warning",                   "delay-not-next",        "NFHS Comments on the Rules 2015, 9-9-1");
    caseRow(hs, "h delay warning; win h; h delay warning",            "",                      "NFHS Comments on the Rules 2015, 9-9-1: set by set");
    caseRow(hs, "h delay warning; win h; h delay penalty",            "delay-not-next",        "NFHS Comments on the Rules 2015, 9-9-1: set by set");
    caseRow(hs, "end v; h delay warning; h delay penalty",            "",                      "2021-22 NFHS Volleyball Rules PowerPoint, 7-1-4 Penalty: a late line-up");
    caseRow(hs, "h delay warning; end v; h delay warning",            "",                      "NFHS Comments on the Rules 2015, 9-9-1: set by set");
    caseRow(cw, "h delay warning; win h; h delay warning",            "",                      "Referee magazine, 5 rule differences: set by set");
    caseRow(cl, "h delay warning; win h; h delay warning",            "delay-not-next",        "from memory: the match");
    caseRow(in, "h improper",                                         "",                      "FIVB Rules 2025-2028, 15.11.2");
    caseRow(in, "h improper; h improper",                             "improper-request-is-delay", "FIVB Rules 2025-2028, 15.11.3");
    caseRow(in, "h improper; win h; h improper",                      "improper-request-is-delay", "FIVB Rules 2025-2028, 15.11.3: in the match");
    caseRow(in, "h improper; v improper",                             "",                      "FIVB Rules 2025-2028, 15.11.2: each team");
    caseRow(in, "h improper; h delay warning",                        "",                      "FIVB Rules 2025-2028, 15.11.3");
    caseRow(cl, "h delay warning; win h; h improper",                 "",                      "from memory, as FIVB");
    caseRow(hs, "h improper",                                         "improper-request-is-delay", "from memory: a delay at once");
}

void TestSanctionCases::whatTheyCost_data() {
    addCaseColumns();
    caseRow(in, "h card 7 warning",                                   "0:0 h 1",  "FIVB Rules 2025-2028, diagram 9a");
    caseRow(in, "h card 7 penalty",                                   "0:1 v 2",  "FIVB Rules 2025-2028, 21.3, diagram 9a");
    caseRow(in, "v card 7 penalty",                                   "1:0 h 1",  "FIVB Rules 2025-2028, 21.3, diagram 9a");
    caseRow(in, "h card 7 expulsion",                                 "0:0 h 1",  "FIVB Rules 2025-2028, 21.3, diagram 9a");
    caseRow(in, "h card 7 disqualification",                          "0:0 h 1",  "FIVB Rules 2025-2028, 21.3, diagram 9a");
    caseRow(in, "h card coach penalty; h card coach expulsion",       "0:1 v 2",  "FIVB Rules 2025-2028, 21.3");
    caseRow(cw, "h card 7 warning",                                   "0:0 h 1",  "from memory");
    caseRow(cw, "h card 7 penalty",                                   "0:1 v 2",  "from memory");
    caseRow(cw, "v card 7 expulsion",                                 "1:0 h 1",  "NCAA Women's Volleyball 2012 and 2013 Rules, 8.1.2.3");
    caseRow(cw, "h card 7 disqualification",                          "0:1 v 2",  "NCAA Women's Volleyball 2012 and 2013 Rules, 8.1.2.3");
    caseRow(cl, "h card 7 disqualification",                          "0:0 h 1",  "from memory");
    caseRow(cl, "h card 7 penalty",                                   "0:1 v 2",  "from memory");
    caseRow(hs, "h card 11 penalty",                                  "0:1 v 2",  "Referee magazine, Case play of the day 57");
    caseRow(hs, "h card 7 warning",                                   "0:0 h 1",  "from memory (NFHS 12-2-1)");
    caseRow(hs, "h card 7 disqualification",                          "0:1 v 2",  "from memory");
    caseRow(hs, "rally vhh; h card 3 penalty",                        "2:2 v 3",  "Rally scoring tutorial for official scorers, Ohio HSAA 2004: it ends the own service");
    caseRow(in, "h delay warning",                                    "0:0 h 1",  "FIVB Rules 2025-2028, 16.2.2");
    caseRow(in, "h delay warning; h delay penalty",                   "0:1 v 2",  "FIVB Rules 2025-2028, 16.2.3");
    caseRow(in, "h delay warning; win h; win v; h delay penalty",     "0:1 v 2",  "FIVB Rules 2025-2028, 16.2.3");
    caseRow(hs, "h delay warning; h delay penalty",                   "0:1 v 2",  "NFHS Comments on the Rules 2015, 9-9-1");
    caseRow(hs, "h time-out; h time-out; h delay warning",            "0:0 h 1",  "NFHS Rules Interpretations 2016-17, 11-2 Penalty 2: no point at once");
    caseRow(in, "h improper",                                         "0:0 h 1",  "FIVB Rules 2025-2028, 15.11.2");
    caseRow(hs, "end v; h delay warning; h delay penalty; " + slips + "start", "0:1 v 1", "2021-22 NFHS Volleyball Rules PowerPoint, 7-1-4 Penalty");
    caseRow(hs, "end v; v delay warning; v delay penalty; " + slips + "start", "1:0 h 2", "2021-22 NFHS Volleyball Rules PowerPoint, 7-1-4 Penalty");
    caseRow(in, "end v; h card 7 penalty; " + slips + "start",        "0:1 v 1",  "FIVB Rules 2025-2028, 21.5: in the following set");
    caseRow(in, "end h; v card 7 penalty; " + slips + "start",        "1:0 h 2",  "FIVB Rules 2025-2028, 21.5: in the following set");
    caseRow(hs, "end v; h point; " + slips + "start",                 "1:0 h 2",  "NFHS Comments on the Rules 2020-21: a late change of the roster is a loss of rally");
    caseRow(cw, "end v; h point; " + slips + "start",                 "1:0 h 2",  "NCAA change report 2020: a uniform violation, the set starts 0-1");
}
// clang-format on

QTEST_APPLESS_MAIN(TestSanctionCases)
#include "tst_sanctioncases.moc"
