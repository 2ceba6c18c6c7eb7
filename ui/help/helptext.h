// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// How things are entered, on one page, made from the table of commands and the keys that are in force.
#pragma once

#include "ui/table/commands.h"

#include <QString>

#include <vector>

namespace setfolio {

/// A rally, a substitution, a time-out ...
struct HelpPart {
    QString title;
    QString how;
};
[[nodiscard]] std::vector<HelpPart> helpParts();

/// A command that has a key.
struct HelpKey {
    QString command;
    QString keys; ///< all of them, "Backspace, Ctrl+Z"
};
[[nodiscard]] std::vector<HelpKey> helpKeys(TableMenu menu);

/// The whole page as HTML: the parts, then the keys by menu.
[[nodiscard]] QString helpPage();

} // namespace setfolio
