// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/markwords.h"

namespace setfolio {

QString shirtWords(ShirtNumber number) {
    return number.isValid() ? QString::number(number.value) : QStringLiteral("\u2013");
}

QString markLetters(const MarkContent& content) {
    return std::visit(
        Overloaded{
            [](const Awaiting&) { return QString(); },
            [](const ServedPoint& point) { return QString::number(point.total); },
            [](const OpeningPoint& point) { return QString::number(point.total); },
            [](const RallyLost&) { return QStringLiteral("R"); },
            [](const ServedAgain&) { return QStringLiteral("RS"); },
            [](const PenaltyLetter&) { return QStringLiteral("P"); },
            [](const SubstitutionMark& mark) { return mark.opponents ? QStringLiteral("Sx") : QStringLiteral("S"); },
            [](const TimeOutMark& mark) { return mark.opponents ? QStringLiteral("Tx") : QStringLiteral("T"); },
        },
        content);
}

QString markNumbers(const MarkContent& content) {
    const auto* mark = std::get_if<SubstitutionMark>(&content);
    return mark ? QStringLiteral("%1/%2").arg(mark->in.value).arg(mark->out.value) : QString();
}

QString liberoLetter() {
    return QStringLiteral("L");
}

QString captainLetter() {
    return QStringLiteral("C");
}

} // namespace setfolio
