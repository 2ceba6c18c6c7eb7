// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/remarks.h"

#include "ui/sheet/sanctions.h"
#include "ui/sheet/slotnumbers.h"
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

/// A remark's lines at most so wide.
RemarkLines inLines(const Draft& draft, RemarkLine whole, double width) {
    RemarkLines lines;
    for (const QString& text : wrapped(draft, whole.text, textStyle, width - numberRoom)) {
        lines.push_back({whole.number, text, whole.entry, whole.struck});
        whole.number = 0;
    }
    return lines;
}

/// All that is told, a line each, not broken yet.
RemarkLines remarksOf(const Draft& draft, const Scene& scene, const QStringList& cutShort) {
    RemarkLines remarks;
    for (const QString& name : cutShort)
        remarks.push_back({0, inFullWords(name), {}, false});
    const PerTeam<TeamName>& teams = scene.heading.opened.teams;
    for (const SanctionLine& line : sanctionsBeyondFoot(scene.set))
        remarks.push_back({0, sentence(line, teams), line.entry, line.struck});
    for (const Team team : bothTeams)
        for (const Slot slot : allSlots) {
            const std::span<const Standing> older = beyondRow(draft, scene, team, slot);
            if (!older.empty())
                remarks.push_back({0, olderWords(teams, team, slot, older), older.front().since, false});
        }
    for (const Note& note : scene.set.notes)
        remarks.push_back({note.number, sentence(note, teams), note.entry, note.struck});
    return remarks;
}

/// Shares remarks out over places of so many lines, the next when the one before is full.
class Sharing {
public:
    Sharing(const Draft& draft, const RemarkLines& remarks, double width) {
        for (const RemarkLine& remark : remarks)
            m_remarks.push_back(inLines(draft, remark, width));
    }
    [[nodiscard]] std::size_t next() const { return m_next; } ///< the first remark that has no place yet
    void beginAt(std::size_t remark) { m_next = remark; }
    [[nodiscard]] bool isDone() const { return m_next >= m_remarks.size(); }
    [[nodiscard]] std::size_t linesLeft() const {
        std::size_t lines = 0;
        for (std::size_t i = m_next; i < m_remarks.size(); ++i)
            lines += m_remarks[i].size();
        return lines;
    }
    /// As many whole remarks as fit.
    RemarkLines whole(std::size_t room) {
        RemarkLines lines;
        while (!isDone() && lines.size() + m_remarks[m_next].size() <= room) {
            lines.insert(lines.end(), m_remarks[m_next].begin(), m_remarks[m_next].end());
            ++m_next;
        }
        return lines;
    }
    /// The same, and a part of one that is too long for any place.
    RemarkLines wholeOrPart(std::size_t room) {
        RemarkLines lines = whole(room);
        if (!lines.empty() || isDone())
            return lines;
        RemarkLines& longest = m_remarks[m_next];
        const auto end = longest.begin() + static_cast<std::ptrdiff_t>(room);
        lines.assign(longest.begin(), end);
        longest.erase(longest.begin(), end);
        return lines;
    }

private:
    std::vector<RemarkLines> m_remarks;
    std::size_t m_next = 0;
};

} // namespace

std::optional<int> RemarkPlan::pageAfter(int sheet) const {
    for (auto later = static_cast<std::size_t>(sheet); later < feet.size(); ++later)
        if (!feet[later].empty())
            return static_cast<int>(later) + 1;
    return pages.empty() ? std::nullopt : std::optional(static_cast<int>(feet.size()) + 1);
}

RemarkPlan planRemarks(const Draft& draft, const Scene& scene, const QStringList& cutShort, int sheets) {
    RemarkPlan plan;
    const RemarkLines remarks = remarksOf(draft, scene, cutShort);
    Sharing inFeet(draft, remarks, footWidth);
    for (int sheet = 0; sheet < sheets; ++sheet) // a line is kept back that says where the rest is
        plan.feet.push_back(inFeet.whole(inFeet.linesLeft() <= footLines ? footLines : footLines - 1));
    Sharing after(draft, remarks, columnWidth);
    after.beginAt(inFeet.next());
    while (!after.isDone())
        plan.pages.push_back(after.wholeOrPart(linesOfPage));
    return plan;
}

void drawRemarks(Draft& draft, const RemarkPlan& plan, int sheet) {
    const Tag tag{Zone::Foot, ItemRole::Label, {}, {}};
    drawHead(draft, Zone::Foot, footLeft, footRight, footTop, words(SheetLabel::Remarks));
    const RemarkLines& lines = plan.feet[static_cast<std::size_t>(sheet - 1)];
    double y = footTop + 8;
    draft.ruleAcross(tag.as(ItemRole::Rule), footLeft, footRight, y, 0.15, paleRule);
    for (std::size_t line = 0; line < footLines; ++line) {
        y += linePitch;
        draft.ruleAcross(tag.as(ItemRole::Rule), footLeft, footRight, y, 0.15, paleRule);
        if (line < lines.size())
            drawLine(draft, Zone::Foot, footLeft, y, lines[line]);
    }
    if (const std::optional<int> page = plan.pageAfter(sheet))
        draft.text(tag, {footRight, y - 1.4}, continuedWords(*page),
                   TextStyle{7.2, FontWeight::Medium, label, TextAlign::Right});
}

void drawRemarksPage(Draft& draft, const RemarkLines& lines) {
    const Tag lineTag{Zone::Remarks, ItemRole::Rule, {}, {}};
    std::size_t next = 0;
    for (int column = 0; column < columnsOfPage; ++column) {
        const double left = (columnWidth + columnGap) * column;
        drawHead(draft, Zone::Remarks, left, left + columnWidth, blockTop,
                 column == 0 ? words(SheetLabel::RemarksContinued) : QString());
        for (int line = 0; line <= rulesOfColumn; ++line) {
            const double y = blockTop + 8 + linePitch * line;
            draft.ruleAcross(lineTag, left, left + columnWidth, y, 0.15, paleRule);
            if (line > 0 && next < lines.size())
                drawLine(draft, Zone::Remarks, left, y, lines[next++]);
        }
    }
}

} // namespace setfolio::sheet
