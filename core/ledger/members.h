// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The members of a JSON object, to be taken one by one.
#pragma once

#include <QJsonArray>
#include <QJsonObject>
#include <QLatin1StringView>

#include <optional>
#include <variant>
#include <vector>

namespace setfolio {

/// What stands in a member. A text or number of a plain line is a view of its bytes, without a document behind it.
class MemberValue {
public:
    MemberValue() = default; ///< undefined: there is no such member
    explicit MemberValue(const QJsonValue& json) : m_value(json) {}
    explicit MemberValue(QLatin1StringView text) : m_value(text) {}
    explicit MemberValue(qint64 integer) : m_value(integer) {}

    [[nodiscard]] QJsonValue::Type type() const;
    [[nodiscard]] bool isUndefined() const { return type() == QJsonValue::Undefined; }
    [[nodiscard]] bool isString() const { return type() == QJsonValue::String; }
    [[nodiscard]] bool isNumber() const { return type() == QJsonValue::Double; }
    [[nodiscard]] bool isObject() const { return type() == QJsonValue::Object; }

    // Each gives an empty value, or the fallback, for a value of another type.
    [[nodiscard]] QString toString() const;
    [[nodiscard]] qint64 toInteger(qint64 fallback = 0) const; ///< the fallback for a fraction too
    [[nodiscard]] bool toBool() const { return toJson().toBool(); }
    [[nodiscard]] QJsonArray toArray() const { return toJson().toArray(); }
    [[nodiscard]] QJsonObject toObject() const { return toJson().toObject(); }

private:
    [[nodiscard]] QJsonValue toJson() const;

    std::variant<std::monostate, QLatin1StringView, qint64, QJsonValue> m_value;
};

class Members {
public:
    Members() = default;
    explicit Members(const QJsonObject& json);
    void reserve(std::size_t count) { m_members.reserve(count); }
    /// Adds a member; `key` and a text must outlive this.
    void add(QLatin1StringView key, MemberValue value) { m_members.push_back({key, {}, std::move(value)}); }

    /// The member as it stands, undefined when absent; whether it was taken does not matter.
    [[nodiscard]] MemberValue value(QLatin1StringView key) const;
    [[nodiscard]] bool contains(QLatin1StringView key) const;
    /// The same, and takes it; undefined when it was taken before.
    MemberValue take(QLatin1StringView key);
    /// Of the members nobody has taken the first by name.
    [[nodiscard]] std::optional<QString> firstUntaken() const;

private:
    struct Member {
        QLatin1StringView plainKey;
        QString key; ///< when it is not plain
        MemberValue value;
        bool taken = false;

        [[nodiscard]] bool hasKey(QLatin1StringView wanted) const {
            return plainKey.isNull() ? key == wanted : plainKey == wanted;
        }
        [[nodiscard]] QString name() const { return plainKey.isNull() ? key : QString(plainKey); }
    };
    [[nodiscard]] const Member* find(QLatin1StringView key) const;

    std::vector<Member> m_members;
};

} // namespace setfolio
