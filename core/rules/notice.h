// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the table has to say to the second referee now, derived from state and rulebook.
#pragma once

#include "core/match/state.h"

#include <vector>

namespace setfolio {

enum class NoticeKind : std::uint8_t {
    SubstitutionsUsed, ///< this team's substitution number `count` of `limit` stands, and the rulebook wants it told
    LastTimeOutUsed,   ///< this team has taken its last time-out
    SetPoint,          ///< this team needs one more point for the set
    MatchPoint,        ///< and with it wins the match
    SetWonAtScore,     ///< the score decides the set: confirm with the second referee
};

struct Notice {
    NoticeKind kind = NoticeKind::SetPoint;
    Team team = Team::Home;
    int count = 0;
    int limit = 0;
    bool operator==(const Notice&) const = default;
};

/// The notices that hold in this state. Those about a substitution or a time-out hold until the next serve is contacted
/// or the next rally decided; `newest` is the newest standing entry.
[[nodiscard]] std::vector<Notice> noticesFor(const MatchState& state, const Entry& newest);

} // namespace setfolio
