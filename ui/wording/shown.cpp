// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/shown.h"

namespace setfolio {

QString asShown(const QString& text) {
    QString shown = text;
    for (QChar& c : shown)
        if ((c >= QChar(0x202A) && c <= QChar(0x202E)) || (c >= QChar(0x2066) && c <= QChar(0x2069)))
            c = QChar(0x25A1);
    return shown;
}

} // namespace setfolio
