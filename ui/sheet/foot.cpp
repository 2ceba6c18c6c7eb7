// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/sealtext.h"
#include "ui/sheet/scene.h"
#include "ui/sheet/sealmark.h"
#include "ui/wording/signoffwords.h"

namespace setfolio::sheet {

namespace {

constexpr Tag foot{Zone::Foot, ItemRole::Label, {}, {}};
constexpr double resultLeft = 193;
constexpr double sealSide = 19.6;                     ///< of the QR code, its quiet zone included
constexpr double sealLeft = mainRight - sealSide + 1; ///< of it: the quiet zone may reach to the ladder

/// A line of the result: what it is, which team, its points. A team whose name is too long goes by its code: the name
/// stands in the team's strip.
void drawOutcome(Draft& draft, double top, const QString& head, const TeamName& team, const QString& points,
                 FontWeight weight, double right) {
    draft.fitted(foot, {resultLeft, top}, head, labelStyle, right - resultLeft);
    const double used =
        draft.fitted(foot.as(ItemRole::Score), {right, top + 3.6}, points, {12, weight, soot, TextAlign::Right}, 10);
    const double room = right - resultLeft - used - 1.5;
    const bool isLong = draft.width(team.name, {smallestPoints, weight}) > room && !team.code.isEmpty();
    draft.named(foot.as(ItemRole::Value), {resultLeft, top + 3.6}, isLong ? team.code : team.name, {8.6, weight}, room,
                {2, -1.4, 2.2});
    draft.ruleAcross(foot.as(ItemRole::Rule), resultLeft, right, top + 4.9, 0.15, paleRule);
}

/// The code in three lines of two groups, and the QR code beside it.
void drawSeal(Draft& draft, const Scene& scene, const SignOffRecord& signOff) {
    const Tag tag = foot.of(signOff.seal->entry);
    const bool own = signOff.seal->of == SealOf::ThisFile;
    draft.fitted(tag, {resultLeft, footTop + 25.2}, words(own ? SignOffLabel::Seal : SignOffLabel::SealOfOriginal),
                 labelStyle, sealLeft - resultLeft);
    const QStringList groups = sealCode(signOff.seal->digest).split(u' ');
    for (qsizetype i = 0; i + 1 < groups.size(); i += 2)
        draft.fitted(tag.as(ItemRole::SealCode), {resultLeft, footTop + 27.6 + 1.15 * static_cast<double>(i)},
                     groups.at(i) + u' ' + groups.at(i + 1), {6.4, FontWeight::Bold, soot, TextAlign::Left, 0.08},
                     sealLeft - resultLeft);
    const PerTeam<int> result = signOff.set ? scene.set.score : scene.heading.setsWon;
    drawQr(draft, tag, {sealLeft, footBottom - sealSide}, sealSide, sealText(scene.heading, signOff, result));
}

} // namespace

std::optional<int> minutesOf(const SetRecord& set) {
    if (!set.startedAt.isValid() || !set.endedAt.isValid())
        return std::nullopt;
    constexpr int day = 24 * 60 * 60;
    return (set.startedAt.secsTo(set.endedAt) + day) % day / 60;
}

void drawFootTitle(Draft& draft, double left, double right, const QString& title) {
    draft.ruleAcross(foot.as(ItemRole::Rule), left, right, footTop, 0.5, soot);
    draft.fitted(foot.as(ItemRole::Title), {left, footTop + 3.4}, title, {7.2, FontWeight::Bold}, right - left);
}

void drawResult(Draft& draft, const Scene& scene) {
    const SetRecord& set = scene.set;
    drawFootTitle(draft, resultLeft, mainRight, words(SheetLabel::Result));
    TeamName winner, loser;
    QString most, least;
    SheetLabel head = SheetLabel::Winner;
    if (set.result) {
        const Team team = set.result->winner;
        winner = scene.name(team);
        loser = scene.name(opponentsOf(team));
        most = QString::number(set.score[team]);
        least = QString::number(set.score[opponentsOf(team)]);
        head = set.result->confirmed ? head : SheetLabel::WinnerToConfirm;
    }
    if (set.cancelled)
        head = set.inVain ? SheetLabel::InVain : SheetLabel::Cancelled;
    const SignOffRecord* sealed = sealIn(set.signOffs);
    drawOutcome(draft, footTop + 7.3, words(head), winner, most, FontWeight::Bold, mainRight);
    drawOutcome(draft, footTop + 14.9, words(SheetLabel::Loser), loser, least, FontWeight::Medium,
                sealed ? sealLeft : mainRight);
    if (sealed)
        drawSeal(draft, scene, *sealed);
    const QString duration = words(SheetLabel::Duration);
    draft.text(foot, {resultLeft, footTop + 22.6}, duration, labelStyle);
    const double after = resultLeft + std::max(11.0, draft.width(duration, labelStyle) + 1.5);
    if (const std::optional<int> minutes = minutesOf(set))
        draft.text(foot.as(ItemRole::Value), {after, footTop + 22.8}, minutesWords(*minutes),
                   {8.2, FontWeight::SemiBold});
}

} // namespace setfolio::sheet
