// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Writes up signatures and seals, void ones among them.
#pragma once

#include "core/record/record.h"

namespace setfolio {

/// Writes an entry of a sign-off into the record; `state` is the one after it. Any other entry leaves it as it is.
void writeSignOff(MatchRecord& record, const MatchState& state, const Recorded& recorded);

} // namespace setfolio
