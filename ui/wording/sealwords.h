// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What is said of a file that was held against a seal from paper.
#pragma once

#include "core/record/sealcheck.h"

#include <QStringList>

namespace setfolio {

/// Lines to read one after another: the verdict first, then what there is to look at.
[[nodiscard]] QStringList wordsFor(const SealCheck& check, const QString& path);

} // namespace setfolio
