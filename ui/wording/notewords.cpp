// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/notewords.h"

#include "core/record/sealtext.h"
#include "core/record/shown.h"
#include "ui/wording/entrywords.h"
#include "ui/wording/fill.h"
#include "ui/wording/markwords.h"
#include "ui/wording/names.h"
#include "ui/wording/sanctionwords.h"
#include "ui/wording/sheetwords.h"
#include "ui/wording/signoffwords.h"

#include <QCoreApplication>

namespace setfolio {

namespace {

struct Sheet {
    Q_DECLARE_TR_FUNCTIONS(Sheet)
};

QString number(int value) {
    return QString::number(value);
}

QString codeOf(const PerTeam<TeamName>& teams, Team team) {
    const TeamName& name = teams[team];
    if (!name.code.isEmpty())
        return asShown(name.code);
    if (!name.name.isEmpty())
        return asShown(name.name);
    return team == Team::Home ? Sheet::tr("Home") : Sheet::tr("Visitors");
}

/// What an entry was, in a few words that begin a sentence.
class What {
public:
    explicit What(const PerTeam<TeamName>& teams) : m_teams(teams) {}

    QString operator()(const MatchOpened&) const { return Sheet::tr("Opening of the match"); }
    QString operator()(const Roster& roster) const { return fill(Sheet::tr("%1 roster"), {code(roster.team)}); }
    QString operator()(const Officials&) const { return Sheet::tr("List of officials"); }
    QString operator()(const MatchClosed&) const { return Sheet::tr("Closing of the match"); }
    QString operator()(const Forfeit& forfeit) const {
        if (forfeit.earlier)
            return earlierSet(forfeit);
        return fill(forfeit.reach == Scope::Set ? Sheet::tr("%1 forfeits the set") : Sheet::tr("%1 forfeits the match"),
                    {code(forfeit.by)});
    }
    QString operator()(const Suspended&) const { return Sheet::tr("Play suspended"); }
    QString operator()(const Resumed& resumed) const {
        return resumed.goOn == GoOn::AsItStood ? Sheet::tr("Play resumed as it stood")
                                               : Sheet::tr("Set cancelled, to be played again");
    }
    QString operator()(const SidesChanged&) const { return Sheet::tr("Sides changed"); }
    QString operator()(const ServerSeen& seen) const {
        return fill(Sheet::tr("%1 at the service line"), {number(seen.number.value)});
    }
    QString operator()(const WrongServer& ruling) const {
        return fill(Sheet::tr("%1 wrong server %2"), {code(ruling.team), number(ruling.served.value)});
    }
    QString operator()(const IllegalPlayer& ruling) const {
        const bool bySubstitution = ruling.by == IllegalBy::Substitution;
        return fill(bySubstitution ? Sheet::tr("%1 illegal substitution, %2 on court")
                                   : Sheet::tr("%1 illegal libero replacement, %2 on court"),
                    {code(ruling.team), number(ruling.number.value)});
    }
    QString operator()(const PlaceVacated& vacated) const {
        return fill(Sheet::tr("%1 plays on without %2, place vacant"), {code(vacated.team), number(vacated.out.value)});
    }
    QString operator()(const LiberoIn& in) const {
        return fill(Sheet::tr("%1 libero %2 in for %3"),
                    {code(in.team), number(in.libero.value), number(in.replaced.value)});
    }
    QString operator()(const LiberoOut& out) const {
        return fill(Sheet::tr("%1 libero %2 out"), {code(out.team), number(out.libero.value)});
    }
    QString operator()(const LiberoExchange& exchange) const {
        return fill(Sheet::tr("%1 libero %2 for libero %3"),
                    {code(exchange.team), number(exchange.in.value), number(exchange.out.value)});
    }
    QString operator()(const LiberoRedesignated& redesignated) const {
        if (!redesignated.libero)
            return fill(Sheet::tr("%1 libero %2 cannot play on"),
                        {code(redesignated.team), number(redesignated.former.value)});
        return fill(Sheet::tr("%1 libero is %2 in place of %3"),
                    {code(redesignated.team), number(redesignated.libero->value), number(redesignated.former.value)});
    }
    QString operator()(const LateReplacement& late) const {
        return fill(Sheet::tr("%1 late libero replacement let pass"), {code(late.team)});
    }
    QString operator()(const CaptainNamed& named) const {
        return fill(Sheet::tr("%1 captain is %2"), {code(named.team), number(named.captain.value)});
    }
    QString operator()(const Sanction& sanction) const {
        return fill(Sheet::tr("%1 %2, %3"),
                    {code(sanction.team), levelWords(sanction.level), memberWords(sanction.who)});
    }
    QString operator()(const DelaySanction& sanction) const {
        return fill(QStringLiteral("%1 %2"), {code(sanction.team), delayWords(sanction.level)});
    }
    QString operator()(const ImproperRequest& request) const {
        return fill(Sheet::tr("%1 improper request"), {code(request.team)});
    }
    QString operator()(const SheetCompared& compared) const {
        return fill(Sheet::tr("Compared with the scoreboard: %1"), {compared.differs});
    }
    QString operator()(const Toss&) const { return Sheet::tr("Toss"); }
    QString operator()(const LineUp& lineUp) const { return fill(Sheet::tr("%1 line-up"), {code(lineUp.team)}); }
    QString operator()(const SetStarted&) const { return Sheet::tr("Start of the set"); }
    QString operator()(const SetEnded&) const { return Sheet::tr("End of the set"); }
    QString operator()(const ServeContacted&) const { return Sheet::tr("Serve contacted"); }
    QString operator()(const RallyWon& rally) const { return fill(Sheet::tr("Rally won by %1"), {code(rally.by)}); }
    QString operator()(const Replay& replay) const {
        const QString again = replay.again == Again::Replay ? Sheet::tr("Replay") : Sheet::tr("Re-serve");
        return replay.cause ? fill(Sheet::tr("%1, %2"), {again, causeWords(*replay.cause)}) : again;
    }
    QString operator()(const NoServe&) const { return Sheet::tr("Rally lost without a serve"); }
    QString operator()(const Substitution& s) const {
        return fill(s.kind == SubstitutionKind::Exceptional ? Sheet::tr("%1 exceptional substitution %2 for %3")
                                                            : Sheet::tr("%1 substitution %2 for %3"),
                    {code(s.team), number(s.in.value), number(s.out.value)});
    }
    QString operator()(const TimeOut& timeOut) const { return fill(Sheet::tr("%1 time-out"), {code(timeOut.team)}); }
    QString operator()(const LiberoServe& serve) const {
        return fill(serve.serving == LiberoServing::Begins ? Sheet::tr("%1 libero %2 to serve")
                                                           : Sheet::tr("%1 libero %2 no longer to serve"),
                    {code(serve.team), number(serve.libero.value)});
    }
    QString operator()(const PenaltyPoint& penalty) const {
        return fill(Sheet::tr("Penalty point to %1"), {code(penalty.to)});
    }
    QString operator()(const Remark& remark) const { return fill(Sheet::tr("Remark “%1”"), {remark.text}); }
    QString operator()(const Strike&) const { return Sheet::tr("Correction"); }
    QString operator()(const Signed& given) const {
        return fill(given.protest ? Sheet::tr("Signed under protest by the %1") : Sheet::tr("Signed by the %1"),
                    {signer(given.who)});
    }
    QString operator()(const LeftUnsigned& left) const {
        return fill(Sheet::tr("Not signed by the %1"), {signer(left.who)});
    }
    QString operator()(const Sealed&) const { return Sheet::tr("Seal"); }
    QString operator()(const Reopened& reopened) const {
        return fill(Sheet::tr("Reopened by %1"), {reopened.name.trimmed()});
    }

private:
    [[nodiscard]] QString code(Team team) const { return codeOf(m_teams, team); }
    [[nodiscard]] QString earlierSet(const Forfeit& forfeit) const {
        const QString set = number(forfeit.earlier->number);
        const std::optional<int>& keeps = forfeit.earlier->keeps;
        return keeps ? fill(Sheet::tr("%1 forfeits set %2, points kept: %3"), {code(forfeit.by), set, number(*keeps)})
                     : fill(Sheet::tr("%1 forfeits set %2, all points kept"), {code(forfeit.by), set});
    }
    [[nodiscard]] QString signer(const Signatory& who) const {
        const QString role = signerWords(who.role);
        return who.team ? fill(Sheet::tr("%1 of %2", "a signer's role and the team"), {role, code(*who.team)}) : role;
    }

    const PerTeam<TeamName>& m_teams;
};

/// A full stop, unless the words end in a mark of their own.
QString stopped(const QString& words) {
    static const QString ends = QStringLiteral(".!?…。؟");
    return words.isEmpty() || ends.contains(words.back()) ? words : words + u'.';
}

/// The sentence with the reason after a comma, where there is one.
QString withReason(const QString& words, const QString& reason) {
    const QString trimmed = reason.trimmed();
    return stopped(trimmed.isEmpty() ? words : fill(Sheet::tr("%1, %2"), {words, trimmed}));
}

/// At which score, home–visitors, it was said.
QString atScore(const PerTeam<int>& score, const QString& words) {
    return fill(Sheet::tr("At %1–%2: %3"), {number(score.home), number(score.visitors), words});
}

/// With the number of points that a ruling takes back, if it takes any.
QString withTakenBack(const QString& words, int points) {
    return points > 0 ? fill(Sheet::tr("%1; points taken back: %2"), {words, number(points)}) : words;
}

/// The reason an entry carries, if it has one.
struct ReasonOf {
    QString operator()(const auto& entry) const {
        if constexpr (requires { entry.reason; })
            return entry.reason;
        else if constexpr (requires { entry.protest; })
            return entry.protest.value_or(QString());
        else
            return {};
    }
};

class Say {
public:
    explicit Say(const PerTeam<TeamName>& teams) : m_teams(teams) {}

    QString operator()(const StruckNote& note) const {
        const bool point = note.team && note.total > 0 && std::holds_alternative<RallyWon>(note.struck.entry);
        const QString what = point ? fill(QStringLiteral("%1 %2"), {codeOf(m_teams, *note.team), number(note.total)})
                                   : std::visit(What(m_teams), note.struck.entry);
        const QString struck = fill(Sheet::tr("%1 struck"), {what});
        const QString words = note.rally > 0 ? fill(Sheet::tr("Rally %1: %2"), {number(note.rally), struck}) : struck;
        return withReason(words, note.reason);
    }
    QString operator()(const OverruledNote& note) const {
        const QString what = std::visit(What(m_teams), note.recorded.entry);
        const QString words = fill(Sheet::tr("%1 on the referee’s word"), {what});
        return withReason(atScore(note.score, words), note.recorded.overruled.value_or(QString()));
    }
    QString operator()(const PenaltyNote& note) const {
        return withReason(atScore(note.score, What(m_teams)(note.point)), note.point.reason);
    }
    QString operator()(const PutInNote& note) const {
        const QString put = fill(Sheet::tr("%1 put in later"), {std::visit(What(m_teams), note.recorded.entry)});
        const QString words = note.rally > 0 ? fill(Sheet::tr("Rally %1: %2"), {number(note.rally), put}) : put;
        return withReason(words, note.recorded.placed ? note.recorded.placed->reason : QString());
    }
    QString operator()(const WrongServerNote& note) const {
        const QString team = codeOf(m_teams, note.ruling.team);
        const QString served = number(note.ruling.served.value);
        const QString who = note.right.isValid() ? fill(Sheet::tr("%1 wrong server, %2 for %3"),
                                                        {team, served, number(note.right.value)})
                                                 : fill(Sheet::tr("%1 wrong server, %2"), {team, served});
        return stopped(atScore(note.score, withTakenBack(who, note.takenBack)));
    }
    QString operator()(const EventNote& note) const {
        const QString what = withTakenBack(std::visit(What(m_teams), note.recorded.entry), note.takenBack);
        return withReason(atScore(note.score, what), std::visit(ReasonOf{}, note.recorded.entry));
    }
    QString operator()(const ReopenedNote& note) const {
        const QString words =
            fill(Sheet::tr("%1; the seal %2 is void"), {What(m_teams)(note.reopened), sealCode(note.digest)});
        return withReason(words, note.reopened.reason);
    }
    QString operator()(const WrittenNote& note) const { return stopped(atScore(note.score, note.text.trimmed())); }

private:
    const PerTeam<TeamName>& m_teams;
};

} // namespace

QString sentence(const SanctionLine& line, const PerTeam<TeamName>& teams) {
    const QString what = !line.level ? Sheet::tr("improper request")
                                     : std::visit(Overloaded{[](SanctionLevel level) { return levelWords(level); },
                                                             [](DelayLevel level) { return delayWords(level); }},
                                                  *line.level);
    QString words = fill(QStringLiteral("%1 %2"), {codeOf(teams, line.team), what});
    if (line.who)
        words = fill(Sheet::tr("%1, %2"), {words, memberWords(*line.who)});
    const QString score = scoreWords(line.score[line.team], line.score[opponentsOf(line.team)]);
    return withReason(fill(Sheet::tr("Sanction at %1: %2"), {score, words}), line.reason);
}

QString sentence(const Note& note, const PerTeam<TeamName>& teams) {
    return std::visit(Say(teams), note.content);
}

QString inFullWords(const QString& name) {
    return fill(Sheet::tr("In full: %1"), {name});
}

QString officialWords(const QString& role, const QString& name) {
    return fill(Sheet::tr("%1: %2"), {role, name});
}

QString olderWords(const PerTeam<TeamName>& teams, Team team, Slot slot, std::span<const Standing> older) {
    QStringList numbers;
    for (const Standing& standing : older)
        numbers += shirtWords(standing.number);
    return fill(Sheet::tr("%1 slot %2, after the starter: %3; then as in the slot."),
                {codeOf(teams, team), roman(slot), numbers.join(QStringLiteral(", "))});
}

} // namespace setfolio
