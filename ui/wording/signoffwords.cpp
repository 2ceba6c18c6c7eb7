// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/signoffwords.h"

#include "core/record/shown.h"
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
        return asShown(name.code);
    if (!name.name.isEmpty())
        return asShown(name.name);
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

QString namesLeftOutWords() {
    return Say::tr("names left out");
}

QString namesGivenWords() {
    return Say::tr("persons named");
}

QString namesSentence(bool leftOut, bool given) {
    if (leftOut)
        return Say::tr("Names of persons were left out of this document.");
    return given ? Say::tr("This document names persons.") : Say::tr("Nobody is named in this document.");
}

QString signerLine(const QString& role, SignerStands stands) {
    switch (stands) {
    case SignerStands::ToSign:
        return fill(Say::tr("%1: to sign"), {role});
    case SignerStands::HasSigned:
        return fill(Say::tr("%1: signed"), {role});
    case SignerStands::SignedUnderProtest:
        return fill(Say::tr("%1: signed under protest"), {role});
    case SignerStands::LeftUnsigned:
        return fill(Say::tr("%1: left unsigned"), {role});
    }
    Q_UNREACHABLE();
}

QString signOffTitle(std::optional<int> set) {
    return set ? fill(Say::tr("Sign-off of set %1"), {QString::number(*set)}) : Say::tr("Sign-off of the match");
}

QString sealWords(std::optional<int> set) {
    return set ? fill(Say::tr("Seal set %1"), {QString::number(*set)}) : Say::tr("Seal the match");
}

QString beforeSeal(std::optional<int> set) {
    return set ? fill(
                     Say::tr(
                         "Nobody is still to sign. The seal closes set %1: whoever changes it later reopens it, with a "
                         "name and a reason."),
                     {QString::number(*set)})
               : Say::tr(
                     "Nobody is still to sign. The seal closes the match: whoever changes it later reopens it, with "
                     "a name and a reason.");
}

QString underSeal(std::optional<int> set) {
    return set ? fill(Say::tr("Set %1 is sealed. This code is printed on its sheet: keep the paper, or write the code "
                              "down, to check the file against it."),
                      {QString::number(*set)})
               : Say::tr(
                     "The match is sealed. This code is printed on its page: keep the paper, or write the code down, "
                     "to check the file against it.");
}

QString reopenWords(std::optional<int> set) {
    return set ? fill(Say::tr("Reopen set %1"), {QString::number(*set)}) : Say::tr("Reopen the match");
}

QString reopenMeans(std::optional<int> set) {
    return set ? fill(Say::tr(
                          "Set %1 is signed and sealed. To reopen it voids its seal and its signatures: they stay on "
                          "the sheet, struck, and it is signed anew."),
                      {QString::number(*set)})
               : Say::tr("The match is signed and sealed. To reopen it voids its seal and its signatures: they stay on "
                         "its page, struck, and it is signed anew.");
}

} // namespace setfolio
