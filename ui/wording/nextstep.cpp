// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/nextstep.h"

#include "ui/wording/fill.h"
#include "ui/wording/names.h"

#include <QCoreApplication>

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

NextStep stepBeforeSet(const SetState& set) {
    if (!set.servesFirst)
        return {Step::Toss, {}};
    const Team left = set.left.value_or(Team::Home);
    for (const Team team : {left, opponentsOf(left)})
        if (!set.teams[team].lineUp)
            return {Step::LineUp, team};
    return {Step::StartSet, {}};
}

QString setNumber(const MatchState& state) {
    return QString::number(state.set().number);
}

StepWords tossWords(const MatchState& state) {
    const SetState& set = state.set();
    const bool deciding = isDecidingSet(state, set.number);
    return {deciding ? Table::tr("Next: toss for the deciding set") : Table::tr("Next: the toss"),
            Table::tr("Who serves first, and who stands left of the table?"), Table::tr("Record the toss…")};
}

StepWords lineUpWords(const MatchState& state, Team team) {
    return {fill(Table::tr("Next: line-up of %1"), {codeOf(state, team)}),
            fill(Table::tr("Set %1. As on the slip, by court position 1 to 6."), {setNumber(state)}),
            Table::tr("Type the line-up…")};
}

StepWords startWords(const MatchState& state) {
    const SetState& set = state.set();
    return {
        fill(Table::tr("Next: start of set %1"), {setNumber(state)}),
        fill(Table::tr("%1 serves first, number %2. Press at the whistle."),
             {codeOf(state, set.serving), QString::number(serverOf(set).value)}),
        Table::tr("Start the set"),
    };
}

StepWords endWords(const MatchState& state) {
    const SetState& set = state.set();
    const Team winner = set.winner.value_or(Team::Home);
    return {fill(Table::tr("%1 wins set %2, %3–%4"),
                 {codeOf(state, winner), setNumber(state), QString::number(set.teams[winner].points),
                  QString::number(set.teams[opponentsOf(winner)].points)}),
            Table::tr("Confirm the score with the second referee, then end the set."), Table::tr("End the set…")};
}

StepWords closeWords(const MatchState& state) {
    const PerTeam<int> won = setsWon(state);
    const Team winner = won.home > won.visitors ? Team::Home : Team::Visitors;
    return {fill(Table::tr("%1 wins the match, %2–%3"),
                 {codeOf(state, winner), QString::number(won[winner]), QString::number(won[opponentsOf(winner)])}),
            Table::tr("Read the remarks once more with the referee, then close the match."),
            Table::tr("Close the match")};
}

} // namespace

NextStep nextStep(const MatchState& state) {
    switch (phaseOf(state)) {
    case Phase::NotOpened:
        return {Step::OpenMatch, {}};
    case Phase::BeforeSet:
        return stepBeforeSet(state.set());
    case Phase::ReadyToServe:
        return {Step::Serve, {}};
    case Phase::Rally:
        return {Step::Decide, {}};
    case Phase::SetWon:
        return {Step::EndSet, {}};
    case Phase::MatchWon:
        return {Step::CloseMatch, {}};
    case Phase::Suspended:
        return {Step::Resume, {}};
    case Phase::MatchClosed:
        return {Step::Print, {}};
    }
    return {};
}

StepWords wordsFor(const NextStep& next, const MatchState& state) {
    switch (next.step) {
    case Step::OpenMatch:
        return {Table::tr("Next: a match"), Table::tr("Begin a new match, or open one."), Table::tr("New match…")};
    case Step::Toss:
        return tossWords(state);
    case Step::LineUp:
        return lineUpWords(state, next.team.value_or(Team::Home));
    case Step::StartSet:
        return startWords(state);
    case Step::Serve:
        return {Table::tr("Serving now"), {}, {}};
    case Step::Decide:
        return {Table::tr("Rally: who wins it?"), {}, {}};
    case Step::EndSet:
        return endWords(state);
    case Step::CloseMatch:
        return closeWords(state);
    case Step::Resume:
        return {Table::tr("Play is suspended"), Table::tr("Go on when the first referee resumes play."),
                Table::tr("Resume play…")};
    case Step::Print:
        return {Table::tr("The match is closed"), Table::tr("The record is complete. Print it for the signatures."),
                Table::tr("Print…")};
    }
    return {};
}

} // namespace setfolio
