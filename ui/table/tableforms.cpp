// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/tableforms.h"

#include "core/rules/taking.h"
#include "core/rules/ways.h"
#include "ui/table/bench.h"
#include "ui/table/deckview.h"
#include "ui/wording/barwords.h"
#include "ui/wording/entrywords.h"
#include "ui/wording/fill.h"
#include "ui/wording/names.h"

#include <QCoreApplication>

#include <array>

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

Option teamOption(const MatchState& state, Side side) {
    const bool left = side == Side::Left;
    return {codeOf(state, teamOn(state, side)), left ? Table::tr("left side") : Table::tr("right side"),
            left ? Qt::Key_F : Qt::Key_J};
}

enum class Loss { AllSets, RestOfMatch, RestOfSet, EarlierSet };

std::vector<int> endedSets(const MatchState& state) {
    std::vector<int> numbers;
    for (const SetState& set : state.sets)
        if (set.ended && !set.cancelled)
            numbers.push_back(set.number);
    return numbers;
}

/// What can be lost; of a match that is won an earlier set alone.
std::vector<Loss> lossesIn(const MatchState& state) {
    if (endedSets(state).empty())
        return {Loss::AllSets, Loss::RestOfMatch, Loss::RestOfSet};
    if (phaseOf(state) == Phase::MatchWon)
        return {Loss::EarlierSet};
    return {Loss::AllSets, Loss::RestOfMatch, Loss::RestOfSet, Loss::EarlierSet};
}

std::optional<Loss> lossOf(const MatchState& state, const FormAnswers& answers) {
    const std::vector<Loss> losses = lossesIn(state);
    return answers.second < 0 ? std::nullopt : std::optional(losses.at(static_cast<std::size_t>(answers.second)));
}

Option lossOption(Loss loss) {
    switch (loss) {
    case Loss::AllSets:
        return {Table::tr("All sets"), Table::tr("does not come, or refuses"), Qt::Key_A};
    case Loss::RestOfMatch:
        return {Table::tr("The match"), Table::tr("cannot play on"), Qt::Key_M};
    case Loss::RestOfSet:
        return {Table::tr("This set"), Table::tr("cannot play on"), Qt::Key_T};
    case Loss::EarlierSet:
        return {Table::tr("An earlier set"), Table::tr("has no right to it"), Qt::Key_E};
    }
    return {};
}

std::optional<Forfeit> forfeitOf(const MatchState& state, const FormAnswers& answers) {
    const std::optional<Loss> loss = lossOf(state, answers);
    if (answers.first < 0 || !loss)
        return std::nullopt;
    const Team by = teamOn(state, answers.first == 0 ? Side::Left : Side::Right);
    switch (*loss) {
    case Loss::AllSets:
        return Forfeit{by, ForfeitKind::Default, Scope::Match, answers.line};
    case Loss::RestOfMatch:
        return Forfeit{by, ForfeitKind::Incomplete, Scope::Match, answers.line};
    case Loss::RestOfSet:
        return Forfeit{by, ForfeitKind::Incomplete, Scope::Set, answers.line};
    case Loss::EarlierSet:
        break;
    }
    if (!answers.number)
        return std::nullopt;
    const auto kept = answers.other ? std::optional<int>(answers.other->value) : std::nullopt;
    return Forfeit{by, ForfeitKind::Incomplete, Scope::Set, answers.line, EarlierSet{answers.number->value, kept}};
}

QString forfeitPrompt(const MatchState& state, const FormAnswers& answers) {
    if (const std::optional<Forfeit> forfeit = forfeitOf(state, answers))
        return forfeitMeans(state, *forfeit);
    return lossOf(state, answers) == Loss::EarlierSet
               ? Table::tr("Which team and set, and how many points does it keep there? Empty: all.")
               : Table::tr("Only the first referee declares a forfeit.");
}

/// The set, and the points kept of it.
void askEarlierSet(Form& form, const MatchState& state) {
    const std::vector<int> sets = endedSets(state);
    form.numberLabel = Table::tr("Set");
    for (const int number : sets)
        form.numbers.push_back({ShirtNumber(number), {}});
    if (sets.size() == 1)
        form.begins.number = ShirtNumber(sets.front());
    form.otherLabel = Table::tr("Points");
    form.others = {{ShirtNumber(0), {}}};
    form.asksNumbers = [state](const FormAnswers& answers) { return lossOf(state, answers) == Loss::EarlierSet; };
    if (lossesIn(state).size() == 1)
        form.begins.second = 0;
}

std::optional<Entry> redesignated(Team team, const FormAnswers& answers) {
    if (!answers.number)
        return std::nullopt;
    return LiberoRedesignated{team, *answers.number, answers.other, answers.line};
}

constexpr std::array<std::pair<ReplayCause, Qt::Key>, 5> causes{{{ReplayCause::Injury, Qt::Key_I},
                                                                 {ReplayCause::Interference, Qt::Key_O},
                                                                 {ReplayCause::DoubleFault, Qt::Key_D},
                                                                 {ReplayCause::Whistle, Qt::Key_W},
                                                                 {ReplayCause::EarlyServe, Qt::Key_E}}};

IllegalBy comingOf(const FormAnswers& answers) {
    return answers.first == 1 ? IllegalBy::LiberoReplacement : IllegalBy::Substitution;
}

int pointsOf(const FormAnswers& answers) {
    return answers.other.value_or(ShirtNumber(0)).value;
}

std::optional<IllegalPlayer> illegalPlayer(const MatchState& state, Team team, const FormAnswers& answers) {
    if (!answers.number)
        return std::nullopt;
    return IllegalPlayer{team, *answers.number, comingOf(answers), firstOfLast(state.set(), team, pointsOf(answers))};
}

std::vector<OfferedNumber> courtOf(const MatchState& state, Team team) {
    std::vector<OfferedNumber> numbers;
    for (const BenchPlayer& player : sixOf(state, team))
        numbers.push_back({player.number, roman(*player.slot)});
    if (const auto& libero = state.set().teams[team].libero)
        numbers.push_back({libero->libero, Table::tr("libero")});
    return numbers;
}

QString redesignationPrompt(const FormAnswers& answers) {
    if (!answers.number)
        return Table::tr("Which libero cannot play on?");
    return answers.other
               ? fill(Table::tr("%1 is libero from now on. Enter records."), {QString::number(answers.other->value)})
               : Table::tr("Nobody takes her part. Enter records.");
}

} // namespace

Form forfeitForm(const MatchState& state) {
    Form form;
    form.title = Table::tr("Forfeit: which team, and what does it lose?");
    form.first = {teamOption(state, Side::Left), teamOption(state, Side::Right)};
    for (const Loss loss : lossesIn(state))
        form.second.push_back(lossOption(loss));
    if (!endedSets(state).empty())
        askEarlierSet(form, state);
    form.line = Table::tr("Why, on the referee's word");
    form.entry = [state](const FormAnswers& answers) {
        const std::optional<Forfeit> forfeit = forfeitOf(state, answers);
        return forfeit ? std::optional<Entry>(*forfeit) : std::nullopt;
    };
    form.prompt = [state](const FormAnswers& answers) { return forfeitPrompt(state, answers); };
    return form;
}

Form resumptionForm(const MatchState& state) {
    Form form;
    form.title = Table::tr("Resume play");
    form.first = {{Table::tr("As it stood"), Table::tr("same score and players"), Qt::Key_A}};
    if (state.set().started)
        form.first.push_back({Table::tr("The set again"), Table::tr("from nothing, same line-ups"), Qt::Key_T});
    form.begins.first = 0;
    form.entry = [](const FormAnswers& answers) -> std::optional<Entry> {
        return Resumed{answers.first == 1 ? GoOn::SetAgain : GoOn::AsItStood};
    };
    form.prompt = [](const FormAnswers& answers) {
        return answers.first == 1 ? Table::tr("The broken-off set is cancelled and keeps its sheet. Enter records.")
                                  : Table::tr("Play goes on where it stopped. Enter records.");
    };
    return form;
}

Form redesignationForm(const MatchState& state, Team team) {
    Form form;
    form.title = fill(Table::tr("New libero %1"), {codeOf(state, team)});
    form.numberLabel = Table::tr("Libero");
    const std::vector<ShirtNumber>& liberos = liberosOf(state.set().teams[team]);
    for (const ShirtNumber number : liberos)
        form.numbers.push_back({number, {}});
    if (liberos.size() == 1)
        form.begins.number = liberos.front();
    form.otherLabel = Table::tr("New");
    for (const BenchPlayer& player : benchOf(state, team))
        form.others.push_back({player.number, {}});
    form.line = Table::tr("Why she cannot play on");
    form.entry = [team](const FormAnswers& answers) { return redesignated(team, answers); };
    form.prompt = redesignationPrompt;
    return form;
}

Form replayForm() {
    Form form;
    form.title = Table::tr("Replay: what for?");
    for (const auto& [cause, key] : causes)
        form.first.push_back({capitalised(causeWords(cause)),
                              cause == ReplayCause::Interference ? Table::tr("from outside") : QString(), key});
    form.choiceRecords = true;
    form.entry = [](const FormAnswers& answers) -> std::optional<Entry> {
        if (answers.first < 0)
            return Replay{};
        return Replay{Again::Replay, causes.at(static_cast<std::size_t>(answers.first)).first};
    };
    form.prompt = [](const FormAnswers&) { return Table::tr("Enter records a replay without its cause."); };
    return form;
}

Form illegalPlayerForm(const MatchState& state, Team team) {
    const auto pointsBack = [state, team](const FormAnswers& answers) -> std::optional<ShirtNumber> {
        const auto back = pointsToTakeBack(state, team, comingOf(answers));
        return ShirtNumber(back ? back->count : 0);
    };
    Form form;
    form.title = fill(Table::tr("Illegal player of %1, found after play went on"), {codeOf(state, team)});
    form.first = {{Table::tr("Substitution"), Table::tr("came in illegally"), Qt::Key_S},
                  {Table::tr("Libero replacement"), Table::tr("an illegal one"), Qt::Key_L}};
    form.numberLabel = Table::tr("Number");
    form.numbers = courtOf(state, team);
    form.otherLabel = Table::tr("Points");
    form.others = countsUpTo(pointsOfTerm(state.set(), team).count);
    form.otherFor = pointsBack;
    form.begins.first = 0;
    form.begins.other = pointsBack({});
    form.entry = [state, team](const FormAnswers& answers) -> std::optional<Entry> {
        const std::optional<IllegalPlayer> ruling = illegalPlayer(state, team, answers);
        return ruling ? std::optional<Entry>(*ruling) : std::nullopt;
    };
    form.prompt = [state, team](const FormAnswers& answers) {
        return answers.number ? illegalPlayerMeans(state, team, pointsOf(answers))
                              : Table::tr("Who has no right to be on court?");
    };
    return form;
}

} // namespace setfolio
