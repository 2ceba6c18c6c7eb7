// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/shown.h"

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

QString withEscapes(const QString& text) {
    QString escaped;
    for (const QChar character : text) {
        if (steersWords(character) || character.category() == QChar::Other_Control ||
            character.category() == QChar::Other_Format)
            escaped += QStringLiteral("\\u%1").arg(character.unicode(), 4, 16, QLatin1Char('0'));
        else
            escaped += character;
    }
    return escaped;
}

} // namespace setfolio
