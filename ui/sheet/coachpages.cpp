// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/coachpages.h"

#include "ui/sheet/coachtables.h"
#include "ui/sheet/pageflow.h"
#include "ui/sheet/scorepicture.h"
#include "ui/wording/pagewords.h"

namespace setfolio {

namespace {

using namespace sheet;

constexpr Tag body{Zone::Body, ItemRole::Label, {}, {}};
constexpr double third = 86, thirdPitch = 89;
constexpr double pictureHeight = 66;

/// Makes the coach's pages, one after another.
class CoachPen {
public:
    CoachPen(const MatchHeading& heading, const SheetOptions& options)
        : m_heading(heading),
          m_options(options),
          m_measure(options.fonts) {}

    std::vector<Page> ofSet(const SetFigures& set) {
        Bodies bodies(m_options.fonts);
        Draft& draft = bodies.add();
        picture(draft, set);
        std::vector<TablePen> rest;
        double left = 0;
        for (const Team team : bothTeams) {
            const double top = blockTop + pictureHeight + 8;
            const double bottom = column(draft, {left, top}, rotationTable(set.teams[team], named(team), third), rest);
            column(draft, {left, bottom + 3.4}, serverTable(set.teams[team].servers, m_heading.rosters[team], third),
                   rest);
            left += thirdPitch;
        }
        const double bottom = column(draft, {left, blockTop + pictureHeight + 8}, runsTable(set, teams(), third), rest);
        column(draft, {left, bottom + 3.4}, changesTable(set, teams(), third), rest);
        bodies.flow(std::move(rest));
        Masthead masthead{words(SheetLabel::Set), QString::number(set.number), words(PageLabel::CoachPage), {}};
        return bodies.pages(m_heading.opened, m_options, masthead);
    }
    std::vector<Page> ofMatch(std::span<const SetFigures> sets) {
        Bodies bodies(m_options.fonts);
        Draft& draft = bodies.add();
        std::vector<TablePen> rest;
        double left = 0;
        for (const Team team : bothTeams) {
            const double bottom = column(draft, {left, blockTop}, setsTable(sets, team, named(team), halfWidth), rest);
            column(draft, {left, bottom + 3.4},
                   serverTable(serversOver(sets, team), m_heading.rosters[team], halfWidth), rest);
            left += halfWidth + columnGap;
        }
        bodies.flow(std::move(rest));
        return bodies.pages(m_heading.opened, m_options, mastheadOfMatch(m_heading, words(PageLabel::CoachPage)));
    }

private:
    [[nodiscard]] const PerTeam<TeamName>& teams() const { return m_heading.opened.teams; }
    [[nodiscard]] QString named(Team team) const { return teams()[team].name; }
    void picture(Draft& draft, const SetFigures& set) const {
        draft.ruleAcross(body.as(ItemRole::Rule), 0, ladderRight, blockTop, 0.5, soot);
        draft.text(body.as(ItemRole::Title), {0, blockTop + 3.4}, words(PageLabel::Course), {7.2, FontWeight::Bold});
        draft.fitted(body, {ladderRight, blockTop + 3.4}, words(PageLabel::CourseSigns),
                     TextStyle(labelStyle).fromRight(), 200);
        drawScorePicture(draft, {0, blockTop + 5, ladderRight, pictureHeight}, teams(), set);
    }
    /// A table as far as it fits under `top`; the rest goes on later.
    double column(Draft& draft, QPointF top, Table table, std::vector<TablePen>& rest) const {
        double width = 0;
        for (const TableColumn& each : table.columns)
            width += each.width;
        TablePen pen(m_measure, std::move(table));
        double bottom = top.y();
        if (top.y() + pen.leastHeight() <= liveBottom)
            bottom = pen.draw(draft, Zone::Body, {top, QPointF(top.x() + width, liveBottom)}, false);
        if (!pen.isDone())
            rest.push_back(std::move(pen));
        return bottom;
    }

    const MatchHeading& m_heading;
    const SheetOptions& m_options;
    Draft m_measure;
};

} // namespace

std::vector<Page> composeCoach(const MatchHeading& heading, std::span<const SetFigures> sets,
                               const SheetOptions& options) {
    CoachPen pen(heading, options);
    std::vector<Page> pages;
    const auto add = [&pages](std::vector<Page> more) {
        pages.insert(pages.end(), std::make_move_iterator(more.begin()), std::make_move_iterator(more.end()));
    };
    std::vector<SetFigures> played;
    for (const SetFigures& set : sets)
        if (!set.course.empty())
            played.push_back(set);
    if (played.size() > 1)
        add(pen.ofMatch(played));
    for (const SetFigures& set : played)
        add(pen.ofSet(set));
    return pages;
}

} // namespace setfolio
