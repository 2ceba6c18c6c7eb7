// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/ledger/textforms.h"

#include <algorithm>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

constexpr int lastYear = 9999;

/// Whether a text has the shape of a pattern in which '0' stands for any digit.
bool hasShape(QStringView text, QStringView pattern) {
    return std::equal(text.begin(), text.end(), pattern.begin(), pattern.end(), [](QChar given, QChar wanted) {
        return wanted == u'0' ? given >= u'0' && given <= u'9' : given == wanted;
    });
}

int number(QStringView digits) {
    int number = 0;
    for (const QChar digit : digits)
        number = number * 10 + (digit.unicode() - u'0');
    return number;
}

} // namespace

QString instantText(const QDateTime& time) {
    const QDateTime utc = time.toUTC();
    const QString date = dateText(utc.date());
    if (!utc.isValid() || date.isEmpty())
        return {};
    return date + u'T' + utc.time().toString(u"HH:mm:ss.zzz") + u'Z';
}

std::optional<QDateTime> instantFromText(QStringView text) {
    if (!hasShape(text, u"0000-00-00T00:00:00.000Z"))
        return {};
    const auto date = dateFromText(text.first(10));
    const QTime time(number(text.sliced(11, 2)), number(text.sliced(14, 2)), number(text.sliced(17, 2)),
                     number(text.sliced(20, 3)));
    if (!date || !time.isValid())
        return {};
    return QDateTime(*date, time, Qt::UTC);
}

QString dateText(QDate date) {
    return date.isValid() && date.year() >= 1 && date.year() <= lastYear ? date.toString(Qt::ISODate) : QString();
}

std::optional<QDate> dateFromText(QStringView text) {
    if (!hasShape(text, u"0000-00-00"))
        return {};
    const QDate date(number(text.first(4)), number(text.sliced(5, 2)), number(text.sliced(8, 2)));
    return date.isValid() ? std::optional(date) : std::nullopt;
}

QString timeOfDayText(QTime time) {
    return time.isValid() ? time.toString(u"HH:mm") : QString();
}

std::optional<QTime> timeOfDayFromText(QStringView text) {
    if (!hasShape(text, u"00:00"))
        return {};
    const QTime time(number(text.first(2)), number(text.sliced(3, 2)));
    return time.isValid() ? std::optional(time) : std::nullopt;
}

bool isDigest(QStringView text) {
    return text.size() == 64 && std::all_of(text.begin(), text.end(), [](QChar c) {
               return (c >= u'0' && c <= u'9') || (c >= u'a' && c <= u'f');
           });
}

bool isPlainText(QStringView text, qsizetype atMost, Lines lines) {
    const auto isControl = [lines](QChar c) {
        const bool breaks = c == u'\n' || c == u'\t';
        return c.category() == QChar::Other_Control && !(breaks && lines == Lines::Many);
    };
    const auto lowHalves = std::count_if(text.begin(), text.end(), [](QChar c) { return c.isLowSurrogate(); });
    return text.isValidUtf16() && text.size() - lowHalves <= atMost &&
           std::none_of(text.begin(), text.end(), isControl);
}

} // namespace setfolio
