// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rostercsv.h"

#include "core/record/exportcsv.h"

#include <QStringList>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

constexpr QChar apostrophe(u'\'');

bool startsAFormula(const QString& text) {
    return !text.isEmpty() && runsInASpreadsheet(text.front());
}

/// Whether a spreadsheet of some country begins a new cell after it.
bool separates(QChar sign) {
    return sign == u';' || sign == u',';
}

/// The text with each of its parts between separators changed.
template <typename Change>
QString eachPart(const QString& text, const Change& change) {
    QString changed;
    qsizetype begin = 0;
    for (qsizetype i = 0; i <= text.size(); ++i) {
        if (i < text.size() && !separates(text.at(i)))
            continue;
        changed += change(text.mid(begin, i - begin));
        if (i < text.size())
            changed += text.at(i);
        begin = i + 1;
    }
    return changed;
}

QString plainPart(const QString& part) {
    qsizetype signs = 0;
    while (signs < part.size() && part.at(signs) == apostrophe)
        ++signs;
    return signs > 0 && startsAFormula(part.mid(signs)) ? part.mid(1) : part;
}

QString harmlessPart(const QString& part) {
    // one that has the apostrophe already gets a second, so that exactly one is taken away again
    return startsAFormula(part) || plainPart(part) != part ? apostrophe + part : part;
}

} // namespace

QByteArray rosterCsv(std::span<const RosterRow> rows) {
    QString csv = QChar(QChar::ByteOrderMark) + u"Number,Name,Captain,Libero\r\n"_s;
    for (const RosterRow& row : rows) {
        if (row.isEmpty())
            continue;
        const QStringList cells{quotedCell(harmlessCell(row.number)), quotedCell(harmlessCell(row.name)),
                                row.captain ? u"C"_s : QString(), row.libero ? u"L"_s : QString()};
        csv += cells.join(u',') + u"\r\n"_s;
    }
    return csv.toUtf8();
}

QString harmlessCell(const QString& text) {
    return eachPart(text, harmlessPart);
}

QString plainCell(const QString& text) {
    return eachPart(text, plainPart);
}

} // namespace setfolio
