// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/scene.h"

#include "ui/sheet/term.h"
#include "ui/wording/markwords.h"
#include "ui/wording/names.h"

#include <cmath>

namespace setfolio::sheet {

namespace {

constexpr double laterLeft = 20.6;
constexpr double laterRight = 41.8;
constexpr double triangleLeft = 34.9; // of the libero's small triangle
constexpr double captainLine = 0.2;

/// Of a ring that clears figures of that width.
double ringRadius(double width, double points) {
    return std::hypot(width / 2, halfCap(points)) + captainLine / 2 + 0.02;
}

/// The six slots of a team: who has stood in each.
class SlotPen {
public:
    SlotPen(Draft& draft, const Scene& scene, Team team)
        : m_draft(draft),
          m_scene(scene),
          m_team(team),
          m_record(scene.team(team)),
          m_tag{blockOf(team), ItemRole::SlotNumeral, team, {}} {}

    void numeral(Slot slot);
    void starter(Slot slot);
    void later(Slot slot);
    void libero(Slot slot);

private:
    /// How the numbers after the starter are written: the largest type that holds them.
    struct Hand {
        double points = 9.2;
        int lines = 1;
        double pitch = 0; ///< from line to line
        [[nodiscard]] double gap() const { return 0.64 * millimetres(points); }
        [[nodiscard]] double overshoot() const { return std::min(0.45, gap() / 2 - 0.1); }
    };
    using Lines = std::vector<std::vector<std::size_t>>; ///< indexes into `stood`

    [[nodiscard]] CaptainMark captainMark() const { return m_scene.heading.opened.rulebook.captainMark; }
    [[nodiscard]] bool isRinged(const std::vector<Standing>& stood, std::size_t index) const {
        return captainMark() == CaptainMark::RingedNumber && isCaptain(stood, index);
    }
    [[nodiscard]] bool hasLetter(const std::vector<Standing>& stood, std::size_t index) const {
        return captainMark() == CaptainMark::LetterC && isCaptain(stood, index);
    }
    void ringCaptain(const Tag& number, QPointF middle, double radius) {
        m_draft.ring(number.as(ItemRole::CaptainRing), middle, radius, {soot, captainLine, {}, false});
    }
    [[nodiscard]] TextStyle style(const Hand& hand, bool onCourt) const {
        return {hand.points, onCourt ? FontWeight::Bold : FontWeight::Medium};
    }
    [[nodiscard]] double widthOf(const std::vector<Standing>& stood, std::size_t index, const Hand& hand) const {
        const bool onCourt = index + 1 == stood.size();
        const double number = m_draft.width(shirtWords(stood[index].number), style(hand, onCourt));
        if (isRinged(stood, index))
            return 2 * ringRadius(number, hand.points) + captainLine;
        return number + (hasLetter(stood, index) ? captainWidth() + 0.3 : 0);
    }
    [[nodiscard]] double captainWidth() const { return m_draft.width(captainLetter(), {6, FontWeight::Bold}); }
    /// Her letter stands beside her first number in the slot.
    [[nodiscard]] bool isCaptain(const std::vector<Standing>& stood, std::size_t index) const {
        const auto same = [&](const Standing& standing) { return standing.number == stood[index].number; };
        return stood[index].number.isValid() && m_record.captain == stood[index].number &&
               std::find_if(stood.begin(), stood.end(), same) - stood.begin() == static_cast<std::ptrdiff_t>(index);
    }
    [[nodiscard]] Lines broken(const std::vector<Standing>& stood, std::size_t first, const Hand& hand,
                               double room) const;
    [[nodiscard]] Lines evened(const std::vector<Standing>& stood, std::size_t first, const Hand& hand,
                               double room) const;
    [[nodiscard]] std::pair<Hand, Lines> fitting(const std::vector<Standing>& stood, double room) const;
    void laterLine(const std::vector<Standing>& stood, const std::vector<std::size_t>& line, const Hand& hand,
                   double y);

    Draft& m_draft;
    const Scene& m_scene;
    Team m_team;
    const TeamRecord& m_record;
    Tag m_tag;
};

void SlotPen::numeral(Slot slot) {
    const double centre = rowCentre(m_team, slot);
    const LivePlace* live = m_scene.live();
    const bool serves = live && live->serving == m_team && live->slot == slot;
    const bool next = live && live->serving != m_team && live->nextOfOthers == slot;
    if (serves)
        m_draft.rect(m_tag.as(ItemRole::LiveCell), {0, centre - rowHeight / 2, numeralRight, rowHeight}, soot);
    const double x = serves || next ? 3.2 : 4.0;
    m_draft.textAt(m_tag, {x, centre}, roman(slot),
                   {8, FontWeight::SemiBold, serves ? white : sheet::label, TextAlign::Centre});
    const QPolygonF pointer{{QPointF(5.9, centre - 1.2), QPointF(7.5, centre), QPointF(5.9, centre + 1.2)}};
    if (serves)
        m_draft.filledPolygon(m_tag.as(ItemRole::SlotPointer), pointer, amber, {});
    if (next)
        m_draft.filledPolygon(m_tag.as(ItemRole::SlotPointer), pointer, std::nullopt, {soot, 0.25, {}, false});
}

void SlotPen::starter(Slot slot) {
    const std::vector<Standing>& stood = m_record.slots[slot.index()].stood;
    if (stood.empty())
        return;
    constexpr TextStyle style{13, FontWeight::Bold, soot, TextAlign::Centre};
    const double centre = rowCentre(m_team, slot);
    const Tag tag = m_tag.of(stood.front().since).as(ItemRole::SlotNumber);
    const QString number = QString::number(stood.front().number.value);
    const double half = m_draft.width(number, style) / 2;
    const double middle = isRinged(stood, 0) ? 13.4 : 12.6;
    m_draft.textAt(tag, {middle, centre}, number, style);
    if (isRinged(stood, 0))
        ringCaptain(tag, {middle, centre}, ringRadius(2 * half, style.points));
    if (stood.size() > 1)
        drawStrike(m_draft, tag.as(ItemRole::SlotStrike), middle - half - 0.7, middle + half + 0.7, centre, 1.2, 0.34,
                   soot);
    if (hasLetter(stood, 0))
        m_draft.text(tag.as(ItemRole::CaptainLetter), {middle + half + 0.55, centre - 0.1}, captainLetter(),
                     {6.6, FontWeight::Bold});
}

SlotPen::Lines SlotPen::broken(const std::vector<Standing>& stood, std::size_t first, const Hand& hand,
                               double room) const {
    Lines lines(1);
    double x = 0;
    for (std::size_t i = first; i < stood.size(); ++i) {
        const double width = widthOf(stood, i, hand);
        if (x > 0 && x + hand.gap() + width > room) {
            lines.emplace_back();
            x = 0;
        }
        x += (x > 0 ? hand.gap() : 0) + width;
        lines.back().push_back(i);
    }
    return lines;
}

/// As few lines as the room allows, of even length.
SlotPen::Lines SlotPen::evened(const std::vector<Standing>& stood, std::size_t first, const Hand& hand,
                               double room) const {
    Lines lines = broken(stood, first, hand, room);
    for (double narrower = room - 0.5; narrower > 0; narrower -= 0.5) {
        Lines tried = broken(stood, first, hand, narrower);
        if (tried.size() > lines.size())
            break;
        lines = std::move(tried);
    }
    return lines;
}

std::pair<SlotPen::Hand, SlotPen::Lines> SlotPen::fitting(const std::vector<Standing>& stood, double room) const {
    std::vector<Hand> hands;
    for (double points = 9.2; points >= 7.9 - 1e-9; points -= 0.3)
        hands.push_back({points, 1, 0});
    for (double points = 7.4; points > 6; points -= 0.35)
        hands.push_back({points, 2, 3.8});
    hands.push_back({6, 2, 3.8});
    hands.push_back({6, 3, captainMark() == CaptainMark::RingedNumber ? 2.5 : 2.7});
    for (const Hand& hand : hands)
        if (const Lines lines = broken(stood, 1, hand, room); static_cast<int>(lines.size()) <= hand.lines)
            return {hand, evened(stood, 1, hand, room)};
    // More than any rulebook allows: the newest are shown, every one stands in the terms as well.
    for (std::size_t first = 2;; ++first)
        if (Lines lines = broken(stood, first, hands.back(), room); lines.size() <= 3)
            return {hands.back(), std::move(lines)};
}

void SlotPen::later(Slot slot) {
    const SlotRecord& row = m_record.slots[slot.index()];
    if (row.stood.size() < 2)
        return;
    const double right = row.libero ? triangleLeft - 0.4 : laterRight;
    const auto [hand, lines] = fitting(row.stood, right - laterLeft);
    double y = rowCentre(m_team, slot) - hand.pitch * static_cast<double>(lines.size() - 1) / 2;
    for (const std::vector<std::size_t>& line : lines) {
        laterLine(row.stood, line, hand, y);
        y += hand.pitch;
    }
}

void SlotPen::laterLine(const std::vector<Standing>& stood, const std::vector<std::size_t>& line, const Hand& hand,
                        double y) {
    double x = laterLeft;
    for (const std::size_t index : line) {
        const bool onCourt = index + 1 == stood.size();
        const QString number = shirtWords(stood[index].number);
        const Tag tag = m_tag.of(stood[index].since).as(ItemRole::SlotNumber);
        const double width = m_draft.width(number, style(hand, onCourt));
        const double whole = widthOf(stood, index, hand);
        const double left = isRinged(stood, index) ? x + (whole - width) / 2 : x;
        m_draft.textAt(tag, {left, y}, number, style(hand, onCourt));
        if (isRinged(stood, index))
            ringCaptain(tag, {x + whole / 2, y}, (whole - captainLine) / 2);
        if (!onCourt)
            drawStrike(m_draft, tag.as(ItemRole::SlotStrike), left - hand.overshoot(), left + width + hand.overshoot(),
                       y, hand.lines == 1 ? 1.1 : 0.9, 0.28, soot);
        if (hasLetter(stood, index))
            m_draft.text(tag.as(ItemRole::CaptainLetter), {x + width + 0.3, y - 0.1}, captainLetter(),
                         {6, FontWeight::Bold});
        x += whole + hand.gap();
    }
}

void SlotPen::libero(Slot slot) {
    const std::optional<ShirtNumber>& libero = m_record.slots[slot.index()].libero;
    if (!libero)
        return;
    constexpr double base = 7.4, height = 4.3, line = 0.19;
    const QPointF bottom(triangleLeft + base / 2, rowCentre(m_team, slot) + height / 2);
    m_draft.filledPolygon(m_tag.as(ItemRole::LiberoTriangle), triangleWithin(bottom, base, height, line), std::nullopt,
                          {soot, line, {}, false});
    m_draft.text(m_tag.as(ItemRole::LiberoNumber), bottom - QPointF(0, line + 0.3), QString::number(libero->value),
                 {6.4, FontWeight::SemiBold, soot, TextAlign::Centre});
}

} // namespace

void drawSlots(Draft& draft, const Scene& scene, Team team) {
    SlotPen pen(draft, scene, team);
    for (const Slot slot : allSlots) {
        pen.numeral(slot);
        pen.starter(slot);
        pen.later(slot);
        pen.libero(slot);
    }
}

} // namespace setfolio::sheet
