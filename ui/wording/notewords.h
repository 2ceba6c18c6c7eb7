// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The remarks of a set as sentences.
#pragma once

#include "core/record/record.h"

#include <QString>

#include <span>

namespace setfolio {

/// "Rally 28: SAL 11 struck, replay." Codes stand for the teams; scores are home–visitors.
[[nodiscard]] QString sentence(const Note& note, const PerTeam<TeamName>& teams);
/// "Sanction at 12–9: SAL penalty, 7, rude words." The score is that of the sanctioned team first.
[[nodiscard]] QString sentence(const SanctionLine& line, const PerTeam<TeamName>& teams);

/// Of a name that its place has no room for: "In full: ...".
[[nodiscard]] QString inFullWords(const QString& name);
/// "Line judge 2: Caspian Roe".
[[nodiscard]] QString officialWords(const QString& role, const QString& name);
/// Of the numbers between the starter and those that a slot's row has room for: "SAL slot IV, after the starter: 8, 14,
/// 3; then as in the slot."
[[nodiscard]] QString olderWords(const PerTeam<TeamName>& teams, Team team, Slot slot, std::span<const Standing> older);

} // namespace setfolio
