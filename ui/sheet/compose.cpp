// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/compose.h"

#include "ui/sheet/cells.h"
#include "ui/sheet/frame.h"
#include "ui/sheet/remarks.h"
#include "ui/sheet/sanctions.h"

namespace setfolio {

namespace {

using namespace sheet;

constexpr double narrowestColumn = 24;

/// Makes the pages of one set.
class Composer {
public:
    Composer(const MatchHeading& heading, const SetRecord& set, const SheetOptions& options)
        : m_heading(asSigned(heading, set)),
          m_scene{m_heading, set, options} {}

    std::vector<Page> compose() {
        const Draft measure(m_scene.options.fonts);
        m_cells = cellsOf(measure, m_scene);
        m_rungs = rungsOf(m_scene.set);
        m_flow = flowOf();
        const int sheets = static_cast<int>(m_flow.pages.size());
        m_remarks = planRemarks(measure, m_scene, cutShort(), sheets);
        const int all = sheets + static_cast<int>(m_remarks.pages.size());
        std::vector<Page> pages;
        for (int number = 1; number <= all; ++number)
            pages.push_back(
                number <= sheets
                    ? sheetPage({number, all})
                    : remarksPage({number, all}, m_remarks.pages[static_cast<std::size_t>(number - sheets - 1)]));
        return pages;
    }

private:
    [[nodiscard]] Flow flowOf() const {
        FlowQuestion question;
        question.terms = m_cells.terms;
        question.columns = static_cast<int>(m_cells.columns.size());
        question.width = roundsWidth;
        question.narrowest = narrowestColumn;
        question.pages = static_cast<int>(m_rungs.size());
        question.former = m_scene.options.former ? &*m_scene.options.former : nullptr;
        return flowTerms(question);
    }
    /// Names that are too long for their places on the sheet.
    [[nodiscard]] QStringList cutShort() const {
        Draft draft(m_scene.options.fonts);
        drawHeader(draft, m_scene, {1, 2});
        for (const Team team : bothTeams)
            drawStrip(draft, m_scene, team);
        drawOfficials(draft, m_scene);
        QStringList names = draft.cutShort();
        names.removeDuplicates();
        return names;
    }
    [[nodiscard]] Page sheetPage(PageNumber number) {
        const auto index = static_cast<std::size_t>(number.number - 1);
        Draft draft(m_scene.options.fonts);
        drawHeader(draft, m_scene, number);
        drawScore(draft, m_scene);
        for (const Team team : bothTeams)
            drawBlock(draft, m_scene, team, m_cells, m_flow, m_flow.pages[index]);
        drawLadder(draft, m_scene, m_rungs[std::min(index, m_rungs.size() - 1)]);
        drawSanctions(draft, m_scene);
        drawRemarks(draft, m_remarks, number.number);
        drawOfficials(draft, m_scene);
        drawResult(draft, m_scene);
        drawLegend(draft, m_scene);
        return pageOf(draft, number);
    }
    [[nodiscard]] Page remarksPage(PageNumber number, const RemarkLines& lines) {
        Draft draft(m_scene.options.fonts);
        drawHeader(draft, m_scene, number);
        drawScore(draft, m_scene);
        drawRemarksPage(draft, lines);
        drawOfficials(draft, m_scene);
        drawResult(draft, m_scene);
        return pageOf(draft, number);
    }
    [[nodiscard]] Page pageOf(Draft& draft, PageNumber number) const {
        Page page = framed(draft, m_scene.options, number);
        page.flow = m_flow;
        return page;
    }

    /// A sealed sheet names those who were there when it was sealed.
    static MatchHeading asSigned(MatchHeading heading, const SetRecord& set) {
        if (set.people) {
            heading.officials = set.people->officials;
            heading.rosters = set.people->rosters;
        }
        return heading;
    }

    MatchHeading m_heading;
    Scene m_scene;
    Cells m_cells;
    std::vector<Rungs> m_rungs;
    Flow m_flow;
    RemarkPlan m_remarks;
};

} // namespace

std::vector<Page> composeSet(const MatchHeading& heading, const SetRecord& set, const SheetOptions& options) {
    return Composer(heading, set, options).compose();
}

} // namespace setfolio
