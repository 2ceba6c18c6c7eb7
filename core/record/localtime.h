// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "core/match/entry.h"

#include <span>

namespace setfolio {

/// Seconds from UTC to the local time of the match, in whole quarters of an hour: told by the first entry that holds
/// both, the start of a set with the time on the wall. 0 where none does.
[[nodiscard]] int secondsFromUtc(std::span<const Recorded> entries);

} // namespace setfolio
