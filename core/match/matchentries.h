// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Entries about the match as a whole.
#pragma once

#include "core/match/ids.h"
#include "core/rules/rulebook.h"
#include "core/rules/scope.h"

#include <QDate>
#include <QString>
#include <QTime>

#include <optional>
#include <vector>

namespace setfolio {

/// A team as it is written at the head of the sheet.
struct TeamName {
    QString name;   ///< "Saltmarsh Herons"
    QString code;   ///< two to five letters for plates and lists: "SAL"
    QString colour; ///< shirt colour in words, may be empty
    bool operator==(const TeamName&) const = default;
};

/// A line of a team's roster. A sheet with numbers only is a proper sheet, so the name may be empty.
struct RosterPlayer {
    ShirtNumber number;
    QString name;
    bool captain = false;
    bool libero = false;
    bool operator==(const RosterPlayer&) const = default;
};

/// Who works at the match. The order of the list is the order on the sheet.
enum class Role : std::uint8_t { FirstReferee, SecondReferee, Scorer, AssistantScorer, Timer, LineJudge };

struct Official {
    Role role = Role::Scorer;
    QString name;
    bool operator==(const Official&) const = default;
};

/// Opens the match; always the first entry of a ledger. The rulebook travels inside it, whole.
struct MatchOpened {
    QString id; ///< the match's identity, a UUID in text; may be empty in a list typed by hand
    QString competition;
    QString division;
    QString matchNumber;
    QString venue;
    QDate date;
    QTime scheduled;
    int bestOf = 5; ///< 1, 3 or 5 sets
    PerTeam<TeamName> teams;
    Rulebook rulebook;
    bool namesLeftOut = false; ///< a copy of a match, without anybody's name
    bool operator==(const MatchOpened&) const = default;
};

/// A team's players; a later roster of the same team takes the place of the earlier one.
struct Roster {
    Team team = Team::Home;
    std::vector<RosterPlayer> players;
    QString coach;
    bool operator==(const Roster&) const = default;
};

/// The officials and the crew; a later list takes the place of the earlier one.
struct Officials {
    std::vector<Official> officials;
    bool operator==(const Officials&) const = default;
};

/// The match is over and the record complete.
struct MatchClosed {
    bool operator==(const MatchClosed&) const = default;
};

/// How a team loses without being beaten on court.
enum class ForfeitKind : std::uint8_t {
    Default,    ///< it does not appear or refuses to play: it loses every set to nothing
    Incomplete, ///< it cannot, or may not, play on: it keeps its points and sets, its opponents get what they need
};

/// A set that has ended, and what a team that forfeits it afterwards keeps of it.
struct EarlierSet {
    int number = 1;
    std::optional<int> keeps = {}; ///< its first so many points; none: all it may keep
    bool operator==(const EarlierSet&) const = default;
};

/// A team forfeits the present set, an earlier one, or the match. It has lost an earlier set whatever its score was:
/// its opponents get what they need. Sources: FIVB Official Volleyball Rules 2025-2028, 6.4.1 to 6.4.3; of an earlier
/// set 7.3.5.4.
struct Forfeit {
    Team by = Team::Home;
    ForfeitKind kind = ForfeitKind::Default;
    Scope reach = Scope::Match; ///< a Default is always of the match
    QString reason;
    std::optional<EarlierSet> earlier = {}; ///< of an Incomplete one of a set, where it is not the present one
    bool operator==(const Forfeit&) const = default;
};

/// Play is broken off: lights, weather, a hurt crowd. Nothing is played until it is resumed.
struct Suspended {
    QString reason;
    bool operator==(const Suspended&) const = default;
};

/// How play goes on after an interruption.
enum class GoOn : std::uint8_t {
    AsItStood, ///< same score, players and line-ups
    SetAgain,  ///< the interrupted set is cancelled and played again with the same line-ups
};

/// Source: FIVB Official Volleyball Rules 2025-2028, 17.3.
struct Resumed {
    GoOn goOn = GoOn::AsItStood;
    bool operator==(const Resumed&) const = default;
};

} // namespace setfolio
