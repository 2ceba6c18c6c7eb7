// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/notice.h"

#include <algorithm>

namespace setfolio {
namespace {

void noticeSubstitution(std::vector<Notice>& notices, const MatchState& state, Team team) {
    const Rulebook& rulebook = state.rulebook();
    const int count = substitutionsOf(state.set().teams[team]);
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
        const bool lastSet = setsWon(state)[team] + 1 == setsNeeded(*state.opened);
        notices.push_back({lastSet ? NoticeKind::MatchPoint : NoticeKind::SetPoint, team, points[team], 0});
    }
}

/// Source: FIVB Official Volleyball Rules 2025-2028, 18.2.2, 27.2.2.
void noticeSides(std::vector<Notice>& notices, const MatchState& state) {
    const SetState& set = state.set();
    const std::optional<int> due = state.rulebook().decidingSetSideChange;
    if (!due || set.sidesChangedAt || set.winner || !isDecidingSet(state, set.number))
        return;
    for (const Team team : bothTeams)
        if (set.teams[team].points >= *due && set.teams[team].points >= set.teams[opponentsOf(team)].points) {
            notices.push_back({NoticeKind::SidesChangeDue, team, *due, 0});
            return;
        }
}

/// Source: FIVB Official Volleyball Rules 2025-2028, 27.2.2.2; the rulebook's wrong-server-notice.
void noticeServer(std::vector<Notice>& notices, const MatchState& state) {
    const SetState& set = state.set();
    const TeamInSet& team = set.teams[set.serving];
    const ShirtNumber server = serverOf(set);
    if (set.seen && *set.seen != server) {
        const bool tell = set.contacted || state.rulebook().wrongServerNotice == WrongServerNotice::BeforeServe;
        const NoticeKind kind = tell ? NoticeKind::WrongServerTold : NoticeKind::WrongServerSilent;
        notices.push_back({.kind = kind, .team = set.serving, .number = *set.seen, .lawful = server});
    }
    if (!set.contacted && !server.isValid())
        notices.push_back({.kind = NoticeKind::VacantServer, .team = set.serving, .slot = team.nextServer});
}

/// Source: FIVB Official Volleyball Rules 2025-2028, 19.3.1.
void noticeLiberos(std::vector<Notice>& notices, const SetState& set) {
    for (const Team team : bothTeams) {
        const std::optional<LiberoOnCourt>& libero = set.teams[team].libero;
        if (libero && positionOf(set, team, libero->slot).isFrontRow())
            notices.push_back(
                {.kind = NoticeKind::LiberoMustLeave, .team = team, .number = libero->libero, .slot = libero->slot});
    }
}

void noticePlay(std::vector<Notice>& notices, const MatchState& state) {
    noticeSides(notices, state);
    noticeServer(notices, state);
    if (!state.set().contacted)
        noticeLiberos(notices, state.set());
}

bool contains(const std::vector<int>& counts, int count) {
    return std::ranges::find(counts, count) != counts.end();
}

} // namespace

bool isToBeTold(const Rulebook& rulebook, const Notice& notice) {
    switch (notice.kind) {
    case NoticeKind::SubstitutionsUsed:
        return contains(rulebook.substitutionNotices, notice.count);
    case NoticeKind::LastTimeOutUsed:
        return contains(rulebook.timeOutNotices, notice.count);
    case NoticeKind::SetPoint:
        return rulebook.setPointNotice;
    case NoticeKind::MatchPoint:
        return rulebook.matchPointNotice;
    case NoticeKind::SidesChangeDue:
        return rulebook.sideChangeNotice;
    case NoticeKind::SetWonAtScore:
    case NoticeKind::WrongServerTold:
        return true;
    case NoticeKind::WrongServerSilent:
    case NoticeKind::VacantServer:
    case NoticeKind::LiberoMustLeave:
    case NoticeKind::ImproperRequest:
        return false;
    }
    Q_UNREACHABLE();
}

std::vector<Notice> noticesFor(const MatchState& state, const Entry& newest) {
    std::vector<Notice> notices;
    const Phase phase = phaseOf(state);
    if (const auto* substitution = std::get_if<Substitution>(&newest))
        noticeSubstitution(notices, state, substitution->team);
    if (const auto* timeOut = std::get_if<TimeOut>(&newest))
        noticeTimeOut(notices, state, timeOut->team);
    const auto* request = std::get_if<ImproperRequest>(&newest);
    if (request && phase != Phase::NotOpened && state.rulebook().improperRequest == ImproperRequestRule::RecordedFirst)
        notices.push_back({.kind = NoticeKind::ImproperRequest, .team = request->team});
    if (phase == Phase::ReadyToServe || phase == Phase::Rally)
        noticePlay(notices, state);
    if (phase == Phase::ReadyToServe || phase == Phase::Rally || phase == Phase::SetWon)
        noticeScore(notices, state);
    return notices;
}

} // namespace setfolio
