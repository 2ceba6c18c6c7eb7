// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/slotnumbers.h"

#include "ui/wording/markwords.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace setfolio::sheet {

namespace {

/// From the largest down.
std::vector<SlotHand> allHands() {
    std::vector<SlotHand> hands;
    for (double points = 9.2; points >= 7.9 - 1e-9; points -= 0.3)
        hands.push_back({points, 1, 0});
    for (double points = 7.4; points > smallestPoints; points -= 0.35)
        hands.push_back({points, 2, 3.8});
    hands.push_back({smallestPoints, 2, 3.8});
    hands.push_back({smallestPoints, 3, 2.7});
    return hands;
}

} // namespace

QString olderMark() {
    return QString(QChar(0x2026));
}

double captainRingRadius(double width, double points) {
    return std::hypot(width / 2, halfCap(points)) + captainLine / 2 + 0.02;
}

SlotNumbers::SlotNumbers(const Draft& draft, const Scene& scene, Team team, Slot slot)
    : m_draft(draft),
      m_scene(scene),
      m_record(scene.team(team)),
      m_row(m_record.slots[slot.index()]),
      m_room((m_row.libero ? triangleLeft - 0.4 : laterRight) - laterLeft) {}

bool SlotNumbers::isRinged(std::size_t index) const {
    return captainMark() == CaptainMark::RingedNumber && isCaptain(index);
}

bool SlotNumbers::hasLetter(std::size_t index) const {
    return captainMark() == CaptainMark::LetterC && isCaptain(index);
}

/// Her letter stands beside her first number in the slot.
bool SlotNumbers::isCaptain(std::size_t index) const {
    const ShirtNumber number = m_row.stood[index].number;
    const auto first = std::ranges::find(m_row.stood, number, &Standing::number);
    return number.isValid() && m_record.captain == number &&
           first - m_row.stood.begin() == static_cast<std::ptrdiff_t>(index);
}

double SlotNumbers::widthOf(std::size_t index, const SlotHand& hand) const {
    const bool onCourt = index + 1 == m_row.stood.size();
    const double number = m_draft.width(shirtWords(m_row.stood[index].number), hand.style(onCourt));
    if (isRinged(index))
        return 2 * captainRingRadius(number, hand.points) + captainLine;
    return number + (hasLetter(index) ? m_draft.width(captainLetter(), {6, FontWeight::Bold}) + 0.3 : 0);
}

SlotNumbers::Lines SlotNumbers::broken(std::size_t first, const SlotHand& hand, double room) const {
    Lines lines(1);
    double x = first > 1 ? m_draft.width(olderMark(), hand.style(true)) : 0;
    for (std::size_t i = first; i < m_row.stood.size(); ++i) {
        const double width = widthOf(i, hand);
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
SlotNumbers::Lines SlotNumbers::evened(std::size_t first, const SlotHand& hand) const {
    Lines lines = broken(first, hand, m_room);
    for (double narrower = m_room - 0.5; narrower > 0; narrower -= 0.5) {
        Lines tried = broken(first, hand, narrower);
        if (tried.size() > lines.size())
            break;
        lines = std::move(tried);
    }
    return lines;
}

SlotNumbers::Fitted SlotNumbers::fitted() const {
    const std::vector<SlotHand> hands = allHands();
    for (const SlotHand& hand : hands)
        if (static_cast<int>(broken(1, hand, m_room).size()) <= hand.lines)
            return {hand, evened(1, hand), 1};
    const SlotHand& least = hands.back();
    for (std::size_t first = 2;; ++first)
        if (Lines lines = broken(first, least, m_room); static_cast<int>(lines.size()) <= least.lines)
            return {least, std::move(lines), first};
}

double SlotNumbers::heightOf(const std::vector<std::size_t>& line, const SlotHand& hand) const {
    const auto ringed = std::ranges::find_if(line, [this](std::size_t index) { return isRinged(index); });
    return ringed != line.end() ? widthOf(*ringed, hand) : 2 * halfCap(hand.points);
}

/// Three lines, one of them with a ring, clear each other and the row's rules by the same; any others are evenly apart.
std::vector<double> SlotNumbers::middles(const Fitted& fitted) const {
    const SlotHand& hand = fitted.hand;
    std::vector<double> middles, heights;
    for (const std::vector<std::size_t>& line : fitted.lines) {
        middles.push_back(hand.pitch * (double(middles.size()) - double(fitted.lines.size() - 1) / 2));
        heights.push_back(heightOf(line, hand));
    }
    if (middles.size() < 3 || std::ranges::max(heights) == std::ranges::min(heights))
        return middles;
    const double gap = (rowHeight - std::accumulate(heights.begin(), heights.end(), 0.0)) / double(heights.size() + 1);
    double top = -rowHeight / 2;
    for (std::size_t i = 0; i < heights.size(); ++i) {
        middles[i] = top + gap + heights[i] / 2;
        top += gap + heights[i];
    }
    return middles;
}

std::span<const Standing> beyondRow(const Draft& draft, const Scene& scene, Team team, Slot slot) {
    const std::vector<Standing>& stood = scene.team(team).slots[slot.index()].stood;
    if (stood.size() < 2)
        return {};
    const std::size_t first = SlotNumbers(draft, scene, team, slot).fitted().first;
    return std::span(stood).subspan(1, first - 1);
}

} // namespace setfolio::sheet
