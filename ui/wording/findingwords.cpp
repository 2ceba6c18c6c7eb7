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

/// The sentence of a kind, or another one where what it names is not there.
const char* englishOf(const Finding& finding) {
    if (finding.kind == FindingKind::TakenBackTooMuch && finding.count == 0)
        return QT_TRANSLATE_NOOP(
            "setfolio::FindingWords",
            "Only points of this term of %2 may be taken back, and it has won none: record the ruling alone.");
    if (finding.kind == FindingKind::IllegalPlayerStays && !finding.lawful.isValid())
        return QT_TRANSLATE_NOOP(
            "setfolio::FindingWords",
            "Number %1 of %2 was ruled illegal and still stands in slot %3: strike her substitution, entry %5.");
    return findingSentences.at(static_cast<std::size_t>(finding.kind)).english;
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
