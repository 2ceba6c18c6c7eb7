// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/slips.h"

#include "ui/sheet/frame.h"
#include "ui/wording/markwords.h"
#include "ui/wording/pagewords.h"

#include <algorithm>

namespace setfolio {

namespace {

using namespace sheet;

constexpr double slipWidth = 129, slipHeight = 94.5;
constexpr double tallHeight = 195; ///< of one whose roster is too long for the usual height
constexpr QPointF slipPitch(135, 100.5);
constexpr double courtTop = 20, placeWidth = 24, placeHeight = 23;
constexpr double courtRight = 3 * placeWidth;
constexpr double rosterLeft = courtRight + 4;
constexpr double linesHeight = 22.5; ///< of what is filled in and signed, at the foot
constexpr Stroke boxLine{soot, 0.3, {}, false};

/// What a slip is filled with.
struct Slip {
    int set = 0; ///< 0: to be filled in
    std::optional<Team> team;
};

/// How a roster is set: with names in columns, or numbers alone where there are too many.
struct RosterPlan {
    bool names = true;
    bool tall = false;
    std::size_t columns = 1;
    std::size_t inColumn = 12; ///< rows
};

constexpr double rowPitch = 3.9;      ///< of a row with one line
constexpr double nameLinePitch = 2.3; ///< of further lines of a name
constexpr TextStyle nameStyle{7.2, FontWeight::Medium};

double columnWidth(std::size_t columns) {
    return (slipWidth - rosterLeft + 2) / double(columns);
}

double nameRoom(std::size_t columns) {
    return columnWidth(columns) - 12;
}

double slipHeightOf(bool tall) {
    return tall ? tallHeight : slipHeight;
}

/// The lines of a name; one is written smaller before it takes several.
QStringList linesOf(const Draft& draft, const RosterPlayer& player, std::size_t columns) {
    return wrapped(draft, player.name, nameStyle.sized(smallestPoints), nameRoom(columns));
}

double rowHeightOf(const QStringList& lines) {
    return rowPitch + nameLinePitch * double(std::max<qsizetype>(0, lines.size() - 1));
}

/// Where the last row ends at the latest: clear of the foot.
double rosterBottom(bool tall) {
    return slipHeightOf(tall) - linesHeight - 2.5;
}

/// Whether each column has room for its players.
bool fits(const Draft& draft, const std::vector<RosterPlayer>& players, const RosterPlan& plan) {
    const double room = rosterBottom(plan.tall) - courtTop;
    std::vector<double> heights(plan.columns);
    for (std::size_t i = 0; i < players.size(); ++i)
        heights[i / plan.inColumn] += rowHeightOf(linesOf(draft, players[i], plan.columns));
    return std::ranges::all_of(heights, [room](double height) { return height <= room; });
}

RosterPlan planOf(const Draft& draft, const std::vector<RosterPlayer>& players, bool alwaysTall) {
    constexpr std::size_t usual = 12;
    for (const bool tall : {alwaysTall, true})
        for (const std::size_t columns : {1U, 2U}) {
            const std::size_t rows = std::max(columns == 1 ? usual : 1, (players.size() + columns - 1) / columns);
            if (const RosterPlan plan{true, tall, columns, rows}; fits(draft, players, plan))
                return plan;
        }
    return {.names = false, .tall = alwaysTall};
}

std::vector<RosterPlayer> playersOf(const MatchHeading& heading, const Slip& slip) {
    return slip.team ? heading.rosters[*slip.team].players : std::vector<RosterPlayer>();
}

/// Draws one slip with its top left corner at `corner`.
class SlipPen {
public:
    SlipPen(Draft& draft, const MatchHeading& heading, const SheetOptions& options, const Slip& slip,
            const RosterPlan& plan, QPointF corner)
        : m_draft(draft),
          m_heading(heading),
          m_options(options),
          m_slip(slip),
          m_plan(plan),
          m_linesTop(slipHeightOf(plan.tall) - linesHeight),
          m_corner(corner),
          m_tag{Zone::Whole, ItemRole::Label, slip.team, {}} {}

    void head();
    void court();
    void roster();
    void lines();

private:
    [[nodiscard]] QPointF at(double x, double y) const { return m_corner + QPointF(x, y); }
    [[nodiscard]] Tag rule() const { return m_tag.as(ItemRole::Rule); }
    void across(double left, double right, double y, double width, QRgb colour) {
        m_draft.ruleAcross(rule(), at(left, 0).x(), at(right, 0).x(), at(0, y).y(), width, colour);
    }
    double matchLine(double right);
    void numbersOnly(const std::vector<RosterPlayer>& players);
    double row(const RosterPlayer* player, double x, double top);
    void box(double left, PageLabel label, int count);

    Draft& m_draft;
    const MatchHeading& m_heading;
    const SheetOptions& m_options;
    Slip m_slip;
    RosterPlan m_plan;
    double m_linesTop;
    QPointF m_corner;
    Tag m_tag;
};

void SlipPen::head() {
    const MatchOpened& opened = m_heading.opened;
    m_draft.rect(m_tag.as(ItemRole::Plate), {at(0, 0), QSizeF(14, 14)}, soot);
    const Tag plate = m_tag.as(ItemRole::PlateText);
    m_draft.text(plate, at(7, 3.8), words(SheetLabel::Set), {6, FontWeight::SemiBold, white, TextAlign::Centre, 0.08});
    if (m_slip.set > 0)
        m_draft.text(plate, at(7, 11.4), QString::number(m_slip.set), {19, FontWeight::Bold, white, TextAlign::Centre});
    else
        m_draft.rect(m_tag.as(ItemRole::Plate), {at(2.4, 5), QSizeF(9.2, 7.4)}, white);
    const double right = slipWidth;
    const double used = m_draft.fitted(m_tag.as(ItemRole::Title), at(right, 4), words(PageLabel::LineUpSlip),
                                       {10, FontWeight::Bold, soot, TextAlign::Right}, 40);
    m_draft.named(m_tag.as(ItemRole::Value), at(17, 4), opened.competition, {8, FontWeight::SemiBold},
                  right - 17 - used - 3, {2, -1.7, 2.3});
    across(17, right, 5.6, 0.35, soot);
    const double down = matchLine(right);
    if (!m_slip.team) {
        across(17, right, 14 + down, 0.2, soot);
        return;
    }
    const TeamName& name = opened.teams[*m_slip.team];
    m_draft.named(m_tag.as(ItemRole::Value), at(17, 13.4 + down), name.name, {11, FontWeight::Bold}, right - 17 - 22,
                  {2, -1.9, 2.35});
    drawPlate(m_draft, m_tag, {at(right - 18, 9.6 + down), QSizeF(18, 5.6)}, name, 10);
}

/// Which match it is, at the right; returns how far what follows has to make room for a second line.
double SlipPen::matchLine(double right) {
    QStringList parts{matchWords(m_heading.opened), dateWords(m_heading.opened.date, m_options.locale)};
    parts.removeAll(QString());
    const QString match = parts.join(QStringLiteral(" · "));
    const double room = right - 17 - m_draft.width(words(PageLabel::Team), labelStyle) - 3;
    constexpr NameLines lines{2, 0, 2.3};
    m_draft.named(m_tag, at(right, 8.6), match, TextStyle(labelStyle).fromRight(), room, lines);
    m_draft.text(m_tag, at(17, 8.6), words(PageLabel::Team), labelStyle);
    return m_draft.width(match, labelStyle) > room ? lines.pitch : 0;
}

void SlipPen::court() {
    m_draft.fitted(m_tag, at(0, courtTop - 1.2), words(PageLabel::SeenOnCourt), labelStyle, courtRight - 12);
    m_draft.text(m_tag, at(courtRight, courtTop - 1.2), words(PageLabel::Net), TextStyle(labelStyle).fromRight());
    across(0, courtRight, courtTop, 0.9, soot);
    const std::array<std::array<int, 3>, 2> rows{{{4, 3, 2}, {5, 6, 1}}};
    for (std::size_t row = 0; row < rows.size(); ++row)
        for (std::size_t column = 0; column < rows[row].size(); ++column) {
            const QPointF corner = at(placeWidth * double(column), courtTop + 0.45 + placeHeight * double(row));
            m_draft.rect(m_tag.as(ItemRole::Box), {corner, QSizeF(placeWidth, placeHeight)}, std::nullopt, boxLine);
            m_draft.text(m_tag, corner + QPointF(1.4, 4.2), QString::number(rows[row][column]),
                         {8, FontWeight::SemiBold, label});
        }
}

void SlipPen::numbersOnly(const std::vector<RosterPlayer>& players) {
    constexpr int inRow = 9;
    constexpr double pitch = (slipWidth - rosterLeft) / inRow;
    for (std::size_t i = 0; i < players.size(); ++i)
        m_draft.text(m_tag.as(ItemRole::Value),
                     at(rosterLeft + pitch * (double(i % inRow) + 0.5), courtTop + 4.2 + 3.9 * double(i / inRow)),
                     QString::number(players[i].number.value), {7.2, FontWeight::SemiBold, soot, TextAlign::Centre});
}

void SlipPen::roster() {
    const double right = slipWidth;
    m_draft.fitted(m_tag, at(rosterLeft, courtTop - 1.2), words(PageLabel::TeamRoster), labelStyle, right - rosterLeft);
    across(rosterLeft, right, courtTop, 0.35, soot);
    const std::vector<RosterPlayer> players = playersOf(m_heading, m_slip);
    if (!m_plan.names)
        return numbersOnly(players);
    for (std::size_t column = 0; column < m_plan.columns; ++column) {
        double top = courtTop;
        for (std::size_t i = 0; i < m_plan.inColumn; ++i) {
            const std::size_t index = column * m_plan.inColumn + i;
            if (index >= players.size() && top + rowPitch > rosterBottom(m_plan.tall))
                break; // rows to be filled in by pen are left out first
            const double x = rosterLeft + columnWidth(m_plan.columns) * double(column);
            top += row(index < players.size() ? &players[index] : nullptr, x, top);
        }
    }
}

/// A row of the roster, filled or not; returns its height.
double SlipPen::row(const RosterPlayer* player, double x, double top) {
    const QStringList lines = player ? linesOf(m_draft, *player, m_plan.columns) : QStringList();
    const double height = rowHeightOf(lines), width = columnWidth(m_plan.columns) - 2;
    across(x, x + width, top + height, 0.12, paleRule);
    if (!player)
        return height;
    const double baseline = top + rowPitch - 1.1;
    const QString letter = player->libero ? liberoLetter() : player->captain ? captainLetter() : QString();
    m_draft.text(m_tag.as(ItemRole::Value), at(x + 4.6, baseline), QString::number(player->number.value),
                 {7.4, FontWeight::Bold, soot, TextAlign::Right});
    m_draft.named(m_tag.as(ItemRole::Value), at(x + 6.4, baseline), player->name.simplified(), nameStyle,
                  nameRoom(m_plan.columns), {static_cast<int>(std::max<qsizetype>(2, lines.size())), 0, nameLinePitch});
    m_draft.text(m_tag, at(x + width - 0.4, baseline), letter, {6.4, FontWeight::Bold, soot, TextAlign::Right});
    return height;
}

void SlipPen::box(double left, PageLabel label, int count) {
    m_draft.fitted(m_tag, at(left, m_linesTop), words(label), labelStyle, 14.0 * count - 1);
    for (int i = 0; i < count; ++i)
        m_draft.rect(m_tag.as(ItemRole::Box), {at(left + 14 * i, m_linesTop + 1.4), QSizeF(12, 10)}, std::nullopt,
                     boxLine);
}

void SlipPen::lines() {
    const int liberos = std::clamp(m_heading.opened.rulebook.maximumLiberos, 0, 2);
    box(0, PageLabel::Captain, 1);
    if (liberos > 0)
        box(16, PageLabel::Liberos, liberos);
    const double left = 46, right = slipWidth;
    m_draft.text(m_tag, at(left, m_linesTop), words(PageLabel::CoachSignature), labelStyle);
    if (m_slip.team)
        m_draft.named(m_tag.as(ItemRole::OfficialName), at(left, m_linesTop + 3.4),
                      m_heading.rosters[*m_slip.team].coach.simplified(), nameStyle, right - left, {2, -0.9, 2.3});
    m_draft.ruleAcross(m_tag.as(ItemRole::SignatureLine), at(left, 0).x(), at(right, 0).x(),
                       at(0, m_linesTop + 11.4).y(), 0.25, soot);
    const TextStyle style{7, FontWeight::Medium, label};
    double y = m_linesTop + 16.4;
    for (const QString& line : wrapped(m_draft, words(PageLabel::SlipNote), style, right)) {
        m_draft.fitted(m_tag, at(0, y), line, style, right);
        y += 3.4;
    }
}

/// Four to a page, two where a roster makes them tall, with lines between them to cut along.
class SlipPages {
public:
    SlipPages(const MatchHeading& heading, const SheetOptions& options) : m_heading(heading), m_options(options) {}

    std::vector<Page> pages(const std::vector<Slip>& slips) {
        const Draft measure(m_options.fonts);
        const auto plansOf = [&](bool alwaysTall) {
            std::vector<RosterPlan> plans;
            for (const Slip& slip : slips)
                plans.push_back(planOf(measure, playersOf(m_heading, slip), alwaysTall));
            return plans;
        };
        std::vector<RosterPlan> plans = plansOf(false);
        const bool tall = std::ranges::any_of(plans, &RosterPlan::tall);
        if (tall)
            plans = plansOf(true);
        const std::size_t onPage = tall ? 2 : 4, count = (slips.size() + onPage - 1) / onPage;
        std::vector<Page> pages;
        for (std::size_t page = 0; page < count; ++page) {
            Draft draft(m_options.fonts);
            for (std::size_t i = 0; i < onPage && onPage * page + i < slips.size(); ++i) {
                const std::size_t slip = onPage * page + i;
                drawSlip(draft, slips[slip], plans[slip],
                         {slipPitch.x() * double(i % 2), slipPitch.y() * double(i / 2)});
            }
            drawCuts(draft, tall);
            pages.push_back(framed(draft, m_options, {static_cast<int>(page + 1), static_cast<int>(count)}));
        }
        return pages;
    }

private:
    void drawSlip(Draft& draft, const Slip& slip, const RosterPlan& plan, QPointF corner) {
        SlipPen pen(draft, m_heading, m_options, slip, plan, corner);
        pen.head();
        pen.court();
        pen.roster();
        pen.lines();
    }
    static void drawCuts(Draft& draft, bool tall) {
        constexpr Tag cut{Zone::Whole, ItemRole::CutLine, {}, {}};
        const Stroke stroke{label, 0.15, {2, 1.6, 0}, false};
        draft.line(cut, {liveArea.width() / 2, 0}, {liveArea.width() / 2, liveArea.height()}, stroke);
        if (!tall)
            draft.line(cut, {0, liveArea.height() / 2}, {liveArea.width(), liveArea.height() / 2}, stroke);
    }

    const MatchHeading& m_heading;
    const SheetOptions& m_options;
};

} // namespace

std::vector<Page> composeSlips(const MatchRecord& record, const SheetOptions& options) {
    int first = 1;
    for (const SetRecord& set : record.sets)
        if (set.started && !set.cancelled)
            first = set.number + 1;
    const int last = record.heading.opened.bestOf;
    if (first > last)
        first = 1;
    std::vector<Slip> slips;
    for (int set = first; set <= last; ++set)
        for (const Team team : bothTeams)
            slips.push_back({set, team});
    return SlipPages(record.heading, options).pages(slips);
}

std::vector<Page> composeBlankSlips(const MatchHeading& heading, const SheetOptions& options) {
    return SlipPages(heading, options).pages(std::vector<Slip>(4));
}

} // namespace setfolio
