// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/report/report.h"

#include "core/match/fold.h"

#include <algorithm>
#include <map>

namespace setfolio {
namespace {

/// Who stood where when a point was won.
struct Scene {
    PerTeam<Slot> rotation;
    ShirtNumber server;
};

/// What only the course of the entries tells, a set at a time.
struct Walked {
    std::map<EntryNumber, Scene> scenes;
    std::vector<Change> changes;
};

PerTeam<int> scoreOf(const SetState& set) {
    return {set.teams.home.points, set.teams.visitors.points};
}

void takeChange(Walked& walked, const MatchState& now, const Recorded& recorded) {
    const PerTeam<int> score = scoreOf(now.set());
    if (const auto* substitution = std::get_if<Substitution>(&recorded.entry))
        walked.changes.push_back({substitution->team, *substitution, score, recorded.number});
    else if (const auto* timeOut = std::get_if<TimeOut>(&recorded.entry))
        walked.changes.push_back({timeOut->team, std::nullopt, score, recorded.number});
}

/// All sets walked through, and the state they end in.
struct Walk {
    std::vector<Walked> sets;
    MatchState state;

    void take(const Recorded& recorded) {
        const std::size_t place = state.sets.size();
        if (place > 0) {
            const SetState& set = state.set();
            Scene scene;
            for (const Team team : bothTeams)
                scene.rotation[team] = slotAt(set, team, CourtPosition(1));
            scene.server = serverOf(set);
            sets.resize(place);
            sets.back().scenes.emplace(recorded.number, scene);
        }
        state = apply(std::move(state), recorded);
        if (place > 0 && state.sets.size() == place)
            takeChange(sets.back(), state, recorded);
    }
};

/// Counts the points of one set.
class Counter {
public:
    Counter(const SetState& set, const Walked& walked) : m_set(set), m_walked(walked) {
        m_figures.number = set.number;
        m_figures.cancelled = set.cancelled;
        m_figures.score = scoreOf(set);
        m_figures.changes = walked.changes;
    }

    SetFigures count() {
        for (const Point& point : m_set.points) {
            takeRun(point.team);
            takeRally(point);
            m_figures.course.push_back(point.team);
        }
        return std::move(m_figures);
    }

private:
    void takeRun(Team team) {
        std::vector<Run>& runs = m_figures.teams[team].runs;
        if (m_figures.course.empty() || m_figures.course.back() != team)
            runs.push_back({0, m_score, m_score});
        ++m_score[team];
        ++runs.back().length;
        runs.back().to = m_score;
    }
    void takeRally(const Point& point) {
        TeamFigures& winners = m_figures.teams[point.team];
        if (point.by == PointBy::Penalty)
            ++winners.penalties;
        if (point.by == PointBy::Forfeit)
            ++winners.given;
        const auto scene = m_walked.scenes.find(point.entry);
        if (point.by == PointBy::Penalty || point.by == PointBy::Forfeit || scene == m_walked.scenes.end())
            return;
        const bool held = point.team == point.serving;
        const Team receiving = opponentsOf(point.serving);
        RotationFigures& serve =
            m_figures.teams[point.serving].rotations[scene->second.rotation[point.serving].index()];
        RotationFigures& receive = m_figures.teams[receiving].rotations[scene->second.rotation[receiving].index()];
        ++(held ? serve.serveWon : serve.serveLost);
        ++(held ? receive.receiveLost : receive.receiveWon);
        takeServer(point, scene->second.server, held);
    }
    void takeServer(const Point& point, ShirtNumber number, bool held) {
        std::vector<ServerFigures>& servers = m_figures.teams[point.serving].servers;
        auto server = std::ranges::find(servers, number, &ServerFigures::number);
        if (server == servers.end())
            server = servers.insert(servers.end(), ServerFigures{number});
        const bool newTerm = m_term != std::pair(point.serving, point.term) || m_server != number;
        if (newTerm) {
            ++server->terms;
            m_run = 0;
        }
        m_term = {point.serving, point.term};
        m_server = number;
        m_run += held ? 1 : 0;
        ++(held ? server->won : server->lost);
        server->longest = std::max(server->longest, m_run);
    }

    const SetState& m_set;
    const Walked& m_walked;
    SetFigures m_figures;
    PerTeam<int> m_score;
    std::pair<Team, int> m_term{Team::Home, 0};
    ShirtNumber m_server;
    int m_run = 0;
};

} // namespace

RotationFigures& RotationFigures::operator+=(const RotationFigures& other) {
    serveWon += other.serveWon;
    serveLost += other.serveLost;
    receiveWon += other.receiveWon;
    receiveLost += other.receiveLost;
    return *this;
}

RotationFigures TeamFigures::sum() const {
    RotationFigures all;
    for (const RotationFigures& rotation : rotations)
        all += rotation;
    return all;
}

Run TeamFigures::longestRun() const {
    const auto longest = std::ranges::max_element(runs, {}, &Run::length);
    return longest == runs.end() ? Run{} : *longest;
}

std::vector<SetFigures> figuresOf(std::span<const Recorded> entries) {
    Walk walk;
    for (const TimelineItem& item : timelineOf(entries))
        if (item.stands())
            walk.take(*item.recorded);
    walk.sets.resize(walk.state.sets.size());
    std::vector<SetFigures> figures;
    for (std::size_t i = 0; i < walk.state.sets.size(); ++i)
        figures.push_back(Counter(walk.state.sets[i], walk.sets[i]).count());
    return figures;
}

std::vector<ServerFigures> serversOver(std::span<const SetFigures> sets, Team team) {
    std::vector<ServerFigures> all;
    for (const SetFigures& set : sets) {
        if (set.cancelled)
            continue;
        for (const ServerFigures& server : set.teams[team].servers) {
            const auto known = std::ranges::find(all, server.number, &ServerFigures::number);
            if (known == all.end()) {
                all.push_back(server);
                continue;
            }
            known->terms += server.terms;
            known->won += server.won;
            known->lost += server.lost;
            known->longest = std::max(known->longest, server.longest);
        }
    }
    std::ranges::sort(all, {}, &ServerFigures::number);
    return all;
}

} // namespace setfolio
