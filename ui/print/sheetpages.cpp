// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/print/sheetpages.h"

#include "ui/dialogs/matchdraft.h"

#include <algorithm>
#include <array>

using namespace Qt::Literals::StringLiterals;

namespace setfolio {

std::vector<int> printableSets(const MatchRecord& record) {
    std::vector<int> numbers;
    for (const SetRecord& set : record.sets)
        numbers.push_back(set.number);
    if (numbers.empty())
        numbers.push_back(1);
    return numbers;
}

std::vector<Page> pagesOf(const MatchRecord& record, const std::set<int>& sets, const SheetOptions& options) {
    std::vector<Page> pages;
    for (const int number : printableSets(record)) {
        if (!sets.contains(number))
            continue;
        const auto begun = std::ranges::find(record.sets, number, &SetRecord::number);
        const SetRecord set = begun == record.sets.end() ? SetRecord() : *begun;
        std::ranges::move(composeSet(record.heading, set, options), std::back_inserter(pages));
    }
    return pages;
}

PaperSize usualPaper(const QLocale& locale) {
    static constexpr std::array letter{
        QLocale::Belize,      QLocale::Canada,     QLocale::Chile,     QLocale::Colombia,     QLocale::CostaRica,
        QLocale::ElSalvador,  QLocale::Guatemala,  QLocale::Mexico,    QLocale::Nicaragua,    QLocale::Panama,
        QLocale::Philippines, QLocale::PuertoRico, QLocale::Venezuela, QLocale::UnitedStates,
    };
    return std::ranges::find(letter, locale.territory()) == letter.end() ? PaperSize::A4 : PaperSize::Letter;
}

QString pdfName(const MatchRecord& record, const std::set<int>& sets) {
    QString stem = fileNameFor(record.heading.opened);
    stem.chop(QStringView(u".setfolio").size());
    if (sets.size() == 1 && printableSets(record).size() > 1)
        stem += u"-set-%1"_s.arg(*sets.begin());
    return stem + u".pdf"_s;
}

PdfInfo pdfInfoOf(const MatchRecord& record, const QDateTime& created) {
    const MatchOpened& opened = record.heading.opened;
    return {.title = u"%1 – %2"_s.arg(opened.teams.home.name, opened.teams.visitors.name),
            .author = opened.competition,
            .created = created};
}

} // namespace setfolio
