// SPDX-FileCopyrightText: The Setfolio authors
// SPDX-License-Identifier: MIT
#include "ui/sheet/grey.h"

#include "core/match/entry.h"

#include <cmath>

namespace setfolio::sheet {

namespace {

// The two directions of sRGB's curve (IEC 61966-2-1).
double lightOf(int channel) {
    const double value = channel / 255.0;
    return value <= 0.04045 ? value / 12.92 : std::pow((value + 0.055) / 1.055, 2.4);
}
int channelOf(double light) {
    const double value = light <= 0.0031308 ? light * 12.92 : 1.055 * std::pow(light, 1 / 2.4) - 0.055;
    return static_cast<int>(std::lround(value * 255));
}

void turnGrey(Stroke& stroke) {
    stroke.colour = greyOf(stroke.colour);
}
void turnGrey(std::optional<QRgb>& fill) {
    if (fill)
        fill = greyOf(*fill);
}

} // namespace

QRgb greyOf(QRgb colour) {
    const int grey =
        channelOf(0.2126 * lightOf(qRed(colour)) + 0.7152 * lightOf(qGreen(colour)) + 0.0722 * lightOf(qBlue(colour)));
    return qRgba(grey, grey, grey, qAlpha(colour));
}

void turnGrey(Item& item) {
    std::visit(Overloaded{
                   [](TextShape& text) { text.colour = greyOf(text.colour); },
                   [](LineShape& line) { turnGrey(line.stroke); },
                   [](RectShape& rect) {
                       turnGrey(rect.fill);
                       turnGrey(rect.outline);
                   },
                   [](RingShape& ring) { turnGrey(ring.stroke); },
                   [](PolygonShape& polygon) {
                       turnGrey(polygon.fill);
                       turnGrey(polygon.stroke);
                   },
                   [](StrokesShape& strokes) { turnGrey(strokes.stroke); },
                   [](SquaresShape& squares) { squares.colour = greyOf(squares.colour); },
               },
               item.shape);
}

} // namespace setfolio::sheet
