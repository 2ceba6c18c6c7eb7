// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/signoffwords.h"

#include "ui/wording/fill.h"

#include <QCoreApplication>

namespace setfolio {

namespace {

struct Signing {
    Q_DECLARE_TR_FUNCTIONS(Signing)
};

QString teamWords(const PerTeam<TeamName>& teams, Team team) {
    const TeamName& name = teams[team];
    if (!name.code.isEmpty())
        return name.code;
    if (!name.name.isEmpty())
        return name.name;
    return team == Team::Home ? Signing::tr("Home") : Signing::tr("Visitors");
}

} // namespace

QString whatIsSigned(std::optional<int> set) {
    return set ? fill(Signing::tr("set %1"), {QString::number(*set)}) : Signing::tr("match");
}

QString signerWords(Signer role) {
    switch (role) {
    case Signer::Scorer:
        return Signing::tr("scorer");
    case Signer::AssistantScorer:
        return Signing::tr("assistant scorer");
    case Signer::Captains:
        return Signing::tr("captain");
    case Signer::Coaches:
        return Signing::tr("coach");
    case Signer::SecondReferee:
        return Signing::tr("second referee");
    case Signer::FirstReferee:
        return Signing::tr("first referee");
    }
    return {};
}

QString signatoryWords(const Signatory& who, const PerTeam<TeamName>& teams) {
    QString words = signerWords(who.role);
    if (who.team)
        return fill(Signing::tr("%1 %2"), {teamWords(teams, *who.team), words});
    if (!words.isEmpty())
        words[0] = words[0].toUpper();
    return words;
}

QString protestWords(const QString& role) {
    return fill(Signing::tr("%1, under protest"), {role});
}

} // namespace setfolio
