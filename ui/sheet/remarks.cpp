// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/remarks.h"

#include "ui/sheet/term.h"
#include "ui/wording/notewords.h"

namespace setfolio::sheet {

namespace {

constexpr double numberRoom = 5;
constexpr double footLeft = 51, footRight = 105;
constexpr double linePitch = 4.8;
constexpr std::size_t footLines = 5;
constexpr TextStyle textStyle{7.2, FontWeight::Regular};

constexpr double columnGap = 3;
constexpr double columnWidth = footRight - footLeft; // so that lines broken once stand everywhere
constexpr int columnsOfPage = 4;
constexpr double firstRule = blockTop + 8;
constexpr int rulesOfColumn = 25;
constexpr auto linesOfPage = static_cast<std::size_t>(columnsOfPage * rulesOfColumn);

void drawHead(Draft& draft, Zone zone, double left, double right, double top, const QString& title) {
    const Tag tag{zone, ItemRole::Label, {}, {}};
    draft.ruleAcross(tag.as(ItemRole::Rule), left, right, top, 0.5, soot);
    draft.fitted(tag.as(ItemRole::Title), {left, top + 3.4}, title, {7.2, FontWeight::Bold}, right - left);
    draft.text(tag, {left, top + 6.9}, words(SheetLabel::RemarkNumber), labelStyle);
    draft.fitted(tag, {left + numberRoom, top + 6.9}, words(SheetLabel::RemarkText), labelStyle,
                 columnWidth - numberRoom);
}

/// A line on the rule at `y`.
void drawLine(Draft& draft, Zone zone, double left, double y, const RemarkLine& line) {
    const Tag tag{zone, ItemRole::RemarkText, {}, line.entry};
    const QPointF baseline(left, y - 1.4);
    if (line.number > 0)
        draft.text(tag.as(ItemRole::RemarkNumber), baseline, QString::number(line.number), {7.4, FontWeight::Bold});
    draft.text(tag, baseline + QPointF(numberRoom, 0), line.text, textStyle);
    if (line.struck)
        drawStrike(draft, tag.as(ItemRole::MarkStrike), left + numberRoom - 0.4,
                   left + numberRoom + draft.width(line.text, textStyle) + 0.4, y - 1.4 - halfCap(7.2), 0.3, 0.25,
                   soot);
}

RemarkLine taken(RemarkLines& rest) {
    RemarkLine line = std::move(rest.front());
    rest.erase(rest.begin());
    return line;
}

} // namespace

RemarkLines remarkLines(const Draft& draft, const Scene& scene) {
    RemarkLines lines;
    for (const Note& note : scene.set.notes) {
        int number = note.number;
        for (const QString& text :
             wrapped(draft, sentence(note, scene.heading.opened.teams), textStyle, columnWidth - numberRoom)) {
            lines.push_back({number, text, note.entry, note.struck});
            number = 0;
        }
    }
    return lines;
}

void drawRemarks(Draft& draft, RemarkLines& rest, PageNumber page) {
    const Tag tag{Zone::Foot, ItemRole::Label, {}, {}};
    drawHead(draft, Zone::Foot, footLeft, footRight, footTop, words(SheetLabel::Remarks));
    const bool more = rest.size() > footLines && page.number < page.of;
    double y = footTop + 8;
    draft.ruleAcross(tag.as(ItemRole::Rule), footLeft, footRight, y, 0.15, paleRule);
    for (std::size_t i = 0; i < footLines; ++i) {
        y += linePitch;
        draft.ruleAcross(tag.as(ItemRole::Rule), footLeft, footRight, y, 0.15, paleRule);
        if (more && i + 1 == footLines)
            draft.text(tag, {footRight, y - 1.4}, continuedWords(page.number + 1),
                       TextStyle{7.2, FontWeight::Medium, label, TextAlign::Right});
        else if (!rest.empty())
            drawLine(draft, Zone::Foot, footLeft, y, taken(rest));
    }
}

int remarkPages(std::size_t lines, int sheets) {
    for (int page = 1; page <= sheets; ++page) {
        if (lines <= footLines)
            return 0;
        lines -= footLines - 1;
    }
    return static_cast<int>((lines + linesOfPage - 1) / linesOfPage);
}

void drawRemarksPage(Draft& draft, RemarkLines& rest) {
    const Tag lineTag{Zone::Remarks, ItemRole::Rule, {}, {}};
    for (int column = 0; column < columnsOfPage; ++column) {
        const double left = (columnWidth + columnGap) * column;
        drawHead(draft, Zone::Remarks, left, left + columnWidth, blockTop,
                 column == 0 ? words(SheetLabel::RemarksContinued) : QString());
        for (int line = 0; line <= rulesOfColumn; ++line) {
            const double y = firstRule + linePitch * line;
            draft.ruleAcross(lineTag, left, left + columnWidth, y, 0.15, paleRule);
            if (line > 0 && !rest.empty())
                drawLine(draft, Zone::Remarks, left, y, taken(rest));
        }
    }
}

} // namespace setfolio::sheet
