// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Which language the program speaks, kept in the user's settings and changed while it runs.
#pragma once

#include "ui/wording/languages.h"

#include <vector>

namespace setfolio {

/// English, and those of the others whose catalogue is compiled in; the system's before them. English alone: there is
/// nothing to choose, and the list is empty.
[[nodiscard]] std::vector<Language> languagesToChoose();

/// The user's choice; AsSystem where none has been made.
[[nodiscard]] Language chosenLanguage();
void rememberLanguage(Language language);

/// Puts the catalogues of that language in place of those spoken before, and its locale in place of the default one.
/// Windows hear of it by QEvent::LanguageChange. English needs no catalogue but for its plurals. Needs an application.
void speak(Language language);

} // namespace setfolio
