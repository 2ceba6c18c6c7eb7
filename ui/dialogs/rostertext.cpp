// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/rostertext.h"

#include "ui/dialogs/delimited.h"
#include "ui/dialogs/rostercsv.h"

#include <QRegularExpression>

#include <algorithm>
#include <array>
#include <map>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

enum class Column : std::uint8_t { Number, Name, FirstName, LastName, Captain, Libero, Role, Unknown };

Column columnNamed(const QString& heading) {
    static const std::map<QString, Column> headings{
        {u"number"_s, Column::Number},
        {u"no"_s, Column::Number},
        {u"nr"_s, Column::Number},
        {u"#"_s, Column::Number},
        {u"num"_s, Column::Number},
        {u"shirt"_s, Column::Number},
        {u"shirt number"_s, Column::Number},
        {u"shirt no"_s, Column::Number},
        {u"name"_s, Column::Name},
        {u"player"_s, Column::Name},
        {u"player name"_s, Column::Name},
        {u"full name"_s, Column::Name},
        {u"first name"_s, Column::FirstName},
        {u"first"_s, Column::FirstName},
        {u"given name"_s, Column::FirstName},
        {u"last name"_s, Column::LastName},
        {u"last"_s, Column::LastName},
        {u"family name"_s, Column::LastName},
        {u"surname"_s, Column::LastName},
        {u"captain"_s, Column::Captain},
        {u"c"_s, Column::Captain},
        {u"libero"_s, Column::Libero},
        {u"l"_s, Column::Libero},
        {u"role"_s, Column::Role},
        {u"position"_s, Column::Role},
    };
    QString plain = heading.toLower().simplified();
    while (plain.endsWith(u'.') || plain.endsWith(u':'))
        plain.chop(1);
    const auto found = headings.find(plain);
    return found == headings.end() ? Column::Unknown : found->second;
}

using Columns = std::vector<Column>;

/// The columns that a row of headings names; none when the row is not one.
Columns headingsOf(const DelimitedRow& row) {
    Columns columns;
    for (const QString& field : row.fields)
        columns.push_back(columnNamed(field));
    const bool namesNumber = std::ranges::count(columns, Column::Number) > 0;
    const bool holdsNumber =
        std::ranges::any_of(row.fields, [](const QString& field) { return numberFromText(field).isValid(); });
    return namesNumber && !holdsNumber ? columns : Columns();
}

/// Which of the first two columns holds more numbers decides which one the number is.
Columns columnsWithoutHeadings(const std::vector<DelimitedRow>& rows) {
    std::array<int, 2> numbers{};
    for (const DelimitedRow& row : rows) {
        for (std::size_t column = 0; column < 2 && column < static_cast<std::size_t>(row.fields.size()); ++column)
            numbers.at(column) += numberFromText(row.fields.at(static_cast<qsizetype>(column))).isValid() ? 1 : 0;
    }
    if (numbers[1] > numbers[0])
        return {Column::Name, Column::Number, Column::Captain, Column::Libero};
    return {Column::Number, Column::Name, Column::Captain, Column::Libero};
}

bool saysYes(const QString& field) {
    const QString plain = field.toLower();
    return !plain.isEmpty() && plain != u"0" && plain != u"no" && plain != u"n" && plain != u"false" && plain != u"-";
}

/// Marks that say what they mean wherever they stand; false when the field is none.
bool takeMark(const QString& field, RosterRow& row) {
    const QString plain = field.toLower();
    const bool captain = plain == u"c" || plain == u"captain";
    const bool libero = plain == u"l" || plain == u"libero";
    row.captain = row.captain || captain;
    row.libero = row.libero || libero;
    return captain || libero;
}

void takeField(Column column, const QString& field, RosterRow& row) {
    switch (column) {
    case Column::Number:
        row.number = field;
        return;
    case Column::Name:
    case Column::FirstName:
    case Column::LastName:
        // "Last, First" columns are put in the order in which a name is said
        row.name = column == Column::FirstName ? field + u' ' + row.name : row.name + u' ' + field;
        row.name = row.name.simplified();
        return;
    case Column::Captain:
        if (!takeMark(field, row))
            row.captain = row.captain || saysYes(field);
        return;
    case Column::Libero:
        if (!takeMark(field, row))
            row.libero = row.libero || saysYes(field);
        return;
    case Column::Role:
        takeMark(field, row);
        return;
    case Column::Unknown:
        return;
    }
    Q_UNREACHABLE();
}

/// "7 Ada Lund" in one field.
void splitNumberAndName(RosterRow& row) {
    static const QRegularExpression numberThenName(u"^#?\\s*(\\d{1,2})[.)\\s:-]\\s*(\\D.*)$"_s);
    const auto match = numberThenName.match(row.number);
    if (!row.name.isEmpty() || !match.hasMatch())
        return;
    row.number = match.captured(1);
    row.name = match.captured(2);
}

/// "Ada Lund (C)": the mark is taken and the brackets go.
void takeMarkBehindName(RosterRow& row) {
    static const QRegularExpression bracketed(u"^(.*\\S)\\s*[(\\[](\\w+)[)\\]]$"_s);
    const auto match = bracketed.match(row.name);
    if (match.hasMatch() && takeMark(match.captured(2), row))
        row.name = match.captured(1);
}

RosterRow rowFrom(const DelimitedRow& fields, const Columns& columns) {
    RosterRow row;
    for (qsizetype place = 0; place < fields.fields.size() && place < std::ssize(columns); ++place)
        takeField(columns.at(static_cast<std::size_t>(place)), plainCell(fields.fields.at(place)), row);
    splitNumberAndName(row);
    takeMarkBehindName(row);
    if (row.number.startsWith(u'#'))
        row.number = row.number.mid(1).trimmed();
    return row;
}

} // namespace

RosterText rosterFromText(const QString& text) {
    RosterText result;
    Delimited table = readDelimited(text);
    if (table.openQuote > 0)
        result.problems.push_back({.code = RosterProblem::Code::QuoteNotClosed, .line = table.openQuote});
    Columns columns = table.rows.empty() ? Columns() : headingsOf(table.rows.front());
    if (columns.empty())
        columns = columnsWithoutHeadings(table.rows);
    else
        table.rows.erase(table.rows.begin());
    for (const DelimitedRow& fields : table.rows) {
        if (std::ssize(result.rows) == mostRosterLines) {
            result.problems.push_back(
                {.code = RosterProblem::Code::TooManyLines, .line = fields.line, .highest = mostRosterLines});
            break;
        }
        result.rows.push_back(rowFrom(fields, columns));
    }
    return result;
}

} // namespace setfolio
