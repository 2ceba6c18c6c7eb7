// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/about.h"

#include "core/version.h"

namespace setfolio {

QString aboutLine() {
    return QStringLiteral("Setfolio %1").arg(programVersion());
}

} // namespace setfolio
