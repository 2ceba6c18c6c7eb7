// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/entrywords.h"

#include "ui/wording/fill.h"
#include "ui/wording/names.h"
#include "ui/wording/sanctionwords.h"
#include "ui/wording/signoffwords.h"

#include <QCoreApplication>

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

QString number(int value) {
    return QString::number(value);
}

QString timeOfDay(QTime time) {
    return time.toString(QStringLiteral("HH:mm"));
}

/// Each kind of entry is one overload; the team and the words, the rally comes from outside.
class Words {
public:
    Words(const MatchState& before, const MatchState& after) : m_before(before), m_after(after) {}

    EntryWords operator()(const MatchOpened&) const { return plain(Table::tr("match opened")); }
    EntryWords operator()(const Roster& roster) const { return of(roster.team, Table::tr("roster")); }
    EntryWords operator()(const Officials&) const { return plain(Table::tr("officials")); }
    EntryWords operator()(const MatchClosed&) const { return plain(Table::tr("match closed")); }
    EntryWords operator()(const Forfeit& forfeit) const;
    EntryWords operator()(const Suspended&) const { return plain(Table::tr("play suspended")); }
    EntryWords operator()(const Resumed&) const { return plain(Table::tr("play resumed")); }
    EntryWords operator()(const Toss& toss) const;
    EntryWords operator()(const LineUp& lineUp) const { return of(lineUp.team, Table::tr("line-up")); }
    EntryWords operator()(const SetStarted& started) const;
    EntryWords operator()(const SetEnded& ended) const;
    EntryWords operator()(const SidesChanged&) const { return plain(Table::tr("sides changed")); }
    EntryWords operator()(const ServeContacted&) const;
    EntryWords operator()(const RallyWon& rally) const;
    EntryWords operator()(const Replay& replay) const;
    EntryWords operator()(const NoServe&) const;
    EntryWords operator()(const ServerSeen& seen) const;
    EntryWords operator()(const WrongServer& ruling) const;
    EntryWords operator()(const IllegalPlayer& ruling) const;
    EntryWords operator()(const Substitution& substitution) const;
    EntryWords operator()(const PlaceVacated& vacated) const;
    EntryWords operator()(const TimeOut& timeOut) const;
    EntryWords operator()(const LiberoServe& serve) const;
    EntryWords operator()(const LiberoIn& in) const;
    EntryWords operator()(const LiberoOut& out) const;
    EntryWords operator()(const LiberoExchange& exchange) const;
    EntryWords operator()(const LiberoRedesignated& redesignated) const;
    EntryWords operator()(const LateReplacement& late) const {
        return of(late.team, Table::tr("late replacement let pass"));
    }
    EntryWords operator()(const CaptainNamed& named) const;
    EntryWords operator()(const Sanction& sanction) const;
    EntryWords operator()(const DelaySanction& sanction) const;
    EntryWords operator()(const ImproperRequest& request) const;
    EntryWords operator()(const SheetCompared& compared) const;
    EntryWords operator()(const PenaltyPoint& penalty) const { return point(penalty.to, Table::tr("penalty")); }
    EntryWords operator()(const Remark& remark) const;
    EntryWords operator()(const Strike&) const { return {}; }
    EntryWords operator()(const Signed& given) const;
    EntryWords operator()(const LeftUnsigned& left) const;
    EntryWords operator()(const Sealed& sealed) const;
    EntryWords operator()(const Reopened& reopened) const;

private:
    static EntryWords plain(const QString& words) { return {0, std::nullopt, words}; }
    static EntryWords of(Team team, const QString& words) { return {0, team, words}; }
    [[nodiscard]] EntryWords point(Team team, const QString& how) const {
        const int points = m_after.set().teams[team].points;
        return of(team, fill(Table::tr("point %1, %2"), {number(points), how}));
    }

    const MatchState& m_before;
    const MatchState& m_after;
};

EntryWords Words::operator()(const Toss& toss) const {
    return of(toss.servesFirst, fill(Table::tr("serves first; %1 on the left"), {codeOf(m_after, toss.left)}));
}

EntryWords Words::operator()(const SetStarted& started) const {
    const QString set = number(m_after.set().number);
    return plain(started.at.isValid() ? fill(Table::tr("set %1 started %2"), {set, timeOfDay(started.at)})
                                      : fill(Table::tr("set %1 started"), {set}));
}

EntryWords Words::operator()(const SetEnded& ended) const {
    const QString set = number(m_before.set().number);
    return plain(ended.at.isValid() ? fill(Table::tr("set %1 ended %2"), {set, timeOfDay(ended.at)})
                                    : fill(Table::tr("set %1 ended"), {set}));
}

EntryWords Words::operator()(const ServeContacted&) const {
    const SetState& set = m_before.set();
    return of(set.serving, fill(Table::tr("%1 serves"), {number(serverOf(set).value)}));
}

EntryWords Words::operator()(const RallyWon& rally) const {
    const bool own = m_before.set().serving == rally.by;
    return point(rally.by, own ? Table::tr("own serve") : Table::tr("wins the serve"));
}

EntryWords Words::operator()(const Replay& replay) const {
    const QString again = replay.again == Again::Replay ? Table::tr("replay") : Table::tr("re-serve");
    return of(m_before.set().serving,
              replay.cause ? fill(Table::tr("%1, %2"), {again, causeWords(*replay.cause)}) : again);
}

EntryWords Words::operator()(const NoServe&) const {
    return point(opponentsOf(m_before.set().serving), Table::tr("no serve"));
}

EntryWords Words::operator()(const Substitution& substitution) const {
    return of(substitution.team,
              fill(Table::tr("%1 in for %2"), {number(substitution.in.value), number(substitution.out.value)}));
}

EntryWords Words::operator()(const TimeOut& timeOut) const {
    const PerTeam<TeamInSet>& teams = m_after.set().teams;
    return of(timeOut.team, fill(Table::tr("time-out at %1–%2"), {number(teams[timeOut.team].points),
                                                                  number(teams[opponentsOf(timeOut.team)].points)}));
}

EntryWords Words::operator()(const LiberoServe& serve) const {
    const QString pattern =
        serve.serving == LiberoServing::Begins ? Table::tr("libero %1 serves") : Table::tr("libero %1 serves no more");
    return of(serve.team, fill(pattern, {number(serve.libero.value)}));
}

EntryWords Words::operator()(const Forfeit& forfeit) const {
    if (forfeit.earlier)
        return of(forfeit.by, fill(Table::tr("forfeits set %1"), {number(forfeit.earlier->number)}));
    return of(forfeit.by,
              forfeit.reach == Scope::Set ? Table::tr("forfeits the set") : Table::tr("forfeits the match"));
}

EntryWords Words::operator()(const ServerSeen& seen) const {
    return of(m_before.set().serving, fill(Table::tr("%1 at the service line"), {number(seen.number.value)}));
}

EntryWords Words::operator()(const WrongServer& ruling) const {
    return of(ruling.team, fill(Table::tr("wrong server %1"), {number(ruling.served.value)}));
}

EntryWords Words::operator()(const IllegalPlayer& ruling) const {
    const QString pattern = ruling.by == IllegalBy::Substitution ? Table::tr("illegal substitution, %1")
                                                                 : Table::tr("illegal libero replacement, %1");
    return of(ruling.team, fill(pattern, {number(ruling.number.value)}));
}

EntryWords Words::operator()(const PlaceVacated& vacated) const {
    return of(vacated.team, fill(Table::tr("%1 leaves, place vacant"), {number(vacated.out.value)}));
}

EntryWords Words::operator()(const LiberoIn& in) const {
    return of(in.team, fill(Table::tr("libero %1 in for %2"), {number(in.libero.value), number(in.replaced.value)}));
}

EntryWords Words::operator()(const LiberoOut& out) const {
    return of(out.team, fill(Table::tr("libero %1 out"), {number(out.libero.value)}));
}

EntryWords Words::operator()(const LiberoExchange& exchange) const {
    return of(exchange.team,
              fill(Table::tr("libero %1 for libero %2"), {number(exchange.in.value), number(exchange.out.value)}));
}

EntryWords Words::operator()(const LiberoRedesignated& redesignated) const {
    if (!redesignated.libero)
        return of(redesignated.team, fill(Table::tr("libero %1 cannot play on"), {number(redesignated.former.value)}));
    return of(redesignated.team, fill(Table::tr("%1 is libero in place of %2"),
                                      {number(redesignated.libero->value), number(redesignated.former.value)}));
}

EntryWords Words::operator()(const CaptainNamed& named) const {
    return of(named.team, fill(Table::tr("captain %1"), {number(named.captain.value)}));
}

EntryWords Words::operator()(const Sanction& sanction) const {
    return of(sanction.team, fill(Table::tr("%1, %2"), {levelWords(sanction.level), memberWords(sanction.who)}));
}

EntryWords Words::operator()(const DelaySanction& sanction) const {
    return of(sanction.team, delayWords(sanction.level));
}

EntryWords Words::operator()(const ImproperRequest& request) const {
    return of(request.team, Table::tr("improper request"));
}

EntryWords Words::operator()(const SheetCompared& compared) const {
    return plain(compared.differs.isEmpty() ? Table::tr("compared: agrees")
                                            : fill(Table::tr("compared: %1"), {compared.differs}));
}

EntryWords Words::operator()(const Remark& remark) const {
    return plain(fill(Table::tr("remark: %1"), {remark.text}));
}

EntryWords Words::operator()(const Signed& given) const {
    const QString pattern =
        given.protest ? Table::tr("%1: signed by the %2, under protest") : Table::tr("%1: signed by the %2");
    return {0, given.who.team, fill(pattern, {whatIsSigned(given.set), signerWords(given.who.role)})};
}

EntryWords Words::operator()(const LeftUnsigned& left) const {
    return {0, left.who.team,
            fill(Table::tr("%1: not signed by the %2"), {whatIsSigned(left.set), signerWords(left.who.role)})};
}

EntryWords Words::operator()(const Sealed& sealed) const {
    return plain(fill(Table::tr("%1: sealed"), {whatIsSigned(sealed.set)}));
}

EntryWords Words::operator()(const Reopened& reopened) const {
    return plain(
        fill(Table::tr("%1: reopened by %2, %3"), {whatIsSigned(reopened.set), reopened.name, reopened.reason}));
}

int rallyOf(const MatchState& before, const MatchState& after) {
    const auto inPlay = [](const MatchState& state) {
        const Phase phase = phaseOf(state);
        return phase == Phase::ReadyToServe || phase == Phase::Rally;
    };
    return inPlay(before) ? before.set().rallies + 1 : inPlay(after) ? 1 : 0;
}

} // namespace

EntryWords wordsFor(const Entry& entry, const MatchState& before, const MatchState& after) {
    EntryWords words = std::visit(Words(before, after), entry);
    words.rally = rallyOf(before, after);
    return words;
}

QString causeWords(ReplayCause cause) {
    switch (cause) {
    case ReplayCause::Injury:
        return Table::tr("injury");
    case ReplayCause::Interference:
        return Table::tr("interference");
    case ReplayCause::DoubleFault:
        return Table::tr("double fault");
    case ReplayCause::Whistle:
        return Table::tr("mistaken whistle");
    case ReplayCause::EarlyServe:
        return Table::tr("serve before the whistle");
    }
    Q_UNREACHABLE();
}

QString strikeWords(const QString& struck, bool standsAgain) {
    return fill(standsAgain ? Table::tr("stands again: %1") : Table::tr("struck: %1"), {struck});
}

} // namespace setfolio
