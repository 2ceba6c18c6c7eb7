// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace setfolio {

/// Name and version of the program in one line, as `setfolio --version` prints it.
[[nodiscard]] QString aboutLine();

} // namespace setfolio
