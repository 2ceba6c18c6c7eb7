// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Entries while the ball is dead: who comes and goes, time-outs, what the table notes.
#pragma once

#include "core/match/ids.h"

#include <QString>

namespace setfolio {

enum class SubstitutionKind : std::uint8_t {
    Regular,
    Exceptional, ///< for a player who is hurt or sent off, when there is no lawful substitute
};

/// `out` leaves and `in` takes her slot. Where the slot is vacant, `out` is the number that left it.
struct Substitution {
    Team team = Team::Home;
    ShirtNumber in;
    ShirtNumber out;
    SubstitutionKind kind = SubstitutionKind::Regular;
    bool operator==(const Substitution&) const = default;
};

/// A player leaves and nobody may come in for her: her team plays on with a vacant place.
struct PlaceVacated {
    Team team = Team::Home;
    ShirtNumber out;
    QString reason;
    bool operator==(const PlaceVacated&) const = default;
};

struct TimeOut {
    Team team = Team::Home;
    bool operator==(const TimeOut&) const = default;
};

/// The playing captain from now on, when the one of the line-up leaves the court.
struct CaptainNamed {
    Team team = Team::Home;
    ShirtNumber captain;
    bool operator==(const CaptainNamed&) const = default;
};

/// The table has compared its sheet with the scoreboard and the libero tracker.
struct SheetCompared {
    QString differs; ///< what differs; empty when all agrees
    bool operator==(const SheetCompared&) const = default;
};

/// A sentence for the remarks of the set.
struct Remark {
    QString text;
    bool operator==(const Remark&) const = default;
};

} // namespace setfolio
