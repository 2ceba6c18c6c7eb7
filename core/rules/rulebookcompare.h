// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What a league's own rulebook has changed, and what is to be looked up before a season.
#pragma once

#include "core/rules/rulebook.h"

#include <QJsonValue>

#include <vector>

namespace setfolio {

/// A setting that has not the published value.
struct RulebookDifference {
    QString key;          ///< "substitution-limit"
    QJsonValue published; ///< both as they stand in the file
    QJsonValue own;
    bool operator==(const RulebookDifference&) const = default;
};

/// The settings whose values differ, in the order of rulebookSettings(); names and sources are not compared.
[[nodiscard]] std::vector<RulebookDifference> rulebookDifferences(const Rulebook& published, const Rulebook& own);

/// A value or a statement that differs between leagues or is not published.
struct OpenPoint {
    QString key;
    QJsonValue value; ///< as it stands in the file; undefined for a statement
    Source source;
    bool operator==(const OpenPoint&) const = default;
};

/// Settings in the order of rulebookSettings(), then statements by their key.
[[nodiscard]] std::vector<OpenPoint> openPoints(const Rulebook& rulebook);

} // namespace setfolio
