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
// A value that toInteger() cannot give comes back as what it was asked to give instead.
constexpr qint64 notAnInteger = std::numeric_limits<qint64>::min();

} // namespace

MemberReader::MemberReader(Members& members, std::optional<EntryJsonError>& fault, const QString& path)
    : m_members(members),
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
    const MemberValue value = take(key);
    std::ignore = expect(key, value, QJsonValue::String);
    const QString text = value.toString();
    return checked(key, text, isPlainText(text, limits::textCharacters, Lines::Many));
}

std::optional<QString> MemberReader::textIfAny(QLatin1StringView key) {
    return m_members.contains(key) ? std::optional(requiredText(key)) : std::nullopt;
}

QDate MemberReader::date(QLatin1StringView key) {
    const bool absent = !m_members.contains(key);
    const auto date = dateFromText(stringIfAny(key));
    if (!date && !absent)
        report(Code::OutOfRange, key);
    return date.value_or(QDate());
}

QTime MemberReader::timeOfDay(QLatin1StringView key) {
    const bool absent = !m_members.contains(key);
    const auto time = timeOfDayFromText(stringIfAny(key));
    if (!time && !absent)
        report(Code::OutOfRange, key);
    return time.value_or(QTime());
}

bool MemberReader::flag(QLatin1StringView key) {
    const MemberValue value = take(key);
    return !value.isUndefined() && expect(key, value, QJsonValue::Bool) && value.toBool();
}

int MemberReader::integer(QLatin1StringView key, int from, int to) {
    const MemberValue value = take(key);
    if (!expect(key, value, QJsonValue::Double))
        return from;
    const qint64 integer = value.toInteger(notAnInteger);
    if (const auto code = faultOf(integer, from, to))
        report(*code, key);
    return hasFault() ? from : static_cast<int>(integer);
}

std::optional<int> MemberReader::integerIfAny(QLatin1StringView key, int from, int to) {
    return m_members.contains(key) ? std::optional(integer(key, from, to)) : std::nullopt;
}

EntryNumber MemberReader::entry(QLatin1StringView key) {
    return EntryNumber(static_cast<std::uint32_t>(integer(key, 1, static_cast<int>(limits::entries))));
}

std::optional<EntryNumber> MemberReader::entryIfAny(QLatin1StringView key) {
    return m_members.contains(key) ? std::optional(entry(key)) : std::nullopt;
}

ShirtNumber MemberReader::shirt(QLatin1StringView key) {
    return ShirtNumber(integer(key, lowestShirt, highestShirt));
}

std::optional<ShirtNumber> MemberReader::shirtIfAny(QLatin1StringView key) {
    return m_members.contains(key) ? std::optional(shirt(key)) : std::nullopt;
}

std::vector<ShirtNumber> MemberReader::shirts(QLatin1StringView key, qsizetype atLeast, qsizetype atMost) {
    const QJsonArray array = list(key, atLeast, atMost, atLeast > 0);
    std::vector<ShirtNumber> numbers;
    for (qsizetype i = 0; i < array.size() && !hasFault(); ++i) {
        const qint64 number = array[i].toInteger(notAnInteger);
        if (const auto code = faultOf(number, lowestShirt, highestShirt))
            reportAt(*code, pathOf(key, i));
        else
            numbers.emplace_back(static_cast<int>(number));
    }
    return numbers;
}

MemberValue MemberReader::take(QLatin1StringView key) {
    return m_members.take(key);
}

void MemberReader::report(Code code, QLatin1StringView key) {
    reportAt(code, pathOf(key));
}

void MemberReader::reportAt(Code code, const QString& path) {
    if (!m_fault)
        m_fault = EntryJsonError{code, path};
}

void MemberReader::refuseTheRest() {
    if (const auto unknown = m_members.firstUntaken())
        reportAt(Code::UnknownMember, m_path + *unknown);
}

QString MemberReader::pathOf(QLatin1StringView key) const {
    return m_path + key;
}

QString MemberReader::pathOf(QLatin1StringView key, qsizetype index) const {
    return m_path + key + u'.' + QString::number(index);
}

bool MemberReader::expect(QLatin1StringView key, const MemberValue& value, QJsonValue::Type type) {
    if (value.type() == type)
        return true;
    report(value.isUndefined() ? Code::MissingMember : Code::WrongType, key);
    return false;
}

QString MemberReader::stringIfAny(QLatin1StringView key) {
    const MemberValue value = take(key);
    return !value.isUndefined() && expect(key, value, QJsonValue::String) ? value.toString() : QString();
}

QString MemberReader::checked(QLatin1StringView key, const QString& text, bool good) {
    if (!good)
        report(Code::OutOfRange, key);
    return text;
}

QJsonArray MemberReader::list(QLatin1StringView key, qsizetype atLeast, qsizetype atMost, bool required) {
    const MemberValue value = take(key);
    if ((value.isUndefined() && !required) || !expect(key, value, QJsonValue::Array))
        return {};
    const QJsonArray array = value.toArray();
    if (array.size() < atLeast || array.size() > atMost)
        report(Code::OutOfRange, key);
    return array;
}

std::optional<EntryJsonError::Code> MemberReader::faultOf(qint64 integer, int from, int to) {
    if (integer == notAnInteger)
        return Code::WrongType;
    return integer < from || integer > to ? std::optional(Code::OutOfRange) : std::nullopt;
}

} // namespace setfolio
