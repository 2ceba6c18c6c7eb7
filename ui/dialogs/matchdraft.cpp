// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/matchdraft.h"

#include <QRegularExpression>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr int shortestCode = 2;
constexpr int usualCode = 3;
constexpr int longestCode = 5;

bool isReferee(const Official& official) {
    return official.role == Role::FirstReferee || official.role == Role::SecondReferee;
}

QString lettersOf(const QString& text) {
    QString letters;
    for (const QChar sign : text) {
        if (sign.isLetterOrNumber())
            letters += sign.toUpper();
    }
    return letters;
}

bool isFit(const QString& code) {
    return code == lettersOf(code) && code.size() >= shortestCode && code.size() <= longestCode;
}

QStringList wordsOf(const QString& name) {
    static const QRegularExpression between(u"[\\s/-]+"_s);
    QStringList words;
    for (const QString& word : name.split(between, Qt::SkipEmptyParts)) {
        if (const QString letters = lettersOf(word); !letters.isEmpty())
            words << letters;
    }
    return words;
}

/// The codes that a name suggests, the best one first.
QStringList codesFrom(const QStringList& words) {
    QString initials;
    for (const QString& word : words)
        initials += word.front();
    QStringList codes;
    if (words.size() >= usualCode)
        codes << initials.left(longestCode);
    codes << words.first().left(usualCode);
    if (words.size() > 1)
        codes << words.first().left(2) + words.last().front() << words.last().left(usualCode);
    codes << words.join(QString()).left(longestCode) << initials.left(longestCode);
    return codes;
}

void addTeamProblems(const MatchDraft& draft, Team team, std::vector<DraftProblem>& problems) {
    using Code = DraftProblem::Code;
    const TeamName& name = draft.opened.teams[team];
    if (plainLine(name.name).isEmpty())
        problems.push_back({Code::NameMissing, team, {}});
    if (!isFit(name.code))
        problems.push_back({Code::CodeUnfit, team, {}});
    if (team == Team::Visitors && isFit(name.code) && name.code == draft.opened.teams.home.code)
        problems.push_back({Code::SameCode, team, {}});
    for (const RosterProblem& problem : problemsOf(draft.rosters[team], draft.opened.rulebook))
        problems.push_back({Code::Roster, team, problem});
}

Roster rosterEntry(const MatchDraft& draft, Team team) {
    return {team, playersOf(draft.rosters[team]), plainLine(draft.coaches[team])};
}

} // namespace

MatchDraft draftAfter(const MatchState& last) {
    MatchDraft draft;
    if (!last.opened)
        return draft;
    const MatchOpened& opened = *last.opened;
    draft.opened.competition = opened.competition;
    draft.opened.division = opened.division;
    draft.opened.venue = opened.venue;
    draft.opened.bestOf = opened.bestOf;
    draft.opened.rulebook = opened.rulebook;
    draft.opened.teams.home = opened.teams.home;
    draft.rosters.home = rowsOf(last.rosters.home.players);
    draft.coaches.home = last.rosters.home.coach;
    std::ranges::remove_copy_if(last.officials.officials, std::back_inserter(draft.officials), isReferee);
    return draft;
}

std::vector<DraftProblem> problemsOf(const MatchDraft& draft) {
    std::vector<DraftProblem> problems;
    for (const Team team : bothTeams)
        addTeamProblems(draft, team, problems);
    return problems;
}

std::vector<Entry> entriesOf(const MatchDraft& draft) {
    MatchOpened opened = draft.opened;
    for (QString* text : {&opened.competition, &opened.division, &opened.matchNumber, &opened.venue})
        *text = plainLine(*text);
    for (const Team team : bothTeams) {
        TeamName& name = opened.teams[team];
        name = {plainLine(name.name), plainLine(name.code), plainLine(name.colour)};
    }
    Officials officials;
    for (const Official& official : draft.officials) {
        if (const QString name = plainLine(official.name); !name.isEmpty())
            officials.officials.push_back({official.role, name});
    }
    return {opened, rosterEntry(draft, Team::Home), rosterEntry(draft, Team::Visitors), officials};
}

QString codeFor(const QString& name, const QString& taken) {
    const QStringList words = wordsOf(name);
    if (words.isEmpty())
        return {};
    const QStringList codes = codesFrom(words);
    for (const QString& code : codes) {
        if (code != taken && code.size() >= shortestCode)
            return code;
    }
    return codes.first();
}

QString fileNameFor(const MatchOpened& opened) {
    QStringList parts;
    if (opened.date.isValid())
        parts << opened.date.toString(Qt::ISODate);
    for (const Team team : bothTeams) {
        const QString code = lettersOf(opened.teams[team].code);
        parts << (code.isEmpty() ? (team == Team::Home ? u"home"_s : u"visitors"_s) : code);
    }
    return parts.join(u'-') + u".setfolio"_s;
}

QString freePath(const QString& folder, const QString& fileName, const std::function<bool(const QString&)>& isThere) {
    const QString ending = u".setfolio"_s;
    const QString stem = folder + u'/' + (fileName.endsWith(ending) ? fileName.chopped(ending.size()) : fileName);
    QString path = stem + ending;
    for (int count = 2; isThere(path); ++count)
        path = stem + u'-' + QString::number(count) + ending;
    return path;
}

} // namespace setfolio
