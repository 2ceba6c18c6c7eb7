// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/fold.h"

#include <algorithm>

namespace setfolio {
namespace {

const Strike* asStrike(const Recorded& recorded) {
    return std::get_if<Strike>(&recorded.entry);
}

/// For each entry, the correction in force that struck it. Read from the newest back, because only a later correction
/// can put an earlier one out of force.
std::vector<const Recorded*> strikesInForce(std::span<const Recorded> entries) {
    std::vector<const Recorded*> struckBy(entries.size(), nullptr);
    for (std::size_t index = entries.size(); index-- > 0;) {
        const Strike* strike = asStrike(entries[index]);
        if (!strike || struckBy[index])
            continue;
        const std::size_t target = strike->target.value;
        if (target >= 1 && target <= index)
            struckBy[target - 1] = &entries[index];
    }
    return struckBy;
}

} // namespace

std::vector<TimelineItem> timelineOf(std::span<const Recorded> entries) {
    const std::vector<const Recorded*> struckBy = strikesInForce(entries);
    std::vector<TimelineItem> items;
    items.reserve(entries.size());
    for (std::size_t index = 0; index < entries.size(); ++index)
        if (!asStrike(entries[index]))
            items.push_back({&entries[index], struckBy[index]});
    return items;
}

bool standsIn(std::span<const Recorded> entries, EntryNumber number) {
    return number.value >= 1 && number.value <= entries.size() && !strikesInForce(entries)[number.value - 1];
}

MatchState fold(std::span<const Recorded> entries) {
    MatchState state;
    for (const TimelineItem& item : timelineOf(entries))
        if (item.stands())
            state = apply(std::move(state), *item.recorded);
    return state;
}

std::optional<EntryNumber> newestStanding(std::span<const Recorded> entries) {
    const std::vector<TimelineItem> items = timelineOf(entries);
    const auto newest = std::find_if(items.rbegin(), items.rend(), [](const TimelineItem& i) { return i.stands(); });
    if (newest == items.rend() || std::holds_alternative<MatchOpened>(newest->recorded->entry))
        return std::nullopt;
    return newest->recorded->number;
}

std::optional<EntryNumber> newestUndone(std::span<const Recorded> entries) {
    const std::vector<const Recorded*> struckBy = strikesInForce(entries);
    for (std::size_t index = entries.size(); index-- > 0;) {
        const Strike* strike = asStrike(entries[index]);
        if (!strike)
            return std::nullopt;
        const bool undoes = !asStrike(entries[strike->target.value - 1]);
        if (undoes && !struckBy[index])
            return entries[index].number;
    }
    return std::nullopt;
}

} // namespace setfolio
