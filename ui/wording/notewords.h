// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The remarks of a set as sentences.
#pragma once

#include "core/record/record.h"

#include <QString>

namespace setfolio {

/// "Rally 28: SAL 11 struck, replay." Codes stand for the teams; scores are home–visitors.
[[nodiscard]] QString sentence(const Note& note, const PerTeam<TeamName>& teams);
/// "Sanction at 12–9: SAL penalty, 7, rude words." The score is that of the sanctioned team first.
[[nodiscard]] QString sentence(const SanctionLine& line, const PerTeam<TeamName>& teams);

} // namespace setfolio
