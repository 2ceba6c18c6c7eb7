// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Text with columns, as a spreadsheet copies it or saves it (RFC 4180, with tab or semicolon in the place of the
/// comma).
#pragma once

#include <QByteArray>
#include <QString>
#include <QStringList>

#include <vector>

namespace setfolio {

/// A row that holds something, with the line of the text that it begins on, from 1.
struct DelimitedRow {
    int line = 1;
    QStringList fields; ///< blanks round each one taken away
    bool operator==(const DelimitedRow&) const = default;
};

struct Delimited {
    std::vector<DelimitedRow> rows; ///< rows with no content are left out
    int openQuote = 0;              ///< the line of a quotation mark that is never closed; 0 for none
};

/// The rows of a text. Lines end in LF, CRLF or CR. A quoted field may hold separators, line ends and doubled quotation
/// marks. The separator is the one of tab, semicolon and comma that stands in most lines, outside quotes;
/// of several, the first of these three.
[[nodiscard]] Delimited readDelimited(const QString& text);

/// The text of a file: UTF-8; UTF-16 by its byte order mark, or by the zeros of its plain letters; else windows-1252
/// (WHATWG Encoding Standard, 9), as older spreadsheets write it. The mark itself is left out.
[[nodiscard]] QString textOfFile(const QByteArray& bytes);

} // namespace setfolio
