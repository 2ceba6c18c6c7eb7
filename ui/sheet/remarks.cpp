// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/remarks.h"

#include "ui/sheet/sanctions.h"
#include "ui/sheet/term.h"
#include "ui/wording/notewords.h"

#include <span>

namespace setfolio::sheet {

namespace {

constexpr double numberRoom = 5;
constexpr double footLeft = 51, footRight = 105;
constexpr double linePitch = 4.8;
constexpr std::size_t footLines = 5;
constexpr TextStyle textStyle{7.2, FontWeight::Regular};

constexpr double footWidth = footRight - footLeft;

constexpr int columnsOfPage = 4;
constexpr double columnGap = 3;
constexpr double columnWidth = (ladderRight - columnGap * (columnsOfPage - 1)) / columnsOfPage;
constexpr int rulesOfColumn = 25;
constexpr std::size_t linesOfPage = columnsOfPage * rulesOfColumn;

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

RemarkLine taken(RemarkLines& lines) {
    RemarkLine line = std::move(lines.front());
    lines.erase(lines.begin());
    return line;
}

RemarkLines inLines(const Draft& draft, RemarkLine whole, double room) {
    RemarkLines lines;
    for (const QString& text : wrapped(draft, whole.text, textStyle, room)) {
        lines.push_back({whole.number, text, whole.entry, whole.struck});
        whole.number = 0;
    }
    return lines;
}

void append(RemarkLines& lines, RemarkLines more) {
    lines.insert(lines.end(), more.begin(), more.end());
}

/// How many lines the feet of the sheets take, those kept back that say where the rest is.
std::size_t takenByFeet(std::size_t lines, int sheets) {
    std::size_t taken = 0;
    for (int sheet = 0; sheet < sheets; ++sheet) {
        if (lines - taken <= footLines)
            return lines;
        taken += footLines - 1;
    }
    return taken;
}

/// Lines put together again, a remark at a time, and broken for wider columns.
RemarkLines brokenAnew(const Draft& draft, std::span<const RemarkLine> lines) {
    RemarkLines result;
    for (std::size_t i = 0; i < lines.size();) {
        RemarkLine whole = lines[i];
        for (++i; i < lines.size() && lines[i].number == 0; ++i)
            whole.text += u' ' + lines[i].text;
        append(result, inLines(draft, whole, columnWidth - numberRoom));
    }
    return result;
}

} // namespace

RemarkPlan planRemarks(const Draft& draft, const Scene& scene, int sheets) {
    RemarkPlan plan;
    const PerTeam<TeamName>& teams = scene.heading.opened.teams;
    for (const SanctionLine& line : sanctionsBeyondFoot(scene.set))
        append(plan.foot, inLines(draft, {0, sentence(line, teams), line.entry, line.struck}, footWidth - numberRoom));
    for (const Note& note : scene.set.notes) {
        const QString text = sentence(note, teams);
        append(plan.foot, inLines(draft, {note.number, text, note.entry, note.struck}, footWidth - numberRoom));
    }
    const std::size_t inFeet = takenByFeet(plan.foot.size(), sheets);
    plan.after = brokenAnew(draft, std::span(plan.foot).subspan(inFeet));
    plan.foot.resize(inFeet);
    plan.pages = static_cast<int>((plan.after.size() + linesOfPage - 1) / linesOfPage);
    return plan;
}

void drawRemarks(Draft& draft, RemarkPlan& plan, PageNumber page) {
    const Tag tag{Zone::Foot, ItemRole::Label, {}, {}};
    drawHead(draft, Zone::Foot, footLeft, footRight, footTop, words(SheetLabel::Remarks));
    const bool more = plan.foot.size() > footLines || (plan.foot.size() == footLines - 1 && !plan.after.empty());
    double y = footTop + 8;
    draft.ruleAcross(tag.as(ItemRole::Rule), footLeft, footRight, y, 0.15, paleRule);
    for (std::size_t i = 0; i < footLines; ++i) {
        y += linePitch;
        draft.ruleAcross(tag.as(ItemRole::Rule), footLeft, footRight, y, 0.15, paleRule);
        if (more && i + 1 == footLines)
            draft.text(tag, {footRight, y - 1.4}, continuedWords(page.number + 1),
                       TextStyle{7.2, FontWeight::Medium, label, TextAlign::Right});
        else if (!plan.foot.empty())
            drawLine(draft, Zone::Foot, footLeft, y, taken(plan.foot));
    }
}

void drawRemarksPage(Draft& draft, RemarkPlan& plan) {
    const Tag lineTag{Zone::Remarks, ItemRole::Rule, {}, {}};
    for (int column = 0; column < columnsOfPage; ++column) {
        const double left = (columnWidth + columnGap) * column;
        drawHead(draft, Zone::Remarks, left, left + columnWidth, blockTop,
                 column == 0 ? words(SheetLabel::RemarksContinued) : QString());
        for (int line = 0; line <= rulesOfColumn; ++line) {
            const double y = blockTop + 8 + linePitch * line;
            draft.ruleAcross(lineTag, left, left + columnWidth, y, 0.15, paleRule);
            if (line > 0 && !plan.after.empty())
                drawLine(draft, Zone::Remarks, left, y, taken(plan.after));
        }
    }
}

} // namespace setfolio::sheet
