// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/undo.h"

namespace setfolio {

bool isCorrectingStrike(std::span<const Recorded> entries, std::size_t index) {
    const auto* strike = std::get_if<Strike>(&entries[index].entry);
    if (!strike || strike->target.value < 1 || strike->target.value > index ||
        std::holds_alternative<Strike>(entries[strike->target.value - 1].entry))
        return false;
    return !strike->reason.isEmpty() || newestStanding(entries.first(index)) != strike->target;
}

std::optional<EntryNumber> newestToUndo(std::span<const Recorded> entries) {
    for (std::size_t index = entries.size(); index-- > 0;) {
        const bool strikes = std::holds_alternative<Strike>(entries[index].entry);
        if ((strikes && !isCorrectingStrike(entries, index)) || !standsIn(entries, entries[index].number))
            continue;
        const bool opens = std::holds_alternative<MatchOpened>(entries[index].entry);
        return opens ? std::nullopt : std::optional(entries[index].number);
    }
    return std::nullopt;
}

} // namespace setfolio
