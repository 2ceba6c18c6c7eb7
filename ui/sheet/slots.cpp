// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/slotnumbers.h"
#include "ui/sheet/term.h"
#include "ui/wording/markwords.h"
#include "ui/wording/names.h"

namespace setfolio::sheet {

namespace {

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
    void ringCaptain(const Tag& number, QPointF middle, double radius) {
        m_draft.ring(number.as(ItemRole::CaptainRing), middle, radius, {soot, captainLine, {}, false});
    }
    [[nodiscard]] SlotNumbers numbers(Slot slot) const { return {m_draft, m_scene, m_team, slot}; }
    void laterLine(Slot slot, const std::vector<std::size_t>& line, const SlotHand& hand, QPointF from);

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
    const SlotNumbers numbers = this->numbers(slot);
    constexpr TextStyle style{13, FontWeight::Bold, soot, TextAlign::Centre};
    const double centre = rowCentre(m_team, slot);
    const Tag tag = m_tag.of(stood.front().since).as(ItemRole::SlotNumber);
    const QString number = QString::number(stood.front().number.value);
    const double half = m_draft.width(number, style) / 2;
    const double middle = numbers.isRinged(0) ? 13.4 : 12.6;
    m_draft.textAt(tag, {middle, centre}, number, style);
    if (numbers.isRinged(0))
        ringCaptain(tag, {middle, centre}, captainRingRadius(2 * half, style.points));
    if (stood.size() > 1)
        drawStrike(m_draft, tag.as(ItemRole::SlotStrike), middle - half - 0.7, middle + half + 0.7, centre, 1.2, 0.34,
                   soot);
    if (numbers.hasLetter(0))
        m_draft.text(tag.as(ItemRole::CaptainLetter), {middle + half + 0.55, centre - 0.1}, captainLetter(),
                     {6.6, FontWeight::Bold});
}

void SlotPen::later(Slot slot) {
    const SlotRecord& row = m_record.slots[slot.index()];
    if (row.stood.size() < 2)
        return;
    const SlotNumbers::Fitted fitted = numbers(slot).fitted();
    const SlotHand& hand = fitted.hand;
    const std::vector<double> middles = numbers(slot).middles(fitted);
    QPointF from(laterLeft, rowCentre(m_team, slot) + middles.front());
    if (fitted.first > 1) {
        const TextStyle style = hand.style(true);
        m_draft.textAt(m_tag.as(ItemRole::NoteNumber).of(row.stood[fitted.first - 1].since), from, olderMark(), style);
        from.rx() += m_draft.width(olderMark(), style) + hand.gap();
    }
    for (std::size_t i = 0; i < fitted.lines.size(); ++i) {
        from.setY(rowCentre(m_team, slot) + middles[i]);
        laterLine(slot, fitted.lines[i], hand, from);
        from.setX(laterLeft);
    }
}

void SlotPen::laterLine(Slot slot, const std::vector<std::size_t>& line, const SlotHand& hand, QPointF from) {
    const std::vector<Standing>& stood = m_record.slots[slot.index()].stood;
    const SlotNumbers numbers = this->numbers(slot);
    double x = from.x();
    const double y = from.y();
    for (const std::size_t index : line) {
        const bool onCourt = index + 1 == stood.size();
        const QString number = shirtWords(stood[index].number);
        const Tag tag = m_tag.of(stood[index].since).as(ItemRole::SlotNumber);
        const double width = m_draft.width(number, hand.style(onCourt));
        const double whole = numbers.widthOf(index, hand);
        const double left = numbers.isRinged(index) ? x + (whole - width) / 2 : x;
        m_draft.textAt(tag, {left, y}, number, hand.style(onCourt));
        if (numbers.isRinged(index))
            ringCaptain(tag, {x + whole / 2, y}, (whole - captainLine) / 2);
        if (!onCourt)
            drawStrike(m_draft, tag.as(ItemRole::SlotStrike), left - hand.overshoot(), left + width + hand.overshoot(),
                       y, hand.lines == 1 ? 1.1 : 0.9, 0.28, soot);
        if (numbers.hasLetter(index))
            m_draft.text(tag.as(ItemRole::CaptainLetter), {x + width + 0.3, y + (hand.lines > 2 ? 0.4 : -0.1)},
                         captainLetter(), {6, FontWeight::Bold});
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
