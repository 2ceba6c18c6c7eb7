// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The seal as it is printed: its code in groups, and a QR code with all of it.
#pragma once

#include "core/record/record.h"
#include "ui/sheet/draft.h"

namespace setfolio::sheet {

/// The squares of a QR code that holds a text in UTF-8, without the quiet zone; empty if it is too long for one.
[[nodiscard]] std::vector<std::vector<bool>> qrSquares(const QString& text);

/// The seal in force among the sign-offs, the newest; nullptr if there is none.
[[nodiscard]] const SignOffRecord* sealIn(const std::vector<SignOffRecord>& signOffs);

/// Draws the QR code into a square of `side` millimetres, its quiet zone included.
void drawQr(Draft& draft, const Tag& tag, QPointF corner, double side, const QString& text);

} // namespace setfolio::sheet
