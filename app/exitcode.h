// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "core/ledger/filecalls.h"

#include <algorithm>

namespace setfolio {

/// How setfolio ends. The worse of two is the higher. Those from 64 on are as in sysexits.h of the BSD systems.
enum class ExitCode : int {
    Done = 0,
    WithFindings = 1, ///< whole, with findings; or a file without a match
    Damaged = 2,      ///< damaged, altered, cut short; or a list that cannot be recorded
    Usage = 64,
    NoInput = 66,
    Unavailable = 69, ///< no screen, no typeface
    CannotCreate = 73,
    CannotWrite = 74,
};

[[nodiscard]] constexpr ExitCode worse(ExitCode a, ExitCode b) {
    return std::max(a, b);
}

/// The code for a file that was to be written.
[[nodiscard]] constexpr ExitCode exitCodeOf(FileError::Code code) {
    using enum FileError::Code;
    switch (code) {
    case CannotOpen:
    case CannotCreate:
    case CannotReplace:
        return ExitCode::CannotCreate;
    case CannotRead:
    case CannotWrite:
    case CannotSync:
    case TooLong:
    case ChangedOutside:
        return ExitCode::CannotWrite;
    }
    return ExitCode::CannotWrite;
}

} // namespace setfolio
