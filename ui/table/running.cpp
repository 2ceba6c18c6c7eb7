// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/running.h"

#include <ranges>

namespace setfolio {

namespace {

template <typename... Kinds>
bool isOneOf(const Entry& entry) {
    return (std::holds_alternative<Kinds>(entry) || ...);
}

/// The newest standing entry of a kind, with only the kinds in `Over` after it.
template <typename Kind, typename... Over>
const Recorded* newestBehind(std::span<const Recorded> entries) {
    const std::vector<TimelineItem> items = timelineOf(entries);
    for (const TimelineItem& item : items | std::views::reverse) {
        if (!item.stands() || isOneOf<Over...>(item.recorded->entry))
            continue;
        return std::holds_alternative<Kind>(item.recorded->entry) ? item.recorded : nullptr;
    }
    return nullptr;
}

} // namespace

const Recorded* runningTimeOut(std::span<const Recorded> entries) {
    return newestBehind<TimeOut, Substitution, PlaceVacated, LiberoServe, LiberoIn, LiberoOut, LiberoExchange,
                        LiberoRedesignated, LateReplacement, CaptainNamed, ServerSeen, ImproperRequest, SheetCompared,
                        Remark, Roster, Officials>(entries);
}

} // namespace setfolio
