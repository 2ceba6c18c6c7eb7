// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/sheetwords.h"

#include "ui/wording/fill.h"

#include <QCoreApplication>

#include <QStringList>
#include <algorithm>
#include <array>

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

/// A label and its words, to be translated.
struct LabelWords {
    SheetLabel label;
    const char* words;
};

// clang-format off
constexpr std::array sheetLabels{
    LabelWords{SheetLabel::Set,                   QT_TRANSLATE_NOOP("Sheet", "SET")},
    LabelWords{SheetLabel::Venue,                 QT_TRANSLATE_NOOP("Sheet", "Venue")},
    LabelWords{SheetLabel::Date,                  QT_TRANSLATE_NOOP("Sheet", "Date")},
    LabelWords{SheetLabel::Scheduled,             QT_TRANSLATE_NOOP("Sheet", "Scheduled")},
    LabelWords{SheetLabel::Started,               QT_TRANSLATE_NOOP("Sheet", "Started")},
    LabelWords{SheetLabel::Finished,              QT_TRANSLATE_NOOP("Sheet", "Finished")},
    LabelWords{SheetLabel::Format,                QT_TRANSLATE_NOOP("Sheet", "Format")},
    LabelWords{SheetLabel::FirstServe,            QT_TRANSLATE_NOOP("Sheet", "First serve")},
    LabelWords{SheetLabel::Court,                 QT_TRANSLATE_NOOP("Sheet", "Court, seen from the scorer")},
    LabelWords{SheetLabel::Captain,               QT_TRANSLATE_NOOP("Sheet", "Captain")},
    LabelWords{SheetLabel::Libero,                QT_TRANSLATE_NOOP("Sheet", "Libero")},
    LabelWords{SheetLabel::TimeOuts,              QT_TRANSLATE_NOOP("Sheet", "Time-outs (own–opponents)")},
    LabelWords{SheetLabel::Slot,                  QT_TRANSLATE_NOOP("Sheet", "Slot")},
    LabelWords{SheetLabel::Starter,               QT_TRANSLATE_NOOP("Sheet", "Starter")},
    LabelWords{SheetLabel::Then,                  QT_TRANSLATE_NOOP("Sheet", "Then")},
    LabelWords{SheetLabel::Opponents,             QT_TRANSLATE_NOOP("Sheet", "opp.")},
    LabelWords{SheetLabel::Points,                QT_TRANSLATE_NOOP("Sheet", "points")},
    LabelWords{SheetLabel::Sanctions,             QT_TRANSLATE_NOOP("Sheet", "Sanctions")},
    LabelWords{SheetLabel::Card,                  QT_TRANSLATE_NOOP("Sheet", "Card")},
    LabelWords{SheetLabel::TeamHead,              QT_TRANSLATE_NOOP("Sheet", "Team")},
    LabelWords{SheetLabel::Who,                   QT_TRANSLATE_NOOP("Sheet", "Who")},
    LabelWords{SheetLabel::SetHead,               QT_TRANSLATE_NOOP("Sheet", "Set")},
    LabelWords{SheetLabel::Score,                 QT_TRANSLATE_NOOP("Sheet", "Score")},
    LabelWords{SheetLabel::Remarks,               QT_TRANSLATE_NOOP("Sheet", "Remarks and corrections")},
    LabelWords{SheetLabel::RemarkNumber,          QT_TRANSLATE_NOOP("Sheet", "No.")},
    LabelWords{SheetLabel::RemarkText,            QT_TRANSLATE_NOOP("Sheet", "What happened, what was changed")},
    LabelWords{SheetLabel::RemarksContinued,      QT_TRANSLATE_NOOP("Sheet", "Remarks and corrections, continued")},
    LabelWords{SheetLabel::Officials,             QT_TRANSLATE_NOOP("Sheet", "Officials")},
    LabelWords{SheetLabel::Signature,             QT_TRANSLATE_NOOP("Sheet", "Signature, in ink")},
    LabelWords{SheetLabel::LineJudges,            QT_TRANSLATE_NOOP("Sheet", "Line judges")},
    LabelWords{SheetLabel::Result,                QT_TRANSLATE_NOOP("Sheet", "Result")},
    LabelWords{SheetLabel::Winner,                QT_TRANSLATE_NOOP("Sheet", "Winner")},
    LabelWords{SheetLabel::WinnerToConfirm,       QT_TRANSLATE_NOOP("Sheet", "Winner, to be confirmed")},
    LabelWords{SheetLabel::Cancelled,             QT_TRANSLATE_NOOP("Sheet", "Set cancelled, played again")},
    LabelWords{SheetLabel::InVain,                QT_TRANSLATE_NOOP("Sheet", "Set cancelled: match won before")},
    LabelWords{SheetLabel::Loser,                 QT_TRANSLATE_NOOP("Sheet", "Loser")},
    LabelWords{SheetLabel::Duration,              QT_TRANSLATE_NOOP("Sheet", "Duration")},
    LabelWords{SheetLabel::OpeningPoint,          QT_TRANSLATE_NOOP("Sheet", "point that won the serve")},
    LabelWords{SheetLabel::PointOnServe,          QT_TRANSLATE_NOOP("Sheet", "point on own serve")},
    LabelWords{SheetLabel::RallyLost,             QT_TRANSLATE_NOOP("Sheet", "rally lost")},
    LabelWords{SheetLabel::ServedAgain,           QT_TRANSLATE_NOOP("Sheet", "serve repeated")},
    LabelWords{SheetLabel::LiberoServes,          QT_TRANSLATE_NOOP("Sheet", "libero serves")},
    LabelWords{SheetLabel::NoServe,               QT_TRANSLATE_NOOP("Sheet", "without a serve")},
    LabelWords{SheetLabel::PenaltyPoint,          QT_TRANSLATE_NOOP("Sheet", "penalty point")},
    LabelWords{SheetLabel::Struck,                QT_TRANSLATE_NOOP("Sheet", "struck, with its remark")},
    LabelWords{SheetLabel::TakenBack,             QT_TRANSLATE_NOOP("Sheet", "points taken back")},
    LabelWords{SheetLabel::Substitution,          QT_TRANSLATE_NOOP("Sheet", "10 in for 7")},
    LabelWords{SheetLabel::OpponentsSubstitution, QT_TRANSLATE_NOOP("Sheet", "opponents’ substitution")},
    LabelWords{SheetLabel::TimeOut,               QT_TRANSLATE_NOOP("Sheet", "time-out")},
    LabelWords{SheetLabel::OpponentsTimeOut,      QT_TRANSLATE_NOOP("Sheet", "opponents’ time-out")},
    LabelWords{SheetLabel::ScoredSubstitution,    QT_TRANSLATE_NOOP("Sheet", "10 in for 7 at 12–9")},
    LabelWords{SheetLabel::LossOfServe,           QT_TRANSLATE_NOOP("Sheet", "exit score")},
    LabelWords{SheetLabel::CaptainRinged,         QT_TRANSLATE_NOOP("Sheet", "in a slot: captain")},
    LabelWords{SheetLabel::WonOnOpponentsServe,   QT_TRANSLATE_NOOP("Sheet", "won on opponents’ serve")},
    LabelWords{SheetLabel::Won,                   QT_TRANSLATE_NOOP("Sheet", "point won")},
    LabelWords{SheetLabel::EndOfSet,              QT_TRANSLATE_NOOP("Sheet", "end of the set")},
    LabelWords{SheetLabel::Passed,                QT_TRANSLATE_NOOP("Sheet", "passed over")},
};
// clang-format on
static_assert(sheetLabels.size() == static_cast<std::size_t>(SheetLabel::Passed) + 1);

} // namespace

QString words(SheetLabel label) {
    const auto* found = std::ranges::find(sheetLabels, label, &LabelWords::label);
    Q_ASSERT(found != sheetLabels.end());
    return Sheet::tr(found->words);
}

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
