// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/nextstep.h"

#include "core/match/signoff.h"
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
        return {Step::Toss, {}, {}};
    const Team left = set.left.value_or(Team::Home);
    for (const Team team : {left, opponentsOf(left)})
        if (!set.teams[team].lineUp)
            return {Step::LineUp, team, {}};
    return {Step::StartSet, {}, {}};
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

StepWords signOffWords(const NextStep& next) {
    if (!next.set)
        return {Table::tr("Next: sign-off of the match"),
                Table::tr("Show it to the referee, then have it signed and seal it. It can wait."),
                Table::tr("Sign off…")};
    return {fill(Table::tr("Next: sign-off of set %1"), {QString::number(*next.set)}),
            Table::tr("Show it to the referee, then have it signed and seal it. It can wait."), Table::tr("Sign off…")};
}

/// Between sets and after the last one; in play, nobody is asked to sign.
bool isTimeToSign(Phase phase) {
    return phase == Phase::BeforeSet || phase == Phase::MatchWon || phase == Phase::MatchClosed;
}

NextStep stepOfPlay(const MatchState& state, Phase phase) {
    switch (phase) {
    case Phase::NotOpened:
        return {Step::OpenMatch, {}, {}};
    case Phase::BeforeSet:
        return stepBeforeSet(state.set());
    case Phase::ReadyToServe:
        return {Step::Serve, {}, {}};
    case Phase::Rally:
        return {Step::Decide, {}, {}};
    case Phase::SetWon:
        return {Step::EndSet, {}, {}};
    case Phase::MatchWon:
        return {Step::CloseMatch, {}, {}};
    case Phase::Suspended:
        return {Step::Resume, {}, {}};
    case Phase::MatchClosed:
        return {Step::Print, {}, {}};
    }
    return {};
}

} // namespace

NextStep nextStep(const MatchState& state, bool signOffPutOff) {
    const Phase phase = phaseOf(state);
    if (!signOffPutOff && isTimeToSign(phase))
        if (const std::optional<SignedPart> due = firstSignOffDue(state))
            return {Step::SignOff, {}, due->set};
    return stepOfPlay(state, phase);
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
    case Step::SignOff:
        return signOffWords(next);
    case Step::Resume:
        return {Table::tr("Play is suspended"), Table::tr("Go on when the first referee resumes play."),
                Table::tr("Resume play…")};
    case Step::Print:
        return {Table::tr("The match is closed"),
                isSealed(state, std::nullopt) ? Table::tr("The record is signed and sealed. Print it.")
                                              : Table::tr("The record is complete. Print it for the signatures."),
                Table::tr("Print…")};
    }
    return {};
}

} // namespace setfolio
