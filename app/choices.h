// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What the user has chosen for all matches, kept in the user's settings.
#pragma once

#include "ui/look/appearance.h"
#include "ui/table/keys.h"
#include "ui/table/sight.h"

namespace setfolio {

/// Puts what was chosen before into force: look, size of the words, keys. Needs an application.
void wearChoices();

void rememberLook(LookChoice look);
void rememberTextSize(int percent);
void rememberKeys(const ChangedKeys& keys);

/// How much of the sheet is seen when a match is opened.
[[nodiscard]] Sight chosenSight();
void rememberSight(Sight sight);

/// Where matches are kept: the folder that the last new match was put into, at first the user's documents.
[[nodiscard]] QString matchFolder();
void rememberMatchFolder(const QString& folder);

} // namespace setfolio
