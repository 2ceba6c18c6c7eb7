// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/codec.h"
#include "core/ledger/limits.h"

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

void readFormat(MemberReader& reader) {
    const MemberValue format = reader.take("format"_L1);
    if (format.isUndefined())
        return;
    const qint64 number = format.toInteger(0);
    if (!format.isNumber())
        reader.report(EntryJsonError::Code::WrongType, "format"_L1);
    else if (number > limits::format)
        reader.report(EntryJsonError::Code::NewerVersion, "format"_L1);
    else if (number < 1)
        reader.report(EntryJsonError::Code::OutOfRange, "format"_L1);
}

int readBestOf(MemberReader& reader) {
    const int sets = reader.integer("best-of"_L1, 1, 5);
    if (sets % 2 == 0)
        reader.report(EntryJsonError::Code::OutOfRange, "best-of"_L1);
    return sets;
}

TeamName readTeamName(MemberReader& reader) {
    return {reader.name("name"_L1), reader.code("code"_L1), reader.name("colour"_L1)};
}

PerTeam<TeamName> readTeamNames(MemberReader& reader) {
    return {reader.object("home"_L1, readTeamName), reader.object("visitors"_L1, readTeamName)};
}

Rulebook readRulebook(MemberReader& reader) {
    constexpr auto key = "rulebook"_L1;
    const MemberValue value = reader.take(key);
    if (!value.isString() && !value.isObject()) {
        reader.report(value.isUndefined() ? EntryJsonError::Code::MissingMember : EntryJsonError::Code::WrongType, key);
        return {};
    }
    const auto rulebook = value.isString() ? publishedRulebook(value.toString()) : rulebookFromJson(value.toObject());
    if (!rulebook)
        reader.reportAt(EntryJsonError::Code::BadRulebook,
                        value.isString() ? QString(key) : key + u'.' + rulebook.error().setting);
    return rulebook.value_or(Rulebook());
}

QJsonObject teamNameJson(const TeamName& team) {
    MemberWriter writer;
    writer.text("name"_L1, team.name);
    writer.text("code"_L1, team.code);
    writer.text("colour"_L1, team.colour);
    return writer.json();
}

QJsonObject teamNamesJson(const PerTeam<TeamName>& teams) {
    MemberWriter writer;
    writer.put("home"_L1, teamNameJson(teams.home));
    writer.put("visitors"_L1, teamNameJson(teams.visitors));
    return writer.json();
}

RosterPlayer readPlayer(MemberReader& reader) {
    return {reader.shirt("number"_L1), reader.name("name"_L1), reader.flag("captain"_L1), reader.flag("libero"_L1)};
}

QJsonObject playerJson(const RosterPlayer& player) {
    MemberWriter writer;
    writer.shirt("number"_L1, player.number);
    writer.text("name"_L1, player.name);
    writer.flag("captain"_L1, player.captain);
    writer.flag("libero"_L1, player.libero);
    return writer.json();
}

Official readOfficial(MemberReader& reader) {
    return {reader.word<Role>("role"_L1), reader.name("name"_L1)};
}

/// An earlier set is forfeited as a set, by an incomplete team; and only of that a number of points is kept.
void readEarlier(MemberReader& reader, Forfeit& forfeit) {
    const std::optional<int> number = reader.integerIfAny("of-set"_L1, 1, limits::sets);
    const std::optional<int> keeps = reader.integerIfAny("keeps"_L1, 0, limits::pointsKept);
    if (number && (forfeit.kind != ForfeitKind::Incomplete || forfeit.reach != Scope::Set))
        reader.report(EntryJsonError::Code::OutOfRange, "of-set"_L1);
    if (keeps && !number)
        reader.report(EntryJsonError::Code::OutOfRange, "keeps"_L1);
    if (number)
        forfeit.earlier = EarlierSet{*number, keeps};
}

QJsonObject officialJson(const Official& official) {
    MemberWriter writer;
    writer.word("role"_L1, official.role);
    writer.text("name"_L1, official.name);
    return writer.json();
}

} // namespace

MatchOpened Codec<MatchOpened>::read(MemberReader& reader) {
    readFormat(reader);
    return {reader.name("id"_L1),
            reader.name("competition"_L1),
            reader.name("division"_L1),
            reader.name("match-number"_L1),
            reader.name("venue"_L1),
            reader.date("date"_L1),
            reader.timeOfDay("scheduled"_L1),
            readBestOf(reader),
            reader.object("teams"_L1, readTeamNames),
            readRulebook(reader),
            reader.flag("names-left-out"_L1)};
}

void Codec<MatchOpened>::write(const MatchOpened& match, MemberWriter& writer) {
    writer.put("format"_L1, limits::format);
    writer.text("id"_L1, match.id);
    writer.text("competition"_L1, match.competition);
    writer.text("division"_L1, match.division);
    writer.text("match-number"_L1, match.matchNumber);
    writer.text("venue"_L1, match.venue);
    writer.date("date"_L1, match.date);
    writer.timeOfDay("scheduled"_L1, match.scheduled);
    writer.put("best-of"_L1, match.bestOf);
    writer.put("teams"_L1, teamNamesJson(match.teams));
    writer.put("rulebook"_L1, toJson(match.rulebook));
    writer.flag("names-left-out"_L1, match.namesLeftOut);
}

Roster Codec<Roster>::read(MemberReader& reader) {
    return {reader.word<Team>("team"_L1), reader.objects("players"_L1, limits::players, readPlayer),
            reader.name("coach"_L1)};
}

void Codec<Roster>::write(const Roster& roster, MemberWriter& writer) {
    writer.word("team"_L1, roster.team);
    writer.objects("players"_L1, roster.players, playerJson);
    writer.text("coach"_L1, roster.coach);
}

Officials Codec<Officials>::read(MemberReader& reader) {
    return {reader.objects("officials"_L1, limits::officials, readOfficial)};
}

void Codec<Officials>::write(const Officials& officials, MemberWriter& writer) {
    writer.objects("officials"_L1, officials.officials, officialJson);
}

MatchClosed Codec<MatchClosed>::read(MemberReader&) {
    return {};
}

void Codec<MatchClosed>::write(const MatchClosed&, MemberWriter&) {}

Forfeit Codec<Forfeit>::read(MemberReader& reader) {
    Forfeit forfeit{reader.word<Team>("by"_L1), reader.word<ForfeitKind>("how"_L1),
                    reader.word<Scope>("reach"_L1, Scope::Match), reader.text("reason"_L1)};
    readEarlier(reader, forfeit);
    return forfeit;
}

void Codec<Forfeit>::write(const Forfeit& forfeit, MemberWriter& writer) {
    writer.word("by"_L1, forfeit.by);
    writer.word("how"_L1, forfeit.kind);
    writer.wordUnless(Scope::Match, "reach"_L1, forfeit.reach);
    writer.text("reason"_L1, forfeit.reason);
    if (!forfeit.earlier)
        return;
    writer.put("of-set"_L1, forfeit.earlier->number);
    if (forfeit.earlier->keeps)
        writer.put("keeps"_L1, *forfeit.earlier->keeps);
}

Suspended Codec<Suspended>::read(MemberReader& reader) {
    return {reader.text("reason"_L1)};
}

void Codec<Suspended>::write(const Suspended& suspended, MemberWriter& writer) {
    writer.text("reason"_L1, suspended.reason);
}

Resumed Codec<Resumed>::read(MemberReader& reader) {
    return {reader.word<GoOn>("go-on"_L1, GoOn::AsItStood)};
}

void Codec<Resumed>::write(const Resumed& resumed, MemberWriter& writer) {
    writer.wordUnless(GoOn::AsItStood, "go-on"_L1, resumed.goOn);
}

} // namespace setfolio
