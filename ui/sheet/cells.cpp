// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/cells.h"

#include <algorithm>

namespace setfolio::sheet {

namespace {

/// A cell before it is measured.
struct Written {
    Slot slot;
    int round = 1;
    bool crossed = false;
    bool live = false;
    std::vector<const Mark*> marks;
};

/// The team's cells in the order they were begun.
std::vector<Written> writtenBy(const Scene& scene, Team team) {
    std::vector<Written> cells;
    const auto cellAt = [&cells](Slot slot, int round) -> Written& {
        const auto found =
            std::ranges::find_if(cells, [&](const Written& cell) { return cell.slot == slot && cell.round == round; });
        return found != cells.end() ? *found : cells.emplace_back(Written{slot, round, false, false, {}});
    };
    for (const Term& term : scene.team(team).terms) {
        Written& cell = cellAt(term.slot, term.round);
        cell.crossed |= term.crossed;
        for (const Mark& mark : term.marks)
            cell.marks.push_back(&mark);
    }
    if (const LivePlace* live = scene.live(); live && live->serving == team)
        cellAt(live->slot, live->round).live = true;
    return cells;
}

/// Whether the point that won the set stands here.
bool endsSet(const Scene& scene, Team team, const std::vector<const Mark*>& marks) {
    const std::optional<SetResult>& result = scene.set.result;
    if (!result || result->winner != team || scene.team(team).running.empty())
        return false;
    const EntryNumber last = scene.team(team).running.back().entry;
    return std::ranges::any_of(marks, [last](const Mark* mark) {
        const bool point =
            std::holds_alternative<ServedPoint>(mark->content) || std::holds_alternative<OpeningPoint>(mark->content);
        return point && mark->entry == last && !mark->struck;
    });
}

/// The team's exit score after which none comes; nothing while the set goes on.
const Mark* lastExit(const Scene& scene, Team team) {
    const Mark* last = nullptr;
    for (const Term& term : scene.team(team).terms)
        for (const Mark& mark : term.marks)
            if (std::holds_alternative<ExitScore>(mark.content) && !mark.struck && !mark.takenBack)
                last = &mark;
    return scene.isOver() ? last : nullptr;
}

/// Divides marks that no page is wide enough for; nearly always all of them stay together.
std::vector<MeasuredMarks> pieces(MeasuredMarks marks, double width) {
    std::vector<MeasuredMarks> result;
    while (needOf(marks, TermEnd::DoubleBar, foldedSmall) > width) {
        std::size_t count = marks.size();
        MeasuredMarks first = marks;
        while (count > 1 && (needOf(first, TermEnd::DoubleBar, foldedSmall) > width || marks[count].bound)) {
            first.pop_back();
            --count;
        }
        marks.erase(marks.begin(), marks.begin() + static_cast<std::ptrdiff_t>(count));
        result.push_back(std::move(first));
    }
    result.push_back(std::move(marks));
    return result;
}

/// Gathers cells, columns and what the flow is asked.
class Gatherer {
public:
    Gatherer(const Draft& draft, const Scene& scene) : m_draft(draft), m_scene(scene) {}

    Cells gather() {
        for (const Team team : bothTeams)
            takeTeam(team);
        makeColumns();
        for (Cell& cell : m_cells.cells)
            takeNeeds(cell);
        return std::move(m_cells);
    }

private:
    void takeTeam(Team team) {
        std::size_t place = team == Team::Home ? 0 : 1;
        m_lastExit = lastExit(m_scene, team);
        for (const Written& written : writtenBy(m_scene, team)) {
            take(team, written, place);
            place += 2; // the teams' terms alternate: a new one leaves the places of the others as they were
        }
    }
    void take(Team team, const Written& written, std::size_t place) {
        Cell cell{team, written.slot, 0, written.round, written.crossed, written.live, {}, TermEnd::None, place};
        MeasuredMarks marks = measured(m_draft, written.marks, m_scene.inkOf(written.round));
        for (MeasuredMark& mark : marks)
            mark.last = mark.mark == m_lastExit;
        std::vector<MeasuredMarks> parts = pieces(std::move(marks), roundsWidth - cell.marksLeft());
        for (std::size_t i = 0; i < parts.size(); ++i) {
            cell.column = static_cast<int>(i); // the part, until the columns are known
            cell.crossed = written.crossed && i == 0;
            cell.marks = std::move(parts[i]);
            if (i + 1 == parts.size())
                cell.end = endOf(team, written);
            if (i > 0)
                cell.place = m_extra++;
            m_cells.cells.push_back(cell);
        }
    }
    [[nodiscard]] TermEnd endOf(Team team, const Written& written) const {
        if (endsSet(m_scene, team, written.marks))
            return TermEnd::DoubleBar;
        const LivePlace* live = m_scene.live();
        return written.live && !live->contacted ? TermEnd::Ghost : TermEnd::None;
    }
    void makeColumns() {
        int rounds = m_scene.options.leastColumns;
        for (const Cell& cell : m_cells.cells)
            rounds = std::max(rounds, cell.round);
        for (int round = 1; round <= rounds; ++round) {
            int parts = 1;
            for (const Cell& cell : m_cells.cells)
                if (cell.round == round)
                    parts = std::max(parts, cell.column + 1);
            const auto first = static_cast<int>(m_cells.columns.size());
            for (Cell& cell : m_cells.cells)
                if (cell.round == round)
                    cell.column += first;
            for (int part = 1; part <= parts; ++part)
                m_cells.columns.push_back({round, part});
        }
    }
    void takeNeeds(Cell& cell) {
        FlowTerm term{cell.column, {}};
        // A cell that is being served in has room for its next mark from the start, so that it need not grow for it.
        const TermEnd end = cell.live ? TermEnd::Ghost : cell.end;
        for (int value = 0; value < SizeStep::count; ++value)
            term.need[static_cast<std::size_t>(value)] = cell.marksLeft() + needOf(cell.marks, end, SizeStep{value});
        if (m_cells.terms.size() <= cell.place)
            m_cells.terms.resize(cell.place + 1);
        m_cells.terms[cell.place] = term;
    }

    const Draft& m_draft;
    const Scene& m_scene;
    Cells m_cells;
    const Mark* m_lastExit = nullptr; ///< of the team that is taken
    std::size_t m_extra = 1000;       ///< places of further parts, beyond any term's
};

} // namespace

Cells cellsOf(const Draft& draft, const Scene& scene) {
    return Gatherer(draft, scene).gather();
}

} // namespace setfolio::sheet
