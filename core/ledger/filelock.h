// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The lock of FORMAT.md: on the open file itself, so that it ends with the process and leaves nothing behind.
#pragma once

#include <QString>

namespace setfolio {

enum class LockOutcome {
    Taken,
    Held,        ///< by another opening of the file, in this process or another
    Unsupported, ///< the file system has no locks
};

/// Takes the lock for as long as the descriptor is open; never waits.
[[nodiscard]] LockOutcome takeLock(int descriptor);
/// "host, process 4711": who holds the lock of the file that is open there. "another process" if the system does not
/// say, as on a network drive; empty if nobody holds it.
[[nodiscard]] QString lockHolder(int descriptor);

} // namespace setfolio
