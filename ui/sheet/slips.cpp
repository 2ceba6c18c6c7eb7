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

constexpr QSizeF slipSize(129, 94.5);
constexpr QPointF slipPitch(135, 100.5);
constexpr double courtTop = 20, placeWidth = 24, placeHeight = 23;
constexpr double courtRight = 3 * placeWidth;
constexpr double rosterLeft = courtRight + 4;
constexpr double linesTop = 72;
constexpr Stroke boxLine{soot, 0.3, {}, false};

/// What a slip is filled with.
struct Slip {
    int set = 0; ///< 0: to be filled in
    std::optional<Team> team;
};

/// Draws one slip with its top left corner at `corner`.
class SlipPen {
public:
    SlipPen(Draft& draft, const MatchHeading& heading, const SheetOptions& options, const Slip& slip, QPointF corner)
        : m_draft(draft),
          m_heading(heading),
          m_options(options),
          m_slip(slip),
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
    void numbersOnly(const std::vector<RosterPlayer>& players);
    void box(double left, PageLabel label, int count);

    Draft& m_draft;
    const MatchHeading& m_heading;
    const SheetOptions& m_options;
    Slip m_slip;
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
    const double right = slipSize.width();
    const double used = m_draft.fitted(m_tag.as(ItemRole::Title), at(right, 4), words(PageLabel::LineUpSlip),
                                       {10, FontWeight::Bold, soot, TextAlign::Right}, 40);
    m_draft.fitted(m_tag.as(ItemRole::Value), at(17, 4), opened.competition, {8, FontWeight::SemiBold},
                   right - 17 - used - 3);
    across(17, right, 5.6, 0.35, soot);
    const QString match = matchWords(opened);
    const QString date = dateWords(opened.date, m_options.locale);
    m_draft.fitted(m_tag, at(right, 8.6),
                   match.isEmpty() || date.isEmpty() ? match + date : match + QStringLiteral(" · ") + date,
                   TextStyle(labelStyle).fromRight(), 62);
    m_draft.text(m_tag, at(17, 8.6), words(PageLabel::Team), labelStyle);
    if (!m_slip.team) {
        across(17, right, 14, 0.2, soot);
        return;
    }
    const TeamName& name = opened.teams[*m_slip.team];
    m_draft.fitted(m_tag.as(ItemRole::Value), at(17, 13.4), name.name, {11, FontWeight::Bold}, right - 17 - 22);
    drawPlate(m_draft, m_tag, {at(right - 18, 9.6), QSizeF(18, 5.6)}, name, 10);
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
    constexpr double pitch = (slipSize.width() - rosterLeft) / inRow;
    for (std::size_t i = 0; i < players.size(); ++i)
        m_draft.text(m_tag.as(ItemRole::Value),
                     at(rosterLeft + pitch * (double(i % inRow) + 0.5), courtTop + 4.2 + 3.9 * double(i / inRow)),
                     QString::number(players[i].number.value), {7.2, FontWeight::SemiBold, soot, TextAlign::Centre});
}

void SlipPen::roster() {
    const double right = slipSize.width();
    m_draft.fitted(m_tag, at(rosterLeft, courtTop - 1.2), words(PageLabel::TeamRoster), labelStyle, right - rosterLeft);
    across(rosterLeft, right, courtTop, 0.35, soot);
    const std::vector<RosterPlayer> players =
        m_slip.team ? m_heading.rosters[*m_slip.team].players : std::vector<RosterPlayer>();
    constexpr std::size_t lines = 12;
    if (players.size() > 2 * lines)
        return numbersOnly(players);
    const std::size_t columns = players.size() > lines ? 2 : 1;
    const double width = (right - rosterLeft + 2) / double(columns);
    for (std::size_t i = 0; i < std::max(lines, players.size()); ++i) {
        const double x = rosterLeft + width * double(i / lines), y = courtTop + 3.9 * double(i % lines + 1);
        across(x, x + width - 2, y, 0.12, paleRule);
        if (i >= players.size())
            continue;
        const RosterPlayer& player = players[i];
        const QString letter = player.libero ? liberoLetter() : player.captain ? captainLetter() : QString();
        m_draft.text(m_tag.as(ItemRole::Value), at(x + 4.6, y - 1.1), QString::number(player.number.value),
                     {7.4, FontWeight::Bold, soot, TextAlign::Right});
        m_draft.fitted(m_tag.as(ItemRole::Value), at(x + 6.4, y - 1.1), player.name.simplified(),
                       {7.2, FontWeight::Medium}, width - 12);
        m_draft.text(m_tag, at(x + width - 2.4, y - 1.1), letter, {6.4, FontWeight::Bold, soot, TextAlign::Right});
    }
}

void SlipPen::box(double left, PageLabel label, int count) {
    m_draft.fitted(m_tag, at(left, linesTop), words(label), labelStyle, 14.0 * count - 1);
    for (int i = 0; i < count; ++i)
        m_draft.rect(m_tag.as(ItemRole::Box), {at(left + 14 * i, linesTop + 1.4), QSizeF(12, 10)}, std::nullopt,
                     boxLine);
}

void SlipPen::lines() {
    const int liberos = std::clamp(m_heading.opened.rulebook.maximumLiberos, 0, 2);
    box(0, PageLabel::Captain, 1);
    if (liberos > 0)
        box(16, PageLabel::Liberos, liberos);
    const double left = 46, right = slipSize.width();
    m_draft.text(m_tag, at(left, linesTop), words(PageLabel::CoachSignature), labelStyle);
    if (m_slip.team)
        m_draft.fitted(m_tag.as(ItemRole::OfficialName), at(left, linesTop + 3.4),
                       m_heading.rosters[*m_slip.team].coach.simplified(), {7.2, FontWeight::Medium}, right - left);
    m_draft.ruleAcross(m_tag.as(ItemRole::SignatureLine), at(left, 0).x(), at(right, 0).x(), at(0, linesTop + 11.4).y(),
                       0.25, soot);
    const TextStyle style{7, FontWeight::Medium, label};
    double y = linesTop + 16.4;
    for (const QString& line : wrapped(m_draft, words(PageLabel::SlipNote), style, right)) {
        m_draft.fitted(m_tag, at(0, y), line, style, right);
        y += 3.4;
    }
}

/// Four to a page, with lines between them to cut along.
class SlipPages {
public:
    SlipPages(const MatchHeading& heading, const SheetOptions& options) : m_heading(heading), m_options(options) {}

    std::vector<Page> pages(const std::vector<Slip>& slips) {
        std::vector<Page> pages;
        const int count = (static_cast<int>(slips.size()) + 3) / 4;
        for (int page = 0; page < count; ++page) {
            Draft draft(m_options.fonts);
            for (int i = 0; i < 4 && 4 * page + i < static_cast<int>(slips.size()); ++i)
                drawSlip(draft, slips[static_cast<std::size_t>(4 * page + i)], i);
            drawCuts(draft);
            pages.push_back(framed(draft, m_options, {page + 1, count}));
        }
        return pages;
    }

private:
    void drawSlip(Draft& draft, const Slip& slip, int place) {
        SlipPen pen(draft, m_heading, m_options, slip, {slipPitch.x() * (place % 2), slipPitch.y() * (place / 2)});
        pen.head();
        pen.court();
        pen.roster();
        pen.lines();
    }
    static void drawCuts(Draft& draft) {
        constexpr Tag cut{Zone::Whole, ItemRole::CutLine, {}, {}};
        const Stroke stroke{label, 0.15, {2, 1.6, 0}, false};
        draft.line(cut, {liveArea.width() / 2, 0}, {liveArea.width() / 2, liveArea.height()}, stroke);
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
