// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the judge found, said to the person at the table: what is wrong and the way out, in a short sentence.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

#include <QString>

namespace setfolio {

/// The sentence. Only the names of the match are read from `state`, so that any state of the same match will do.
[[nodiscard]] QString sentence(const Finding& finding, const MatchState& state);

/// Where the rule stands: the source beside the setting that the finding rests on; empty when it rests on sense alone.
[[nodiscard]] QString sourceOf(const Finding& finding, const Rulebook& rulebook);

} // namespace setfolio
