// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/print/sheetpages.h"

#include "core/record/shown.h"
#include "ui/dialogs/matchdraft.h"
#include "ui/wording/openwords.h"
#include "ui/wording/signoffwords.h"

#include <algorithm>
#include <array>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

std::vector<int> printableSets(const MatchRecord& record) {
    std::set<int> numbers; // a set that was cancelled and played again has two sheets, and one number
    for (const SetRecord& set : record.sets)
        numbers.insert(set.number);
    if (numbers.empty())
        numbers.insert(1);
    return {numbers.begin(), numbers.end()};
}

PaperSize usualPaper(const QLocale& locale) {
    static constexpr std::array letter{
        QLocale::Belize,      QLocale::Canada,     QLocale::Chile,     QLocale::Colombia,     QLocale::CostaRica,
        QLocale::ElSalvador,  QLocale::Guatemala,  QLocale::Mexico,    QLocale::Nicaragua,    QLocale::Panama,
        QLocale::Philippines, QLocale::PuertoRico, QLocale::Venezuela, QLocale::UnitedStates,
    };
    const bool isSomewhere = locale.territory() != QLocale::AnyTerritory && locale.territory() != QLocale::World;
    const bool usesA4 = isSomewhere && std::ranges::find(letter, locale.territory()) == letter.end();
    return usesA4 ? PaperSize::A4 : PaperSize::Letter;
}

QString pdfName(const MatchRecord& record, const SheetChoice& choice) {
    QString stem = fileNameFor(record.heading.opened);
    stem.chop(QStringView(u".setfolio").size());
    const bool ofSets = std::ranges::any_of(choice.kinds, isOfASet);
    if (choice.kinds.size() == 1 && !choice.kinds.contains(SheetKind::Set))
        stem += u'-' + nameOf(*choice.kinds.begin());
    if (ofSets && choice.sets.size() == 1 && printableSets(record).size() > 1)
        stem += u"-set-%1"_s.arg(*choice.sets.begin());
    return stem + u".pdf"_s;
}

PdfInfo pdfInfoOf(const PrintedMatch& match, Names names, const QDateTime& created) {
    const MatchOpened& opened = match.record.heading.opened;
    const bool leftOut = names == Names::LeftOut || opened.namesLeftOut;
    return {.title = matchTitle(opened),
            .author = asShown(opened.competition),
            .created = created,
            .subject = namesSentence(leftOut, !leftOut && holdNames(match.entries))};
}

} // namespace setfolio
