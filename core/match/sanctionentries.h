// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Entries about misconduct and delay, and points awarded for it.
#pragma once

#include "core/match/ids.h"
#include "core/rules/sanctionrules.h"

#include <QString>

#include <variant>

namespace setfolio {

/// Who is sanctioned, beside the players.
enum class BenchRole : std::uint8_t { Coach, AssistantCoach, SecondAssistantCoach, Therapist, Doctor, Other };
/// A player by her number, someone of the bench by her role.
using Member = std::variant<ShirtNumber, BenchRole>;

/// A sanction for misconduct. Which cards are shown for it, whether it brings a point, and for how long it counts, is
/// the rulebook's affair. Given before a set has started, its point comes with the first serve of that set.
struct Sanction {
    Team team = Team::Home;
    Member who = BenchRole::Coach;
    SanctionLevel level = SanctionLevel::Warning;
    QString reason;
    bool operator==(const Sanction&) const = default;
};

enum class DelayLevel : std::uint8_t { Warning, Penalty };

/// A sanction of the team for delay.
struct DelaySanction {
    Team team = Team::Home;
    DelayLevel level = DelayLevel::Warning;
    QString reason;
    bool operator==(const DelaySanction&) const = default;
};

/// A request that was turned down and is written because the next one counts as a delay.
struct ImproperRequest {
    Team team = Team::Home;
    QString what;
    bool operator==(const ImproperRequest&) const = default;
};

/// A point awarded without a rally. To the receiving team it brings the serve as well.
struct PenaltyPoint {
    Team to = Team::Home;
    QString reason;
    bool operator==(const PenaltyPoint&) const = default;
};

} // namespace setfolio
