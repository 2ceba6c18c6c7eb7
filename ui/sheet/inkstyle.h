// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// How an ink is drawn: colour, line and weight say the same three times over, so that it is told in grey print and by
/// every eye.
#pragma once

#include "core/record/record.h"
#include "ui/sheet/item.h"
#include "ui/wording/inkset.h"

namespace setfolio::sheet {

struct InkStyle {
    QRgb colour = 0;
    double line = 0;     ///< of a ring at full size, millimetres
    bool broken = false; ///< in dashes
    double dashes = 1;   ///< how long they are, of a usual one
    FontWeight digits = FontWeight::Medium;
    std::optional<QRgb> tint; ///< of its columns
    double headRule = 0;
    double cross = 0; ///< through a cell of the substitution counter
    double slash = 0; ///< through a number of the running score
};

[[nodiscard]] const InkStyle& styleOf(Ink ink, InkSet set);

/// A line of the ink along `length`; a broken one in dashes of about `pitch`, closed at both ends.
[[nodiscard]] Stroke strokeAlong(const InkStyle& ink, double width, double length, double pitch);
/// A line of the ink round a ring; a broken one in whole dashes of about `pitch`.
[[nodiscard]] Stroke strokeRound(const InkStyle& ink, double width, double radius, double pitch);
/// Dashes that begin and end in the middle of one, so that two sides meet in a closed corner.
[[nodiscard]] Dash dashOfSide(double length, double pitch);

} // namespace setfolio::sheet
