// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/randomplaycorrect.h"

#include <algorithm>
#include <map>
#include <utility>

namespace setfolio::testing {
namespace {

/// Writes the ledger with mistakes. A pending correction waits for its moment.
class Clumsy {
public:
    Clumsy(const std::vector<Recorded>& right, std::uint32_t seed, Mistakes mistakes)
        : m_right(right),
          m_dice(seed),
          m_mistakes(mistakes) {
        for (const Recorded& recorded : right)
            if (const auto* ruling = std::get_if<WrongServer>(&recorded.entry); ruling && ruling->takenBackFrom)
                m_named.insert(ruling->takenBackFrom->value);
    }

    Corrected written() {
        for (const Recorded& recorded : m_right) {
            take(recorded);
            settle(false);
        }
        settle(true);
        return std::move(m_corrected);
    }

private:
    struct Pending {
        std::size_t due = 0; ///< the length of the ledger
        std::uint32_t right = 0;
        Entry entry;
        std::optional<Placed> placed;
        bool before = false;       ///< placed before the entry that is recorded next
        bool undoesItself = false; ///< a strike that is struck in turn
        bool wrongAgain = false;   ///< what is set in the place first is wrong too, and is corrected in its turn
    };

    [[nodiscard]] std::uint32_t next() const { return static_cast<std::uint32_t>(m_corrected.entries.size()) + 1; }
    [[nodiscard]] std::size_t dueSoon() { return next() + static_cast<std::size_t>(m_dice.below(m_mistakes.within)); }

    void write(const Entry& entry, std::uint32_t right, std::optional<Placed> placed) {
        const QDateTime time = m_right[right == 0 ? 0 : right - 1].time;
        if (right != 0)
            m_numbers[right] = next();
        m_corrected.entries.push_back({EntryNumber(next()), time, remapped(entry), std::nullopt, std::move(placed)});
        m_corrected.rightNumbers.push_back(right);
    }
    /// What names an entry names it by its number in this ledger.
    Entry remapped(Entry entry) const {
        if (auto* ruling = std::get_if<WrongServer>(&entry); ruling && ruling->takenBackFrom)
            ruling->takenBackFrom = EntryNumber(m_numbers.at(ruling->takenBackFrom->value));
        return entry;
    }
    Entry anything() {
        const Recorded& other = m_dice.oneOf(m_right);
        const bool fit =
            !std::holds_alternative<MatchOpened>(other.entry) && !std::holds_alternative<WrongServer>(other.entry);
        return fit ? other.entry : Entry(RallyWon{m_dice.anyTeam()});
    }

    void take(const Recorded& recorded) {
        const std::uint32_t number = recorded.number.value;
        // The opening is never corrected; a point that a ruling names, and the ruling, keep their order.
        const bool fixed =
            number == 1 || m_named.contains(number) || std::holds_alternative<WrongServer>(recorded.entry);
        if (number > 1 && m_dice.chance(m_mistakes.struckLater)) {
            m_pending.push_back({dueSoon(), 0, Strike{EntryNumber(next()), {}}, std::nullopt});
            write(anything(), 0, std::nullopt);
        }
        const int cast = fixed ? 1000 : m_dice.below(1000);
        const bool waits = std::ranges::any_of(m_pending, &Pending::before); // one at a time, so that none overtakes
        if (cast < m_mistakes.forgotten && number < m_right.size() && !waits)
            return forget(recorded);
        aim();
        if (cast < m_mistakes.forgotten + m_mistakes.instead) {
            m_pending.push_back({dueSoon(), number, recorded.entry,
                                 Placed{Placed::How::InsteadOf, EntryNumber(next()), {}}, false, false,
                                 m_dice.chance(m_mistakes.insteadTwice)});
            return write(anything(), 0, std::nullopt);
        }
        const bool redone = !fixed && m_dice.chance(m_mistakes.redone);
        if (redone)
            m_pending.push_back(
                {dueSoon(), 0, Strike{EntryNumber(next()), QStringLiteral("a slip")}, std::nullopt, false, true});
        write(recorded.entry, number, std::nullopt);
    }
    void forget(const Recorded& recorded) {
        m_pending.push_back({dueSoon() + 1, recorded.number.value, recorded.entry,
                             Placed{Placed::How::Before, EntryNumber(), {}}, true});
    }
    /// Those that were left out stand before the entry that is written now.
    void aim() {
        for (Pending& pending : m_pending)
            if (std::exchange(pending.before, false))
                pending.placed->target = EntryNumber(next());
    }
    void settle(bool all) {
        for (std::size_t i = 0; i < m_pending.size();) {
            if (m_pending[i].before || (!all && m_pending[i].due > next())) {
                ++i;
                continue;
            }
            const Pending pending = m_pending[i];
            m_pending.erase(m_pending.begin() + static_cast<std::ptrdiff_t>(i));
            ++m_corrected.corrections;
            if (pending.wrongAgain) {
                m_pending.push_back(
                    {dueSoon(), pending.right, pending.entry, Placed{Placed::How::InsteadOf, EntryNumber(next()), {}}});
                write(anything(), 0, pending.placed);
                continue;
            }
            write(pending.entry, pending.right, pending.placed);
            if (pending.undoesItself)
                write(Strike{EntryNumber(next() - 1), {}}, 0, std::nullopt);
        }
    }

    const std::vector<Recorded>& m_right;
    Dice m_dice;
    Mistakes m_mistakes;
    Corrected m_corrected;
    std::vector<Pending> m_pending;
    std::set<std::uint32_t> m_named;
    std::map<std::uint32_t, std::uint32_t> m_numbers; ///< from the right ledger to this one
};

} // namespace

Corrected withMistakes(const std::vector<Recorded>& right, std::uint32_t seed, Mistakes mistakes) {
    return Clumsy(right, seed, mistakes).written();
}

MatchState renumbered(MatchState state, const std::vector<std::uint32_t>& rightNumbers) {
    const auto put = [&](EntryNumber& number) {
        if (number.value != 0)
            number = EntryNumber(rightNumbers[number.value - 1]);
    };
    put(state.last);
    for (SanctionGiven& sanction : state.sanctions)
        put(sanction.entry);
    for (ImproperRequestMade& request : state.improperRequests)
        put(request.entry);
    for (LateReplacementMade& late : state.lateReplacements)
        put(late.entry);
    for (SetState& set : state.sets) {
        for (RequestGranted& request : set.requests)
            put(request.entry);
        for (Point& point : set.points)
            put(point.entry);
        for (const Team team : bothTeams) {
            for (std::vector<Standing>& slot : set.teams[team].slots)
                for (Standing& standing : slot)
                    put(standing.since);
            for (EntryNumber& counted : set.teams[team].counted)
                put(counted);
            for (TimeOutTaken& taken : set.teams[team].timeOuts)
                put(taken.entry);
            for (Standing& standing : set.teams[team].ruledIllegal)
                put(standing.since);
            for (ExceptionalOut& out : set.teams[team].exceptionalOuts)
                put(out.entry);
        }
    }
    return state;
}

} // namespace setfolio::testing
