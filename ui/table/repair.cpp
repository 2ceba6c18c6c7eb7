// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/table/repair.h"

#include "core/rules/ways.h"
#include "ui/wording/fill.h"
#include "ui/wording/findingwords.h"
#include "ui/wording/names.h"

#include <QCoreApplication>

#include <algorithm>

namespace setfolio {

namespace {

struct Table {
    Q_DECLARE_TR_FUNCTIONS(Table)
};

PerTeam<int> scoreOf(const MatchState& state) {
    return state.sets.empty() ? PerTeam<int>{}
                              : PerTeam<int>{state.set().teams.home.points, state.set().teams.visitors.points};
}

QString serverIn(const MatchState& state) {
    const Phase phase = phaseOf(state);
    if (phase != Phase::ReadyToServe && phase != Phase::Rally)
        return {};
    return codeOf(state, state.set().serving) + u' ' + QString::number(serverOf(state.set()).value);
}

QString scoreWords(const PerTeam<int>& score, const MatchState& state) {
    return fill(Table::tr("%1 %2–%3 %4"), {codeOf(state, Team::Home), QString::number(score.home),
                                           QString::number(score.visitors), codeOf(state, Team::Visitors)});
}

bool isKnown(const std::vector<EntryFinding>& before, const EntryFinding& found) {
    return std::ranges::any_of(before, [&](const EntryFinding& known) {
        return known.entry == found.entry && known.finding.kind == found.finding.kind;
    });
}

/// The entry that a repair strikes or stands beside.
EntryNumber targetOf(const Repair& repair) {
    const auto* strike = std::get_if<Strike>(&repair.entry);
    return strike ? strike->target : repair.placed.value_or(Placed{}).target;
}

/// Whether the repair takes a point from the team that won a rally.
bool changesWinner(std::span<const Recorded> entries, const Repair& repair) {
    const EntryNumber target = targetOf(repair);
    if (target.value == 0 || target.value > entries.size() ||
        (repair.placed && repair.placed->how == Placed::How::Before))
        return false;
    const auto* won = std::get_if<RallyWon>(&entries[target.value - 1].entry);
    const auto* now = std::get_if<RallyWon>(&repair.entry);
    return won && !(now && now->by == won->by);
}

} // namespace

RepairPreview previewOf(std::span<const Recorded> entries, const MatchState& now, const Repair& repair) {
    std::vector<Recorded> repaired(entries.begin(), entries.end());
    const EntryNumber number(static_cast<std::uint32_t>(repaired.size()) + 1);
    repaired.push_back({number, entries.back().time, repair.entry, std::nullopt, repair.placed});
    RepairPreview preview;
    preview.after = fold(repaired);
    preview.scoreBefore = scoreOf(now);
    preview.scoreAfter = scoreOf(preview.after);
    preview.serverBefore = serverIn(now);
    preview.serverAfter = serverIn(preview.after);
    preview.settled = changesWinner(entries, repair) && isPointSettled(entries, targetOf(repair));
    const std::vector<EntryFinding> before = review(entries);
    for (const EntryFinding& found : review(repaired))
        if (found.entry != number && !isKnown(before, found))
            preview.questionable.push_back(found);
    return preview;
}

QString sentence(const RepairPreview& preview, const EntryLog& log) {
    QStringList words;
    const MatchState& after = preview.after;
    words += preview.scoreBefore == preview.scoreAfter
                 ? fill(Table::tr("The score stays %1."), {scoreWords(preview.scoreAfter, after)})
                 : fill(Table::tr("The score becomes %1."), {scoreWords(preview.scoreAfter, after)});
    if (preview.serverAfter != preview.serverBefore && !preview.serverAfter.isEmpty())
        words += fill(Table::tr("%1 serves next, not %2."), {preview.serverAfter, preview.serverBefore});
    if (after.set().winner)
        words += fill(Table::tr("The set is won by %1."), {codeOf(after, *after.set().winner)});
    if (preview.settled)
        words +=
            Table::tr("If the referees gave the point, by the rulebook it stands: correct only a slip of the table.");
    if (preview.questionable.empty()) {
        words += Table::tr("No later entry becomes questionable.");
        return words.join(u' ');
    }
    words +=
        fill(Table::tr("Later entries that become questionable: %1."), {QString::number(preview.questionable.size())});
    const EntryFinding& first = preview.questionable.front();
    words += fill(Table::tr("The first is “%1”: %2"),
                  {log.lines().at(first.entry.value - 1).words.words, sentence(first.finding, after)});
    return words.join(u' ');
}

QString placeWords(const Placed& placed, const EntryLog& log) {
    const QString& words = log.lines().at(placed.target.value - 1).words.words;
    return fill(placed.how == Placed::How::Before ? Table::tr("Before “%1”") : Table::tr("In place of “%1”"), {words});
}

QString atThePlace(const Placed& placed, const EntryLog& log) {
    return fill(Table::tr("%1: the table stands as it did then. Record what belongs there, or press Esc."),
                {placeWords(placed, log)});
}

QString drawnUpWords(const Placed& placed, const Entry& entry, const MatchState& then, const EntryLog& log) {
    const MatchState after = apply(then, {EntryNumber(), {}, entry, std::nullopt, placed});
    const EntryWords words = wordsFor(entry, then, after);
    return fill(Table::tr("%1: %2 %3"),
                {placeWords(placed, log), words.team ? codeOf(then, *words.team) : QString(), words.words})
        .simplified();
}

} // namespace setfolio
