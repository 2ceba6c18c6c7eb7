// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/jsonline.h"

#include <QJsonArray>
#include <QJsonDocument>

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

} // namespace

std::optional<QJsonObject> objectOfLine(const QByteArray& line) {
    QJsonParseError error;
    const QJsonDocument document = QJsonDocument::fromJson(line, &error);
    if (error.error != QJsonParseError::NoError || !document.isObject() || line.contains(byteOrderMark))
        return {};
    Tally tally;
    tally.takeMembers(document.object());
    // The parser keeps the last of two members of the same name and says nothing.
    if (!tally.soundStrings || tally.members != writtenMembers(line))
        return {};
    return document.object();
}

QByteArray compactJson(const QJsonObject& json) {
    return compact(QJsonDocument(json));
}

QByteArray compactJson(const QString& text) {
    const QByteArray array = compact(QJsonDocument(QJsonArray{text}));
    return array.mid(1, array.size() - 2);
}

} // namespace setfolio
