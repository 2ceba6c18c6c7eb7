// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the scorer records. Every entry kind is one plain struct, and Entry is the variant of them all: adding a kind
/// starts here, and the compiler then names each place that must know it.
#pragma once

#include "core/match/ids.h"
#include "core/rules/rulebook.h"

#include <QDate>
#include <QDateTime>
#include <QString>
#include <QTime>

#include <array>
#include <optional>
#include <variant>
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

// the match

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

// the set

/// Who serves first in the coming set and who stands left of the scorer. Due before the first and the deciding set;
/// in the other sets the first serve alternates and the sides change of themselves, and a Toss says otherwise.
struct Toss {
    Team servesFirst = Team::Home;
    Team left = Team::Home;
    bool operator==(const Toss&) const = default;
};

/// A line-up as the slip gives it: by court position 1 to 6. A later one takes the place of the earlier until the set
/// starts.
struct LineUp {
    Team team = Team::Home;
    std::array<ShirtNumber, 6> positions; ///< index 0 is court position 1
    std::optional<ShirtNumber> captain;
    std::vector<ShirtNumber> liberos;
    bool operator==(const LineUp&) const = default;
};

/// The whistle for the first serve. `at` is the local time of day written on the sheet.
struct SetStarted {
    QTime at;
    bool operator==(const SetStarted&) const = default;
};

/// The second referee has confirmed that the set is won. `at` is the local time of day written on the sheet.
struct SetEnded {
    QTime at;
    bool operator==(const SetEnded&) const = default;
};

// the rally

/// The server has hit the ball after the whistle: the ring is drawn.
struct ServeContacted {
    bool operator==(const ServeContacted&) const = default;
};

/// The rally is decided. Without a ServeContacted before it, it implies the contact.
struct RallyWon {
    Team by = Team::Home;
    bool operator==(const RallyWon&) const = default;
};

/// Why a serve is repeated: the rally is played over, or the toss was let drop and is taken again.
enum class Again : std::uint8_t { Replay, ReServe };

/// The serve is repeated; nobody scores.
struct Replay {
    Again again = Again::Replay;
    bool operator==(const Replay&) const = default;
};

/// The serving team loses the rally without a lawful contact of the serve (time ran out, a second dropped toss).
struct NoServe {
    bool operator==(const NoServe&) const = default;
};

// the dead ball

struct Substitution {
    Team team = Team::Home;
    ShirtNumber in;
    ShirtNumber out;
    bool operator==(const Substitution&) const = default;
};

struct TimeOut {
    Team team = Team::Home;
    bool operator==(const TimeOut&) const = default;
};

enum class LiberoServing : std::uint8_t { Begins, Ends };

/// The libero serves in the place of the player whose term it is: from now to the end of the term, or until it ends
/// earlier. For a table that keeps no libero record, this is all that is written of her.
struct LiberoServe {
    Team team = Team::Home;
    ShirtNumber libero;
    LiberoServing serving = LiberoServing::Begins;
    bool operator==(const LiberoServe&) const = default;
};

/// A point awarded without a rally. To the receiving team it brings the serve as well.
struct PenaltyPoint {
    Team to = Team::Home;
    QString reason;
    bool operator==(const PenaltyPoint&) const = default;
};

/// A sentence for the remarks of the set.
struct Remark {
    QString text;
    bool operator==(const Remark&) const = default;
};

// repair

/// A correction that strikes an earlier entry. What it struck stays in the ledger and, struck, on the sheet. Undo
/// strikes the newest standing entry; striking a Strike is redo.
struct Strike {
    EntryNumber target;
    QString reason;
    bool operator==(const Strike&) const = default;
};

using Entry =
    std::variant<MatchOpened, Roster, Officials, MatchClosed, Toss, LineUp, SetStarted, SetEnded, ServeContacted,
                 RallyWon, Replay, NoServe, Substitution, TimeOut, LiberoServe, PenaltyPoint, Remark, Strike>;

/// An entry as it stands in the ledger.
struct Recorded {
    EntryNumber number;
    QDateTime time; ///< when it was recorded, UTC, to the millisecond
    Entry entry;
    std::optional<QString> overruled; ///< the referee's word that let an entry stand against a finding: the reason
    bool operator==(const Recorded&) const = default;
};

/// Overloads for std::visit; a visit names every kind and has no default.
template <typename... Ts>
struct Overloaded : Ts... {
    using Ts::operator()...;
};
template <typename... Ts>
Overloaded(Ts...) -> Overloaded<Ts...>;

} // namespace setfolio
