// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/delimited.h"

#include <QStringDecoder>

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <set>

namespace setfolio {

namespace {

constexpr QChar quote(u'"');

/// In how many lines each of the separators stands outside quotes.
class SeparatorCount {
public:
    void take(QChar sign) {
        if (sign == quote)
            m_quoted = !m_quoted;
        else if (sign == u'\n')
            ++m_line;
        else if (!m_quoted && m_seen.contains(sign))
            m_seen[sign].insert(m_line);
    }

    /// The one of the most lines; of several, the one that a name is least likely to hold.
    [[nodiscard]] QChar best() const {
        QChar best = u'\t';
        for (const QChar separator : {QChar(u';'), QChar(u',')}) {
            if (m_seen.at(separator).size() > m_seen.at(best).size())
                best = separator;
        }
        return best;
    }

private:
    std::map<QChar, std::set<int>> m_seen{{u'\t', {}}, {u';', {}}, {u',', {}}};
    bool m_quoted = false;
    int m_line = 1;
};

QChar separatorOf(const QString& text) {
    SeparatorCount count;
    for (const QChar sign : text)
        count.take(sign);
    return count.best();
}

/// Reads one sign after the other; where it stands is its state.
class Reader {
public:
    Reader(const QString& text, Delimited& into) : m_text(text), m_separator(separatorOf(text)), m_into(into) {}

    void read() {
        for (; m_place < m_text.size(); ++m_place)
            m_quotedSince > 0 ? readQuoted(m_text.at(m_place)) : readPlain(m_text.at(m_place));
        m_into.openQuote = m_quotedSince;
        endRow();
    }

private:
    void readQuoted(QChar sign) {
        if (sign == quote && nextIs(quote)) {
            m_field += quote;
            ++m_place;
        } else if (sign == quote) {
            m_quotedSince = 0;
        } else {
            m_line += sign == u'\n' ? 1 : 0;
            m_field += sign;
        }
    }

    void readPlain(QChar sign) {
        if (sign == quote && m_field.trimmed().isEmpty()) {
            m_field.clear();
            m_quotedSince = m_line;
        } else if (sign == m_separator) {
            endField();
        } else if (sign == u'\n') {
            endRow();
            m_row.line = ++m_line;
        } else {
            m_field += sign;
        }
    }

    [[nodiscard]] bool nextIs(QChar sign) const {
        return m_place + 1 < m_text.size() && m_text.at(m_place + 1) == sign;
    }

    void endField() {
        m_row.fields << m_field.simplified();
        m_field.clear();
    }

    void endRow() {
        endField();
        const auto holdsSomething = [](const QString& field) { return !field.isEmpty(); };
        if (std::any_of(m_row.fields.cbegin(), m_row.fields.cend(), holdsSomething))
            m_into.rows.push_back(m_row);
        m_row.fields.clear();
    }

    const QString& m_text;
    QChar m_separator;
    Delimited& m_into;
    DelimitedRow m_row;
    QString m_field;
    qsizetype m_place = 0;
    int m_line = 1;
    int m_quotedSince = 0;
};

/// UTF-16 without its mark: every second byte of most letters is zero, which no text of single bytes holds.
std::optional<QStringConverter::Encoding> wideByItsZeros(const QByteArray& bytes) {
    std::array<qsizetype, 2> zeros{};
    for (qsizetype i = 0; i < bytes.size(); ++i)
        zeros.at(static_cast<std::size_t>(i % 2)) += bytes.at(i) == 0 ? 1 : 0;
    if (zeros[0] + zeros[1] < bytes.size() / 4 || zeros[0] == zeros[1])
        return {};
    return zeros[0] > zeros[1] ? QStringConverter::Utf16BE : QStringConverter::Utf16LE;
}

/// Latin-1, but for the letters and quotation marks that stand where it has control characters.
QString fromWindows1252(const QByteArray& bytes) {
    static const QString own = QStringLiteral(
        "\u20AC\u0081\u201A\u0192\u201E\u2026\u2020\u2021\u02C6\u2030\u0160\u2039\u0152\u008D\u017D\u008F"
        "\u0090\u2018\u2019\u201C\u201D\u2022\u2013\u2014\u02DC\u2122\u0161\u203A\u0153\u009D\u017E\u0178");
    QString text = QString::fromLatin1(bytes);
    for (QChar& sign : text)
        if (sign >= QChar(0x80) && sign <= QChar(0x9F))
            sign = own.at(sign.unicode() - 0x80);
    return text;
}

} // namespace

Delimited readDelimited(const QString& text) {
    QString lines = text;
    if (lines.startsWith(QChar::ByteOrderMark))
        lines.remove(0, 1);
    lines.replace(QStringLiteral("\r\n"), QStringLiteral("\n")).replace(u'\r', u'\n');
    Delimited result;
    Reader(lines, result).read();
    return result;
}

QString textOfFile(const QByteArray& bytes) {
    auto marked = QStringConverter::encodingForData(bytes);
    if (!marked)
        marked = wideByItsZeros(bytes);
    if (!marked && !bytes.isValidUtf8())
        return fromWindows1252(bytes);
    return QStringDecoder(marked.value_or(QStringConverter::Utf8)).decode(bytes);
}

} // namespace setfolio
