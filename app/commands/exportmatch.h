// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "app/commandline.h"
#include "app/exitcode.h"

namespace setfolio {

/// Writes what stands on the sheets as JSON.
[[nodiscard]] ExitCode run(const ExportMatch& command);

} // namespace setfolio
