// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "core/record/signoffreview.h"

class QWidget;

namespace setfolio {

/// Both teams' plates and what is signed between them in large figures: the points of the set, or the sets of the
/// match; and who has won.
[[nodiscard]] QWidget* makeScoreHead(const SignOffReview& review, const MatchState& state);

} // namespace setfolio
