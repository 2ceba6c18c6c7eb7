// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The languages that the program speaks.
#pragma once

#include <QLocale>
#include <QString>

#include <array>

namespace setfolio {

enum class Language : std::uint8_t { AsSystem, English, Spanish, French };
inline constexpr std::array allLanguages{Language::AsSystem, Language::English, Language::Spanish, Language::French};

/// In the language itself, so that it is found by whoever reads only that: "Español".
[[nodiscard]] QString nameOf(Language language);

/// "en", "es", "fr"; empty for AsSystem.
[[nodiscard]] QString codeOf(Language language);
/// The language of that code, else AsSystem.
[[nodiscard]] Language languageOf(const QString& code);

/// The words' language, with the dates, numbers and paper of the system's country.
[[nodiscard]] QLocale localeFor(Language language, const QLocale& system);

} // namespace setfolio
