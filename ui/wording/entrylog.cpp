// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/entrylog.h"

#include <algorithm>

namespace setfolio {

namespace {

LoggedEntry lineForStrike(const Recorded& recorded, const Strike& strike, std::span<const Recorded> entries,
                          const std::vector<LoggedEntry>& lines) {
    EntryNumber target = strike.target;
    const Strike* struckStrike = std::get_if<Strike>(&entries[target.value - 1].entry);
    if (struckStrike)
        target = struckStrike->target;
    LoggedEntry line{recorded.number, lines[target.value - 1].words};
    line.words.words = strikeWords(line.words.words, struckStrike != nullptr);
    return line;
}

} // namespace

void EntryLog::follow(std::span<const Recorded> entries) {
    Q_ASSERT(entries.size() >= m_lines.size());
    const auto fresh = entries.subspan(m_lines.size());
    if (std::ranges::any_of(fresh,
                            [](const Recorded& r) { return r.placed || std::holds_alternative<Strike>(r.entry); })) {
        rebuild(entries);
        return;
    }
    for (const Recorded& recorded : fresh)
        append(recorded);
}

void EntryLog::append(const Recorded& recorded) {
    MatchState after = apply(m_state, recorded);
    m_lines.push_back({recorded.number, wordsFor(recorded.entry, m_state, after)});
    m_state = std::move(after);
}

void EntryLog::rebuild(std::span<const Recorded> entries) {
    m_lines.assign(entries.size(), {});
    m_state = {};
    for (const TimelineItem& item : timelineOf(entries)) {
        MatchState after = apply(m_state, *item.recorded);
        m_lines[item.recorded->number.value - 1] = {item.recorded->number,
                                                    wordsFor(item.recorded->entry, m_state, after), !item.stands()};
        if (item.stands())
            m_state = std::move(after);
    }
    for (const Recorded& recorded : entries)
        if (const auto* strike = std::get_if<Strike>(&recorded.entry))
            m_lines[recorded.number.value - 1] = lineForStrike(recorded, *strike, entries, m_lines);
}

} // namespace setfolio
