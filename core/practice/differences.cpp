// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/practice/differences.h"

#include <algorithm>

namespace setfolio {

namespace {

/// A term's marks that stand, or none where the term has not been begun.
struct Cell {
    Team team = Team::Home;
    Slot slot;
    int round = 1;
    std::vector<Mark> marks;
};

bool says(const Mark& one, const Mark& other) {
    return one.shape == other.shape && one.content == other.content && one.takenBack == other.takenBack;
}

std::vector<Mark> standingMarks(const Term& term) {
    std::vector<Mark> marks;
    std::copy_if(term.marks.begin(), term.marks.end(), std::back_inserter(marks),
                 [](const Mark& mark) { return !mark.struck; });
    return marks;
}

std::vector<Cell> cellsOf(const SetRecord& set) {
    std::vector<Cell> cells;
    for (const Team team : bothTeams)
        for (const Term& term : set.teams[team].terms)
            if (!term.crossed)
                cells.push_back({team, term.slot, term.round, standingMarks(term)});
    return cells;
}

std::uint32_t firstEntry(const Cell& cell) {
    return cell.marks.empty() ? UINT32_MAX : cell.marks.front().entry.value;
}

/// In the order of play.
std::vector<Cell> inOrder(std::vector<Cell> cells) {
    std::stable_sort(cells.begin(), cells.end(),
                     [](const Cell& one, const Cell& other) { return firstEntry(one) < firstEntry(other); });
    return cells;
}

const Cell* sameCell(const std::vector<Cell>& cells, const Cell& wanted) {
    const auto found = std::find_if(cells.begin(), cells.end(), [&wanted](const Cell& cell) {
        return cell.team == wanted.team && cell.slot == wanted.slot && cell.round == wanted.round;
    });
    return found == cells.end() ? nullptr : &*found;
}

/// The longest common part of two rows of marks: lengths[i][j] for those from i and from j on.
std::vector<std::vector<int>> commonLengths(const std::vector<Mark>& right, const std::vector<Mark>& hers) {
    std::vector<std::vector<int>> lengths(right.size() + 1, std::vector<int>(hers.size() + 1, 0));
    for (std::size_t i = right.size(); i-- > 0;)
        for (std::size_t j = hers.size(); j-- > 0;)
            lengths[i][j] =
                says(right[i], hers[j]) ? lengths[i + 1][j + 1] + 1 : std::max(lengths[i + 1][j], lengths[i][j + 1]);
    return lengths;
}

/// What stands between two marks that both have: one for one as far as it goes, the rest missed or too many.
void addBetween(const Cell& cell, std::vector<Mark>& missed, std::vector<Mark>& extra, std::vector<Difference>& found) {
    for (std::size_t index = 0; index < std::max(missed.size(), extra.size()); ++index) {
        MarkDiffers differs{cell.team, cell.slot, cell.round, std::nullopt, std::nullopt};
        if (index < missed.size())
            differs.right = missed[index];
        if (index < extra.size())
            differs.hers = extra[index];
        found.emplace_back(std::move(differs));
    }
    missed.clear();
    extra.clear();
}

void compareCell(const Cell& cell, const std::vector<Mark>& right, const std::vector<Mark>& hers,
                 std::vector<Difference>& found) {
    const auto lengths = commonLengths(right, hers);
    std::vector<Mark> missed;
    std::vector<Mark> extra;
    std::size_t i = 0;
    std::size_t j = 0;
    while (i < right.size() || j < hers.size()) {
        if (i < right.size() && j < hers.size() && says(right[i], hers[j])) {
            addBetween(cell, missed, extra, found);
            ++i;
            ++j;
        } else if (j == hers.size() || (i < right.size() && lengths[i + 1][j] >= lengths[i][j + 1])) {
            missed.push_back(right[i++]);
        } else {
            extra.push_back(hers[j++]);
        }
    }
    addBetween(cell, missed, extra, found);
}

void compareMarks(const SetRecord& right, const SetRecord& hers, std::vector<Difference>& found) {
    const std::vector<Cell> cells = inOrder(cellsOf(right));
    const std::vector<Cell> hersCells = inOrder(cellsOf(hers));
    for (const Cell& cell : cells) {
        const Cell* other = sameCell(hersCells, cell);
        compareCell(cell, cell.marks, other ? other->marks : std::vector<Mark>{}, found);
    }
    for (const Cell& cell : hersCells)
        if (!sameCell(cells, cell))
            compareCell(cell, {}, cell.marks, found);
}

std::vector<ShirtNumber> numbersOf(const SlotRecord& slot) {
    std::vector<ShirtNumber> numbers;
    for (const Standing& standing : slot.stood)
        numbers.push_back(standing.number);
    return numbers;
}

std::optional<Slot> liberoSlotOf(const TeamRecord& team) {
    for (const Slot slot : allSlots)
        if (team.slots[slot.index()].libero)
            return slot;
    return std::nullopt;
}

void compareSlots(Team team, const TeamRecord& right, const TeamRecord& hers, std::vector<Difference>& found) {
    for (const Slot slot : allSlots) {
        SlotDiffers differs{team, slot, numbersOf(right.slots[slot.index()]), numbersOf(hers.slots[slot.index()])};
        if (differs.right != differs.hers)
            found.emplace_back(std::move(differs));
    }
    const LiberoSlotDiffers libero{team, liberoSlotOf(right), liberoSlotOf(hers)};
    if (libero.right != libero.hers)
        found.emplace_back(libero);
}

int countOf(const SetRecord& set, Team team, Counted what) {
    const TeamRecord& record = set.teams[team];
    switch (what) {
    case Counted::Points:
        return set.score[team];
    case Counted::Substitutions:
        return static_cast<int>(record.substitutions.size());
    case Counted::TimeOuts:
        return static_cast<int>(record.timeOuts.size());
    case Counted::LiberoReplacements:
        return static_cast<int>(record.liberoMoves.size());
    }
    return 0;
}

void compareCounts(Team team, const SetRecord& right, const SetRecord& hers, std::vector<Difference>& found) {
    for (const Counted what :
         {Counted::Points, Counted::Substitutions, Counted::TimeOuts, Counted::LiberoReplacements}) {
        const CountDiffers differs{team, what, countOf(right, team, what), countOf(hers, team, what)};
        if (differs.right != differs.hers)
            found.emplace_back(differs);
    }
}

bool says(const SanctionLine& one, const SanctionLine& other) {
    return one.team == other.team && one.who == other.who && one.level == other.level && one.score == other.score;
}

std::vector<SanctionLine> standingSanctions(const SetRecord& set) {
    std::vector<SanctionLine> lines;
    std::copy_if(set.sanctions.begin(), set.sanctions.end(), std::back_inserter(lines),
                 [](const SanctionLine& line) { return !line.struck; });
    return lines;
}

void compareSanctions(const SetRecord& right, const SetRecord& hers, std::vector<Difference>& found) {
    const std::vector<SanctionLine> rightLines = standingSanctions(right);
    const std::vector<SanctionLine> hersLines = standingSanctions(hers);
    for (std::size_t index = 0; index < std::max(rightLines.size(), hersLines.size()); ++index) {
        SanctionDiffers differs;
        if (index < rightLines.size())
            differs.right = rightLines[index];
        if (index < hersLines.size())
            differs.hers = hersLines[index];
        if (!differs.right || !differs.hers || !says(*differs.right, *differs.hers))
            found.emplace_back(std::move(differs));
    }
}

} // namespace

std::vector<Difference> differencesOf(const SetRecord& right, const SetRecord& hers) {
    std::vector<Difference> found;
    compareMarks(right, hers, found);
    for (const Team team : bothTeams) {
        compareSlots(team, right.teams[team], hers.teams[team], found);
        compareCounts(team, right, hers, found);
    }
    compareSanctions(right, hers, found);
    return found;
}

MarksRight marksRight(const SetRecord& right, const SetRecord& hers) {
    MarksRight count;
    for (const Cell& cell : cellsOf(right))
        count.of += static_cast<int>(cell.marks.size());
    std::vector<Difference> found;
    compareMarks(right, hers, found);
    const auto missed = std::count_if(found.begin(), found.end(), [](const Difference& difference) {
        return std::get<MarkDiffers>(difference).right.has_value();
    });
    count.right = count.of - static_cast<int>(missed);
    return count;
}

} // namespace setfolio
