// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include "app/exitcode.h"
#include "core/match/entry.h"

#include <tl/expected.hpp>

#include <vector>

namespace setfolio {

/// The entries of a match file that must be whole and hold a match. If it is not, says why and gives the code; of a
/// torn last line it only says so.
[[nodiscard]] tl::expected<std::vector<Recorded>, ExitCode> readMatch(const QString& path);

} // namespace setfolio
