// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/signoffwords.h"

#include "ui/wording/fill.h"

#include <QCoreApplication>

namespace setfolio {

namespace {

struct Say {
    Q_DECLARE_TR_FUNCTIONS(setfolio::SignOffWords)
};

QString teamWords(const PerTeam<TeamName>& teams, Team team) {
    const TeamName& name = teams[team];
    if (!name.code.isEmpty())
        return name.code;
    if (!name.name.isEmpty())
        return name.name;
    return team == Team::Home ? Say::tr("Home") : Say::tr("Visitors");
}

} // namespace

QString words(SignOffLabel label) {
    switch (label) {
    case SignOffLabel::SignedOnScreen:
        return Say::tr("Signature, on screen");
    case SignOffLabel::UnderProtest:
        return Say::tr("protest");
    case SignOffLabel::NotSigned:
        return Say::tr("not signed");
    case SignOffLabel::NamesLeftOut:
        return Say::tr("name left out");
    case SignOffLabel::Seal:
        return Say::tr("Seal");
    case SignOffLabel::SealOfOriginal:
        return Say::tr("Seal of the original");
    }
    Q_UNREACHABLE();
}

QString whatIsSigned(std::optional<int> set) {
    return set ? fill(Say::tr("set %1"), {QString::number(*set)}) : Say::tr("match");
}

QString signerWords(Signer role) {
    switch (role) {
    case Signer::Scorer:
        return Say::tr("scorer");
    case Signer::AssistantScorer:
        return Say::tr("assistant scorer");
    case Signer::Captains:
        return Say::tr("captain");
    case Signer::Coaches:
        return Say::tr("coach");
    case Signer::SecondReferee:
        return Say::tr("second referee");
    case Signer::FirstReferee:
        return Say::tr("first referee");
    }
    return {};
}

QString signatoryWords(const Signatory& who, const PerTeam<TeamName>& teams) {
    QString words = signerWords(who.role);
    if (who.team)
        return fill(Say::tr("%1 %2"), {teamWords(teams, *who.team), words});
    if (!words.isEmpty())
        words[0] = words[0].toUpper();
    return words;
}

QString protestWords(const QString& role) {
    return fill(Say::tr("%1, under protest"), {role});
}

} // namespace setfolio
