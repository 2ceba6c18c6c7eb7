// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The inks that a person may have a sheet drawn in.
#pragma once

#include <QString>

#include <array>
#include <cstdint>
#include <optional>

namespace setfolio {

/// Which colours are taken in turn, round by round. Line and weight differ in the same way in all of them, so that
/// black alone will do.
enum class InkSet : std::uint8_t {
    CobaltAndRust,   ///< after soot
    HeatherAndGorse, ///< after soot
    Greys,           ///< all colours of the sheet in the greys of their lightness
    BlackOnly,       ///< for a printer or copier of one ink
};

inline constexpr std::array allInkSets{InkSet::CobaltAndRust, InkSet::HeatherAndGorse, InkSet::Greys,
                                       InkSet::BlackOnly};

/// What a choice of inks is called.
[[nodiscard]] QString words(InkSet inks);

/// Its name where inks are chosen by name, and in the settings: "cobalt-and-rust".
[[nodiscard]] QString nameOf(InkSet inks);
[[nodiscard]] std::optional<InkSet> inkSetNamed(const QString& name);

} // namespace setfolio
