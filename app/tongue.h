// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Which language the program speaks, kept in the user's settings and changed while it runs.
#pragma once

#include "ui/wording/languages.h"

namespace setfolio {

/// The user's choice; AsSystem where none has been made.
[[nodiscard]] Language chosenLanguage();
void rememberLanguage(Language language);

/// Puts the catalogues of that language in place of those spoken before, and its locale in place of the default one.
/// Windows hear of it by QEvent::LanguageChange. English needs no catalogue but for its plurals. Needs an application.
void speak(Language language);

} // namespace setfolio
