// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Takes the members of a JSON object one by one and remembers the first fault, so that a decoder is a list of members.
#pragma once

#include "core/ledger/entryjson.h"
#include "core/ledger/entrywords.h"
#include "core/ledger/members.h"

#include <optional>
#include <vector>

namespace setfolio {

class MemberReader {
public:
    /// Members and fault must outlive the reader. Faults go to `fault`, which must be empty; only the first is kept.
    MemberReader(Members& members, std::optional<EntryJsonError>& fault, const QString& path = {});

    // Strings: empty when the member is absent.
    [[nodiscard]] QString name(QLatin1StringView key);
    [[nodiscard]] QString code(QLatin1StringView key);
    [[nodiscard]] QString text(QLatin1StringView key);
    [[nodiscard]] QString requiredText(QLatin1StringView key); ///< must be there, may be empty
    [[nodiscard]] std::optional<QString> textIfAny(QLatin1StringView key);

    // Invalid when the member is absent.
    [[nodiscard]] QDate date(QLatin1StringView key);
    [[nodiscard]] QTime timeOfDay(QLatin1StringView key);

    [[nodiscard]] bool flag(QLatin1StringView key); ///< false when absent
    [[nodiscard]] int integer(QLatin1StringView key, int from, int to);
    [[nodiscard]] std::optional<int> integerIfAny(QLatin1StringView key, int from, int to);
    [[nodiscard]] EntryNumber entry(QLatin1StringView key);
    [[nodiscard]] std::optional<EntryNumber> entryIfAny(QLatin1StringView key);
    [[nodiscard]] ShirtNumber shirt(QLatin1StringView key);
    [[nodiscard]] std::optional<ShirtNumber> shirtIfAny(QLatin1StringView key);
    /// Between `atLeast` and `atMost` shirt numbers; absent counts as none.
    [[nodiscard]] std::vector<ShirtNumber> shirts(QLatin1StringView key, qsizetype atLeast, qsizetype atMost);

    /// One of the words of T; must be there unless a fallback is given.
    template <typename T>
    [[nodiscard]] T word(QLatin1StringView key, std::optional<T> fallback = std::nullopt) {
        const MemberValue value = take(key);
        if (value.isUndefined() && fallback)
            return *fallback;
        if (!expect(key, value, QJsonValue::String))
            return T{};
        const auto known = valueOfEntryWord<T>(value.toString());
        if (!known)
            report(EntryJsonError::Code::OutOfRange, key);
        return known.value_or(T{});
    }

    /// An object, read by `read(MemberReader&)`, which must take all its members.
    template <typename Read>
    auto object(QLatin1StringView key, Read read) {
        const MemberValue value = take(key);
        std::ignore = expect(key, value, QJsonValue::Object);
        return inside(value.toObject(), pathOf(key), read);
    }
    /// A list of such objects; must be there.
    template <typename Read>
    auto objects(QLatin1StringView key, qsizetype atMost, Read read) {
        const QJsonArray array = list(key, 0, atMost, true);
        std::vector<decltype(read(*this))> values;
        for (qsizetype i = 0; i < array.size() && !hasFault(); ++i) {
            const QString path = pathOf(key, i);
            if (!array[i].isObject())
                reportAt(EntryJsonError::Code::WrongType, path);
            values.push_back(inside(array[i].toObject(), path, read));
        }
        return values;
    }

    /// The member as it stands, undefined when absent; for what reads it in a way of its own.
    [[nodiscard]] MemberValue take(QLatin1StringView key);
    void report(EntryJsonError::Code code, QLatin1StringView key);
    void reportAt(EntryJsonError::Code code, const QString& path);
    [[nodiscard]] bool hasFault() const { return m_fault.has_value(); }

    /// What nobody has taken is unknown.
    void refuseTheRest();

private:
    [[nodiscard]] QString pathOf(QLatin1StringView key) const;
    [[nodiscard]] QString pathOf(QLatin1StringView key, qsizetype index) const;
    [[nodiscard]] bool expect(QLatin1StringView key, const MemberValue& value, QJsonValue::Type type);
    [[nodiscard]] QString stringIfAny(QLatin1StringView key);
    [[nodiscard]] QString checked(QLatin1StringView key, const QString& text, bool good);
    [[nodiscard]] QJsonArray list(QLatin1StringView key, qsizetype atLeast, qsizetype atMost, bool required);
    /// What is wrong with what toInteger(notAnInteger) gave.
    [[nodiscard]] static std::optional<EntryJsonError::Code> faultOf(qint64 integer, int from, int to);

    template <typename Read>
    auto inside(const QJsonObject& json, const QString& path, Read read) {
        Members members(json);
        MemberReader reader(members, m_fault, path + u'.');
        auto value = read(reader);
        reader.refuseTheRest();
        return value;
    }

    Members& m_members;
    std::optional<EntryJsonError>& m_fault;
    QString m_path;
};

} // namespace setfolio
