// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/wording/findingwords.h"

#include "ui/wording/fill.h"
#include "ui/wording/findingsentences.h"
#include "ui/wording/names.h"
#include "ui/wording/sanctionwords.h"

#include <QCoreApplication>

namespace setfolio {

namespace {

QString whoIn(const Finding& finding) {
    if (!finding.who)
        return {};
    const bool isPlayer = std::holds_alternative<ShirtNumber>(*finding.who);
    return isPlayer
               ? fill(QCoreApplication::translate("setfolio::FindingWords", "Number %1"), {memberWords(*finding.who)})
               : fill(QCoreApplication::translate("setfolio::FindingWords", "The %1"), {memberWords(*finding.who)});
}

QString levelOf(const Finding& finding) {
    return finding.level ? std::visit(Overloaded{[](SanctionLevel level) { return levelWords(level); },
                                                 [](DelayLevel level) { return delayWords(level); }},
                                      *finding.level)
                         : QString();
}

const char* englishOf(const Finding& finding) {
    const bool noneInTerm = finding.kind == FindingKind::TakenBackTooMuch && finding.count == 0;
    return noneInTerm ? QT_TRANSLATE_NOOP("setfolio::FindingWords", "Only points of this term of %2 may be taken back, "
                                                                    "and it has won none: record the ruling alone.")
                      : findingSentences.at(static_cast<std::size_t>(finding.kind)).english;
}

} // namespace

QString sentence(const Finding& finding, const MatchState& state) {
    return fill(QCoreApplication::translate("setfolio::FindingWords", englishOf(finding)),
                {QString::number(finding.number.value), finding.team ? codeOf(state, *finding.team) : QString(),
                 finding.slot ? roman(*finding.slot) : QString(), finding.other ? roman(*finding.other) : QString(),
                 QString::number(finding.count), QString::number(finding.limit), whoIn(finding), levelOf(finding),
                 QString::number(finding.lawful.value)});
}

QString sourceOf(const Finding& finding, const Rulebook& rulebook) {
    return rulebook.sources.value(finding.setting).text;
}

} // namespace setfolio
