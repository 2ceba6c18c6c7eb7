// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/statebefore.h"

namespace setfolio {

MatchState stateBefore(std::span<const Recorded> entries, EntryNumber number) {
    MatchState state;
    for (const TimelineItem& item : timelineOf(entries)) {
        if (item.recorded->number == number)
            break;
        if (item.stands())
            state = apply(std::move(state), *item.recorded);
    }
    return state;
}

} // namespace setfolio
