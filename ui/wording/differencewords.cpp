// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/differencewords.h"

#include "ui/wording/fill.h"
#include "ui/wording/markwords.h"
#include "ui/wording/names.h"
#include "ui/wording/sanctionwords.h"

#include <QCoreApplication>
#include <QStringList>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

struct Practice {
    Q_DECLARE_TR_FUNCTIONS(Practice)
};

QString nothing() {
    return Practice::tr("nothing");
}

QString shapeWords(const Mark& mark) {
    const QString letters = markLetters(mark.content);
    switch (mark.shape) {
    case MarkShape::None:
        return letters;
    case MarkShape::Ring:
        return letters.isEmpty() ? Practice::tr("an empty ring") : fill(Practice::tr("%1 in a ring"), {letters});
    case MarkShape::Triangle:
        return letters.isEmpty() ? Practice::tr("an empty triangle")
                                 : fill(Practice::tr("%1 in a triangle"), {letters});
    case MarkShape::Square:
        return fill(Practice::tr("%1 in a square"), {letters});
    }
    return letters;
}

QString markInWords(const std::optional<Mark>& mark) {
    if (!mark)
        return nothing();
    QString words = shapeWords(*mark);
    if (const QString numbers = markNumbers(mark->content); !numbers.isEmpty())
        words += u' ' + numbers;
    return mark->takenBack ? fill(Practice::tr("%1, taken back"), {words}) : words;
}

QString numbersInWords(const std::vector<ShirtNumber>& numbers) {
    QStringList words;
    for (const ShirtNumber number : numbers)
        words.append(shirtWords(number));
    return words.isEmpty() ? nothing() : words.join(u", "_s);
}

QString slotInWords(const std::optional<Slot>& slot) {
    return slot ? fill(Practice::tr("slot %1"), {roman(*slot)}) : nothing();
}

QString countedWords(Counted what) {
    switch (what) {
    case Counted::Points:
        return Practice::tr("points");
    case Counted::Substitutions:
        return Practice::tr("substitutions");
    case Counted::TimeOuts:
        return Practice::tr("time-outs");
    case Counted::LiberoReplacements:
        return Practice::tr("libero replacements");
    }
    return {};
}

QString sanctionInWords(const std::optional<SanctionLine>& line, const MatchState& state) {
    if (!line)
        return nothing();
    const QString who = line->who ? memberWords(*line->who) : Practice::tr("team");
    const QString level = !line->level ? improperWords()
                                       : std::visit(Overloaded{[](SanctionLevel given) { return levelWords(given); },
                                                               [](DelayLevel given) { return delayWords(given); }},
                                                    *line->level);
    const Team team = line->team;
    return fill(Practice::tr("%1, %2: %3 at %4\u2013%5"),
                {codeOf(state, team), who, level, QString::number(line->score[team]),
                 QString::number(line->score[opponentsOf(team)])});
}

class Words {
public:
    explicit Words(const MatchState& state) : m_state(state) {}

    DifferenceWords operator()(const MarkDiffers& mark) const {
        return {fill(Practice::tr("%1, slot %2, round %3"),
                     {codeOf(m_state, mark.team), roman(mark.slot), QString::number(mark.round)}),
                markInWords(mark.right), markInWords(mark.hers)};
    }
    DifferenceWords operator()(const SlotDiffers& slot) const {
        return {fill(Practice::tr("%1, numbers in slot %2"), {codeOf(m_state, slot.team), roman(slot.slot)}),
                numbersInWords(slot.right), numbersInWords(slot.hers)};
    }
    DifferenceWords operator()(const LiberoSlotDiffers& libero) const {
        return {fill(Practice::tr("%1, where the libero served"), {codeOf(m_state, libero.team)}),
                slotInWords(libero.right), slotInWords(libero.hers)};
    }
    DifferenceWords operator()(const CountDiffers& count) const {
        return {fill(Practice::tr("%1, %2"), {codeOf(m_state, count.team), countedWords(count.what)}),
                QString::number(count.right), QString::number(count.hers)};
    }
    DifferenceWords operator()(const SanctionDiffers& sanction) const {
        return {Practice::tr("Sanctions"), sanctionInWords(sanction.right, m_state),
                sanctionInWords(sanction.hers, m_state)};
    }

private:
    const MatchState& m_state;
};

} // namespace

DifferenceWords wordsFor(const Difference& difference, const MatchState& state) {
    return std::visit(Words(state), difference);
}

QString resultOfPractice(const MarksRight& marks, std::size_t differences) {
    if (differences == 0)
        return fill(Practice::tr("Your sheet is as it should be: all %1 marks are right."),
                    {QString::number(marks.of)});
    const QString count =
        fill(Practice::tr("%1 of %2 marks are right."), {QString::number(marks.right), QString::number(marks.of)});
    return count + u' ' +
           Practice::tr("The first line is where the two sheets part; what comes after may only follow from it.");
}

} // namespace setfolio
