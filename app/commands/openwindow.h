// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "app/commandline.h"
#include "app/exitcode.h"

namespace setfolio {

/// Whether there is a screen to open a window on; asked before Qt looks for one and ends the program if not.
[[nodiscard]] bool isThereAScreen();

/// Opens the window and stays until the last one is closed. Needs a QApplication.
[[nodiscard]] ExitCode run(const OpenWindow& command);

} // namespace setfolio
