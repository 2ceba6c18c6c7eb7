// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "tests/support/pagecheck.h"

#include "core/match/entry.h"

#include <QPainterPath>
#include <QRawFont>

#include <cmath>
#include <limits>

namespace setfolio::testing {

namespace {

constexpr double smallest = 6.0 - 1e-9;
constexpr double rounding = 1e-6;
constexpr double lineOverZone = 0.5; // half of the heaviest rule on the edge of a zone

/// What the checks treat alike.
enum class Kind : std::uint8_t { Text, Mark, Rule, Box, Plate, Over, Ground };

Kind kindOf(const Item& item) {
    if (std::holds_alternative<TextShape>(item.shape))
        return Kind::Text;
    switch (item.role) {
    case ItemRole::ServeMark:
    case ItemRole::GhostMark:
    case ItemRole::DoubleBar:
    case ItemRole::LiberoTriangle:
    case ItemRole::RunningMark:
    case ItemRole::LegendMark:
    case ItemRole::CellCross:
    case ItemRole::CaptainRing:
    case ItemRole::SlotPointer:
        return Kind::Mark;
    case ItemRole::Rule:
    case ItemRole::SignatureLine:
    case ItemRole::Court:
    case ItemRole::CutLine:
    case ItemRole::ScoreLine:
    case ItemRole::ScoreEvent:
        return Kind::Rule;
    case ItemRole::Plate:
    case ItemRole::Card:
        return Kind::Plate;
    case ItemRole::Box:
        return Kind::Box;
    case ItemRole::MarkStrike:
    case ItemRole::ExitLine:
    case ItemRole::MarkCross:
    case ItemRole::RunningCross:
    case ItemRole::SlotStrike:
    case ItemRole::CounterCross:
    case ItemRole::RunningSlash:
    case ItemRole::LegendStrike:
    case ItemRole::SignatureStroke:
    case ItemRole::SignatureStrike:
    case ItemRole::CloseOff:
        return Kind::Over;
    default: // tints, the live cell: what lies under
        return Kind::Ground;
    }
}

struct Seen {
    const Item* item = nullptr;
    Kind kind = Kind::Text;
    QRectF box;
};

QString nameOf(const Seen& seen) {
    const QString place = QStringLiteral("at %1, %2").arg(seen.box.x(), 0, 'f', 2).arg(seen.box.y(), 0, 'f', 2);
    if (const auto* text = std::get_if<TextShape>(&seen.item->shape))
        return QStringLiteral("\"%1\" %2").arg(text->shaped->text, place);
    return QStringLiteral("item of role %1 %2").arg(static_cast<int>(seen.item->role)).arg(place);
}

bool overlap(const QRectF& a, const QRectF& b) {
    return a.left() < b.right() - rounding && b.left() < a.right() - rounding && a.top() < b.bottom() - rounding &&
           b.top() < a.bottom() - rounding;
}

double distanceToSegment(QPointF point, QPointF from, QPointF to) {
    const QPointF along = to - from;
    const double length = QPointF::dotProduct(along, along);
    const double t = length > 0 ? std::clamp(QPointF::dotProduct(point - from, along) / length, 0.0, 1.0) : 0;
    const QPointF away = point - (from + t * along);
    return std::hypot(away.x(), away.y());
}

/// How far a point lies inside the outline of a mark; negative on the line or outside.
double depthIn(const RingShape& ring, QPointF point) {
    const QPointF away = point - ring.centre;
    return ring.radius - ring.stroke.width / 2 - std::hypot(away.x(), away.y());
}

double depthIn(const PolygonShape& polygon, QPointF point) {
    const QPolygonF& corners = polygon.corners;
    double depth = std::numeric_limits<double>::max();
    for (qsizetype i = 0; i < corners.size(); ++i)
        depth = std::min(depth, distanceToSegment(point, corners.at(i), corners.at((i + 1) % corners.size())));
    depth -= polygon.stroke.width / 2;
    return corners.containsPoint(point, Qt::OddEvenFill) ? depth : -std::abs(depth);
}

/// The points of a text's outlines on the page.
QList<QPointF> outlineOf(const TextShape& text) {
    QList<QPointF> points;
    const double scale = text.em() / ShapedText::pixels;
    for (const QGlyphRun& run : text.shaped->runs) {
        const QList<quint32> glyphs = run.glyphIndexes();
        for (qsizetype i = 0; i < glyphs.size(); ++i)
            for (const QPolygonF& polygon : run.rawFont().pathForGlyph(glyphs.at(i)).toSubpathPolygons())
                for (const QPointF& point : polygon)
                    points += QPointF(text.left(), text.anchor.y()) + (run.positions().at(i) + point) * scale;
    }
    return points;
}

/// The letters of a text as they lie on the page.
QPainterPath lettersOf(const TextShape& text) {
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    const double scale = text.em() / ShapedText::pixels;
    for (const QGlyphRun& run : text.shaped->runs) {
        const QList<quint32> glyphs = run.glyphIndexes();
        for (qsizetype i = 0; i < glyphs.size(); ++i) {
            QTransform place;
            place.translate(text.left() + run.positions().at(i).x() * scale,
                            text.anchor.y() + run.positions().at(i).y() * scale);
            place.scale(scale, scale);
            path.addPath(place.map(run.rawFont().pathForGlyph(glyphs.at(i))));
        }
    }
    return path;
}

QPainterPath strokedAlong(const QPolygonF& points, bool closed, double width) {
    QPainterPath path;
    path.addPolygon(points);
    if (closed)
        path.closeSubpath();
    QPainterPathStroker stroker;
    stroker.setWidth(std::max(width, 1e-3));
    stroker.setCapStyle(Qt::FlatCap);
    stroker.setJoinStyle(Qt::RoundJoin);
    return stroker.createStroke(path);
}

/// All that an item covers, up to the outer edge of its lines: a mark covers what is inside it.
QPainterPath areaOf(const Item& item) {
    QPainterPath path;
    path.setFillRule(Qt::WindingFill);
    std::visit(Overloaded{
                   [&](const TextShape& text) { path = lettersOf(text); },
                   [&](const LineShape& line) {
                       path = strokedAlong(QPolygonF({line.from, line.to}), false, line.stroke.width);
                   },
                   [&](const RectShape& rect) {
                       if (rect.fill)
                           path.addRect(boundingBox(item));
                       else
                           path = strokedAlong(QPolygonF(rect.rect), true, rect.outline.width);
                   },
                   [&](const RingShape& ring) {
                       const double radius = ring.radius + ring.stroke.width / 2;
                       path.addEllipse(ring.centre, radius, radius);
                   },
                   [&](const PolygonShape& polygon) {
                       path.addPolygon(polygon.corners);
                       path.closeSubpath();
                       path.addPath(strokedAlong(polygon.corners, true, polygon.stroke.width));
                   },
                   [&](const auto&) { path.addRect(boundingBox(item)); },
               },
               item.shape);
    return path;
}

bool touch(const Item& first, const Item& second) {
    return areaOf(first).intersects(areaOf(second));
}

double clearance(const TextShape& text, const Shape& mark) {
    double least = std::numeric_limits<double>::max();
    for (const QPointF& point : outlineOf(text))
        if (const auto* ring = std::get_if<RingShape>(&mark))
            least = std::min(least, depthIn(*ring, point));
        else if (const auto* polygon = std::get_if<PolygonShape>(&mark))
            least = std::min(least, depthIn(*polygon, point));
        else
            return -1;
    return least;
}

/// Whether the text is what stands in the mark.
bool isContent(const Seen& text, const Seen& mark) {
    switch (text.item->role) {
    case ItemRole::ServeContent:
    case ItemRole::RunningNumber:
    case ItemRole::SlotNumber:
    case ItemRole::LiberoNumber:
    case ItemRole::LegendContent:
        return mark.box.contains(text.box.center());
    default:
        return false;
    }
}

class Checker {
public:
    explicit Checker(const Page& page) : m_page(page) {
        for (const Item& item : page.items)
            m_seen.push_back({&item, kindOf(item), boundingBox(item)});
        std::ranges::stable_sort(m_seen, {}, [](const Seen& seen) { return seen.box.left(); });
    }

    QStringList faults() {
        for (const Seen& seen : m_seen) {
            checkSize(seen);
            checkZone(seen);
        }
        for (std::size_t i = 0; i < m_seen.size(); ++i)
            for (std::size_t k = i + 1; k < m_seen.size() && m_seen[k].box.left() < m_seen[i].box.right(); ++k)
                checkPair(m_seen[i], m_seen[k]);
        return m_faults;
    }
    [[nodiscard]] double leastClearance() const { return m_least; }

private:
    void complain(const QString& what) { m_faults += what; }
    void checkSize(const Seen& seen) {
        if (const auto* text = std::get_if<TextShape>(&seen.item->shape); text && text->points < smallest)
            complain(QStringLiteral("%1 has only %2 pt").arg(nameOf(seen)).arg(text->points));
    }
    void checkZone(const Seen& seen) {
        const double over = seen.kind == Kind::Text || seen.kind == Kind::Mark ? rounding : lineOverZone;
        if (seen.box.isEmpty() && seen.kind == Kind::Text)
            complain(QStringLiteral("a text without ink at %1").arg(seen.box.x()));
        if (!m_page.zone(seen.item->zone).adjusted(-over, -over, over, over).contains(seen.box))
            complain(QStringLiteral("%1 is outside its zone").arg(nameOf(seen)));
    }
    void checkPair(const Seen& first, const Seen& second) {
        if (!overlap(first.box, second.box))
            return;
        const auto is = [&](Kind a, Kind b) { return first.kind == a && second.kind == b; };
        if (is(Kind::Text, Kind::Text) || is(Kind::Mark, Kind::Mark)) {
            if (!isCross(first, second) && touch(*first.item, *second.item))
                complain(QStringLiteral("%1 lies over %2").arg(nameOf(first), nameOf(second)));
        } else if (is(Kind::Text, Kind::Mark)) {
            checkInMark(first, second);
        } else if (is(Kind::Mark, Kind::Text)) {
            checkInMark(second, first);
        } else if (const bool text = first.kind == Kind::Text || first.kind == Kind::Mark; text) {
            checkOnLine(first, second);
        } else if (second.kind == Kind::Text || second.kind == Kind::Mark) {
            checkOnLine(second, first);
        }
    }
    /// The two strokes of a cross lie over each other.
    static bool isCross(const Seen& first, const Seen& second) {
        const bool lines = std::holds_alternative<LineShape>(first.item->shape) &&
                           std::holds_alternative<LineShape>(second.item->shape);
        return lines && first.box == second.box;
    }
    void checkInMark(const Seen& text, const Seen& mark) {
        if (!isContent(text, mark)) {
            if (touch(*text.item, *mark.item))
                complain(QStringLiteral("%1 runs into %2").arg(nameOf(text), nameOf(mark)));
            return;
        }
        const double least = clearance(std::get<TextShape>(text.item->shape), mark.item->shape);
        m_least = std::min(m_least, least);
        if (least < 0)
            complain(QStringLiteral("%1 touches its mark by %2 mm").arg(nameOf(text)).arg(-least, 0, 'f', 3));
    }
    void checkOnLine(const Seen& seen, const Seen& line) {
        if (line.kind == Kind::Rule && !isBesideRung(seen, line) && touch(*seen.item, *line.item))
            complain(
                QStringLiteral("%1 lies on a rule at %2, %3").arg(nameOf(seen)).arg(line.box.x()).arg(line.box.y()));
        if (line.kind == Kind::Plate && seen.kind == Kind::Text && !line.box.contains(seen.box))
            complain(QStringLiteral("%1 runs over the edge of a plate").arg(nameOf(seen)));
        if (line.kind != Kind::Box)
            return;
        const double edge = std::get<RectShape>(line.item->shape).outline.width;
        if (!line.box.adjusted(edge, edge, -edge, -edge).contains(seen.box))
            complain(QStringLiteral("%1 lies on the edge of a box").arg(nameOf(seen)));
    }

    /// A ring as high as its rung comes as near to the rung's rules as half of a hairline.
    static bool isBesideRung(const Seen& seen, const Seen& rule) {
        const QRectF common = seen.box & rule.box;
        return seen.item->role == ItemRole::RunningMark && rule.item->zone == Zone::Ladder && common.height() < 0.1;
    }

    const Page& m_page;
    std::vector<Seen> m_seen;
    QStringList m_faults;
    double m_least = std::numeric_limits<double>::max();
};

} // namespace

QStringList faultsOf(const Page& page) {
    return Checker(page).faults();
}

double leastClearance(const Page& page) {
    Checker checker(page);
    (void)checker.faults();
    return checker.leastClearance();
}

} // namespace setfolio::testing
