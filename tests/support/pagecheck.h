// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Looks over a composed page as a careful reader would: nothing over anything else, nothing outside its place, nothing
/// too small to read.
#pragma once

#include "ui/sheet/page.h"

#include <QStringList>

namespace setfolio::testing {

/// What is wrong, a line for each fault:
/// - type smaller than 6 pt;
/// - an item outside its zone or off the live area;
/// - two texts, or two marks, that overlap;
/// - a number or letter that touches the outline of its mark, or a text that runs into a mark it does not belong to;
/// - a text or mark on a rule, a text on the edge of a box or a plate.
/// All is measured on the true outlines: of the letters, rings, triangles.
/// Strikes, slashes, crosses and the closing line of the ladder lie over what they strike, and are left out.
[[nodiscard]] QStringList faultsOf(const Page& page);

/// The least distance, in millimetres, between a number or letter and the outline it stands in.
[[nodiscard]] double leastClearance(const Page& page);

} // namespace setfolio::testing
