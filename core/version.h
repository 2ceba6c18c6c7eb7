// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

namespace setfolio {

/// The program's version, such as "0.1.0": printed on sheets and written into match files.
[[nodiscard]] QString programVersion();

} // namespace setfolio
