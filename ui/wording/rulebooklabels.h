// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What a rulebook's settings, and the words in its file, are called.
#pragma once

#include <QString>

namespace setfolio {

/// "Substitutions, a team in a set" for "substitution-limit"; the key itself if it is not known.
[[nodiscard]] QString settingLabel(const QString& key);
/// The title of the group of settings that begins with this one, "Substitutions" for "substitution-limit"; empty for a
/// setting within a group. The rules without a value are the group of no key.
[[nodiscard]] QString groupBeginningWith(const QString& key);
/// "after each set" for "each-set": it reads on from the setting's label; the word itself if it is not known.
[[nodiscard]] QString settingPhrase(const QString& word);
/// What it means that a setting has no number: "none", or for some keys "no limit" or "any".
[[nodiscard]] QString settingWithoutNumber(const QString& key);

} // namespace setfolio
