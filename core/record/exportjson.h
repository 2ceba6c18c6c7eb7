// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What stands on the sheets, as JSON for other programs: resources/schema/export.schema.json describes it.
#pragma once

#include "core/match/entry.h"

#include <QJsonObject>

#include <span>

namespace setfolio {

/// The number of the format; it rises when something that is there changes its meaning.
inline constexpr int exportFormat = 1;

/// The whole match: heading, every set with its marks, running score and remarks, and what the rulebook objects to.
/// The first entry must open the match.
[[nodiscard]] QJsonObject exportOf(std::span<const Recorded> entries);

} // namespace setfolio
