// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#pragma once

#include <QString>

#include <initializer_list>

namespace setfolio {

/// The pattern with %1 to %9 filled in, each by its own value whether or not all are used. What is filled in is not
/// read again, so that a name may hold a %1 of its own.
[[nodiscard]] QString fill(const QString& pattern, std::initializer_list<QString> values);

} // namespace setfolio
