// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/notewords.h"

#include "ui/wording/fill.h"
#include "ui/wording/names.h"

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
        return name.code;
    if (!name.name.isEmpty())
        return name.name;
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
    QString operator()(const Toss&) const { return Sheet::tr("Toss"); }
    QString operator()(const LineUp& lineUp) const { return fill(Sheet::tr("%1 line-up"), {code(lineUp.team)}); }
    QString operator()(const SetStarted&) const { return Sheet::tr("Start of the set"); }
    QString operator()(const SetEnded&) const { return Sheet::tr("End of the set"); }
    QString operator()(const ServeContacted&) const { return Sheet::tr("Serve contacted"); }
    QString operator()(const RallyWon& rally) const { return fill(Sheet::tr("Rally won by %1"), {code(rally.by)}); }
    QString operator()(const Replay& replay) const {
        return replay.again == Again::Replay ? Sheet::tr("Replay") : Sheet::tr("Re-serve");
    }
    QString operator()(const NoServe&) const { return Sheet::tr("Rally lost without a serve"); }
    QString operator()(const Substitution& s) const {
        return fill(Sheet::tr("%1 substitution %2 for %3"), {code(s.team), number(s.in.value), number(s.out.value)});
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

private:
    [[nodiscard]] QString code(Team team) const { return codeOf(m_teams, team); }

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
    QString operator()(const WrittenNote& note) const { return stopped(atScore(note.score, note.text.trimmed())); }

private:
    const PerTeam<TeamName>& m_teams;
};

} // namespace

QString sentence(const Note& note, const PerTeam<TeamName>& teams) {
    return std::visit(Say(teams), note.content);
}

} // namespace setfolio
