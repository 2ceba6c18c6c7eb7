// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/rules/settingvalue.h"

#include "core/rules/settingwords.h"

#include <QJsonArray>

#include <algorithm>
#include <cmath>

namespace setfolio {
namespace {

using Code = RulebookError::Code;
using Done = tl::expected<void, Code>;
template <typename Value>
using Read = tl::expected<Value, Code>;

Read<int> wholeNumber(const QJsonValue& value, int lowest, int highest) {
    if (!value.isDouble() || value.toDouble() != std::floor(value.toDouble()))
        return tl::unexpected(Code::WrongType);
    const double number = value.toDouble();
    if (number < lowest || number > highest)
        return tl::unexpected(Code::OutOfRange);
    return static_cast<int>(number);
}

Read<bool> flag(const QJsonValue& value) {
    if (!value.isBool())
        return tl::unexpected(Code::WrongType);
    return value.toBool();
}

/// The place of a word among those that may stand here.
Read<std::size_t> placeOf(const QJsonValue& value, std::span<const char* const> words) {
    if (!value.isString())
        return tl::unexpected(Code::WrongType);
    for (std::size_t place = 0; place < words.size(); ++place)
        if (value.toString() == QLatin1String(words[place]))
            return place;
    return tl::unexpected(Code::OutOfRange);
}

template <typename Enum>
Read<Enum> wordIn(const QJsonValue& value) {
    return placeOf(value, wordsOf<Enum>).map([](std::size_t place) { return static_cast<Enum>(place); });
}

template <typename Enum>
QJsonValue wordFor(Enum value) {
    return QLatin1String(wordsOf<Enum>[static_cast<std::size_t>(value)]);
}

/// A list whose items are read by `one`.
template <typename Item, typename One>
Read<std::vector<Item>> listOf(const QJsonValue& value, One one) {
    if (!value.isArray())
        return tl::unexpected(Code::WrongType);
    std::vector<Item> items;
    const QJsonArray array = value.toArray();
    for (const auto& member : array) {
        Read<Item> item = one(member);
        if (!item)
            return tl::unexpected(item.error());
        items.push_back(*item);
    }
    return items;
}

Read<CardStep> cardStep(const QJsonValue& value) {
    const QJsonObject json = value.toObject();
    const auto level = wordIn<SanctionLevel>(json.value(u"level"));
    const auto cards = wordIn<CardsShown>(json.value(u"cards"));
    const auto point = flag(json.value(u"point"));
    for (const Done& done : {level.map([](auto) {}), cards.map([](auto) {}), point.map([](auto) {})})
        if (!done)
            return tl::unexpected(done.error());
    if (json.size() != 3)
        return tl::unexpected(Code::WrongType);
    return CardStep{*level, *cards, *point};
}

bool rises(const std::vector<CardStep>& ladder) {
    return std::ranges::adjacent_find(ladder, std::ranges::greater_equal(), &CardStep::level) == ladder.end();
}

bool hasDoubles(const std::vector<Signer>& signers) {
    return std::ranges::any_of(signers, [&](Signer signer) { return std::ranges::count(signers, signer) > 1; });
}

struct Reader {
    Rulebook& rulebook;
    const QJsonValue& value;

    Done operator()(const NumberSetting& setting) const {
        return wholeNumber(value, setting.lowest, setting.highest).map([&](int n) { rulebook.*setting.field = n; });
    }
    Done operator()(const OptionalSetting& setting) const {
        if (!value.isNull())
            return wholeNumber(value, setting.lowest, setting.highest).map([&](int n) { rulebook.*setting.field = n; });
        (rulebook.*setting.field).reset();
        return {};
    }
    Done operator()(const ListSetting& setting) const {
        const auto number = [&](const QJsonValue& item) {
            return wholeNumber(item, setting.lowest, setting.highest).and_then([&](int n) {
                return setting.allows(n) ? Read<int>(n) : tl::unexpected(Code::OutOfRange);
            });
        };
        return listOf<int>(value, number).map([&](std::vector<int> list) { rulebook.*setting.field = list; });
    }
    Done operator()(const FlagSetting& setting) const {
        return flag(value).map([&](bool yes) { rulebook.*setting.field = yes; });
    }
    Done operator()(const WordSetting& setting) const {
        return placeOf(value, setting.words).map([&](std::size_t place) { setting.set(rulebook, place); });
    }
    Done operator()(const LadderSetting& setting) const {
        const auto ladder = listOf<CardStep>(value, cardStep);
        if (ladder && (ladder->empty() || !rises(*ladder)))
            return tl::unexpected(Code::OutOfRange);
        return ladder.map([&](const std::vector<CardStep>& steps) { rulebook.*setting.field = steps; });
    }
    Done operator()(const SignersSetting& setting) const {
        const auto signers = listOf<Signer>(value, wordIn<Signer>);
        if (signers && hasDoubles(*signers))
            return tl::unexpected(Code::OutOfRange);
        return signers.map([&](const std::vector<Signer>& list) { rulebook.*setting.field = list; });
    }
};

template <typename Item, typename One>
QJsonValue arrayOf(const std::vector<Item>& items, One one) {
    QJsonArray array;
    for (const Item& item : items)
        array.append(one(item));
    return array;
}

QJsonValue stepToJson(const CardStep& step) {
    return QJsonObject{
        {u"level"_qs, wordFor(step.level)}, {u"cards"_qs, wordFor(step.cards)}, {u"point"_qs, step.point}};
}

struct Writer {
    const Rulebook& rulebook;

    QJsonValue operator()(const NumberSetting& setting) const { return rulebook.*setting.field; }
    QJsonValue operator()(const OptionalSetting& setting) const {
        const std::optional<int>& number = rulebook.*setting.field;
        return number ? QJsonValue(*number) : QJsonValue(QJsonValue::Null);
    }
    QJsonValue operator()(const ListSetting& setting) const {
        return arrayOf(rulebook.*setting.field, [](int number) { return QJsonValue(number); });
    }
    QJsonValue operator()(const FlagSetting& setting) const { return rulebook.*setting.field; }
    QJsonValue operator()(const WordSetting& setting) const {
        return QLatin1String(setting.words[setting.get(rulebook)]);
    }
    QJsonValue operator()(const LadderSetting& setting) const { return arrayOf(rulebook.*setting.field, stepToJson); }
    QJsonValue operator()(const SignersSetting& setting) const {
        return arrayOf(rulebook.*setting.field, wordFor<Signer>);
    }
};

} // namespace

tl::expected<void, RulebookError::Code> readValue(Rulebook& rulebook, const Setting& setting, const QJsonValue& value) {
    return std::visit(Reader{rulebook, value}, setting.how);
}

QJsonValue valueOf(const Rulebook& rulebook, const Setting& setting) {
    return std::visit(Writer{rulebook}, setting.how);
}

} // namespace setfolio
