// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/sanctionwords.h"

#include <QCoreApplication>

#include <array>

namespace setfolio {

namespace {

struct Sanctions {
    Q_DECLARE_TR_FUNCTIONS(Sanctions)
};

QString roleWords(BenchRole role) {
    switch (role) {
    case BenchRole::Coach:
        return Sanctions::tr("coach");
    case BenchRole::AssistantCoach:
        return Sanctions::tr("assistant coach");
    case BenchRole::SecondAssistantCoach:
        return Sanctions::tr("second assistant coach");
    case BenchRole::Therapist:
        return Sanctions::tr("therapist");
    case BenchRole::Doctor:
        return Sanctions::tr("doctor");
    case BenchRole::Other:
        return Sanctions::tr("bench");
    }
    Q_UNREACHABLE();
}

} // namespace

QString levelWords(SanctionLevel level) {
    switch (level) {
    case SanctionLevel::Warning:
        return Sanctions::tr("warning");
    case SanctionLevel::Penalty:
        return Sanctions::tr("penalty");
    case SanctionLevel::Expulsion:
        return Sanctions::tr("expulsion");
    case SanctionLevel::Disqualification:
        return Sanctions::tr("disqualification");
    }
    Q_UNREACHABLE();
}

QString delayWords(DelayLevel level) {
    return level == DelayLevel::Warning ? Sanctions::tr("delay warning") : Sanctions::tr("delay penalty");
}

QString memberLetters(const Member& who) {
    static const std::array letters{QStringLiteral("C"), QStringLiteral("AC1"), QStringLiteral("AC2"),
                                    QStringLiteral("T"), QStringLiteral("M"),   QStringLiteral("B")};
    return std::visit(Overloaded{[](ShirtNumber number) { return QString::number(number.value); },
                                 [](BenchRole role) { return letters.at(static_cast<std::size_t>(role)); }},
                      who);
}

QString delayLetters(DelayLevel level) {
    return level == DelayLevel::Warning ? QStringLiteral("YUD") : QStringLiteral("RUD");
}

QString delayLetter() {
    return QStringLiteral("D");
}

QString cardLetter(bool red) {
    return red ? QStringLiteral("R") : QStringLiteral("Y");
}

QString improperWords() {
    return Sanctions::tr("improper");
}

QString memberWords(const Member& who) {
    return std::visit(Overloaded{[](ShirtNumber number) { return QString::number(number.value); },
                                 [](BenchRole role) { return roleWords(role); }},
                      who);
}

} // namespace setfolio
