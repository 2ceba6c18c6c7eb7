// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A rulebook as it is read by people: each setting in words, its value, and where it comes from.
#pragma once

#include "core/rules/rulebook.h"

#include <vector>

namespace setfolio {

struct SettingWords {
    QString key;       ///< as in the file: "substitution-limit"
    QString label;     ///< "Substitutions, a team in a set"
    QString value;     ///< "18"; empty for a rule that has no value, only a source
    QString source;    ///< empty when none is given
    bool open = false; ///< it differs between leagues, or is not published
    bool operator==(const SettingWords&) const = default;
};

/// All settings in the order of the file, then the rules that have no value.
[[nodiscard]] std::vector<SettingWords> wordsFor(const Rulebook& rulebook);

/// Where it comes from, and of what is open that it be looked up; empty when no source is given.
[[nodiscard]] QString sourceWords(const SettingWords& setting);

/// What a setting's value is in a rulebook: "18"; empty for a rule that has none.
[[nodiscard]] QString valueWords(const QString& key, const Rulebook& rulebook);
/// "Grade A: the rule-making body's own text"; empty for a source without a grade.
[[nodiscard]] QString gradeWords(const Source& source);

/// How many points of a rulebook are open, and what to do about them; that there are none, too.
[[nodiscard]] QString openPointsWords(std::size_t count);

/// What is wrong with a rulebook that is being adapted: the setting by its title, and the way out.
[[nodiscard]] QString adaptingProblem(const RulebookError& error);
/// That a file gives no rulebook: the file, the setting by its title and its key in the file, and the way out.
[[nodiscard]] QString rulebookFileProblem(const QString& path, const RulebookError& error);

/// "High school (NFHS), 2026-27"
[[nodiscard]] QString titleOf(const Rulebook& rulebook);

/// That rules differ and the referee is right: said once, where the rulebook is chosen.
[[nodiscard]] QString rulesDiffer();

} // namespace setfolio
