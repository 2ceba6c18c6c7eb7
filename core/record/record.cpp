// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/record.h"

namespace setfolio {

Ink inkOfRound(int round) {
    switch ((round - 1) % 3) {
    case 0:
        return Ink::First;
    case 1:
        return Ink::Second;
    case 2:
        return Ink::Third;
    }
    Q_UNREACHABLE();
}

} // namespace setfolio
