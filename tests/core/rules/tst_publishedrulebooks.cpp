// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/settingvalue.h"

#include <QtTest>

#include <QDir>
#include <QJsonArray>
#include <QJsonDocument>

using namespace setfolio;

namespace {

// The four families in the rows of the tables.
constexpr auto hs = "high-school";
constexpr auto cw = "college-women";
constexpr auto cl = "club";
constexpr auto in = "international";

void addColumns() {
    QTest::addColumn<QString>("id");
    QTest::addColumn<QString>("key");
    QTest::addColumn<QString>("value");
    QTest::addColumn<QString>("grade");
    QTest::addColumn<QString>("source");
}

/// Value as JSON; grade A, B or none; the source is a part of what stands beside the value.
void row(const char* id, const char* key, const char* value, const char* grade, const char* source) {
    const auto text = [](const char* words) { return QString::fromLatin1(words); };
    QTest::addRow("%s: %s", id, key) << text(id) << text(key) << text(value) << text(grade) << text(source);
}

void check() {
    QFETCH(QString, id);
    QFETCH(QString, key);
    QFETCH(QString, source);
    const Rulebook book = publishedRulebook(id).value();
    const Setting* setting = settingOf(key);
    QVERIFY(setting);
    const QJsonDocument value(QJsonArray{valueOf(book, *setting)});
    QTEST(QString::fromUtf8(value.toJson(QJsonDocument::Compact)).sliced(1).chopped(1), "value");
    QVERIFY2(book.sources.value(key).text.contains(source), qPrintable(book.sources.value(key).text));
    QTEST(book.sources.value(key).grade, "grade");
}

} // namespace

class TestPublishedRulebooks : public QObject {
    Q_OBJECT

private Q_SLOTS:
    void setsAndMatchesAreAsPublished_data();
    void setsAndMatchesAreAsPublished() { check(); }
    void servesAndWrongServersAreAsPublished_data();
    void servesAndWrongServersAreAsPublished() { check(); }
    void substitutionsAndTimeOutsAreAsPublished_data();
    void substitutionsAndTimeOutsAreAsPublished() { check(); }
    void liberosAreAsPublished_data();
    void liberosAreAsPublished() { check(); }
    void sanctionsAreAsPublished_data();
    void sanctionsAreAsPublished() { check(); }
    void tableAndSheetAreAsPublished_data();
    void tableAndSheetAreAsPublished() { check(); }
    void cardsAreAsPublished();
    void fourAreOfferedInThisOrder();
    void everySettingHasASourceOrIsOpen();
};

// clang-format off
void TestPublishedRulebooks::setsAndMatchesAreAsPublished_data() {
    addColumns();
    row(hs, "set-points",                    "25",                          "A", "NFHS 2003 rule changes");
    row(cw, "set-points",                    "25",                          "A", "NCAA Women's Volleyball 2012 and 2013 Rules, 8.2.1");
    row(cl, "set-points",                    "25",                          "",  "from memory");
    row(in, "set-points",                    "25",                          "A", "FIVB Official Volleyball Rules 2025-2028, 6.2");
    row(hs, "deciding-set-points",           "15",                          "A", "NFHS 2003 rule changes");
    row(cw, "deciding-set-points",           "15",                          "A", "NCAA Women's Volleyball 2012 and 2013 Rules, 8.2.2");
    row(cl, "deciding-set-points",           "15",                          "B", "Chesapeake Region, USAV rule changes 2001-02");
    row(in, "deciding-set-points",           "15",                          "A", "FIVB Official Volleyball Rules 2025-2028, 6.3.2");
    row(hs, "margin",                        "2",                           "A", "NFHS 2003 rule changes");
    row(cw, "margin",                        "2",                           "A", "NCAA Women's Volleyball 2012 and 2013 Rules, 8.2.1");
    row(cl, "margin",                        "2",                           "B", "Chesapeake Region, USAV rule changes 2001-02");
    row(in, "margin",                        "2",                           "A", "FIVB Official Volleyball Rules 2025-2028, 6.2");
    row(hs, "cap",                           "null",                        "A", "NFHS 2003 rule changes");
    row(cw, "cap",                           "null",                        "",  "from memory");
    row(cl, "cap",                           "null",                        "",  "from memory");
    row(in, "cap",                           "null",                        "A", "FIVB Official Volleyball Rules 2025-2028, 6.2");
    row(hs, "best-of",                       "[3,5]",                       "A", "NFHS 2003 rule changes");
    row(cw, "best-of",                       "[5]",                         "",  "from memory");
    row(cl, "best-of",                       "[3,5]",                       "",  "from memory");
    row(in, "best-of",                       "[5]",                         "A", "FIVB Official Volleyball Rules 2025-2028, 6.3.1");
    row(hs, "interval-seconds",              "180",                         "A", "NFHS Comments on the Rules 2026-27, 5-5-3b(21)");
    row(cl, "interval-seconds",              "180",                         "B", "GEVA Region scorekeeper outline 2006-07");
    row(in, "interval-seconds",              "180",                         "A", "FIVB Official Volleyball Rules 2025-2028, 18.1");
    row(hs, "line-up-check-seconds",         "15",                          "A", "NFHS Comments on the Rules 2026-27, 5-5-3b(21)");
    row(hs, "long-interval-seconds",         "300",                         "A", "NFHS Comments on the Rules 2026-27, 5-5-3b(21)");
    row(cw, "long-interval-seconds",         "300",                         "B", "NCAA change report 2018");
    row(cw, "long-interval-after-set",       "2",                           "B", "NCAA change report 2018");
    row(in, "long-interval-seconds",         "600",                         "A", "FIVB Official Volleyball Rules 2025-2028, 18.1");
    row(in, "long-interval-after-set",       "2",                           "A", "FIVB Official Volleyball Rules 2025-2028, 18.1");
    row(in, "change-sides",                  R"("each-set-but-deciding")",  "A", "FIVB Official Volleyball Rules 2025-2028, 18.2.1");
    row(hs, "deciding-set-side-change",      "null",                        "",  "from memory");
    row(cw, "deciding-set-side-change",      "8",                           "A", "NCAA News of March 2002");
    row(cl, "deciding-set-side-change",      "8",                           "B", "USA Volleyball, Scorer tips and reminders 2014, 11c");
    row(in, "deciding-set-side-change",      "8",                           "A", "FIVB Official Volleyball Rules 2025-2028, 18.2.2");
    row(in, "default-result",                R"("sets-to-nought")",         "A", "FIVB Official Volleyball Rules 2025-2028, 6.4.1, 6.4.2");
    row(in, "incomplete-result",             R"("points-kept")",            "A", "FIVB Official Volleyball Rules 2025-2028, 6.4.3");
    row(in, "resume-within-hours",           "4",                           "A", "FIVB Official Volleyball Rules 2025-2028, 17.3");
    row(in, "resumed-elsewhere",             R"("set-replayed")",           "A", "FIVB Official Volleyball Rules 2025-2028, 17.3");
    row(hs, "protest",                       R"("no-protest")",             "",  "from memory");
    row(cw, "protest",                       R"("during-match")",           "B", "NCAA change report 2024");
    row(cl, "protest",                       R"("before-next-serve")",      "B", "Chesapeake Region, USAV rule changes 2001-02");
    row(in, "protest",                       R"("at-once")",                "A", "FIVB Official Volleyball Rules 2025-2028, 5.1.2.1, 5.1.3.2");
}

void TestPublishedRulebooks::servesAndWrongServersAreAsPublished_data() {
    addColumns();
    row(hs, "serve-seconds",                 "5",                           "",  "from memory");
    row(cw, "serve-seconds",                 "8",                           "A", "NCAA Women's Volleyball 2012 and 2013 Rules, 13.1.3.3");
    row(cl, "serve-seconds",                 "8",                           "B", "GEVA Region scorekeeper clinic 2010");
    row(in, "serve-seconds",                 "8",                           "A", "FIVB Official Volleyball Rules 2025-2028, 12.4.4");
    row(hs, "re-serves-per-term",            "1",                           "B", "GTCCVO, Ask the interpreter (NFHS 8-2-5");
    row(cw, "re-serves-per-term",            "0",                           "A", "NCAA Women's Volleyball 2012 and 2013 Rules, 13.1.3.2");
    row(cl, "re-serves-per-term",            "0",                           "B", "GEVA Region scorekeeper clinic 2010");
    row(in, "re-serves-per-term",            "0",                           "A", "FIVB Official Volleyball Rules 2025-2028, 12.4.2");
    row(in, "early-serve",                   R"("replay")",                 "A", "FIVB Official Volleyball Rules 2025-2028, 12.4.5");
    row(cw, "wrong-server-notice",           R"("after-contact")",          "A", "Instructions for using the scoresheet");
    row(cl, "wrong-server-notice",           R"("after-contact")",          "B", "GEVA Region scorekeeper clinic 2010");
    row(in, "wrong-server-notice",           R"("after-contact")",          "A", "FIVB Official Volleyball Rules 2025-2028, 27.2.2.2");
    row(hs, "wrong-server-points",           R"("present-term")",           "",  "from memory");
    row(in, "wrong-server-points",           R"("since-fault")",            "A", "FIVB Official Volleyball Rules 2025-2028, 7.7.2");
    row(in, "wrong-server-until",            R"("whenever-established")",   "A", "FIVB Official Volleyball Rules 2025-2028, 7.7.2");
    row(hs, "wrong-point-until",             R"("next-serve-contact")",     "B", "CVVOA Interpreter's Report of September 2015");
}

void TestPublishedRulebooks::substitutionsAndTimeOutsAreAsPublished_data() {
    addColumns();
    row(hs, "substitution-limit",            "18",                          "B", "EOA Volleyball Officials Clinic");
    row(cw, "substitution-limit",            "15",                          "",  "from memory");
    row(cl, "substitution-limit",            "12",                          "",  "from memory");
    row(in, "substitution-limit",            "6",                           "A", "FIVB Official Volleyball Rules 2025-2028, 15.1");
    row(hs, "substitution-rule",             R"("own-slot")",               "B", "EOA Volleyball Officials Clinic");
    row(cw, "substitution-rule",             R"("own-slot")",               "",  "from memory");
    row(cl, "substitution-rule",             R"("own-slot")",               "",  "from memory");
    row(in, "substitution-rule",             R"("once-out-once-back")",     "A", "FIVB Official Volleyball Rules 2025-2028, 15.6");
    row(hs, "players-per-slot",              "5",                           "",  "common practice");
    row(in, "players-per-slot",              "2",                           "A", "FIVB Official Volleyball Rules 2025-2028, 15.6");
    row(hs, "substitution-notices",          "[15,16,17,18]",               "B", "EOA Volleyball Officials Clinic");
    row(cw, "substitution-notices",          "[13,14,15]",                  "",  "from memory");
    row(in, "substitution-notices",          "[5,6]",                       "A", "FIVB Official Volleyball Rules 2025-2028, 24.2.7");
    row(hs, "substitution-before-start",     "true",                        "A", "NFHS release of January 2010");
    row(cw, "substitution-before-start",     "true",                        "A", "NCAA Women's Volleyball 2012 and 2013 Rules, 10.1.1.7");
    row(in, "substitution-before-start",     "true",                        "A", "FIVB Official Volleyball Rules 2025-2028, 15.3.2");
    row(cw, "second-request",                R"("after-rally-or-time-out")", "",  "from memory");
    row(in, "second-request",                R"("after-rally")",            "A", "FIVB Official Volleyball Rules 2025-2028, 15.2.2, 15.2.3");
    row(hs, "substitution-barred-by-delay",  "true",                        "A", "NFHS Rules Interpretations 2018-19, 10-2");
    row(in, "substitution-barred-by-delay",  "true",                        "A", "FIVB Official Volleyball Rules 2025-2028, 15.2.4");
    row(in, "substitution-request-illegal",  R"("delay")",                  "A", "FIVB Official Volleyball Rules 2025-2028, 15.11, 16.1.3");
    row(in, "excess-substitution",           R"("improper-request")",       "A", "FIVB Official Volleyball Rules 2025-2028, 15.11.1.4");
    row(in, "illegal-substitution-points",   R"("since-fault")",            "A", "FIVB Official Volleyball Rules 2025-2028, 15.9.2");
    row(hs, "illegal-substitution-counts",   "false",                       "B", "EOA Volleyball Officials Clinic");
    row(hs, "exceptional-count",             R"("while-any-left")",         "B", "EOA Volleyball Officials Clinic");
    row(in, "exceptional-count",             R"("not-counted")",            "A", "FIVB Official Volleyball Rules 2025-2028, 15.7");
    row(hs, "exceptional-out-for",           R"("set")",                    "B", "EOA Volleyball Officials Clinic");
    row(in, "exceptional-out-for",           R"("match")",                  "A", "FIVB Official Volleyball Rules 2025-2028, 15.7");
    row(in, "exceptional-libero",            R"("never")",                  "A", "FIVB Official Volleyball Rules 2025-2028, 15.7");
    row(hs, "fewer-than-six",                R"("vacant-place")",           "",  "from memory");
    row(in, "fewer-than-six",                R"("incomplete")",             "A", "FIVB Official Volleyball Rules 2025-2028, 6.4.3, 7.3.1");
    row(hs, "injury-seconds",                "30",                          "B", "CVVOA Interpreter's Report of September 2015");
    row(cw, "injury-seconds",                "30",                          "A", "NCAA Rules Interpretation Newsletter 2 of 2018");
    row(cl, "injury-seconds",                "30",                          "A", "USAV Rules Interpretation Bulletin 1 of 2009-10");
    row(in, "injury-seconds",                "180",                         "A", "FIVB Official Volleyball Rules 2025-2028, 17.1.2");
    row(hs, "time-outs",                     "2",                           "A", "NFHS 2003 rule changes");
    row(cw, "time-outs",                     "2",                           "",  "from memory");
    row(cl, "time-outs",                     "2",                           "",  "from memory");
    row(in, "time-outs",                     "2",                           "A", "FIVB Official Volleyball Rules 2025-2028, 15.1");
    row(hs, "time-out-seconds",              "60",                          "B", "Referee magazine, 5 rule differences");
    row(cw, "time-out-seconds",              "75",                          "B", "Referee magazine, 5 rule differences");
    row(cl, "time-out-seconds",              "30",                          "B", "Referee magazine, 5 rule differences");
    row(in, "time-out-seconds",              "30",                          "A", "FIVB Official Volleyball Rules 2025-2028, 15.4.1");
    row(cw, "time-out-warning-seconds",      "60",                          "B", "Referee magazine, 5 rule differences");
    row(cl, "time-out-warning-seconds",      "0",                           "B", "Referee magazine, 5 rule differences");
    row(hs, "time-out-ends-early",           "true",                        "B", "Referee magazine, 5 rule differences");
    row(cl, "time-out-ends-early",           "false",                       "B", "Referee magazine, 5 rule differences");
    row(hs, "time-out-notices",              "[2]",                         "",  "common practice");
    row(in, "time-out-notices",              "[2]",                         "A", "FIVB Official Volleyball Rules 2025-2028, 24.2.7");
    row(hs, "excess-time-out",               R"("delay")",                  "A", "NFHS Rules Interpretations 2016-17, 11-2 Penalty 2");
    row(in, "excess-time-out",               R"("improper-request")",       "A", "FIVB Official Volleyball Rules 2025-2028, 15.11");
}

void TestPublishedRulebooks::liberosAreAsPublished_data() {
    addColumns();
    row(hs, "maximum-liberos",               "2",                           "A", "NFHS Comments on the Rules 2026-27, 6-4-2");
    row(cw, "maximum-liberos",               "2",                           "B", "NCAA change report 2024, 12.1.1");
    row(cl, "maximum-liberos",               "2",                           "B", "Delta Region libero serving instructions 2012");
    row(in, "maximum-liberos",               "2",                           "A", "FIVB Official Volleyball Rules 2025-2028, 19.1.1");
    row(hs, "libero-named-for",              R"("set")",                    "B", "Iowa Girls HSAU Libero Tracking Instructions");
    row(cw, "libero-named-for",              R"("set")",                    "A", "NCAA Women's Volleyball 2012 and 2013 Rules, 10.1.1.3");
    row(cl, "libero-named-for",              R"("match")",                  "B", "Delta Region libero serving instructions 2012");
    row(in, "libero-named-for",              R"("match")",                  "A", "FIVB Official Volleyball Rules 2025-2028, 19.1.1");
    row(cw, "libero-named-late",             "false",                       "A", "NCAA Women's Volleyball 2012 and 2013 Rules, 10.1.1.3, 12.1.1");
    row(in, "libero-named-late",             "false",                       "A", "FIVB Official Volleyball Rules 2025-2028, 19.1.2");
    row(hs, "libero-serve",                  R"("one-slot")",               "B", "Libero Serving 2013");
    row(cw, "libero-serve",                  R"("one-slot")",               "A", "NCAA Women's Volleyball 2012 and 2013 Rules, 12.1.2.3");
    row(cl, "libero-serve",                  R"("one-slot")",               "B", "Delta Region libero serving instructions 2012");
    row(in, "libero-serve",                  R"("never")",                  "A", "FIVB Official Volleyball Rules 2025-2028, 19.3.1.3");
    row(cw, "libero-rally-between",          "true",                        "A", "Libero tracking sheet instructions");
    row(cl, "libero-rally-between",          "true",                        "B", "Delta Region libero serving instructions 2012");
    row(in, "libero-rally-between",          "true",                        "A", "FIVB Official Volleyball Rules 2025-2028, 19.3.2.1");
    row(hs, "libero-replaced-by",            R"("same-player-or-libero")",  "A", "NFHS press release of 5 February 2026");
    row(cl, "libero-replaced-by",            R"("same-player-or-libero")",  "B", "Delta Region libero serving instructions 2012");
    row(in, "libero-replaced-by",            R"("same-player-or-libero")",  "A", "FIVB Official Volleyball Rules 2025-2028, 19.3.2.2");
    row(hs, "libero-late-replacement",       R"("delay-or-fault")",         "B", "NFHS rule changes 2025-26");
    row(in, "libero-late-replacement",       R"("tolerated-then-penalty")", "A", "FIVB Official Volleyball Rules 2025-2028, 19.3.2.5, 19.3.2.6");
    row(cw, "libero-illegal-replacement",    R"("alignment-fault")",        "A", "NCAA/PAVO interpretations of August 2002");
    row(in, "libero-illegal-replacement",    R"("illegal-substitution")",   "A", "FIVB Official Volleyball Rules 2025-2028, 19.3.2.9");
    row(hs, "libero-redesignation",          R"("when-unable")",            "A", "NFHS Comments on the Rules 2026-27, 10-4-3a");
    row(in, "libero-redesignation",          R"("when-none-left")",         "A", "FIVB Official Volleyball Rules 2025-2028, 19.4");
    row(hs, "libero-disqualified",           R"("other-libero")",           "A", "NFHS Comments on the Rules 2026-27, 10-4-3d");
    row(in, "libero-disqualified",           R"("other-or-redesignated")",  "A", "FIVB Official Volleyball Rules 2025-2028, 19.5");
    row(hs, "libero-number-wrong",           R"("corrected")",              "A", "NFHS Comments on the Rules 2020-21, 7-1-4a(2)");
    row(cw, "libero-number-wrong",           R"("no-libero")",              "B", "Referee magazine 09/2023");
    row(cl, "libero-number-wrong",           R"("corrected")",              "B", "Referee magazine 09/2023 (USAV 7.3.5.1)");
    row(cw, "libero-captain",                "true",                        "A", "NCAA Women's Volleyball 2012 and 2013 Rules, 12.1.1");
}

void TestPublishedRulebooks::sanctionsAreAsPublished_data() {
    addColumns();
    row(hs, "conduct-scope",                 R"("match")",                  "",  "from memory");
    row(cw, "conduct-scope",                 R"("set")",                    "B", "Referee magazine, 5 rule differences");
    row(cl, "conduct-scope",                 R"("match")",                  "",  "from memory");
    row(in, "conduct-scope",                 R"("match")",                  "A", "FIVB Official Volleyball Rules 2025-2028, 21, diagram 9a");
    row(in, "conduct-warned-once",           R"("team")",                   "A", "FIVB Official Volleyball Rules 2025-2028, diagram 9a");
    row(in, "conduct-steps-up",              "true",                        "A", "FIVB Official Volleyball Rules 2025-2028, 21.3");
    row(hs, "coach-seated",                  R"("after-penalty")",          "A", "NFHS Comments on the Rules 2020-21, 12-2-6");
    row(hs, "delay-scope",                   R"("set")",                    "A", "NFHS Comments on the Rules 2015, 9-9-1");
    row(cw, "delay-scope",                   R"("set")",                    "B", "Referee magazine, 5 rule differences");
    row(cl, "delay-scope",                   R"("match")",                  "",  "from memory");
    row(in, "delay-scope",                   R"("match")",                  "A", "FIVB Official Volleyball Rules 2025-2028, 16.2");
    row(hs, "delay-written",                 R"("yud-rud")",                "A", "NFHS Comments on the Rules 2015, 5-6-3h");
    row(in, "delay-written",                 R"("columns-d")",              "B", "FIVB international score sheet 2013");
    row(cl, "improper-request",              R"("recorded-first")",         "",  "from memory");
    row(in, "improper-request",              R"("recorded-first")",         "A", "FIVB Official Volleyball Rules 2025-2028, 15.11.2, 15.11.3");
}

void TestPublishedRulebooks::tableAndSheetAreAsPublished_data() {
    addColumns();
    row(hs, "roster-seconds",                "600",                         "A", "NFHS Comments on the Rules 2020-21");
    row(cw, "roster-seconds",                "null",                        "",  "from memory");
    row(cl, "roster-seconds",                "600",                         "B", "Referee magazine, Triple check accuracy");
    row(hs, "roster-late",                   R"("delay")",                  "A", "NFHS Comments on the Rules 2020-21");
    row(hs, "roster-change",                 R"("penalty-point")",          "A", "NFHS Comments on the Rules 2020-21");
    row(cl, "roster-change",                 R"("penalty-point")",          "B", "Referee magazine, Triple check accuracy");
    row(in, "roster-change",                 R"("not-allowed")",            "A", "FIVB Official Volleyball Rules 2025-2028, 5.2.2");
    row(in, "team-list-signed",              "true",                        "A", "FIVB Official Volleyball Rules 2025-2028, 4.1.3, 5.2.2");
    row(hs, "first-line-up-seconds",         "120",                         "A", "2021-22 NFHS Volleyball Rules PowerPoint, 7-1-4");
    row(cw, "first-line-up-seconds",         "180",                         "A", "NCAA Women's Volleyball 2012 and 2013 Rules, 10.1.1.1");
    row(cl, "first-line-up-seconds",         "120",                         "B", "Referee magazine 09/2023");
    row(in, "first-line-up-seconds",         "0",                           "A", "FIVB Official Volleyball Rules 2025-2028, 27.2.1.2");
    row(cw, "first-line-up-fixed-seconds",   "60",                          "A", "NCAA Women's Volleyball 2012 and 2013 Rules, 10.1.1.7");
    row(hs, "line-up-seconds",               "60",                          "A", "NFHS Rules Interpretations 2016-17");
    row(cw, "line-up-seconds",               "30",                          "A", "NCAA Women's Volleyball 2012 and 2013 Rules, 10.1.1.1");
    row(cl, "line-up-seconds",               "30",                          "B", "GEVA Region scorekeeper outline 2006-07");
    row(hs, "line-up-late",                  R"("delay")",                  "A", "2021-22 NFHS Volleyball Rules PowerPoint, 7-1-4 Penalty");
    row(in, "line-up-late",                  R"("told")",                   "A", "FIVB Official Volleyball Rules 2025-2028, 27.2.1.2");
    row(in, "line-up-number-charged",        "false",                       "A", "FIVB Official Volleyball Rules 2025-2028, 7.3.5.1");
    row(in, "unregistered-player",           R"("points-lost")",            "A", "FIVB Official Volleyball Rules 2025-2028, 7.3.5.4");
    row(hs, "lowest-number",                 "0",                           "",  "from memory");
    row(in, "lowest-number",                 "1",                           "A", "FIVB Official Volleyball Rules 2025-2028, 4.3.3");
    row(in, "highest-number",                "99",                          "",  "from memory");
    row(hs, "written-order",                 R"("serving")",                "B", "IHSA Rally Scoring Sample Game");
    row(cw, "written-order",                 R"("serving")",                "A", "Explanation of scorekeeping example");
    row(cl, "written-order",                 R"("floor")",                  "B", "USA Volleyball Scorekeeping, non-deciding set");
    row(in, "written-order",                 R"("floor")",                  "B", "FIVB international score sheet 2013");
    row(cw, "exit-scores",                   "false",                       "A", "Instructions for using the scoresheet");
    row(cl, "exit-scores",                   "true",                        "B", "GEVA Region scorekeeper clinic 2010");
    row(in, "exit-scores",                   "true",                        "B", "FIVB international score sheet 2013");
    row(hs, "re-serve-written",              "true",                        "",  "common practice");
    row(hs, "running-mark",                  R"("ringed")",                 "",  "common practice");
    row(cw, "running-mark",                  R"("slashed")",                "A", "Instructions for using the scoresheet");
    row(hs, "captain-mark",                  R"("letter-c")",               "B", "IHSAA Volleyball Scorekeeper Duties");
    row(cl, "captain-mark",                  R"("own-place")",              "B", "USA Volleyball, Scorer tips and reminders 2014, 9");
    row(hs, "libero-slot-marked",            "true",                        "B", "Libero Serving 2013");
    row(cw, "libero-slot-marked",            "true",                        "A", "Libero tracking sheet instructions");
    row(cl, "substitution-scored",           "true",                        "B", "USA Volleyball, Scorer tips and reminders 2014, 12");
    row(hs, "inks",                          "3",                           "",  "common practice");
    row(cw, "inks",                          "2",                           "A", "Instructions for using the scoresheet");
    row(cl, "signed-for",                    R"("set")",                    "B", "GEVA Region scorekeeper outline 2006-07");
    row(in, "signed-for",                    R"("match")",                  "A", "FIVB Official Volleyball Rules 2025-2028, 27.2.3");
    row(in, "signing-order",                 R"(["scorer","captains","assistant-scorer","second-referee","first-referee"])", "A", "FIVB Official Volleyball Rules 2025-2028, 27.2.3");
    row(hs, "set-point-notice",              "true",                        "B", "EOA Volleyball Officials Clinic");
    row(hs, "match-point-notice",            "true",                        "B", "EOA Volleyball Officials Clinic");
    row(in, "side-change-notice",            "true",                        "A", "FIVB Official Volleyball Rules 2025-2028, 27.2.2");
}

// clang-format on

void TestPublishedRulebooks::cardsAreAsPublished() {
    using enum SanctionLevel;
    using enum CardsShown;
    const auto ladder = [](const char* id) { return publishedRulebook(QString::fromLatin1(id))->conductLadder; };
    // FIVB Official Volleyball Rules 2025-2028, 21 and diagram 9a: only a penalty gives a point
    const std::vector<CardStep> international{{Warning, Yellow, false},
                                              {Penalty, Red, true},
                                              {Expulsion, BothTogether, false},
                                              {Disqualification, BothApart, false}};
    QCOMPARE(ladder(in), international);
    QCOMPARE(ladder(cl), international); // from memory
    // NCAA Women's Volleyball 2012 and 2013 Rules, 8.1.2.3: a point for each of them
    const std::vector<CardStep> college = ladder(cw);
    QCOMPARE(college.size(), 4U);
    QVERIFY(!college[0].point && college[1].point && college[2].point && college[3].point);
    // from memory: no expulsion, and a disqualification gives a point
    const std::vector<CardStep> school = ladder(hs);
    QCOMPARE(school.size(), 3U);
    QCOMPARE(school[2].level, Disqualification);
    QVERIFY(school[2].point);
    // NFHS Comments on the Rules 2015, 9-9-1; FIVB Official Volleyball Rules 2025-2028, 16.2 and diagram 9b
    for (const QString& id : publishedRulebookIds())
        QCOMPARE(publishedRulebook(id)->delayLadder,
                 (std::vector<CardStep>{{Warning, Yellow, false}, {Penalty, Red, true}}));
}

void TestPublishedRulebooks::fourAreOfferedInThisOrder() {
    const std::vector<QString> ids = publishedRulebookIds();
    QCOMPARE(ids, (std::vector<QString>{QLatin1String(hs), QLatin1String(cw), QLatin1String(cl), QLatin1String(in)}));
    for (const QString& id : ids)
        QCOMPARE(publishedRulebook(id).value().id, id);
    const QDir files(QStringLiteral(":/rulebooks"));
    QCOMPARE(static_cast<std::size_t>(files.entryList({QStringLiteral("*.json")}, QDir::Files).size()), ids.size());
}

void TestPublishedRulebooks::everySettingHasASourceOrIsOpen() {
    for (const QString& id : publishedRulebookIds()) {
        const Rulebook book = publishedRulebook(id).value();
        for (const Setting& setting : rulebookSettings())
            QVERIFY2(!book.sources.value(QString::fromLatin1(setting.key)).text.isEmpty(), setting.key);
        for (auto source = book.sources.begin(); source != book.sources.end(); ++source) {
            const bool named = source->grade == u"A" || source->grade == u"B";
            QVERIFY2(named || source->grade.isEmpty(), qPrintable(source.key()));
            QVERIFY2(named || source->open || source->text.startsWith(u"common practice"), qPrintable(source.key()));
            QVERIFY2(!named || !source->text.startsWith(u"from memory"), qPrintable(source.key()));
        }
    }
}

QTEST_APPLESS_MAIN(TestPublishedRulebooks)
#include "tst_publishedrulebooks.moc"
