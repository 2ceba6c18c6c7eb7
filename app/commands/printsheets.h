// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "app/commandline.h"
#include "app/exitcode.h"

namespace setfolio {

/// Prints the sheets of all sets of all files into one PDF. Needs a QGuiApplication.
[[nodiscard]] ExitCode run(const PrintSheets& command);

} // namespace setfolio
