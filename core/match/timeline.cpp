// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/match/fold.h"
#include "core/match/undo.h"
#include "core/match/voidsignoffs.h"

#include <algorithm>

namespace setfolio {

namespace {

std::optional<TakenBackPoints> takenBackOf(const auto* ruling) {
    if (!ruling || !ruling->takenBackFrom)
        return std::nullopt;
    return TakenBackPoints{ruling->team, *ruling->takenBackFrom};
}

const Strike* asStrike(const Recorded& recorded) {
    return std::get_if<Strike>(&recorded.entry);
}

/// The earlier entry that this one, as long as it is in force itself, puts out of force; 0 for none.
EntryNumber targetOf(const Recorded& recorded) {
    if (const Strike* strike = asStrike(recorded))
        return strike->target;
    const bool replaces = recorded.placed && recorded.placed->how == Placed::How::InsteadOf;
    return replaces ? recorded.placed->target : EntryNumber();
}

/// Whether a correction that `struckBy` struck, if anything did, still keeps what it struck itself out of force: one
/// that was taken back does not, one that was recorded anew does, or both entries would stand in the one place.
bool isInForce(const Recorded* struckBy) {
    return !struckBy || !asStrike(*struckBy);
}

/// For each entry, the correction in force that struck it. Read from the newest back, because only a later correction
/// can put an earlier one out of force.
std::vector<const Recorded*> strikesInForce(std::span<const Recorded> entries) {
    std::vector<const Recorded*> struckBy(entries.size(), nullptr);
    for (std::size_t index = entries.size(); index-- > 0;) {
        const std::size_t target = targetOf(entries[index]).value;
        if (target >= 1 && target <= index && isInForce(struckBy[index]))
            struckBy[target - 1] = &entries[index];
    }
    return struckBy;
}

/// For each entry, the later ones that were put in before it, and those set in its place.
struct Placements {
    std::vector<std::vector<std::size_t>> before;
    std::vector<std::vector<std::size_t>> instead;
};

/// Whether the entry stands at a place of its own choice; one whose target is not an earlier entry does not.
bool isPlaced(const Recorded& recorded, std::size_t index) {
    return recorded.placed && recorded.placed->target.value >= 1 && recorded.placed->target.value <= index;
}

Placements placementsOf(std::span<const Recorded> entries) {
    Placements placements{std::vector<std::vector<std::size_t>>(entries.size()),
                          std::vector<std::vector<std::size_t>>(entries.size())};
    for (std::size_t index = 0; index < entries.size(); ++index) {
        if (!isPlaced(entries[index], index))
            continue;
        const Placed& placed = *entries[index].placed;
        auto& list = placed.how == Placed::How::Before ? placements.before : placements.instead;
        list[placed.target.value - 1].push_back(index);
    }
    return placements;
}

/// Sets the entries into the order of play.
class Sorter {
public:
    explicit Sorter(std::span<const Recorded> entries) : m_entries(entries), m_struckBy(strikesInForce(entries)) {
        const bool placed = std::ranges::any_of(entries, [](const Recorded& r) { return r.placed.has_value(); });
        if (placed)
            m_placements = placementsOf(entries);
    }

    [[nodiscard]] std::vector<TimelineItem> sorted() {
        m_items.reserve(m_entries.size());
        for (std::size_t index = 0; index < m_entries.size(); ++index)
            if (!isPlaced(m_entries[index], index))
                take(index);
        return std::move(m_items);
    }

private:
    /// An entry, with those put in before it and those set in its place. Its own stack, not the machine's: a file may
    /// hold corrections of corrections as deep as it is long.
    void take(std::size_t first) {
        if (m_placements.before.empty())
            return put(first);
        std::vector<Step> steps{{first, false}};
        while (!steps.empty()) {
            const Step step = steps.back();
            steps.pop_back();
            if (step.prepared) {
                put(step.index);
                continue;
            }
            pushAll(steps, m_placements.instead[step.index]);
            steps.push_back({step.index, true});
            pushAll(steps, m_placements.before[step.index]);
        }
    }
    struct Step {
        std::size_t index;
        bool prepared; ///< those put in before it have been taken
    };
    static void pushAll(std::vector<Step>& steps, const std::vector<std::size_t>& indices) {
        for (auto index = indices.rbegin(); index != indices.rend(); ++index)
            steps.push_back({*index, false});
    }
    void put(std::size_t index) {
        if (!asStrike(m_entries[index]))
            m_items.push_back({&m_entries[index], m_struckBy[index]});
    }

    std::span<const Recorded> m_entries;
    std::vector<const Recorded*> m_struckBy;
    Placements m_placements;
    std::vector<TimelineItem> m_items;
};

} // namespace

std::optional<TakenBackPoints> takenBackBy(const Entry& entry) {
    const auto taken = takenBackOf(std::get_if<WrongServer>(&entry));
    return taken ? taken : takenBackOf(std::get_if<IllegalPlayer>(&entry));
}

std::vector<TimelineItem> timelineOf(std::span<const Recorded> entries) {
    return Sorter(entries).sorted();
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
    const std::vector<const Recorded*> struckBy = strikesInForce(entries);
    VoidSignOffs voids;
    for (std::size_t index = entries.size(); index-- > 0;)
        if (!struckBy[index] && !asStrike(entries[index]) && !voids.passesOver(entries[index].entry))
            return std::holds_alternative<MatchOpened>(entries[index].entry) ? std::nullopt
                                                                             : std::optional(entries[index].number);
    return std::nullopt;
}

std::optional<EntryNumber> newestUndone(std::span<const Recorded> entries) {
    const std::vector<const Recorded*> struckBy = strikesInForce(entries);
    for (std::size_t index = entries.size(); index-- > 0;) {
        const Strike* strike = asStrike(entries[index]);
        if (!strike || isCorrectingStrike(entries, index))
            return std::nullopt;
        const std::size_t target = strike->target.value - 1;
        const bool undoes = !asStrike(entries[target]) || isCorrectingStrike(entries, target);
        if (undoes && !struckBy[index])
            return entries[index].number;
    }
    return std::nullopt;
}

} // namespace setfolio
