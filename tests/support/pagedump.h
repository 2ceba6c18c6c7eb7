// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A page as text that a person can read and compare: an item a line, in millimetres of the live area.
#pragma once

#include "ui/sheet/page.h"

#include <QString>

namespace setfolio::testing {

[[nodiscard]] QString dump(const Page& page);

} // namespace setfolio::testing
