// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A line-up while it is being typed: fields may still be empty, that is hold an invalid number.
#pragma once

#include "core/match/state.h"
#include "core/rules/finding.h"

#include <QString>

namespace setfolio {

/// Whether the six positions are filled.
[[nodiscard]] bool isFilled(const LineUp& lineUp);

/// Whether a typed number needs no further digit: it has two, or no number of the roster begins with it and goes on.
/// Without a roster, one digit may always go on.
[[nodiscard]] bool isWholeNumber(const QString& text, const Roster& roster);

/// What the judge says of the fields that are filled.
[[nodiscard]] Findings findingsFor(const MatchState& state, const LineUp& lineUp);

/// The serving order that a line-up gives: the number in slot I to VI, invalid for an empty position. None while it is
/// not known who serves first.
[[nodiscard]] std::optional<std::array<ShirtNumber, 6>> servingOrder(const MatchState& state, const LineUp& lineUp);

/// The line-up with which a team began an earlier set, the newest one, and that set's number.
struct EarlierLineUp {
    int set = 1;
    LineUp lineUp;
    bool operator==(const EarlierLineUp&) const = default;
};
[[nodiscard]] std::optional<EarlierLineUp> earlierLineUp(const MatchState& state, Team team);

/// The liberos that the roster marks, as many as the rulebook allows.
[[nodiscard]] std::vector<ShirtNumber> rosterLiberos(const MatchState& state, Team team);
/// The captain that the roster marks.
[[nodiscard]] std::optional<ShirtNumber> rosterCaptain(const MatchState& state, Team team);

/// The line-up as it goes into the entry: without the empty libero fields.
[[nodiscard]] LineUp withoutEmptyLiberos(LineUp lineUp);

} // namespace setfolio
