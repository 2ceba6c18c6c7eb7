// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/hand.h"

#include <algorithm>

namespace setfolio {

void Hand::operator()(const SetStarted&) {
    if (struck() || !record.servesFirst)
        return;
    const Team receiving = opponentsOf(*record.servesFirst);
    if (rulebook.writtenOrder == WrittenOrder::Floor)
        record.teams[receiving].terms.push_back({Slot(1), 1, true, {}});
    servedTerm();
    Moment moment = before;
    moment.termsBegun[moment.serving] = 1;
    for (const Team team : before.pointsDue) {
        Hand{record, moment, rulebook, recorded, nullptr, note}.givePoint(team);
        moment = afterPenaltyPoint(moment, team);
    }
}

void Hand::operator()(const ServeContacted&) {
    if (inPlay())
        add(servedTerm(), serveShape(), Awaiting());
}

void Hand::operator()(const RallyWon& rally) {
    if (!inPlay())
        return;
    writeRally(rally.by);
}

void Hand::writeRally(Team winner) {
    if (winner != serving()) {
        writeLost(MarkShape::Ring);
        openTerm(false);
        return;
    }
    writeServe(ServedPoint{before.points[serving()] + 1});
    run(serving(), before.liberoServes ? RunningMark::Triangle : RunningMark::Ring, false, servedTerm().round);
}

void Hand::operator()(const Replay& replay) {
    if (inPlay() && (rulebook.reServeWritten || replay.again != Again::ReServe))
        writeServe(ServedAgain());
}

/// A rally that was broken off is played again.
void Hand::operator()(const Resumed& resumed) {
    const bool goesOn = before.phase == Phase::Suspended && resumed.goOn == GoOn::AsItStood;
    if (goesOn && before.contacted && !struck())
        writeServe(ServedAgain());
}

void Hand::operator()(const NoServe&) {
    if (!inPlay())
        return;
    writeLost(MarkShape::Square);
    openTerm(false);
}

int Hand::takeBack(const TakenBackPoints& taken) {
    std::vector<RunningPoint>& running = record.teams[taken.team].running;
    int count = 0;
    for (auto point = std::ranges::find(running, taken.first, &RunningPoint::entry); point != running.end(); ++point) {
        if (point->takenBack)
            continue;
        point->takenBack = true;
        ++count;
        crossPoint(taken.team, point->entry);
    }
    const auto first = std::ranges::find(running, taken.first, &RunningPoint::entry);
    if (count > 0)
        crossExits(taken.team, first->total - 1);
    return count;
}

void Hand::crossExits(Team team, int total) {
    for (Term& term : record.teams[team].terms)
        for (std::size_t place = term.marks.size(); place-- > 0;) {
            const auto* exit = std::get_if<ExitScore>(&term.marks[place].content);
            if (!exit || exit->total <= total || term.marks[place].struck || term.marks[place].takenBack)
                continue;
            cross(term.marks[place]);
            const bool served = team == serving() && &term == &record.teams[team].terms.back();
            if (!served || !takenBackBy(recorded.entry)) // else the ruling ends the term, with an exit score of its own
                add(term, MarkShape::None, ExitScore{total});
        }
}

void Hand::cross(Mark& mark) const {
    mark.takenBack = true;
    mark.note = std::max(mark.note, note);
}

void Hand::crossPoint(Team team, EntryNumber entry) {
    for (Term& term : record.teams[team].terms)
        for (Mark& mark : term.marks)
            if (mark.entry == entry && !mark.struck && !std::holds_alternative<RallyLost>(mark.content))
                cross(mark);
}

void Hand::crossBeyond(Team team, int kept) {
    int met = 0;
    for (RunningPoint& point : record.teams[team].running)
        if (!point.takenBack && ++met > kept) {
            point.takenBack = true;
            crossPoint(team, point.entry);
        }
    crossExits(team, kept);
}

void Hand::crossContact() {
    for (Mark& mark : servedTerm().marks)
        if (std::holds_alternative<Awaiting>(mark.content) && !mark.struck) {
            mark.takenBack = true;
            mark.note = note;
        }
}

void Hand::crossLost(Team team) {
    std::vector<Term>& terms = record.teams[team].terms;
    if (struck() || terms.empty())
        return;
    std::vector<Mark>& marks = terms.back().marks;
    const auto lost = std::find_if(marks.rbegin(), marks.rend(), [](const Mark& mark) {
        return std::holds_alternative<RallyLost>(mark.content) && !mark.struck && !mark.takenBack;
    });
    if (lost == marks.rend() || lost->shape == MarkShape::Square)
        return;
    cross(*lost);
    const auto behind = std::distance(marks.begin(), lost.base());
    add(terms.back(), MarkShape::Square, RallyLost());
    std::rotate(marks.begin() + behind, marks.end() - 1, marks.end()); // exit scores come after it
}

void Hand::operator()(const WrongServer& ruling) {
    if (!maySettle(ruling.takenBackFrom))
        return;
    if (serving() != ruling.team)
        return crossLost(ruling.team);
    if (!struck())
        crossContact();
    writeLost(MarkShape::Square);
    openTerm(false);
}

/// A rally that was played is lost as any other; where none is, the serve is lost without one.
void Hand::operator()(const IllegalPlayer& ruling) {
    if (!maySettle(ruling.takenBackFrom))
        return;
    if (before.contacted)
        return writeRally(opponentsOf(ruling.team));
    if (serving() != ruling.team)
        return;
    writeLost(MarkShape::Square);
    openTerm(false);
}

bool Hand::maySettle(std::optional<EntryNumber> takenBackFrom) const {
    return inPlay() || (before.phase == Phase::SetWon && takenBackFrom);
}

void Hand::operator()(const Forfeit& forfeit) {
    if (struck())
        return;
    if (forfeit.earlier)
        crossBeyond(forfeit.by, record.score[forfeit.by]);
    const Team winner = opponentsOf(forfeit.by);
    TeamRecord& team = record.teams[winner];
    for (int total = before.points[winner] + 1; total <= record.score[winner]; ++total)
        team.running.push_back({.place = nextPlace(),
                                .total = total,
                                .opponents = record.score[forfeit.by],
                                .mark = RunningMark::Square,
                                .penalty = false,
                                .round = roundOf(winner, before.termsBegun[winner]),
                                .entry = recorded.number});
}

} // namespace setfolio
