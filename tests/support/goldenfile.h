// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Texts that a person has looked at and approved, kept beside what they were made from.
#pragma once

#include <QString>

namespace setfolio::testing {

/// Compares with an approved file. On a difference, or where there is none yet, what was got is left beside it as
/// FILE.actual (tests/support/approve takes it), and what differs first is said. Empty when they are equal.
[[nodiscard]] QString differenceFrom(const QString& file, const QString& got);

} // namespace setfolio::testing
