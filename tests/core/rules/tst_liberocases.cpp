// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/core/rules/caseplay.h"

using namespace setfolio;
using namespace setfolio::testing;
using namespace setfolio::testing::families;

namespace {

constexpr auto lts = "NCAA Women's Volleyball 2012 and 2013 Rules, libero tracking sheet instructions";
constexpr auto delta = "Delta Region libero serving instructions 2012";
const std::string slips = "h slip 1 2 3 4 5 6 / 9 10; v slip 1 2 3 4 5 6 / 9 10; ";
const std::string nobody = "end h; h slip 1 2 3 4 5 6 /; v slip 1 2 3 4 5 6 /; start; end h; ";

} // namespace

class TestLiberoCases : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void replacements_data();
    void replacements() { checkFindings(); }
    void aRallyLiesBetween_data();
    void aRallyLiesBetween() { checkFindings(); }
    void whereSheServes_data();
    void whereSheServes() { checkFindings(); }
    void whoIsLibero_data();
    void whoIsLibero() { checkFindings(); }
};

// clang-format off
void TestLiberoCases::replacements_data() {
    addCaseColumns();
    caseRow(in, "h libero 9 5",                                      "",                             "FIVB Rules 2025-2028, 19.3.1, 19.3.2.1");
    caseRow(in, "h libero 9 6; rally h; h libero-out 9",             "",                             "FIVB Rules 2025-2028, 19.3.2.2");
    caseRow(in, "v libero 9 1",                                      "",                             "FIVB Rules 2025-2028, 19.3.1");
    caseRow(in, "h libero 9 3",                                      "libero-for-front-row",         "FIVB Rules 2025-2028, 19.3.1");
    caseRow(in, "v libero 9 2",                                      "libero-for-front-row",         "FIVB Rules 2025-2028, 19.3.1");
    caseRow(hs, "h libero 9 4",                                      "libero-for-front-row",         "Referee magazine 09/2023 (NFHS 9-5-6)");
    caseRow(cw, "h libero 9 4",                                      "libero-for-front-row",         "Referee magazine 09/2023 (NCAA 12.1.2)");
    caseRow(cl, "h libero 9 4",                                      "libero-for-front-row",         "Referee magazine 09/2023 (USAV 19.3.1)");
    caseRow(in, "h libero 7 5",                                      "not-a-libero",                 "FIVB Rules 2025-2028, 19.1.2");
    caseRow(hs, "h libero 7 5",                                      "not-a-libero",                 "Iowa Girls HSAU Libero Tracking Instructions");
    caseRow(in, "h libero 9 8",                                      "not-on-court",                 "sense");
    caseRow(in, "h libero-out 9",                                    "libero-not-on-court",          "sense");
    caseRow(in, "h exchange 10 9",                                   "libero-not-on-court",          "sense");
    caseRow(in, "h libero 9 5; rally h; h libero 10 6",              "libero-already-on-court",      "FIVB Rules 2025-2028, 19.3.2.2");
    caseRow(in, "h libero 9 5; rally h; h sub 9 2",                  "substitute-on-court, substitute-is-libero", "FIVB Rules 2025-2028, 19.3.2.1; sense: one player stands in one place");
    caseRow(hs, "h exceptional 9 2; rally h; h libero 9 6",          "substitute-on-court",          "sense: one player stands in one place");
    caseRow(cl, "h exceptional 9 2; rally h; h libero 10 6; rally v; h exchange 9 10", "substitute-on-court", "sense: one player stands in one place");
    caseRow(hs, "h libero 9 5; rally h; h libero 10 6",              "libero-already-on-court",      "NFHS Comments on the Rules 2026-27, 6-4-2");
    caseRow(in, "h libero 9 5; rally h; h exchange 10 9",            "",                             "FIVB Rules 2025-2028, 19.3.2.2");
    caseRow(hs, "h libero 9 5; rally h; h exchange 10 9",            "",                             "NFHS press release of 5 February 2026");
    caseRow(cl, "h libero 9 5; rally h; h exchange 10 9",            "",                             delta);
    caseRow(in, "h libero 9 5; rally vhs",                           "libero-in-front-row",          "FIVB Rules 2025-2028, 19.3.1");
    caseRow(hs, "h libero 9 5; rally vhs",                           "libero-in-front-row",          "Referee magazine 09/2023 (NFHS 9-5-6)");
    caseRow(in, "h libero 9 5; rally vhh",                           "libero-in-front-row",          "FIVB Rules 2025-2028, 19.3.1");
    caseRow(in, "h libero 9 5; rally vh; h libero-out 9; rally s",   "",                             "FIVB Rules 2025-2028, 19.3.1, 19.3.2.1");
    caseRow(in, "end h; " + slips + "h libero 9 5",                  "",                             "FIVB Rules 2025-2028, 19.3.2.3: once the line-up is checked");
    caseRow(in, "end h; " + slips + "h libero 9 5; h slip 1 2 3 4 5 6 / 9 10; h libero-out 9", "libero-not-on-court", "sense: a new line-up, and nobody has come in");
    caseRow(in, "end h; h libero 9 5",                               "line-up-missing",              "FIVB Rules 2025-2028, 19.3.2.3");
    caseRow(in, "rally s; h libero 9 5",                             "rally-undecided",              "FIVB Rules 2025-2028, 19.3.2.3: when the ball is out of play");
    caseRow(in, "h card 9 expulsion; h libero 9 5",                  "sent-off",                     "FIVB Rules 2025-2028, 21.3");
}

void TestLiberoCases::aRallyLiesBetween_data() {
    addCaseColumns();
    caseRow(in, "h libero 9 5; h libero-out 9",                      "libero-rally-between",         "FIVB Rules 2025-2028, 19.3.2.1");
    caseRow(in, "h libero 9 5; h exchange 10 9",                     "libero-rally-between",         "FIVB Rules 2025-2028, 19.3.2.1");
    caseRow(in, "h libero 9 5; rally h; h libero-out 9; h libero 9 6", "libero-rally-between",       "FIVB Rules 2025-2028, 19.3.2.1");
    caseRow(in, "h libero 9 5; rally h; h libero-out 9; h libero 10 6", "libero-rally-between",      "FIVB Rules 2025-2028, 19.3.2.1");
    caseRow(in, "h libero 9 5; rally h; h libero-out 9; rally h; h libero 9 6", "",                  "FIVB Rules 2025-2028, 19.3.2.1");
    caseRow(in, "h libero 9 5; rally sr; h libero-out 9",            "libero-rally-between",         "FIVB Rules 2025-2028, 19.3.2.1, 6.1.3");
    caseRow(in, "h libero 9 5; rally n; h libero-out 9",             "",                             "FIVB Rules 2025-2028, 6.1.3: a late serve completes a rally");
    caseRow(cw, "h libero 9 5; h card 7 penalty; h libero-out 9",    "",                             "NCAA and PAVO interpretations of August 2002, 3: a sanction with a point");
    caseRow(in, "rally v; h libero 9 5; v card 7 penalty; h libero-out 9", "",                       "FIVB Rules 2025-2028, 19.3.2.1: rotated to position 4 by a penalty");
    caseRow(in, "h libero 9 5; h gives-up 9; h libero 10 6",         "",                             "FIVB Rules 2025-2028, 19.3.2.1, 19.4: unable to play");
    caseRow(hs, "h libero 9 5; h gives-up 9; h libero 10 6",         "",                             "NFHS Comments on the Rules 2026-27, 10-4-3a");
    caseRow(cw, "h libero 9 5; h libero-out 9",                      "libero-rally-between",         lts);
    caseRow(cl, "h libero 9 5; h libero-out 9",                      "libero-rally-between",         delta);
    caseRow(hs, "h libero 9 5; h libero-out 9",                      "libero-rally-between",         "from memory (NFHS 10-4)");
    caseRow(cw, "h libero 9 6; rally vh; h libero-out 9; h libero 9 2", "",                          lts);
    caseRow(cl, "h libero 9 6; rally vh; h libero-out 9; h libero 9 2", "",                          delta);
    caseRow(cl, "h libero 9 6; rally vh; h libero-out 9; h libero 10 2", "",                         delta);
    caseRow(hs, "h libero 9 6; rally vh; h libero-out 9; h libero 9 2", "",                          "from memory (NFHS 10-4-5)");
    caseRow(hs, "h libero 9 6; rally vh; h libero-out 9; h libero 9 1", "libero-rally-between",      "from memory (NFHS 10-4-5): not to serve");
    caseRow(in, "h libero 9 6; rally vh; h libero-out 9; h libero 9 2", "libero-may-not-serve, libero-rally-between", "FIVB Rules 2025-2028, 19.3.1.3, 19.3.2.1");
    caseRow(cl, "h libero 9 5; rally h; h libero-out 9; rally sr; h libero 9 6", "",                 "USAV Rules Interpretation Bulletin 1 of 2009-10");
    caseRow(in, "h libero 9 5; rally h; h libero-out 9; rally sr; h libero 9 6", "libero-rally-between", "FIVB Rules 2025-2028, 19.3.2.1");
    caseRow(hs, "rally e; h libero 9 5",                             "request-before-repeat",        "from memory (NFHS 8-1-5)");
}

void TestLiberoCases::whereSheServes_data() {
    addCaseColumns();
    caseRow(in, "h libero 9 1",                                      "libero-may-not-serve",         "FIVB Rules 2025-2028, 19.3.1.3");
    caseRow(in, "h libero 9 1; rally s",                             "libero-may-not-serve",         "FIVB Rules 2025-2028, 19.3.1.3");
    caseRow(in, "h serves 9",                                        "libero-may-not-serve",         "FIVB Rules 2025-2028, 19.3.1.3");
    caseRow(hs, "h libero 9 1; rally s",                             "",                             "Libero Serving 2013");
    caseRow(hs, "h serves 9",                                        "",                             "Libero Serving 2013");
    caseRow(hs, "h serves 10",                                       "",                             "NFHS press release of 5 February 2026");
    caseRow(cw, "h libero 9 1; rally s",                             "",                             "NCAA Women's Volleyball 2012 and 2013 Rules, 12.1.2.3");
    caseRow(cl, "h libero 9 1; rally h; h exchange 10 9; rally s",   "",                             delta);
    caseRow(hs, "h libero 9 1; rally hv; h libero-out 9; rally vh; h libero 9 2", "libero-second-slot", "Libero Serving 2013");
    caseRow(cw, "h libero 9 1; rally hv; h libero-out 9; rally vh; h libero 9 2", "libero-second-slot", "Referee magazine 09/2023; NCAA 12.1.2.3");
    caseRow(cl, "h libero 9 1; rally hv; h libero-out 9; rally vh; h libero 10 2", "libero-second-slot", delta);
    caseRow(hs, "h libero 9 1; rally hv; h libero-out 9; rally vh; h libero 9 2; rally s", "libero-second-slot", "Libero Serving 2013");
    caseRow(hs, "h serves 9; rally hvh; h serves 9",                 "libero-second-slot",           "Libero Serving 2013");
    caseRow(hs, "h serves 9; rally hvhvhvhvhvhvh; h serves 9",       "",                             "Libero Serving 2013");
    caseRow(hs, "h serves 9; rally h; win h; rally v; h serves 10",  "not-serving",                  "sense");
    caseRow(hs, "h serves 9; win h; rally h; h serves 9",            "",                             "Libero Serving 2013: one slot a set");
    caseRow(hs, "h libero 9 5; h serves 9",                          "libero-already-on-court",      "sense: she stands in another place");
    caseRow(hs, "h libero 9 1; h serves 9",                          "",                             "Libero Serving 2013");
    caseRow(hs, "h serves 7",                                        "server-is-not-libero",         "Iowa Girls HSAU Libero Tracking Instructions");
    // A set without the serve: she may still serve anywhere; a wrong server's serve fixes no slot.
    caseRow(cw, "h libero 9 1; rally n; h libero-out 9; rally vh; h libero 9 2; rally s", "",        "from memory: a term without a contact fixes no slot");
}

void TestLiberoCases::whoIsLibero_data() {
    addCaseColumns();
    caseRow(hs, "h gives-up 9 7",                                    "",                             "NFHS Comments on the Rules 2026-27, 10-4-3a");
    caseRow(hs, "h gives-up 9",                                      "",                             "NFHS Comments on the Rules 2026-27, 10-4-3a");
    caseRow(hs, "h gives-up 9 7; h libero 7 5",                      "",                             "NFHS Comments on the Rules 2026-27, 10-4-3a");
    caseRow(hs, "h card 9 disqualification; h gives-up 9 7",         "redesignation-not-allowed",    "NFHS Comments on the Rules 2026-27, 10-4-3d");
    caseRow(in, "h gives-up 9 7",                                    "redesignation-not-allowed",    "FIVB Rules 2025-2028, 19.4");
    caseRow(in, "h gives-up 9; h gives-up 10 7",                     "",                             "FIVB Rules 2025-2028, 19.4");
    caseRow(in, "h gives-up 9; h gives-up 10 5",                     "new-libero-on-court",          "FIVB Rules 2025-2028, 19.4");
    caseRow(in, "h libero 9 5; h gives-up 10; h gives-up 9 5",       "new-libero-on-court",          "FIVB Rules 2025-2028, 19.4: not the player she replaced");
    caseRow(in, "h gives-up 7 8",                                    "not-a-libero, redesignation-not-allowed", "FIVB Rules 2025-2028, 19.4");
    caseRow(in, "h gives-up 9; rally h; h libero 9 5",               "not-a-libero, given-up-as-libero", "FIVB Rules 2025-2028, 19.4");
    caseRow(in, "h gives-up 9; end h; h slip 1 2 3 4 5 6 / 9",       "given-up-as-libero, libero-not-of-match", "FIVB Rules 2025-2028, 19.4: for the match");
    caseRow(hs, "h gives-up 9; end h; h slip 1 2 3 4 5 6 / 9",       "",                             "Iowa Girls HSAU Libero Tracking Instructions: set by set");
    caseRow(in, "h card 9 disqualification; h gives-up 9 7",         "redesignation-not-allowed",    "FIVB Rules 2025-2028, 19.5");
    caseRow(in, "h card 9 disqualification; h gives-up 9; h card 10 disqualification; h gives-up 10 7", "", "FIVB Rules 2025-2028, 19.5");
    caseRow(cl, "h gives-up 9; h gives-up 10 7",                     "",                             "from memory, as FIVB");
    caseRow(in, "end h; h slip 1 2 3 4 5 6 / 9 11",                  "libero-not-of-match",          "FIVB Rules 2025-2028, 19.1.2");
    caseRow(in, "end h; h slip 1 2 3 4 5 6 /; v slip 1 2 3 4 5 6 /; start; h libero 9 5", "",        "FIVB Rules 2025-2028, 19.1.2: named before the match");
    caseRow(in, "h gives-up 9; end h; h slip 1 2 3 4 5 6 /; v slip 1 2 3 4 5 6 /; start; h libero 9 5", "not-a-libero, given-up-as-libero", "FIVB Rules 2025-2028, 19.4");
    caseRow(hs, "end h; h slip 1 2 3 4 5 6 /; v slip 1 2 3 4 5 6 /; start; h libero 9 5", "not-a-libero", "from memory: not listed, none that set");
    caseRow(in, "end h; h slip 1 2 3 4 5 6 / 9",                     "",                             "FIVB Rules 2025-2028, 19.1.1");
    caseRow(in, "end h; h slip 1 2 3 4 5 10 / 9",                    "libero-in-line-up",            "FIVB Rules 2025-2028, 19.1.2");
    caseRow(cl, "end h; h slip 1 2 3 4 5 6 / 11",                    "libero-not-of-match",          delta);
    caseRow(hs, "end h; h slip 1 2 3 4 5 6 / 11",                    "",                             "Iowa Girls HSAU Libero Tracking Instructions: set by set");
    caseRow(cw, "end h; h slip 1 2 3 4 5 10 / 11",                   "",                             "NCAA Women's Volleyball 2012 and 2013 Rules, 10.1.1.3");
    caseRow(hs, "end h; h slip 1 2 3 4 5 6 / 9 10 11",               "too-many-liberos",             "NFHS Comments on the Rules 2026-27, 6-4-2");
    // A libero named for the first time after a set without one: nothing against it where each slip names its own.
    caseRow(hs, nobody + "h slip 1 2 3 4 5 6 / 9",                   "",                             "Iowa Girls HSAU Libero Tracking Instructions: set by set");
    caseRow(cw, nobody + "h slip 1 2 3 4 5 6 / 9",                   "",                             "NCAA Women's Volleyball 2012 and 2013 Rules, 10.1.1.3: set by set");
    caseRow(hs, nobody + "h slip 1 2 3 4 5 6 / 11",                  "",                             "Iowa Girls HSAU Libero Tracking Instructions: set by set");
    caseRow(cl, nobody + "h slip 1 2 3 4 5 6 / 9",                   "",                             "from memory: on the first slip of the match");
    caseRow(cl, nobody + "h slip 1 2 3 4 5 6 / 11",                  "libero-not-of-match",          "from memory: on the first slip of the match");
    caseRow(in, nobody + "h slip 1 2 3 4 5 6 / 9",                   "",                             "FIVB Rules 2025-2028, 19.1.2: named before the match");
    caseRow(in, nobody + "h slip 1 2 3 4 5 6 / 11",                  "libero-not-of-match",          "FIVB Rules 2025-2028, 19.1.2");
    // A number that nobody wears.
    caseRow(cw, "end h; h slip 1 2 3 4 5 6 / 19; h slip 1 2 3 4 5 6 /; h slip 1 2 3 4 5 6 / 9", "no-libero-this-set", "Referee magazine 09/2023");
    caseRow(cw, "end h; h slip 1 2 3 4 5 6 / 19; h slip 1 2 3 4 5 6 /; h slip 1 2 3 4 5 7 /; h slip 1 2 3 4 5 6 / 9", "no-libero-this-set", "Referee magazine 09/2023");
    caseRow(cw, "end h; h slip 1 2 3 4 5 6 / 9; h slip 1 2 3 4 5 6 /; h slip 1 2 3 4 5 6 / 10", "",  "Referee magazine 09/2023");
    caseRow(cw, "end h; h slip 1 2 3 4 5 6 / 19; h slip 1 2 3 4 5 6 /; v slip 1 2 3 4 5 6 / 9", "",  "Referee magazine 09/2023: the team whose slip it was");
    caseRow(cw, "end h; h slip 1 2 3 4 5 6 / 19; h slip 1 2 3 4 5 6 /; v slip 1 2 3 4 5 6 /; start; end h; h slip 1 2 3 4 5 6 / 9", "", "Referee magazine 09/2023: that set only");
    caseRow(hs, "end h; h slip 1 2 3 4 5 6 / 19; h slip 1 2 3 4 5 6 /; h slip 1 2 3 4 5 6 / 9", "",  "NFHS Comments on the Rules 2020-21, 7-1-4a(2): corrected without penalty");
    caseRow(hs, "end h; h slip 1 2 3 4 5 6 /",                       "",                             "NFHS Comments on the Rules 2026-27, 6-4-2: none");
    caseRow(cw, "end h; h slip 1 2 3 4 5 6 / 9 10",                  "",                             "NCAA change report 2024, 12.1.1");
    caseRow(hs, "end h; h slip 1 2 3 4 5 6 / 6",                     "libero-in-line-up",            "NFHS Rules Interpretations 2016-17, 7-1-4");
    caseRow(hs, "end h; h slip 1 2 3 4 5 6 / 9; h slip 1 2 3 4 5 6 / 12", "",                        "NFHS Comments on the Rules 2020-21, 7-1-4a(2): put right");
    caseRow(hs, "end h; h slip 1 2 3 4 5 20 / 9",                    "stranger-in-line-up",          "NFHS Points of Emphasis 2025-26");
    caseRow(in, "end h; h slip 1 2 3 4 5 5 / 9",                     "doubled-in-line-up",           "FIVB Rules 2025-2028, 7.3.5");
    caseRow(cw, "end h; h slip 1 2 3 4 5 6 / 20",                   "libero-not-on-roster, no-libero-this-set", "Referee magazine 09/2023: no libero that set");
    caseRow(cw, "end h; h slip 1 2 3 4 5 6 / 20; h slip 1 2 3 4 5 6 / 9", "no-libero-this-set",     "Referee magazine 09/2023: no libero that set");
    caseRow(cw, "end h; h slip 1 2 3 4 5 6 / 20; h slip 1 2 3 4 5 6 /", "",                         "Referee magazine 09/2023: no libero that set");
    caseRow(cw, "end h; h slip 1 2 3 4 5 6 / 20; h slip 1 2 3 4 5 6 /; v slip 1 2 3 4 5 6 /; start; end v; h slip 1 2 3 4 5 6 / 9", "", "Referee magazine 09/2023: that set only");
    caseRow(hs, "end h; h slip 1 2 3 4 5 6 / 20; h slip 1 2 3 4 5 6 / 9", "",                       "NFHS Comments on the Rules 2020-21, 7-1-4a(2): corrected");
    caseRow(cl, "end h; h slip 1 2 3 4 5 6 / 20; h slip 1 2 3 4 5 6 / 9", "",                       "Referee magazine 09/2023 (USAV 7.3.5.1): corrected");
    caseRow(hs, "h card 5 disqualification; h libero 9 5",           "libero-for-sent-off",          "from memory: no libero for a disqualified player");
    caseRow(in, "h card 5 disqualification; h libero 9 5",           "libero-for-sent-off",          "FIVB Rules 2025-2028, 15.8: by a lawful substitution");
    caseRow(in, "h late",                                            "",                             "FIVB Rules 2025-2028, 19.3.2.5");
    caseRow(in, "rally s; h late",                                   "",                             "FIVB Rules 2025-2028, 19.3.2.5: play goes on");
    caseRow(in, "h late; v late",                                    "",                             "FIVB Rules 2025-2028, 19.3.2.5: each team");
    caseRow(in, "h late; rally h; h late",                           "late-replacement-is-delay",    "FIVB Rules 2025-2028, 19.3.2.6");
    caseRow(in, "h late; win h; h late",                             "late-replacement-is-delay",    "FIVB Rules 2025-2028, 19.3.2.6: in the match");
    caseRow(in, "h late; h delay penalty",                           "",                             "FIVB Rules 2025-2028, 19.3.2.6: a penalty without a warning");
    caseRow(in, "v late; h delay penalty",                           "delay-not-next",               "FIVB Rules 2025-2028, 16.2.2: the other team's");
    caseRow(cw, "h late",                                            "",                             "from memory: a word first");
    caseRow(cw, "h late; h late",                                    "late-replacement-is-delay",    "from memory: then a delay");
    caseRow(cw, "h late; h delay penalty",                           "delay-not-next",               "from memory: a warning first");
    caseRow(hs, "h late",                                            "late-replacement-is-delay",    "NFHS rule changes 2025-26: an unnecessary delay before the contact");
    caseRow(hs, "h libero 9 1; rally s; h wrong 3; rally v; h libero-out 9; rally h; h libero 9 2", "", "derived from Libero Serving 2013: she has not served, another did");
    caseRow(hs, "h libero 9 1; rally hs; h wrong 3 1; rally v; h libero-out 9; rally h; h libero 9 2", "", "derived from Libero Serving 2013: she has not served, another did");
    caseRow(cw, "h libero 9 1; rally hs; h wrong 3; rally v; h libero-out 9; rally h; h libero 9 2", "libero-second-slot", "NCAA Women's Volleyball 2012 and 2013 Rules, Libero tracking sheet instructions, derived: the first point is hers");
    caseRow(cl, "h libero 9 1; rally v; h wrong 3; rally v; rally h; h libero-out 9; h libero 9 2", "", "derived from Delta Region libero serving instructions 2012: she has not served, another did");
    caseRow(hs, "h libero 9 1; rally sen; h libero-out 9; rally h; h libero 9 2", "", "derived from GTCCVO, Ask the interpreter (NFHS 8-2-5): a dropped toss is no serve");
    caseRow(cw, "h libero 9 1; rally v; h libero-out 9; h libero 9 5; rally s; h illegal-libero 9; h libero-out 9; rally vh; h libero 9 2", "libero-second-slot", "NCAA Women's Volleyball 2012 and 2013 Rules, Libero tracking sheet instructions: she has served, and was illegal later");
    caseRow(cw, "h libero 9 1; rally s; h illegal-libero 9; rally v; h libero-out 9; rally h; h libero 9 2", "", "NCAA Women's Volleyball 2012 and 2013 Rules, Libero tracking sheet instructions, derived: no lawful serve");
    caseRow(cw, "h libero 9 5; rally sr; h libero-out 9",           "",                             "NCAA and PAVO interpretations of August 2002, 3: a legal contact of the serve");
    caseRow(cw, "h libero 9 5; rally sr; h libero-out 9; h libero 9 6", "libero-rally-between",     "NCAA and PAVO interpretations of August 2002, 3: one contact, one replacement");
    caseRow(cw, "h libero 9 5; rally r; h libero-out 9",            "libero-rally-between",         "NCAA and PAVO interpretations of August 2002, 3: nobody contacted the serve");
    caseRow(hs, "h libero 9 5; rally sr; h libero-out 9",           "libero-rally-between",         "from memory: nobody decided it");
    caseRow(cl, "h libero 9 5; rally h; h libero-out 9; again injury; h libero 9 6", "",             "USAV Rules Interpretation Bulletin 1 of 2009-10: an injury");
    caseRow(cl, "h libero 9 5; rally h; h libero-out 9; again interference; h libero 9 6", "libero-rally-between", "USAV Rules Interpretation Bulletin 1 of 2009-10: an injury only");
}
// clang-format on

QTEST_APPLESS_MAIN(TestLiberoCases)
#include "tst_liberocases.moc"
