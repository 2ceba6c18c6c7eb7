// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/jsonline.h"

#include <QJsonArray>
#include <QJsonDocument>

#include <algorithm>

namespace setfolio {

namespace {

/// In JSON a colon outside of strings stands for one member.
qsizetype writtenMembers(const QByteArray& line) {
    qsizetype colons = 0;
    bool inString = false;
    for (qsizetype i = 0; i < line.size(); ++i) {
        const char c = line[i];
        if (inString && c == '\\')
            ++i;
        else if (c == '"')
            inString = !inString;
        else if (c == ':' && !inString)
            ++colons;
    }
    return colons;
}

struct Tally {
    qsizetype members = 0;
    bool soundStrings = true;

    void take(const QJsonValue& value) {
        if (value.isString())
            soundStrings = soundStrings && value.toString().isValidUtf16();
        else if (value.isArray())
            takeEach(value.toArray());
        else if (value.isObject())
            takeMembers(value.toObject());
    }
    void takeEach(const QJsonArray& array) {
        for (const auto& value : array)
            take(value);
    }
    void takeMembers(const QJsonObject& object) {
        members += object.size();
        for (auto member = object.begin(); member != object.end(); ++member) {
            soundStrings = soundStrings && member.key().isValidUtf16();
            take(member.value());
        }
    }
};

// The parser drops it from the start of a string, unless it is escaped.
const QByteArray byteOrderMark = QByteArrayLiteral("\xEF\xBB\xBF");

QByteArray compact(const QJsonDocument& document) {
    return document.toJson(QJsonDocument::Compact).replace(byteOrderMark, "\\ufeff");
}

/// Reads a line of the plainest kind from left to right.
class PlainLine {
public:
    explicit PlainLine(const QByteArray& line) : m_rest(line) {}

    std::optional<Members> members() {
        Members members;
        members.reserve(8);
        if (!take('{'))
            return {};
        do {
            const auto key = text();
            if (!key || !take(':') || members.contains(*key))
                return {};
            const auto found = value();
            if (!found)
                return {};
            members.add(*key, *found);
        } while (take(','));
        return take('}') && m_rest.empty() ? std::optional(std::move(members)) : std::nullopt;
    }

private:
    bool take(char c) {
        if (m_rest.empty() || m_rest.front() != c)
            return false;
        m_rest = m_rest.sliced(1);
        return true;
    }
    QLatin1StringView takeFirst(qsizetype count) {
        const QLatin1StringView taken(m_rest.data(), count);
        m_rest = m_rest.sliced(count);
        return taken;
    }
    std::optional<QLatin1StringView> text() {
        if (!take('"'))
            return {};
        const auto end = std::find_if_not(m_rest.begin(), m_rest.end(),
                                          [](char c) { return c >= ' ' && c <= '~' && c != '"' && c != '\\'; });
        const QLatin1StringView text = takeFirst(end - m_rest.begin());
        return take('"') ? std::optional(text) : std::nullopt;
    }
    std::optional<qint64> integer() {
        const auto end = std::find_if_not(m_rest.begin(), m_rest.end(), [](char c) { return c >= '0' && c <= '9'; });
        const QLatin1StringView digits = takeFirst(end - m_rest.begin());
        constexpr qsizetype mostDigits = 9;
        if (digits.isEmpty() || digits.size() > mostDigits || (digits.front() == QLatin1Char('0') && digits.size() > 1))
            return {};
        qint64 number = 0;
        for (const char digit : digits)
            number = number * 10 + (digit - '0');
        return number;
    }
    std::optional<MemberValue> value() {
        if (m_rest.empty() || m_rest.front() != '"') {
            const auto number = integer();
            return number ? std::optional(MemberValue(*number)) : std::nullopt;
        }
        const auto words = text();
        return words ? std::optional(MemberValue(*words)) : std::nullopt;
    }

    QByteArrayView m_rest;
};

} // namespace

std::optional<Members> membersOfLine(const QByteArray& line) {
    auto plain = membersOfPlainLine(line);
    return plain ? std::move(plain) : membersOfAnyLine(line);
}

std::optional<Members> membersOfPlainLine(const QByteArray& line) {
    return PlainLine(line).members();
}

std::optional<Members> membersOfAnyLine(const QByteArray& line) {
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(line, &error);
    if (error.error != QJsonParseError::NoError || !document.isObject() || line.contains(byteOrderMark))
        return {};
    Tally tally;
    tally.takeMembers(document.object());
    // The parser keeps the last of two members of the same name and says nothing.
    if (!tally.soundStrings || tally.members != writtenMembers(line))
        return {};
    return Members(document.object());
}

QByteArray compactJson(const QJsonObject& json) {
    return compact(QJsonDocument(json));
}

QByteArray compactJson(const QString& text) {
    const QByteArray array = compact(QJsonDocument(QJsonArray{text}));
    return array.mid(1, array.size() - 2);
}

} // namespace setfolio
