// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// Where the parts of a page are set down, item by item.
#pragma once

#include "ui/sheet/inkstyle.h"
#include "ui/sheet/item.h"
#include "ui/sheet/palette.h"

namespace setfolio::sheet {

/// What an item is and tells of.
struct Tag {
    Zone zone = Zone::Header;
    ItemRole role = ItemRole::Label;
    std::optional<Team> team;
    EntryNumber entry;

    [[nodiscard]] Tag as(ItemRole other) const { return {zone, other, team, entry}; }
    [[nodiscard]] Tag of(EntryNumber other) const { return {zone, role, team, other}; }
};

struct TextStyle {
    double points = 9;
    FontWeight weight = FontWeight::Medium;
    QRgb colour = soot;
    TextAlign align = TextAlign::Left;
    double tracking = 0; ///< em

    [[nodiscard]] TextStyle centred() const { return {points, weight, colour, TextAlign::Centre, tracking}; }
    [[nodiscard]] TextStyle fromRight() const { return {points, weight, colour, TextAlign::Right, tracking}; }
    [[nodiscard]] TextStyle sized(double other) const { return {other, weight, colour, align, tracking}; }
};

/// No text is smaller, on no page.
inline constexpr double smallestPoints = 6.0;
/// What labels are written in.
inline constexpr TextStyle labelStyle{6.0, FontWeight::Medium, label, TextAlign::Left, 0};

[[nodiscard]] constexpr double millimetres(double points) {
    return points * 25.4 / 72;
}
/// From the middle of capitals and figures down to their baseline.
[[nodiscard]] constexpr double halfCap(double points) {
    return capHeight * millimetres(points) / 2;
}

/// Where the lines of a name stand that has to take several.
struct NameLines {
    int most = 2;
    double first = -2.1; ///< baseline of the first, from that of a name in one line
    double pitch = 2.4;
};

/// Of a name that stands close under its label.
inline constexpr NameLines underLabel{2, -1.8, 2.35};

class Draft {
public:
    explicit Draft(const SheetFonts& fonts) : m_fonts(fonts) {}

    [[nodiscard]] double width(const QString& words, const TextStyle& style) const; ///< millimetres

    /// Places text on a baseline.
    void text(const Tag& tag, QPointF anchor, const QString& words, const TextStyle& style);
    /// Places text with the middle of its capitals at `anchor`.
    void textAt(const Tag& tag, QPointF anchor, const QString& words, const TextStyle& style);
    /// Places text that may be no wider than `room`: smaller if need be, at 6 pt shortened. Returns the width used.
    double fitted(const Tag& tag, QPointF anchor, const QString& words, TextStyle style, double room);

    /// Places a name that may be no wider than `room`: smaller if need be, at 6 pt in several lines. One that is longer
    /// still is shortened, and kept in cutShort(). Returns the width used.
    double named(const Tag& tag, QPointF anchor, const QString& words, const TextStyle& style, double room,
                 const NameLines& lines = {});
    /// What has not been written in full, to be told elsewhere.
    [[nodiscard]] const QStringList& cutShort() const { return m_cutShort; }
    void addCutShort(const QStringList& names) { m_cutShort += names; }

    void line(const Tag& tag, QPointF from, QPointF to, const Stroke& stroke);
    void ruleAcross(const Tag& tag, double left, double right, double y, double width, QRgb colour);
    void ruleDown(const Tag& tag, double x, double top, double bottom, double width, QRgb colour);
    void rect(const Tag& tag, const QRectF& rect, std::optional<QRgb> fill, const Stroke& outline = {});
    void ring(const Tag& tag, QPointF centre, double radius, const Stroke& stroke);
    /// A closed outline; broken in the ink's manner with dashes of about `pitch`.
    void polygon(const Tag& tag, const QPolygonF& corners, const InkStyle& ink, double width, double pitch);
    void filledPolygon(const Tag& tag, const QPolygonF& corners, std::optional<QRgb> fill, const Stroke& outline);

    void strokes(const Tag& tag, std::vector<QPolygonF> lines, const Stroke& stroke);
    void squares(const Tag& tag, SquaresShape squares);

    [[nodiscard]] std::vector<Item> take() { return std::move(m_items); }
    [[nodiscard]] const SheetFonts& fonts() const { return m_fonts; }

private:
    void add(const Tag& tag, Shape shape);

    const SheetFonts& m_fonts;
    std::vector<Item> m_items;
    QStringList m_cutShort;
};

/// Words shortened at the end to what fits, with three dots; whole if they fit.
[[nodiscard]] QString shortened(const Draft& draft, const QString& words, const TextStyle& style, double room);
/// A name in at most so many lines: broken at spaces or, where that takes too many, anywhere; the last is shortened if
/// need be.
[[nodiscard]] QStringList nameLines(const Draft& draft, const QString& name, const TextStyle& style, double room,
                                    int most);
/// Whether the lines of a name end before the name does.
[[nodiscard]] bool isCut(const QStringList& lines, const QString& name);

/// How far under a line the next has to stand: further than usual where a high letter would touch a low one above it.
[[nodiscard]] double clearPitch(const TextShape& upper, const TextShape& lower, double usual);

/// A name set in several lines, one close under the other; one that is written from the right begins at the right.
struct NameBlock {
    std::vector<TextShape> lines;
    double width = 0;
    bool cut = false; ///< the lines end before the name does
    [[nodiscard]] double height() const { return lines.back().anchor.y() - lines.front().anchor.y(); } ///< of baselines
};
[[nodiscard]] NameBlock nameBlock(const Draft& draft, QPointF anchor, const QString& name, const TextStyle& style,
                                  double room, const NameLines& lines);

/// Words broken into lines no wider than `room`, at spaces where there are any.
[[nodiscard]] QStringList wrapped(const Draft& draft, const QString& words, const TextStyle& style, double room);

} // namespace setfolio::sheet
