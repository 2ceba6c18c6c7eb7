// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/setwriter.h"

#include <algorithm>

namespace setfolio {

Moment momentOf(const MatchState& state) {
    Moment moment;
    moment.phase = phaseOf(state);
    if (state.sets.empty())
        return moment;
    const SetState& set = state.set();
    moment.set = set.number;
    moment.serving = set.serving;
    moment.contacted = set.contacted;
    moment.rally = set.rallies + 1;
    moment.liberoServes = set.teams[set.serving].liberoServing.has_value();
    for (const Team team : bothTeams) {
        moment.nextServer[team] = servingSlot(set, team);
        moment.termsBegun[team] = set.teams[team].termsBegun;
        moment.points[team] = set.teams[team].points;
    }
    return moment;
}

/// The hand that writes. While `correction` is set it writes struck marks.
struct SetWriter::Hand {
    SetRecord& record;
    const Moment& before;
    const Rulebook& rulebook;
    const Recorded& recorded;
    const Recorded* correction = nullptr;
    int note = 0;

    // Where the pen stands.

    [[nodiscard]] bool struck() const { return correction != nullptr; }
    [[nodiscard]] Team serving() const { return before.serving; }
    [[nodiscard]] Team others() const { return opponentsOf(before.serving); }
    [[nodiscard]] bool inPlay() const { return before.phase == Phase::ReadyToServe || before.phase == Phase::Rally; }
    [[nodiscard]] int roundOf(Team team, int term) const {
        return roundOfTerm(rulebook, record.servesFirst == team, std::max(term, 1));
    }
    /// The cell that is being served in; before the first serve, the one that will be.
    Term& servedTerm() { return termAt(serving(), roundOf(serving(), before.termsBegun[serving()])); }
    /// The cell that opens when the receiving team wins the serve.
    Term& openedTerm() { return termAt(others(), roundOf(others(), before.termsBegun[others()] + 1)); }
    Term& termAt(Team team, int round) {
        const Slot slot = before.nextServer[team];
        std::vector<Term>& terms = record.teams[team].terms;
        if (terms.empty() || terms.back().slot != slot || terms.back().round != round)
            terms.push_back({slot, round, false, {}});
        return terms.back();
    }

    // Marks.

    [[nodiscard]] MarkShape serveShape() const { return before.liberoServes ? MarkShape::Triangle : MarkShape::Ring; }
    Mark& add(Term& term, MarkShape shape, MarkContent content) {
        return term.marks.emplace_back(Mark{shape, std::move(content), recorded.number, struck(), note});
    }
    /// Fills the ring that stands empty for the serve, or draws one.
    void writeServe(MarkContent content) {
        Term& term = servedTerm();
        const auto empty = std::ranges::find_if(term.marks, [this](const Mark& mark) {
            return std::holds_alternative<Awaiting>(mark.content) && (!mark.struck || struck());
        });
        if (empty == term.marks.end()) {
            add(term, serveShape(), std::move(content));
            return;
        }
        empty->content = std::move(content);
        empty->entry = recorded.number;
        empty->struck = struck();
        empty->note = std::max(empty->note, note);
    }
    void writeLost(MarkShape shape) {
        if (shape == MarkShape::Square)
            add(servedTerm(), shape, RallyLost());
        else
            writeServe(RallyLost());
    }
    void openTerm(bool penalty) {
        Term& term = openedTerm();
        if (penalty)
            add(term, MarkShape::None, PenaltyLetter());
        add(term, MarkShape::None, OpeningPoint{before.points[others()] + 1});
        run(others(), RunningMark::Slash, penalty, term.round);
    }
    void run(Team team, RunningMark mark, bool penalty, int round) {
        if (struck())
            return;
        const int total = before.points[team] + 1;
        const int opponents = before.points[opponentsOf(team)];
        record.teams[team].running.push_back({total, opponents, mark, penalty, round, recorded.number});
    }

    // The kinds.

    void operator()(const SetStarted&) {
        if (struck() || !record.servesFirst)
            return;
        const Team receiving = opponentsOf(*record.servesFirst);
        if (rulebook.writtenOrder == WrittenOrder::Floor)
            record.teams[receiving].terms.push_back({Slot(1), 1, true, {}});
        servedTerm();
    }
    void operator()(const ServeContacted&) {
        if (inPlay())
            add(servedTerm(), serveShape(), Awaiting());
    }
    void operator()(const RallyWon& rally) {
        if (!inPlay())
            return;
        if (rally.by != serving()) {
            writeLost(MarkShape::Ring);
            openTerm(false);
            return;
        }
        writeServe(ServedPoint{before.points[serving()] + 1});
        run(serving(), before.liberoServes ? RunningMark::Triangle : RunningMark::Ring, false, servedTerm().round);
    }
    void operator()(const Replay&) {
        if (inPlay())
            writeServe(ServedAgain());
    }
    void operator()(const NoServe&) {
        if (!inPlay())
            return;
        writeLost(MarkShape::Square);
        openTerm(false);
    }
    void operator()(const PenaltyPoint& penalty) {
        if (!inPlay())
            return;
        if (penalty.to != serving()) {
            writeLost(MarkShape::Square);
            openTerm(true);
            return;
        }
        add(servedTerm(), MarkShape::None, PenaltyLetter());
        add(servedTerm(), MarkShape::Square, ServedPoint{before.points[serving()] + 1});
        run(serving(), RunningMark::Ring, true, servedTerm().round);
    }
    void operator()(const Substitution& substitution) {
        Term& term = servedTerm();
        add(term, MarkShape::None, SubstitutionMark{substitution.team != serving(), substitution.in, substitution.out});
        if (!struck())
            record.teams[substitution.team].substitutions.push_back({term.round, recorded.number});
    }
    void operator()(const TimeOut& timeOut) {
        if (inPlay())
            add(servedTerm(), MarkShape::None, TimeOutMark{timeOut.team != serving()});
    }
    void operator()(const LiberoServe& serve) {
        if (!inPlay() || struck() || !before.contacted)
            return;
        for (Mark& mark : servedTerm().marks) // the ring already drawn becomes hers
            if (std::holds_alternative<Awaiting>(mark.content) && !mark.struck)
                mark.shape = serve.serving == LiberoServing::Begins ? MarkShape::Triangle : MarkShape::Ring;
    }
    void operator()(const MatchOpened&) {}
    void operator()(const Roster&) {}
    void operator()(const Officials&) {}
    void operator()(const MatchClosed&) {}
    void operator()(const Toss&) {}
    void operator()(const LineUp&) {}
    void operator()(const SetEnded&) {}
    void operator()(const Remark&) {}
    void operator()(const Strike&) {}
};

namespace {

/// The next note of a set.
Note& addNote(SetRecord& record, NoteContent content, EntryNumber entry) {
    const int number = static_cast<int>(record.notes.size()) + 1;
    return record.notes.emplace_back(Note{number, std::move(content), entry, false});
}

/// Where a struck entry's mark stands, and which number it holds.
StruckNote struckNoteOf(const Recorded& struck, const Recorded& correction, const Moment& before) {
    const auto* strike = std::get_if<Strike>(&correction.entry);
    StruckNote note{struck, before.serving, before.nextServer[before.serving],
                    0,      before.rally,   strike ? strike->reason : QString()};
    if (const auto* rally = std::get_if<RallyWon>(&struck.entry)) {
        note.team = rally->by;
        note.slot = before.nextServer[rally->by];
        note.total = before.points[rally->by] + 1;
    }
    return note;
}

/// Whether striking this kind of entry is worth a line among the remarks: what was set down before the set is not.
bool leavesNote(const Entry& entry) {
    return std::visit(Overloaded{[](const ServeContacted&) { return true; }, [](const RallyWon&) { return true; },
                                 [](const Replay&) { return true; }, [](const NoServe&) { return true; },
                                 [](const Substitution&) { return true; }, [](const TimeOut&) { return true; },
                                 [](const LiberoServe&) { return true; }, [](const PenaltyPoint&) { return true; },
                                 [](const SetEnded&) { return true; }, [](const Remark&) { return false; },
                                 [](const MatchOpened&) { return false; }, [](const Roster&) { return false; },
                                 [](const Officials&) { return false; }, [](const MatchClosed&) { return false; },
                                 [](const Toss&) { return false; }, [](const LineUp&) { return false; },
                                 [](const SetStarted&) { return false; }, [](const Strike&) { return false; }},
                      entry);
}

/// The note of a struck contact whose result is struck as well: one line tells of both.
Note* noteOfSameServe(SetRecord& record, const Recorded& struck) {
    if (record.notes.empty() || !std::holds_alternative<RallyWon>(struck.entry))
        return nullptr;
    auto* note = std::get_if<StruckNote>(&record.notes.back().content);
    const bool contact = note && std::holds_alternative<ServeContacted>(note->struck.entry);
    return contact && note->struck.number.value + 1 == struck.number.value ? &record.notes.back() : nullptr;
}

} // namespace

void SetWriter::write(const Recorded& recorded) {
    int number = 0;
    if (recorded.overruled)
        number = addNote(m_record, OverruledNote{recorded, m_before.points}, recorded.number).number;
    std::visit(Hand{m_record, m_before, m_rulebook, recorded, nullptr, number}, recorded.entry);
    if (const auto* remark = std::get_if<Remark>(&recorded.entry))
        addNote(m_record, WrittenNote{remark->text, m_before.points}, recorded.number);
    if (const auto* penalty = std::get_if<PenaltyPoint>(&recorded.entry)) {
        PerTeam<int> score = m_before.points;
        ++score[penalty->to];
        addNote(m_record, PenaltyNote{*penalty, score}, recorded.number);
    }
}

void SetWriter::writeStruck(const Recorded& recorded, const Recorded& correction) {
    int number = 0;
    if (const auto* remark = std::get_if<Remark>(&recorded.entry)) {
        addNote(m_record, WrittenNote{remark->text, m_before.points}, recorded.number).struck = true;
    } else if (leavesNote(recorded.entry)) {
        StruckNote content = struckNoteOf(recorded, correction, m_before);
        Note* same = noteOfSameServe(m_record, recorded);
        Note& note = same ? *same : addNote(m_record, content, recorded.number);
        note.content = std::move(content);
        note.entry = recorded.number;
        number = note.number;
    }
    std::visit(Hand{m_record, m_before, m_rulebook, recorded, &correction, number}, recorded.entry);
}

} // namespace setfolio
