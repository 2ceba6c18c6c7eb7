// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/version.h"

namespace setfolio {

QString programVersion() {
    return QStringLiteral(SETFOLIO_VERSION);
}

} // namespace setfolio
