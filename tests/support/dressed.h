// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Matches in which every name, code, reason and remark is one and the same text.
#pragma once

#include "core/ledger/limits.h"
#include "core/match/entry.h"

namespace setfolio::testing {

/// Writes the text wherever an entry can hold one.
class Dresser {
public:
    explicit Dresser(QString text) : m_text(std::move(text)), m_code(m_text.left(limits::codeCharacters)) {}

    void operator()(Recorded& recorded) const {
        std::visit([this](auto& entry) { dress(entry); }, recorded.entry);
        if (recorded.overruled)
            recorded.overruled = m_text;
        if (recorded.placed && !recorded.placed->reason.isEmpty())
            recorded.placed->reason = m_text;
    }

    void dress(MatchOpened& opened) const {
        opened.competition = opened.division = opened.matchNumber = opened.venue = m_text;
        opened.teams.home = {m_text, m_code, m_text};
        opened.teams.visitors = {m_text, m_code, m_text};
        dress(opened.rulebook);
    }
    void dress(Rulebook& rulebook) const {
        rulebook.name = rulebook.season = m_text;
        for (Source& source : rulebook.sources)
            source.text = m_text;
    }
    void dress(Roster& roster) const {
        roster.coach = m_text;
        for (RosterPlayer& player : roster.players)
            player.name = m_text;
    }
    void dress(Officials& officials) const {
        for (Official& official : officials.officials)
            official.name = m_text;
    }
    template <typename Kind>
    void dress(Kind& entry) const {
        if constexpr (requires { entry.name; })
            entry.name = m_text;
        if constexpr (requires { entry.reason; })
            entry.reason = m_text;
        if constexpr (requires { entry.text; })
            entry.text = m_text;
        if constexpr (requires { entry.what; })
            entry.what = m_text;
        if constexpr (requires { entry.protest; })
            entry.protest = m_text;
    }

private:
    QString m_text;
    QString m_code;
};

} // namespace setfolio::testing
