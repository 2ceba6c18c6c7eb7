// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/shown.h"

namespace setfolio {

bool steersWords(QChar character) {
    switch (character.category()) {
    case QChar::Separator_Line:
    case QChar::Separator_Paragraph:
        return true;
    case QChar::Other_Control:
        return character != u'\n' && character != u'\t';
    default:
        return (character >= QChar(0x202A) && character <= QChar(0x202E)) ||
               (character >= QChar(0x2066) && character <= QChar(0x2069));
    }
}

QString asShown(const QString& text) {
    QString shown = text;
    for (QChar& character : shown)
        if (steersWords(character))
            character = QChar(0x25A1);
    return shown;
}

QString asTaken(const QString& text) {
    QString taken;
    for (const QChar character : text) {
        if (character.isSpace())
            taken += character.category() == QChar::Separator_Space ? character : QChar(u' ');
        else if (!steersWords(character))
            taken += character;
    }
    return taken;
}

} // namespace setfolio
