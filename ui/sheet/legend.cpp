// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/scene.h"

#include "ui/sheet/term.h"
#include "ui/wording/markwords.h"

#include <algorithm>

namespace setfolio::sheet {

namespace {

constexpr Tag legend{Zone::Legend, ItemRole::LegendText, {}, {}};
constexpr double ringDiameter = 3.7;
constexpr double lineFactor = 0.72;
constexpr double sampleGap = 0.9; ///< between a sample and what it means

/// A mark and what it means.
struct Entry {
    enum class Kind : std::uint8_t {
        Number,
        Word,
        Change,
        Ring,
        Triangle,
        Square,
        StruckRing,
        CrossedRing,
        Slash,
        Exit,
        Bar,
        Cross
    };
    Kind kind = Kind::Number;
    QString content;
    QString meaning;
    QString letter = {};   ///< before the content of a substitution
    bool tellsInk = false; ///< which rounds are written so
    Ink ink = Ink::First;
};

/// Which marks stand on the sheet.
struct Occurring {
    bool all = false; ///< the set goes on, perhaps by pen: every mark may be needed
    bool exits = false, again = false, triangle = false, square = false, penalty = false, struck = false,
         takenBack = false;
    bool change = false, opponentsChange = false, timeOut = false, opponentsTimeOut = false, crossed = false;

    void note(const Mark& mark) {
        exits |= std::holds_alternative<ExitScore>(mark.content);
        again |= std::holds_alternative<ServedAgain>(mark.content);
        penalty |= std::holds_alternative<PenaltyLetter>(mark.content);
        triangle |= mark.shape == MarkShape::Triangle;
        square |= mark.shape == MarkShape::Square;
        struck |= mark.struck;
        takenBack |= mark.takenBack;
        if (const auto* substitution = std::get_if<SubstitutionMark>(&mark.content))
            (substitution->opponents ? opponentsChange : change) = true;
        if (const auto* taken = std::get_if<TimeOutMark>(&mark.content))
            (taken->opponents ? opponentsTimeOut : timeOut) = true;
    }
};

Occurring occurringIn(const Scene& scene) {
    Occurring found;
    found.all = !scene.isOver();
    for (const Team team : bothTeams)
        for (const Term& term : scene.team(team).terms) {
            found.crossed |= term.crossed;
            for (const Mark& mark : term.marks)
                found.note(mark);
        }
    return found;
}

/// Gathers what is explained.
class Entries {
public:
    explicit Entries(const Scene& scene) : m_rulebook(scene.heading.opened.rulebook), m_on(occurringIn(scene)) {}

    std::vector<Entry> gather(int inks) {
        addMarks();
        addWords();
        for (int ink = 0; ink < inks && inks > 1; ++ink)
            m_entries.push_back({.kind = Entry::Kind::Ring,
                                 .content = QString::number(ink + 1),
                                 .meaning = inkWords(static_cast<Ink>(ink), inks),
                                 .tellsInk = true,
                                 .ink = static_cast<Ink>(ink)});
        const bool slashed = m_rulebook.runningMark == OwnPointMark::Slashed;
        add(true, Entry::Kind::Slash, QStringLiteral("6"), slashed ? SheetLabel::Won : SheetLabel::WonOnOpponentsServe);
        add(!m_on.all, Entry::Kind::Bar, {}, SheetLabel::EndOfSet);
        return std::move(m_entries);
    }

private:
    void add(bool wanted, Entry::Kind kind, const QString& content, SheetLabel label) {
        if (wanted)
            m_entries.push_back({.kind = kind, .content = content, .meaning = words(label)});
    }
    void addChange(bool wanted, bool opponents, QString content, SheetLabel label) {
        if (wanted)
            m_entries.push_back({.kind = Entry::Kind::Change,
                                 .content = std::move(content),
                                 .meaning = words(label),
                                 .letter = markLetters(SubstitutionMark{opponents, {}, {}, {}})});
    }
    void addMarks() {
        using Kind = Entry::Kind;
        add(true, Kind::Number, QStringLiteral("7"), SheetLabel::OpeningPoint);
        add(true, Kind::Ring, QStringLiteral("8"), SheetLabel::PointOnServe);
        add(true, Kind::Ring, markLetters(RallyLost()), SheetLabel::RallyLost);
        add((m_on.all && m_rulebook.exitScores) || m_on.exits, Kind::Exit, QStringLiteral("8"),
            SheetLabel::LossOfServe);
        add(m_on.all || m_on.again, Kind::Ring, markLetters(ServedAgain()), SheetLabel::ServedAgain);
        add(m_on.all || m_on.triangle, Kind::Triangle, QStringLiteral("9"), SheetLabel::LiberoServes);
        add(m_on.all || m_on.square, Kind::Square, QStringLiteral("10"), SheetLabel::NoServe);
        add(m_on.all || m_on.penalty, Kind::Word, markLetters(PenaltyLetter()), SheetLabel::PenaltyPoint);
        add(m_on.all || m_on.struck, Kind::StruckRing, QStringLiteral("9"), SheetLabel::Struck);
        add(m_on.takenBack, Kind::CrossedRing, QStringLiteral("9"), SheetLabel::TakenBack);
        add(m_on.crossed, Kind::Cross, {}, SheetLabel::Passed);
    }
    void addWords() {
        using Kind = Entry::Kind;
        const bool scored = m_rulebook.substitutionScored;
        addChange(m_on.all || m_on.change, false, scored ? QStringLiteral("10/7 12–9") : QStringLiteral("10/7"),
                  scored ? SheetLabel::ScoredSubstitution : SheetLabel::Substitution);
        addChange(m_on.all || m_on.opponentsChange, true, QStringLiteral("4/12"), SheetLabel::OpponentsSubstitution);
        add(m_on.all || m_on.timeOut, Kind::Word, markLetters(TimeOutMark{false}), SheetLabel::TimeOut);
        add(m_on.all || m_on.opponentsTimeOut, Kind::Word, markLetters(TimeOutMark{true}),
            SheetLabel::OpponentsTimeOut);
        add(m_rulebook.captainMark == CaptainMark::RingedNumber, Kind::Ring, QStringLiteral("5"),
            SheetLabel::CaptainRinged);
    }

    const Rulebook& m_rulebook;
    Occurring m_on;
    std::vector<Entry> m_entries;
};

class LegendPen {
public:
    LegendPen(Draft& draft, InkSet inks) : m_draft(draft), m_inks(inks) {}

    void write(const std::vector<Entry>& entries);

private:
    using Rows = std::vector<std::vector<const Entry*>>;

    [[nodiscard]] const InkStyle& inkOf(const Entry& entry) const { return styleOf(entry.ink, m_inks); }
    [[nodiscard]] TextStyle meaningStyle(const Entry& entry) const {
        return entry.tellsInk ? TextStyle{6.1, FontWeight::Medium, inkOf(entry).colour}
                              : TextStyle{6.1, FontWeight::Regular, label};
    }
    [[nodiscard]] double sampleWidth(const Entry& entry) const;
    [[nodiscard]] double meaningWidth(const Entry& entry, double most) const {
        return std::min(most, m_draft.width(entry.meaning, meaningStyle(entry)));
    }
    [[nodiscard]] Rows rowsWith(const std::vector<Entry>& entries, double gap, double mostMeaning) const;
    void sample(const Entry& entry, double left, double centre);
    void digits(QPointF middle, const Entry& entry, FontWeight weight);
    void ring(const Entry& entry, QPointF middle);
    void change(const Entry& entry, double left, double centre);

    Draft& m_draft;
    InkSet m_inks;
};

constexpr TextStyle bold{6, FontWeight::Bold};
constexpr TextStyle medium{6, FontWeight::Medium};

double LegendPen::sampleWidth(const Entry& entry) const {
    switch (entry.kind) {
    case Entry::Kind::Number:
    case Entry::Kind::Word:
    case Entry::Kind::Exit:
        return m_draft.width(entry.content, bold.sized(6.6));
    case Entry::Kind::Change:
        return m_draft.width(entry.letter, bold) + 0.6 + m_draft.width(entry.content, medium);
    case Entry::Kind::Ring:
    case Entry::Kind::CrossedRing:
    case Entry::Kind::Square:
        return ringDiameter;
    case Entry::Kind::StruckRing:
        return ringDiameter + 0.9;
    case Entry::Kind::Triangle:
        return 6.6;
    case Entry::Kind::Slash:
        return 3.4;
    case Entry::Kind::Bar:
        return 1.4;
    case Entry::Kind::Cross:
        return 3;
    }
    Q_UNREACHABLE();
}

void LegendPen::digits(QPointF middle, const Entry& entry, FontWeight weight) {
    m_draft.textAt(legend.as(ItemRole::LegendContent), middle, entry.content,
                   {6, weight, inkOf(entry).colour, TextAlign::Centre});
}

void LegendPen::ring(const Entry& entry, QPointF middle) {
    const InkStyle& ink = inkOf(entry);
    const double width = lineFactor * ink.line;
    const double radius = (ringDiameter - width) / 2;
    m_draft.ring(legend.as(ItemRole::LegendMark), middle, radius, strokeRound(ink, width, radius, 1.2));
    digits(middle, entry, entry.ink == Ink::First ? FontWeight::Medium : FontWeight::SemiBold);
}

void LegendPen::change(const Entry& entry, double left, double centre) {
    const Tag tag = legend.as(ItemRole::LegendContent);
    m_draft.textAt(tag, {left, centre}, entry.letter, bold);
    m_draft.textAt(tag, {left + sampleWidth(entry), centre}, entry.content, medium.fromRight());
}

void LegendPen::sample(const Entry& entry, double left, double centre) {
    const InkStyle& ink = inkOf(entry);
    const Tag mark = legend.as(ItemRole::LegendMark);
    const Tag strike = legend.as(ItemRole::LegendStrike);
    const double width = sampleWidth(entry);
    const QPointF middle(left + width / 2, centre);
    const double line = lineFactor * ink.line;
    switch (entry.kind) {
    case Entry::Kind::Number:
    case Entry::Kind::Word:
    case Entry::Kind::Exit:
        if (entry.kind == Entry::Kind::Exit)
            m_draft.ruleAcross(strike, left - 0.2, left + width + 0.2, centre + 1.2, 0.25, soot);
        m_draft.textAt(legend.as(ItemRole::LegendContent), {left, centre}, entry.content, bold.sized(6.6));
        return;
    case Entry::Kind::Change:
        return change(entry, left, centre);
    case Entry::Kind::Ring:
        return ring(entry, middle);
    case Entry::Kind::StruckRing:
        ring(entry, middle);
        return drawStrike(m_draft, strike, left, left + width, centre, 0.74, 0.3, soot);
    case Entry::Kind::CrossedRing:
        ring(entry, middle);
        m_draft.line(strike, middle + QPointF(-1.7, -1.7), middle + QPointF(1.7, 1.7), {soot, 0.26, {}, true});
        return m_draft.line(strike, middle + QPointF(-1.7, 1.7), middle + QPointF(1.7, -1.7), {soot, 0.26, {}, true});
    case Entry::Kind::Triangle: {
        const QPointF bottom = middle + QPointF(0, 1.95);
        m_draft.polygon(mark, triangleWithin(bottom, 6.6, 3.9, line), ink, line, 1.2);
        return digits(bottom - QPointF(0, line + 0.3 + halfCap(6)), entry, FontWeight::Medium);
    }
    case Entry::Kind::Square: {
        const double half = (ringDiameter * 0.96 - line) / 2;
        const QRectF box(middle - QPointF(half, half), middle + QPointF(half, half));
        m_draft.polygon(mark, {{box.topLeft(), box.topRight(), box.bottomRight(), box.bottomLeft()}}, ink, line, 1.2);
        return digits(middle, entry, FontWeight::Medium);
    }
    case Entry::Kind::Slash:
        m_draft.textAt(legend.as(ItemRole::LegendContent), middle, entry.content,
                       {6.5, FontWeight::Medium, soot, TextAlign::Centre});
        return m_draft.line(strike, middle + QPointF(-1.7, 1.6), middle + QPointF(1.7, -1.6), {soot, 0.24, {}, false});
    case Entry::Kind::Bar:
        m_draft.ruleDown(mark, left + 0.1, centre - 1.6, centre + 1.6, 0.2, soot);
        return m_draft.ruleDown(mark, left + 0.85, centre - 1.6, centre + 1.6, 0.6, soot);
    case Entry::Kind::Cross:
        m_draft.line(mark, middle + QPointF(-1.3, -1.3), middle + QPointF(1.3, 1.3), {soot, 0.26, {}, true});
        return m_draft.line(mark, middle + QPointF(-1.3, 1.3), middle + QPointF(1.3, -1.3), {soot, 0.26, {}, true});
    }
}

LegendPen::Rows LegendPen::rowsWith(const std::vector<Entry>& entries, double gap, double mostMeaning) const {
    Rows rows(1);
    double x = 0;
    for (const Entry& entry : entries) {
        const double width = sampleWidth(entry) + sampleGap + meaningWidth(entry, mostMeaning);
        if (!rows.back().empty() && x + gap + width > mainRight) {
            rows.emplace_back();
            x = 0;
        }
        x += (rows.back().empty() ? 0 : gap) + width;
        rows.back().push_back(&entry);
    }
    return rows;
}

void LegendPen::write(const std::vector<Entry>& entries) {
    double gap = 5.5, mostMeaning = 60;
    Rows rows = rowsWith(entries, gap, mostMeaning);
    for (; rows.size() > 2 && mostMeaning > 5; rows = rowsWith(entries, gap, mostMeaning))
        (gap > 2.6 ? gap : mostMeaning) -= 0.5; // first closer together, then what it means is cut short
    double centre = legendTop + 2.5;
    for (const std::vector<const Entry*>& row : rows) {
        double x = 0;
        for (const Entry* entry : row) {
            sample(*entry, x, centre);
            x += sampleWidth(*entry) + sampleGap;
            const double width = meaningWidth(*entry, mostMeaning);
            const TextStyle style = meaningStyle(*entry);
            m_draft.textAt(legend, {x, centre}, shortened(m_draft, entry->meaning, style, width), style);
            x += width + gap;
        }
        centre += 4;
    }
}

} // namespace

void drawLegend(Draft& draft, const Scene& scene) {
    draft.ruleAcross(legend.as(ItemRole::Rule), 0, mainRight, legendTop, 0.2, rule);
    LegendPen(draft, scene.options.inks).write(Entries(scene).gather(scene.set.inks));
}

} // namespace setfolio::sheet
