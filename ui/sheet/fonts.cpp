// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/fonts.h"

#include "core/record/shown.h"

#include <QFont>
#include <QFontDatabase>
#include <QHash>
#include <QRawFont>
#include <QTextLayout>
#include <QTextOption>

#include <algorithm>
#include <array>

namespace setfolio {

namespace {

constexpr std::array<int, 4> weights{QFont::Normal, QFont::Medium, QFont::DemiBold, QFont::Bold};

QString family() {
    return QStringLiteral("Inter");
}

QFont fontOf(FontWeight weight, double tracking) {
    QFont font(family());
    font.setPixelSize(static_cast<int>(ShapedText::pixels));
    font.setWeight(static_cast<QFont::Weight>(weights[static_cast<std::size_t>(weight)]));
    font.setHintingPreference(QFont::PreferNoHinting);
    if (tracking != 0)
        font.setLetterSpacing(QFont::AbsoluteSpacing, tracking * ShapedText::pixels);
    return font;
}

/// The run moved so that the baseline begins at 0, 0.
QGlyphRun atOrigin(QGlyphRun run, QPointF origin) {
    QList<QPointF> places = run.positions();
    for (QPointF& place : places)
        place -= origin;
    run.setPositions(places);
    return run;
}

QRectF inkOf(const QGlyphRun& run) {
    const QRawFont font = run.rawFont();
    if (!font.isValid())
        return {};
    const QList<quint32> glyphs = run.glyphIndexes();
    const QList<QPointF> places = run.positions();
    QRectF ink;
    for (qsizetype i = 0; i < glyphs.size(); ++i) {
        const QRectF glyph = font.boundingRect(glyphs.at(i));
        if (!glyph.isEmpty())
            ink |= glyph.translated(places.at(i));
    }
    return ink;
}

/// Inter draws a colon or a dash between figures with a glyph of its own, which no character of the font stands for: a
/// PDF could not be searched for it. The run with the characters' own glyphs; how much wider it is, in pixels. Words
/// that Inter has not all the characters of are left alone: letters of Arabic must join.
double useOwnGlyphs(QGlyphRun& run, const QString& words) {
    QList<quint32> glyphs = run.glyphIndexes();
    const QList<quint32> own = run.rawFont().glyphIndexesForString(words);
    if (own.size() != glyphs.size() || own == glyphs)
        return 0;
    QList<QPointF> places = run.positions();
    double wider = 0;
    for (qsizetype i = 0; i < glyphs.size(); ++i) {
        places[i].rx() += wider;
        if (own.at(i) == glyphs.at(i) || own.at(i) == 0)
            continue;
        const QList<QPointF> advances = run.rawFont().advancesForGlyphIndexes({glyphs.at(i), own.at(i)});
        wider += advances.at(1).x() - advances.at(0).x();
        glyphs[i] = own.at(i);
    }
    run.setGlyphIndexes(glyphs);
    run.setPositions(places);
    return wider;
}

/// Whether the typeface has all characters itself.
bool isOwn(const QString& words, const QFont& font) {
    const QRawFont own = QRawFont::fromFont(font);
    return std::ranges::all_of(words, [&](QChar letter) { return own.supportsCharacter(letter); });
}

/// In other typefaces than Inter the last letter may reach far out of the room that it takes up. The runs moved so that
/// all ink lies in the text's own room; returns how wide that has to be, in pixels.
double holdInk(QList<QGlyphRun>& runs, QRectF& ink, double width) {
    const double outLeft = std::max(0.0, -ink.left());
    for (QGlyphRun& run : runs)
        run = atOrigin(run, {-outLeft, 0});
    ink.translate(outLeft, 0);
    return std::max(width + outLeft, ink.right());
}

void takeLine(const QTextLine& line, const QFont& font, ShapedText& text) {
    const QPointF origin(line.naturalTextRect().left(), line.ascent());
    for (const QGlyphRun& run : line.glyphRuns())
        text.runs += atOrigin(run, origin);
    double width = line.naturalTextWidth();
    const bool own = isOwn(text.text, font);
    if (own && text.runs.size() == 1)
        width += useOwnGlyphs(text.runs.front(), text.text);
    QRectF ink;
    for (const QGlyphRun& run : text.runs)
        ink |= inkOf(run);
    if (!own)
        width = holdInk(text.runs, ink, width);
    const double em = ShapedText::pixels;
    text.ink = QRectF(ink.x() / em, ink.y() / em, ink.width() / em, ink.height() / em);
    text.advance = width / em - text.tracking;
}

/// Whether a glyph is missing when the words are laid out.
bool hasGap(const QString& words, const QFont& font) {
    QTextLayout layout(words, font);
    layout.beginLayout();
    layout.createLine();
    layout.endLayout();
    const QList<QGlyphRun> runs = layout.glyphRuns();
    return std::ranges::any_of(runs, [](const QGlyphRun& run) { return run.glyphIndexes().contains(0); });
}

/// Whether some font of the system has the character. Those that only steer the others need no glyph.
bool isCarried(char32_t character, const QFont& font) {
    if (QRawFont::fromFont(font).supportsCharacter(character) || QChar::category(character) == QChar::Other_Format ||
        QChar::isSpace(character))
        return true;
    return !hasGap(QString::fromUcs4(&character, 1), font);
}

/// The words with a box for each character that no font has: what a font draws in its place by itself cannot be found
/// as text, and no archive takes it.
QString withBoxes(const QString& words, const QFont& font) {
    if (isOwn(words, font))
        return words;
    const QString box = QStringLiteral("\u25A1");
    QString carried;
    for (const char32_t character : words.toUcs4())
        carried += isCarried(character, font) ? QString::fromUcs4(&character, 1) : box;
    if (!hasGap(carried, font))
        return carried;
    // A mark may be missing in the font of the letter that it stands on, though another font has it.
    QString whole;
    for (const char32_t character : carried.toUcs4()) {
        const QString next = QString::fromUcs4(&character, 1);
        whole += hasGap(whole + next, font) ? box : next;
    }
    return whole;
}

ShapedText shaped(const QString& given, FontWeight weight, double tracking) {
    const QFont font = fontOf(weight, tracking);
    const QString words = withBoxes(asShown(given), font);
    ShapedText text{words, weight, tracking, 0, {}, {}};
    QTextLayout layout(words, font);
    QTextOption option(Qt::AlignLeft | Qt::AlignAbsolute);
    option.setTextDirection(Qt::LayoutDirectionAuto);
    option.setWrapMode(QTextOption::NoWrap);
    layout.setTextOption(option);
    layout.beginLayout();
    const QTextLine line = layout.createLine();
    layout.endLayout();
    if (line.isValid() && !words.isEmpty())
        takeLine(line, font, text);
    return text;
}

} // namespace

struct SheetFonts::Shaper {
    struct Key {
        QString text;
        FontWeight weight;
        double tracking;
        bool operator==(const Key&) const = default;
    };
    friend size_t qHash(const Key& key, size_t seed) {
        return qHashMulti(seed, key.text, static_cast<int>(key.weight), key.tracking);
    }
    static constexpr qsizetype most = 20000; ///< far more than the sheets of a match hold

    QHash<Key, SharedText> known;
};

tl::expected<SheetFonts, FontError> SheetFonts::load() {
    QList<int> missing(weights.begin(), weights.end());
    for (const QString& style : QFontDatabase::styles(family()))
        if (!QFontDatabase::italic(family(), style))
            missing.removeAll(QFontDatabase::weight(family(), style));
    if (!missing.isEmpty())
        return tl::unexpected(FontError{family(), QStringLiteral("fonts-inter"), missing});
    return SheetFonts(std::make_shared<Shaper>());
}

SharedText SheetFonts::shape(const QString& text, FontWeight weight, double tracking) const {
    const Shaper::Key key{text, weight, tracking};
    if (const auto known = m_shaper->known.constFind(key); known != m_shaper->known.constEnd())
        return *known;
    if (m_shaper->known.size() >= Shaper::most)
        m_shaper->known.clear();
    return *m_shaper->known.insert(key, std::make_shared<const ShapedText>(shaped(text, weight, tracking)));
}

} // namespace setfolio
