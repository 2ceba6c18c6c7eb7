// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/sheetwords.h"

#include "ui/wording/fill.h"

#include <QCoreApplication>
#include <QStringList>

namespace setfolio {

namespace {

struct Sheet {
    Q_DECLARE_TR_FUNCTIONS(Sheet)
};

QString number(int value) {
    return QString::number(value);
}

QString joined(QStringList parts) {
    parts.removeAll(QString());
    return parts.join(QStringLiteral(" · "));
}

} // namespace

// clang-format off
QString words(SheetLabel label) {
    using enum SheetLabel;
    switch (label) {
    case Set:                   return Sheet::tr("SET");
    case Venue:                 return Sheet::tr("Venue");
    case Date:                  return Sheet::tr("Date");
    case Scheduled:             return Sheet::tr("Scheduled");
    case Started:               return Sheet::tr("Started");
    case Finished:              return Sheet::tr("Finished");
    case Format:                return Sheet::tr("Format");
    case FirstServe:            return Sheet::tr("First serve");
    case Court:                 return Sheet::tr("Court, seen from the scorer");
    case Captain:               return Sheet::tr("Captain");
    case Libero:                return Sheet::tr("Libero");
    case TimeOuts:              return Sheet::tr("Time-outs (own–opponents)");
    case Slot:                  return Sheet::tr("Slot");
    case Starter:               return Sheet::tr("Starter");
    case Then:                  return Sheet::tr("Then");
    case Opponents:             return Sheet::tr("opp.");
    case Points:                return Sheet::tr("points");
    case Sanctions:             return Sheet::tr("Sanctions");
    case Card:                  return Sheet::tr("Card");
    case TeamHead:              return Sheet::tr("Team");
    case Who:                   return Sheet::tr("Who");
    case SetHead:               return Sheet::tr("Set");
    case Score:                 return Sheet::tr("Score");
    case Remarks:               return Sheet::tr("Remarks and corrections");
    case RemarkNumber:          return Sheet::tr("No.");
    case RemarkText:            return Sheet::tr("What happened, what was changed");
    case RemarksContinued:      return Sheet::tr("Remarks and corrections, continued");
    case Officials:             return Sheet::tr("Officials");
    case Signature:             return Sheet::tr("Signature, in ink");
    case LineJudges:            return Sheet::tr("Line judges");
    case Result:                return Sheet::tr("Result");
    case Winner:                return Sheet::tr("Winner");
    case WinnerToConfirm:       return Sheet::tr("Winner, to be confirmed");
    case Cancelled:             return Sheet::tr("Set cancelled, played again");
    case Loser:                 return Sheet::tr("Loser");
    case Duration:              return Sheet::tr("Duration");
    case OpeningPoint:          return Sheet::tr("point that won the serve");
    case PointOnServe:          return Sheet::tr("point on own serve");
    case RallyLost:             return Sheet::tr("rally lost");
    case ServedAgain:           return Sheet::tr("serve repeated");
    case LiberoServes:          return Sheet::tr("libero serves");
    case NoServe:               return Sheet::tr("without a serve");
    case PenaltyPoint:          return Sheet::tr("penalty point");
    case Struck:                return Sheet::tr("struck, with its remark");
    case TakenBack:             return Sheet::tr("points taken back");
    case Substitution:          return Sheet::tr("10 in for 7");
    case OpponentsSubstitution: return Sheet::tr("opponents’ substitution");
    case TimeOut:               return Sheet::tr("time-out");
    case OpponentsTimeOut:      return Sheet::tr("opponents’ time-out");
    case ScoredSubstitution:    return Sheet::tr("10 in for 7 at 12–9");
    case LossOfServe:           return Sheet::tr("exit score");
    case CaptainRinged:         return Sheet::tr("in a slot: captain");
    case WonOnOpponentsServe:   return Sheet::tr("won on opponents’ serve");
    case Won:                   return Sheet::tr("point won");
    case EndOfSet:              return Sheet::tr("end of the set");
    case Passed:                return Sheet::tr("passed over");
    }
    Q_UNREACHABLE();
}
// clang-format on

QString inkWords(Ink ink, int inks) {
    const int first = static_cast<int>(ink) + 1;
    QStringList rounds;
    for (int turn = 0; turn < 3; ++turn)
        rounds += number(first + turn * inks);
    const QString list = rounds.join(QStringLiteral(", "));
    switch (ink) {
    case Ink::First:
        return fill(Sheet::tr("rounds %1: fine"), {list});
    case Ink::Second:
        return fill(Sheet::tr("%1: heavy"), {list});
    case Ink::Third:
        return fill(Sheet::tr("%1: broken"), {list});
    case Ink::Fourth:
        return fill(Sheet::tr("%1: long dashes"), {list});
    }
    Q_UNREACHABLE();
}

QString dateWords(QDate date, const QLocale& locale) {
    //: A date as QLocale writes it: ddd day of the week, d day, MMM month, yyyy year.
    return date.isValid() ? locale.toString(date, Sheet::tr("ddd d MMM yyyy")) : QString();
}

QString timeWords(QTime time, const QLocale& locale) {
    QString format = locale.timeFormat(QLocale::ShortFormat);
    format.remove(QStringLiteral(":ss")); // some locales' short time has seconds, which no sheet wants
    return time.isValid() ? locale.toString(time, format) : QString();
}

QString formatWords(int bestOf) {
    return bestOf == 1 ? Sheet::tr("One set") : fill(Sheet::tr("Best of %1"), {number(bestOf)});
}

QString matchWords(const MatchOpened& opened) {
    const QString match = opened.matchNumber.isEmpty() ? QString() : fill(Sheet::tr("Match %1"), {opened.matchNumber});
    return joined({opened.division, match});
}

QString pageWords(int page, int of) {
    return fill(Sheet::tr("page %1 of %2"), {number(page), number(of)});
}

QString teamWords(Team team, const std::optional<Team>& servesFirst, const QString& colour) {
    QString turn;
    if (servesFirst)
        turn = *servesFirst == team ? Sheet::tr("serves first") : Sheet::tr("receives first");
    return joined({team == Team::Home ? Sheet::tr("Home") : Sheet::tr("Visitors"), turn, colour});
}

QString roundWords(int round, bool continued) {
    return fill(continued ? Sheet::tr("Round %1, continued") : Sheet::tr("Round %1"), {number(round)});
}

QString timeOutBox(int count) {
    return fill(QStringLiteral("T%1"), {number(count)});
}

QString scoreWords(int first, int second) {
    return fill(QStringLiteral("%1–%2"), {number(first), number(second)});
}

QString substitutionsWords(int used, int limit) {
    return fill(Sheet::tr("Substitutions · %1 of %2"), {number(used), number(limit)});
}

QString roleWords(Role role, int count) {
    const auto counted = [count](const QString& name) {
        return count > 0 ? fill(QStringLiteral("%1 %2"), {name, number(count)}) : name;
    };
    switch (role) {
    case Role::FirstReferee:
        return counted(Sheet::tr("First referee"));
    case Role::SecondReferee:
        return counted(Sheet::tr("Second referee"));
    case Role::Scorer:
        return counted(Sheet::tr("Scorer"));
    case Role::AssistantScorer:
        return counted(Sheet::tr("Assistant scorer (libero)"));
    case Role::Timer:
        return counted(Sheet::tr("Timer"));
    case Role::LineJudge:
        return counted(Sheet::tr("Line judge"));
    }
    Q_UNREACHABLE();
}

QString minutesWords(int minutes) {
    return fill(Sheet::tr("%1 min"), {number(minutes)});
}

QString continuedWords(int page) {
    return fill(Sheet::tr("continued on page %1"), {number(page)});
}

QString moreOfficials(int count) {
    return fill(Sheet::tr("and %1 more"), {number(count)});
}

QString sheetLanguage() {
    return Sheet::tr("en", "the language that the sheet's words are in, by its BCP 47 tag");
}

} // namespace setfolio
