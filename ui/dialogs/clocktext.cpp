// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/dialogs/clocktext.h"

#include "ui/wording/sheetwords.h"

#include <QRegularExpression>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

namespace {

/// The hour of 24 for an hour of 12; -1 when there is no such hour.
int hourOf24(int hour, bool afterNoon) {
    if (hour < 1 || hour > 12)
        return -1;
    return hour % 12 + (afterNoon ? 12 : 0);
}

} // namespace

QTime timeFromText(const QString& text) {
    static const QRegularExpression clock(u"^(\\d{1,2}?)(?:\\s*[:.h]?\\s*(\\d{2}))?\\s*(?:([ap])\\.?\\s?m\\.?)?$"_s,
                                          QRegularExpression::CaseInsensitiveOption);
    const auto match = clock.match(text.simplified());
    if (!match.hasMatch())
        return {};
    int hour = match.captured(1).toInt();
    if (const QString half = match.captured(3).toLower(); !half.isEmpty())
        hour = hourOf24(hour, half == u"p");
    return hour < 0 ? QTime() : QTime(hour, match.captured(2).toInt());
}

QString textOfTime(QTime time, const QLocale& locale) {
    return timeWords(time, locale).simplified();
}

} // namespace setfolio
