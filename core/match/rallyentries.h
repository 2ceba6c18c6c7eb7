// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Entries of the rally: from the contact of the serve to its result.
#pragma once

#include "core/match/ids.h"

#include <optional>

namespace setfolio {

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

/// What a rally is played over for.
/// Source: FIVB Official Volleyball Rules 2025-2028, 6.1.2.2, 12.4.5, 17.1 and 17.2.
enum class ReplayCause : std::uint8_t {
    Injury,
    Interference, ///< from outside: a ball, a person on the court
    DoubleFault,  ///< of both teams at once
    Whistle,      ///< blown by mistake
    EarlyServe,   ///< the serve was hit before the whistle
};

/// The serve is repeated; nobody scores.
struct Replay {
    Again again = Again::Replay;
    std::optional<ReplayCause> cause = {}; ///< none: it was not said
    bool operator==(const Replay&) const = default;
};

/// The serving team loses the rally without a lawful contact of the serve (time ran out, a second dropped toss).
struct NoServe {
    bool operator==(const NoServe&) const = default;
};

/// A number that is not the server's has been seen at the service line. Nothing is said before the serve is contacted;
/// the table's notices follow from it. A later one of the same rally takes the place of the earlier.
struct ServerSeen {
    ShirtNumber number;
    bool operator==(const ServerSeen&) const = default;
};

/// The referees' ruling on a wrong server: if her team still has the serve, the rally is lost and the serve goes to the
/// opponents. Points her team won since the fault are taken back; the opponents' points stand.
/// Source: FIVB Official Volleyball Rules 2025-2028, 7.7.1 and 7.7.2.
struct WrongServer {
    Team team = Team::Home;
    ShirtNumber served;
    /// The entry that brought the first point to be taken back: that one and the team's later points of this set go.
    std::optional<EntryNumber> takenBackFrom;
    bool operator==(const WrongServer&) const = default;
};

/// How a player has come on court against the rules.
enum class IllegalBy : std::uint8_t { Substitution, LiberoReplacement };

/// The referees' ruling on a player found on court, after play was resumed, who had no right to be there. A rally that
/// is being played, or the serve that the team has, is lost; points it won since the fault are taken back; the
/// opponents' points stand. Who goes and who comes is recorded by itself.
/// Source: FIVB Official Volleyball Rules 2025-2028, 15.9.2 and 19.3.2.9.
struct IllegalPlayer {
    Team team = Team::Home;
    ShirtNumber number;
    IllegalBy by = IllegalBy::Substitution;
    std::optional<EntryNumber> takenBackFrom; ///< as for a WrongServer
    bool operator==(const IllegalPlayer&) const = default;
};

} // namespace setfolio
