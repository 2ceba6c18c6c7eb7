// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "app/commandline.h"
#include "app/exitcode.h"

namespace setfolio {

/// Says of each file whether it is whole and lawful, or whether it is what was signed under a seal.
[[nodiscard]] ExitCode run(const CheckFiles& command);

} // namespace setfolio
