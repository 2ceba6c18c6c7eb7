// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "app/commandline.h"
#include "app/exitcode.h"

#include <QDateTime>

namespace setfolio {

/// Judges a list of entries and writes it as a new match file, whole or not at all. `now` is for entries without a
/// time.
[[nodiscard]] ExitCode run(const EnterList& command, const QDateTime& now);

} // namespace setfolio
