// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/hand.h"

#include <algorithm>

namespace setfolio {

int Hand::roundOf(Team team, int term) const {
    return roundOfTerm(rulebook, record.servesFirst == team, std::max(term, 1));
}

Term& Hand::servedTerm() {
    return termAt(serving(), roundOf(serving(), before.termsBegun[serving()]));
}

Term& Hand::openedTerm() {
    return termAt(others(), roundOf(others(), before.termsBegun[others()] + 1));
}

Term& Hand::termAt(Team team, int round) {
    const Slot slot = before.nextServer[team];
    std::vector<Term>& terms = record.teams[team].terms;
    if (terms.empty() || terms.back().slot != slot || terms.back().round != round)
        terms.push_back({slot, round, false, {}});
    return terms.back();
}

Mark& Hand::add(Term& term, MarkShape shape, MarkContent content) {
    return term.marks.emplace_back(Mark{
        .shape = shape, .content = std::move(content), .entry = recorded.number, .struck = struck(), .note = note});
}

void Hand::writeServe(MarkContent content) {
    Term& term = servedTerm();
    const auto empty = std::ranges::find_if(term.marks, [this](const Mark& mark) {
        return std::holds_alternative<Awaiting>(mark.content) && !mark.takenBack && (!mark.struck || struck());
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

void Hand::writeLost(MarkShape shape) {
    if (shape == MarkShape::Square)
        add(servedTerm(), shape, RallyLost());
    else
        writeServe(RallyLost());
    // A ruling may have taken points back already.
    const bool ruled = takenBackBy(recorded.entry) && !struck();
    writeExit(serving(), ruled ? record.score[serving()] : before.points[serving()]);
}

void Hand::writeExit(Team team, int total) {
    if (rulebook.exitScores && !record.teams[team].terms.empty())
        add(record.teams[team].terms.back(), MarkShape::None, ExitScore{total});
}

void Hand::closeExits() {
    if (inPlay() && record.result && !struck() && !std::holds_alternative<Forfeit>(recorded.entry))
        writeExit(record.result->winner, record.score[record.result->winner]);
}

void Hand::openTerm(bool penalty) {
    Term& term = openedTerm();
    if (penalty)
        add(term, MarkShape::None, PenaltyLetter());
    add(term, MarkShape::None, OpeningPoint{before.points[others()] + 1});
    run(others(), RunningMark::Slash, penalty, term.round);
}

void Hand::run(Team team, RunningMark mark, bool penalty, int round) {
    if (struck())
        return;
    if (mark == RunningMark::Ring && rulebook.runningMark == OwnPointMark::Slashed)
        mark = RunningMark::Slash;
    const Team others = opponentsOf(team);
    const bool takesBack = takenBackBy(recorded.entry).has_value(); // and then the ruling's point comes
    record.teams[team].running.push_back({.place = nextPlace(),
                                          .total = before.points[team] + 1,
                                          .opponents = takesBack ? record.score[others] : before.points[others],
                                          .mark = mark,
                                          .penalty = penalty,
                                          .round = round,
                                          .entry = recorded.number});
}

int Hand::nextPlace() const {
    return static_cast<int>(record.teams.home.running.size() + record.teams.visitors.running.size()) + 1;
}

void Hand::givePoint(Team team) {
    if (team != serving()) {
        writeLost(MarkShape::Square);
        openTerm(true);
        return;
    }
    add(servedTerm(), MarkShape::None, PenaltyLetter());
    add(servedTerm(), MarkShape::Square, ServedPoint{before.points[serving()] + 1});
    run(serving(), RunningMark::Ring, true, servedTerm().round);
}

} // namespace setfolio
