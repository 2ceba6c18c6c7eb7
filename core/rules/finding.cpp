// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/finding.h"

#include <algorithm>

namespace setfolio {

bool isRefused(const Findings& findings) {
    return std::ranges::any_of(findings, [](const Finding& f) { return f.gravity == Gravity::Refused; });
}

} // namespace setfolio
