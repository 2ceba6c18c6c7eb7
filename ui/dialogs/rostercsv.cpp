// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rostercsv.h"

#include <QStringList>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr QChar apostrophe(u'\'');

/// Signs with which a spreadsheet begins to reckon.
bool startsAFormula(const QString& text) {
    return !text.isEmpty() && u"=+-@\t\r"_s.contains(text.front());
}

QString quoted(const QString& text) {
    const bool needed = text.contains(u',') || text.contains(u'"') || text.contains(u'\n') || text.contains(u'\r') ||
                        text.contains(u'\t') || text.contains(u';');
    return needed ? u'"' + QString(text).replace(u'"', u"\"\""_s) + u'"' : text;
}

} // namespace

QByteArray rosterCsv(std::span<const RosterRow> rows) {
    QString csv = QChar(QChar::ByteOrderMark) + u"Number,Name,Captain,Libero\r\n"_s;
    for (const RosterRow& row : rows) {
        if (row.isEmpty())
            continue;
        const QStringList cells{quoted(harmlessCell(row.number)), quoted(harmlessCell(row.name)),
                                row.captain ? u"C"_s : QString(), row.libero ? u"L"_s : QString()};
        csv += cells.join(u',') + u"\r\n"_s;
    }
    return csv.toUtf8();
}

QString harmlessCell(const QString& text) {
    // one that has the apostrophe already gets a second, so that exactly one is taken away again
    const bool looksHarmless = text.startsWith(apostrophe) && plainCell(text) != text;
    return startsAFormula(text) || looksHarmless ? apostrophe + text : text;
}

QString plainCell(const QString& text) {
    if (!text.startsWith(apostrophe))
        return text;
    qsizetype signs = 0;
    while (signs < text.size() && text.at(signs) == apostrophe)
        ++signs;
    return startsAFormula(text.mid(signs)) ? text.mid(1) : text;
}

} // namespace setfolio
