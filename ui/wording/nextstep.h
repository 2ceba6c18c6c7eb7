// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the table waits for, and the words in which it says so: the scorer is never left to search.
#pragma once

#include "core/match/state.h"

#include <QString>

#include <optional>

namespace setfolio {

enum class Step : std::uint8_t {
    OpenMatch,
    Toss,
    LineUp,
    StartSet,
    Serve,  ///< the next serve is awaited
    Decide, ///< the rally's result is awaited
    EndSet, ///< the second referee's confirmation is awaited
    CloseMatch,
    SignOff, ///< a set, or the match, is to be signed
    Resume,  ///< play is broken off
    Print,   ///< nothing is left to record
};

struct NextStep {
    Step step = Step::OpenMatch;
    std::optional<Team> team; ///< whose line-up; the one left of the table comes first
    std::optional<int> set;   ///< which is signed; none: the match
    bool operator==(const NextStep&) const = default;
};

/// A sign-off comes before what else could be done; one that was put off does not.
[[nodiscard]] NextStep nextStep(const MatchState& state, bool signOffPutOff = false);

struct StepWords {
    QString title;    ///< "Next: the toss"
    QString sentence; ///< what to ask or to look at
    QString button;   ///< what pressing Enter does; empty where the deck's keys go on
};

[[nodiscard]] StepWords wordsFor(const NextStep& next, const MatchState& state);

} // namespace setfolio
