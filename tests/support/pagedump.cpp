// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/pagedump.h"

#include "core/match/entry.h"

#include <QStringList>

#include <array>

namespace setfolio::testing {

namespace {

const char* nameOf(Zone zone) {
    static constexpr std::array names{"header", "ladder-head", "ladder",   "home", "visitors", "remarks",
                                      "foot",   "legend",      "masthead", "body", "whole"};
    static_assert(names.size() == static_cast<std::size_t>(Zone::Whole) + 1);
    return names.at(static_cast<std::size_t>(zone));
}

const char* nameOf(ItemRole role) {
    static constexpr std::array names{
        "label",         "value",         "title",           "plate",         "plate-text",    "rule",
        "box",           "tint",          "serve-mark",      "serve-content", "opening",       "term-word",
        "exit",          "exit-line",     "mark-strike",     "mark-cross",    "note-number",   "double-bar",
        "cell-cross",    "live-cell",     "ghost-mark",      "slot-numeral",  "slot-pointer",  "slot-number",
        "slot-strike",   "captain",       "captain-ring",    "libero-mark",   "libero-number", "time-out",
        "time-out-dash", "counter",       "counter-cross",   "score",         "running",       "running-mark",
        "running-slash", "running-opp",   "running-penalty", "running-cross", "close-off",     "card",
        "card-letter",   "remark-number", "remark-text",     "official",      "signature",     "sign-stroke",
        "sign-strike",   "sign-word",     "seal-code",       "seal-squares",  "legend-mark",   "legend-content",
        "legend-strike", "legend-text",   "court",           "cut-line",      "score-line",    "score-event"};
    static_assert(names.size() == static_cast<std::size_t>(ItemRole::ScoreEvent) + 1);
    return names.at(static_cast<std::size_t>(role));
}

const char* nameOf(FontWeight weight) {
    static constexpr std::array names{"400", "500", "600", "700"};
    return names.at(static_cast<std::size_t>(weight));
}

const char* nameOf(TextAlign align) {
    static constexpr std::array names{"from", "round", "to"};
    return names.at(static_cast<std::size_t>(align));
}

QString number(double value) {
    const QString text = QString::number(value, 'f', 2);
    return text == QLatin1String("-0.00") ? QStringLiteral("0.00") : text;
}

QString colour(QRgb value) {
    return QStringLiteral("#%1").arg(value & 0xFFFFFF, 6, 16, QLatin1Char('0'));
}

QString point(QPointF place) {
    return QStringLiteral("%1,%2").arg(number(place.x()), number(place.y()));
}

QString line(const Stroke& stroke) {
    if (stroke.width <= 0)
        return QStringLiteral("no line");
    QString text = QStringLiteral("line %1 %2").arg(number(stroke.width), colour(stroke.colour));
    if (stroke.dash.on > 0)
        text += QStringLiteral(" broken %1/%2").arg(number(stroke.dash.on), number(stroke.dash.off));
    return text;
}

QString fill(const std::optional<QRgb>& value) {
    return value ? QStringLiteral("filled %1, ").arg(colour(*value)) : QString();
}

QString shapeText(const Shape& shape) {
    return std::visit(
        Overloaded{
            [](const TextShape& text) {
                return QStringLiteral("\"%1\" %2 %3, %4 pt %5 %6")
                    .arg(text.shaped->text, QLatin1String(nameOf(text.align)), point(text.anchor), number(text.points),
                         QLatin1String(nameOf(text.shaped->weight)), colour(text.colour));
            },
            [](const LineShape& ruled) {
                return QStringLiteral("%1 to %2, %3").arg(point(ruled.from), point(ruled.to), line(ruled.stroke));
            },
            [](const RectShape& rect) {
                return QStringLiteral("rectangle %1 to %2, %3%4")
                    .arg(point(rect.rect.topLeft()), point(rect.rect.bottomRight()), fill(rect.fill),
                         line(rect.outline));
            },
            [](const RingShape& ring) {
                return QStringLiteral("ring %1 radius %2, %3")
                    .arg(point(ring.centre), number(ring.radius), line(ring.stroke));
            },
            [](const PolygonShape& polygon) {
                QStringList corners;
                for (const QPointF& corner : polygon.corners)
                    corners += point(corner);
                return QStringLiteral("polygon %1, %2%3%4")
                    .arg(corners.join(u' '), fill(polygon.fill), line(polygon.stroke),
                         polygon.sides.empty() ? QString() : QStringLiteral(" broken"));
            },
            [](const StrokesShape& strokes) {
                QStringList lines;
                for (const QPolygonF& drawn : strokes.lines)
                    lines += QStringLiteral("%1 points from %2").arg(drawn.size()).arg(point(drawn.first()));
                return QStringLiteral("strokes %1, %2").arg(lines.join(QStringLiteral("; ")), line(strokes.stroke));
            },
            [](const SquaresShape& squares) {
                return QStringLiteral("squares %1 of %2, %3")
                    .arg(squares.dark.size())
                    .arg(number(squares.size), point(squares.corner));
            },
        },
        shape);
}

} // namespace

QString dump(const Page& page) {
    QString text = QStringLiteral("page %1 of %2, %3 x %4 mm\n")
                       .arg(page.number)
                       .arg(page.of)
                       .arg(number(page.widthMm), number(page.heightMm));
    for (Item item : page.items) {
        translate(item, -page.live);
        text += QStringLiteral("%1 %2")
                    .arg(QLatin1String(nameOf(item.zone)), -11)
                    .arg(QLatin1String(nameOf(item.role)), -15);
        if (item.entry.value > 0)
            text += QStringLiteral(" #%1").arg(item.entry.value);
        text += QStringLiteral(" %1\n").arg(shapeText(item.shape));
    }
    return text;
}

} // namespace setfolio::testing
