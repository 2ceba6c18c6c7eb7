// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/openwords.h"

#include "ui/wording/fill.h"
#include "ui/wording/names.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace setfolio {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(setfolio::OpenWords)
};

QString nameOf(const MatchState& state, Team team) {
    const QString name = state.opened ? state.opened->teams[team].name : QString();
    return name.isEmpty() ? codeOf(state, team) : name;
}

} // namespace

QString matchTitle(const MatchState& state) {
    return fill(Say::tr("%1 – %2"), {nameOf(state, Team::Home), nameOf(state, Team::Visitors)});
}

QString matchTitle(const MatchOpened& opened) {
    MatchState state;
    state.opened = opened;
    return matchTitle(state);
}

QString matchDetail(const MatchState& state, const QLocale& locale) {
    const PerTeam<int> won = setsWon(state);
    const QString result =
        fill(Say::tr("%1 %2–%3 %4 in sets"), {codeOf(state, Team::Home), QString::number(won.home),
                                              QString::number(won.visitors), codeOf(state, Team::Visitors)});
    const QDate date = state.opened ? state.opened->date : QDate();
    return date.isValid() ? fill(Say::tr("%1, %2"), {locale.toString(date, QStringLiteral("d MMMM yyyy")), result})
                          : result;
}

QString fileStaysAsItIs() {
    return Say::tr("The file stays as it is. Lines before the damage can be saved as a new match file, to go on in.");
}

QString saveGoodPartWord() {
    return Say::tr("Save a copy of the whole lines…");
}

QString saveGoodPartTitle() {
    return Say::tr("Save a copy of the whole lines");
}

QString goodPartName(const QString& fileName) {
    const QFileInfo file(fileName);
    return fill(Say::tr("%1-whole.%2"), {file.completeBaseName(), QStringLiteral("setfolio")});
}

QString openMatchTitle() {
    return Say::tr("Open a match file");
}

QString matchFilesFilter() {
    return Say::tr("Matches (*.setfolio)");
}

} // namespace setfolio
