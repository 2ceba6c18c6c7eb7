// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/storysheet.h"

#include "ui/sheet/draft.h"
#include "ui/sheet/geometry.h"
#include "ui/wording/sheetwords.h"

namespace setfolio {

namespace {

using namespace sheet;

constexpr double liveRight = 264;
constexpr double linePitch = 5.2;
constexpr double gap = 8;
constexpr int columns = 2;
constexpr double columnWidth = (liveRight - gap * (columns - 1)) / columns;
constexpr double numberRoom = 9;
constexpr double toldTop = 34, toldBottom = 193;
constexpr TextStyle told{9, FontWeight::Regular};
constexpr TextStyle toldNumber{7.5, FontWeight::SemiBold, label};
constexpr Tag header{Zone::Header, ItemRole::Label, {}, {}};
constexpr Tag body{Zone::Remarks, ItemRole::RemarkText, {}, {}};

/// A sentence, broken into lines.
struct Told {
    int number = 1;
    QStringList lines;
};

/// Which sentences stand in which column; a sentence is never parted.
std::vector<std::vector<Told>> inColumns(const Draft& measure, const QStringList& sentences) {
    constexpr int room = static_cast<int>((toldBottom - toldTop) / linePitch);
    std::vector<std::vector<Told>> all(1);
    int used = 0;
    int number = 0;
    for (const QString& sentence : sentences) {
        Told next{++number, wrapped(measure, sentence, told, columnWidth - numberRoom)};
        if (used + static_cast<int>(next.lines.size()) > room) {
            all.emplace_back();
            used = 0;
        }
        used += static_cast<int>(next.lines.size());
        all.back().push_back(std::move(next));
    }
    return all;
}

void drawHead(Draft& draft, const StoryText& story, int page, int of) {
    draft.fitted(header.as(ItemRole::Title), {0, 5}, story.title, {14, FontWeight::Bold}, 170);
    draft.text(header.as(ItemRole::Value), {liveRight, 5}, pageWords(page, of),
               {9, FontWeight::Medium, soot, TextAlign::Right});
    draft.ruleAcross(header.as(ItemRole::Rule), 0, liveRight, 7.2, 0.35, soot);
    double y = 12;
    QStringList lines{story.teams, story.about};
    lines += story.given;
    for (const QString& line : lines) {
        draft.fitted(header.as(ItemRole::Value), {0, y}, line, {9, FontWeight::Medium}, liveRight);
        y += 4.4;
    }
}

void drawColumn(Draft& draft, const std::vector<Told>& sentences, double left) {
    double y = toldTop;
    for (const Told& sentence : sentences) {
        draft.text(body.as(ItemRole::RemarkNumber), {left, y + 3.6}, QString::number(sentence.number), toldNumber);
        for (const QString& line : sentence.lines) {
            draft.text(body, {left + numberRoom, y + 3.6}, line, told);
            y += linePitch;
        }
        draft.ruleAcross(body.as(ItemRole::Rule), left, left + columnWidth, y, 0.1, paleRule);
    }
}

} // namespace

std::vector<Page> composeStory(const StoryText& story, const SheetFonts& fonts, PaperSize paper) {
    const Draft measure(fonts);
    const auto all = inColumns(measure, story.told);
    const int of = static_cast<int>((all.size() + columns - 1) / columns);
    const QSizeF size = sizeOf(paper);
    const QSizeF margins = (size - liveArea) / 2;
    std::vector<Page> pages;
    for (int number = 1; number <= of; ++number) {
        Draft draft(fonts);
        drawHead(draft, story, number, of);
        for (int column = 0; column < columns; ++column) {
            const auto index = static_cast<std::size_t>((number - 1) * columns + column);
            if (index < all.size())
                drawColumn(draft, all[index], (columnWidth + gap) * column);
        }
        Page page{paper,  size.width(), size.height(), {margins.width(), margins.height()},
                  number, of,           draft.take(),  {}};
        for (Item& item : page.items)
            translate(item, page.live);
        pages.push_back(std::move(page));
    }
    return pages;
}

} // namespace setfolio
