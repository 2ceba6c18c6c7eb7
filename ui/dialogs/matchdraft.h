// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A match while it is being prepared: what was typed, what is still wrong with it, and the entries that open it.
#pragma once

#include "core/match/state.h"
#include "ui/dialogs/rosterrows.h"

#include <QStringList>

#include <functional>

namespace setfolio {

struct MatchDraft {
    MatchOpened opened; ///< names, place, time, rulebook, best of
    PerTeam<std::vector<RosterRow>> rosters;
    PerTeam<QString> coaches;
    std::vector<Official> officials; ///< those without a name are left out of the entry
    bool operator==(const MatchDraft&) const = default;
};

/// A draft for the next match: everything that stays the same from match to match stays (competition, division, venue,
/// rulebook, best of, home team and its roster, crew); date, time, number, visitors and referees are new.
[[nodiscard]] MatchDraft draftAfter(const MatchState& last);

/// What keeps a match from being opened.
struct DraftProblem {
    enum class Code : std::uint8_t {
        NameMissing, ///< team
        CodeUnfit,   ///< team: not two to five letters or digits
        SameCode,    ///< both teams
        Roster,      ///< team, roster
    };
    Code code = Code::NameMissing;
    Team team = Team::Home;
    RosterProblem roster;
    bool operator==(const DraftProblem&) const = default;
};

/// In the order in which they are met on the pages.
[[nodiscard]] std::vector<DraftProblem> problemsOf(const MatchDraft& draft);

/// The four entries that open the match: MatchOpened, Roster of the home team, Roster of the visitors, Officials.
[[nodiscard]] std::vector<Entry> entriesOf(const MatchDraft& draft);

/// Two to five letters for a team's plate: the initials of a name of three words and more, else the beginning of the
/// first word; another choice when `taken` is that already. Empty for a name without letters.
[[nodiscard]] QString codeFor(const QString& name, const QString& taken = {});

/// "2026-10-10-SAL-QRL.setfolio"
[[nodiscard]] QString fileNameFor(const MatchOpened& opened);
/// The path of such a file in a folder, with -2, -3 ... before the ending when `isThere` says the name is taken.
[[nodiscard]] QString freePath(const QString& folder, const QString& fileName,
                               const std::function<bool(const QString&)>& isThere);

} // namespace setfolio
