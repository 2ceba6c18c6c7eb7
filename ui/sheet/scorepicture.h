// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "core/report/report.h"
#include "ui/sheet/draft.h"

namespace setfolio::sheet {

/// The score of a set as it went: a step a point, the home team's line heavy, the visitors' fine, with substitutions
/// and time-outs in their place, the home team's above and the visitors' below.
void drawScorePicture(Draft& draft, const QRectF& area, const PerTeam<TeamName>& teams, const SetFigures& set);

} // namespace setfolio::sheet
