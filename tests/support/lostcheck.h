// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Looks on the pages of a set for everything that its record says stands there.
#pragma once

#include "core/record/record.h"
#include "ui/sheet/page.h"

#include <QStringList>

#include <vector>

namespace setfolio::testing {

/// A line for everything that the pages do not show as often as the record has it:
/// - marks in the terms with their shapes, strikes and crosses; the running score; time-outs; crossed substitutions;
/// - the numbers in the slots, on each page that has slots;
/// - the words of all remarks and of the sanctions that the foot has no line for, in their order;
/// - cards and delays, a line each.
[[nodiscard]] QStringList lostFrom(const MatchHeading& heading, const SetRecord& set, const std::vector<Page>& pages);

} // namespace setfolio::testing
