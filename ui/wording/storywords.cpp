// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/storywords.h"

#include "core/match/fold.h"
#include "ui/wording/fill.h"
#include "ui/wording/names.h"
#include "ui/wording/sanctionwords.h"

#include <QCoreApplication>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

struct Practice {
    Q_DECLARE_TR_FUNCTIONS(Practice)
};

QString number(ShirtNumber number) {
    return QString::number(number.value);
}

/// Each kind of entry is one overload: what of it can be seen or heard. Empty for what the table alone knows.
class Told {
public:
    explicit Told(const StoryStep& step) : m_step(step), m_state(step.before) {}

    QString operator()(const MatchOpened&) const { return {}; }
    QString operator()(const Roster&) const { return {}; }
    QString operator()(const Officials&) const { return {}; }
    QString operator()(const Toss&) const { return {}; }
    QString operator()(const LineUp& lineUp) const {
        return with(Practice::tr("The coach of %1 hands in a line-up."), lineUp.team);
    }
    QString operator()(const MatchClosed&) const { return Practice::tr("The match is over."); }
    QString operator()(const Forfeit& forfeit) const {
        return with(forfeit.earlier ? Practice::tr("%1 loses a set that has ended.")
                                    : Practice::tr("%1 cannot play on."),
                    forfeit.by);
    }
    QString operator()(const Suspended&) const { return Practice::tr("Play is suspended."); }
    QString operator()(const Resumed&) const { return Practice::tr("Play is resumed."); }
    QString operator()(const SetStarted& started) const {
        return fill(Practice::tr("%1 by the clock on the wall: the first referee whistles, the set begins."),
                    {started.at.toString(u"HH:mm"_s)});
    }
    QString operator()(const SetEnded& ended) const {
        return fill(Practice::tr("The second referee confirms that the set is over. The clock says %1."),
                    {ended.at.toString(u"HH:mm"_s)});
    }
    QString operator()(const SidesChanged&) const { return Practice::tr("The teams change sides."); }
    QString operator()(const ServeContacted&) const {
        return fill(Practice::tr("Number %1 of %2 serves."), {number(m_step.server), code(serving())});
    }
    QString operator()(const RallyWon& rally) const;
    QString operator()(const Replay& replay) const;
    QString operator()(const NoServe&) const;
    QString operator()(const ServerSeen& seen) const {
        return fill(Practice::tr("Number %1 goes to the service line."), {number(seen.number)});
    }
    QString operator()(const WrongServer& ruling) const;
    QString operator()(const IllegalPlayer& ruling) const {
        return fill(Practice::tr("The second referee rules: number %1 of %2 had no right to be on court."),
                    {number(ruling.number), code(ruling.team)});
    }
    QString operator()(const Substitution& substitution) const;
    QString operator()(const PlaceVacated& vacated) const {
        return fill(Practice::tr("Number %1 of %2 leaves the court, and nobody comes in for her."),
                    {number(vacated.out), code(vacated.team)});
    }
    QString operator()(const TimeOut& timeOut) const {
        return with(Practice::tr("%1 takes a time-out."), timeOut.team);
    }
    QString operator()(const LiberoServe& serve) const;
    QString operator()(const LiberoIn& in) const {
        return fill(Practice::tr("%1: libero %2 runs in, number %3 runs out."),
                    {code(in.team), number(in.libero), number(in.replaced)});
    }
    QString operator()(const LiberoOut& out) const {
        return fill(Practice::tr("%1: libero %2 runs out, and the player she stood in for comes back."),
                    {code(out.team), number(out.libero)});
    }
    QString operator()(const LiberoExchange& exchange) const {
        return fill(Practice::tr("%1: libero %2 runs in, libero %3 runs out."),
                    {code(exchange.team), number(exchange.in), number(exchange.out)});
    }
    QString operator()(const LiberoRedesignated& redesignated) const;
    QString operator()(const LateReplacement& late) const {
        return with(Practice::tr("A libero of %1 changes places after the whistle. The referee lets it pass, once."),
                    late.team);
    }
    QString operator()(const CaptainNamed& named) const {
        return fill(Practice::tr("%1 names number %2 as its captain."), {code(named.team), number(named.captain)});
    }
    QString operator()(const Sanction& sanction) const;
    QString operator()(const DelaySanction& sanction) const;
    QString operator()(const ImproperRequest& request) const {
        return with(Practice::tr("%1 makes a request that is not granted: improper, the second referee says."),
                    request.team);
    }
    QString operator()(const SheetCompared&) const { return {}; }
    QString operator()(const PenaltyPoint& penalty) const {
        return with(Practice::tr("The first referee gives %1 a penalty point."), penalty.to);
    }
    QString operator()(const Remark& remark) const {
        return fill(Practice::tr("The second referee asks for a remark: \u201c%1\u201d"), {remark.text});
    }
    QString operator()(const Signed&) const { return {}; }
    QString operator()(const LeftUnsigned&) const { return {}; }
    QString operator()(const Sealed&) const { return {}; }
    QString operator()(const Reopened&) const { return Practice::tr("The referees open the set again."); }
    QString operator()(const Strike&) const {
        return Practice::tr("The referees confer and change their last call: that rally goes the other way.");
    }

private:
    [[nodiscard]] QString code(Team team) const { return codeOf(m_state, team); }
    [[nodiscard]] Team serving() const { return m_state.set().serving; }
    [[nodiscard]] QString with(const QString& pattern, Team team) const { return fill(pattern, {code(team)}); }

    const StoryStep& m_step;
    const MatchState& m_state;
};

/// The same thing told in more than one way, so that it is listened to.
QString Told::operator()(const RallyWon& rally) const {
    const std::array<QString, 3> ways{Practice::tr("The referee's arm points to %1: they win the rally."),
                                      Practice::tr("The ball is down. The rally goes to %1."),
                                      Practice::tr("A long rally, and %1 wins it.")};
    return with(ways[m_step.told.number.value % ways.size()], rally.by);
}

QString Told::operator()(const Replay& replay) const {
    return replay.again == Again::Replay ? Practice::tr("A ball rolls onto the court: the rally is replayed.")
                                         : Practice::tr("She catches her toss. The referee lets her serve again.");
}

QString Told::operator()(const NoServe&) const {
    return with(Practice::tr("The time to serve has run out, and nobody has hit the ball: it is a fault of %1."),
                serving());
}

QString Told::operator()(const WrongServer& ruling) const {
    const QString found = fill(Practice::tr("The second referee rules: number %1 of %2 was not the one to serve. The "
                                            "point and the serve go to %3."),
                               {number(ruling.served), code(ruling.team), code(opponentsOf(ruling.team))});
    return ruling.takenBackFrom ? found + u' ' + Practice::tr("The points that she won at serve are taken back.")
                                : found;
}

QString Told::operator()(const Substitution& substitution) const {
    const QString pattern =
        substitution.kind == SubstitutionKind::Regular
            ? Practice::tr("%1 asks for a substitution: number %2 in, number %3 out.")
            : Practice::tr("%1 has a player hurt, number %3, and nobody left who may lawfully replace her: number %2 "
                           "comes in.");
    return fill(pattern, {code(substitution.team), number(substitution.in), number(substitution.out)});
}

QString Told::operator()(const LiberoServe& serve) const {
    const QString pattern = serve.serving == LiberoServing::Begins
                                ? Practice::tr("%1: libero %2 goes to the service line.")
                                : Practice::tr("%1: libero %2 leaves the service line.");
    return fill(pattern, {code(serve.team), number(serve.libero)});
}

QString Told::operator()(const LiberoRedesignated& redesignated) const {
    if (!redesignated.libero)
        return fill(Practice::tr("Libero %1 of %2 cannot play on."),
                    {number(redesignated.former), code(redesignated.team)});
    return fill(Practice::tr("Libero %1 of %2 cannot play on; number %3 is libero from now on."),
                {number(redesignated.former), code(redesignated.team), number(*redesignated.libero)});
}

QString Told::operator()(const Sanction& sanction) const {
    const QString pattern = std::holds_alternative<ShirtNumber>(sanction.who)
                                ? Practice::tr("The first referee shows number %1 of %2 a card: %3.")
                                : Practice::tr("The first referee shows a card to %2 (%1): %3.");
    return fill(pattern, {memberWords(sanction.who), code(sanction.team), levelWords(sanction.level)});
}

QString Told::operator()(const DelaySanction& sanction) const {
    return fill(Practice::tr("%1 is slow to take the court. The first referee shows a card on the wrist: %2."),
                {code(sanction.team), delayWords(sanction.level)});
}

QString positions(const std::array<ShirtNumber, 6>& six) {
    QStringList words;
    for (std::size_t index = 0; index < six.size(); ++index)
        words.append(fill(Practice::tr("%1: %2", "a court position and the number that stands there"),
                          {QString::number(index + 1), number(six[index])}));
    return words.join(u", "_s);
}

} // namespace

QString storyTitle(const QString& id) {
    if (id == u"1-plain-set")
        return Practice::tr("A plain set");
    if (id == u"2-substitutions")
        return Practice::tr("Substitutions");
    if (id == u"3-libero-serves")
        return Practice::tr("A libero who serves");
    if (id == u"4-wrong-server")
        return Practice::tr("A wrong server");
    if (id == u"5-corrected-call")
        return Practice::tr("Corrected calls and cards");
    return id;
}

QString storyAbout(const QString& id) {
    if (id == u"1-plain-set")
        return Practice::tr("Serves, rallies and time-outs.");
    if (id == u"2-substitutions")
        return Practice::tr("Players come in to serve and go out again; a serve is taken again.");
    if (id == u"3-libero-serves")
        return Practice::tr("Liberos come and go and take one turn at serve; a rally is replayed.");
    if (id == u"4-wrong-server")
        return Practice::tr("Watch the numbers at the service line: one of them should not be there. A delay.");
    if (id == u"5-corrected-call")
        return Practice::tr("The referees change a call, twice; a coach is shown cards; liberos and substitutions.");
    return {};
}

QString storySentence(const StoryStep& step) {
    return std::visit(Told(step), step.told.entry);
}

QStringList storyGiven(const MatchState& state) {
    const SetState& set = state.set();
    QStringList given;
    if (set.servesFirst && set.left)
        given.append(fill(Practice::tr("%1 serves first. %2 stands on the left of the table."),
                          {codeOf(state, *set.servesFirst), codeOf(state, *set.left)}));
    for (const Team team : bothTeams)
        if (const auto& lineUp = set.teams[team].lineUp)
            given.append(
                fill(Practice::tr("%1 by court position: %2."), {codeOf(state, team), positions(lineUp->positions)}));
    return given;
}

StoryText storyTextOf(const Story& story) {
    const MatchState state = fold(story.given);
    StoryText text{storyTitle(story.id), storyAbout(story.id), {}, storyGiven(state), {}};
    const PerTeam<TeamName>& teams = state.opened->teams;
    text.teams =
        u"%1 (%2) \u2013 %3 (%4)"_s.arg(teams.home.name, teams.home.code, teams.visitors.name, teams.visitors.code);
    for (const StoryStep& step : story.steps)
        text.told.append(storySentence(step));
    return text;
}

} // namespace setfolio
