// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/reviewwords.h"

#include "ui/wording/fill.h"
#include "ui/wording/findingwords.h"
#include "ui/wording/names.h"
#include "ui/wording/notewords.h"

#include <QCoreApplication>

namespace setfolio {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(setfolio::ReviewWords)
};

using Kind = ReviewLine::Kind;

QString number(int value) {
    return QString::number(value);
}

/// "14–10", the first listed first.
QString scoreOf(int first, int second) {
    return number(first) + u'–' + number(second);
}

/// Writes the lines of one review.
class Lines {
public:
    explicit Lines(const MatchState& state) : m_state(state) {}

    void add(const SetReview& set);
    void addFindings(const std::vector<EntryFinding>& open, const std::vector<EntryFinding>& overruled);
    void heading(const QString& words) { m_lines.push_back({Kind::Heading, words, {}, m_sheet}); }
    std::vector<ReviewLine> take() { return std::move(m_lines); }

private:
    [[nodiscard]] QString code(Team team) const { return codeOf(m_state, team); }
    [[nodiscard]] const PerTeam<TeamName>& teams() const { return m_state.opened->teams; }

    void line(const QString& words, EntryNumber entry, Kind kind = Kind::Fact) {
        m_lines.push_back({kind, words, entry, m_sheet});
    }
    /// A heading over what `write` writes, or one that says there is nothing of it.
    template <typename Write>
    void part(const QString& some, const QString& none, const Write& write) {
        const std::size_t place = m_lines.size();
        heading(some);
        write();
        if (m_lines.size() == place + 1)
            m_lines[place].words = none;
    }

    void takenBack(const SetReview& set);
    void corrections(const SetReview& set);
    void sanctions(const SetReview& set);
    void service(const SetReview& set);
    void substitutions(const SetReview& set);
    void timeOuts(const SetReview& set);
    void remarks(const SetReview& set);

    const MatchState& m_state;
    std::size_t m_sheet = 0;
    std::vector<ReviewLine> m_lines;
};

void Lines::add(const SetReview& set) {
    m_sheet = set.sheet;
    addFindings(set.open, set.overruled);
    takenBack(set);
    corrections(set);
    sanctions(set);
    service(set);
    substitutions(set);
    timeOuts(set);
    remarks(set);
}

void Lines::addFindings(const std::vector<EntryFinding>& open, const std::vector<EntryFinding>& overruled) {
    part(Say::tr("Against the rulebook, and let stand by nobody"), Say::tr("Nothing is open against the rulebook"),
         [&] {
             for (const EntryFinding& found : open)
                 line(sentence(found.finding, m_state), found.entry, Kind::Attention);
         });
    part(Say::tr("Let stand on the referee's word"), Say::tr("Nothing was let stand against the rulebook"), [&] {
        for (const EntryFinding& found : overruled)
            line(fill(Say::tr("%1 Reason: %2."),
                      {sentence(found.finding, m_state), found.overruled.value_or(QString()).simplified()}),
                 found.entry, Kind::Attention);
    });
}

void Lines::takenBack(const SetReview& set) {
    part(Say::tr("Points taken back"), Say::tr("No points were taken back"), [&] {
        for (const Team team : bothTeams)
            for (const RunningPoint& point : set.teams[team].takenBack)
                line(fill(Say::tr("%1: point %2"), {code(team), number(point.total)}), point.entry, Kind::Attention);
    });
}

void Lines::corrections(const SetReview& set) {
    part(Say::tr("Corrections"), Say::tr("Nothing was corrected"), [&] {
        for (const Note& note : set.corrections)
            line(sentence(note, teams()), note.entry);
    });
}

void Lines::sanctions(const SetReview& set) {
    part(Say::tr("Sanctions"), Say::tr("No sanctions"), [&] {
        for (const SanctionLine& sanction : set.sanctions) {
            const QString words = sentence(sanction, teams());
            line(sanction.struck ? fill(Say::tr("%1 Struck."), {words}) : words, sanction.entry);
        }
    });
}

/// "I 4, 10   II 7": who has stood in each slot, the newest last; then the libero's slot.
void Lines::service(const SetReview& set) {
    heading(Say::tr("Order of service"));
    for (const Team team : bothTeams) {
        const TeamReview& review = set.teams[team];
        QStringList places;
        for (const Slot slot : allSlots) {
            QStringList stood;
            for (const Standing& standing : review.slots[slot.index()])
                stood += standing.number.isValid() ? number(standing.number.value) : Say::tr("vacant");
            places += roman(slot) + u' ' + stood.join(QStringLiteral(", "));
        }
        line(fill(Say::tr("%1: %2"), {code(team), places.join(QStringLiteral("   "))}), review.lineUp);
        if (review.libero)
            line(fill(Say::tr("%1: libero %2 has served in slot %3"),
                      {code(team), number(review.libero->libero.value), roman(review.libero->slot)}),
                 review.libero->entry);
    }
}

void Lines::substitutions(const SetReview& set) {
    part(Say::tr("Substitutions"), Say::tr("No substitutions"), [&] {
        for (const Team team : bothTeams)
            for (const ReviewedSubstitution& made : set.teams[team].substitutions) {
                const bool regular = made.kind == SubstitutionKind::Regular;
                line(fill(regular ? Say::tr("%1: %2 for %3, at %4") : Say::tr("%1: %2 for %3, at %4, exceptional"),
                          {code(team), number(made.in.value), number(made.out.value),
                           scoreOf(made.score[team], made.score[opponentsOf(team)])}),
                     made.entry);
            }
    });
}

void Lines::timeOuts(const SetReview& set) {
    part(Say::tr("Time-outs"), Say::tr("No time-outs"), [&] {
        for (const Team team : bothTeams)
            for (const TimeOutTaken& taken : set.teams[team].timeOuts)
                line(fill(Say::tr("%1: at %2"), {code(team), scoreOf(taken.own, taken.opponents)}), taken.entry);
    });
}

void Lines::remarks(const SetReview& set) {
    part(Say::tr("Remarks"), Say::tr("No other remarks"), [&] {
        for (const Note& note : set.remarks) {
            const QString words = sentence(note, teams());
            line(note.struck ? fill(Say::tr("%1 Struck."), {words}) : words, note.entry);
        }
    });
}

QString headingOf(const SetReview& set, const MatchState& state) {
    const QString score = scoreOf(set.score.home, set.score.visitors);
    if (set.cancelled)
        return fill(Say::tr("Set %1, cancelled at %2"), {number(set.number), score});
    if (!set.result)
        return fill(Say::tr("Set %1, not decided, %2"), {number(set.number), score});
    return fill(Say::tr("Set %1: %2, won by %3"), {number(set.number), score, codeOf(state, set.result->winner)});
}

} // namespace

QString winnerWords(const SignOffReview& review, const MatchState& state) {
    if (!review.set)
        return review.winner ? fill(Say::tr("%1 wins the match"), {codeOf(state, *review.winner)}) : QString();
    if (review.sets.empty() || !review.sets.back().result)
        return {};
    return fill(Say::tr("%1 wins set %2"), {codeOf(state, review.sets.back().result->winner), number(*review.set)});
}

std::vector<ReviewLine> linesOf(const SignOffReview& review, const MatchState& state) {
    Lines lines(state);
    if (!review.set && !(review.open.empty() && review.overruled.empty())) {
        lines.heading(Say::tr("Before the sets"));
        lines.addFindings(review.open, review.overruled);
    }
    for (const SetReview& set : review.sets) {
        if (review.sets.size() > 1 || !review.set)
            lines.heading(headingOf(set, state));
        lines.add(set);
    }
    return lines.take();
}

} // namespace setfolio
