// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Puts members into a JSON object as FORMAT.md wants them: what says no more than its absence is left out.
#pragma once

#include "core/ledger/entrywords.h"
#include "core/ledger/textforms.h"

#include <QJsonArray>
#include <QJsonObject>

#include <vector>

namespace setfolio {

class MemberWriter {
public:
    void put(QLatin1StringView key, const QJsonValue& value) { m_json.insert(key, value); }
    void text(QLatin1StringView key, const QString& text) {
        if (!text.isEmpty())
            put(key, text);
    }
    void date(QLatin1StringView key, QDate date) { text(key, dateText(date)); }
    void timeOfDay(QLatin1StringView key, QTime time) { text(key, timeOfDayText(time)); }
    void flag(QLatin1StringView key, bool value) {
        if (value)
            put(key, true);
    }
    template <typename T>
    void word(QLatin1StringView key, T value) {
        put(key, entryWord(value));
    }
    template <typename T>
    void wordUnless(T fallback, QLatin1StringView key, T value) {
        if (value != fallback)
            word(key, value);
    }
    void shirt(QLatin1StringView key, ShirtNumber number) { put(key, number.value); }
    void entry(QLatin1StringView key, EntryNumber number) { put(key, static_cast<qint64>(number.value)); }
    template <typename Numbers>
    void shirts(QLatin1StringView key, const Numbers& numbers) {
        objects(key, numbers, [](ShirtNumber number) { return number.value; });
    }
    /// A list of what `form` makes of each value.
    template <typename Values, typename Form>
    void objects(QLatin1StringView key, const Values& values, Form form) {
        QJsonArray array;
        for (const auto& value : values)
            array.append(form(value));
        put(key, array);
    }

    [[nodiscard]] QJsonObject json() const { return m_json; }

private:
    QJsonObject m_json;
};

} // namespace setfolio
