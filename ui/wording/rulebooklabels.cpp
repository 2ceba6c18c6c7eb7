// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/rulebooklabels.h"

#include <QCoreApplication>

#include <algorithm>
#include <span>

namespace setfolio {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(setfolio::RulebookWords)
};

struct Label {
    const char* key;
    const char* words;
};

// clang-format off
constexpr Label labels[] = {
    {"set-points",                        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Points that win a set")},
    {"deciding-set-points",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Points that win the deciding set")},
    {"margin",                            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Lead that is needed")},
    {"cap",                               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Cap: a set ends at this score")},
    {"best-of",                           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Best of")},
    {"interval-seconds",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Interval between sets")},
    {"long-interval-seconds",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Longer interval")},
    {"long-interval-after-set",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The longer interval follows set")},
    {"line-up-check-seconds",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Added to an interval for the check of line-ups")},
    {"change-sides",                      QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The teams change sides")},
    {"deciding-set-side-change",          QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Change of sides in the deciding set, at")},
    {"default-result",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A team that does not come or will not play")},
    {"incomplete-result",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A team that cannot play on")},
    {"resume-within-hours",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Hours within which a match goes on where it stood")},
    {"resumed-elsewhere",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Resumed on another court")},
    {"protest",                           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Protest")},
    {"serve-seconds",                     QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Time to serve after the signal")},
    {"re-serves-per-term",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Re-serves in a term of service")},
    {"early-serve",                       QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A serve before the signal")},
    {"requests-in-re-serve",              QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Requests between a re-serve's signal and the serve")},
    {"requests-in-replay",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Requests between a replay's signal and the serve")},
    {"wrong-server-notice",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Of a wrong server the scorer speaks")},
    {"wrong-server-points",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A wrong server costs")},
    {"wrong-server-until",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A wrong server's points are taken back")},
    {"wrong-server-requests",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Time-outs and substitutions meanwhile are taken back too")},
    {"wrong-point-until",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A point given to the wrong team is put right")},
    {"substitution-limit",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Substitutions, a team in a set")},
    {"substitution-rule",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A player may come in")},
    {"players-per-slot",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Players who may share a slot in a set")},
    {"substitution-notices",              QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Substitutions told to the second referee")},
    {"substitution-before-start",         QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Substitutions before the set starts")},
    {"second-request",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A second request for substitution")},
    {"substitution-barred-by-delay",      QT_TRANSLATE_NOOP("setfolio::RulebookWords", "After a delay no substitution before a rally")},
    {"substitution-request-illegal",      QT_TRANSLATE_NOOP("setfolio::RulebookWords", "An illegal substitution, seen before play, is")},
    {"excess-substitution",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A substitution asked for when none is left is")},
    {"illegal-substitution-points",       QT_TRANSLATE_NOOP("setfolio::RulebookWords", "An illegal substitution costs")},
    {"illegal-substitution-until",        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Points of an illegal substitution are taken back")},
    {"illegal-substitution-counts",       QT_TRANSLATE_NOOP("setfolio::RulebookWords", "An illegal substitution counts")},
    {"exceptional-count",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "An exceptional substitution counts")},
    {"exceptional-out-for",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "After an exceptional substitution the player is out for")},
    {"exceptional-libero",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A libero comes in by an exceptional substitution")},
    {"players-at-start",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Players needed to start a set")},
    {"fewer-than-six",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A team that cannot have six on court")},
    {"injury-seconds",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Time to decide about an injured player")},
    {"time-outs",                         QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Time-outs, a team in a set")},
    {"time-out-seconds",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Length of a time-out")},
    {"time-out-warning-seconds",          QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Warning in a time-out, after")},
    {"time-out-ends-early",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A time-out may end early")},
    {"time-out-notices",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Time-outs told to the second referee")},
    {"excess-time-out",                   QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A time-out asked for when none is left is")},
    {"maximum-liberos",                   QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Liberos, at most")},
    {"libero-named-for",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Liberos are named for")},
    {"libero-named-late",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A libero may still be named at the check of the line-up")},
    {"libero-serve",                      QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The libero serves")},
    {"libero-rally-between",              QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A completed rally between two libero replacements")},
    {"libero-replaced-by",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "For the libero comes in")},
    {"libero-late-replacement",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A libero replacement after the signal")},
    {"libero-illegal-replacement",        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "An illegal libero replacement, after the contact, is")},
    {"libero-redesignation",              QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Another player may be made libero")},
    {"libero-disqualified",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "When a libero is disqualified the team goes on")},
    {"libero-number-wrong",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A wrong libero's number on the line-up")},
    {"libero-captain",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A libero may be captain")},
    {"conduct-ladder",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Sanctions for misconduct")},
    {"conduct-scope",                     QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A person's sanctions are remembered for")},
    {"conduct-warned-once",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A warning is given once to")},
    {"conduct-steps-up",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A person's next sanction is a step higher")},
    {"coach-seated",                      QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The head coach stays seated")},
    {"delay-ladder",                      QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Sanctions for delay")},
    {"delay-scope",                       QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Delays are counted for")},
    {"delay-written",                     QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A delay is written")},
    {"improper-request",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "An improper request")},
    {"roster-seconds",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Roster due before the end of the warm-up by")},
    {"roster-late",                       QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A late roster is")},
    {"roster-change",                     QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A late change of the roster")},
    {"team-list-signed",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Captain and coach sign the team list")},
    {"first-line-up-seconds",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "First line-up due before the end of the warm-up by")},
    {"first-line-up-fixed-seconds",       QT_TRANSLATE_NOOP("setfolio::RulebookWords", "First line-up may be changed until before the end by")},
    {"line-up-seconds",                   QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Later line-ups due before the end of the interval by")},
    {"line-up-late",                      QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A late line-up is")},
    {"line-up-number-charged",            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Putting right a starter's number nobody wears counts")},
    {"unregistered-player",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A player who is not on the roster")},
    {"lowest-number",                     QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Lowest shirt number")},
    {"highest-number",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Highest shirt number")},
    {"written-order",                     QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Slot I of the receiving team holds")},
    {"exit-scores",                       QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Exit scores are written")},
    {"re-serve-written",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A re-serve is written RS")},
    {"running-mark",                      QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A point on one's own serve is in the running score")},
    {"captain-mark",                      QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The captain is marked by")},
    {"libero-slot-marked",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The slot the libero serves in gets a triangle")},
    {"substitution-scored",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A substitution is written with the score")},
    {"inks",                              QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Inks, taken in turn")},
    {"signing-order",                     QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Who signs, in this order")},
    {"signed-for",                        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "It is signed at the end of")},
    {"set-point-notice",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Set point is told to the second referee")},
    {"match-point-notice",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Match point is told to the second referee")},
    {"side-change-notice",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The change of sides in the deciding set is told")},
    // rules without a value
    {"alternate-first-serve",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The first serve alternates from set to set")},
    {"first-toss",                        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The toss before the first set")},
    {"deciding-set-toss",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A new toss before the deciding set")},
    {"replay",                            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A rally that is stopped is played over")},
    {"score-discrepancy",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "When scores disagree the score sheet counts")},
    {"wrong-server-point",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A wrong server costs one point and the serve, whoever won the rally")},
    {"line-up-numbers",                   QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Six different numbers, all on the roster")},
    {"line-up-libero",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "No libero among the six")},
    {"rotation-order",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The serving order is kept through the set")},
    {"substitution-slot",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A player comes back only to her own slot")},
    {"substitution-roster",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Only players of the roster come in")},
    {"substitution-pairs",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Several substitutions are made pair by pair")},
    {"exceptional-substitution",          QT_TRANSLATE_NOOP("setfolio::RulebookWords", "An injured player is replaced lawfully if she can be, else by anyone off court")},
    {"libero-back-row",                   QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A libero plays in the back row only")},
    {"libero-after-contact",              QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A libero may come or go once a serve was contacted, though the rally is played again")},
    {"libero-after-replay",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A libero may come or go when a rally was broken off for an injury")},
    {"captain-on-court",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The playing captain is on court")},
    {"libero-unable",                     QT_TRANSLATE_NOOP("setfolio::RulebookWords", "A libero who cannot play on is replaced")},
    {"libero-tracker",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The libero's replacements are kept on a sheet of their own")},
    {"sanctions-between-sets",            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Sanctions before and between sets count in the next set")},
    {"time-out-score",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "The score of a time-out is written with the team first that asked")},
    {"roster-numbers",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "No number stands twice on a roster")},
};

constexpr Label phrases[] = {
    {"serving",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "position 2")},
    {"floor",                   QT_TRANSLATE_NOOP("setfolio::RulebookWords", "position 1")},
    {"never",                   QT_TRANSLATE_NOOP("setfolio::RulebookWords", "never")},
    {"one-slot",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "in one slot a set")},
    {"set",                     QT_TRANSLATE_NOOP("setfolio::RulebookWords", "the set")},
    {"match",                   QT_TRANSLATE_NOOP("setfolio::RulebookWords", "the match")},
    {"each-set",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "after each set")},
    {"each-set-but-deciding",   QT_TRANSLATE_NOOP("setfolio::RulebookWords", "after each set, before the deciding one by toss")},
    {"after-second-set",        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "after the second set only")},
    {"no-change",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "never")},
    {"points-kept",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "keeps its points; the opponents get what they need")},
    {"sets-to-nought",          QT_TRANSLATE_NOOP("setfolio::RulebookWords", "loses every set to nought")},
    {"goes-on",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "a set goes on at its score")},
    {"set-replayed",            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "a set is played anew")},
    {"no-protest",              QT_TRANSLATE_NOOP("setfolio::RulebookWords", "none")},
    {"before-next-serve",       QT_TRANSLATE_NOOP("setfolio::RulebookWords", "before the next serve")},
    {"during-match",            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "decided during the match")},
    {"at-once",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "told at once, written after the match")},
    {"re-serve",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is a re-serve")},
    {"replay",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is replayed")},
    {"after-contact",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "after the contact")},
    {"before-serve",            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "before the serve")},
    {"present-term",            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "the points of the present term of service")},
    {"since-fault",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "all points since the fault")},
    {"no-points",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "no points")},
    {"next-serve-contact",      QT_TRANSLATE_NOOP("setfolio::RulebookWords", "until the opponents contact their next serve")},
    {"whenever-established",    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "as long as the moment is known")},
    {"own-slot",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "in one slot, again and again")},
    {"once-out-once-back",      QT_TRANSLATE_NOOP("setfolio::RulebookWords", "once out, once back, same partner")},
    {"allowed",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is allowed in the same dead ball")},
    {"after-rally",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is allowed after a completed rally")},
    {"after-rally-or-time-out", QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is allowed after a rally or a time-out")},
    {"while-any-left",          QT_TRANSLATE_NOOP("setfolio::RulebookWords", "while any is left")},
    {"not-counted",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "never")},
    {"last",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "only when nobody else may")},
    {"last-for-hurt",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "only when nobody else may, and not for a player sent off")},
    {"vacant-place",            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "plays on with a vacant place")},
    {"incomplete",              QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is incomplete and loses")},
    {"delay",                   QT_TRANSLATE_NOOP("setfolio::RulebookWords", "a delay")},
    {"improper-request",        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "an improper request")},
    {"delay-or-fault",          QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is a delay before the contact, a fault after it")},
    {"tolerated-then-penalty",  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is let pass once, then a delay penalty")},
    {"spoken-then-delay",       QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is warned in words once, then a delay")},
    {"alignment-fault",         QT_TRANSLATE_NOOP("setfolio::RulebookWords", "a fault of alignment")},
    {"illegal-substitution",    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "an illegal substitution")},
    {"same-player",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "only whom she replaced")},
    {"same-player-or-libero",   QT_TRANSLATE_NOOP("setfolio::RulebookWords", "whom she replaced, or the other libero")},
    {"no-redesignation",        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "never")},
    {"when-unable",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "when a libero cannot play on")},
    {"when-none-left",          QT_TRANSLATE_NOOP("setfolio::RulebookWords", "when no libero is left")},
    {"other-libero",            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "with the other libero, if any")},
    {"other-or-redesignated",   QT_TRANSLATE_NOOP("setfolio::RulebookWords", "with the other libero, or a new one")},
    {"corrected",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is corrected")},
    {"no-libero",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "means no libero that set")},
    {"warning",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "warning")},
    {"penalty",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "penalty")},
    {"expulsion",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "expulsion")},
    {"disqualification",        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "disqualification")},
    {"yellow",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "yellow")},
    {"red",                     QT_TRANSLATE_NOOP("setfolio::RulebookWords", "red")},
    {"both-together",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "red and yellow together")},
    {"both-apart",              QT_TRANSLATE_NOOP("setfolio::RulebookWords", "red and yellow apart")},
    {"person",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "each person")},
    {"team",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "the team")},
    {"not-seated",              QT_TRANSLATE_NOOP("setfolio::RulebookWords", "never")},
    {"after-warning",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "after a warning")},
    {"after-penalty",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "after a penalty")},
    {"yud-rud",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "YUD, RUD")},
    {"columns-d",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "D, by column")},
    {"recorded-first",          QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is recorded once, then a delay")},
    {"delay-at-once",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is a delay at once")},
    {"told",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "told the second referee")},
    {"free",                    QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is free")},
    {"penalty-point",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "costs a point")},
    {"not-allowed",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is not allowed")},
    {"added",                   QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is added")},
    {"added-with-point",        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "is added, for a point")},
    {"may-not-play",            QT_TRANSLATE_NOOP("setfolio::RulebookWords", "may not play")},
    {"points-lost",             QT_TRANSLATE_NOOP("setfolio::RulebookWords", "costs all that was won with her")},
    {"ringed",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "ringed")},
    {"slashed",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "slashed")},
    {"letter-c",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "a C")},
    {"ringed-number",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "a ring")},
    {"own-place",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "a place of its own")},
    {"scorer",                  QT_TRANSLATE_NOOP("setfolio::RulebookWords", "scorer")},
    {"assistant-scorer",        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "assistant scorer")},
    {"captains",                QT_TRANSLATE_NOOP("setfolio::RulebookWords", "captains")},
    {"coaches",                 QT_TRANSLATE_NOOP("setfolio::RulebookWords", "coaches")},
    {"second-referee",          QT_TRANSLATE_NOOP("setfolio::RulebookWords", "second referee")},
    {"first-referee",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "first referee")},
};

constexpr Label groups[] = {
    {"set-points",              QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Sets and match")},
    {"serve-seconds",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Serve and wrong server")},
    {"substitution-limit",      QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Substitutions")},
    {"time-outs",               QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Time-outs")},
    {"maximum-liberos",         QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Libero")},
    {"conduct-ladder",          QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Sanctions and requests")},
    {"roster-seconds",          QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Rosters and line-ups")},
    {"written-order",           QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Score sheet and notices")},
    {"",                        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "Rules without a value")},
};

constexpr Label absences[] = {
    {"long-interval-after-set", QT_TRANSLATE_NOOP("setfolio::RulebookWords", "any")},
    {"resume-within-hours",     QT_TRANSLATE_NOOP("setfolio::RulebookWords", "no limit")},
    {"players-per-slot",        QT_TRANSLATE_NOOP("setfolio::RulebookWords", "no limit")},
};
// clang-format on

QString saidOf(std::span<const Label> list, const QString& key) {
    const auto found =
        std::ranges::find_if(list, [&key](const Label& label) { return key == QLatin1String(label.key); });
    return found == list.end() ? key : Say::tr(found->words);
}

} // namespace

QString settingLabel(const QString& key) {
    return saidOf(labels, key);
}

QString groupBeginningWith(const QString& key) {
    const auto* found =
        std::ranges::find_if(groups, [&key](const Label& label) { return key == QLatin1String(label.key); });
    return found == std::end(groups) ? QString() : Say::tr(found->words);
}

QString settingPhrase(const QString& word) {
    return saidOf(phrases, word);
}

QString settingWithoutNumber(const QString& key) {
    const QString said = saidOf(absences, key);
    return said == key ? Say::tr("none") : said;
}

} // namespace setfolio
