// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/memberreader.h"

#include "core/ledger/limits.h"
#include "core/ledger/textforms.h"

#include <limits>

namespace setfolio {

using Code = EntryJsonError::Code;

namespace {

constexpr int lowestShirt = 0;
constexpr int highestShirt = 99;

} // namespace

MemberReader::MemberReader(const QJsonObject& json, std::optional<EntryJsonError>& fault, const QString& path)
    : m_rest(json),
      m_fault(fault),
      m_path(path) {}

QString MemberReader::name(QLatin1StringView key) {
    const QString text = stringIfAny(key);
    return checked(key, text, isPlainText(text, limits::nameCharacters, Lines::One));
}

QString MemberReader::code(QLatin1StringView key) {
    const QString text = stringIfAny(key);
    return checked(key, text, isPlainText(text, limits::codeCharacters, Lines::One));
}

QString MemberReader::text(QLatin1StringView key) {
    const QString text = stringIfAny(key);
    return checked(key, text, isPlainText(text, limits::textCharacters, Lines::Many));
}

QString MemberReader::requiredText(QLatin1StringView key) {
    const QJsonValue value = take(key);
    std::ignore = expect(key, value, QJsonValue::String);
    const QString text = value.toString();
    return checked(key, text, isPlainText(text, limits::textCharacters, Lines::Many));
}

QDate MemberReader::date(QLatin1StringView key) {
    const bool absent = !m_rest.contains(key);
    const auto date = dateFromText(stringIfAny(key));
    if (!date && !absent)
        report(Code::OutOfRange, key);
    return date.value_or(QDate());
}

QTime MemberReader::timeOfDay(QLatin1StringView key) {
    const bool absent = !m_rest.contains(key);
    const auto time = timeOfDayFromText(stringIfAny(key));
    if (!time && !absent)
        report(Code::OutOfRange, key);
    return time.value_or(QTime());
}

bool MemberReader::flag(QLatin1StringView key) {
    const QJsonValue value = take(key);
    return !value.isUndefined() && expect(key, value, QJsonValue::Bool) && value.toBool();
}

int MemberReader::integer(QLatin1StringView key, int from, int to) {
    const QJsonValue value = take(key);
    return expect(key, value, QJsonValue::Double) ? integerAt(value, pathOf(key), from, to) : from;
}

EntryNumber MemberReader::entry(QLatin1StringView key) {
    return EntryNumber(static_cast<std::uint32_t>(integer(key, 1, static_cast<int>(limits::entries))));
}

std::optional<EntryNumber> MemberReader::entryIfAny(QLatin1StringView key) {
    return m_rest.contains(key) ? std::optional(entry(key)) : std::nullopt;
}

ShirtNumber MemberReader::shirt(QLatin1StringView key) {
    return ShirtNumber(integer(key, lowestShirt, highestShirt));
}

std::optional<ShirtNumber> MemberReader::shirtIfAny(QLatin1StringView key) {
    return m_rest.contains(key) ? std::optional(shirt(key)) : std::nullopt;
}

std::vector<ShirtNumber> MemberReader::shirts(QLatin1StringView key, qsizetype atLeast, qsizetype atMost) {
    const QJsonArray array = list(key, atLeast, atMost, atLeast > 0);
    std::vector<ShirtNumber> numbers;
    for (qsizetype i = 0; i < array.size() && !hasFault(); ++i)
        numbers.emplace_back(integerAt(array[i], pathOf(key, i), lowestShirt, highestShirt));
    return numbers;
}

QJsonValue MemberReader::take(QLatin1StringView key) {
    return m_rest.contains(key) ? m_rest.take(key) : QJsonValue(QJsonValue::Undefined);
}

void MemberReader::report(Code code, QLatin1StringView key) {
    reportAt(code, pathOf(key));
}

void MemberReader::reportAt(Code code, const QString& path) {
    if (!m_fault)
        m_fault = EntryJsonError{code, path};
}

void MemberReader::refuseTheRest() {
    if (!m_rest.isEmpty())
        reportAt(Code::UnknownMember, m_path + m_rest.begin().key());
}

QString MemberReader::pathOf(QLatin1StringView key) const {
    return m_path + key;
}

QString MemberReader::pathOf(QLatin1StringView key, qsizetype index) const {
    return m_path + key + u'.' + QString::number(index);
}

bool MemberReader::expect(QLatin1StringView key, const QJsonValue& value, QJsonValue::Type type) {
    if (value.type() == type)
        return true;
    report(value.isUndefined() ? Code::MissingMember : Code::WrongType, key);
    return false;
}

QString MemberReader::stringIfAny(QLatin1StringView key) {
    const QJsonValue value = take(key);
    return !value.isUndefined() && expect(key, value, QJsonValue::String) ? value.toString() : QString();
}

QString MemberReader::checked(QLatin1StringView key, const QString& text, bool good) {
    if (!good)
        report(Code::OutOfRange, key);
    return text;
}

QJsonArray MemberReader::list(QLatin1StringView key, qsizetype atLeast, qsizetype atMost, bool required) {
    const QJsonValue value = take(key);
    if ((value.isUndefined() && !required) || !expect(key, value, QJsonValue::Array))
        return {};
    const QJsonArray array = value.toArray();
    if (array.size() < atLeast || array.size() > atMost)
        report(Code::OutOfRange, key);
    return array;
}

int MemberReader::integerAt(const QJsonValue& value, const QString& path, int from, int to) {
    // A value that toInteger() cannot give comes back as what it was asked to give instead.
    constexpr qint64 none = std::numeric_limits<qint64>::min();
    const qint64 integer = value.toInteger(none);
    if (integer == none)
        reportAt(Code::WrongType, path);
    else if (integer < from || integer > to)
        reportAt(Code::OutOfRange, path);
    return hasFault() ? from : static_cast<int>(integer);
}

} // namespace setfolio
