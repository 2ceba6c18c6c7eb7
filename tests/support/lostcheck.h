// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Looks on the pages of a match for everything that its record says stands there.
#pragma once

#include "core/record/record.h"
#include "ui/sheet/page.h"

#include <QStringList>

#include <span>
#include <vector>

namespace setfolio::testing {

/// A line for everything that the pages of a set do not show as often as the record has it:
/// - marks in the terms with their shapes, strikes and crosses; the running score; time-outs; crossed substitutions;
/// - the numbers in the slots, on each page that has slots, or among the remarks; the captain, the liberos;
/// - the words of all remarks; cards and delays, a line each;
/// - the names of the match, the teams and the officials.
[[nodiscard]] QStringList lostFromSet(const MatchHeading& heading, const SetRecord& set,
                                      const std::vector<Page>& pages);

/// The same for the page of the match: names, rosters, results, sanctions, remarks.
[[nodiscard]] QStringList lostFromMatch(const MatchRecord& record, const std::vector<Page>& pages);
/// For the list of entries: each number, its words, reasons.
[[nodiscard]] QStringList lostFromEntries(std::span<const Recorded> entries, const std::vector<Page>& pages);
/// For the libero tracking sheets of all sets: each arrival with its score.
[[nodiscard]] QStringList lostFromLibero(std::span<const Recorded> entries, const std::vector<Page>& pages);

} // namespace setfolio::testing
