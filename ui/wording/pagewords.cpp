// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/pagewords.h"

#include "ui/wording/fill.h"
#include "ui/wording/sheetwords.h"

#include <QCoreApplication>

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

QString number(EntryNumber entry) {
    return QString::number(entry.value);
}

/// A label and its words, to be translated.
struct LabelWords {
    PageLabel label;
    const char* words;
};

// clang-format off
constexpr std::array pageLabels{
    LabelWords{PageLabel::LiberoSheet,       QT_TRANSLATE_NOOP("Sheet", "Libero tracking sheet")},
    LabelWords{PageLabel::MatchPage,         QT_TRANSLATE_NOOP("Sheet", "Match")},
    LabelWords{PageLabel::EntryPage,         QT_TRANSLATE_NOOP("Sheet", "List of entries")},
    LabelWords{PageLabel::LineUpSlip,        QT_TRANSLATE_NOOP("Sheet", "Line-up slip")},
    LabelWords{PageLabel::HandOver,          QT_TRANSLATE_NOOP("Sheet", "Hand-over")},
    LabelWords{PageLabel::CoachPage,         QT_TRANSLATE_NOOP("Sheet", "Coach’s page")},
    LabelWords{PageLabel::Match,             QT_TRANSLATE_NOOP("Sheet", "MATCH")},
    LabelWords{PageLabel::Rulebook,          QT_TRANSLATE_NOOP("Sheet", "Rulebook")},
    LabelWords{PageLabel::Coach,             QT_TRANSLATE_NOOP("Sheet", "Coach")},
    LabelWords{PageLabel::Captain,           QT_TRANSLATE_NOOP("Sheet", "Captain")},
    LabelWords{PageLabel::Liberos,           QT_TRANSLATE_NOOP("Sheet", "Liberos")},
    LabelWords{PageLabel::Number,            QT_TRANSLATE_NOOP("Sheet", "No.")},
    LabelWords{PageLabel::Player,            QT_TRANSLATE_NOOP("Sheet", "Player")},
    LabelWords{PageLabel::ResultBySet,       QT_TRANSLATE_NOOP("Sheet", "Result by set")},
    LabelWords{PageLabel::Total,             QT_TRANSLATE_NOOP("Sheet", "Total")},
    LabelWords{PageLabel::Role,              QT_TRANSLATE_NOOP("Sheet", "Role")},
    LabelWords{PageLabel::Name,              QT_TRANSLATE_NOOP("Sheet", "Name")},
    LabelWords{PageLabel::What,              QT_TRANSLATE_NOOP("Sheet", "What")},
    LabelWords{PageLabel::Reason,            QT_TRANSLATE_NOOP("Sheet", "Reason")},
    LabelWords{PageLabel::RemarksOfSets,     QT_TRANSLATE_NOOP("Sheet", "Remarks and corrections by set")},
    LabelWords{PageLabel::SignaturesAndSeal, QT_TRANSLATE_NOOP("Sheet", "Signatures and seal of the match")},
    LabelWords{PageLabel::Seal,              QT_TRANSLATE_NOOP("Sheet", "Seal of this record")},
    LabelWords{PageLabel::Serves,            QT_TRANSLATE_NOOP("Sheet", "Serves")},
    LabelWords{PageLabel::Replacements,      QT_TRANSLATE_NOOP("Sheet", "each number with the score, own–opponents")},
    LabelWords{PageLabel::LiberoNotKept,     QT_TRANSLATE_NOOP("Sheet", "no replacements were recorded: to be filled in by pen")},
    LabelWords{PageLabel::LiberoHowTitle,    QT_TRANSLATE_NOOP("Sheet", "How it is written")},
    LabelWords{PageLabel::LiberoHow,         QT_TRANSLATE_NOOP("Sheet", "libero, in the place of the number before her")},
    LabelWords{PageLabel::LiberoHowOut,      QT_TRANSLATE_NOOP("Sheet", "player who comes back or in; those who left are struck")},
    LabelWords{PageLabel::LiberoHowScore,    QT_TRANSLATE_NOOP("Sheet", "score at that moment, own–opponents")},
    LabelWords{PageLabel::LiberoServesHere,  QT_TRANSLATE_NOOP("Sheet", "the one slot the libero has served in")},
    LabelWords{PageLabel::Time,              QT_TRANSLATE_NOOP("Sheet", "Time")},
    LabelWords{PageLabel::Rally,             QT_TRANSLATE_NOOP("Sheet", "Rally")},
    LabelWords{PageLabel::EntryHead,         QT_TRANSLATE_NOOP("Sheet", "Entry")},
    LabelWords{PageLabel::SeenOnCourt,       QT_TRANSLATE_NOOP("Sheet", "As you see them on court")},
    LabelWords{PageLabel::Net,               QT_TRANSLATE_NOOP("Sheet", "net")},
    LabelWords{PageLabel::CoachSignature,    QT_TRANSLATE_NOOP("Sheet", "Coach’s signature")},
    LabelWords{PageLabel::SlipNote,          QT_TRANSLATE_NOOP("Sheet", "Write one number into each place. Hand the slip to the second referee before the set.")},
    LabelWords{PageLabel::Team,              QT_TRANSLATE_NOOP("Sheet", "Team")},
    LabelWords{PageLabel::TeamRoster,        QT_TRANSLATE_NOOP("Sheet", "Roster")},
    LabelWords{PageLabel::StandsAt,          QT_TRANSLATE_NOOP("Sheet", "As it stands at")},
    LabelWords{PageLabel::NextServer,        QT_TRANSLATE_NOOP("Sheet", "Serves next")},
    LabelWords{PageLabel::IfLost,            QT_TRANSLATE_NOOP("Sheet", "If the serve is lost, next")},
    LabelWords{PageLabel::OnCourtNow,        QT_TRANSLATE_NOOP("Sheet", "On court now")},
    LabelWords{PageLabel::HaveStood,         QT_TRANSLATE_NOOP("Sheet", "Have stood here, in order")},
    LabelWords{PageLabel::SubstitutionsLeft, QT_TRANSLATE_NOOP("Sheet", "Substitutions left")},
    LabelWords{PageLabel::TimeOutsLeft,      QT_TRANSLATE_NOOP("Sheet", "Time-outs left")},
    LabelWords{PageLabel::SetsWon,           QT_TRANSLATE_NOOP("Sheet", "Sets won")},
    LabelWords{PageLabel::Rotation,          QT_TRANSLATE_NOOP("Sheet", "Slot in 1")},
    LabelWords{PageLabel::SideOut,           QT_TRANSLATE_NOOP("Sheet", "Side-out")},
    LabelWords{PageLabel::NoRally,           QT_TRANSLATE_NOOP("Sheet", "No rally")},
    LabelWords{PageLabel::Difference,        QT_TRANSLATE_NOOP("Sheet", "+/−")},
    LabelWords{PageLabel::Servers,           QT_TRANSLATE_NOOP("Sheet", "Servers")},
    LabelWords{PageLabel::Terms,             QT_TRANSLATE_NOOP("Sheet", "Terms")},
    LabelWords{PageLabel::Won,               QT_TRANSLATE_NOOP("Sheet", "Won")},
    LabelWords{PageLabel::Lost,              QT_TRANSLATE_NOOP("Sheet", "Lost")},
    LabelWords{PageLabel::LongestRun,        QT_TRANSLATE_NOOP("Sheet", "Longest")},
    LabelWords{PageLabel::LongestRuns,       QT_TRANSLATE_NOOP("Sheet", "Longest runs")},
    LabelWords{PageLabel::PointsInARow,      QT_TRANSLATE_NOOP("Sheet", "Points")},
    LabelWords{PageLabel::FromTo,            QT_TRANSLATE_NOOP("Sheet", "Score, home–visitors")},
    LabelWords{PageLabel::Course,            QT_TRANSLATE_NOOP("Sheet", "The score as it went")},
    LabelWords{PageLabel::CourseSigns,       QT_TRANSLATE_NOOP("Sheet", "heavy line: home, fine line: visitors; strokes are substitutions, triangles time-outs: home above, visitors below")},
    LabelWords{PageLabel::Changes,           QT_TRANSLATE_NOOP("Sheet", "Substitutions and time-outs, score home–visitors")},
};
// clang-format on
static_assert(pageLabels.size() == static_cast<std::size_t>(PageLabel::Changes) + 1);

} // namespace

QString words(PageLabel label) {
    const auto* found = std::ranges::find(pageLabels, label, &LabelWords::label);
    Q_ASSERT(found != pageLabels.end());
    return Sheet::tr(found->words);
}

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
    return Sheet::tr("serve +");
}

QString lostOnServe() {
    return Sheet::tr("serve −");
}

QString wonOnReceive() {
    return Sheet::tr("rec. +");
}

QString lostOnReceive() {
    return Sheet::tr("rec. −");
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
