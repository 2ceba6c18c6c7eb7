// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/tablewords.h"

#include "ui/wording/fill.h"
#include "ui/wording/names.h"

#include <QCoreApplication>

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

QString number(int value) {
    return QString::number(value);
}

QString wonAtScore(const MatchState& state, Team team) {
    const PerTeam<TeamInSet>& teams = state.set().teams;
    return fill(Table::tr("%1 wins the set %2–%3: confirm with the second referee."),
                {codeOf(state, team), number(teams[team].points), number(teams[opponentsOf(team)].points)});
}

} // namespace

QString sentence(const Notice& notice, const MatchState& state) {
    const QString code = codeOf(state, notice.team);
    const bool told = isToBeTold(state.rulebook(), notice);
    switch (notice.kind) {
    case NoticeKind::SubstitutionsUsed:
        return fill(Table::tr("Tell the second referee: %1 has used %2 of %3 substitutions."),
                    {code, number(notice.count), number(notice.limit)});
    case NoticeKind::LastTimeOutUsed:
        return fill(told ? Table::tr("Tell the second referee: %1 has taken its last time-out.")
                         : Table::tr("%1 has taken its last time-out."),
                    {code});
    case NoticeKind::SetPoint:
        return fill(Table::tr("Set point %1"), {code});
    case NoticeKind::MatchPoint:
        return fill(Table::tr("Match point %1"), {code});
    case NoticeKind::SetWonAtScore:
        return wonAtScore(state, notice.team);
    case NoticeKind::SidesChangeDue:
        return fill(told ? Table::tr("Tell the referees: %1 has %2 points, and the teams change sides.")
                         : Table::tr("%1 has %2 points, and the teams change sides."),
                    {code, number(notice.count)});
    case NoticeKind::WrongServerSilent:
        return fill(Table::tr("Number %2 of %1 is at the service line for number %3: say nothing before the serve."),
                    {code, number(notice.number.value), number(notice.lawful.value)});
    case NoticeKind::WrongServerTold:
        return fill(Table::tr("Tell the second referee now: number %2 of %1 is at serve for number %3."),
                    {code, number(notice.number.value), number(notice.lawful.value)});
    case NoticeKind::VacantServer:
        return fill(Table::tr("The vacant place of %1 is to serve, in slot %2: the rally is lost, record no serve."),
                    {code, roman(notice.slot.value_or(Slot()))});
    case NoticeKind::LiberoMustLeave:
        return fill(Table::tr("Libero %2 of %1 has come to the front row: she goes out before the serve."),
                    {code, number(notice.number.value)});
    case NoticeKind::ImproperRequest:
        return fill(Table::tr("%1 has had its improper request: the next one is a delay."), {code});
    }
    return {};
}

QString substitutionRecorded(const Substitution& substitution, const MatchState& state) {
    return fill(Table::tr("Recorded: %1 #%2 in for #%3. Signal the second referee."),
                {codeOf(state, substitution.team), number(substitution.in.value), number(substitution.out.value)});
}

QString callOf(AreaCall call) {
    switch (call) {
    case AreaCall::None:
        return {};
    case AreaCall::LineUpAwaited:
        return Table::tr("line-up awaited");
    case AreaCall::LineUpStands:
        return Table::tr("line-up stands");
    case AreaCall::WinsTheRally:
        return Table::tr("wins the rally");
    case AreaCall::WinsTheSet:
        return Table::tr("wins the set");
    case AreaCall::WinsTheMatch:
        return Table::tr("wins the match");
    }
    return {};
}

QString servesWord() {
    return Table::tr("serves");
}

QString substitutionsUsed(int count, int limit) {
    return fill(Table::tr("%1 of %2"), {number(count), number(limit)});
}

QString timeOutsLeft(int left) {
    return left > 0 ? fill(Table::tr("%1 left"), {number(left)}) : Table::tr("none left");
}

QString sanctionsGiven(int count) {
    return count > 0 ? fill(Table::tr("%1 given"), {number(count)}) : Table::tr("none");
}

QString liberoState(const TeamInSet& team, LiberoServeRule rule) {
    if (liberosOf(team).empty())
        return Table::tr("none");
    if (team.libero)
        return fill(Table::tr("%1 on"), {number(team.libero->libero.value)});
    if (rule == LiberoServeRule::Never)
        return Table::tr("not on");
    if (team.liberoServing)
        return fill(Table::tr("%1 serves"), {number(team.liberoServing->value)});
    return team.liberoSlot ? fill(Table::tr("in %1"), {roman(*team.liberoSlot)}) : Table::tr("not on");
}

QString matchLine(const MatchState& state) {
    const PerTeam<int> won = setsWon(state);
    return fill(Table::tr("Set %1    Sets won: %2 %3–%4 %5"),
                {number(state.set().number), codeOf(state, Team::Home), number(won.home), number(won.visitors),
                 codeOf(state, Team::Visitors)});
}

QString tableTitle(const MatchState& state) {
    const QString& competition = state.opened->competition;
    return competition.isEmpty() ? tableSet(state) : fill(Table::tr("%1 · %2"), {competition, tableSet(state)});
}

QString tableSet(const MatchState& state) {
    return fill(Table::tr("Set %1, best of %2"), {number(state.set().number), number(state.opened->bestOf)});
}

QString rallyWord(int rally) {
    return fill(Table::tr("Rally %1"), {number(rally)});
}

QString serverPlace(Slot slot, bool captain, std::optional<ShirtNumber> replaced) {
    if (replaced)
        return fill(Table::tr("Slot %1 · libero for %2"), {roman(slot), number(replaced->value)});
    return captain ? fill(Table::tr("Slot %1 · captain"), {roman(slot)}) : fill(Table::tr("Slot %1"), {roman(slot)});
}

QString ifRallyIsLost() {
    return Table::tr("If the rally is lost, next server");
}

QString slotWord(Slot slot) {
    return fill(Table::tr("slot %1"), {roman(slot)});
}

QString thenServes(const QString& code, ShirtNumber shirt) {
    return fill(Table::tr("then %1 %2"), {code, number(shirt.value)});
}

QString clockWord(int seconds) {
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

QString intervalWord(int seconds) {
    return fill(Table::tr("Interval %1"), {clockWord(seconds)});
}

QString countdownWords(const Countdown& countdown) {
    if (countdown.late)
        return Table::tr("Line-ups late");
    switch (countdown.to) {
    case Countdown::To::LineUps:
        return fill(Table::tr("Line-ups due %1"), {clockWord(countdown.seconds)});
    case Countdown::To::EndOfInterval:
        return intervalWord(countdown.seconds);
    case Countdown::To::EndOfWarmUp:
        return fill(Table::tr("Warm-up %1"), {clockWord(countdown.seconds)});
    }
    Q_UNREACHABLE();
}

QString savedAt(QTime time) {
    return fill(Table::tr("Saved %1"), {time.toString(QStringLiteral("HH:mm:ss"))});
}

QString notSaved() {
    return Table::tr("Not saved");
}

QString savedWord() {
    return Table::tr("Saved");
}

QString readOnlyWord() {
    return Table::tr("Read only");
}

QString notRecorded(const QString& why) {
    return fill(Table::tr("Not recorded. %1 The sheet stands as it did before."), {why});
}

QString readOnlyBecause(const QString& holder) {
    if (holder.isEmpty())
        return Table::tr("This match is open for reading only: nothing can be recorded in this window.");
    return fill(Table::tr("Another window holds this match (%1): nothing can be recorded in this one."), {holder});
}

} // namespace setfolio
