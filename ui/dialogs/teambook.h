// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The team book: teams with their rosters, kept on this machine from match to match, a JSON file for each in a folder.
#pragma once

#include "core/ledger/filecalls.h"
#include "core/match/state.h"

#include <QJsonObject>
#include <QString>

#include <optional>
#include <vector>

namespace setfolio {

struct BookTeam {
    QString file; ///< its name in the folder; empty for a team that is not in it yet
    TeamName team;
    QString coach;
    std::vector<RosterPlayer> players;
    bool operator==(const BookTeam&) const = default;
};

/// A team of a match, as it would stand in the book.
[[nodiscard]] BookTeam bookTeamOf(const MatchState& state, Team team);

[[nodiscard]] QJsonObject toJson(const BookTeam& team);
/// None for anything but a team. Numbers beyond 0 to 99 and players without one are left out.
[[nodiscard]] std::optional<BookTeam> bookTeamFromJson(const QJsonObject& object);

class TeamBook {
public:
    /// Without a folder nothing is kept and nothing can be.
    explicit TeamBook(QString folder = {}) : m_folder(std::move(folder)) {}

    struct Content {
        std::vector<BookTeam> teams; ///< by their name
        QStringList unread;          ///< paths of files that hold no team, or cannot be read
    };
    [[nodiscard]] Content content() const;
    /// Writes a team into its file: into one of a new name if it has none yet; a team of the book with the same name is
    /// replaced then. The folder is made if there is none.
    [[nodiscard]] tl::expected<void, FileError> keep(const BookTeam& team) const;
    /// False if its file is there still.
    [[nodiscard]] bool remove(const BookTeam& team) const;

private:
    [[nodiscard]] QString fileFor(const BookTeam& team) const;

    QString m_folder;
};

} // namespace setfolio
