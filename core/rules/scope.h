// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A set or a match: for which of them something holds.
#pragma once

namespace setfolio {

/// How long something holds or counts.
enum class Scope { Set, Match };

} // namespace setfolio
