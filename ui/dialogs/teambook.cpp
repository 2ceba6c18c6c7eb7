// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/teambook.h"

#include "core/ledger/wholefile.h"

#include <QDir>
#include <QFile>
#include <QJsonArray>
#include <QJsonDocument>
#include <QRegularExpression>

#include <algorithm>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr qint64 largest = 256 * 1024; ///< bytes; a team of sixty has about 6000
constexpr auto kind = "setfolio-team"_L1;
constexpr int version = 1;
constexpr qsizetype longestStem = 60;

std::optional<BookTeam> readTeam(const QString& path) {
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly) || file.size() > largest)
        return {};
    const QJsonDocument document = QJsonDocument::fromJson(file.readAll());
    return document.isObject() ? bookTeamFromJson(document.object()) : std::nullopt;
}

/// A name for a file, from what a team is called: nothing in it leads out of the folder.
QString stemOf(const QString& name) {
    static const QRegularExpression others(u"[^\\p{L}\\p{N}]+"_s);
    QString stem = name.toLower().replace(others, u"-"_s).left(longestStem);
    while (stem.startsWith(u'-'))
        stem.remove(0, 1);
    while (stem.endsWith(u'-'))
        stem.chop(1);
    return stem.isEmpty() ? u"team"_s : stem;
}

} // namespace

BookTeam bookTeamOf(const MatchState& state, Team team) {
    if (!state.opened)
        return {};
    return {{}, state.opened->teams[team], state.rosters[team].coach, state.rosters[team].players};
}

QJsonObject toJson(const BookTeam& team) {
    QJsonArray players;
    for (const RosterPlayer& player : team.players)
        players.append(QJsonObject{{u"number"_s, player.number.value},
                                   {u"name"_s, player.name},
                                   {u"captain"_s, player.captain},
                                   {u"libero"_s, player.libero}});
    return {{u"kind"_s, kind},           {u"version"_s, version},         {u"name"_s, team.team.name},
            {u"code"_s, team.team.code}, {u"colour"_s, team.team.colour}, {u"coach"_s, team.coach},
            {u"players"_s, players}};
}

std::optional<BookTeam> bookTeamFromJson(const QJsonObject& object) {
    if (object.value("kind"_L1) != QJsonValue(kind) || object.value("version"_L1).toInt() != version)
        return {};
    BookTeam team;
    team.team = {object.value("name"_L1).toString(), object.value("code"_L1).toString(),
                 object.value("colour"_L1).toString()};
    team.coach = object.value("coach"_L1).toString();
    for (const QJsonValue& value : object.value("players"_L1).toArray()) {
        const QJsonObject player = value.toObject();
        const int number = player.value("number"_L1).toInt(-1);
        if (number >= 0 && number <= 99)
            team.players.push_back({ShirtNumber(number), player.value("name"_L1).toString(),
                                    player.value("captain"_L1).toBool(), player.value("libero"_L1).toBool()});
    }
    return team;
}

TeamBook::Content TeamBook::content() const {
    Content content;
    if (m_folder.isEmpty())
        return content;
    const QDir folder(m_folder);
    for (const QString& name : folder.entryList({u"*.json"_s}, QDir::Files, QDir::Name)) {
        auto team = readTeam(folder.filePath(name));
        if (team) {
            team->file = name;
            content.teams.push_back(std::move(*team));
        } else {
            content.unread << folder.filePath(name);
        }
    }
    std::ranges::stable_sort(content.teams, [](const BookTeam& a, const BookTeam& b) {
        return QString::localeAwareCompare(a.team.name, b.team.name) < 0;
    });
    return content;
}

tl::expected<void, FileError> TeamBook::keep(const BookTeam& team) const {
    if (m_folder.isEmpty() || !QDir().mkpath(m_folder))
        return tl::unexpected(FileError{FileError::Code::CannotCreate, m_folder, {}});
    const QByteArray bytes = QJsonDocument(toJson(team)).toJson(QJsonDocument::Indented);
    return writeWholeFile(QDir(m_folder).filePath(fileFor(team)), bytes);
}

bool TeamBook::remove(const BookTeam& team) const {
    const QString path = QDir(m_folder).filePath(team.file);
    return team.file.isEmpty() || !QFile::exists(path) || QFile::remove(path);
}

QString TeamBook::fileFor(const BookTeam& team) const {
    if (!team.file.isEmpty())
        return team.file;
    const std::vector<BookTeam> teams = content().teams;
    const auto same = std::ranges::find(teams, team.team.name, [](const BookTeam& other) { return other.team.name; });
    if (same != teams.end())
        return same->file;
    const QString stem = stemOf(team.team.name);
    QString name = stem + u".json"_s;
    for (int count = 2; QFile::exists(QDir(m_folder).filePath(name)); ++count)
        name = u"%1-%2.json"_s.arg(stem).arg(count);
    return name;
}

} // namespace setfolio
