// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/barwords.h"

#include "core/match/consequences.h"
#include "core/match/fold.h"
#include "ui/wording/fill.h"
#include "ui/wording/names.h"
#include "ui/wording/sanctionwords.h"

#include <QCoreApplication>

#include <algorithm>

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

QString number(int value) {
    return QString::number(value);
}

QString number(ShirtNumber shirt) {
    return QString::number(shirt.value);
}

QString pointAndServeTo(const MatchState& state, Team team) {
    return state.set().serving == team ? fill(Table::tr("a point to %1"), {codeOf(state, team)})
                                       : fill(Table::tr("point and serve to %1"), {codeOf(state, team)});
}

/// What a level takes from the one who is sanctioned; empty for nothing.
QString outFor(SanctionLevel level) {
    switch (level) {
    case SanctionLevel::Warning:
    case SanctionLevel::Penalty:
        return {};
    case SanctionLevel::Expulsion:
        return Table::tr("out for the rest of the set");
    case SanctionLevel::Disqualification:
        return Table::tr("out for the rest of the match");
    }
    return {};
}

/// What a ruling takes back, and whose it is.
QString takenBack(const MatchState& state, Team team, int points) {
    const QString back = points == 0
                             ? Table::tr("; no point is taken back.")
                             : fill(Table::tr("; points of %1 taken back: %2."), {codeOf(state, team), number(points)});
    return back + u' ' + Table::tr("The first referee rules.");
}

QString inParts(const QString& head, QStringList parts) {
    parts.removeAll(QString());
    if (parts.isEmpty())
        parts += Table::tr("no point");
    return fill(Table::tr("%1: %2. Enter records."), {head, parts.join(QStringLiteral(", "))});
}

} // namespace

QString capitalised(const QString& words) {
    return words.isEmpty() ? words : words.front().toUpper() + words.mid(1);
}

QString exceptionalMeans(const MatchState& state, ShirtNumber out) {
    const Rulebook& rulebook = state.rulebook();
    const QString who = rulebook.exceptionalLibero == ExceptionalLibero::Never
                            ? Table::tr("Exceptional: anybody but a libero may come in.")
                            : Table::tr("Exceptional: anybody may come in, a libero last.");
    const QString stays = rulebook.exceptionalOutFor == Scope::Match
                              ? Table::tr("%1 stays out for the rest of the match.")
                              : Table::tr("%1 stays out for the rest of the set.");
    return who + u' ' + fill(stays, {number(out)});
}

QString exceptionalRemark(const MatchState& state, const Substitution& substitution, const QString& why) {
    return fill(Table::tr("Exceptional substitution %1, %2 in for %3: %4"),
                {codeOf(state, substitution.team), number(substitution.in), number(substitution.out), why});
}

QString placeStaysVacant(const MatchState& state, Team team) {
    return state.rulebook().fewerThanSix == FewerThanSix::Incomplete
               ? fill(Table::tr("%1 would be incomplete and has lost: record the forfeit."), {codeOf(state, team)})
               : Table::tr("She leaves and nobody comes in. When her place is to serve, the rally is lost.");
}

QString placeVacatedRecorded(const MatchState& state, Team team) {
    return fill(Table::tr("Recorded: %1 plays on with a vacant place. Tell the second referee."),
                {codeOf(state, team)});
}

QString liberoStands(const MatchState& state, Team team) {
    const TeamInSet& own = state.set().teams[team];
    if (own.libero)
        return fill(Table::tr("%1 on court for %2"),
                    {number(own.libero->libero), number(onCourt(own, own.libero->slot))});
    return own.liberoServing ? fill(Table::tr("%1 serves"), {number(*own.liberoServing)}) : Table::tr("not on court");
}

QString liberoOutMeans(const TeamInSet& team) {
    return fill(Table::tr("%1 comes back"), {number(onCourt(team, team.libero->slot))});
}

QString serverSeenMeans(const MatchState& state, ShirtNumber seen) {
    const SetState& set = state.set();
    const bool tellsBefore = state.rulebook().wrongServerNotice == WrongServerNotice::BeforeServe;
    const QString pattern = set.contacted ? Table::tr("Tell the second referee now: %1 %2 has served, %3 should have.")
                            : tellsBefore
                                ? Table::tr("Tell the second referee: %1 %2 is at the line, %3 should serve.")
                                : Table::tr("%1 %2 is at the line, %3 should serve. Say nothing before the contact.");
    return fill(pattern, {codeOf(state, set.serving), number(seen), number(serverOf(set))});
}

QString wrongServerMeans(const MatchState& state, const WrongServer& ruling, int points) {
    const bool serves = state.set().serving == ruling.team && !state.set().winner;
    QString words = serves ? fill(Table::tr("Point and serve to %1"), {codeOf(state, opponentsOf(ruling.team))})
                           : fill(Table::tr("%1 has the serve already"), {codeOf(state, opponentsOf(ruling.team))});
    return words + takenBack(state, ruling.team, points);
}

QString illegalPlayerMeans(const MatchState& state, Team team, int points) {
    const Team others = opponentsOf(team);
    const bool lost = !state.set().winner && (state.set().serving == team || state.set().contacted);
    const QString words = lost ? capitalised(pointAndServeTo(state, others))
                               : fill(Table::tr("%1 has the serve already"), {codeOf(state, others)});
    return words + takenBack(state, team, points) + u' ' + Table::tr("Then record who goes out and who comes in.");
}

QString cardsWords(CardsShown cards) {
    switch (cards) {
    case CardsShown::Yellow:
        return Table::tr("yellow");
    case CardsShown::Red:
        return Table::tr("red");
    case CardsShown::BothTogether:
        return Table::tr("red and yellow together");
    case CardsShown::BothApart:
        return Table::tr("red and yellow apart");
    }
    return {};
}

QString sanctionMeans(const MatchState& state, Team team, SanctionLevel level) {
    const QString point = bringsPoint(state.rulebook(), level) ? pointAndServeTo(state, opponentsOf(team)) : QString();
    return inParts(capitalised(levelWords(level)), {point, outFor(level)});
}

QString delayMeans(const MatchState& state, Team team, DelayLevel level) {
    const QString point = level == DelayLevel::Penalty ? pointAndServeTo(state, opponentsOf(team)) : QString();
    return inParts(capitalised(delayWords(level)), {point});
}

namespace {

/// What follows for the match, where a set has another winner; nothing if it goes on as it did.
QString courseOf(const MatchState& before, const MatchState& after) {
    const auto winnerOf = [](const MatchState& state) {
        const PerTeam<int> won = setsWon(state);
        const Team ahead = won.home > won.visitors ? Team::Home : Team::Visitors;
        return phaseOf(state) == Phase::MatchWon ? std::optional(ahead) : std::nullopt;
    };
    const std::optional<Team> winner = winnerOf(after);
    if (winnerOf(before) == winner)
        return {};
    return winner ? fill(Table::tr("%1 wins the match."), {codeOf(after, *winner)})
                  : fill(Table::tr("Set %1 is to be played."), {QString::number(after.set().number)});
}

QString earlierForfeitMeans(const MatchState& state, const Forfeit& forfeit) {
    const auto place = placeOfEnded(state, forfeit.earlier->number);
    if (!place)
        return {};
    const MatchState after = apply(state, {EntryNumber(state.last.value + 1), {}, forfeit, {}, {}});
    const PerTeam<TeamInSet>& teams = after.sets[*place].teams;
    const QString means =
        fill(Table::tr("%1 loses set %2, %3–%4."),
             {codeOf(state, forfeit.by), QString::number(forfeit.earlier->number),
              QString::number(teams[forfeit.by].points), QString::number(teams[opponentsOf(forfeit.by)].points)});
    const QString course = courseOf(state, after);
    return course.isEmpty() ? means : means + u' ' + course;
}

} // namespace

QString forfeitMeans(const MatchState& state, const Forfeit& forfeit) {
    if (forfeit.earlier)
        return earlierForfeitMeans(state, forfeit);
    const QString by = codeOf(state, forfeit.by);
    const QString winner = codeOf(state, opponentsOf(forfeit.by));
    if (forfeit.kind == ForfeitKind::Default)
        return fill(Table::tr("%1 loses every set to nothing; %2 wins the match."), {by, winner});
    return forfeit.reach == Scope::Set
               ? fill(Table::tr("%1 keeps its points; %2 gets what it needs for this set."), {by, winner})
               : fill(Table::tr("%1 keeps its points and sets; %2 gets what it needs for the match."), {by, winner});
}

} // namespace setfolio
