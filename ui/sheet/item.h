// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT

/// What a page of the sheet is made of. One list of items serves painting, hit-testing, the accessible tree and the
/// tests. Lengths are millimetres from the paper's top left corner, y downwards.
#pragma once

#include "core/match/ids.h"
#include "ui/sheet/fonts.h"

#include <QPointF>
#include <QPolygonF>
#include <QRectF>
#include <QRgb>

#include <optional>
#include <variant>
#include <vector>

namespace setfolio {

/// The parts of the page.
enum class Zone : std::uint8_t {
    Header,
    LadderHead,
    Ladder,
    BlockHome,
    BlockVisitors,
    Remarks,
    Foot,
    Legend,
    // of the sheets that are not a set's
    Masthead,
    Body,
    Whole, ///< the live area
};

/// What an item is to the reader.
enum class ItemRole : std::uint8_t {
    Label,
    Value,
    Title,
    Plate,
    PlateText,
    Rule,
    Box,
    Tint,
    // in a term of service
    ServeMark,    ///< ring, triangle or square
    ServeContent, ///< the number or letter in it
    OpeningNumber,
    TermWord, ///< S, Sx with their numbers, T, Tx, P
    MarkStrike,
    MarkCross, ///< the X over a point taken back
    NoteNumber,
    DoubleBar,
    CellCross,
    LiveCell,
    GhostMark, ///< where the next mark falls
    // in a slot
    SlotNumeral,
    SlotPointer,
    SlotNumber, ///< a shirt number that stands or has stood in the slot
    SlotStrike,
    CaptainLetter,
    LiberoTriangle,
    LiberoNumber,
    // in the strip
    TimeOutScore,
    TimeOutUnused,
    CounterNumber,
    CounterCross,
    // in the ladder
    Score,
    RunningNumber,
    RunningMark, ///< ring or triangle
    RunningSlash,
    RunningOpponents,
    RunningPenalty,
    RunningCross,
    CloseOff,
    // in the foot
    Card, ///< a shown card, its letter on it
    CardLetter,
    RemarkNumber,
    RemarkText,
    OfficialName,
    SignatureLine,
    LegendMark,
    LegendContent,
    LegendStrike,
    LegendText,
    // on the other sheets
    Court,      ///< lines of a court picture, which numbers stand between
    CutLine,    ///< where a page is cut into slips
    ScoreLine,  ///< how the score went
    ScoreEvent, ///< the place of a substitution or time-out beside it
};

enum class TextAlign : std::uint8_t { Left, Centre, Right };

/// A line of text. Whatever its script, Left, Centre and Right mean the places on the page.
struct TextShape {
    QPointF anchor; ///< on the baseline
    double points = 0;
    QRgb colour = 0;
    TextAlign align = TextAlign::Left;
    SharedText shaped;

    [[nodiscard]] double em() const { return points * 25.4 / 72; } ///< in millimetres
    [[nodiscard]] double left() const;                             ///< of its advance
    [[nodiscard]] QRectF ink() const;
    friend bool operator==(const TextShape& left, const TextShape& right); ///< they look alike
};

struct Dash {
    double on = 0; ///< 0: an unbroken line
    double off = 0;
    double start = 0; ///< how far into the pattern the line begins
    bool operator==(const Dash&) const = default;
};

struct Stroke {
    QRgb colour = 0;
    double width = 0; ///< 0: no line
    Dash dash;
    bool round = false; ///< round ends
    bool operator==(const Stroke&) const = default;
};

struct LineShape {
    QPointF from;
    QPointF to;
    Stroke stroke;
    bool operator==(const LineShape&) const = default;
};

/// Rectangles and what lies in them; the outline runs along the edge, half of it outside.
struct RectShape {
    QRectF rect;
    std::optional<QRgb> fill;
    Stroke outline;
    bool operator==(const RectShape&) const = default;
};

struct RingShape {
    QPointF centre;
    double radius = 0; ///< to the middle of the line
    Stroke stroke;
    bool operator==(const RingShape&) const = default;
};

/// A closed outline with round corners. A broken one has a dash of its own for each side, laid so that corners are
/// closed.
struct PolygonShape {
    QPolygonF corners;
    std::optional<QRgb> fill;
    Stroke stroke;
    std::vector<Dash> sides;
    bool operator==(const PolygonShape&) const = default;
};

using Shape = std::variant<TextShape, LineShape, RectShape, RingShape, PolygonShape>;

struct Item {
    Zone zone = Zone::Header;
    ItemRole role = ItemRole::Label;
    EntryNumber entry; ///< the entry it tells of; 0 for none
    std::optional<Team> team;
    Shape shape;
    bool operator==(const Item&) const = default;
};

/// The rectangle that holds all that is drawn, line widths included.
[[nodiscard]] QRectF boundingBox(const Item& item);
void translate(Item& item, QPointF by);

} // namespace setfolio
