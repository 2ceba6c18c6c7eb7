// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/pagewords.h"

#include "ui/wording/fill.h"
#include "ui/wording/sheetwords.h"

#include <QCoreApplication>

namespace setfolio {

namespace {

struct Sheet {
    Q_DECLARE_TR_FUNCTIONS(Sheet)
};

QString number(int value) {
    return QString::number(value);
}

QString number(EntryNumber entry) {
    return QString::number(entry.value);
}

} // namespace

// clang-format off
QString words(PageLabel label) {
    using enum PageLabel;
    switch (label) {
    case LiberoSheet:       return Sheet::tr("Libero tracking sheet");
    case MatchPage:         return Sheet::tr("Match");
    case EntryPage:         return Sheet::tr("List of entries");
    case LineUpSlip:        return Sheet::tr("Line-up slip");
    case HandOver:          return Sheet::tr("Hand-over");
    case CoachPage:         return Sheet::tr("Coach’s page");
    case Match:             return Sheet::tr("MATCH");
    case Rulebook:          return Sheet::tr("Rulebook");
    case Coach:             return Sheet::tr("Coach");
    case Captain:           return Sheet::tr("Captain");
    case Liberos:           return Sheet::tr("Liberos");
    case Number:            return Sheet::tr("No.");
    case Player:            return Sheet::tr("Player");
    case ResultBySet:       return Sheet::tr("Result by set");
    case Total:             return Sheet::tr("Total");
    case Role:              return Sheet::tr("Role");
    case Name:              return Sheet::tr("Name");
    case What:              return Sheet::tr("What");
    case Reason:            return Sheet::tr("Reason");
    case RemarksOfSets:     return Sheet::tr("Remarks and corrections by set");
    case SignaturesAndSeal: return Sheet::tr("Signatures and seal of the match");
    case Seal:              return Sheet::tr("Seal of this record");
    case Serves:            return Sheet::tr("Serves");
    case Replacements:      return Sheet::tr("each number with the score, own–opponents");
    case LiberoNotKept:     return Sheet::tr("no replacements were recorded: to be filled in by pen");
    case LiberoHowTitle:    return Sheet::tr("How it is written");
    case LiberoHow:         return Sheet::tr("libero, in the place of the number before her");
    case LiberoHowOut:      return Sheet::tr("player who comes back or in; those who left are struck");
    case LiberoHowScore:    return Sheet::tr("score at that moment, own–opponents");
    case LiberoServesHere:  return Sheet::tr("the one slot the libero has served in");
    case Time:              return Sheet::tr("Time");
    case Rally:             return Sheet::tr("Rally");
    case EntryHead:             return Sheet::tr("Entry");
    case SeenOnCourt:       return Sheet::tr("As you see them on court");
    case Net:               return Sheet::tr("net");
    case CoachSignature:    return Sheet::tr("Coach’s signature");
    case SlipNote:          return Sheet::tr("Write one number into each place. Hand the slip to the second referee before the set.");
    case Team:              return Sheet::tr("Team");
    case TeamRoster:        return Sheet::tr("Roster");
    case StandsAt:          return Sheet::tr("As it stands at");
    case NextServer:        return Sheet::tr("Serves next");
    case IfLost:            return Sheet::tr("If the serve is lost, next");
    case OnCourtNow:        return Sheet::tr("On court now");
    case HaveStood:         return Sheet::tr("Have stood here, in order");
    case SubstitutionsLeft: return Sheet::tr("Substitutions left");
    case TimeOutsLeft:      return Sheet::tr("Time-outs left");
    case SetsWon:           return Sheet::tr("Sets won");
    case Rotation:          return Sheet::tr("Slot in 1");
    case SideOut:           return Sheet::tr("Side-out");
    case NoRally:           return Sheet::tr("No rally");
    case Difference:        return Sheet::tr("+/−");
    case Servers:           return Sheet::tr("Servers");
    case Terms:             return Sheet::tr("Terms");
    case Won:               return Sheet::tr("Won");
    case Lost:              return Sheet::tr("Lost");
    case LongestRun:        return Sheet::tr("Longest");
    case LongestRuns:       return Sheet::tr("Longest runs");
    case PointsInARow:      return Sheet::tr("Points");
    case FromTo:            return Sheet::tr("Score, home–visitors");
    case Course:            return Sheet::tr("The score as it went");
    case CourseSigns:       return Sheet::tr("heavy line: home, fine line: visitors; strokes are substitutions, triangles time-outs: home above, visitors below");
    case Changes:           return Sheet::tr("Substitutions and time-outs, score home–visitors");
    }
    Q_UNREACHABLE();
}
// clang-format on

QString continuedTitle(const QString& title) {
    return fill(Sheet::tr("%1, continued"), {title});
}

QString signerWords(Signer signer, const QString& code) {
    switch (signer) {
    case Signer::Scorer:
        return roleWords(Role::Scorer, 0);
    case Signer::AssistantScorer:
        return roleWords(Role::AssistantScorer, 0);
    case Signer::Captains:
        return fill(Sheet::tr("Captain %1"), {code});
    case Signer::Coaches:
        return fill(Sheet::tr("Coach %1"), {code});
    case Signer::SecondReferee:
        return roleWords(Role::SecondReferee, 0);
    case Signer::FirstReferee:
        return roleWords(Role::FirstReferee, 0);
    }
    Q_UNREACHABLE();
}

QString forfeitWords(const Forfeit& forfeit, const QString& code) {
    const QString what = forfeit.kind == ForfeitKind::Default
                             ? fill(Sheet::tr("%1 did not play: all sets are given"), {code})
                             : fill(Sheet::tr("%1 could not play on: the points needed are given"), {code});
    const QString reason = forfeit.reason.simplified();
    return reason.isEmpty() ? what : fill(Sheet::tr("%1. %2"), {what, reason});
}

QString placedWords(const Placed& placed) {
    const QString pattern =
        placed.how == Placed::How::Before ? Sheet::tr("put in before no. %1") : Sheet::tr("put in the place of no. %1");
    return fill(pattern, {number(placed.target)});
}

QString reasonWords(const QString& reason) {
    return fill(Sheet::tr("reason: %1"), {reason});
}

QString overruledWords(const QString& reason) {
    return reason.isEmpty() ? Sheet::tr("stands on the referee’s word")
                            : fill(Sheet::tr("stands on the referee’s word: %1"), {reason});
}

QString struckByWords(EntryNumber correction) {
    return fill(Sheet::tr("struck by no. %1"), {number(correction)});
}

QString asItStands(const QString& time, const QString& score) {
    return fill(Sheet::tr("as it stands at %1, %2"), {time, score});
}

QString standsAtWords(const QString& time, const QString& score) {
    return time.isEmpty() ? score : fill(Sheet::tr("%1, %2"), {time, score});
}

QString leftWords(int limit, int used) {
    return fill(Sheet::tr("%1 of %2"), {number(std::max(0, limit - used)), number(limit)});
}

QString slotOfTeam(const QString& code, const QString& slot) {
    return fill(Sheet::tr("%1, slot %2"), {code, slot});
}

QString orderTitle(const QString& code) {
    return fill(Sheet::tr("Order of service, %1: who serves next comes first"), {code});
}

QString wonOnServe() {
    return Sheet::tr("serve won");
}

QString lostOnServe() {
    return Sheet::tr("lost");
}

QString wonOnReceive() {
    return Sheet::tr("receive won");
}

QString lostOnReceive() {
    return Sheet::tr("lost");
}

QString percentWords(int percent) {
    return fill(Sheet::tr("%1 %"), {number(percent)});
}

QString setWithScore(int set, int own, int opponents) {
    return fill(Sheet::tr("%1: %2"), {number(set), scoreWords(own, opponents)});
}

QString fromToWords(const QString& from, const QString& to) {
    return fill(Sheet::tr("%1 to %2"), {from, to});
}

QString substitutionWords(const Substitution& substitution) {
    return fill(Sheet::tr("%1 in for %2"), {number(substitution.in.value), number(substitution.out.value)});
}

} // namespace setfolio
