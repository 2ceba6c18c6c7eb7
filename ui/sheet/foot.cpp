// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/scene.h"

namespace setfolio::sheet {

namespace {

constexpr Tag foot{Zone::Foot, ItemRole::Label, {}, {}};
constexpr double resultLeft = 193;

/// A line of the result: what it is, which team, its points.
void drawOutcome(Draft& draft, double top, const QString& head, const QString& name, const QString& points,
                 FontWeight weight) {
    draft.fitted(foot, {resultLeft, top}, head, labelStyle, mainRight - resultLeft);
    const double used = draft.fitted(foot.as(ItemRole::Score), {mainRight, top + 3.6}, points,
                                     {12, weight, soot, TextAlign::Right}, 10);
    draft.fitted(foot.as(ItemRole::Value), {resultLeft, top + 3.6}, name, {8.6, weight},
                 mainRight - resultLeft - used - 1.5);
    draft.ruleAcross(foot.as(ItemRole::Rule), resultLeft, mainRight, top + 4.9, 0.15, paleRule);
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
    QString winner, loser, most, least;
    SheetLabel head = SheetLabel::Winner;
    if (set.result) {
        const Team team = set.result->winner;
        winner = scene.name(team).name;
        loser = scene.name(opponentsOf(team)).name;
        most = QString::number(set.score[team]);
        least = QString::number(set.score[opponentsOf(team)]);
        head = set.result->confirmed ? head : SheetLabel::WinnerToConfirm;
    }
    if (set.cancelled)
        head = SheetLabel::Cancelled;
    drawOutcome(draft, footTop + 7.3, words(head), winner, most, FontWeight::Bold);
    drawOutcome(draft, footTop + 14.9, words(SheetLabel::Loser), loser, least, FontWeight::Medium);
    const QString duration = words(SheetLabel::Duration);
    draft.text(foot, {resultLeft, footTop + 22.6}, duration, labelStyle);
    const double after = resultLeft + std::max(11.0, draft.width(duration, labelStyle) + 1.5);
    if (const std::optional<int> minutes = minutesOf(set))
        draft.text(foot.as(ItemRole::Value), {after, footTop + 22.8}, minutesWords(*minutes),
                   {8.2, FontWeight::SemiBold});
}

} // namespace setfolio::sheet
