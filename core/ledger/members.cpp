// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/members.h"

#include <algorithm>
#include <utility>

namespace setfolio {

QJsonValue::Type MemberValue::type() const {
    if (std::holds_alternative<QLatin1StringView>(m_value))
        return QJsonValue::String;
    if (std::holds_alternative<qint64>(m_value))
        return QJsonValue::Double;
    const auto* json = std::get_if<QJsonValue>(&m_value);
    return json ? json->type() : QJsonValue::Undefined;
}

QString MemberValue::toString() const {
    const auto* text = std::get_if<QLatin1StringView>(&m_value);
    return text ? QString(*text) : toJson().toString();
}

qint64 MemberValue::toInteger(qint64 fallback) const {
    const auto* integer = std::get_if<qint64>(&m_value);
    return integer ? *integer : toJson().toInteger(fallback);
}

QJsonValue MemberValue::toJson() const {
    const auto* json = std::get_if<QJsonValue>(&m_value);
    return json ? *json : QJsonValue(QJsonValue::Undefined);
}

Members::Members(const QJsonObject& json) {
    m_members.reserve(static_cast<std::size_t>(json.size()));
    for (auto member = json.begin(); member != json.end(); ++member)
        m_members.push_back({{}, member.key(), MemberValue(QJsonValue(member.value()))});
}

MemberValue Members::value(QLatin1StringView key) const {
    const Member* member = find(key);
    return member ? member->value : MemberValue();
}

bool Members::contains(QLatin1StringView key) const {
    return find(key) != nullptr;
}

MemberValue Members::take(QLatin1StringView key) {
    const auto found = std::ranges::find_if(m_members, [&](const Member& member) { return member.hasKey(key); });
    return found == m_members.end() || std::exchange(found->taken, true) ? MemberValue() : found->value;
}

std::optional<QString> Members::firstUntaken() const {
    std::optional<QString> first;
    for (const Member& member : m_members)
        if (!member.taken && (!first || member.name() < *first))
            first = member.name();
    return first;
}

const Members::Member* Members::find(QLatin1StringView key) const {
    const auto found = std::ranges::find_if(m_members, [&](const Member& member) { return member.hasKey(key); });
    return found == m_members.end() ? nullptr : &*found;
}

} // namespace setfolio
