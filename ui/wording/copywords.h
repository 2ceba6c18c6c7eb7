// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What is said of a copy of a match before it is saved.
#pragma once

#include "core/record/export.h"
#include "core/record/nameless.h"

#include <QString>

namespace setfolio {

/// "A match file"
[[nodiscard]] QString nameOf(ExportForm form);
/// For the list of files to choose from: "Matches (*.setfolio)".
[[nodiscard]] QString filesFilter(ExportForm form);
/// What is in the copy and what is left out, whether the codes of the seals hold for it, and whether persons are named.
[[nodiscard]] QString aboutCopy(ExportForm form, Names names, bool holdsNames);

} // namespace setfolio
