// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/signoffreview.h"

#include "core/match/consequences.h"

#include <algorithm>

namespace setfolio {
namespace {

/// What only the entries tell of the sheet of a set.
struct SheetTold {
    PerTeam<EntryNumber> lineUps;
    PerTeam<std::vector<ReviewedSubstitution>> substitutions;
    EntryNumber end;
};

/// Goes through the standing entries once, and says on which sheet each of them stands.
class Reader {
public:
    explicit Reader(std::span<const Recorded> entries) : m_sheets(entries.size() + 1) {
        for (const TimelineItem& item : timelineOf(entries))
            if (item.stands())
                take(*item.recorded);
    }

    [[nodiscard]] const SheetTold& told(std::size_t sheet) const {
        static const SheetTold nothing;
        return sheet < m_told.size() ? m_told[sheet] : nothing;
    }
    /// The sheet of an entry; none for what belongs to the match as a whole.
    [[nodiscard]] std::optional<std::size_t> sheetOf(EntryNumber entry) const { return m_sheets[entry.value]; }
    [[nodiscard]] const MatchState& state() const { return m_state; }

private:
    void take(const Recorded& recorded) {
        const std::size_t sheet = m_state.sets.empty() ? 0 : m_state.sets.size() - 1;
        if (!isOfMatch(recorded.entry) && !m_state.sets.empty())
            m_sheets[recorded.number.value] = placeOfEntry(m_state, recorded.entry);
        if (m_told.size() <= sheet)
            m_told.resize(sheet + 1);
        tell(m_told[sheet], recorded);
        m_state = apply(std::move(m_state), recorded);
        if (sheet < m_state.sets.size() && m_state.sets[sheet].winner && m_told[sheet].end.value == 0)
            m_told[sheet].end = recorded.number;
    }

    void tell(SheetTold& told, const Recorded& recorded) const {
        if (const auto* lineUp = std::get_if<LineUp>(&recorded.entry))
            told.lineUps[lineUp->team] = recorded.number;
        const auto* made = std::get_if<Substitution>(&recorded.entry);
        if (!made || m_state.sets.empty())
            return;
        const PerTeam<TeamInSet>& teams = m_state.set().teams;
        told.substitutions[made->team].push_back(
            {made->in, made->out, made->kind, {teams.home.points, teams.visitors.points}, recorded.number});
    }

    MatchState m_state;
    std::vector<SheetTold> m_told;
    std::vector<std::optional<std::size_t>> m_sheets; ///< by the number of the entry
};

/// The first mark that was drawn for a serve of the libero's.
EntryNumber firstServeOf(const TeamRecord& team, Slot slot) {
    for (const Term& term : team.terms)
        for (const Mark& mark : term.marks)
            if (term.slot == slot && mark.shape == MarkShape::Triangle && !mark.struck)
                return mark.entry;
    return {};
}

TeamReview teamReview(const TeamRecord& team, const SheetTold& told, Team which) {
    TeamReview review;
    review.lineUp = told.lineUps[which];
    review.substitutions = told.substitutions[which];
    review.timeOuts = team.timeOuts;
    for (const Slot slot : allSlots) {
        const SlotRecord& row = team.slots[slot.index()];
        review.slots[slot.index()] = row.stood;
        if (row.libero)
            review.libero = ReviewedLibero{slot, *row.libero, firstServeOf(team, slot)};
    }
    std::ranges::copy_if(team.running, std::back_inserter(review.takenBack), &RunningPoint::takenBack);
    return review;
}

bool isCorrection(const Note& note) {
    return std::holds_alternative<StruckNote>(note.content) || std::holds_alternative<PutInNote>(note.content);
}

SetReview setReview(const MatchRecord& record, std::size_t sheet, const SheetTold& told) {
    const SetRecord& set = record.sets[sheet];
    SetReview review;
    review.number = set.number;
    review.sheet = sheet;
    review.cancelled = set.cancelled;
    review.score = set.score;
    review.result = set.result;
    review.end = told.end;
    for (const Team team : bothTeams)
        review.teams[team] = teamReview(set.teams[team], told, team);
    review.sanctions = set.sanctions;
    for (const Note& note : set.notes)
        (isCorrection(note) ? review.corrections : review.remarks).push_back(note);
    return review;
}

/// Where the finding is told, the note that it was overruled is not: it says less.
void leaveOutTold(SetReview& review) {
    std::erase_if(review.remarks, [&](const Note& note) {
        return std::holds_alternative<OverruledNote>(note.content) &&
               std::ranges::find(review.overruled, note.entry, &EntryFinding::entry) != review.overruled.end();
    });
}

/// Sorts what the judge has to say into the sheets that are reviewed.
void addFindings(SignOffReview& review, std::span<const Recorded> entries, const Reader& reader) {
    for (const EntryFinding& found : setfolio::review(entries)) {
        const auto sheet = reader.sheetOf(found.entry);
        const auto set = std::ranges::find_if(
            review.sets, [&](const SetReview& reviewed) { return sheet == std::optional(reviewed.sheet); });
        if (set != review.sets.end())
            (found.overruled ? set->overruled : set->open).push_back(found);
        else if (!review.set)
            (found.overruled ? review.overruled : review.open).push_back(found);
    }
}

std::optional<Team> winnerOf(const MatchState& state) {
    if (!state.opened)
        return std::nullopt;
    if (state.forfeit && state.forfeit->reach == Scope::Match)
        return opponentsOf(state.forfeit->by);
    const PerTeam<int> won = setsWon(state);
    for (const Team team : bothTeams)
        if (won[team] >= setsNeeded(*state.opened))
            return team;
    return std::nullopt;
}

} // namespace

SignOffReview reviewFor(std::span<const Recorded> entries, const MatchRecord& record, std::optional<int> set) {
    const Reader reader(entries);
    SignOffReview review;
    review.set = set;
    review.setsWon = record.heading.setsWon;
    review.winner = winnerOf(reader.state());
    for (std::size_t sheet = 0; sheet < record.sets.size(); ++sheet)
        if (!set || record.sets[sheet].number == *set)
            review.sets.push_back(setReview(record, sheet, reader.told(sheet)));
    addFindings(review, entries, reader);
    std::ranges::for_each(review.sets, leaveOutTold);
    return review;
}

} // namespace setfolio
