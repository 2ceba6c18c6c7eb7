// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A rulebook is data: every value a setting with its source beside it. The published ones lie in resources/rulebooks;
/// the one a match is played under travels inside the match.
#pragma once

#include "core/rules/liberorules.h"
#include "core/rules/requestrules.h"
#include "core/rules/sanctionrules.h"
#include "core/rules/servicerules.h"
#include "core/rules/setrules.h"
#include "core/rules/tablerules.h"

#include <QJsonObject>
#include <QMap>
#include <QString>

#include <tl/expected.hpp>

#include <vector>

namespace setfolio {

/// Where the value of a setting comes from.
struct Source {
    QString text;  ///< the document and the rule number, or "common practice", or "from memory"
    QString grade; ///< "A" the rule-making body's own text, "B" teaching text of an association, empty when unpublished
    bool open = false; ///< it differs between leagues or is not published: to be looked up before the season
    bool operator==(const Source&) const = default;
};

/// The settings are the members of the structs it is made of, and are read as its own: `rulebook.setPoints`. Their
/// defaults are the high-school values. Keys, ranges and words in the file: rulebooksettings.h.
struct Rulebook : SetRules,
                  ServiceRules,
                  SubstitutionRules,
                  TimeOutRules,
                  LiberoRules,
                  SanctionRules,
                  DeadlineRules,
                  SheetRules {
    QString id;     ///< "high-school"
    QString name;   ///< "High school (NFHS)"
    QString season; ///< "2026-27"

    /// By the setting's key, e.g. "substitution-limit", or by a statement's: a rule without a value.
    QMap<QString, Source> sources;

    bool operator==(const Rulebook&) const = default;
};

/// Why a rulebook could not be read, and at which setting.
struct RulebookError {
    enum class Code { NotJson, UnknownSetting, MissingSetting, WrongType, OutOfRange };
    Code code = Code::NotJson;
    QString setting;
};

/// Reads a rulebook from the JSON object of resources/schema/rulebook.schema.json. Unknown settings are refused.
[[nodiscard]] tl::expected<Rulebook, RulebookError> rulebookFromJson(const QJsonObject& json);
/// The inverse: rulebookFromJson(toJson(r)) == r.
[[nodiscard]] QJsonObject toJson(const Rulebook& rulebook);

/// The published rulebook of that id, from the program's own resources; an error if there is none.
[[nodiscard]] tl::expected<Rulebook, RulebookError> publishedRulebook(const QString& id);
/// The ids of all published rulebooks, in the order to be offered.
[[nodiscard]] std::vector<QString> publishedRulebookIds();

} // namespace setfolio
