// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The table of a rulebook's settings: key in the file, field, lawful range. Adding a setting is a field in rulebook.h
/// and a row here.
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
/// A list of whole numbers.
struct ListSetting {
    std::vector<int> Rulebook::*field;
    int lowest;
    int highest;
};
/// One of some words.
struct WrittenOrderSetting {
    WrittenOrder Rulebook::*field;
};
struct LiberoServeSetting {
    LiberoServeRule Rulebook::*field;
};

struct Setting {
    const char* key;
    std::variant<NumberSetting, OptionalSetting, ListSetting, WrittenOrderSetting, LiberoServeSetting> how;
};

[[nodiscard]] std::span<const Setting> rulebookSettings();

} // namespace setfolio
