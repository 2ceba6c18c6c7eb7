// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Colours as greys, for a printer that would else choose them itself.
#pragma once

#include "ui/sheet/item.h"

namespace setfolio::sheet {

/// The grey of the same luminance (WCAG 2.2's relative luminance), so that contrast is kept.
[[nodiscard]] QRgb greyOf(QRgb colour);
/// All colours of an item.
void turnGrey(Item& item);

} // namespace setfolio::sheet
