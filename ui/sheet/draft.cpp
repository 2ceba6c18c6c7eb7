// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/draft.h"

#include <QTextBoundaryFinder>

namespace setfolio::sheet {

double Draft::width(const QString& words, const TextStyle& style) const {
    return m_fonts.shape(words, style.weight, style.tracking)->advance * millimetres(style.points);
}

void Draft::text(const Tag& tag, QPointF anchor, const QString& words, const TextStyle& style) {
    if (words.isEmpty())
        return;
    const SharedText shaped = m_fonts.shape(words, style.weight, style.tracking);
    if (shaped->ink.isEmpty()) // nothing but characters that only steer others
        return;
    add(tag, TextShape{anchor, style.points, style.colour, style.align, shaped});
}

void Draft::textAt(const Tag& tag, QPointF anchor, const QString& words, const TextStyle& style) {
    text(tag, anchor + QPointF(0, halfCap(style.points)), words, style);
}

double Draft::fitted(const Tag& tag, QPointF anchor, const QString& words, TextStyle style, double room) {
    const double wanted = width(words, style);
    if (wanted > room)
        style.points = std::max(smallestPoints, style.points * room / wanted);
    const QString shown = shortened(*this, words, style, room);
    text(tag, anchor, shown, style);
    return width(shown, style);
}

double Draft::named(const Tag& tag, QPointF anchor, const QString& words, const TextStyle& style, double room,
                    const NameLines& lines) {
    const TextStyle small = style.sized(smallestPoints);
    if (lines.most == 1 || width(words, small) <= room) {
        const double used = fitted(tag, anchor, words, style, room);
        if (width(words, small) > room)
            addCutShort({words});
        return used;
    }
    const NameBlock block = nameBlock(*this, anchor, words, small, room, lines);
    for (const TextShape& line : block.lines)
        if (!line.shaped->ink.isEmpty())
            add(tag, line);
    if (block.cut)
        addCutShort({words});
    return block.width;
}

void Draft::line(const Tag& tag, QPointF from, QPointF to, const Stroke& stroke) {
    add(tag, LineShape{from, to, stroke});
}

void Draft::ruleAcross(const Tag& tag, double left, double right, double y, double width, QRgb colour) {
    line(tag, {left, y}, {right, y}, {colour, width, {}, false});
}

void Draft::ruleDown(const Tag& tag, double x, double top, double bottom, double width, QRgb colour) {
    line(tag, {x, top}, {x, bottom}, {colour, width, {}, false});
}

void Draft::rect(const Tag& tag, const QRectF& rect, std::optional<QRgb> fill, const Stroke& outline) {
    add(tag, RectShape{rect, fill, outline});
}

void Draft::ring(const Tag& tag, QPointF centre, double radius, const Stroke& stroke) {
    add(tag, RingShape{centre, radius, stroke});
}

void Draft::polygon(const Tag& tag, const QPolygonF& corners, const InkStyle& ink, double width, double pitch) {
    PolygonShape shape{corners, std::nullopt, {ink.colour, width, {}, false}, {}};
    if (ink.broken)
        for (qsizetype i = 0; i < corners.size(); ++i)
            shape.sides.push_back(
                dashOfSide(QLineF(corners.at(i), corners.at((i + 1) % corners.size())).length(), pitch * ink.dashes));
    add(tag, std::move(shape));
}

void Draft::filledPolygon(const Tag& tag, const QPolygonF& corners, std::optional<QRgb> fill, const Stroke& outline) {
    add(tag, PolygonShape{corners, fill, outline, {}});
}

void Draft::strokes(const Tag& tag, std::vector<QPolygonF> lines, const Stroke& stroke) {
    add(tag, StrokesShape{std::move(lines), stroke});
}

void Draft::squares(const Tag& tag, SquaresShape squares) {
    add(tag, std::move(squares));
}

void Draft::add(const Tag& tag, Shape shape) {
    m_items.push_back({tag.zone, tag.role, tag.entry, tag.team, std::move(shape)});
}

namespace {

/// The places at which words may be cut: between what a reader takes for letters, or between words.
QList<qsizetype> cuts(const QString& words, QTextBoundaryFinder::BoundaryType type) {
    QList<qsizetype> places;
    QTextBoundaryFinder finder(type, words);
    while (finder.toNextBoundary() != -1)
        places += finder.position();
    return places;
}

/// The longest beginning of `words` that fits and ends at a cut; at least one letter.
qsizetype fittingEnd(const Draft& draft, const QString& words, const TextStyle& style, double room,
                     std::initializer_list<QTextBoundaryFinder::BoundaryType> types = {QTextBoundaryFinder::Line,
                                                                                       QTextBoundaryFinder::Grapheme}) {
    qsizetype end = 0;
    for (const auto type : types) {
        for (const qsizetype cut : cuts(words, type)) {
            if (draft.width(words.left(cut).trimmed(), style) > room)
                break;
            end = cut;
        }
        if (end > 0)
            return end;
    }
    return std::max<qsizetype>(1, cuts(words, QTextBoundaryFinder::Grapheme).value(0, 1));
}

} // namespace

QString shortened(const Draft& draft, const QString& words, const TextStyle& style, double room) {
    constexpr double rounding = 1e-9;
    if (draft.width(words, style) <= room + rounding)
        return words;
    QList<qsizetype> places = cuts(words, QTextBoundaryFinder::Grapheme);
    while (!places.isEmpty()) {
        const QString shorter = words.left(places.takeLast()).trimmed() + QChar(0x2026);
        if (draft.width(shorter, style) <= room)
            return shorter;
    }
    return QString(QChar(0x2026));
}

bool isCut(const QStringList& lines, const QString& name) {
    return !lines.isEmpty() && lines.last().endsWith(QChar(0x2026)) && !name.endsWith(QChar(0x2026));
}

QStringList nameLines(const Draft& draft, const QString& name, const TextStyle& style, double room, int most) {
    const QStringList atSpaces = wrapped(draft, name, style, room);
    if (atSpaces.size() <= most)
        return atSpaces;
    QStringList lines;
    QString rest = name.simplified();
    while (lines.size() + 1 < most && !rest.isEmpty()) {
        // At a space while the other lines hold what is left.
        constexpr double filled = 0.95;
        const double others = filled * room * static_cast<double>(most - lines.size() - 1);
        qsizetype end = fittingEnd(draft, rest, style, room);
        if (draft.width(rest.mid(end).trimmed(), style) > others)
            end = fittingEnd(draft, rest, style, room, {QTextBoundaryFinder::Grapheme});
        lines += rest.left(end).trimmed();
        rest = rest.mid(end).trimmed();
    }
    return rest.isEmpty() ? lines : lines << shortened(draft, rest, style, room);
}

namespace {

/// What the letters of a line cover, each by itself, from the left end of the line's own baseline.
std::vector<QRectF> letterBoxes(const TextShape& line) {
    std::vector<QRectF> boxes;
    const double scale = line.em() / ShapedText::pixels;
    for (const QGlyphRun& run : line.shaped->runs) {
        const QList<quint32> glyphs = run.glyphIndexes();
        const QList<QPointF> places = run.positions();
        for (qsizetype i = 0; i < glyphs.size() && run.rawFont().isValid(); ++i) {
            const QRectF box = run.rawFont().boundingRect(glyphs.at(i)).translated(places.at(i));
            if (!box.isEmpty())
                boxes.emplace_back(line.left() + box.x() * scale, box.y() * scale, box.width() * scale,
                                   box.height() * scale);
        }
    }
    return boxes;
}

} // namespace

double clearPitch(const TextShape& upper, const TextShape& lower, double usual) {
    constexpr double apart = 0.05;
    double pitch = usual;
    const std::vector<QRectF> above = letterBoxes(upper);
    for (const QRectF& letter : letterBoxes(lower))
        for (const QRectF& other : above)
            if (letter.left() < other.right() + apart && other.left() < letter.right() + apart)
                pitch = std::max(pitch, other.bottom() - letter.top() + apart);
    return pitch;
}

namespace {

NameBlock blockOf(const Draft& draft, QPointF anchor, const QString& name, const TextStyle& style, double room,
                  const NameLines& lines) {
    const QStringList parts = nameLines(draft, name, style, room, lines.most);
    NameBlock block{{}, 0, isCut(parts, name)};
    for (const QString& part : parts)
        block.width = std::max(block.width, draft.width(part, style));
    anchor.ry() += parts.size() > 1 ? lines.first : 0;
    const bool fromRight = name.isRightToLeft() && style.align == TextAlign::Left;
    for (const QString& part : parts) {
        const double indent = fromRight ? block.width - draft.width(part, style) : 0;
        TextShape line{anchor + QPointF(indent, 0), style.points, style.colour, style.align,
                       draft.fonts().shape(part, style.weight, style.tracking)};
        if (!block.lines.empty())
            line.anchor.setY(block.lines.back().anchor.y() + clearPitch(block.lines.back(), line, lines.pitch));
        block.lines.push_back(std::move(line));
    }
    return block;
}

} // namespace

NameBlock nameBlock(const Draft& draft, QPointF anchor, const QString& name, const TextStyle& style, double room,
                    const NameLines& lines) {
    constexpr double spare = 0.35;
    const auto clears = [&](const NameBlock& block) {
        return block.lines.empty() || block.height() <= lines.pitch * (lines.most - 1) + spare;
    };
    const NameBlock usual = blockOf(draft, anchor, name, style, room, lines);
    if (clears(usual))
        return usual;
    // Lines that had to go too far apart would run into what is below: broken elsewhere, they may come closer.
    for (double narrower = 0.97 * room; narrower > 0.7 * room; narrower -= 0.03 * room)
        if (NameBlock block = blockOf(draft, anchor, name, style, narrower, lines); clears(block) && !block.cut)
            return block;
    return blockOf(draft, anchor, name, style, room, {lines.most - 1, lines.first, lines.pitch});
}

QStringList wrapped(const Draft& draft, const QString& words, const TextStyle& style, double room) {
    QStringList lines;
    QString rest = words.simplified();
    while (!rest.isEmpty()) {
        const qsizetype end = draft.width(rest, style) <= room ? rest.size() : fittingEnd(draft, rest, style, room);
        lines += rest.left(end).trimmed();
        rest = rest.mid(end).trimmed();
    }
    return lines;
}

} // namespace setfolio::sheet
