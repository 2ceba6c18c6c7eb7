// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "core/record/sealtext.h"

#include "core/ledger/textforms.h"

#include <algorithm>

namespace setfolio {

using namespace Qt::Literals::StringLiterals;

namespace {

/// For each hexadecimal digit a sign that looks like no other, by hand or in print.
constexpr QStringView signs = u"3479ACEFHKMNPRTX";
constexpr QStringView digits = u"0123456789abcdef";
constexpr qsizetype codeDigits = 24;
constexpr qsizetype groupDigits = 4;

QString translated(QStringView text, QStringView from, QStringView to) {
    QString result;
    for (const QChar c : text) {
        const qsizetype place = from.indexOf(c);
        if (place < 0)
            return {};
        result += to[place];
    }
    return result;
}

QString nameOf(const TeamName& team, const QString& otherwise) {
    return !team.code.isEmpty() ? team.code : !team.name.isEmpty() ? team.name : otherwise;
}

/// "SAL 25-23 QRL", the first listed first.
QString resultText(const PerTeam<TeamName>& teams, const PerTeam<int>& result) {
    return u"%1 %2-%3 %4"_s.arg(nameOf(teams.home, u"home"_s))
        .arg(result.home)
        .arg(result.visitors)
        .arg(nameOf(teams.visitors, u"visitors"_s));
}

} // namespace

QString sealCode(const QString& digest) {
    const QString code = translated(QStringView(digest).first(std::min(codeDigits, digest.size())), digits, signs);
    QStringList groups;
    for (qsizetype i = 0; i < code.size(); i += groupDigits)
        groups += code.mid(i, groupDigits);
    return groups.join(u' ');
}

std::optional<QString> digitsOfSeal(const QString& typed) {
    QString bare;
    for (const QChar c : typed)
        if (!c.isSpace() && c != u'-')
            bare += c;
    if (isDigest(bare.toLower()))
        return bare.toLower();
    const QString code = translated(bare.toUpper(), signs, digits);
    return code.size() == codeDigits ? std::optional(code) : std::nullopt;
}

QString sealText(const MatchHeading& heading, const SignOffRecord& signOff, const PerTeam<int>& result) {
    const MatchOpened& match = heading.opened;
    QStringList lines{u"Setfolio seal"_s, signOff.seal ? signOff.seal->digest : QString(),
                      u"match %1"_s.arg(match.id.isEmpty() ? u"-"_s : match.id)};
    if (match.date.isValid())
        lines += dateText(match.date);
    lines += (signOff.set ? u"set %1: "_s.arg(*signOff.set) : u"result: "_s) + resultText(match.teams, result);
    return lines.join(u'\n');
}

} // namespace setfolio
