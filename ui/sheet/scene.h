// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the parts of a page are composed from.
#pragma once

#include "ui/sheet/compose.h"
#include "ui/sheet/draft.h"
#include "ui/sheet/geometry.h"
#include "ui/wording/sheetwords.h"

namespace setfolio::sheet {

struct Scene {
    const MatchHeading& heading;
    const SetRecord& set;
    const SheetOptions& options;

    [[nodiscard]] const TeamName& name(Team team) const { return heading.opened.teams[team]; }
    [[nodiscard]] const TeamRecord& team(Team team) const { return set.teams[team]; }
    [[nodiscard]] bool isOver() const { return set.result.has_value(); }
    /// What the terms of a round are written in.
    [[nodiscard]] const InkStyle& inkOf(int round) const { return styleOf(inkOfRound(round, set.inks), options.inks); }
    /// The cell that is being served in, where it is to be shown.
    [[nodiscard]] const LivePlace* live() const { return options.screen && set.live ? &*set.live : nullptr; }
    /// Points that win this set, the margin apart.
    [[nodiscard]] int target() const { return pointsToWin(heading.opened, set.number); }
};

/// A page's place in the whole.
struct PageNumber {
    int number = 1;
    int of = 1;
};

/// A team's plate: solid for the first-listed team, outlined for the second.
void drawPlate(Draft& draft, const Tag& tag, const QRectF& box, const TeamName& name, double points);

/// A team's name under what is said of it, in a strip whose top left corner is `corner`.
void drawTeamName(Draft& draft, const Tag& tag, QPointF corner, const QString& label, const QString& name, double room);

void drawHeader(Draft& draft, const Scene& scene, PageNumber page);
void drawStrip(Draft& draft, const Scene& scene, Team team);
void drawSlots(Draft& draft, const Scene& scene, Team team);

/// Both teams' plates and points, at the page's top right corner.
void drawScore(Draft& draft, const Scene& scene);

/// Which numbers of the running score a page holds.
struct Rungs {
    int first = 1;
    int count = 36;
};
/// 36 rungs a page; up to 44 points on one page of 44; above, as many pages of 36 as it takes.
[[nodiscard]] std::vector<Rungs> rungsOf(const SetRecord& set);
void drawLadder(Draft& draft, const Scene& scene, Rungs rungs);

void drawOfficials(Draft& draft, const Scene& scene);
/// The signatures given on screen, in the place of the lines for ink.
void drawSignatures(Draft& draft, const Scene& scene);
void drawResult(Draft& draft, const Scene& scene);
/// Whole minutes from the start to the end, over midnight if need be; none while either is unknown.
[[nodiscard]] std::optional<int> minutesOf(const SetRecord& set);
/// The rule and title over a part of the foot.
void drawFootTitle(Draft& draft, double left, double right, const QString& title);
void drawLegend(Draft& draft, const Scene& scene);

} // namespace setfolio::sheet
