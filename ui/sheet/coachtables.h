// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The tables of the coach's pages.
#pragma once

#include "core/record/record.h"
#include "core/report/report.h"
#include "ui/sheet/table.h"

#include <span>

namespace setfolio::sheet {

/// What was won and lost in each rotation, and the sum.
[[nodiscard]] Table rotationTable(const TeamFigures& team, const QString& title, double width);
/// The same a row a set.
[[nodiscard]] Table setsTable(std::span<const SetFigures> sets, Team team, const QString& title, double width);
[[nodiscard]] Table serverTable(const std::vector<ServerFigures>& servers, const Roster& roster, double width);
/// The longest runs of both teams.
[[nodiscard]] Table runsTable(const SetFigures& set, const PerTeam<TeamName>& teams, double width);
/// Substitutions and time-outs in their place.
[[nodiscard]] Table changesTable(const SetFigures& set, const PerTeam<TeamName>& teams, double width);

} // namespace setfolio::sheet
