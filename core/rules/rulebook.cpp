// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/rulebook.h"

#include "core/rules/settingvalue.h"

#include <QFile>
#include <QJsonDocument>
#include <QStringList>

#include <algorithm>

// Out of the namespace, as the macro wants it: a static library's resources are linked only when asked for.
static void loadRulebookResources() {
    Q_INIT_RESOURCE(rulebooks);
}

namespace setfolio {
namespace {

using Code = RulebookError::Code;
using Read = tl::expected<void, RulebookError>;

tl::unexpected<RulebookError> wrong(Code code, const QString& where) {
    return tl::unexpected(RulebookError{code, where});
}

/// The part that settings and statements share: where it comes from.
Read readSource(Rulebook& rulebook, const QString& key, const QJsonObject& json) {
    for (auto member = json.begin(); member != json.end(); ++member)
        if (!QStringList{u"value"_qs, u"source"_qs, u"grade"_qs, u"open"_qs}.contains(member.key()))
            return wrong(Code::UnknownSetting, key + u'.' + member.key());
    if (!json.value(u"source").isString())
        return wrong(json.contains(u"source") ? Code::WrongType : Code::MissingSetting, key + QLatin1String(".source"));
    const QJsonValue grade = json.value(u"grade");
    if (!grade.isUndefined() && grade != u"A"_qs && grade != u"B"_qs)
        return wrong(grade.isString() ? Code::OutOfRange : Code::WrongType, key + QLatin1String(".grade"));
    if (json.contains(u"open") && !json.value(u"open").isBool())
        return wrong(Code::WrongType, key + QLatin1String(".open"));
    rulebook.sources.insert(key, {json.value(u"source").toString(), grade.toString(), json.value(u"open").toBool()});
    return {};
}

Read readSettings(Rulebook& rulebook, const QJsonObject& json) {
    for (auto member = json.begin(); member != json.end(); ++member) {
        const Setting* setting = settingOf(member.key());
        if (!setting)
            return wrong(Code::UnknownSetting, member.key());
        const QJsonObject object = member->toObject();
        if (const auto done = readValue(rulebook, *setting, object.value(u"value")); !done)
            return wrong(done.error(), member.key());
        if (const Read read = readSource(rulebook, member.key(), object); !read)
            return read;
    }
    for (const Setting& setting : rulebookSettings())
        if (!json.contains(QLatin1String(setting.key)))
            return wrong(Code::MissingSetting, QString::fromLatin1(setting.key));
    return {};
}

Read readStatements(Rulebook& rulebook, const QJsonObject& json) {
    for (auto member = json.begin(); member != json.end(); ++member) {
        if (settingOf(member.key()) || member->toObject().contains(u"value"))
            return wrong(Code::UnknownSetting, member.key());
        if (const Read read = readSource(rulebook, member.key(), member->toObject()); !read)
            return read;
    }
    return {};
}

Read readNames(Rulebook& rulebook, const QJsonObject& json) {
    for (auto member = json.begin(); member != json.end(); ++member)
        if (!QStringList{u"id"_qs, u"name"_qs, u"season"_qs, u"settings"_qs, u"statements"_qs}.contains(member.key()))
            return wrong(Code::UnknownSetting, member.key());
    for (const QString& key : {u"id"_qs, u"name"_qs, u"season"_qs})
        if (!json.value(key).isString())
            return wrong(json.contains(key) ? Code::WrongType : Code::MissingSetting, key);
    rulebook.id = json.value(u"id").toString();
    rulebook.name = json.value(u"name").toString();
    rulebook.season = json.value(u"season").toString();
    return {};
}

/// What no single setting can say: how their values fit one another.
Read fitsTogether(const Rulebook& rulebook) {
    if (rulebook.bestOf.empty())
        return wrong(Code::OutOfRange, u"best-of"_qs);
    if (rulebook.cap && *rulebook.cap < rulebook.setPoints)
        return wrong(Code::OutOfRange, u"cap"_qs);
    if (rulebook.timeOutWarningSeconds > rulebook.timeOutSeconds)
        return wrong(Code::OutOfRange, u"time-out-warning-seconds"_qs);
    if (rulebook.lowestNumber > rulebook.highestNumber)
        return wrong(Code::OutOfRange, u"highest-number"_qs);
    return {};
}

QJsonObject sourceToJson(const Source& source) {
    QJsonObject json{{u"source"_qs, source.text}};
    if (!source.grade.isEmpty())
        json.insert(u"grade", source.grade);
    if (source.open)
        json.insert(u"open", true);
    return json;
}

} // namespace

tl::expected<Rulebook, RulebookError> rulebookFromJson(const QJsonObject& json) {
    Rulebook rulebook;
    if (const Read read = readNames(rulebook, json); !read)
        return tl::unexpected(read.error());
    if (const Read read = readSettings(rulebook, json.value(u"settings").toObject()); !read)
        return tl::unexpected(read.error());
    if (const Read read = readStatements(rulebook, json.value(u"statements").toObject()); !read)
        return tl::unexpected(read.error());
    if (const Read fits = fitsTogether(rulebook); !fits)
        return tl::unexpected(fits.error());
    return rulebook;
}

QJsonObject toJson(const Rulebook& rulebook) {
    QJsonObject settings;
    for (const Setting& setting : rulebookSettings()) {
        const QString key = QString::fromLatin1(setting.key);
        QJsonObject object = sourceToJson(rulebook.sources.value(key));
        object.insert(u"value", valueOf(rulebook, setting));
        settings.insert(key, object);
    }
    QJsonObject statements;
    for (auto source = rulebook.sources.begin(); source != rulebook.sources.end(); ++source)
        if (!settingOf(source.key()))
            statements.insert(source.key(), sourceToJson(source.value()));
    return {{u"id"_qs, rulebook.id},
            {u"name"_qs, rulebook.name},
            {u"season"_qs, rulebook.season},
            {u"settings"_qs, settings},
            {u"statements"_qs, statements}};
}

tl::expected<Rulebook, RulebookError> publishedRulebook(const QString& id) {
    loadRulebookResources();
    const std::vector<QString> ids = publishedRulebookIds();
    if (std::find(ids.begin(), ids.end(), id) == ids.end())
        return wrong(Code::OutOfRange, u"id"_qs);
    QFile file(u":/rulebooks/%1.json"_qs.arg(id));
    if (!file.open(QIODevice::ReadOnly))
        return wrong(Code::NotJson, id);
    const QJsonDocument document = QJsonDocument::fromJson(file.readAll());
    if (!document.isObject())
        return wrong(Code::NotJson, id);
    return rulebookFromJson(document.object());
}

std::vector<QString> publishedRulebookIds() {
    return {u"high-school"_qs, u"college-women"_qs, u"club"_qs, u"international"_qs};
}

} // namespace setfolio
