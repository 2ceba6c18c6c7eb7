// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The table of a rulebook's settings: key in the file, field, lawful range. Adding a setting is a field in one of the
/// structs of rulebook.h and a row here; a new enum has its words in settingwords.h.
#pragma once

#include "core/rules/rulebook.h"

#include <span>
#include <variant>

namespace setfolio {

/// A whole number within a range.
struct NumberSetting {
    int Rulebook::*field;
    int lowest;
    int highest;
};
/// A whole number, or none (null in the file).
struct OptionalSetting {
    std::optional<int> Rulebook::*field;
    int lowest;
    int highest;
};
/// A list of whole numbers: the lowest, and so many on.
struct ListSetting {
    std::vector<int> Rulebook::*field;
    int lowest;
    int highest;
    int step = 1;
    [[nodiscard]] bool allows(int number) const {
        return number >= lowest && number <= highest && (number - lowest) % step == 0;
    }
};
/// Yes or no: true or false in the file.
struct FlagSetting {
    bool Rulebook::*field;
};
/// One of some words: the value of an enum, by its place.
struct WordSetting {
    std::size_t (*get)(const Rulebook&);
    void (*set)(Rulebook&, std::size_t);
    std::span<const char* const> words;
};
/// Rungs of sanctions, each of a higher level than the one before.
struct LadderSetting {
    std::vector<CardStep> Rulebook::*field;
};
/// Who signs, in order, nobody twice.
struct SignersSetting {
    std::vector<Signer> Rulebook::*field;
};

struct Setting {
    const char* key;
    std::variant<NumberSetting, OptionalSetting, ListSetting, FlagSetting, WordSetting, LadderSetting, SignersSetting>
        how;
};

/// All settings, in the order to be shown.
[[nodiscard]] std::span<const Setting> rulebookSettings();
/// The setting of that key, or none.
[[nodiscard]] const Setting* settingOf(const QString& key);

} // namespace setfolio
