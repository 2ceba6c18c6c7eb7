// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the table has to say to the second referee now, derived from state and rulebook.
#pragma once

#include "core/match/state.h"

#include <optional>
#include <vector>

namespace setfolio {

enum class NoticeKind : std::uint8_t {
    SubstitutionsUsed, ///< this team's substitution number `count` of `limit` stands, and the rulebook wants it told
    LastTimeOutUsed,   ///< this team has taken its last time-out
    SetPoint,          ///< this team needs one more point for the set
    MatchPoint,        ///< and with it wins the match
    SetWonAtScore,     ///< the score decides the set: confirm with the second referee
    SidesChangeDue,    ///< in the deciding set this team has reached the score, `count`, at which sides change
    WrongServerSilent, ///< `number` is at the service line for `lawful`: nothing is said before the serve is contacted
    WrongServerTold,   ///< likewise, and it is told the second referee now
    VacantServer,      ///< the vacant place of `slot` is to serve: the rally will be lost
    LiberoMustLeave,   ///< libero `number` has come to the front row, in `slot`: she must go out before the serve
    ImproperRequest,   ///< this team's improper request stands: its next one is a delay
};

struct Notice {
    NoticeKind kind = NoticeKind::SetPoint;
    Team team = Team::Home;
    int count = 0;
    int limit = 0;
    ShirtNumber number = {};
    ShirtNumber lawful = {};
    std::optional<Slot> slot = {};
    bool operator==(const Notice&) const = default;
};

/// The notices that hold in this state. Those about a substitution, a time-out or an improper request hold until
/// another entry is recorded; `newest` is the newest standing entry.
[[nodiscard]] std::vector<Notice> noticesFor(const MatchState& state, const Entry& newest);
/// Whether a notice is said to the referees now, or only shown at the table.
/// Source: the rulebook's substitution-, time-out-, set-point-, match-point- and side-change-notice.
[[nodiscard]] bool isToBeTold(const Rulebook& rulebook, const Notice& notice);

} // namespace setfolio
