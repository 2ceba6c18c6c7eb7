// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/record.h"

namespace setfolio {

Ink inkOfRound(int round, int inks) {
    return static_cast<Ink>((round - 1) % inks);
}

} // namespace setfolio
