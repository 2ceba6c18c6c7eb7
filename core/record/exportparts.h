// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The parts that exportjson.h puts together.
#pragma once

#include "core/record/record.h"
#include "core/rules/finding.h"

#include <QJsonArray>
#include <QJsonObject>

#include <functional>

namespace setfolio {

[[nodiscard]] QString exportWord(Slot slot); ///< I to VI
[[nodiscard]] QString exportWord(FindingKind kind);

[[nodiscard]] QJsonValue toExport(ShirtNumber number);
[[nodiscard]] QJsonValue toExport(EntryNumber entry);
[[nodiscard]] QJsonObject toExport(const PerTeam<int>& score);
[[nodiscard]] QJsonObject toExport(const Mark& mark);
[[nodiscard]] QJsonObject toExport(const Note& note);
[[nodiscard]] QJsonObject toExport(const SanctionLine& line);
[[nodiscard]] QJsonObject toExport(const SetRecord& set);
[[nodiscard]] QJsonObject toExport(const SignOffRecord& signOff);

/// A list, each of its values by toExport.
template <typename Values>
[[nodiscard]] QJsonArray listOf(const Values& values) {
    QJsonArray list;
    for (const auto& value : values)
        list.append(toExport(value));
    return list;
}

/// Both teams, by name.
template <typename T>
[[nodiscard]] QJsonObject ofBoth(const PerTeam<T>& teams, const std::function<QJsonValue(const T&)>& how) {
    return {{QStringLiteral("home"), how(teams.home)}, {QStringLiteral("visitors"), how(teams.visitors)}};
}

} // namespace setfolio
