// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// A window in another language, another look and on another screen than the tests have.
#pragma once

#include "tests/ui/windowscenes.h"
#include "ui/look/appearance.h"
#include "ui/wording/languages.h"

namespace setfolio::testing {

struct Worn {
    Language language = Language::English;
    LookChoice look = LookChoice::Light;
    QSize screen{1366, 768};
};

inline constexpr std::array wornLanguages{Language::English, Language::Spanish, Language::French};
inline constexpr std::array wornLooks{LookChoice::Light, LookChoice::Dark, LookChoice::HighContrast};
inline constexpr std::array wornScreens{QSize(1366, 768), QSize(1920, 1080)};
/// "light", as the arguments and the rows of tests name it.
[[nodiscard]] QString nameOfLook(LookChoice look);
[[nodiscard]] QString nameOf(const Worn& worn);

/// Words and keys are in this language from now on.
void speak(Language language);
/// The scene's window as the program would show it there; the table fills what the desktop leaves of the screen. The
/// next window is English and light again only after undress().
[[nodiscard]] ShownWindow show(const WindowScene& scene, const Worn& worn);
void undress();

} // namespace setfolio::testing
