// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/momentjudge.h"

#include "core/rules/makefinding.h"

namespace setfolio {

Findings momentBeforeSet(const MatchState& state) {
    switch (phaseOf(state)) {
    case Phase::BeforeSet:
        return {};
    case Phase::MatchWon:
        return {refused(FindingKind::MatchAlreadyWon)};
    case Phase::Suspended:
        return {refused(FindingKind::MatchIsSuspended)};
    case Phase::NotOpened:
    case Phase::ReadyToServe:
    case Phase::Rally:
    case Phase::MatchClosed:
        return {refused(FindingKind::SetAlreadyStarted)};
    case Phase::SetWon:
        return {refused(FindingKind::SetAlreadyWon)};
    }
    Q_UNREACHABLE();
}

Findings momentInPlay(const MatchState& state) {
    switch (phaseOf(state)) {
    case Phase::BeforeSet:
        return {refused(FindingKind::SetNotStarted)};
    case Phase::SetWon:
        return {refused(FindingKind::SetAlreadyWon)};
    case Phase::MatchWon:
        return {refused(FindingKind::MatchAlreadyWon)};
    case Phase::Suspended:
        return {refused(FindingKind::MatchIsSuspended)};
    case Phase::NotOpened:
    case Phase::MatchClosed:
    case Phase::ReadyToServe:
    case Phase::Rally:
        return {};
    }
    Q_UNREACHABLE();
}

Findings momentOfDeadBall(const MatchState& state) {
    return phaseOf(state) == Phase::Rally ? Findings{refused(FindingKind::RallyUndecided)} : momentInPlay(state);
}

Findings momentToServe(const MatchState& state) {
    return phaseOf(state) == Phase::Rally ? Findings{refused(FindingKind::ServeAlreadyContacted)} : momentInPlay(state);
}

Findings momentToChangeSix(const MatchState& state, Team team) {
    if (phaseOf(state) != Phase::BeforeSet)
        return momentOfDeadBall(state);
    if (!state.set().teams[team].lineUp)
        return {refused(FindingKind::LineUpMissing, team)};
    if (!state.set().servesFirst)
        return {refused(FindingKind::TossMissing)};
    return {};
}

Findings momentForPenalty(const MatchState& state) {
    const Phase phase = phaseOf(state);
    return phase == Phase::BeforeSet || phase == Phase::SetWon ? Findings{} : momentOfDeadBall(state);
}

} // namespace setfolio
