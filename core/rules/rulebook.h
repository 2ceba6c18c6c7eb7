// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A rulebook is data: every value a setting with its source beside it. The published ones lie in resources/rulebooks;
/// the one a match is played under travels inside the match.
#pragma once

#include <QByteArray>
#include <QJsonObject>
#include <QMap>
#include <QString>

#include <tl/expected.hpp>

#include <optional>
#include <vector>

namespace setfolio {

/// How the order of service of a team that receives first is written.
enum class WrittenOrder {
    Serving, ///< slot I holds the player who serves first: court position 1 of the serving, 2 of the receiving team
    Floor,   ///< slot I holds court position 1 for both; the receiving team's first cell of slot I is crossed
};

/// Where a libero may serve.
enum class LiberoServeRule { Never, OneSlot };

/// Where the value of a setting comes from.
struct Source {
    QString text;  ///< the document and the rule number, or "common practice", or "from memory"
    QString grade; ///< "A" the rule-making body's own text, "B" teaching text of an association, empty when unpublished
    bool operator==(const Source&) const = default;
};

struct Rulebook {
    QString id;     ///< "high-school"
    QString name;   ///< "High school (NFHS)"
    QString season; ///< "2026-27"

    int setPoints = 25;
    int decidingSetPoints = 15;
    int margin = 2;
    std::optional<int> cap; ///< a set ends at this score whatever the margin
    std::vector<int> bestOf{3, 5};
    int substitutionLimit = 18; ///< a team, a set
    std::vector<int> substitutionNotices{15, 16, 17, 18};
    int timeOuts = 2; ///< a team, a set
    int timeOutSeconds = 60;
    int timeOutWarningSeconds = 45; ///< a warning sounds this long after the start; 0 for none
    int maximumLiberos = 2;
    LiberoServeRule liberoServe = LiberoServeRule::OneSlot;
    int serveSeconds = 5;
    int reServesPerTerm = 1;
    int lowestNumber = 0;
    int highestNumber = 99;
    WrittenOrder writtenOrder = WrittenOrder::Serving;
    int intervalSeconds = 180;
    int firstLineUpSeconds = 120; ///< a line-up is due this long before the end of the warm-up
    int lineUpSeconds = 60;       ///< and this long before the end of an interval

    QMap<QString, Source>
        sources; ///< by the setting's key, e.g. "substitution-limit", or by a statement's: a rule without a value

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
