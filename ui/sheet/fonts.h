// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// The sheet's one typeface, Inter, and text shaped with it. Sizes are apart from shapes: a text is shaped once, at one
/// large size, so that advances are never rounded and a millimetre on the screen is a millimetre on paper.
#pragma once

#include <QGlyphRun>
#include <QList>
#include <QRectF>
#include <QString>
#include <QStringList>

#include <tl/expected.hpp>

#include <memory>

namespace setfolio {

enum class FontWeight : std::uint8_t { Regular = 0, Medium = 1, SemiBold = 2, Bold = 3 };

/// Why the sheet cannot be drawn: the typeface is not installed, or not in all weights.
struct FontError {
    QString family;
    QString package;    ///< the package that holds it
    QList<int> missing; ///< the weights that are not there, 400 to 700
    bool operator==(const FontError&) const = default;
};

/// A line of text, ready to be placed at any size.
struct ShapedText {
    QString text;
    FontWeight weight = FontWeight::Regular;
    double tracking = 0;   ///< extra space after each letter, in em
    double advance = 0;    ///< width in em, the space after the last letter left out
    QRectF ink;            ///< what is inked, in em, from the left end of the baseline; y downwards
    QList<QGlyphRun> runs; ///< at `pixels` to the em, from the left end of the baseline
    static constexpr double pixels = 100;
};
using SharedText = std::shared_ptr<const ShapedText>;

/// Height of Inter's capitals and figures, in em.
inline constexpr double capHeight = 0.727;

/// The typeface, found and whole. Copies share what has been shaped before; one thread at a time.
class SheetFonts {
public:
    /// Needs a QGuiApplication.
    [[nodiscard]] static tl::expected<SheetFonts, FontError> load();
    /// Names in a script that Inter lacks are shaped with another font that has it; their order is their script's.
    [[nodiscard]] SharedText shape(const QString& text, FontWeight weight, double tracking = 0) const;

private:
    struct Shaper;
    explicit SheetFonts(std::shared_ptr<Shaper> shaper) : m_shaper(std::move(shaper)) {}
    std::shared_ptr<Shaper> m_shaper;
};

} // namespace setfolio
