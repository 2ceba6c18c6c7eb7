// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/rulebook.h"

#include "core/rules/rulebooksettings.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>
#include <array>
#include <cmath>

// Out of the namespace, as the macro wants it: a static library's resources are linked only when asked for.
static void loadRulebookResources() {
    Q_INIT_RESOURCE(rulebooks);
}

namespace setfolio {
namespace {

using Code = RulebookError::Code;
using Done = tl::expected<void, Code>;

tl::expected<int, Code> wholeNumber(const QJsonValue& value, int lowest, int highest) {
    if (!value.isDouble() || value.toDouble() != std::floor(value.toDouble()))
        return tl::unexpected(Code::WrongType);
    const double number = value.toDouble();
    if (number < lowest || number > highest)
        return tl::unexpected(Code::OutOfRange);
    return static_cast<int>(number);
}

template <typename Word>
using Words = std::array<std::pair<const char*, Word>, 2>;
constexpr Words<WrittenOrder> writtenOrders{{{"serving", WrittenOrder::Serving}, {"floor", WrittenOrder::Floor}}};
constexpr Words<LiberoServeRule> liberoServes{
    {{"never", LiberoServeRule::Never}, {"one-slot", LiberoServeRule::OneSlot}}};

template <typename Word>
Done readWord(Word& into, const QJsonValue& value, const Words<Word>& words) {
    if (!value.isString())
        return tl::unexpected(Code::WrongType);
    for (const auto& [text, word] : words) {
        if (value.toString() == QLatin1String(text)) {
            into = word;
            return {};
        }
    }
    return tl::unexpected(Code::OutOfRange);
}

template <typename Word>
QJsonValue wordOf(Word word, const Words<Word>& words) {
    for (const auto& [text, value] : words)
        if (value == word)
            return QLatin1String(text);
    Q_UNREACHABLE();
}

/// Reads one setting's value into its field.
struct SettingReader {
    Rulebook& rulebook;
    const QJsonValue& value;

    Done operator()(const NumberSetting& setting) const {
        return wholeNumber(value, setting.lowest, setting.highest).map([&](int n) { rulebook.*setting.field = n; });
    }
    Done operator()(const OptionalSetting& setting) const {
        if (value.isNull()) {
            (rulebook.*setting.field).reset();
            return {};
        }
        return wholeNumber(value, setting.lowest, setting.highest).map([&](int n) { rulebook.*setting.field = n; });
    }
    Done operator()(const ListSetting& setting) const {
        if (!value.isArray())
            return tl::unexpected(Code::WrongType);
        std::vector<int> numbers;
        const QJsonArray array = value.toArray();
        for (const auto& item : array) {
            const auto number = wholeNumber(item, setting.lowest, setting.highest);
            if (!number)
                return tl::unexpected(number.error());
            numbers.push_back(*number);
        }
        rulebook.*setting.field = std::move(numbers);
        return {};
    }
    Done operator()(const WrittenOrderSetting& setting) const {
        return readWord(rulebook.*setting.field, value, writtenOrders);
    }
    Done operator()(const LiberoServeSetting& setting) const {
        return readWord(rulebook.*setting.field, value, liberoServes);
    }
};

/// A setting's value as it stands in the file.
struct SettingWriter {
    const Rulebook& rulebook;

    QJsonValue operator()(const NumberSetting& setting) const { return rulebook.*setting.field; }
    QJsonValue operator()(const OptionalSetting& setting) const {
        const std::optional<int>& number = rulebook.*setting.field;
        return number ? QJsonValue(*number) : QJsonValue(QJsonValue::Null);
    }
    QJsonValue operator()(const ListSetting& setting) const {
        QJsonArray array;
        for (const int number : rulebook.*setting.field)
            array.append(number);
        return array;
    }
    QJsonValue operator()(const WrittenOrderSetting& setting) const {
        return wordOf(rulebook.*setting.field, writtenOrders);
    }
    QJsonValue operator()(const LiberoServeSetting& setting) const {
        return wordOf(rulebook.*setting.field, liberoServes);
    }
};

const Setting* settingOf(const QString& key) {
    for (const Setting& setting : rulebookSettings())
        if (key == QLatin1String(setting.key))
            return &setting;
    return nullptr;
}

tl::unexpected<RulebookError> wrong(Code code, const QString& where) {
    return tl::unexpected(RulebookError{code, where});
}

using Read = tl::expected<void, RulebookError>;

/// The part that settings and statements share: where it comes from.
Read readSource(Rulebook& rulebook, const QString& key, const QJsonObject& json) {
    for (auto member = json.begin(); member != json.end(); ++member)
        if (member.key() != u"value" && member.key() != u"source" && member.key() != u"grade")
            return wrong(Code::UnknownSetting, key + u'.' + member.key());
    if (!json.value(u"source").isString())
        return wrong(json.contains(u"source") ? Code::WrongType : Code::MissingSetting, key + QLatin1String(".source"));
    rulebook.sources.insert(key, {json.value(u"source").toString(), json.value(u"grade").toString()});
    return {};
}

Read readSettings(Rulebook& rulebook, const QJsonObject& json) {
    for (auto member = json.begin(); member != json.end(); ++member) {
        const Setting* setting = settingOf(member.key());
        if (!setting)
            return wrong(Code::UnknownSetting, member.key());
        const QJsonObject object = member->toObject();
        const QJsonValue value = object.value(u"value");
        if (const Done done = std::visit(SettingReader{rulebook, value}, setting->how); !done)
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

QJsonObject sourceToJson(const Source& source) {
    QJsonObject json{{u"source"_qs, source.text}};
    if (!source.grade.isEmpty())
        json.insert(u"grade", source.grade);
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
    if (rulebook.lowestNumber > rulebook.highestNumber)
        return wrong(Code::OutOfRange, u"highest-number"_qs);
    return rulebook;
}

QJsonObject toJson(const Rulebook& rulebook) {
    QJsonObject settings;
    for (const Setting& setting : rulebookSettings()) {
        const QString key = QString::fromLatin1(setting.key);
        QJsonObject object = sourceToJson(rulebook.sources.value(key));
        object.insert(u"value", std::visit(SettingWriter{rulebook}, setting.how));
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
    loadRulebookResources();
    std::vector<QString> ids;
    const QStringList files = QDir(u":/rulebooks"_qs).entryList({u"*.json"_qs}, QDir::Files, QDir::Name);
    for (const QString& file : files)
        ids.push_back(QFileInfo(file).completeBaseName());
    return ids;
}

} // namespace setfolio
