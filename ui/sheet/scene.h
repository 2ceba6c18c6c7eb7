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
    /// The cell that is being served in, where it is to be shown.
    [[nodiscard]] const LivePlace* live() const { return options.screen && set.live ? &*set.live : nullptr; }
    /// Points that win this set, the margin apart.
    [[nodiscard]] int target() const {
        const MatchOpened& opened = heading.opened;
        const bool deciding = opened.bestOf > 1 && set.number == opened.bestOf;
        return deciding ? opened.rulebook.decidingSetPoints : opened.rulebook.setPoints;
    }
};

/// A page's place in the whole.
struct PageNumber {
    int number = 1;
    int of = 1;
};

/// A team's plate: solid for the first-listed team, outlined for the second.
void drawPlate(Draft& draft, const Tag& tag, const QRectF& box, const TeamName& name, double points);

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
void drawResult(Draft& draft, const Scene& scene);
/// Whole minutes from the start to the end, over midnight if need be; none while either is unknown.
[[nodiscard]] std::optional<int> minutesOf(const SetRecord& set);
/// The rule and title over a part of the foot.
void drawFootTitle(Draft& draft, double left, double right, const QString& title);
void drawLegend(Draft& draft, const Scene& scene);

} // namespace setfolio::sheet
