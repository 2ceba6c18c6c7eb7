// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/masthead.h"

#include "ui/wording/pagewords.h"
#include "ui/wording/signoffwords.h"

namespace setfolio::sheet {

namespace {

constexpr double textLeft = 19.5;
constexpr double labelBaseline = 9.7;
constexpr double valueBaseline = 14.3;
constexpr double titleLeft = 196; ///< of the name of a sheet
constexpr TextStyle valueStyle{9, FontWeight::Medium};

} // namespace

void drawHeadPlate(Draft& draft, const Tag& tag, const QString& word, const QString& numeral) {
    draft.rect(tag.as(ItemRole::Plate), {0, 0, 16, 16}, soot);
    const Tag text = tag.as(ItemRole::PlateText);
    TextStyle style{6.5, FontWeight::SemiBold, white, TextAlign::Centre, 0.08};
    const double wanted = draft.width(word, style);
    style.points = wanted > 14 ? std::max(smallestPoints, style.points * 14 / wanted) : style.points;
    draft.text(text, {8, 4.2}, word, style);
    if (numeral.isEmpty())
        draft.rect(tag.as(ItemRole::Plate), {3, 5.5, 10, 7.3}, white);
    draft.fitted(text, {8, 12.2}, numeral, {21, FontWeight::Bold, white, TextAlign::Centre}, 14.6);
}

void drawTitles(Draft& draft, const Tag& tag, const MatchOpened& opened, PageNumber page, double right, bool named,
                const QString& stands) {
    const QString names = opened.namesLeftOut ? namesLeftOutWords() : named ? namesGivenWords() : QString();
    QStringList parts{stands, names, matchWords(opened), page.of > 1 ? pageWords(page.number, page.of) : QString()};
    parts.removeAll(QString());
    const QString match = parts.join(QStringLiteral(" · "));
    const double used = draft.named(tag.as(ItemRole::Value), {right, 4.7}, match, valueStyle.fromRight(), 80);
    const double room = std::min(130.0, right - textLeft - used - 4) + std::max(0.0, 80 - used - 4);
    draft.named(tag.as(ItemRole::Title), {textLeft, 4.7}, opened.competition, {12.5, FontWeight::Bold},
                std::min(room, right - textLeft - used - 4));
    draft.ruleAcross(tag.as(ItemRole::Rule), textLeft, right, 6.7, 0.35, soot);
}

void drawFields(Draft& draft, const Tag& tag, std::span<const Field> fields, double right) {
    double x = textLeft;
    for (const Field& field : fields) {
        draft.fitted(tag, {x, labelBaseline}, field.label, labelStyle, field.width - 1);
        draft.named(tag.as(ItemRole::Value), {x, valueBaseline}, field.value, valueStyle, field.width - 2);
        x += field.width;
    }
    draft.ruleAcross(tag.as(ItemRole::Rule), textLeft, right, headerBottom, 0.15, paleRule);
}

std::vector<Field> placeFields(const MatchOpened& opened, const QLocale& locale) {
    return {{words(SheetLabel::Venue), opened.venue, 54},
            {words(SheetLabel::Date), dateWords(opened.date, locale), 32},
            {words(SheetLabel::Scheduled), timeWords(opened.scheduled, locale), 17}};
}

Masthead mastheadOfMatch(const MatchHeading& heading, const QString& title) {
    const PerTeam<int>& won = heading.setsWon;
    const bool begun = won.home + won.visitors > 0;
    return {words(PageLabel::Match), begun ? scoreWords(won.home, won.visitors) : QString(), title, {}};
}

void drawMasthead(Draft& draft, const MatchOpened& opened, const SheetOptions& options, const Masthead& masthead,
                  PageNumber page) {
    constexpr Tag tag{Zone::Masthead, ItemRole::Label, {}, {}};
    drawHeadPlate(draft, tag, masthead.plateWord, masthead.plateNumeral);
    drawTitles(draft, tag, opened, page, ladderRight, options.named);
    std::vector<Field> fields = placeFields(opened, options.locale);
    fields.insert(fields.end(), masthead.fields.begin(), masthead.fields.end());
    drawFields(draft, tag, fields, ladderRight);
    draft.fitted(tag.as(ItemRole::Title), {ladderRight, valueBaseline}, masthead.title,
                 {11.5, FontWeight::Bold, soot, TextAlign::Right}, ladderRight - titleLeft);
}

} // namespace setfolio::sheet
