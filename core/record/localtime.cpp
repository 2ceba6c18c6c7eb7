// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/localtime.h"

#include <cmath>

namespace setfolio {

int secondsFromUtc(std::span<const Recorded> entries) {
    constexpr int quarter = 15 * 60;
    constexpr int day = 24 * 60 * 60;
    for (const Recorded& recorded : entries) {
        const auto* started = std::get_if<SetStarted>(&recorded.entry);
        if (!started || !started->at.isValid() || !recorded.time.isValid())
            continue;
        int seconds = recorded.time.toUTC().time().secsTo(started->at);
        if (seconds > day / 2)
            seconds -= day;
        if (seconds <= -day / 2)
            seconds += day;
        return static_cast<int>(std::lround(static_cast<double>(seconds) / quarter)) * quarter;
    }
    return 0;
}

} // namespace setfolio
