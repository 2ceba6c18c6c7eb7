// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// How all windows appear, as the user has chosen it: the look and the size of the words. The program's palette and
/// font carry both, so that every window hears of a change from Qt.
#pragma once

#include <array>
#include <cstdint>

namespace setfolio {

/// What the View menu offers; without a choice, the theme that the desktop's palette asks for.
enum class LookChoice : std::uint8_t { AsSystem, Light, Dark, HighContrast };
inline constexpr std::array allLookChoices{LookChoice::AsSystem, LookChoice::Light, LookChoice::Dark,
                                           LookChoice::HighContrast};

/// In percent of the usual size.
inline constexpr std::array textSizes{100, 125, 150, 200};

/// The choice that is in force. These need an application.
[[nodiscard]] LookChoice programLook();
void setProgramLook(LookChoice choice);
[[nodiscard]] int programTextSize();
/// Where the desktop's own words are larger than the usual ones, these percents are of theirs; twice the usual size is
/// the most.
void setProgramTextSize(int percent);

/// By how much the words of windows are larger than usual, 1 to 2.
[[nodiscard]] double textScale();
/// A measure in pixels that has to grow with the words.
[[nodiscard]] int scaled(double pixels);

} // namespace setfolio
