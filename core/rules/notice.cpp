// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/notice.h"

#include <algorithm>

namespace setfolio {
namespace {

void noticeSubstitution(std::vector<Notice>& notices, const MatchState& state, Team team) {
    const Rulebook& rulebook = state.rulebook();
    const int count = state.set().teams[team].substitutions;
    if (std::ranges::find(rulebook.substitutionNotices, count) != rulebook.substitutionNotices.end())
        notices.push_back({NoticeKind::SubstitutionsUsed, team, count, rulebook.substitutionLimit});
}

void noticeTimeOut(std::vector<Notice>& notices, const MatchState& state, Team team) {
    const int count = static_cast<int>(state.set().teams[team].timeOuts.size());
    if (count == state.rulebook().timeOuts)
        notices.push_back({NoticeKind::LastTimeOutUsed, team, count, state.rulebook().timeOuts});
}

void noticeScore(std::vector<Notice>& notices, const MatchState& state) {
    const SetState& set = state.set();
    if (set.winner) {
        notices.push_back({NoticeKind::SetWonAtScore, *set.winner, set.teams[*set.winner].points, 0});
        return;
    }
    for (const Team team : bothTeams) {
        PerTeam<int> points{set.teams.home.points, set.teams.visitors.points};
        ++points[team];
        if (winnerAt(state.rulebook(), pointsToWin(state, set.number), points) != team)
            continue;
        const bool lastSet = setsWon(state)[team] == state.opened->bestOf / 2;
        notices.push_back({lastSet ? NoticeKind::MatchPoint : NoticeKind::SetPoint, team, points[team], 0});
    }
}

} // namespace

std::vector<Notice> noticesFor(const MatchState& state, const Entry& newest) {
    std::vector<Notice> notices;
    const Phase phase = phaseOf(state);
    if (const auto* substitution = std::get_if<Substitution>(&newest))
        noticeSubstitution(notices, state, substitution->team);
    if (const auto* timeOut = std::get_if<TimeOut>(&newest))
        noticeTimeOut(notices, state, timeOut->team);
    if (phase == Phase::ReadyToServe || phase == Phase::Rally || phase == Phase::SetWon)
        noticeScore(notices, state);
    return notices;
}

} // namespace setfolio
